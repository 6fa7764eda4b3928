//! Running a store's futures, and folders of a test's own.
#![allow(dead_code, reason = "each test takes what it needs")]

use std::future::Future;
use std::path::PathBuf;
use std::pin::pin;
use std::task::{Context, Poll, Waker};

/// Runs a future that never waits for anything but the disk.
pub fn now<T>(work: impl Future<Output = T>) -> T {
    let mut work = pin!(work);
    match work.as_mut().poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(done) => done,
        Poll::Pending => panic!("it waits for something"),
    }
}

/// A folder of this test's own, empty.
pub fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!("store-{name}"));
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder");
    folder
}
