//! `evenswath notebook verify`: whether it is whole, and what is not.

use std::path::Path;

use notebook::{folded, read_file, verify};
use serde_json::json;
use units::Coded;
use words::Words;

use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// Looks at the notebook of a folder, or at an exported file.
pub fn run(path: &Path, words: &Words) -> Result<Answer, CliError> {
    let mut wrong: Vec<(&'static str, String)> = Vec::new();
    let book = if path.is_dir() {
        let store = kept::open(path)?;
        store.check().map_err(kept::kept(path))?;
        kept::book(&store, path)?
    } else {
        let bytes = super::super::input::bytes(path, super::import::MOST_BYTES)?;
        let content = read_file(&String::from_utf8_lossy(&bytes))
            .map_err(|damage| CliError::input(super::super::input::place(path), &damage))?;
        wrong.extend(content.damage.iter().map(|damage| (damage.code(), words.error(damage))));
        content.book
    };
    wrong.extend(verify(&book).iter().map(|damage| (damage.code(), words.error(damage))));
    let visits = folded(&book).visits.len();
    let damage: Vec<_> = wrong.iter().map(|(code, text)| json!({ "code": code, "text": text })).collect();
    let mut answer = Answer::of(json!({
        "whole": wrong.is_empty(),
        "lines": book.len(),
        "visits": visits,
        "damage": damage,
    }));
    if wrong.is_empty() {
        answer.main(words.say("notebook-whole", &[("lines", book.len().into()), ("visits", visits.into())]));
    } else {
        answer.main(
            words.say("notebook-not_whole", &[("count", wrong.len().into()), ("lines", book.len().into())]),
        );
        wrong.iter().for_each(|(_, text)| answer.act(text.as_str()));
    }
    answer.outside = !wrong.is_empty();
    Ok(answer)
}
