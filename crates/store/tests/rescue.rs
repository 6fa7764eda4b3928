//! Whatever page of a file is damaged, every line that does not stand on it comes back.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::collections::BTreeSet;
use std::path::Path;

use notebook::{DeviceId, Line};
use store::conformance::{BOOK, DEVICE, fact, withdrawal};
use store::copies::{copy, save};
use store::{Opening, SqliteStore, Store};

use common::{folder, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };
const NEW: DeviceId = DeviceId::from_bits(99);
/// The size of a page where nobody asks for another.
const PAGE: usize = 4_096;

/// What is written in a line, and nowhere else: wherever a part of it stands, the mark stands too.
fn mark(number: u128) -> String {
    format!("<line {number:06}>")
}

/// Lines short and long: most fit a page many times, some need several pages for themselves.
fn write(store: &SqliteStore, numbers: std::ops::Range<u128>) {
    for number in numbers {
        let times = if number % 40 == 7 { 700 } else { 1 + number as usize % 9 };
        now(store.append(vec![fact(number, number % 5, &mark(number).repeat(times))])).expect("kept");
    }
}

/// A closed file with so many lines, and the lines.
fn written(folder: &Path, lines: u128) -> (Vec<u8>, Vec<Line>) {
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    write(&store, 0..lines);
    let lines = now(store.lines()).expect("read");
    drop(store);
    (std::fs::read(&path).expect("its bytes"), lines)
}

/// Noise that is the same each time.
fn noise(seed: usize, bytes: &mut [u8]) {
    let mut state = seed as u64 * 2 + 0x9e37_79b9_7f4a_7c15;
    for byte in bytes {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        *byte = state.to_be_bytes()[0];
    }
}

