//! A second copy that keeps itself, and a notebook saved out of what is left of a damaged one.
//!
//! Copies stand in a folder beside the file, each under a label that the caller gives: the day and time, most often. A copy is
//! made under another name, looked at, and only then given its own, so that a copy that has its name is whole.

use std::path::{Path, PathBuf};

use notebook::{Damage, DeviceId, Line, Notebook, verify};
use rusqlite::{Connection, OpenFlags};

use crate::sqlite::{readable_lines, told};
use crate::{Opening, SqliteStore, Store, StoreError, TakenIn};

/// The folder of the copies, beside the notebook's file.
const FOLDER: &str = "copies";
/// How many copies are kept. Our own choice: a week of days and the last few of today.
pub const KEPT: usize = 10;

/// Makes a copy under a label and lets the oldest go; gives the copy's file.
///
/// *Assumptions*: labels sort by age, as "2027-04-14 15.04.05" does, and hold no `/`.
///
/// *Errors*: no room, no right to write; then every copy that was there is there still.
pub fn copy(store: &SqliteStore, folder: &Path, label: &str) -> Result<PathBuf, StoreError> {
    let copies = folder.join(FOLDER);
    std::fs::create_dir_all(&copies).map_err(|error| by_the_system(&error))?;
    let name = format!("{}.sqlite", label.replace(['/', '\\', ':'], "."));
    let (unfinished, finished) = (copies.join(format!("{name}.part")), copies.join(name));
    let _ = std::fs::remove_file(&unfinished);
    store.copy_to(&unfinished)?;
    // Looked at before it takes a name, and before an older one goes.
    whole(&unfinished)?;
    std::fs::File::open(&unfinished)
        .and_then(|file| file.sync_all())
        .map_err(|error| by_the_system(&error))?;
    std::fs::rename(&unfinished, &finished).map_err(|error| by_the_system(&error))?;
    let mut all = list(folder)?;
    while all.len() > KEPT {
        std::fs::remove_file(all.remove(0)).map_err(|error| by_the_system(&error))?;
    }
    Ok(finished)
}

/// The copies there are, the oldest first.
///
/// *Errors*: those of the system; a folder without copies is none.
pub fn list(folder: &Path) -> Result<Vec<PathBuf>, StoreError> {
    let copies = folder.join(FOLDER);
    if !copies.is_dir() {
        return Ok(Vec::new());
    }
    let files = std::fs::read_dir(copies).map_err(|error| by_the_system(&error))?;
    let mut all: Vec<PathBuf> = files
        .filter_map(|file| file.ok().map(|file| file.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "sqlite"))
        .collect();
    all.sort();
    Ok(all)
}

/// What was saved.
#[derive(Debug)]
pub struct Saved {
    /// The new notebook, which goes on as a new device.
    pub store: SqliteStore,
    /// What came from the copies.
    pub from_copies: TakenIn,
    /// What came from the damaged file besides.
    pub from_file: TakenIn,
    /// What is not as it should be in what was saved.
    pub damage: Vec<Damage>,
}

/// Makes a new notebook at `to` of the copies of a damaged one and of everything still readable in it. Nothing of the old is
/// touched.
///
/// *Errors*: neither a copy nor the file can be read at all; no room, no right to write; `to` is there already.
pub fn save(damaged: &Path, to: &Path, device: DeviceId) -> Result<Saved, StoreError> {
    if to.exists() {
        return Err(StoreError::System { what: format!("{} is there already", to.display()) });
    }
    let folder = damaged.parent().unwrap_or_else(|| Path::new("."));
    // The newest first: most often it has all the others have.
    let mut copies = list(folder)?;
    copies.reverse();
    let of_copies: Vec<Vec<Line>> = copies.iter().filter_map(|copy| lines_of(copy).ok()).collect();
    let of_file = lines_of(damaged).unwrap_or_default();
    let first = of_copies.iter().flatten().chain(&of_file).next();
    let notebook =
        first.map(Line::notebook).ok_or(StoreError::Damaged { what: "nothing of it can be read".into() })?;
    let store = SqliteStore::open(to, Opening { notebook, device })?;
    let mut from_copies = TakenIn::default();
    for lines in of_copies {
        from_copies.add(crate::now(store.take(lines))?);
    }
    let from_file = crate::now(store.take(of_file))?;
    let mut book = Notebook::new(notebook);
    crate::now(store.lines())?.into_iter().for_each(|line| {
        book.take(line);
    });
    Ok(Saved { store, from_copies, from_file, damage: verify(&book) })
}

/// Every line that can still be read out of a file, row by row.
fn lines_of(path: &Path) -> Result<Vec<Line>, StoreError> {
    let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY).map_err(told)?;
    readable_lines(&connection)
}

/// Whether a file is a whole SQLite file.
fn whole(path: &Path) -> Result<(), StoreError> {
    let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY).map_err(told)?;
    let said: String =
        connection.query_row("PRAGMA integrity_check(1)", [], |row| row.get(0)).map_err(told)?;
    if said == "ok" { Ok(()) } else { Err(StoreError::Damaged { what: said }) }
}

fn by_the_system(error: &std::io::Error) -> StoreError {
    match error.kind() {
        std::io::ErrorKind::StorageFull => StoreError::Full,
        std::io::ErrorKind::PermissionDenied | std::io::ErrorKind::ReadOnlyFilesystem => StoreError::ReadOnly,
        _ => StoreError::System { what: error.to_string() },
    }
}
