//! `evenswath visit check`: everything that a visit's file has readings for, and what follows from it.

use std::path::Path;

use units::{Coded, UnitSystem};

use crate::error::{CliError, INPUT};
use crate::out::{Answer, visit_json, visit_text};

/// The most bytes read of a visit file; the reader refuses more with a word of its own.
const MOST_BYTES: u64 = 1_000_001;

/// Reads the file and works it out.
pub fn run(file: &Path, system: UnitSystem) -> Result<Answer, CliError> {
    let bytes = super::input::bytes(file, MOST_BYTES)?;
    let shown = super::input::shown(file);
    let visit = visit::file::read(&bytes).map_err(|errors| {
        let list = errors.list();
        let mut messages: Vec<(String, Option<String>)> = list
            .iter()
            .take(MOST_MESSAGES)
            .map(|error| (format!("{shown}: {error}"), error.hint()))
            .collect();
        if list.len() > MOST_MESSAGES {
            messages.push((format!("and {} more", list.len() - MOST_MESSAGES), None));
        }
        CliError {
            status: INPUT,
            code: list.first().map_or("file", |error| error.code).to_string(),
            messages,
        }
    })?;
    let outcome = visit::findings::findings(&visit, system)
        .map_err(|error| CliError::input(&shown, &error).unless_kept(HOW_TO_KEEP))?;
    let mut answer = Answer::of(visit_json::object(&visit, &outcome, system));
    visit_text::lines(&mut answer, &visit, &outcome, system);
    answer.outside = outcome.is_outside();
    Ok(answer)
}

/// How a reading that cannot be is kept in a visit.
const HOW_TO_KEEP: &str =
    "look at the reading, its unit and the time; if it is right, write doubtful = \"keep\" under [catch]";

/// More mistakes than these are counted, not shown. Our own choice: a screen's worth.
const MOST_MESSAGES: usize = 12;
