//! The tables, and what is refused: nothing changes a line, and nothing is deleted; of a withdrawn thing what was written
//! may be taken out, and nothing else.

use notebook::{DeviceId, NotebookId};
use rusqlite::{Connection, TransactionBehavior, params};

use super::migrate::{Looking, Step, migrate};
use super::opening::Failed;
use super::{Opening, rows, told};
use crate::StoreError;

/// The version of the store.
const VERSION: u32 = 1;
/// The file's own mark, "EvsN" in letters, by which any program can tell what it is. Our own choice.
const MARK: i32 = 0x4576_734E;
/// How long to wait for another writer, in milliseconds. Our own choice: a writer takes a few.
const PATIENCE_MILLISECONDS: u64 = 5_000;

/// Every writing is on the disk before it is told, also on systems whose plain sync only asks the disk politely
/// (`fullfsync`); what is taken out is overwritten.
const SETTINGS: &str = "
PRAGMA synchronous = FULL;
PRAGMA fullfsync = ON;
PRAGMA checkpoint_fullfsync = ON;
PRAGMA secure_delete = ON;
PRAGMA trusted_schema = OFF;
";

const TABLES: &str = "
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

/// Every table of a notebook.
pub(super) fn tables(notebook: NotebookId) -> String {
    book(notebook) + TABLES
}

/// The table of the file's names. The notebook's own stands in its description as well: on another page, so that either tells
/// it when the other is lost, and without it no line can be known to be whole.
fn book(notebook: NotebookId) -> String {
    format!(
        "CREATE TABLE book (
    notebook BLOB NOT NULL CHECK (notebook = x'{:032x}'),
    device BLOB NOT NULL CHECK (length(device) = 16)
) STRICT;",
        notebook.bits()
    )
}

/// What a file is.
enum Looked {
    /// Nothing yet.
    New,
    /// A notebook of a version of the store.
    Notebook(u32),
    /// Some other program's.
    Another,
}

/// Looks at a file before anything is set: one of a newer program, or of another, is left as it is.
fn look(connection: &Connection) -> Result<Looked, rusqlite::Error> {
    let number = |sql| connection.query_row(sql, [], |row| row.get::<_, i64>(0));
    let (version, mark) = (number("PRAGMA user_version")?, number("PRAGMA application_id")?);
    let tables = number("SELECT count(*) FROM sqlite_schema")?;
    Ok(match (version, mark, tables) {
        (0, 0, 0) => Looked::New,
        // What is no number of ours is of a version that nobody knows.
        (version, mark, _) if mark == i64::from(MARK) => {
            Looked::Notebook(u32::try_from(version).unwrap_or(u32::MAX))
        }
        _ => Looked::Another,
    })
}

/// Makes the file ready: settings, tables where it is new, its version looked at where it is not. Gives its names.
pub(super) fn prepare(
    connection: &mut Connection,
    opening: Opening,
    steps: &[Step],
    looking: Looking<'_>,
) -> Result<(NotebookId, DeviceId), Failed> {
    connection.busy_timeout(std::time::Duration::from_millis(PATIENCE_MILLISECONDS))?;
    let looked = look(connection)?;
    match looked {
        Looked::Another => return Err(StoreError::Other.into()),
        Looked::Notebook(version) if version > VERSION => {
            return Err(StoreError::Newer { version, known: VERSION }.into());
        }
        Looked::New | Looked::Notebook(_) => {}
    }
    connection.execute_batch(SETTINGS)?;
    // Before anything is set in it, so that the old file is kept byte for byte.
    if let Looked::Notebook(version) = looked
        && version < VERSION
    {
        migrate(connection, (version, VERSION), steps, looking)?;
    }
    let journal: String = connection.query_row("PRAGMA journal_mode = WAL", [], |row| row.get(0))?;
    if journal != "wal" {
        let what = format!("this place keeps no write-ahead log ({journal})");
        return Err(StoreError::System { what }.into());
    }
    if matches!(looked, Looked::New) {
        make(connection, opening)?;
    }
    Ok(names(connection)?)
}

/// Makes the tables, unless another has made them between the first look and now.
fn make(connection: &mut Connection, opening: Opening) -> Result<(), rusqlite::Error> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    if matches!(look(&transaction)?, Looked::New) {
        transaction.execute_batch(&tables(opening.notebook))?;
        let (notebook, device) = (opening.notebook.bits().to_be_bytes(), opening.device.bits().to_be_bytes());
        transaction.execute("INSERT INTO book VALUES (?1, ?2)", params![&notebook[..], &device[..]])?;
        transaction.pragma_update(None, "application_id", MARK)?;
        transaction.pragma_update(None, "user_version", VERSION)?;
    }
    transaction.commit()
}

/// The names in a file that is only read.
pub(super) fn names_for_reading(connection: &Connection) -> Result<(NotebookId, DeviceId), StoreError> {
    match look(connection).map_err(told)? {
        Looked::Notebook(VERSION) => names(connection),
        Looked::Notebook(version) if version > VERSION => Err(StoreError::Newer { version, known: VERSION }),
        // It would have to be written to before it could be read.
        Looked::New | Looked::Notebook(_) => Err(StoreError::ReadOnly),
        Looked::Another => Err(StoreError::Other),
    }
}

fn names(connection: &Connection) -> Result<(NotebookId, DeviceId), StoreError> {
    connection
        .query_row("SELECT notebook, device FROM book", [], |row| {
            Ok((rows::bits(row, 0).ok(), rows::bits(row, 1).ok()))
        })
        .map_err(told)
        .and_then(|names| match names {
            (Some(notebook), Some(device)) => {
                Ok((NotebookId::from_bits(notebook), DeviceId::from_bits(device)))
            }
            _ => Err(StoreError::Damaged { what: "its names cannot be read".to_string() }),
        })
}
