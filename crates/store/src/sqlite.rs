//! The notebook in one SQLite file: write-ahead log, full sync, tables that refuse what a notebook never does.
//!
//! The futures do their work at once and never wait for anything but the disk; a server gives them a thread of their own.

mod rows;
mod schema;

pub(crate) use rows::readable_lines;

use std::path::Path;
use std::sync::{Mutex, MutexGuard, PoisonError};

use notebook::{DeviceId, Draft, Hash, Line, NotebookId, Ranges, Standing, ThingId, is_withdrawal};
use rusqlite::{Connection, OpenFlags, Transaction, TransactionBehavior, params};

use crate::{Store, StoreError, TakenIn};

/// A notebook in a file.
#[derive(Debug)]
pub struct SqliteStore {
    connection: Mutex<Connection>,
    notebook: NotebookId,
    device: DeviceId,
}

/// Whose notebook a new file becomes. Names come from the caller: nothing here has a clock or chance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Opening {
    /// The notebook that a new file is to hold.
    pub notebook: NotebookId,
    /// The device that a new file is written to as.
    pub device: DeviceId,
}

impl SqliteStore {
    /// Opens the file, or makes a new one with the names given. A file that is there keeps its own names.
    ///
    /// *Errors*: no room, no right to write, somebody else writing, a damaged file, one of a newer program.
    pub fn open(path: &Path, opening: Opening) -> Result<Self, StoreError> {
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
            | OpenFlags::SQLITE_OPEN_CREATE
            | OpenFlags::SQLITE_OPEN_NO_MUTEX
            | OpenFlags::SQLITE_OPEN_NOFOLLOW;
        let mut connection = Connection::open_with_flags(path, flags).map_err(told)?;
        let (notebook, device) = schema::prepare(&mut connection, opening)?;
        Ok(Self { connection: Mutex::new(connection), notebook, device })
    }

    /// Copies the whole notebook, as it is at this moment, into a new file; while it is written to, too.
    ///
    /// *Errors*: a file that is there already, no room, no right to write.
    pub fn copy_to(&self, path: &Path) -> Result<(), StoreError> {
        if path.exists() {
            return Err(StoreError::System { what: format!("{} is there already", path.display()) });
        }
        let name = path.to_str().ok_or(StoreError::System { what: "a name that is no text".to_string() })?;
        self.connection().execute("VACUUM INTO ?1", params![name]).map_err(told)?;
        Ok(())
    }

    /// Lets the file grow to so many pages and no further, as a full disk would.
    ///
    /// *Errors*: those of the file.
    pub fn limit_to_pages(&self, pages: i64) -> Result<(), StoreError> {
        let sql = format!("PRAGMA max_page_count = {pages}");
        self.connection().query_row(&sql, [], |_| Ok(())).map_err(told)
    }

    /// How long to wait for another writer before giving up.
    ///
    /// *Errors*: those of the file.
    pub fn wait_at_most(&self, time: std::time::Duration) -> Result<(), StoreError> {
        self.connection().busy_timeout(time).map_err(told)
    }

    /// Whether the file itself is whole, as SQLite sees it. Whether the notebook is, [`notebook::verify`] says.
    pub fn check(&self) -> Result<(), StoreError> {
        let said: String =
            self.connection().query_row("PRAGMA integrity_check(1)", [], |row| row.get(0)).map_err(told)?;
        if said == "ok" { Ok(()) } else { Err(StoreError::Damaged { what: said }) }
    }

    /// A panic of another writer leaves its transaction undone; the connection itself is sound.
    fn connection(&self) -> MutexGuard<'_, Connection> {
        self.connection.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn write<T>(
        &self,
        work: impl FnOnce(&Transaction<'_>) -> Result<T, StoreError>,
    ) -> Result<T, StoreError> {
        let mut connection = self.connection();
        // Taken for writing at once: two that read first and write then would hold each other up.
        let transaction =
            connection.transaction_with_behavior(TransactionBehavior::Immediate).map_err(told)?;
        let done = work(&transaction)?;
        transaction.commit().map_err(told)?;
        Ok(done)
    }
}

impl Store for SqliteStore {
    fn notebook(&self) -> NotebookId {
        self.notebook
    }

