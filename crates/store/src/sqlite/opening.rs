//! Opening a file: for writing, or for reading where nothing can be written.

use std::path::Path;
use std::time::{Duration, Instant};

use notebook::{DeviceId, NotebookId};
use rusqlite::{Connection, ErrorCode, MAIN_DB, OpenFlags};

use super::migrate::{Looking, Step};
use super::{Opening, schema, told};
use crate::StoreError;
use crate::copies::{beside, by_the_system};

/// How long opening is tried while others make or change the file, and how long to wait in between. Our own choice: as long
/// as a writer waits.
const PATIENCE: Duration = Duration::from_secs(5);
const PAUSE: Duration = Duration::from_millis(50);

/// An open file with its names.
pub(super) type Opened = (Connection, NotebookId, DeviceId);

/// Opens a file for writing, by the steps that lead to today's version.
pub(super) fn open_by(
    path: &Path,
    opening: Opening,
    steps: &[Step],
    looking: Looking<'_>,
) -> Result<Opened, StoreError> {
    let begun = Instant::now();
    loop {
        match open_once(path, opening, steps, looking) {
            // Two that make a file at once are told so at once; each waits for the other here.
            Err(StoreError::Locked) if begun.elapsed() < PATIENCE => std::thread::sleep(PAUSE),
            done => return done,
        }
    }
}

fn open_once(
    path: &Path,
    opening: Opening,
    steps: &[Step],
    looking: Looking<'_>,
) -> Result<Opened, StoreError> {
    let flags =
        OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let there = path.exists();
    let opened = Connection::open_with_flags(path, flags).map_err(Failed::from);
    let prepared = opened.and_then(|mut connection| {
        // SQLite opens what it may not write to all the same, and would say so with the first line only.
        if connection.is_readonly(MAIN_DB)? {
            return Err(StoreError::ReadOnly.into());
        }
        let (notebook, device) = schema::prepare(&mut connection, opening, steps, looking)?;
        Ok((connection, notebook, device))
    });
    prepared.map_err(|failed| match failed.place {
        Place::Fine => failed.error,
        Place::Doubtful if there => why_not_written(path).unwrap_or(failed.error),
        Place::Doubtful => why_not_made(path).unwrap_or(failed.error),
    })
}

/// Opens a file for reading only. Where its folder takes no log it is read as it stands, which is whole only where no log is
/// left beside it.
pub(super) fn open_for_reading(path: &Path) -> Result<Opened, StoreError> {
    std::fs::File::open(path).map_err(|error| by_the_system(&error))?;
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let opened = Connection::open_with_flags(path, flags).map_err(told);
    let read = opened.and_then(|connection| {
        let (notebook, device) = schema::names_for_reading(&connection)?;
        Ok((connection, notebook, device))
    });
    let left = std::fs::metadata(beside(path, "-wal")).is_ok_and(|log| log.len() > 0);
    match (read, address(path)) {
        (Err(StoreError::ReadOnly | StoreError::System { .. }), Some(address)) if !left => {
            let flags = flags | OpenFlags::SQLITE_OPEN_URI;
            let connection = Connection::open_with_flags(address, flags).map_err(told)?;
            let (notebook, device) = schema::names_for_reading(&connection)?;
            Ok((connection, notebook, device))
        }
        (done, _) => done,
    }
}

/// Why something did not work, and whether that may be because nothing can be written in this place.
pub(super) struct Failed {
    error: StoreError,
    place: Place,
}

#[derive(Clone, Copy)]
enum Place {
    Fine,
    Doubtful,
}

impl From<rusqlite::Error> for Failed {
    fn from(error: rusqlite::Error) -> Self {
        let cannot_open = error.sqlite_error_code() == Some(ErrorCode::CannotOpen);
        let error = told(error);
        let doubtful = cannot_open || error == StoreError::ReadOnly;
        Self { error, place: if doubtful { Place::Doubtful } else { Place::Fine } }
    }
}

impl From<StoreError> for Failed {
    fn from(error: StoreError) -> Self {
        Self { error, place: Place::Fine }
    }
}

/// The address of a file that nobody changes while it is read.
///
/// *Source*: SQLite, "Uniform Resource Identifiers", sections 3.1 and 3.3 (`immutable`).
fn address(path: &Path) -> Option<String> {
    let path = std::path::absolute(path).ok()?;
    let mut address = String::from("file:");
    let text = path.to_str()?.replace('\\', if cfg!(windows) { "/" } else { "\\" });
    if !text.starts_with('/') {
        address.push('/');
    }
    for sign in text.chars() {
        match sign {
            '%' => address.push_str("%25"),
            '?' => address.push_str("%3f"),
            '#' => address.push_str("%23"),
            sign => address.push(sign),
        }
    }
    address.push_str("?immutable=1");
    Some(address)
}

/// What the system says of a file that is there and did not open: it can be read, so what is lacking is the right to write
/// the file itself or the log beside it.
fn why_not_written(path: &Path) -> Option<StoreError> {
    match std::fs::File::open(path) {
        Ok(file) if file.metadata().is_ok_and(|file| file.is_file()) => Some(StoreError::ReadOnly),
        Ok(_) => None,
        Err(error) => Some(by_the_system(&error)),
    }
}

/// What the system says to a new file in this place, where it does not let one be made.
fn why_not_made(path: &Path) -> Option<StoreError> {
    match std::fs::OpenOptions::new().write(true).create_new(true).open(path) {
        Err(error) => Some(by_the_system(&error)),
        Ok(_) => {
            // It could be made after all; it is not left behind empty.
            let _ = std::fs::remove_file(path);
            None
        }
    }
}
