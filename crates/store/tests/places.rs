//! Places where nothing can be written: said at opening, and what is there can still be read.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking
#![cfg(unix)]

mod common;

use std::os::unix::fs::PermissionsExt;
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::Command;

use store::conformance::{BOOK, DEVICE, fact};
use store::{Opening, SqliteStore, Store, StoreError};

use common::now;

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };
/// The variable that names the folder to a second run of this test as somebody with no rights of their own.
const FOLDER: &str = "EVENSWATH_TEST_READ_ONLY";
/// The name of this test.
const THIS: &str = "where_nothing_can_be_written_it_is_said_at_opening_and_what_is_there_is_read";
/// The user with no rights of their own: 65534 on every system that has one.
const NOBODY: u32 = 65_534;

fn rights(path: &Path, mode: u32) {
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode)).expect("its rights");
}

/// A folder with a notebook of two lines that nobody may write to, one whose file alone may not be written, and an empty one.
fn places() -> PathBuf {
    let all = std::env::temp_dir().join(format!("evenswath-places-{}", std::process::id()));
    for (name, file, folder) in [("folder", 0o444, 0o555), ("file", 0o444, 0o777), ("empty", 0o444, 0o555)] {
        let place = all.join(name);
        std::fs::create_dir_all(&place).expect("a folder");
        let path = place.join("notebook.sqlite");
        if name != "empty" {
            let store = SqliteStore::open(&path, OPENING).expect("a new file");
            now(store.append(vec![fact(1, 1, "204 ft"), fact(2, 1, "208 ft")])).expect("kept");
            drop(store);
            rights(&path, file);
        }
        rights(&place, folder);
    }
    rights(&all, 0o755);
    all
}

fn look(all: &Path) {
    for name in ["folder", "file"] {
        let path = all.join(name).join("notebook.sqlite");
        let before = std::fs::read(&path).expect("its bytes");
        assert_eq!(SqliteStore::open(&path, OPENING).err(), Some(StoreError::ReadOnly), "{name}");
        let store = SqliteStore::open_for_reading(&path).expect("it can be read");
        assert_eq!((store.notebook(), store.device()), (BOOK, DEVICE));
        assert_eq!(now(store.lines()).expect("read").len(), 2);
        store.check().expect("whole");
        assert_eq!(now(store.append(vec![fact(3, 1, "1 ft")])), Err(StoreError::ReadOnly));
        drop(store);
        assert_eq!(std::fs::read(&path).expect("its bytes"), before);
    }
    let none = all.join("empty/notebook.sqlite");
    assert_eq!(SqliteStore::open(&none, OPENING).err(), Some(StoreError::ReadOnly));
    assert!(matches!(SqliteStore::open_for_reading(&none), Err(StoreError::System { .. })));
}

#[test]
fn where_nothing_can_be_written_it_is_said_at_opening_and_what_is_there_is_read() {
    if let Ok(all) = std::env::var(FOLDER) {
        return look(Path::new(&all));
    }
    let all = places();
    let may_all = std::fs::write(all.join("empty/probe"), "").is_ok();
    if may_all {
        // Whoever may do everything is refused nothing, so somebody else looks: this test, copied to where it may be run.
        std::fs::remove_file(all.join("empty/probe")).expect("tidied up");
        let test = all.join("test");
        std::fs::copy(std::env::current_exe().expect("this test"), &test).expect("copied");
        rights(&test, 0o755);
        let run = Command::new(&test)
            .args([THIS, "--exact"])
            .env(FOLDER, &all)
            .current_dir(&all)
            .uid(NOBODY)
            .gid(NOBODY)
            .output();
        let run = run.expect("it runs");
        let said = String::from_utf8_lossy(&run.stdout).to_string() + &String::from_utf8_lossy(&run.stderr);
        assert!(run.status.success() && said.contains("1 passed"), "{said}");
    } else {
        look(&all);
    }
    for name in ["folder", "file", "empty"] {
        rights(&all.join(name), 0o755);
    }
    std::fs::remove_dir_all(all).expect("tidied up");
}

#[test]
fn a_file_is_read_while_another_writes_to_it() {
    let path = common::folder("read-beside").join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept");
    let reading = SqliteStore::open_for_reading(&path).expect("it can be read");
    assert_eq!(now(reading.lines()).expect("read").len(), 1, "what stands in the log only is read too");
    now(store.append(vec![fact(2, 1, "208 ft")])).expect("kept");
    assert_eq!(now(reading.lines()).expect("read").len(), 2);
    assert_eq!(now(reading.append(vec![fact(3, 1, "1 ft")])), Err(StoreError::ReadOnly));
}
