//! A second copy that keeps itself, and a notebook saved out of what is left of a damaged one.
//!
//! Copies stand in a folder beside the file, each under a label that the caller gives: the day and time. A copy is
//! made under another name, looked at, and only then given its own, so that a copy that has its name is whole. What an owner
//! withdrew is taken out of the older copies too, when the next one is made.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use notebook::{Damage, DeviceId, Notebook, ThingId, is_withdrawal, verify};
use rusqlite::{Connection, OpenFlags};

use crate::sqlite::{Found, find, told, withdrawn_things};
use crate::{Opening, SqliteStore, Store, StoreError, TakenIn};

/// The folder of the copies, beside the notebook's file.
const FOLDER: &str = "copies";
/// So many of the last copies are kept, whenever they were made. Our own choice.
pub const LAST: usize = 3;
/// Of so many of the last days that have copies, the newest of each is kept. Our own choice: a week.
pub const DAYS: usize = 7;
/// The letters of a label that say the day: "2027-04-14".
const DAY_LETTERS: usize = 10;

/// Makes a copy under a label and lets those go that are not kept any longer; gives the copy's file.
///
/// *Assumptions*: a label begins with the day and sorts by age, as "2027-04-14 15.04.05" does.
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
    settle(&unfinished, &finished)?;
    let all = list(folder)?;
    let kept = kept(&all);
    for old in all.iter().filter(|copy| **copy != finished) {
        if !kept.contains(old) || strip(store, old).is_err() {
            // What an owner withdrew must go; a copy that it cannot be taken out of goes as a whole.
            std::fs::remove_file(old).map_err(|error| by_the_system(&error))?;
        }
    }
    Ok(finished)
}

/// Those that are kept of copies in order of age.
fn kept(all: &[PathBuf]) -> BTreeSet<PathBuf> {
    let day = |copy: &Path| -> String {
        let name = copy.file_stem().unwrap_or_default().to_string_lossy();
        name.chars().take(DAY_LETTERS).collect()
    };
    let mut days = BTreeSet::new();
    let newest_first = all.iter().rev().enumerate();
    newest_first
        .filter(|(place, copy)| {
            let first_of_its_day = days.len() < DAYS && days.insert(day(copy));
            *place < LAST || first_of_its_day
        })
        .map(|(_, copy)| copy.clone())
        .collect()
}

/// Takes out of an older copy what was withdrawn since.
fn strip(store: &SqliteStore, copy: &Path) -> Result<(), StoreError> {
    let withdrawn = store.withdrawn()?;
    let known: BTreeSet<_> = withdrawn_of(copy)?.into_iter().collect();
    let unknown: Vec<_> = withdrawn.into_iter().filter(|thing| !known.contains(thing)).collect();
    if unknown.is_empty() {
        return Ok(());
    }
    let mut withdrawals = Vec::new();
    for thing in unknown {
        withdrawals.extend(crate::now(store.lines_about(thing))?.into_iter().filter(is_withdrawal));
    }
    let opened = SqliteStore::open(copy, Opening { notebook: store.notebook(), device: store.device() })?;
    opened.take_back(withdrawals).map(|_| ())
}

/// The things that a copy knows to be withdrawn.
fn withdrawn_of(copy: &Path) -> Result<Vec<ThingId>, StoreError> {
    let connection = Connection::open_with_flags(copy, OpenFlags::SQLITE_OPEN_READ_ONLY).map_err(told)?;
    withdrawn_things(&connection)
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

/// Makes a new notebook at `to` of the copies of a damaged one and of every line still whole in it, whatever became of the
/// pages around. Nothing of the old is touched.
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
    let of_copies: Vec<Found> = copies.iter().filter_map(|copy| find(copy, None).ok()).collect();
    let named = of_copies.iter().find_map(|found| found.notebook);
    let of_file = find(damaged, named).unwrap_or_default();
    let notebook = named
        .or(of_file.notebook)
        .ok_or(StoreError::Damaged { what: "no line of it can be read".to_string() })?;
    let made = made_of(of_copies, of_file, to, Opening { notebook, device });
    if made.is_err() {
        // Half a notebook under the name of a whole one would be worse than none.
        for ending in ["", "-wal", "-shm"] {
            let _ = std::fs::remove_file(beside(to, ending));
        }
    }
    made
}

fn made_of(of_copies: Vec<Found>, of_file: Found, to: &Path, opening: Opening) -> Result<Saved, StoreError> {
    let store = SqliteStore::open(to, opening)?;
    let mut from_copies = TakenIn::default();
    for found in of_copies {
        from_copies.add(store.take_back(found.lines)?);
    }
    let from_file = store.take_back(of_file.lines)?;
    let mut book = Notebook::new(opening.notebook);
    crate::now(store.lines())?.into_iter().for_each(|line| {
        book.take(line);
    });
    Ok(Saved { store, from_copies, from_file, damage: verify(&book) })
}

/// The name of a file with an ending after all of it.
pub(crate) fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

/// Whether a file is a whole SQLite file.
fn whole(path: &Path) -> Result<(), StoreError> {
    let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY).map_err(told)?;
    let said: String =
        connection.query_row("PRAGMA integrity_check(1)", [], |row| row.get(0)).map_err(told)?;
    if said == "ok" { Ok(()) } else { Err(StoreError::Damaged { what: said }) }
}

/// Forces a finished file to the disk, and gives it its name there.
pub(crate) fn settle(unfinished: &Path, finished: &Path) -> Result<(), StoreError> {
    let settled = std::fs::OpenOptions::new()
        .write(true)
        .open(unfinished)
        .and_then(|file| file.sync_all())
        .and_then(|()| std::fs::rename(unfinished, finished));
    settled.map_err(|error| by_the_system(&error))?;
    // A name is kept by its folder. Systems that let no folder be opened keep it by themselves.
    if let Some(folder) = finished.parent().and_then(|folder| std::fs::File::open(folder).ok()) {
        let _ = folder.sync_all();
    }
    Ok(())
}

/// What the system says, as what it means for the one who writes.
pub(crate) fn by_the_system(error: &std::io::Error) -> StoreError {
    match error.kind() {
        std::io::ErrorKind::StorageFull => StoreError::Full,
        std::io::ErrorKind::PermissionDenied | std::io::ErrorKind::ReadOnlyFilesystem => StoreError::ReadOnly,
        _ => StoreError::System { what: error.to_string() },
    }
}
