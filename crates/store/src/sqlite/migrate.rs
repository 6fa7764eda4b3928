//! From one version of the store to the next, with the old file kept beside the new one.

use std::path::{Path, PathBuf};

use rusqlite::{Connection, TransactionBehavior, params};

use super::told;
use crate::StoreError;
use crate::copies::settle;

/// How a file of one version becomes one of the next.
pub(super) struct Step {
    /// The version it starts from.
    pub(super) from: u32,
    /// What is done.
    pub(super) sql: &'static str,
}

/// Every step there ever was. Version 1 is the first that was handed out, so there is none yet.
pub(super) const STEPS: &[Step] = &[];

/// Brings a file to a version, step by step, all or none; a copy of it as it was stays beside it.
///
/// *Errors*: a version that no step starts from; no room for the copy: then nothing is changed.
pub(super) fn migrate(
    connection: &mut Connection,
    from: u32,
    to: u32,
    steps: &[Step],
) -> Result<(), StoreError> {
    let mut todo = Vec::new();
    for version in from..to {
        let step = steps.iter().find(|step| step.from == version);
        todo.push(step.ok_or(StoreError::Damaged { what: format!("no store was ever of version {version}") })?);
    }
    keep_old(connection, from)?;
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate).map_err(told)?;
    let now: u32 = transaction.query_row("PRAGMA user_version", [], |row| row.get(0)).map_err(told)?;
    // Another program may have done it while the old file was copied.
    if now == from {
        for step in todo {
            transaction.execute_batch(step.sql).map_err(told)?;
        }
        transaction.pragma_update(None, "user_version", to).map_err(told)?;
    }
    transaction.commit().map_err(told)
}

/// Copies the file beside itself. The copy has its name only when it is whole.
fn keep_old(connection: &Connection, version: u32) -> Result<(), StoreError> {
    let damaged = || StoreError::System { what: "the file has no name".to_string() };
    let path = connection.path().map(PathBuf::from).ok_or_else(damaged)?;
    let name = path.file_name().and_then(|name| name.to_str()).ok_or_else(damaged)?;
    let beside = |ending: &str| path.with_file_name(format!("{name}.version-{version}{ending}"));
    let unfinished = beside(".part");
    let _ = std::fs::remove_file(&unfinished);
    let into = unfinished.to_str().ok_or_else(damaged)?;
    connection.execute("VACUUM INTO ?1", params![into]).map_err(told)?;
    settle(&unfinished, &free(&beside))
}

/// A name that no file has: an earlier copy may hold what this one does not.
fn free(beside: &impl Fn(&str) -> PathBuf) -> PathBuf {
    let taken = |path: &Path| path.exists();
    let first = beside(".bak");
    if !taken(&first) {
        return first;
    }
    (2_u32..).map(|again| beside(&format!(".{again}.bak"))).find(|path| !taken(path)).unwrap_or(first)
}

#[cfg(test)]
#[allow(clippy::expect_used)] // a test fails by panicking
mod tests {
    use super::*;

    /// A made-up version 0, which had no name for what a fact is about, and how it becomes a made-up version 1.
    const MADE_UP: &str = "CREATE TABLE line (number INTEGER PRIMARY KEY, entry TEXT NOT NULL) STRICT;
        INSERT INTO line VALUES (1, '204 ft'), (2, '208 ft');";
    const STEP: Step = Step { from: 0, sql: "ALTER TABLE line ADD COLUMN thing TEXT NOT NULL DEFAULT 'visit';" };
    const BROKEN: Step =
        Step { from: 1, sql: "ALTER TABLE line ADD COLUMN more TEXT; UPDATE line SET nothing = 1;" };

    fn made_up(name: &str) -> (PathBuf, Connection) {
        let folder = std::env::temp_dir().join(format!("evenswath-migrate-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).expect("a folder");
        let connection = Connection::open(folder.join("notebook.sqlite")).expect("a file");
        connection.execute_batch(MADE_UP).expect("tables");
        (folder, connection)
    }

    fn version(connection: &Connection) -> u32 {
        connection.query_row("PRAGMA user_version", [], |row| row.get(0)).expect("a version")
    }

    fn lines(connection: &Connection, columns: &str) -> Vec<String> {
        let sql = format!("SELECT {columns} FROM line ORDER BY number");
        let mut statement = connection.prepare(&sql).expect("a table");
        let rows = statement.query_map([], |row| row.get(0)).expect("rows");
        rows.map(|row| row.expect("a row")).collect()
    }

    #[test]
    fn an_older_file_becomes_a_newer_one_and_is_kept_as_it_was() {
        let (folder, mut connection) = made_up("kept");
        migrate(&mut connection, 0, 1, &[STEP]).expect("migrated");
        assert_eq!((version(&connection), lines(&connection, "entry || thing").len()), (1, 2));
        assert_eq!(lines(&connection, "entry || ' ' || thing"), ["204 ft visit", "208 ft visit"]);
        let old = Connection::open(folder.join("notebook.sqlite.version-0.bak")).expect("the old file");
        assert_eq!((version(&old), lines(&old, "entry")), (0, vec!["204 ft".into(), "208 ft".into()]));
        assert!(old.prepare("SELECT thing FROM line").is_err(), "the old file is as it was");
        std::fs::remove_dir_all(folder).expect("tidied up");
    }

    #[test]
    fn a_step_that_fails_changes_nothing_and_is_tried_again() {
        let (folder, mut connection) = made_up("fails");
        migrate(&mut connection, 0, 2, &[STEP, BROKEN]).expect_err("the second step fails");
        assert_eq!((version(&connection), lines(&connection, "entry").len()), (0, 2));
        assert!(connection.prepare("SELECT thing FROM line").is_err(), "the first step is undone too");
        migrate(&mut connection, 0, 1, &[STEP]).expect("migrated");
        assert_eq!(version(&connection), 1);
        assert!(folder.join("notebook.sqlite.version-0.2.bak").is_file(), "an earlier copy is left alone");
        std::fs::remove_dir_all(folder).expect("tidied up");
    }

    #[test]
    fn without_room_for_the_old_file_nothing_is_begun() {
        let (folder, mut connection) = made_up("no-room");
        std::fs::create_dir(folder.join("notebook.sqlite.version-0.part")).expect("in the way");
        migrate(&mut connection, 0, 1, &[STEP]).expect_err("no copy, no change");
        assert_eq!(version(&connection), 0);
        let unknown = migrate(&mut connection, 0, 1, &[]).expect_err("no step starts there");
        assert!(matches!(unknown, StoreError::Damaged { .. }), "{unknown:?}");
        std::fs::remove_dir_all(folder).expect("tidied up");
    }
}