    fn device(&self) -> DeviceId {
        self.device
    }

    async fn append(&self, drafts: Vec<Draft>) -> Result<Vec<Line>, StoreError> {
        let mut withdrew = false;
        let lines = self.write(|transaction| {
            let mut standing = next(transaction, self.notebook, self.device)?;
            let mut lines = Vec::with_capacity(drafts.len());
            for draft in drafts {
                let line = Line::seal(draft, standing);
                withdrew |= is_withdrawal(&line);
                let kept = rows::insert(transaction, &line)?;
                standing = Standing {
                    number: standing.number + 1,
                    order: standing.order + 1,
                    previous: line.hash(),
                    ..standing
                };
                lines.push(kept);
            }
            Ok(lines)
        })?;
        self.forget(withdrew)?;
        Ok(lines)
    }

    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        let mut withdrew = false;
        let taken = self.write(|transaction| {
            let mut taken = TakenIn::default();
            for line in lines {
                if line.notebook() != self.notebook {
                    taken.foreign += 1;
                } else if !line.is_whole() {
                    taken.changed += 1;
                } else {
                    withdrew |= is_withdrawal(&line);
                    rows::take(transaction, line, &mut taken)?;
                }
            }
            Ok(taken)
        })?;
        self.forget(withdrew)?;
        Ok(taken)
    }

    async fn held(&self) -> Result<Ranges, StoreError> {
        let connection = self.connection();
        let mut statement = connection
            .prepare_cached("SELECT device, number FROM line ORDER BY device, number")
            .map_err(told)?;
        let mut found = statement.query([]).map_err(told)?;
        let mut ranges = Ranges::none();
        while let Some(row) = found.next().map_err(told)? {
            let device = DeviceId::from_bits(rows::bits(row, 0)?);
            ranges.add(device, rows::whole(row, 1)?);
        }
        Ok(ranges)
    }

    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        rows::select(&connection, "", [], |line| !held.holds(line.device(), line.number()), most)
    }

    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        let bits = thing.bits().to_be_bytes();
        rows::select(&connection, "WHERE thing = ?1", [&bits[..]], |_| true, usize::MAX)
    }

    async fn lines(&self) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        rows::select(&connection, "", [], |_| true, usize::MAX)
    }
}

impl SqliteStore {
    /// What was withdrawn must not stay in the log either: it is written back and cut to nothing.
    fn forget(&self, withdrew: bool) -> Result<(), StoreError> {
        if withdrew {
            self.connection().query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).map_err(told)?;
        }
        Ok(())
    }
}

/// The place of this device's next line, read within the transaction that fills it.
fn next(
    transaction: &Transaction<'_>,
    notebook: NotebookId,
    device: DeviceId,
) -> Result<Standing, StoreError> {
    let bits = device.bits().to_be_bytes();
    let last = transaction
        .prepare_cached(
            "SELECT number, hash FROM line WHERE device = ?1 ORDER BY number DESC, hash DESC LIMIT 1",
        )
        .and_then(|mut statement| {
            let mut found = statement.query(params![&bits[..]])?;
            found.next()?.map(|row| Ok((row.get::<_, i64>(0)?, row.get::<_, [u8; 32]>(1)?))).transpose()
        })
        .map_err(told)?;
    let order: Option<i64> =
        transaction.query_row("SELECT max(place) FROM line", [], |row| row.get(0)).map_err(told)?;
    let number = last.map_or(0, |(number, _)| number);
    let previous = last.map_or(Hash::NOTHING, |(_, hash)| Hash::from_bytes(hash));
    Ok(Standing {
        notebook,
        device,
        number: rows::up(number)? + 1,
        order: rows::up(order.unwrap_or(0))? + 1,
        previous,
    })
}

/// What SQLite says, as what it means for the one who writes.
pub(crate) fn told(error: rusqlite::Error) -> StoreError {
    use rusqlite::ErrorCode;
    let what = error.to_string();
    match error.sqlite_error_code() {
        Some(ErrorCode::DiskFull) => StoreError::Full,
        Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => StoreError::ReadOnly,
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => StoreError::Locked,
        Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase | ErrorCode::ConstraintViolation) => {
            StoreError::Damaged { what }
        }
        _ => StoreError::System { what },
    }
}
