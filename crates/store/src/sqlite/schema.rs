//! The tables, and what is refused: nothing changes a line, and nothing is deleted; of a withdrawn thing what was written
//! may be taken out, and nothing else.

use notebook::{DeviceId, NotebookId};
use rusqlite::{Connection, TransactionBehavior, params};

use super::{Opening, rows, told};
use crate::StoreError;

/// The version of the store.
const VERSION: u32 = 1;
/// The file's own mark, "EvsN" in letters, by which any program can tell what it is. Our own choice.
const MARK: i32 = 0x4576_734E;
/// How long to wait for another writer, in milliseconds. Our own choice: a writer takes a few.
const PATIENCE_MILLISECONDS: u64 = 5_000;

const TABLES: &str = "
CREATE TABLE book (
    notebook BLOB NOT NULL CHECK (length(notebook) = 16),
    device BLOB NOT NULL CHECK (length(device) = 16)
) STRICT;
CREATE TABLE line (
    device BLOB NOT NULL CHECK (length(device) = 16),
    number INTEGER NOT NULL CHECK (number > 0),
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    id BLOB NOT NULL CHECK (length(id) = 16),
    kind TEXT NOT NULL,
    thing BLOB NOT NULL CHECK (length(thing) = 16),
    place INTEGER NOT NULL CHECK (place > 0),
    at INTEGER NOT NULL,
    offset_minutes INTEGER NOT NULL,
    version INTEGER NOT NULL,
    entry TEXT,
    salt BLOB,
    entry_hash BLOB NOT NULL CHECK (length(entry_hash) = 32),
    previous BLOB NOT NULL CHECK (length(previous) = 32),
    CHECK ((entry IS NULL) = (salt IS NULL)),
    PRIMARY KEY (device, number, hash)
) STRICT, WITHOUT ROWID;
CREATE INDEX line_in_order ON line (place, device, number, hash);
CREATE INDEX line_of_thing ON line (thing, place, device, number, hash);
CREATE TABLE withdrawn (
    kind TEXT NOT NULL,
    thing BLOB NOT NULL,
    PRIMARY KEY (kind, thing)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER line_is_never_deleted BEFORE DELETE ON line
BEGIN SELECT RAISE(ABORT, 'a line is never deleted'); END;
CREATE TRIGGER line_is_never_changed BEFORE UPDATE ON line
WHEN NEW.device IS NOT OLD.device OR NEW.number IS NOT OLD.number OR NEW.hash IS NOT OLD.hash OR NEW.id IS NOT OLD.id
  OR NEW.kind IS NOT OLD.kind OR NEW.thing IS NOT OLD.thing OR NEW.place IS NOT OLD.place OR NEW.at IS NOT OLD.at
  OR NEW.offset_minutes IS NOT OLD.offset_minutes OR NEW.version IS NOT OLD.version
  OR NEW.entry_hash IS NOT OLD.entry_hash OR NEW.previous IS NOT OLD.previous
BEGIN SELECT RAISE(ABORT, 'a line is never changed'); END;
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE OF entry, salt ON line
WHEN NOT (
    (NEW.entry IS NULL AND EXISTS (SELECT 1 FROM withdrawn WHERE kind = OLD.kind AND thing = OLD.thing))
    OR (OLD.entry IS NULL AND NOT EXISTS (SELECT 1 FROM withdrawn WHERE kind = OLD.kind AND thing = OLD.thing))
)
BEGIN SELECT RAISE(ABORT, 'what is written is never changed'); END;
CREATE TRIGGER withdrawal_is_never_taken_back BEFORE DELETE ON withdrawn
BEGIN SELECT RAISE(ABORT, 'a withdrawal is never taken back'); END;
CREATE TRIGGER book_stays BEFORE UPDATE ON book
BEGIN SELECT RAISE(ABORT, 'a notebook keeps its names'); END;
";

/// Makes the file ready: settings, tables where it is new, its version looked at where it is not. Gives its names.
pub(super) fn prepare(
    connection: &mut Connection,
    opening: Opening,
) -> Result<(NotebookId, DeviceId), StoreError> {
    connection.busy_timeout(std::time::Duration::from_millis(PATIENCE_MILLISECONDS)).map_err(told)?;
    // Looked at before anything is set: a file of a newer program, or of another, is left as it is.
    let version: u32 = connection.query_row("PRAGMA user_version", [], |row| row.get(0)).map_err(told)?;
    let mark: i32 = connection.query_row("PRAGMA application_id", [], |row| row.get(0)).map_err(told)?;
    let tables: i64 =
        connection.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0)).map_err(told)?;
    let new = version == 0 && mark == 0 && tables == 0;
    if !new && mark != MARK {
        return Err(StoreError::Other);
    }
    if version > VERSION {
        return Err(StoreError::Newer { version, known: VERSION });
    }
    let journal: String =
        connection.query_row("PRAGMA journal_mode = WAL", [], |row| row.get(0)).map_err(told)?;
    if journal != "wal" {
        return Err(StoreError::System { what: format!("this place keeps no write-ahead log ({journal})") });
    }
    connection
        .execute_batch("PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; PRAGMA trusted_schema = OFF;")
        .map_err(told)?;
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate).map_err(told)?;
    // Another may have made it between the first look and now.
    let made: i64 = transaction
        .query_row("SELECT count(*) FROM sqlite_schema WHERE name = 'book'", [], |row| row.get(0))
        .map_err(told)?;
    if made == 0 {
        transaction.execute_batch(TABLES).map_err(told)?;
        let (notebook, device) = (opening.notebook.bits().to_be_bytes(), opening.device.bits().to_be_bytes());
        transaction
            .execute("INSERT INTO book VALUES (?1, ?2)", params![&notebook[..], &device[..]])
            .map_err(told)?;
        transaction.pragma_update(None, "application_id", MARK).map_err(told)?;
        transaction.pragma_update(None, "user_version", VERSION).map_err(told)?;
    }
    let names = transaction
        .query_row("SELECT notebook, device FROM book", [], |row| {
            Ok((rows::bits(row, 0).ok(), rows::bits(row, 1).ok()))
        })
        .map_err(told)?;
    transaction.commit().map_err(told)?;
    match names {
        (Some(notebook), Some(device)) => Ok((NotebookId::from_bits(notebook), DeviceId::from_bits(device))),
        _ => Err(StoreError::Damaged { what: "its names cannot be read".to_string() }),
    }
}
