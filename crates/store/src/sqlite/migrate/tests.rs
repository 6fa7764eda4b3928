//! A made-up version 0 becomes version 1, killed at every point on the way.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use notebook::Line;
use rusqlite::params;

use super::super::{Opening, SqliteStore, opening};
use super::*;
use crate::conformance::{BOOK, DEVICE, fact, withdrawal};
use crate::{Store, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };

/// What the made-up version 0 looked like: order and device under other names, nothing refused, no table of what was
/// withdrawn, no index.
const VERSION_0: &str = "
PRAGMA application_id = 0x4576734E;
CREATE TABLE names (notebook BLOB, device BLOB);
CREATE TABLE old_line (writer BLOB, number INTEGER, hash BLOB, id BLOB, kind TEXT, thing BLOB, lamport INTEGER,
    at INTEGER, offset_minutes INTEGER, version INTEGER, entry TEXT, salt BLOB, entry_hash BLOB, previous BLOB);
";

/// How it becomes version 1.
fn step() -> Step {
    let tables = super::super::schema::tables(BOOK);
    let sql = format!(
        "{tables}
        INSERT INTO book SELECT notebook, device FROM names;
        INSERT INTO line SELECT * FROM old_line;
        INSERT INTO withdrawn SELECT DISTINCT kind, thing FROM old_line WHERE entry LIKE '%\"withdraw\"%';
        DROP TABLE old_line;
        DROP TABLE names;"
    );
    // The texts of real steps are written out in the program.
    Step { from: 0, sql: Box::leak(sql.into_boxed_str()) }
}

/// A folder with a file of version 0, and the lines in it.
fn made_up(name: &str) -> (PathBuf, Vec<Line>) {
    let folder = std::env::temp_dir().join(format!("evenswath-migrate-{name}-{}", std::process::id()));
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder");
    let store = SqliteStore::open(&folder.join("now.sqlite"), OPENING).expect("a file of today");
    now(store.append((0..40).map(|number| fact(number, number % 3, &"x".repeat(200))).collect()))
        .expect("kept");
    now(store.append(vec![withdrawal(100, 2)])).expect("kept");
    let lines = now(store.lines()).expect("read");
    drop(store);
    let old = Connection::open(folder.join("notebook.sqlite")).expect("a file");
    old.execute_batch(VERSION_0).expect("tables");
    let (book, device) = (BOOK.bits().to_be_bytes(), DEVICE.bits().to_be_bytes());
    old.execute("INSERT INTO names VALUES (?1, ?2)", params![&book[..], &device[..]]).expect("names");
    old.execute("ATTACH ?1 AS now", [folder.join("now.sqlite").to_str()]).expect("attached");
    old.execute("INSERT INTO old_line SELECT * FROM now.line", []).expect("lines");
    old.execute("DETACH now", []).expect("let go");
    drop(old);
    for ending in ["now.sqlite", "now.sqlite-wal", "now.sqlite-shm"] {
        let _ = std::fs::remove_file(folder.join(ending));
    }
    (folder, lines)
}

/// Opens it as a program would that knows how to come from version 0.
fn open(folder: &Path, looking: Looking<'_>) -> Result<SqliteStore, StoreError> {
    opening::open_by(&folder.join("notebook.sqlite"), OPENING, &[step()], looking).map(SqliteStore::of)
}

/// The files of a folder with what is in them, but for what programs share while they run.
fn files(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let entries = std::fs::read_dir(folder).expect("a folder");
    let mut files: Vec<_> = entries
        .map(|entry| entry.expect("a file"))
        .map(|entry| (entry.file_name().to_string_lossy().to_string(), entry.path()))
        .filter(|(name, _)| !name.ends_with("-shm"))
        .map(|(name, path)| (name, std::fs::read(path).expect("its bytes")))
        .collect();
    files.sort();
    files
}

