//! Opening a file: for writing where that may be done, else for reading.

use std::path::{Path, PathBuf};
use std::time::Duration;

use notebook::{DeviceId, NotebookId};
use rusqlite::{Connection, ErrorCode, OpenFlags};

use super::{Opening, schema, told};
use crate::StoreError;
use crate::copies::by_the_system;

/// How often opening is tried while others make or change the file, and how long to wait in between. Our own choice: five
/// seconds in all, as a writer waits.
const TRIES: usize = 100;
const PAUSE: Duration = Duration::from_millis(50);

/// Opens a file and gives its names.
pub(super) fn open(path: &Path, opening: Opening) -> Result<(Connection, NotebookId, DeviceId), StoreError> {
    for _ in 1..TRIES {
        match open_once(path, opening) {
            // Two that make a file at once are told so at once; each waits for the other here.
            Err(StoreError::Locked) => std::thread::sleep(PAUSE),
            done => return done,
        }
    }
    open_once(path, opening)
}

fn open_once(path: &Path, opening: Opening) -> Result<(Connection, NotebookId, DeviceId), StoreError> {
    let flags =
        OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let opened = Connection::open_with_flags(path, flags).map_err(Failed::from);
    let prepared = opened.and_then(|mut connection| {
        let (notebook, device) = schema::prepare(&mut connection, opening)?;
        Ok((connection, notebook, device))
    });
    match prepared {
        Ok(done) => Ok(done),
        Err(failed) if failed.may_be_read_only && path.exists() => open_for_reading(path, failed.error),
        Err(failed) if failed.may_be_read_only => Err(why_not_made(path).unwrap_or(failed.error)),
        Err(failed) => Err(failed.error),
    }
}

/// Why something did not work, and whether that may be because nothing can be written in this place.
pub(super) struct Failed {
    error: StoreError,
    may_be_read_only: bool,
}

impl From<rusqlite::Error> for Failed {
    fn from(error: rusqlite::Error) -> Self {
        let code = error.sqlite_error_code();
        Self { may_be_read_only: code == Some(ErrorCode::CannotOpen), error: told(error) }.or_read_only()
    }
}

impl From<StoreError> for Failed {
    fn from(error: StoreError) -> Self {
        Self { error, may_be_read_only: false }.or_read_only()
    }
}

impl Failed {
    fn or_read_only(mut self) -> Self {
        self.may_be_read_only |= self.error == StoreError::ReadOnly;
        self
    }
}

/// Opens a file whose folder takes no log. It is then read as it stands, which is whole only where no log is left beside it.
fn open_for_reading(path: &Path, why: StoreError) -> Result<(Connection, NotebookId, DeviceId), StoreError> {
    let mut log = path.as_os_str().to_owned();
    log.push("-wal");
    let left = std::fs::metadata(PathBuf::from(log)).is_ok_and(|log| log.len() > 0);
    let Some(address) = address(path).filter(|_| !left) else { return Err(why) };
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(address, flags).map_err(told)?;
    let (notebook, device) = schema::names_for_reading(&connection)?;
    Ok((connection, notebook, device))
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
