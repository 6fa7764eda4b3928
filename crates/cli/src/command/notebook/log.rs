//! `evenswath notebook log`: every line in the order of the notebook, struck and withdrawn ones too.

use std::path::Path;

use notebook::{Told, Written, folded};
use serde_json::{Value, json};
use words::Words;

use super::super::clock::day_and_time;
use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// Shows the lines.
pub fn run(folder: &Path, words: &Words) -> Result<Answer, CliError> {
    let book = kept::book(&kept::open(folder)?, folder)?;
    let struck = folded(&book).struck;
    let mut lines = Vec::new();
    let mut answer = Answer::default();
    for line in book.lines() {
        let written = line.written().map(Written::text);
        let mut text = match (written, Told::of(line)) {
            (None, _) => words.label("notebook-withdrawn"),
            (Some(_), None) => words.label("notebook-unknown"),
            (Some(text), Some(_)) => text.to_string(),
        };
        if let Some(reason) = struck.get(&line.id()) {
            text =
                format!("{text}  ({})", words.say("notebook-struck", &[("reason", reason.clone().into())]));
        }
        let device = line.device().to_string();
        answer.verbatim(words.say(
            "notebook-log_line",
            &[
                ("at", day_and_time(line.at()).into()),
                ("device", device[device.len().saturating_sub(4)..].to_string().into()),
                ("number", line.number().to_string().into()),
                ("about", line.about().kind.word().into()),
                ("text", text.into()),
            ],
        ));
        lines.push(json!({
            "id": line.id().to_string(),
            "about": { "kind": line.about().kind.word(), "id": line.about().id.to_string() },
            "device": device,
            "number": line.number(),
            "order": line.order(),
            "at": line.at().utc_milliseconds,
            "offset": line.at().offset_minutes,
            "version": line.version(),
            "entry": written,
            "struck": struck.get(&line.id()).map_or(Value::Null, |reason| Value::from(reason.as_str())),
        }));
    }
    answer.objects = vec![json!({ "lines": lines })];
    Ok(answer)
}
