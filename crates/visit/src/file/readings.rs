//! Readings in the file: one for each tip, kept as they stand.

use calibration::catch::RoundKind;
use toml::Spanned;
use toml::de::DeValue;
use units::{Arg, Caught, Dimension, Marks, QuantityError, ReadingError, Unit, Written};

use super::mistake::{Mistake, READINGS};
use super::section::{Part, UNKNOWN, WRONG_KIND};
use crate::record::{CatchTime, RoundFacts, TipReading};

/// How far the marks of a cup are apart: a volume, or a weight for a scale.
pub(super) fn marks_of(part: &Part<'_>, name: &str, value: &Spanned<DeValue<'_>>) -> Option<Marks> {
    let text = part.text_of(name, value)?;
    let step: Written = part.known(name, value, step_of(&text))?;
    let marks: Result<Marks, ReadingError> = Marks::every(step);
    part.known(name, value, marks)
}

fn step_of(text: &str) -> Result<Written, QuantityError> {
    Caught::parse(text, None).map(|caught| caught.written().clone())
}

/// A time, or as long as the drive took.
pub(super) fn time_of(part: &Part<'_>, name: &str) -> Option<CatchTime> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    if text.trim() == "as driven" {
        return Some(CatchTime::AsDriven);
    }
    part.positive_of(name, value).map(CatchTime::Given)
}

/// The readings of one tip: none, one, or several.
pub(super) fn of_tip(
    part: &Part<'_>,
    name: &str,
    value: &Spanned<DeValue<'_>>,
    unit: Option<&Unit>,
) -> Option<Vec<TipReading>> {
    if let Some(several) = value.get_ref().as_array() {
        return several.iter().map(|value| one(part, name, value, unit)).collect();
    }
    let uncaught = value.get_ref().as_str().is_some_and(|text| matches!(text.trim(), "-" | "−"));
    if uncaught { Some(Vec::new()) } else { one(part, name, value, unit).map(|reading| vec![reading]) }
}

fn one(part: &Part<'_>, name: &str, value: &Spanned<DeValue<'_>>, unit: Option<&Unit>) -> Option<TipReading> {
    let Some(table) = value.get_ref().as_table() else {
        let text = part.text_of(name, value)?;
        let caught = part.known(name, value, Caught::parse(&text, unit))?;
        return Some(TipReading { caught, time: None, marks: None, run: None });
    };
    let known = ["reading", "time", "marks", "run"];
    if let Some(odd) = table.keys().find(|key| !known.contains(&key.get_ref().as_ref())) {
        let unknown = Mistake::new(UNKNOWN, "a reading has no \"{name}\"")
            .case("reading")
            .would_do("it has {known}")
            .text("name", odd.get_ref())
            .names("known", &known);
        part.push_value(name, value, unknown);
    }
    let Some(reading) = table.get("reading") else {
        let wrong = Mistake::new(WRONG_KIND, "a reading is needed, but {found} stands here")
            .case("reading")
            .would_do("write it as { reading = \"30 fl oz\", time = \"60 s\" }");
        part.wrong(name, value, wrong);
        return None;
    };
    let text = part.text_of(name, reading)?;
    Some(TipReading {
        caught: part.known(name, reading, Caught::parse(&text, unit))?,
        time: table.get("time").and_then(|time| part.positive_of(name, time)),
        marks: table.get("marks").and_then(|marks| marks_of(part, name, marks)),
        run: table.get("run").and_then(|run| part.count_of(name, run)),
    })
}

/// Reads one `[[catch.round]]`.
pub(super) fn round(part: &Part<'_>, unit: Option<&Unit>) -> Option<RoundFacts> {
    let values = part.list("readings");
    if values.is_empty() {
        if !part.has("readings") {
            part.missing("readings", READINGS);
        } else {
            let none = Mistake::value("no_readings", "there are no readings");
            part.fault("readings", none.would_do("give a reading for each tip, \"-\" where not caught"));
        }
        return None;
    }
    let numbers: Vec<u32> =
        if part.has("tips") { part.counts("tips") } else { (1..).take(values.len()).collect() };
    if numbers.len() != values.len() {
        let differ = Mistake::value("tips_and_readings", "{named} named, but {given} readings given")
            .would_do("give one reading for each tip named")
            .count("named", numbers.len())
            .count("given", values.len());
        part.fault("tips", differ);
        return None;
    }
    let mut seen = std::collections::BTreeSet::new();
    if let Some(twice) = numbers.iter().find(|number| !seen.insert(**number)) {
        let named_twice = Mistake::value("tip_twice", "tip {tip} is named twice")
            .would_do("name each tip once; give its readings as a list")
            .with("tip", Arg::Count(*twice));
        part.fault("tips", named_twice);
        return None;
    }
    let tips = numbers
        .into_iter()
        .zip(values)
        .filter_map(|(number, value)| {
            of_tip(part, "readings", value, unit).map(|readings| (number, readings))
        })
        .collect();
    let kind = part.text("after").map_or(RoundKind::AsFound, |words| RoundKind::from_words(&words));
    let swapped = part.counts("swapped");
    if !swapped.is_empty() && (swapped.len() != 2 || swapped[0] == swapped[1]) {
        let two = Mistake::value("swapped_tips", "a swap has two tips")
            .would_do("name the two tips that changed places, as [7, 8]; one round for each swap");
        part.fault("swapped", two);
    }
    let tip_set = part.text("tip_set");
    Some(RoundFacts {
        kind,
        tips,
        tip_set,
        time: time_of(part, "time"),
        pressure: part.positive("pressure"),
        swapped,
    })
}

/// The unit that bare numbers take: that of the cup's marks.
pub(super) fn bare_unit(marks: Option<&Marks>) -> Option<Unit> {
    marks
        .and_then(|marks| marks.step().unit().cloned())
        .filter(|unit| matches!(unit.dimension(), Dimension::Volume | Dimension::Mass))
}
