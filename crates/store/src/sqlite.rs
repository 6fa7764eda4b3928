//! The notebook in one SQLite file: write-ahead log, full sync, tables that refuse what a notebook never does.
//!
//! The futures do their work at once and never wait for anything but the disk; a server gives them a thread of their own.

mod lacking;
mod migrate;
mod opening;
mod rescue;
mod rows;
mod schema;

pub(crate) use rescue::{Found, find};
pub(crate) use rows::withdrawn_things;

use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, MutexGuard, PoisonError};

use notebook::{DeviceId, Draft, Hash, Line, NotebookId, Ranges, Standing, ThingId, is_withdrawal};
use rusqlite::{Connection, Transaction, TransactionBehavior, params};

use crate::reach::{Reach, can_be_kept, in_turn};
use crate::{Store, StoreError, TakenIn};

/// A notebook in a file.
#[derive(Debug)]
pub struct SqliteStore {
    connection: Mutex<Connection>,
    notebook: NotebookId,
    device: DeviceId,
    /// Whether something that was withdrawn may still stand in the log, because somebody read it just then.
    owes_forgetting: AtomicBool,
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
    /// Opens the file for writing, or makes a new one with the names given. A file that is there keeps its own names. One of an
    /// older version of the store is brought to today's, and is kept beside it as it was.
    ///
    /// *Errors*: no room, no right to write ([`Self::open_for_reading`] may open it then), somebody else writing, a damaged file,
    /// one of a newer program.
    pub fn open(path: &Path, opening: Opening) -> Result<Self, StoreError> {
        let store = Self::of(opening::open_by(path, opening, migrate::STEPS, &mut || Ok(()))?);
        // Whoever wrote last may have been killed before the log was cut.
        let withdrawn = "SELECT EXISTS (SELECT 1 FROM withdrawn)";
        let withdrew = store.connection().query_row(withdrawn, [], |row| row.get(0)).map_err(told)?;
        store.forget(withdrew);
        Ok(store)
    }

    /// Opens a file that is there for reading, also where nothing can be written; writing says so.
    ///
    /// *Errors*: no file, no right to read it, a damaged one, one of a newer program, or of an older one: it would have to be
    /// written to first.
    pub fn open_for_reading(path: &Path) -> Result<Self, StoreError> {
        opening::open_for_reading(path).map(Self::of)
    }

    fn of((connection, notebook, device): opening::Opened) -> Self {
        let owes_forgetting = AtomicBool::new(false);
        Self { connection: Mutex::new(connection), notebook, device, owes_forgetting }
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

    /// The things that their owner has withdrawn.
    pub(crate) fn withdrawn(&self) -> Result<Vec<ThingId>, StoreError> {
        withdrawn_things(&self.connection())
    }

    /// A panic of another writer leaves its transaction undone; the connection itself is sound.
    pub(crate) fn connection(&self) -> MutexGuard<'_, Connection> {
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
                can_be_kept(&standing)?;
                let line = Line::seal(draft, standing);
                withdrew |= is_withdrawal(&line);
                let kept = rows::insert(transaction, &line)?;
                standing = Standing {
                    number: standing.number.saturating_add(1),
                    order: standing.order.saturating_add(1),
                    previous: line.hash(),
                    ..standing
                };
                lines.push(kept);
            }
            Ok(lines)
        })?;
        self.forget(withdrew);
        Ok(lines)
    }

    async fn take(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        self.take_within(lines, Reach::of)
    }

    async fn held(&self) -> Result<Ranges, StoreError> {
        let mut places: Vec<_> = rows::keys(&self.connection())?;
        places.sort_unstable();
        let mut ranges = Ranges::none();
        places.into_iter().for_each(|(device, number, _)| ranges.add(device, number));
        Ok(ranges)
    }

    async fn lines_beyond(&self, held: &Ranges, most: usize) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        // Where lines stand is read first, and only those that are lacking are read whole.
        let lacking = lacking::lacking(&connection, held, most)?;
        lacking.into_iter().map(|key| rows::read(&connection, self.notebook, key)).collect()
    }

    async fn lines_about(&self, thing: ThingId) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        let bits = thing.bits().to_be_bytes();
        rows::select(&connection, self.notebook, "WHERE thing = ?1", [&bits[..]])
    }

    async fn lines(&self) -> Result<Vec<Line>, StoreError> {
        let connection = self.connection();
        rows::select(&connection, self.notebook, "", [])
    }
}

impl SqliteStore {
    /// Takes lines in that were kept in this notebook before, wherever they stand.
    pub(crate) fn take_back(&self, lines: Vec<Line>) -> Result<TakenIn, StoreError> {
        self.take_within(lines, |_| Reach::anywhere())
    }

    fn take_within(&self, lines: Vec<Line>, reach: impl FnOnce(u64) -> Reach) -> Result<TakenIn, StoreError> {
        let mut withdrew = false;
        let taken = self.write(|transaction| {
            let mut taken = TakenIn::default();
            let mut reach = reach(rows::highest_order(transaction)?);
            for line in in_turn(lines) {
                if line.notebook() != self.notebook {
                    taken.foreign += 1;
                } else if !line.is_whole() {
                    taken.changed += 1;
                } else if !reach.takes(&line) {
                    taken.beyond += 1;
                } else {
                    withdrew |= is_withdrawal(&line);
                    rows::take(transaction, line, &mut taken)?;
                }
            }
            Ok(taken)
        })?;
        self.forget(withdrew);
        Ok(taken)
    }

    /// What was withdrawn must not stay in the log either: it is written back and cut to nothing. Where somebody reads it at
    /// that moment it is tried again with the next writing and when the file is opened; what was kept is kept in any case.
    fn forget(&self, withdrew: bool) {
        if !withdrew && !self.owes_forgetting.load(Ordering::Relaxed) {
            return;
        }
        let busy =
            self.connection().query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |row| row.get::<_, i64>(0));
        self.owes_forgetting.store(!matches!(busy, Ok(0)), Ordering::Relaxed);
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
    let order = rows::highest_order(transaction)?;
    let number = last.map_or(0, |(number, _)| number);
    let previous = last.map_or(Hash::NOTHING, |(_, hash)| Hash::from_bytes(hash));
    Ok(Standing {
        notebook,
        device,
        number: rows::up(number)?.saturating_add(1),
        order: order.saturating_add(1),
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
