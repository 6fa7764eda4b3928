//! The second copy keeps itself, and a notebook is saved out of what is left of a damaged one.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{DeviceId, Line};
use store::conformance::{BOOK, DEVICE, fact, withdrawal};
use store::copies::{DAYS, LAST, copy, list, save};
use store::{Opening, SqliteStore, Store, StoreError};

use common::{folder, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };
const NEW: DeviceId = DeviceId::from_bits(99);

#[test]
fn copies_rotate_and_each_is_whole() {
    let folder = folder("rotate");
    let store = SqliteStore::open(&folder.join("notebook.sqlite"), OPENING).expect("a new file");
    let mut written = 0_u128;
    for day in 1..=10_u32 {
        for hour in [8, 12, 18] {
            now(store.append(vec![fact(written, 1, "204 ft")])).expect("kept");
            written += 1;
            copy(&store, &folder, &format!("2027-04-{day:02} {hour:02}:04")).expect("copied");
        }
    }
    let all = list(&folder).expect("listed");
    let names: Vec<_> = all.iter().filter_map(|path| path.file_stem()?.to_str()).collect();
    // The last three are all of the tenth day; six days more have their last one.
    let days = (4..=9).map(|day| format!("2027-04-{day:02} 18.04"));
    let expected: Vec<_> = days.chain([8, 12, 18].map(|hour| format!("2027-04-10 {hour:02}.04"))).collect();
    assert_eq!((names, all.len()), (expected.iter().map(String::as_str).collect(), DAYS - 1 + LAST));
    let lines: Vec<_> = all
        .iter()
        .map(|path| {
            let copied = SqliteStore::open(path, OPENING).expect("a notebook");
            copied.check().expect("whole");
            now(copied.lines()).expect("read").len()
        })
        .collect();
    assert_eq!(lines, [12, 15, 18, 21, 24, 27, 28, 29, 30]);
}

#[test]
fn what_was_withdrawn_is_in_no_older_copy_once_the_next_is_made() {
    let folder = folder("stripped");
    let store = SqliteStore::open(&folder.join("notebook.sqlite"), OPENING).expect("a new file");
    now(store.append(vec![fact(1, 1, "a secret of the farm"), fact(2, 2, "another farm")])).expect("kept");
    for day in 1..=3 {
        copy(&store, &folder, &format!("2027-04-{day:02}")).expect("copied");
    }
    now(store.append(vec![withdrawal(3, 1)])).expect("kept");
    // One of the old copies cannot be read any more; it may hold what was withdrawn, so it goes.
    let broken = folder.join("copies/2027-04-02.sqlite");
    let mut bytes = std::fs::read(&broken).expect("its bytes");
    bytes[..2_000].fill(0x5a);
    std::fs::write(&broken, bytes).expect("overwritten");
    copy(&store, &folder, "2027-04-04").expect("copied");
    let mut all = Vec::new();
    for file in std::fs::read_dir(folder.join("copies")).expect("a folder").flatten() {
        all.extend(std::fs::read(file.path()).expect("its bytes"));
    }
    let holds = |text: &str| all.windows(text.len()).any(|bytes| bytes == text.as_bytes());
    assert!(holds("another farm") && !holds("a secret of the farm"));
    let names = list(&folder).expect("listed");
    assert!(names.len() == 3 && !names.contains(&broken), "{names:?}");
    for path in names {
        let lines = now(SqliteStore::open(&path, OPENING).expect("a notebook").lines()).expect("read");
        assert!(lines[0].written().is_none() && lines[1].written().is_some(), "{}", path.display());
    }
}

#[test]
fn a_copy_that_finds_no_room_leaves_the_others() {
    let folder = folder("no-room");
    let store = SqliteStore::open(&folder.join("notebook.sqlite"), OPENING).expect("a new file");
    now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept");
    copy(&store, &folder, "2027-04-01").expect("copied");
    // A folder stands where the next copy would be made.
    std::fs::create_dir(folder.join("copies/2027-04-02.sqlite.part")).expect("in the way");
    assert!(copy(&store, &folder, "2027-04-02").is_err());
    assert_eq!(list(&folder).expect("listed").len(), 1);
}

#[test]
fn a_damaged_notebook_is_saved_from_its_copy_and_what_is_still_readable() {
    let folder = folder("save");
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    let text = "x".repeat(300);
    now(store.append((0..300).map(|number| fact(number, 1, &text)).collect())).expect("kept");
    copy(&store, &folder, "2027-04-01").expect("copied");
    let later = now(store.append((300..360).map(|number| fact(number, 1, &text)).collect())).expect("kept");
    drop(store);
    // Every eighth page but the first few is overwritten, as by a dying card.
    let mut bytes = std::fs::read(&path).expect("its bytes");
    let pages = bytes.len() / 4096;
    for page in (8..pages).step_by(8) {
        bytes[page * 4096..(page + 1) * 4096].fill(0x5a);
    }
    std::fs::write(&path, bytes).expect("overwritten");
    let saved = save(&path, &folder.join("saved.sqlite"), NEW).expect("saved");
    assert_eq!(saved.from_copies.new, 300);
    let kept = now(saved.store.lines()).expect("read");
    assert!(
        kept.len() >= 300 && kept.iter().filter(|line| later.contains(line)).count() == saved.from_file.new
    );
    // What is lost is named, number by number, and what was saved goes on as a new device.
    let lost = later.len() - saved.from_file.new;
    assert_eq!(saved.damage.is_empty(), lost == 0 || saved.from_file.new == 0, "{:?}", saved.damage);
    let next = now(saved.store.append(vec![fact(1_000, 1, "1 ft")])).expect("kept");
    assert_eq!((next[0].device(), next[0].number()), (NEW, 1));
    assert!(next[0].order() > kept.iter().map(Line::order).max().expect("an order"));
    assert!(save(&path, &folder.join("saved.sqlite"), NEW).is_err(), "nothing is saved over what is there");
}

