//! The SQLite file: what it refuses, what is left of what was withdrawn, full, locked, newer, foreign and damaged files,
//! a process killed while it writes.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Stdio};

use notebook::{DeviceId, Line, Notebook, NotebookId, verify};
use rusqlite::Connection;
use store::conformance::{BOOK, DEVICE, fact, withdrawal};
use store::{Opening, SqliteStore, Store, StoreError};

use common::{folder, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };

fn open(path: &std::path::Path) -> SqliteStore {
    SqliteStore::open(path, OPENING).expect("it opens")
}

#[test]
fn what_was_kept_is_there_when_it_is_opened_again() {
    let path = folder("reopen").join("notebook.sqlite");
    let lines = now(open(&path).append(vec![fact(1, 1, "204 ft"), fact(2, 1, "208 ft")])).expect("kept");
    let other = Opening { notebook: NotebookId::from_bits(99), device: DeviceId::from_bits(99) };
    let again = SqliteStore::open(&path, other).expect("it opens");
    assert_eq!((again.notebook(), again.device()), (BOOK, DEVICE), "a file keeps its own names");
    assert_eq!(now(again.lines()).expect("read"), lines);
    assert_eq!(now(again.append(vec![fact(3, 1, "1 ft")])).expect("kept")[0].number(), 3);
}

#[test]
fn the_file_itself_refuses_to_change_or_delete_a_line() {
    let path = folder("refuses").join("notebook.sqlite");
    now(open(&path).append(vec![fact(1, 1, "204 ft")])).expect("kept");
    let stranger = Connection::open(&path).expect("any program can open it");
    for wrong in [
        "DELETE FROM line",
        "UPDATE line SET place = 9",
        "UPDATE line SET entry = 'other'",
        "UPDATE line SET entry = NULL, salt = NULL",
        "UPDATE book SET device = zeroblob(16)",
        "INSERT INTO line (device, number) VALUES (zeroblob(16), 0)",
    ] {
        assert!(stranger.execute(wrong, []).is_err(), "{wrong}");
    }
    assert_eq!(now(open(&path).lines()).expect("read").len(), 1);
}

#[test]
fn what_was_withdrawn_is_in_no_byte_of_any_file() {
    let folder = folder("withdrawn");
    let path = folder.join("notebook.sqlite");
    let store = open(&path);
    now(store.append(vec![fact(1, 1, "a secret of the farm"), fact(2, 2, "another farm")])).expect("kept");
    now(store.append(vec![withdrawal(3, 1)])).expect("kept");
    let mut all = Vec::new();
    for file in std::fs::read_dir(&folder).expect("a folder").flatten() {
        all.extend(std::fs::read(file.path()).expect("its bytes"));
    }
    let holds = |text: &str| all.windows(text.len()).any(|bytes| bytes == text.as_bytes());
    assert!(holds("another farm") && !holds("a secret of the farm"));
}

#[test]
fn a_full_file_keeps_nothing_of_what_did_not_fit_and_goes_on_when_there_is_room() {
    let path = folder("full").join("notebook.sqlite");
    let store = open(&path);
    now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept");
    let pages: i64 = Connection::open(&path)
        .and_then(|file| file.query_row("PRAGMA page_count", [], |row| row.get(0)))
        .expect("pages");
    store.limit_to_pages(pages + 4).expect("a limit");
    let much: Vec<_> = (2..2_000).map(|number| fact(number, 1, &"x".repeat(500))).collect();
    assert_eq!(now(store.append(much)), Err(StoreError::Full));
    assert_eq!(now(store.lines()).expect("read").len(), 1, "nothing half kept");
    store.limit_to_pages(1_000_000).expect("room again");
    assert_eq!(now(store.append(vec![fact(5_000, 1, "1 ft")])).expect("kept")[0].number(), 2);
}

#[test]
fn files_that_are_not_ours_are_left_as_they_are() {
    let folder = folder("foreign");
    let newer = folder.join("newer.sqlite");
    drop(open(&newer));
    Connection::open(&newer)
        .and_then(|file| file.pragma_update(None, "user_version", 2))
        .expect("made newer");
    let bytes = std::fs::read(&newer).expect("its bytes");
    assert_eq!(SqliteStore::open(&newer, OPENING).err(), Some(StoreError::Newer { version: 2, known: 1 }));
    assert_eq!(std::fs::read(&newer).expect("its bytes"), bytes);
    let other = folder.join("other.sqlite");
    Connection::open(&other)
        .and_then(|file| file.execute_batch("CREATE TABLE cows (name TEXT)"))
        .expect("another's");
    assert_eq!(SqliteStore::open(&other, OPENING).err(), Some(StoreError::Other));
    let letter = folder.join("letter.txt");
    std::fs::write(&letter, "Dear neighbour, this is no notebook at all.\n".repeat(50)).expect("a letter");
    assert!(matches!(SqliteStore::open(&letter, OPENING), Err(StoreError::Damaged { .. })));
    assert!(std::fs::read_to_string(&letter).expect("still a letter").starts_with("Dear neighbour"));
}

