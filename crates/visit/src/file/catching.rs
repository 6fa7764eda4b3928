//! The catch test's part of the file.

use calibration::catch::{Doubtful, Limit, LimitProfile};

use super::mistake::{CATCH_TIME, Mistake, ROUND, TIP_PRESSURE};
use super::readings::{bare_unit, marks_of, of_tip, round, time_of};
use super::section::Part;
use super::setting::setting;
use crate::record::{CatchFacts, CatchTime, Cups, LimitChoice, TipPressureFacts};

/// The most rounds in a visit. Our own limit: at a minute a tip nobody goes along a boom more often in a day.
const MOST_ROUNDS: usize = 50;

/// Reads `[catch]` with its rounds.
pub(super) fn catching(part: &Part<'_>) -> Option<CatchFacts> {
    let marks = part.value("cup_marks").and_then(|value| marks_of(part, "cup_marks", value));
    let unit = bare_unit(marks.as_ref());
    let mut parts = part.parts("round");
    if parts.len() > MOST_ROUNDS {
        let too_many = Mistake::value("too_many_rounds", "{rounds} rounds are more than a day has")
            .would_do("at most {most} rounds; a visit is one sprayer on one day")
            .count("rounds", parts.len())
            .count("most", MOST_ROUNDS);
        part.fault("round", too_many);
        parts.truncate(MOST_ROUNDS);
    }
    let rounds: Vec<_> = parts.iter().filter_map(|part| round(part, unit.as_ref())).collect();
    if parts.is_empty() {
        part.missing("round", ROUND);
    }
    let each_has_its_own = rounds.iter().all(|round| round.time.is_some());
    let time = match time_of(part, "time") {
        Some(time) => Some(time),
        None if !part.has("time") && each_has_its_own => rounds.first().and_then(|round| round.time.clone()),
        None => {
            if !part.has("time") {
                part.missing("time", CATCH_TIME);
            }
            None
        }
    };
    let facts = CatchFacts {
        time: time?,
        cups: Cups { marks, holds: part.positive("cup_holds"), density: part.positive("weighed_density") },
        limit: limit(part, "limit"),
        new_limit: named(part, "new_limit"),
        timer: part.quantity("timer"),
        new_tip: part
            .list("new_tip")
            .iter()
            .filter_map(|value| of_tip(part, "new_tip", value, unit.as_ref()))
            .flatten()
            .collect(),
        rounds,
        tip_pressures: part.parts("tip_pressure").iter().filter_map(tip_pressure).collect(),
        doubtful: doubtful(part),
        setting: part.part("setting").map(|part| setting(&part)).unwrap_or_default(),
    };
    (!facts.rounds.is_empty()).then_some(facts)
}

/// Reads one `[[catch.tip_pressure]]`.
fn tip_pressure(part: &Part<'_>) -> Option<TipPressureFacts> {
    let marks = part.positive("marks");
    if !part.has("tip") {
        part.missing("tip", TIP_PRESSURE);
    }
    if !part.has("pressure") {
        part.missing("pressure", TIP_PRESSURE);
    }
    Some(TipPressureFacts { tip: part.count("tip")?, pressure: part.positive("pressure")?, marks })
}

fn doubtful(part: &Part<'_>) -> Doubtful {
    part.word("doubtful", &["refuse", "keep"], |word| match word {
        "refuse" => Some(Doubtful::Refuse),
        "keep" => Some(Doubtful::Keep),
        _ => None,
    })
    .unwrap_or_default()
}

fn limit(part: &Part<'_>, name: &str) -> Option<LimitChoice> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    if !text.contains('%') {
        return part.known(name, value, LimitProfile::named(&text)).map(LimitChoice::Named);
    }
    let share = part.known(name, value, units::percent(&text))?;
    part.known(name, value, Limit::own(share)).map(|_| LimitChoice::Own(share))
}

fn named(part: &Part<'_>, name: &str) -> Option<LimitProfile> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    part.known(name, value, LimitProfile::named(&text))
}

impl CatchTime {
    /// The words in a file.
    #[must_use]
    pub fn text(&self) -> &str {
        match self {
            Self::Given(time) => time.text(),
            Self::AsDriven => "as driven",
        }
    }
}
