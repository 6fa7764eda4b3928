//! `evenswath notebook save`: a new notebook out of the copies of a damaged one and all that can still be read of it.

use std::path::Path;

use serde_json::json;
use units::Coded;
use words::Words;

use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// Saves it, and says what is lost.
pub fn run(folder: &Path, to: &Path, words: &Words) -> Result<Answer, CliError> {
    let saved = kept::save(folder, to)?;
    let book = kept::book(&saved.store, to)?;
    let damage: Vec<_> = saved
        .damage
        .iter()
        .map(|damage| json!({ "code": damage.code(), "text": words.error(damage) }))
        .collect();
    let mut answer = Answer::of(json!({
        "lines": book.len(),
        "from_copies": saved.from_copies.new,
        "from_file": saved.from_file.new,
        "damage": damage,
    }));
    answer.main(words.say(
        "notebook-saved",
        &[
            ("lines", book.len().into()),
            ("copies", saved.from_copies.new.into()),
            ("file", saved.from_file.new.into()),
        ],
    ));
    saved.damage.iter().for_each(|damage| answer.act(words.error(damage)));
    answer.outside = !saved.damage.is_empty();
    Ok(answer)
}
