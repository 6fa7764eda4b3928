//! From one version of the store to the next, with the old file kept beside the new one.
//!
//! First the file is copied, byte for byte, under another name, and gets its own when it is whole on the disk. Then all steps
//! are done in one transaction. Whoever is killed in between leaves the old file, or the new one, and the next opening goes
//! on from there.

use std::io::Write;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, MAIN_DB};

use super::told;
use crate::StoreError;
use crate::copies::{by_the_system, settle};

/// How a file of one version becomes one of the next.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    /// The version it starts from.
    pub(super) from: u32,
    /// What is done.
    pub(super) sql: &'static str,
}

/// Every step there ever was. Version 1 is the first that was handed out, so there is none yet.
pub(super) const STEPS: &[Step] = &[];

/// Looks on while a file is brought to another version; in tests it ends it there.
pub(super) type Looking<'a> = &'a mut dyn FnMut() -> Result<(), StoreError>;

/// Brings a file to a version, step by step, all or none; the file as it was stays beside it.
///
/// *Errors*: a version that no step starts from; no room for the copy: then nothing is changed.
pub(super) fn migrate(
    connection: &mut Connection,
    (from, to): (u32, u32),
    steps: &[Step],
    looking: Looking<'_>,
) -> Result<(), StoreError> {
    let mut todo = Vec::new();
    for version in from..to {
        let step = steps.iter().find(|step| step.from == version);
        let none = || StoreError::Damaged { what: format!("no store was ever of version {version}") };
        todo.push(step.ok_or_else(none)?);
    }
    looking()?;
    // What stands in a log is written back first, so that the file alone is all of it.
    connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).map_err(told)?;
    looking()?;
    // Nobody else can write from here on, so that what is copied is what is changed.
    connection.execute_batch("BEGIN IMMEDIATE").map_err(told)?;
    match change(connection, (from, to), &todo, looking) {
        Ok(()) => connection.execute_batch("COMMIT").map_err(told)?,
        Err(error) => {
            // A transaction that SQLite has undone by itself cannot be undone again, which is as good.
            let _ = connection.execute_batch("ROLLBACK");
            return Err(error);
        }
    }
    looking()
}

/// What is done in the one transaction.
fn change(
    connection: &mut Connection,
    (from, to): (u32, u32),
    todo: &[&Step],
    looking: Looking<'_>,
) -> Result<(), StoreError> {
    let now: u32 = connection.query_row("PRAGMA user_version", [], |row| row.get(0)).map_err(told)?;
    // Another program may have done it just before.
    if now != from {
        return Ok(());
    }
    keep_old(connection, from, looking)?;
    for step in todo {
        looking()?;
        connection.execute_batch(step.sql).map_err(told)?;
    }
    looking()?;
    connection.pragma_update(None, "user_version", to).map_err(told)?;
    looking()
}

/// Copies the file beside itself. The copy has its name only when it is whole.
fn keep_old(connection: &mut Connection, version: u32, looking: Looking<'_>) -> Result<(), StoreError> {
    let nameless = || StoreError::System { what: "the file has no name".to_string() };
    let path = connection.path().map(PathBuf::from).ok_or_else(nameless)?;
    // Read through SQLite: another who opened and closed the file would take its locks away.
    let old = connection.serialize(MAIN_DB).map_err(told)?;
    let Some(finished) = free(&path, version, &old) else {
        return Ok(());
    };
    let unfinished = crate::copies::beside(&finished, ".part");
    let written = std::fs::File::create(&unfinished).and_then(|mut file| {
        let (first, rest) = old.split_at(old.len() / 2);
        file.write_all(first)?;
        Ok((file, rest))
    });
    let (mut file, rest) = written.map_err(|error| by_the_system(&error))?;
    looking()?;
    file.write_all(rest).map_err(|error| by_the_system(&error))?;
    drop(file);
    looking()?;
    settle(&unfinished, &finished)?;
    looking()
}

/// A name for the old file that no file has: "notebook.version-0.sqlite". None where it stands there already, byte for
/// byte, because whoever copied it was killed afterwards.
fn free(path: &Path, version: u32, old: &[u8]) -> Option<PathBuf> {
    let stem = path.file_stem().unwrap_or_default().to_string_lossy();
    let ending = path.extension().unwrap_or_default().to_string_lossy();
    let mut again = 1;
    loop {
        let more = if again == 1 { String::new() } else { format!("-{again}") };
        let name = path.with_file_name(format!("{stem}.version-{version}{more}.{ending}"));
        if !name.exists() {
            return Some(name);
        }
        // An earlier one may hold what this one does not.
        if std::fs::read(&name).is_ok_and(|there| there == old) {
            return None;
        }
        again += 1;
    }
}

#[cfg(test)]
mod tests;
