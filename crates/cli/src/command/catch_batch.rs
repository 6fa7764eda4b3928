//! `evenswath catch --batch`: one catch test on each line, answered in order; a bad line does not stop the rest.

use std::io::{BufRead, Write};

use serde_json::{Map, Value, json};
use units::UnitSystem;

use super::catch_test::{Given, GivenReading};
use crate::args::CatchArgs;
use crate::error::CliError;
use crate::out::Answer;

/// Works every line out and prints each answer as it comes, so that no file is too long. A batch answers in
/// JSON, with `--json` or without.
pub fn run(args: &CatchArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let path = args.batch.clone().unwrap_or_default();
    let mut answer = Answer::default();
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    let mut notes = anstream::stderr().lock();
    for (place, line) in super::input::lines(&path)?.split(b'\n').enumerate() {
        let line = line.map_err(|error| {
            let hint = if place == 0 {
                "is it a file that can be read?"
            } else {
                "the lines before this were answered"
            };
            CliError::read(
                format!("line {} of {} cannot be read: {error}", place + 1, super::input::shown(&path)),
                hint,
            )
        })?;
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        let given = one(&line).map(|given| Given { doubtful: super::catch::doubtful(args), ..given });
        let object = match given.and_then(|given| given.work_out()) {
            Ok(outcome) => super::catch::object(&outcome, system),
            Err(error) => {
                answer.faulty = true;
                // A note is a courtesy; where it cannot be written the answer still says what is wrong.
                let _ = writeln!(notes, "line {}: {}", place + 1, error.line());
                json!({ "error": { "code": error.code, "message": error.line() } })
            }
        };
        answer.outside |= is_outside(&object);
        match writeln!(out, "{object}") {
            Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => return Ok(answer),
            Err(error) => return Err(unwritten(&error)),
            Ok(()) => {}
        }
    }
    out.flush().map_err(|error| unwritten(&error))?;
    Ok(answer)
}

fn unwritten(error: &std::io::Error) -> CliError {
    CliError::read(format!("the answer cannot be written: {error}"), "is there room where it goes?")
}

fn is_outside(object: &Value) -> bool {
    let off = |tip: &Value| tip["verdict"] == "outside" || tip["against_new"]["verdict"] == "outside";
    object["tips"].as_array().is_some_and(|tips| tips.iter().any(off))
}

fn one(line: &[u8]) -> Result<Given, CliError> {
    let value: Value = serde_json::from_slice(line).map_err(|error| {
        CliError::usage(
            "not_json",
            format!("this line is not JSON: {error}"),
            "write one object on each line",
        )
    })?;
    let Value::Object(object) = value else {
        return Err(CliError::usage(
            "not_an_object",
            "this line is not an object",
            "write one object on each line",
        ));
    };
    if let Some(odd) = object.keys().find(|key| !KNOWN.contains(&key.as_str())) {
        return Err(CliError::usage(
            "unknown_field",
            format!("there is no field \"{odd}\""),
            format!("fields that would do: {}", KNOWN.join(", ")),
        ));
    }
    let Some(Value::Array(readings)) = object.get("readings") else {
        return Err(CliError::usage(
            "no_readings",
            "readings: a list is needed",
            "write \"readings\": [\"14 fl oz\", null]",
        ));
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
            Some(other) => return Err(wrong("risk", other, "a number is needed, as 0.05")),
        },
        density: text(&object, "density")?,
        order: order(&object)?,
        ..Given::default()
    })
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

fn tip(number: u32, value: &Value) -> Result<Vec<GivenReading>, CliError> {
    match value {
        Value::Null => Ok(Vec::new()),
        Value::Array(several) => several.iter().map(|value| reading(number, value)).collect(),
        one => reading(number, one).map(|reading| vec![reading]),
    }
}

fn reading(number: u32, value: &Value) -> Result<GivenReading, CliError> {
    let name = format!("tip {number}");
    match value {
        Value::String(text) => Ok(GivenReading { reading: text.clone(), ..GivenReading::default() }),
        Value::Number(bare) => Ok(GivenReading { reading: bare.to_string(), ..GivenReading::default() }),
        Value::Object(object) => {
            if let Some(odd) = object.keys().find(|key| !["reading", "time", "step"].contains(&key.as_str()))
            {
                return Err(wrong(&name, &Value::from(odd.as_str()), "a reading has reading, time and step"));
            }
            let given = match object.get("reading") {
                Some(Value::Number(bare)) => bare.to_string(),
                _ => needed(object, "reading", "14 fl oz")?,
            };
            Ok(GivenReading { reading: given, time: text(object, "time")?, step: text(object, "step")? })
        }
        other => Err(wrong(&name, other, "write a reading as \"14 fl oz\", or null where it was not caught")),
    }
}

fn needed(object: &Map<String, Value>, name: &str, example: &str) -> Result<String, CliError> {
    text(object, name)?.ok_or_else(|| {
        CliError::usage(
            "missing_field",
            format!("{name} is missing"),
            format!("write \"{name}\": \"{example}\""),
        )
    })
}

fn text(object: &Map<String, Value>, name: &str) -> Result<Option<String>, CliError> {
    match object.get(name) {
        None | Some(Value::Null) => Ok(None),
        Some(Value::String(text)) => Ok(Some(text.clone())),
        Some(other) => Err(wrong(name, other, "write it in quotes with its unit")),
    }
}

/// The order of the cups: tip numbers from 1.
fn order(object: &Map<String, Value>) -> Result<Vec<u32>, CliError> {
    let would_do = "write the tips in the order they were caught, as [1, 2, 3, 1]";
    match object.get("order") {
        None | Some(Value::Null) => Ok(Vec::new()),
        Some(Value::Array(numbers)) => numbers
            .iter()
            .map(|number| {
                let tip =
                    number.as_u64().and_then(|number| u32::try_from(number).ok()).filter(|tip| *tip > 0);
                tip.ok_or_else(|| wrong("order", number, would_do))
            })
            .collect(),
        Some(other) => Err(wrong("order", other, would_do)),
    }
}

/// A share: a percentage in quotes, or a bare fraction as `risk` is.
fn share(object: &Map<String, Value>, name: &str) -> Result<Option<String>, CliError> {
    match object.get(name) {
        Some(Value::Number(fraction)) => {
            let percent = fraction.as_f64().map(|fraction| units::tidy_digits(fraction * 100.0));
            Ok(percent.map(|percent| format!("{percent} %")))
        }
        _ => text(object, name),
    }
}

fn wrong(name: &str, value: &Value, would_do: &str) -> CliError {
    CliError::usage("wrong_kind", format!("{name}: {value} will not do"), would_do)
}
