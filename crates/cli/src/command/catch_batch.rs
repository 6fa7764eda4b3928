//! `evenswath catch --batch`: one catch test on each line, answered in order; a bad line does not stop the rest.

use serde_json::{Map, Value};
use units::{Arg, Args};
use words::Words;

use super::catch_test::{Given, GivenReading};
use crate::args::CatchArgs;
use crate::error::{CliError, Place};
use crate::out::Answer;

/// Works every line out.
pub fn run(args: &CatchArgs, words: &Words) -> Result<Answer, CliError> {
    let path = args.batch.clone().unwrap_or_default();
    super::batch::run(&path, words, |line| {
        let given = one(line).map(|given| Given { doubtful: super::catch::doubtful(args), ..given })?;
        let object = super::catch::object(&given.work_out()?, words);
        Ok((is_outside(&object), object))
    })
}

fn is_outside(object: &Value) -> bool {
    let off = |tip: &Value| tip["verdict"] == "outside" || tip["against_new"]["verdict"] == "outside";
    object["tips"].as_array().is_some_and(|tips| tips.iter().any(off))
}

fn one(line: &[u8]) -> Result<Given, CliError> {
    let object = object(line, KNOWN)?;
    let Some(Value::Array(readings)) = object.get("readings") else {
        return Err(CliError::usage("no_readings", Args::new()));
    };
    let mut tips = Vec::new();
    for (number, reading) in (1..).zip(readings) {
        tips.push(tip(number, reading)?);
    }
    Ok(Given {
        time: needed(&object, "time", "30 s")?,
        step: needed(&object, "step", "1 fl oz")?,
        tips,
        limit: text(&object, "limit")?,
        rated: text(&object, "rated")?,
        pressure: text(&object, "pressure")?,
        cup_holds: text(&object, "cup_holds")?,
        timer: text(&object, "timer")?,
        shares: [share(&object, "cup_scale")?, share(&object, "watch")?, share(&object, "handling")?],
        risk: match object.get("risk") {
            None | Some(Value::Null) => None,
            Some(Value::Number(risk)) => risk.as_f64(),
            Some(other) => return Err(wrong("risk", other, "risk")),
        },
        density: text(&object, "density")?,
        order: order(&object)?,
        ..Given::default()
    })
}

/// A line as an object, which has no other fields than those that are known.
pub fn object(line: &[u8], known: &[&str]) -> Result<Map<String, Value>, CliError> {
    let value: Value = serde_json::from_slice(line).map_err(|error| {
        CliError::usage("not_json", Args::new().with("detail", Arg::Text(error.to_string())))
    })?;
    let Value::Object(object) = value else {
        return Err(CliError::usage("not_an_object", Args::new()));
    };
    check_fields(&object, known)?;
    Ok(object)
}

/// A field that is not known is a slip, and said.
pub fn check_fields(object: &Map<String, Value>, known: &[&str]) -> Result<(), CliError> {
    match object.keys().find(|key| !known.contains(&key.as_str())) {
        Some(odd) => {
            let told =
                Args::new().with("field", Arg::Text(odd.clone())).with("known", Arg::Text(known.join(", ")));
            Err(CliError::usage("unknown_field", told))
        }
        None => Ok(()),
    }
}

/// The fields of a line.
pub const KNOWN: &[&str] = &[
    "time",
    "step",
    "limit",
    "readings",
    "rated",
    "pressure",
    "cup_holds",
    "timer",
    "cup_scale",
    "watch",
    "handling",
    "risk",
    "order",
    "density",
];

/// One tip's readings.
pub fn tip(number: u32, value: &Value) -> Result<Vec<GivenReading>, CliError> {
    match value {
        Value::Null => Ok(Vec::new()),
        Value::Array(several) => several.iter().map(|value| reading(number, value)).collect(),
        one => reading(number, one).map(|reading| vec![reading]),
    }
}

fn reading(number: u32, value: &Value) -> Result<GivenReading, CliError> {
    let at = || Place::Tip(number);
    match value {
        Value::String(text) => Ok(GivenReading { reading: text.clone(), ..GivenReading::default() }),
        Value::Number(bare) => Ok(GivenReading { reading: bare.to_string(), ..GivenReading::default() }),
        Value::Object(object) => {
            let known = ["reading", "time", "step", "run"];
            if let Some(odd) = object.keys().find(|key| !known.contains(&key.as_str())) {
                return Err(wrong(at(), &Value::from(odd.as_str()), "reading_field"));
            }
            let given = match object.get("reading") {
                Some(Value::Number(bare)) => bare.to_string(),
                _ => needed(object, "reading", "14 fl oz")?,
            };
            let run = match object.get("run") {
                None | Some(Value::Null) => None,
                Some(run) => Some(whole(run).ok_or_else(|| wrong(at(), run, "run"))?),
            };
            Ok(GivenReading { reading: given, time: text(object, "time")?, step: text(object, "step")?, run })
        }
        other => Err(wrong(at(), other, "reading")),
    }
}

/// A whole number from 1.
fn whole(value: &Value) -> Option<u32> {
    value.as_u64().and_then(|number| u32::try_from(number).ok()).filter(|number| *number > 0)
}

/// A text that must be there.
pub fn needed(object: &Map<String, Value>, name: &str, example: &str) -> Result<String, CliError> {
    text(object, name)?.ok_or_else(|| {
        let told = Args::new()
            .with("field", Arg::Text(name.to_string()))
            .with("example", Arg::Text(example.to_string()));
        CliError::usage("missing_field", told)
    })
}

/// A text that may be left out.
pub fn text(object: &Map<String, Value>, name: &str) -> Result<Option<String>, CliError> {
    match object.get(name) {
        None | Some(Value::Null) => Ok(None),
        Some(Value::String(text)) => Ok(Some(text.clone())),
        Some(other) => Err(wrong(name, other, "text")),
    }
}

/// The order of the cups: tip numbers from 1.
pub fn order(object: &Map<String, Value>) -> Result<Vec<u32>, CliError> {
    match object.get("order") {
        None | Some(Value::Null) => Ok(Vec::new()),
        Some(Value::Array(numbers)) => numbers
            .iter()
            .map(|number| whole(number).ok_or_else(|| wrong("order", number, "order")))
            .collect(),
        Some(other) => Err(wrong("order", other, "order")),
    }
}

/// A share: a percentage in quotes, or a bare fraction as `risk` is.
pub fn share(object: &Map<String, Value>, name: &str) -> Result<Option<String>, CliError> {
    match object.get(name) {
        Some(Value::Number(fraction)) => {
            let percent = fraction.as_f64().map(|fraction| units::tidy_digits(fraction * 100.0));
            Ok(percent.map(|percent| format!("{percent} %")))
        }
        _ => text(object, name),
    }
}

/// A value of the wrong kind; the case says what would do.
pub fn wrong(at: impl Into<Place>, value: &Value, case: &'static str) -> CliError {
    let told = Args::new().with("given", Arg::Text(value.to_string()));
    CliError::usage("wrong_kind", told).case(case).at(at)
}
