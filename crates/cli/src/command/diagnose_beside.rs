//! What a line of a diagnosis may tell beside its cups: another pressure, pressures at tips, a new tip, the gauge, groups, swaps,
//! what was seen.

use calibration::catch::{Catch, Round, TipCatches};
use calibration::diagnosis::{DiagnosisModel, Gauge, Looked, OtherPressure, Seen, Swap, TipPressure};
use calibration::doubt::of_marks;
use serde_json::{Map, Value};
use sprayer::GroupId;
use units::{Arg, Args, Pressure};

use super::catch_batch::{check_fields, needed, text, tip, wrong};
use super::catch_test::{Given, GivenReading};
use super::input::positive;
use crate::error::CliError;

/// The marks of a gauge of which nothing is said, 2 psi. Our assumption for a good small gauge.
const USUAL_MARKS: Pressure = Pressure::psi(2.0);

/// Reads them into the model, and the groups into the round.
pub fn beside(
    fields: &Map<String, Value>,
    given: &Given,
    round: &mut Round,
    model: &mut DiagnosisModel,
) -> Result<(), CliError> {
    let told =
        ["second", "tip_pressure"].into_iter().find(|name| fields.get(*name).is_some_and(|it| !it.is_null()));
    if let Some(name) = told.filter(|_| given.rated.is_none()) {
        let told = Args::new().with("field", Arg::Text(name.to_string()));
        return Err(CliError::usage("needs_rated", told).at(name));
    }
    model.gauge = gauge(fields)?;
    model.others = list(fields, "second")?
        .into_iter()
        .map(|value| second(value, given, round))
        .collect::<Result<_, CliError>>()?;
    model.tip_pressures = list(fields, "tip_pressure")?
        .into_iter()
        .map(|value| tip_pressure(value, round))
        .collect::<Result<_, _>>()?;
    if let Some(value) = fields.get("new_tip").filter(|value| !value.is_null()) {
        model.new_tip = given.catches(0, &tip(0, value)?)?;
    }
    model.swaps = list(fields, "swapped")?
        .into_iter()
        .map(|value| swap(value, given, round))
        .collect::<Result<_, _>>()?;
    model.seen =
        list(fields, "seen")?.into_iter().map(|value| seen(value, round)).collect::<Result<_, _>>()?;
    model.looked = looked(fields)?;
    groups(fields, round)
}

/// Two tips swapped, and what was caught then at the place of each.
fn swap(fields: &Map<String, Value>, given: &Given, round: &Round) -> Result<Swap, CliError> {
    check_fields(fields, &["tips", "readings"])?;
    let (Some([one, other]), Some([first, second])) = (two(fields, "tips"), two(fields, "readings")) else {
        return Err(wrong("swapped", &Value::Object(fields.clone()), "swapped"));
    };
    let tips = (tip_of_boom("swapped", one, round)?, tip_of_boom("swapped", other, round)?);
    if tips.0 == tips.1 {
        return Err(wrong("swapped", &Value::Object(fields.clone()), "swapped"));
    }
    Ok(Swap {
        tips,
        after: [given.catches(tips.0, &tip(tips.0, first)?)?, given.catches(tips.1, &tip(tips.1, second)?)?],
    })
}

fn two<'a>(fields: &'a Map<String, Value>, name: &str) -> Option<[&'a Value; 2]> {
    let list = fields.get(name)?.as_array()?;
    match list.as_slice() {
        [one, other] => Some([one, other]),
        _ => None,
    }
}

/// The number of a tip of the boom.
fn tip_of_boom(at: &'static str, value: &Value, round: &Round) -> Result<u32, CliError> {
    let number = value.as_u64().and_then(|tip| u32::try_from(tip).ok());
    number
        .filter(|number| round.tips.iter().any(|tip| tip.number == *number))
        .ok_or_else(|| wrong(at, value, "tip_of_boom"))
}

/// Something seen of one tip.
fn seen(fields: &Map<String, Value>, round: &Round) -> Result<Seen, CliError> {
    check_fields(fields, &["tip", "what"])?;
    let tip = tip_of_boom("seen", fields.get("tip").unwrap_or(&Value::Null), round)?;
    let what = needed(fields, "what", "streaky_fan")?;
    Seen::from_word(tip, &what).ok_or_else(|| wrong("seen", &Value::from(what.as_str()), "seen"))
}

/// The questions of the look with yes or no, as in a visit's file.
fn looked(fields: &Map<String, Value>) -> Result<Vec<Looked>, CliError> {
    let answers = match fields.get("looked") {
        None | Some(Value::Null) => return Ok(Vec::new()),
        Some(Value::Object(answers)) => answers,
        Some(other) => return Err(wrong("looked", other, "looked")),
    };
    check_fields(
        answers,
        &["tips_alike", "strainers_clean", "gauge_back_to_zero", "no_drip_after_5_s", "foam"],
    )?;
    let mut looked = Vec::new();
    for (question, answer) in answers {
        let yes = match answer.as_str() {
            Some("yes") => true,
            Some("no") => false,
            _ => return Err(wrong("looked", answer, "looked")),
        };
        looked.extend(Looked::from_answer(question, yes));
    }
    Ok(looked)
}

