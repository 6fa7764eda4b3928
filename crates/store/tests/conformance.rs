//! The suite on every store there is on this machine.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use store::conformance::{BOOK, DEVICE, run};
use store::{MemoryStore, Opening, SqliteStore};

use common::{folder, now};

#[test]
fn memory_does_what_every_store_must() {
    assert_eq!(now(run(&MemoryStore::new(BOOK, DEVICE))).expect("no error"), Vec::<String>::new());
}

#[test]
fn sqlite_does_what_every_store_must() {
    let path = folder("conformance").join("notebook.sqlite");
    let opening = Opening { notebook: BOOK, device: DEVICE };
    let store = SqliteStore::open(&path, opening).expect("a new file");
    assert_eq!(now(run(&store)).expect("no error"), Vec::<String>::new());
    store.check().expect("a whole file");
}