#[test]
fn another_writer_that_does_not_let_go_is_told() {
    let path = folder("locked").join("notebook.sqlite");
    let store = open(&path);
    store.wait_at_most(std::time::Duration::from_millis(20)).expect("less patience");
    let other = Connection::open(&path).expect("another program");
    other.execute_batch("BEGIN IMMEDIATE").expect("it writes");
    assert_eq!(now(store.append(vec![fact(1, 1, "204 ft")])), Err(StoreError::Locked));
    other.execute_batch("ROLLBACK").expect("it lets go");
    assert_eq!(now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept").len(), 1);
}

#[test]
fn two_windows_of_one_device_never_give_one_number_twice() {
    let path = folder("windows").join("notebook.sqlite");
    drop(open(&path));
    let threads: Vec<_> = (0..4_u128)
        .map(|window| {
            let path = path.clone();
            std::thread::spawn(move || {
                let store = open(&path);
                for turn in 0..25 {
                    now(store.append(vec![fact(window * 100 + turn, 1, "204 ft")])).expect("kept");
                }
            })
        })
        .collect();
    threads.into_iter().for_each(|thread| thread.join().expect("it ends"));
    let lines = now(open(&path).lines()).expect("read");
    assert!(lines.iter().map(Line::number).eq(1..=100));
    let mut book = Notebook::new(BOOK);
    lines.into_iter().for_each(|line| {
        book.take(line);
    });
    assert_eq!(verify(&book), vec![]);
}

#[test]
fn a_copy_made_while_writing_is_a_whole_notebook() {
    let folder = folder("copy");
    let store = open(&folder.join("notebook.sqlite"));
    now(store.append((0..50).map(|number| fact(number, 1, "204 ft")).collect())).expect("kept");
    let copy = folder.join("copy.sqlite");
    store.copy_to(&copy).expect("copied");
    assert!(store.copy_to(&copy).is_err(), "a copy is never written over");
    now(store.append(vec![fact(99, 1, "later")])).expect("kept");
    let copied = open(&copy);
    copied.check().expect("whole");
    assert_eq!(now(copied.lines()).expect("read").len(), 50);
}

/// How often the writer is killed. Our own choice: enough to hit every part of a write, in a few seconds.
const KILLS: usize = 25;

/// What the killed process does: it writes lines and tells each number once it is kept.
#[test]
fn writer_that_is_killed() {
    let Ok(path) = std::env::var("EVENSWATH_TEST_NOTEBOOK") else { return };
    let store = open(std::path::Path::new(&path));
    let mut out = std::io::stdout().lock();
    for turn in 0.. {
        let number = now(store.held()).expect("read").count() as u128 * 1_000 + turn;
        let lines =
            now(store.append(vec![fact(number, 1, &"x".repeat(300)), fact(number + 500_000_000, 1, "y")]));
        let last = lines.expect("kept").last().map_or(0, Line::number);
        writeln!(out, "kept {last}").and_then(|()| out.flush()).expect("told");
    }
}

#[test]
fn every_line_that_was_told_kept_is_there_after_a_kill() {
    let path = folder("killed").join("notebook.sqlite");
    drop(open(&path));
    let mut told = 0;
    for kill in 0..KILLS {
        let mut writer = Command::new(std::env::current_exe().expect("this test"))
            .args(["writer_that_is_killed", "--exact", "--nocapture", "--test-threads=1"])
            .env("EVENSWATH_TEST_NOTEBOOK", &path)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("a writer");
        let mut lines = BufReader::new(writer.stdout.take().expect("its words")).lines();
        // Killed after another number of lines each time, in the middle of the next.
        for line in
            lines.by_ref().map_while(Result::ok).filter(|line| line.starts_with("kept ")).take(1 + kill % 7)
        {
            told = told.max(line["kept ".len()..].parse().expect("a number"));
        }
        writer.kill().expect("killed");
        writer.wait().expect("gone");
        // What it had told before it died, and we had not read yet, counts as well.
        for line in lines.map_while(Result::ok).filter(|line| line.starts_with("kept ")) {
            told = told.max(line["kept ".len()..].trim().parse().unwrap_or(0));
        }
        let store = open(&path);
        store.check().expect("a whole file");
        let kept = now(store.lines()).expect("read");
        assert!(kept.len() as u64 >= told, "{} kept, {told} told", kept.len());
        assert_eq!(kept.len() % 2, 0, "two lines of one writing are kept together or not at all");
        let mut book = Notebook::new(BOOK);
        kept.into_iter().for_each(|line| {
            book.take(line);
        });
        assert_eq!(verify(&book), vec![]);
    }
    assert!(told > 25);
}

#[test]
fn a_page_that_was_overwritten_is_told_and_the_copy_has_it_all() {
    let folder = folder("page");
    let path = folder.join("notebook.sqlite");
    let store = open(&path);
    now(store.append((0..400).map(|number| fact(number, 1, &"x".repeat(200))).collect())).expect("kept");
    store.copy_to(&folder.join("copy.sqlite")).expect("copied");
    drop(store);
    let mut bytes = std::fs::read(&path).expect("its bytes");
    let middle = bytes.len() / 2 / 4096 * 4096;
    bytes[middle..middle + 4096].fill(0x5a);
    std::fs::write(&path, bytes).expect("overwritten");
    let found = match SqliteStore::open(&path, OPENING) {
        Ok(store) => store.check().is_err() || now(store.lines()).is_err(),
        Err(_) => true,
    };
    assert!(found, "the damage is told");
    assert_eq!(now(open(&folder.join("copy.sqlite")).lines()).expect("read").len(), 400);
}
