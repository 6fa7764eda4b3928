//! `evenswath notebook import`: visit files and exported notebooks into the notebook of a folder.

use std::path::{Path, PathBuf};

use notebook::{About, Entry, Kind, Notebook, ThingId, entries_of_file, read_file};
use serde_json::json;
use store::{SqliteStore, Store};
use units::Args;
use words::Words;

use super::kept;
use crate::error::CliError;
use crate::out::Answer;

/// The most bytes read of an exported notebook. Our own choice: a hundred thousand lines and more.
pub const MOST_BYTES: u64 = 256_000_000;

/// Takes each file in, in the order given; what was taken before a file at fault stays.
pub fn run(folder: &Path, files: &[PathBuf], words: &Words) -> Result<Answer, CliError> {
    let mut all = Vec::new();
    let mut answer = Answer::default();
    for file in files {
        let visit = file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("toml"));
        let object = if visit {
            a_visit(folder, file, words, &mut answer)?
        } else {
            a_notebook(folder, file, words, &mut answer)?
        };
        all.push(object);
    }
    answer.notes.extend(kept::copy(&kept::open(folder)?, folder, words));
    answer.objects = vec![json!({ "files": all })];
    Ok(answer)
}

fn a_visit(
    folder: &Path,
    file: &Path,
    words: &Words,
    answer: &mut Answer,
) -> Result<serde_json::Value, CliError> {
    // Read first with every mistake pointed at; only then is anything begun.
    let bytes = super::super::visit_check::bytes(file)?;
    super::super::visit_check::read_bytes(file, &bytes)?;
    let store = kept::begin(folder, None)?;
    let (_, thing) = kept::names()?;
    let about = About { kind: Kind::Visit, id: thing };
    let mut failed = None;
    let entries = entries_of_file(&bytes, || {
        kept::names().map_or_else(
            |error| {
                failed = Some(error);
                notebook::RowId::from_bits(0)
            },
            |names| names.0,
        )
    });
    if let Some(error) = failed {
        return Err(error);
    }
    let entries = entries.unwrap_or_default();
    let drafts = entries.into_iter().map(|entry| kept::draft(about, entry)).collect::<Result<Vec<_>, _>>()?;
    let lines = kept::now(store.append(drafts)).map_err(kept::kept(folder))?;
    answer.main(words.say("notebook-visit_begun", &[("visit", thing.to_string().into())]));
    answer.plain(words.say("notebook-imported", &[("new", lines.len().into()), ("known", 0.into())]));
    Ok(
        json!({ "file": file.display().to_string(), "visit": thing.to_string(), "new": lines.len(), "known": 0 }),
    )
}

fn a_notebook(
    folder: &Path,
    file: &Path,
    words: &Words,
    answer: &mut Answer,
) -> Result<serde_json::Value, CliError> {
    let place = || super::super::input::place(file);
    let bytes = super::super::input::bytes(file, MOST_BYTES)?;
    let text = String::from_utf8_lossy(&bytes);
    let content = read_file(&text).map_err(|damage| CliError::input(place(), &damage))?;
    let new = !folder.join("notebook.sqlite").is_file();
    let store = kept::begin(folder, Some(content.book.id()))?;
    if store.notebook() != content.book.id() {
        let args = Args::new().with("folder", super::super::input::file(folder));
        return Err(CliError::usage("notebook_other", args).at(place()));
    }
    let taken = kept::now(store.take(content.book.lines().cloned().collect())).map_err(kept::kept(folder))?;
    if new {
        goes_on(&store, &content.book, folder)?;
    }
    for damage in &content.damage {
        answer.notes.push(words.error(damage));
    }
    answer.plain(words.say("notebook-imported", &[("new", taken.new.into()), ("known", taken.known.into())]));
    let damage: Vec<_> = content.damage.iter().map(|damage| words.error(damage)).collect();
    answer.faulty |= !content.damage.is_empty();
    Ok(json!({
        "file": file.display().to_string(),
        "new": taken.new,
        "known": taken.known,
        "filled_in": taken.filled_in,
        "damage": damage,
    }))
}

/// A copy goes on as a new device, and says whose lines it goes on from.
fn goes_on(store: &SqliteStore, book: &Notebook, folder: &Path) -> Result<(), CliError> {
    let last = book.lines().last().map(|line| (line.device(), book.held().last(line.device())));
    let about = About { kind: Kind::Notebook, id: ThingId::from_bits(book.id().bits()) };
    let entry = Entry::Device { name: String::new(), continues: last };
    kept::now(store.append(vec![kept::draft(about, entry)?])).map_err(kept::kept(folder))?;
    Ok(())
}
