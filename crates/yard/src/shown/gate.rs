//! What the first screen lists: the sprayers and visits that are here, what there is time for.

use notebook::ThingId;

use crate::state::State;

/// A sprayer or visit to tap.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GateLine {
    /// Its name in the notebook.
    pub id: ThingId,
    /// What it is called.
    pub name: String,
    /// Farm, day, how much there is of it.
    pub under: String,
}

/// How many are listed at once: more would have to be searched by eye. Our own choice, about two screens of a phone.
const LISTED: usize = 12;

fn named(state: &State, name: &str) -> String {
    if name.is_empty() { state.words.label("yard-no_name") } else { name.to_string() }
}

fn joined(parts: &[String]) -> String {
    parts.iter().filter(|part| !part.is_empty()).cloned().collect::<Vec<_>>().join(" · ")
}

/// The sprayers known here, the one last visited first.
#[must_use]
pub fn known_sprayers(state: &State) -> Vec<GateLine> {
    let words = &state.words;
    let day = |visit: Option<&ThingId>| {
        let date = state.shelf.visits.iter().find(|known| Some(&known.id) == visit)?.date.clone();
        (!date.is_empty()).then(|| words.say("yard-last_visit", &[("date", words.date(&date).into())]))
    };
    let line = |known: &crate::shelf::KnownSprayer| GateLine {
        id: known.id,
        name: named(state, &known.name),
        under: joined(&[known.farm.clone(), day(known.visits.first()).unwrap_or_default()]),
    };
    state.shelf.sprayers.iter().filter(|known| !known.name.is_empty()).take(LISTED).map(line).collect()
}

/// The visits that are here, the latest first.
#[must_use]
pub fn known_visits(state: &State) -> Vec<GateLine> {
    let words = &state.words;
    let line = |known: &crate::shelf::KnownVisit| {
        let lines = i64::try_from(known.lines).unwrap_or(i64::MAX);
        let date = if known.date.is_empty() { String::new() } else { words.date(&known.date) };
        GateLine {
            id: known.id,
            name: named(state, &known.name),
            under: joined(&[known.farm.clone(), date, words.say("yard-lines", &[("lines", lines.into())])]),
        }
    };
    state.shelf.visits.iter().take(LISTED).map(line).collect()
}

/// What the minutes and hands that were chosen are enough for; empty where nothing was chosen.
#[must_use]
pub fn plan_lines(state: &State) -> Vec<String> {
    let words = &state.words;
    let minutes = state
        .plan
        .minutes
        .map(|_| words.label(if state.plan.is_short() { "yard-plan_short" } else { "yard-plan_whole" }));
    let people = state.plan.people.map(|people| {
        words.label(match people {
            0 | 1 => "yard-plan_1",
            2 => "yard-plan_2",
            _ => "yard-plan_3",
        })
    });
    minutes.into_iter().chain(people).collect()
}