fn holds(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

/// Whether something of a line stands in these bytes: its text or the check sum of it. An index holds neither.
fn stands_in(line: &Line, bytes: &[u8]) -> bool {
    let number = line.id().bits() - 1_000;
    holds(bytes, mark(number).as_bytes()) || holds(bytes, line.written_hash().bytes())
}

/// What is saved of a file with these bytes.
fn saved(folder: &Path, bytes: &[u8]) -> Vec<Line> {
    let (damaged, to) = (folder.join("damaged.sqlite"), folder.join("saved.sqlite"));
    for ending in ["", "-wal", "-shm"] {
        let _ = std::fs::remove_file(folder.join(format!("saved.sqlite{ending}")));
    }
    std::fs::write(&damaged, bytes).expect("damaged");
    let saved = save(&damaged, &to, NEW).expect("saved");
    now(saved.store.lines()).expect("read")
}

#[test]
fn whatever_page_is_damaged_every_line_that_is_not_on_it_comes_back() {
    let folder = folder("rescue-pages");
    let (whole, lines) = written(&folder, 180);
    let pages = whole.len() / PAGE;
    assert!(pages > 30, "{pages} pages");
    let (mut lost_in_all, mut without_loss) = (BTreeSet::new(), 0);
    for page in 0..pages {
        let mut bytes = whole.clone();
        let damaged = &mut bytes[page * PAGE..(page + 1) * PAGE];
        match page % 3 {
            0 => damaged.fill(0),
            1 => damaged.fill(0x5a),
            _ => noise(page, damaged),
        }
        let found = saved(&folder, &bytes);
        let lost: Vec<_> = lines.iter().filter(|line| !found.contains(line)).collect();
        let there = &whole[page * PAGE..(page + 1) * PAGE];
        for line in &lost {
            assert!(stands_in(line, there), "line {} was not on page {page}", line.number());
        }
        without_loss += usize::from(lost.is_empty());
        lost_in_all.extend(lost.iter().map(|line| line.number()));
        assert_eq!(found.len() + lost.len(), lines.len(), "nothing is made up");
    }
    // Each line stands somewhere, and pages of indexes, of names and of descriptions cost nothing.
    assert_eq!(lost_in_all.len(), lines.len());
    assert!(without_loss >= 5, "{without_loss} pages without a line");
}

#[test]
fn noise_in_a_part_of_a_page_costs_the_lines_under_it() {
    let folder = folder("rescue-parts");
    let (whole, lines) = written(&folder, 120);
    for turn in 0..40 {
        let mut bytes = whole.clone();
        let mut places = [0; 8];
        noise(turn, &mut places);
        let from = usize::from(u16::from_be_bytes([places[0], places[1]])) * 17 % (whole.len() - 300);
        let to = from + 1 + usize::from(places[2]);
        noise(turn + 1_000, &mut bytes[from..to]);
        let found = saved(&folder, &bytes);
        // What may be gone is what the noise lies on, and the one line whose middle it lies in.
        let lost = lines.len() - found.len();
        let around = &whole[from.saturating_sub(PAGE)..(to + PAGE).min(whole.len())];
        for line in lines.iter().filter(|line| !found.contains(line)) {
            assert!(stands_in(line, around), "line {} was far from {from}", line.number());
        }
        assert!(lost <= 3, "{lost} lines lost to {} bytes", to - from);
    }
}

#[test]
fn of_a_file_that_was_cut_off_or_has_no_head_the_rest_comes_back() {
    let folder = folder("rescue-cut");
    let (whole, lines) = written(&folder, 120);
    for length in (PAGE * 3..whole.len()).step_by(PAGE * 3 + 511) {
        let found = saved(&folder, &whole[..length]);
        for line in lines.iter().filter(|line| !found.contains(line)) {
            assert!(
                stands_in(line, &whole[length / PAGE * PAGE..]),
                "cut at {length}: line {}",
                line.number()
            );
        }
    }
    for head in [16, 100, PAGE] {
        let mut bytes = whole.clone();
        noise(head, &mut bytes[..head]);
        assert_eq!(saved(&folder, &bytes), lines, "{head} bytes of the head gone");
    }
}

#[test]
fn what_is_saved_is_what_the_file_and_its_copies_give_together() {
    let folder = folder("rescue-union");
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    write(&store, 0..60);
    let first = copy(&store, &folder, "2027-04-01").expect("copied");
    write(&store, 60..120);
    let second = copy(&store, &folder, "2027-04-02").expect("copied");
    write(&store, 120..180);
    let lines = now(store.lines()).expect("read");
    drop(store);
    // Half of the pages of each are gone, other ones in each; the first copy has its names no more.
    let mut left = BTreeSet::new();
    for (turn, file) in [&path, &first, &second].into_iter().enumerate() {
        let whole = std::fs::read(file).expect("its bytes");
        let mut bytes = whole.clone();
        let mut lost = Vec::new();
        for (page, there) in bytes.chunks_mut(PAGE).enumerate() {
            if page * 7 % 5 < 2 && page != 1 && turn + page % 3 != 1 {
                noise(page + turn, there);
                lost.extend_from_slice(&whole[page * PAGE..(page + 1) * PAGE]);
            }
        }
        assert!(lost.len() * 5 > whole.len(), "much is lost");
        std::fs::write(file, bytes).expect("overwritten");
        let there = lines.iter().filter(|line| stands_in(line, &whole) && !stands_in(line, &lost));
        left.extend(there.map(Line::number));
    }
    let saved = save(&path, &folder.join("saved.sqlite"), NEW).expect("saved");
    let found: BTreeSet<u64> = now(saved.store.lines()).expect("read").iter().map(Line::number).collect();
    assert!(found.is_superset(&left), "{:?} are lost", left.difference(&found).collect::<Vec<_>>());
    assert!(left.len() > 120 && saved.from_copies.new > 0 && saved.from_file.new > 0, "{}", left.len());
}

#[test]
fn what_stands_in_the_log_only_is_found_and_what_was_withdrawn_is_not() {
    let folder = folder("rescue-log");
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    write(&store, 0..50);
    let lines = now(store.lines()).expect("read");
    let log = std::fs::read(folder.join("notebook.sqlite-wal")).expect("a log");
    let mut file = std::fs::read(&path).expect("its bytes");
    let in_file = lines.iter().filter(|line| stands_in(line, &file)).count();
    assert!(in_file < lines.len(), "some stand in the log only");
    noise(1, &mut file[..PAGE]);
    let beside = folder.join("beside");
    std::fs::create_dir(&beside).expect("a folder");
    std::fs::write(beside.join("damaged.sqlite-wal"), &log).expect("beside it");
    assert_eq!(saved(&beside, &file), lines);
    // The log of before beside the file of after: the text is in the log, and does not come back.
    now(store.append(vec![withdrawal(900, 3)])).expect("kept");
    let after = now(store.lines()).expect("read");
    drop(store);
    let found = saved(&beside, &std::fs::read(&path).expect("its bytes"));
    assert!(holds(&log, mark(3).as_bytes()) && found == after);
}
