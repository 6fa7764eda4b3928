//! The notebook of a folder, and names and times for what is written into it.

use std::path::Path;

use notebook::{
    About, DeviceId, Draft, LineId, Notebook, NotebookId, RowId, ThingId, Told, VERSION, Written,
};
pub use store::now;
use store::{Opening, SqliteStore, Store, StoreError};
use units::Args;
use words::Words;

use super::super::clock::{self, milliseconds};
use crate::error::CliError;

/// The file within the folder.
const FILE: &str = "notebook.sqlite";

/// Opens the notebook of a folder, which must be there.
pub fn open(folder: &Path) -> Result<SqliteStore, CliError> {
    if !folder.join(FILE).is_file() {
        let args = Args::new().with("folder", super::super::input::file(folder));
        return Err(CliError::usage("notebook_none", args));
    }
    match opened(folder, None)? {
        // What may not be written to can still be read; whoever writes into it is told then.
        Err(StoreError::ReadOnly) => SqliteStore::open_for_reading(&folder.join(FILE)),
        done => done,
    }
    .map_err(kept(folder))
}

/// Opens the notebook of a folder, or begins one: a new one, or a copy of one that is known.
pub fn begin(folder: &Path, copy_of: Option<NotebookId>) -> Result<SqliteStore, CliError> {
    let made = std::fs::create_dir_all(folder);
    made.map_err(|error| kept(folder)(StoreError::System { what: error.to_string() }))?;
    opened(folder, copy_of)?.map_err(kept(folder))
}

/// The store of a folder that is there.
fn opened(folder: &Path, copy_of: Option<NotebookId>) -> Result<Result<SqliteStore, StoreError>, CliError> {
    let notebook = match copy_of {
        Some(notebook) => notebook,
        None => NotebookId::new(milliseconds(), &chance()?),
    };
    let opening = Opening { notebook, device: DeviceId::new(milliseconds(), &chance()?) };
    Ok(SqliteStore::open(&folder.join(FILE), opening))
}

/// A store's error, with the folder it is about.
pub fn kept(folder: &Path) -> impl Fn(StoreError) -> CliError {
    let place = super::super::input::place(folder);
    move |error| CliError::not_made(&error).at(place.clone())
}

/// The whole notebook in memory.
pub fn book(store: &SqliteStore, folder: &Path) -> Result<Notebook, CliError> {
    let mut book = Notebook::new(store.notebook());
    for line in now(store.lines()).map_err(kept(folder))? {
        book.take(line);
    }
    Ok(book)
}

/// A new draft, with a name, a time and chance of its own.
pub fn draft(about: About, told: impl Into<Told>) -> Result<Draft, CliError> {
    let mut salt = [0; 16];
    fill(&mut salt)?;
    Ok(Draft {
        id: LineId::new(milliseconds(), &chance()?),
        about,
        at: clock::now(),
        version: VERSION,
        written: Written::new(told.into().text(), salt),
    })
}

/// A new name for a row or thing.
pub fn names() -> Result<(RowId, ThingId), CliError> {
    Ok((RowId::new(milliseconds(), &chance()?), ThingId::new(milliseconds(), &chance()?)))
}

fn chance() -> Result<[u8; 10], CliError> {
    let mut bytes = [0; 10];
    fill(&mut bytes)?;
    Ok(bytes)
}

/// Chance out of the system; without it no name would be our own, so nothing is written.
fn fill(bytes: &mut [u8]) -> Result<(), CliError> {
    getrandom::fill(bytes)
        .map_err(|error| CliError::not_made(&StoreError::System { what: error.to_string() }))
}

/// Brings the second copy up to date; where that fails it is said, and what was kept is kept all the same.
pub fn copy(store: &SqliteStore, folder: &Path, words: &Words) -> Option<String> {
    let failed = store::copies::copy(store, folder, &super::super::clock::label()).err()?;
    Some(words.say("notebook-no_copy", &[("why", words.error(&failed).into())]))
}

/// Saves what can be saved of a damaged notebook into a new one.
pub fn save(damaged: &Path, to: &Path) -> Result<store::copies::Saved, CliError> {
    if !damaged.join(FILE).is_file() {
        let args = Args::new().with("folder", super::super::input::file(damaged));
        return Err(CliError::usage("notebook_none", args));
    }
    let made = std::fs::create_dir_all(to);
    made.map_err(|error| kept(to)(StoreError::System { what: error.to_string() }))?;
    let device = DeviceId::new(milliseconds(), &chance()?);
    store::copies::save(&damaged.join(FILE), &to.join(FILE), device).map_err(kept(damaged))
}
