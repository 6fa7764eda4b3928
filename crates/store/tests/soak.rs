//! An hour of a busy day: a line a second, from two windows at once, with copies made meanwhile.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::time::{Duration, Instant};

use notebook::{Line, Notebook, verify};
use store::conformance::{BOOK, DEVICE, fact};
use store::copies::{copy, list};
use store::{Opening, SqliteStore, Store};

use common::{folder, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };
/// A line a second for an hour. Our own choice.
const LINES: u128 = 3_600;
/// Our own choice: well under what a person would wait for in an hour, on the slowest machine that builds this.
const PROMISED: Duration = Duration::from_secs(60);

#[test]
fn an_hour_of_lines_from_two_windows_is_kept_in_well_under_a_minute() {
    let folder = folder("soak");
    let path = folder.join("notebook.sqlite");
    drop(SqliteStore::open(&path, OPENING).expect("a new file"));
    let begun = Instant::now();
    std::thread::scope(|threads| {
        for window in 0..2_u128 {
            let (folder, path) = (&folder, &path);
            threads.spawn(move || {
                let store = SqliteStore::open(path, OPENING).expect("it opens");
                for number in (window..LINES).step_by(2) {
                    let kept =
                        now(store.append(vec![fact(number, number % 60, "14.5 fl oz")])).expect("kept");
                    assert_eq!(kept.len(), 1);
                    if number % 900 == 0 {
                        copy(&store, folder, &format!("2027-04-14 {number:06}")).expect("copied");
                    }
                }
            });
        }
    });
    let took = begun.elapsed();
    assert!(took < PROMISED, "{took:?}");
    let store = SqliteStore::open(&path, OPENING).expect("it opens");
    store.check().expect("whole");
    let lines = now(store.lines()).expect("read");
    assert!(lines.iter().map(Line::number).eq(1..=3_600));
    let mut book = Notebook::new(BOOK);
    lines.into_iter().for_each(|line| {
        book.take(line);
    });
    assert_eq!(verify(&book), vec![]);
    for copied in list(&folder).expect("listed") {
        SqliteStore::open(&copied, OPENING).expect("a notebook").check().expect("whole");
    }
}