#[test]
fn where_nothing_is_left_it_is_told() {
    let folder = folder("nothing");
    let path = folder.join("notebook.sqlite");
    std::fs::write(&path, vec![0x5a; 20_000]).expect("rubbish");
    let saved = save(&path, &folder.join("saved.sqlite"), NEW);
    assert!(matches!(saved, Err(StoreError::Damaged { .. })), "{saved:?}");
    assert!(!folder.join("saved.sqlite").exists());
}

/// What the disk may hold when the power goes: the file as it was last written back, and the log cut off at any place. Of
/// every writing either all is there or nothing, and everything that was written before the one that is cut.
#[test]
fn a_log_cut_off_anywhere_holds_whole_writings_only() {
    let folder = folder("cut");
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    let log = folder.join("notebook.sqlite-wal");
    // Where the log ended when each writing was told kept.
    let mut ends = vec![(std::fs::read(&log).map_or(0, |log| log.len()), 0_usize)];
    for turn in 0..12_u128 {
        now(store.append((0..3).map(|line| fact(turn * 10 + line, 1, "204 ft")).collect())).expect("kept");
        let kept = now(store.lines()).expect("read").len();
        ends.push((std::fs::read(&log).expect("a log").len(), kept));
    }
    let all = now(store.lines()).expect("read");
    let (file, whole) = (std::fs::read(&path).expect("the file"), std::fs::read(&log).expect("the log"));
    let cut = folder.join("cut.sqlite");
    for length in (0..=whole.len()).step_by(1_031).chain(ends.iter().map(|(end, _)| *end)) {
        std::fs::write(&cut, &file).expect("written");
        std::fs::write(folder.join("cut.sqlite-wal"), &whole[..length]).expect("written");
        let _ = std::fs::remove_file(folder.join("cut.sqlite-shm"));
        let opened = SqliteStore::open(&cut, OPENING).expect("it opens");
        let lines = now(opened.lines()).expect("read");
        let kept = lines.len();
        assert_eq!(lines[..], all[..kept], "cut at {length}: the first that were written");
        let told = ends.iter().filter(|(end, _)| *end <= length).map(|(_, kept)| *kept).max().unwrap_or(0);
        assert!(kept >= told && kept % 3 == 0, "cut at {length}: {kept} kept, {told} told");
        opened.check().expect("whole");
        drop(opened);
        let _ = std::fs::remove_file(folder.join("cut.sqlite-wal"));
    }
}

/// A disk that said it had kept what it had not, in whatever order: of the log any page may be an old one, or noughts. The
/// notebook is whole up to some line, and whoever writes next goes on from there.
#[test]
fn a_log_of_a_disk_that_lied_holds_a_whole_notebook_up_to_some_line() {
    let folder = folder("lied");
    let path = folder.join("notebook.sqlite");
    let store = SqliteStore::open(&path, OPENING).expect("a new file");
    for turn in 0..12_u128 {
        now(store.append((0..3).map(|line| fact(turn * 10 + line, 1, "204 ft")).collect())).expect("kept");
    }
    let all = now(store.lines()).expect("read");
    let whole = std::fs::read(folder.join("notebook.sqlite-wal")).expect("the log");
    let file = std::fs::read(&path).expect("the file");
    let lied = folder.join("lied.sqlite");
    let mut counts = std::collections::BTreeSet::new();
    for from in (0..whole.len()).step_by(4_096) {
        let mut log = whole.clone();
        let to = (from + 4_096).min(log.len());
        log[from..to].fill(0);
        std::fs::write(&lied, &file).expect("written");
        std::fs::write(folder.join("lied.sqlite-wal"), log).expect("written");
        let opened = SqliteStore::open(&lied, OPENING).expect("it opens");
        opened.check().expect("whole");
        let kept = now(opened.lines()).expect("read");
        assert!(
            kept.len() % 3 == 0 && kept[..] == all[..kept.len()],
            "noughts at {from}: {} kept",
            kept.len()
        );
        let next = now(opened.append(vec![fact(999, 1, "1 ft")])).expect("kept");
        assert_eq!(next[0].number(), kept.len() as u64 + 1);
        counts.insert(kept.len());
        drop(opened);
        for ending in ["", "-wal", "-shm"] {
            let _ = std::fs::remove_file(folder.join(format!("lied.sqlite{ending}")));
        }
    }
    assert!(counts.len() > 3, "{counts:?}");
}