/// A list of objects, or one by itself.
fn list<'a>(
    fields: &'a Map<String, Value>,
    name: &'static str,
) -> Result<Vec<&'a Map<String, Value>>, CliError> {
    let object = |value: &'a Value| value.as_object().ok_or_else(|| wrong(name, value, name));
    match fields.get(name) {
        None | Some(Value::Null) => Ok(Vec::new()),
        Some(Value::Array(several)) => several.iter().map(object).collect(),
        Some(one) => object(one).map(|one| vec![one]),
    }
}

fn gauge(fields: &Map<String, Value>) -> Result<Gauge, CliError> {
    let of = |name: &'static str| {
        text(fields, name)?.map(|text| super::input::quantity::<Pressure>(name, &text)).transpose()
    };
    let doubt = match text(fields, "gauge_marks")? {
        Some(text) => of_marks(positive::<Pressure>("gauge_marks", &text)?),
        None => Gauge::default().doubt,
    };
    Ok(Gauge { doubt, rests_at: of("gauge_rests_at")? })
}

/// Sections of readings at another pressure; null for each tip that was not caught there.
fn second(fields: &Map<String, Value>, given: &Given, round: &Round) -> Result<OtherPressure, CliError> {
    check_fields(fields, &["pressure", "sections"])?;
    let pressure = positive::<Pressure>("second", &needed(fields, "pressure", "20 psi")?)?;
    let Some(Value::Array(sections)) = fields.get("sections") else {
        return Err(CliError::usage("no_sections", Args::new()).at("second"));
    };
    let read = readings(sections)?;
    if read.len() != round.tips.len() {
        let told = Args::new()
            .with("given", Arg::Text(read.len().to_string()))
            .with("tips", Arg::Text(round.tips.len().to_string()));
        return Err(CliError::usage("second_other_tips", told).at("second"));
    }
    let mut tips = Vec::new();
    for (tip, readings) in round.tips.iter().zip(&read) {
        let catches = given.catches(tip.number, readings)?;
        tips.push(TipCatches { catches, ..tip.clone() });
    }
    tips.retain(|tip: &TipCatches| !tip.catches.is_empty());
    Ok(OtherPressure { pressure, tips })
}

/// Each tip's readings, section by section.
pub fn readings(sections: &[Value]) -> Result<Vec<Vec<GivenReading>>, CliError> {
    let mut tips: Vec<Vec<GivenReading>> = Vec::new();
    for of_section in sections {
        let Value::Array(readings) = of_section else {
            return Err(wrong("sections", of_section, "sections"));
        };
        for reading in readings {
            let number = u32::try_from(tips.len() + 1).unwrap_or(u32::MAX);
            // TOML has no null: there a tip that was not caught is written as on paper.
            let uncaught = matches!(reading.as_str().map(str::trim), Some("-" | "−"));
            tips.push(if uncaught { Vec::new() } else { tip(number, reading)? });
        }
    }
    Ok(tips)
}

fn tip_pressure(fields: &Map<String, Value>, round: &Round) -> Result<TipPressure, CliError> {
    check_fields(fields, &["tip", "pressure", "marks"])?;
    let tip = tip_of_boom("tip_pressure", fields.get("tip").unwrap_or(&Value::Null), round)?;
    let pressure = positive::<Pressure>("tip_pressure", &needed(fields, "pressure", "38 psi")?)?;
    let marks = match text(fields, "marks")? {
        Some(text) => positive::<Pressure>("tip_pressure", &text)?,
        None => USUAL_MARKS,
    };
    Ok(TipPressure { tip, pressure, doubt: of_marks(marks) })
}

/// Lists of tips that are meant to differ from the others.
fn groups(fields: &Map<String, Value>, round: &mut Round) -> Result<(), CliError> {
    let groups = match fields.get("groups") {
        None | Some(Value::Null) => return Ok(()),
        Some(Value::Array(groups)) => groups,
        Some(other) => return Err(wrong("groups", other, "groups")),
    };
    for (group, tips) in (1_u16..).zip(groups) {
        let Value::Array(tips) = tips else { return Err(wrong("groups", tips, "groups")) };
        for value in tips {
            let number = tip_of_boom("groups", value, round)?;
            round
                .tips
                .iter_mut()
                .filter(|tip| tip.number == number)
                .for_each(|tip| tip.group = GroupId(group));
        }
    }
    Ok(())
}

impl Given {
    /// Cups of a tip, with the line's usual time and marks.
    fn catches(&self, number: u32, readings: &[GivenReading]) -> Result<Vec<Catch>, CliError> {
        let given = Self {
            tips: vec![readings.to_vec()],
            time: self.time.clone(),
            step: self.step.clone(),
            ..Self::default()
        };
        let (round, _) = given.round_from(number)?;
        Ok(round.tips.into_iter().flat_map(|tip| tip.catches).collect())
    }
}
