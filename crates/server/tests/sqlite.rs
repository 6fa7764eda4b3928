//! The server over the notebook's own file: what a hostile sender makes up, syncing, and copying while it runs.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;
mod served;

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

use common::{BOOK, all, device, kept, lines_of, post_lines, post_wanted, text_of};
use notebook::{About, At, Draft, Entry, Hash, Kind, Line, LineId, Standing, ThingId, Told, Written};
use served::Served;
use server::{Kept, OneAtATime, PlainHttp, Service, exchange};
use store::{Opening, SqliteStore};

/// A folder of its own, removed when it is let go.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("evenswath-server-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).unwrap();
        Self(path)
    }

    fn open(&self, name: &str) -> SqliteStore {
        let opening = Opening { notebook: BOOK, device: device(0) };
        SqliteStore::open(&self.0.join(name), opening).unwrap()
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

/// A line sealed as it should be, with any number, order, time and text.
fn sealed(number: u64, order: u64, at: i64, version: u32, text: &str) -> Line {
    let draft = Draft {
        id: LineId::from_bits(u128::from(number) << 64 | u128::from(order)),
        about: About { kind: Kind::Visit, id: ThingId::from_bits(7) },
        at: At { utc_milliseconds: at, offset_minutes: i16::MIN },
        version,
        written: Written::new(text.to_string(), [7; 16]),
    };
    Line::seal(draft, Standing { notebook: BOOK, device: device(6), number, order, previous: Hash::NOTHING })
}

#[test]
fn lines_that_no_device_writes_are_refused_one_by_one() {
    let folder = Folder::new("hostile");
    let kept: Arc<dyn Kept> = Arc::new(OneAtATime::new(folder.open("a.sqlite")));
    let router = Service::new(Arc::clone(&kept)).router();
    let most = 1_u64 << 53;
    let refused = [
        sealed(u64::MAX, 1, 0, 1, "{}"),
        sealed(1 << 63, 1, 0, 1, "{}"),
        sealed(1, u64::MAX, 0, 1, "{}"),
        sealed(1, 0, 0, 1, "{}"),
        sealed(1, most + 1, 0, 1, "{}"),
        // A number that can be read, but so far ahead that nobody came there by writing.
        sealed(most - 1, most - 1, 0, 1, "{}"),
    ];
    let taken = [
        sealed(1, 1, i64::MIN, u32::MAX, "no JSON at all \0 \u{feff}"),
        sealed(2, 2, i64::MAX, 0, ""),
        sealed(3, 3, 0, 1, &"\u{1}".repeat(65_536)),
        sealed(3 + store::FARTHEST, 3 + store::FARTHEST, 0, 1, "{}"),
    ];
    let mixed: Vec<Line> = refused.iter().chain(&taken).cloned().collect();
    let answer = post_lines(&router, text_of(&mixed));
    assert_eq!(answer.status, 200, "{answer:?}");
    let answer = answer.json();
    assert_eq!((&answer["new"], &answer["unreadable"]), (&4.into(), &6.into()), "{answer}");
    assert_eq!(answer["refused"][0]["args"]["field"], "number");
    assert_eq!(answer["refused"][3]["args"]["field"], "order");
    // What was taken comes out letter by letter, the oddest too.
    assert_eq!(post_wanted(&router, "{\"held\":{}}").text(), text_of(&taken));
    assert_eq!(post_lines(&router, text_of(&mixed)).json()["known"], 4);
}

#[test]
fn what_an_owner_withdraws_is_gone_on_the_other_side_too() {
    let folder = Folder::new("withdrawn");
    let there: Arc<dyn Kept> = Arc::new(OneAtATime::new(folder.open("a.sqlite")));
    let here = kept(BOOK);
    let lines = lines_of(BOOK, 1, 5);
    here.take(lines.clone()).unwrap();
    let served = Served::start(Service::new(Arc::clone(&there)));
    let mut other = PlainHttp::new(served.address, None);
    exchange(here.as_ref(), &mut other).unwrap();
    assert!(all(there.as_ref()).join("").contains("boquilla"));
    let withdraw = Told::from(Entry::Withdraw { reason: "the owner asks".to_string() }).text();
    here.take(vec![sealed(1, 9, 0, 1, &withdraw)]).unwrap();
    exchange(here.as_ref(), &mut other).unwrap();
    assert!(!all(there.as_ref()).join("").contains("boquilla"));
    // An old copy that still has it does not bring it back.
    assert_eq!(post_lines(&Service::new(Arc::clone(&there)).router(), text_of(&lines)).status, 200);
    assert!(!all(there.as_ref()).join("").contains("boquilla"));
    assert_eq!(all(there.as_ref()), all(here.as_ref()));
}

#[test]
fn a_copy_is_whole_while_others_write() {
    let folder = Folder::new("copy");
    let copies = AtomicU64::new(0);
    let path = folder.0.clone();
    let there = OneAtATime::new(folder.open("a.sqlite")).with_copy(move |store| {
        store.copy_to(&path.join(format!("copy-{}.sqlite", copies.fetch_add(1, Ordering::Relaxed))))
    });
    let there: Arc<dyn Kept> = Arc::new(there);
    let served = Served::start(Service::new(Arc::clone(&there)));
    let address = served.address;
    let writing = std::thread::spawn(move || {
        for writer in 1..=8 {
            let here = kept(BOOK);
            here.take(lines_of(BOOK, writer, 100)).unwrap();
            exchange(here.as_ref(), &mut PlainHttp::new(address, None)).unwrap();
        }
    });
    let router = Service::new(Arc::clone(&there)).router();
    for _ in 0..4 {
        let copied = common::ask(&router, common::here(), common::request("POST", "/api/1/copy", &[], ""));
        assert_eq!(copied.status, 200, "{copied:?}");
    }
    writing.join().unwrap();
    assert_eq!(there.held().unwrap().count(), 800);
    for number in 0..4 {
        let copy = folder.open(&format!("copy-{number}.sqlite"));
        copy.check().unwrap();
        let copy = OneAtATime::new(copy);
        // Each request is kept whole or not at all, so a copy holds whole hundreds.
        assert_eq!(copy.held().unwrap().count() % 100, 0);
        assert_eq!(copy.held().unwrap().without(&there.held().unwrap()), notebook::Ranges::none());
    }
}

#[test]
fn a_full_disk_is_told_and_nothing_is_kept_by_halves() {
    let folder = Folder::new("full");
    let store = folder.open("a.sqlite");
    store.limit_to_pages(30).unwrap();
    let kept: Arc<dyn Kept> = Arc::new(OneAtATime::new(store));
    let router = Service::new(Arc::clone(&kept)).router();
    let answer = post_lines(&router, text_of(&lines_of(BOOK, 1, 1_000)));
    assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (507, "server_store_full"));
    assert_eq!(kept.held().unwrap().count(), 0);
    assert_eq!(post_lines(&router, text_of(&lines_of(BOOK, 1, 3))).json()["new"], 3);
}
