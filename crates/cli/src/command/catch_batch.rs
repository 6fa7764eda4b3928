//! `evenswath catch --batch`: one catch test on each line, answered in order; a bad line does not stop the rest.

use std::io::{BufRead, Write};

use serde_json::{Map, Value, json};
use units::{Arg, Args};
use words::Words;

use super::catch_test::{Given, GivenReading};
use crate::args::CatchArgs;
use crate::error::{CliError, Place};
use crate::out::Answer;

/// Works every line out and prints each answer as it comes, so that no file is too long. A batch answers in
/// JSON, with `--json` or without.
pub fn run(args: &CatchArgs, words: &Words) -> Result<Answer, CliError> {
    let path = args.batch.clone().unwrap_or_default();
    let mut answer = Answer::default();
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    let mut notes = anstream::stderr().lock();
    for (place, line) in super::input::lines(&path)?.split(b'\n').enumerate() {
        let line = line.map_err(|error| {
            let told = Args::new()
                .with("line", Arg::Text((place + 1).to_string()))
                .with("file", super::input::file(&path))
                .with("detail", Arg::Text(error.to_string()));
            CliError::read(if place == 0 { "first_line" } else { "line" }, told)
        })?;
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        let given = one(&line).map(|given| Given { doubtful: super::catch::doubtful(args), ..given });
        let object = match given.and_then(|given| given.work_out()) {
            Ok(outcome) => super::catch::object(&outcome, words),
            Err(error) => {
                answer.faulty = true;
                // A note is a courtesy; where it cannot be written the answer still says what is wrong.
                let message = error.line(words);
                let number = (place + 1).to_string();
                let note = [("number", number.into()), ("message", message.clone().into())];
                let _ = writeln!(notes, "{}", words.say("line-of_batch", &note));
                json!({ "error": { "code": error.code, "message": message } })
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
    CliError::read("unwritten", Args::new().with("detail", Arg::Text(error.to_string())))
}

fn is_outside(object: &Value) -> bool {
    let off = |tip: &Value| tip["verdict"] == "outside" || tip["against_new"]["verdict"] == "outside";
    object["tips"].as_array().is_some_and(|tips| tips.iter().any(off))
}

fn one(line: &[u8]) -> Result<Given, CliError> {
    let value: Value = serde_json::from_slice(line).map_err(|error| {
        CliError::usage("not_json", Args::new().with("detail", Arg::Text(error.to_string())))
    })?;
    let Value::Object(object) = value else {
        return Err(CliError::usage("not_an_object", Args::new()));
    };
    if let Some(odd) = object.keys().find(|key| !KNOWN.contains(&key.as_str())) {
        let told =
            Args::new().with("field", Arg::Text(odd.clone())).with("known", Arg::Text(KNOWN.join(", ")));
        return Err(CliError::usage("unknown_field", told));
    }
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
    let at = || Place::Tip(number);
    match value {
        Value::String(text) => Ok(GivenReading { reading: text.clone(), ..GivenReading::default() }),
        Value::Number(bare) => Ok(GivenReading { reading: bare.to_string(), ..GivenReading::default() }),
        Value::Object(object) => {
            if let Some(odd) = object.keys().find(|key| !["reading", "time", "step"].contains(&key.as_str()))
            {
                return Err(wrong(at(), &Value::from(odd.as_str()), "reading_field"));
            }
            let given = match object.get("reading") {
                Some(Value::Number(bare)) => bare.to_string(),
                _ => needed(object, "reading", "14 fl oz")?,
            };
            Ok(GivenReading { reading: given, time: text(object, "time")?, step: text(object, "step")? })
        }
        other => Err(wrong(at(), other, "reading")),
    }
}

fn needed(object: &Map<String, Value>, name: &str, example: &str) -> Result<String, CliError> {
    text(object, name)?.ok_or_else(|| {
        let told = Args::new()
            .with("field", Arg::Text(name.to_string()))
            .with("example", Arg::Text(example.to_string()));
        CliError::usage("missing_field", told)
    })
}

fn text(object: &Map<String, Value>, name: &str) -> Result<Option<String>, CliError> {
    match object.get(name) {
        None | Some(Value::Null) => Ok(None),
        Some(Value::String(text)) => Ok(Some(text.clone())),
        Some(other) => Err(wrong(name, other, "text")),
    }
}

/// The order of the cups: tip numbers from 1.
fn order(object: &Map<String, Value>) -> Result<Vec<u32>, CliError> {
    match object.get("order") {
        None | Some(Value::Null) => Ok(Vec::new()),
        Some(Value::Array(numbers)) => numbers
            .iter()
            .map(|number| {
                let tip =
                    number.as_u64().and_then(|number| u32::try_from(number).ok()).filter(|tip| *tip > 0);
                tip.ok_or_else(|| wrong("order", number, "order"))
            })
            .collect(),
        Some(other) => Err(wrong("order", other, "order")),
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

/// A value of the wrong kind; the case says what would do.
fn wrong(at: impl Into<Place>, value: &Value, case: &'static str) -> CliError {
    let told = Args::new().with("given", Arg::Text(value.to_string()));
    CliError::usage("wrong_kind", told).case(case).at(at)
}
