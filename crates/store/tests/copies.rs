//! The second copy keeps itself, and a notebook is saved out of what is left of a damaged one.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{DeviceId, Line};
use store::conformance::{BOOK, DEVICE, fact};
use store::copies::{KEPT, copy, list, save};
use store::{Opening, SqliteStore, Store, StoreError};

use common::{folder, now};

const OPENING: Opening = Opening { notebook: BOOK, device: DEVICE };
const NEW: DeviceId = DeviceId::from_bits(99);

#[test]
fn copies_rotate_and_each_is_whole() {
    let folder = folder("rotate");
    let store = SqliteStore::open(&folder.join("notebook.sqlite"), OPENING).expect("a new file");
    for day in 1..=14_u32 {
        now(store.append(vec![fact(u128::from(day), 1, "204 ft")])).expect("kept");
        copy(&store, &folder, &format!("2027-04-{day:02} 15:04")).expect("copied");
    }
    let all = list(&folder).expect("listed");
    assert_eq!(all.len(), KEPT);
    for (place, path) in all.iter().enumerate() {
        let copied = SqliteStore::open(path, OPENING).expect("a notebook");
        copied.check().expect("whole");
        assert_eq!(now(copied.lines()).expect("read").len(), 14 - KEPT + place + 1);
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
    let (file, whole) = (std::fs::read(&path).expect("the file"), std::fs::read(&log).expect("the log"));
    let cut = folder.join("cut.sqlite");
    for length in (0..=whole.len()).step_by(1_031).chain(ends.iter().map(|(end, _)| *end)) {
        std::fs::write(&cut, &file).expect("written");
        std::fs::write(folder.join("cut.sqlite-wal"), &whole[..length]).expect("written");
        let _ = std::fs::remove_file(folder.join("cut.sqlite-shm"));
        let opened = SqliteStore::open(&cut, OPENING).expect("it opens");
        let kept = now(opened.lines()).expect("read").len();
        let told = ends.iter().filter(|(end, _)| *end <= length).map(|(_, kept)| *kept).max().unwrap_or(0);
        assert!(kept >= told && kept % 3 == 0, "cut at {length}: {kept} kept, {told} told");
        opened.check().expect("whole");
        drop(opened);
        let _ = std::fs::remove_file(folder.join("cut.sqlite-wal"));
    }
}