#[test]
fn an_older_file_becomes_a_newer_one_and_is_kept_byte_for_byte() {
    let (folder, lines) = made_up("kept");
    let old = std::fs::read(folder.join("notebook.sqlite")).expect("its bytes");
    let store = open(&folder, &mut || Ok(())).expect("opened");
    store.check().expect("whole");
    assert_eq!(now(store.lines()).expect("read"), lines);
    assert_eq!(std::fs::read(folder.join("notebook.version-0.sqlite")).expect("the old file"), old);
    assert_eq!(now(store.append(vec![fact(200, 1, "204 ft")])).expect("kept")[0].number(), 42);
    drop(store);
    // From then on it is a file as any other, and no second old one is made.
    let again = SqliteStore::open(&folder.join("notebook.sqlite"), OPENING).expect("opened");
    assert_eq!(now(again.lines()).expect("read").len(), lines.len() + 1);
    drop(again);
    assert_eq!(
        files(&folder).len(),
        2,
        "{:?}",
        files(&folder).iter().map(|(name, _)| name).collect::<Vec<_>>()
    );
    std::fs::remove_dir_all(folder).expect("tidied up");
}

/// The files as they are at each point are what a kill there leaves. From each of them the next opening comes to the end.
#[test]
fn killed_at_any_point_nothing_is_lost_and_the_next_opening_finishes() {
    let (folder, lines) = made_up("killed");
    let old = std::fs::read(folder.join("notebook.sqlite")).expect("its bytes");
    let mut left = Vec::new();
    drop(open(&folder, &mut || {
        left.push(files(&folder));
        Ok(())
    }));
    assert!(left.len() >= 8, "{} points", left.len());
    let parts = left.iter().filter(|files| files.iter().any(|(name, _)| name.ends_with(".part")));
    assert!(parts.count() >= 2, "some of them while the old file is copied");
    for (point, files_left) in left.iter().enumerate() {
        let there = folder.join(format!("killed-{point}"));
        std::fs::create_dir(&there).expect("a folder");
        for (name, bytes) in files_left {
            std::fs::write(there.join(name), bytes).expect("as it was left");
        }
        let store = open(&there, &mut || Ok(())).expect("opened");
        store.check().expect("whole");
        assert_eq!(now(store.lines()).expect("read"), lines, "killed at point {point}");
        drop(store);
        assert_eq!(std::fs::read(there.join("notebook.version-0.sqlite")).expect("the old file"), old);
        assert_eq!(files(&there).len(), 2, "killed at point {point}");
    }
    std::fs::remove_dir_all(folder).expect("tidied up");
}

/// An error at any point, a full disk for one, leaves everything as it was.
#[test]
fn whatever_fails_on_the_way_the_next_opening_finishes() {
    let (folder, lines) = made_up("fails");
    let old = std::fs::read(folder.join("notebook.sqlite")).expect("its bytes");
    let mut fails_at = 0;
    loop {
        let mut point = 0;
        let opened = open(&folder, &mut || {
            point += 1;
            if point > fails_at { Err(StoreError::Full) } else { Ok(()) }
        });
        let Err(error) = opened else { break };
        assert_eq!(error, StoreError::Full);
        fails_at += 1;
    }
    // Fewer than where it is killed: the old file is not copied again once it stands there.
    assert!(fails_at >= 6, "{fails_at} points");
    let store = open(&folder, &mut || Ok(())).expect("opened");
    assert_eq!(now(store.lines()).expect("read"), lines);
    assert_eq!(std::fs::read(folder.join("notebook.version-0.sqlite")).expect("the old file"), old);
    std::fs::remove_dir_all(folder).expect("tidied up");
}

#[test]
fn a_version_that_nobody_knows_is_left_as_it_is() {
    let (folder, _) = made_up("unknown");
    let before = files(&folder);
    let path = folder.join("notebook.sqlite");
    let unknown = SqliteStore::open(&path, OPENING).expect_err("no step starts there");
    assert!(matches!(unknown, StoreError::Damaged { .. }), "{unknown:?}");
    assert_eq!(files(&folder), before);
    std::fs::create_dir(folder.join("notebook.version-0.sqlite.part")).expect("in the way");
    open(&folder, &mut || Ok(())).expect_err("no copy, no change");
    assert_eq!(std::fs::read(&path).expect("its bytes"), before[0].1);
    std::fs::remove_dir_all(folder).expect("tidied up");
}
