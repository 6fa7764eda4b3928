//! Earlier visits of a sprayer beside today's: what it put out, what its tips gave, how the set has worn.

use notebook::ThingId;
use units::{Amount, Arg, AsWritten, Flow, Kind, Pressure, Quantity, Verdict};
use visit::Visit;
use visit::findings::Outcome;

use crate::opened::{fold_one, worked_out};
use crate::state::State;
use crate::usable::usable;

/// A visit beside the others.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastVisit {
    /// Its name in the notebook.
    pub id: ThingId,
    /// The day, as people read it; the open visit says so.
    pub day: String,
    /// Names and values: what it put out, what a tip gave, pressure, tips off, against the first visit.
    pub pairs: Vec<(String, String)>,
}

/// What a visit comes to, as far as visits are compared by it.
struct Seen {
    id: ThingId,
    date: String,
    outcome: Outcome,
    pressure: Option<Pressure>,
}

impl Seen {
    /// The mean flow of the tips that run, where all are meant to be alike.
    fn mean(&self) -> Option<Flow> {
        let now = self.outcome.catch.as_ref()?.now();
        match now.verdicts.summary.groups.as_slice() {
            [group] => group.mean,
            _ => None,
        }
    }

    /// Tips outside the limit, and plugged ones.
    fn off(&self) -> Option<usize> {
        let catch = self.outcome.catch.as_ref()?;
        let tips = &catch.now().verdicts.summary.tips;
        let outside = tips.iter().filter(|tip| tip.verdict == Some(Verdict::Outside)).count();
        // A plugged tip is outside too; where it is not judged it counts all the same.
        let unjudged = tips
            .iter()
            .filter(|tip| tip.verdict != Some(Verdict::Outside) && catch.plugged().contains(&tip.number))
            .count();
        Some(outside + unjudged)
    }
}

/// Pressures nearer than this share are the same: a gauge is not read closer. Our own choice.
const SAME_PRESSURE: f64 = 0.02;

/// The visits of the sprayer of the open visit, the latest first, that one among them.
#[must_use]
pub fn last_time(state: &State) -> Vec<LastVisit> {
    let seen = seen(state);
    let Some(first) = seen.last() else { return Vec::new() };
    let open = state.visit.as_ref().map(|visit| visit.id);
    seen.iter().map(|visit| told(state, visit, first, open)).collect()
}

/// Every visit of the sprayer, worked out anew, the latest first.
fn seen(state: &State) -> Vec<Seen> {
    let (Some(visit), Some(holder)) = (&state.visit, state.holder()) else { return Vec::new() };
    // A visit that came in as a file is known by the first of its name.
    let on_the_shelf = || state.shelf.visits.iter().find(|known| known.id == visit.id)?.sprayer;
    let mut ids: Vec<ThingId> = match visit.folded.sprayer.or_else(on_the_shelf) {
        Some(sprayer) => state
            .shelf
            .visits
            .iter()
            .filter(|known| known.sprayer == Some(sprayer))
            .map(|known| known.id)
            .collect(),
        None => Vec::new(),
    };
    if !ids.contains(&visit.id) {
        ids.push(visit.id);
    }
    let mut seen: Vec<Seen> = ids
        .into_iter()
        .map(|id| {
            if id == visit.id {
                return of(id, visit.text("visit.date"), &visit.visit, visit.outcome.clone());
            }
            let kept = state.lines.get(&id).map_or(&[][..], Vec::as_slice);
            let folded = fold_one(id, kept, state.on_the_way.iter(), holder);
            let (facts, _) = usable(&folded);
            let (outcome, _) = worked_out(&facts, state.reader.units);
            let date = facts.about.date.clone().unwrap_or_default();
            of(id, &date, &facts, outcome)
        })
        .collect();
    // Days are written year first, so that letters sort them; visits of one day by their names, which begin with the time.
    seen.sort_by(|one, other| (&other.date, other.id).cmp(&(&one.date, one.id)));
    seen
}

fn of(id: ThingId, date: &str, visit: &Visit, outcome: Outcome) -> Seen {
    let own = visit.catch.as_ref().map(|catch| catch.setting.over(&visit.setting));
    let setting = own.unwrap_or_else(|| visit.setting.clone());
    let pressure = setting.pressure.as_ref().map(AsWritten::value);
    Seen { id, date: date.to_string(), outcome, pressure }
}

fn told(state: &State, visit: &Seen, first: &Seen, open: Option<ThingId>) -> LastVisit {
    let words = &state.words;
    let day = if visit.date.is_empty() { words.label("yard-no_name") } else { words.date(&visit.date) };
    let day = match open == Some(visit.id) {
        true => words.say("yard-last_today", &[("date", day.into())]),
        false => day,
    };
    let mut pairs = Vec::new();
    let mut add = |key: &str, value: Option<String>| {
        pairs.extend(value.map(|value| (words.label(key), value)));
    };
    let rate = visit.outcome.rate.as_ref().map(|rate| Amount::ranged(&rate.of_mix(), Kind::Rate));
    add("yard-last_rate", rate.map(|rate| words.amount(&rate)));
    add("yard-last_mean", visit.mean().map(|mean| words.amount(&Amount::new(mean, Kind::Flow))));
    let pressure = visit.pressure.map(|pressure| words.amount(&Amount::new(pressure, Kind::Pressure)));
    add("yard-last_pressure", pressure);
    add("yard-last_off", visit.off().map(|off| off.to_string()));
    if visit.id != first.id {
        add("yard-last_wear", against(state, visit, first));
    }
    LastVisit { id: visit.id, day, pairs }
}

/// How much more or less the set gives than at the first visit, in words; none where either was not caught.
///
/// *Assumptions*: a tip's flow at one pressure grows as it wears. At another pressure the flows say nothing of wear, and where
/// a pressure was not written down nobody knows.
fn against(state: &State, visit: &Seen, first: &Seen) -> Option<String> {
    let words = &state.words;
    let (now, then) = (visit.mean()?.si(), first.mean()?.si());
    let (Some(pressure), Some(before)) = (visit.pressure, first.pressure) else {
        return Some(words.label("yard-last_pressure_unsaid"));
    };
    if (pressure.si() / before.si() - 1.0).abs() > SAME_PRESSURE {
        return Some(words.label("yard-last_other_pressure"));
    }
    let percent = 100.0 * (now / then - 1.0);
    // Cups of two days tell no more than whole percents.
    let said = words.arg(&Arg::Percent(percent.abs().round()));
    // Less than half a percent reads as nought, and nought is neither more nor less.
    Some(if percent.abs() < 0.5 {
        words.label("yard-last_same")
    } else if percent > 0.0 {
        words.say("yard-last_more", &[("percent", said.into())])
    } else {
        words.say("yard-last_less", &[("percent", said.into())])
    })
}
