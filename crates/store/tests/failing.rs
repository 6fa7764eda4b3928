//! The store in memory fails in every way that a disk does, and keeps what a disk would keep.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{DeviceId, Line, Notebook, verify};
use store::conformance::{BOOK, DEVICE, fact};
use store::{Fails, MemoryStore, Store, StoreError};

use common::now;

fn damaged() -> StoreError {
    StoreError::Damaged { what: "a page".to_string() }
}

fn numbers(store: &MemoryStore) -> Vec<u64> {
    now(store.lines()).expect("read").iter().map(Line::number).collect()
}

#[test]
fn what_fails_before_it_is_kept_leaves_nothing_and_the_next_takes_its_number() {
    for error in [StoreError::Full, StoreError::Locked, StoreError::ReadOnly, damaged()] {
        let store = MemoryStore::new(BOOK, DEVICE);
        now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept");
        store.fail([Fails::Before(error.clone())]);
        assert_eq!(now(store.append(vec![fact(2, 1, "a"), fact(3, 1, "b")])), Err(error));
        assert_eq!(numbers(&store), [1]);
        assert_eq!(now(store.append(vec![fact(2, 1, "208 ft")])).expect("kept")[0].number(), 2);
    }
}

/// A process killed at any writing: before it, the writing is not there; after it, it is, though nobody was told.
#[test]
fn killed_between_any_two_writings_all_that_was_told_is_there() {
    for killed_at in 0..6_u64 {
        for kept_first in [false, true] {
            let store = MemoryStore::new(BOOK, DEVICE);
            let killed = StoreError::System { what: "killed".to_string() };
            let way = if kept_first { Fails::After(killed) } else { Fails::Before(killed) };
            store.fail((0..killed_at).map(|_| Fails::Not).chain([way]));
            let mut told = Vec::new();
            for turn in 0..6_u128 {
                let drafts = vec![fact(turn * 2, 1, "a"), fact(turn * 2 + 1, 1, "b")];
                let Ok(lines) = now(store.append(drafts)) else { break };
                told.extend(lines);
            }
            assert_eq!(told.len() as u64, killed_at * 2);
            store.cut_power();
            let there = now(store.lines()).expect("read");
            assert_eq!(there[..told.len()], told[..]);
            assert_eq!(
                there.len(),
                told.len() + if kept_first { 2 } else { 0 },
                "a writing is whole or not at all"
            );
        }
    }
}

#[test]
fn a_disk_that_only_says_it_has_kept_leaves_a_whole_notebook_up_to_there() {
    let store = MemoryStore::new(BOOK, DEVICE);
    store.fail([Fails::Not, Fails::Lost, Fails::Lost]);
    for number in 1..=3 {
        now(store.append(vec![fact(number, 1, "204 ft")])).expect("told kept");
    }
    assert_eq!(numbers(&store), [1, 2, 3], "nobody sees it while the power is on");
    store.cut_power();
    assert_eq!(numbers(&store), [1]);
    // What is forced to the disk takes everything before it there.
    store.fail([Fails::Lost, Fails::Not]);
    now(store.append(vec![fact(4, 1, "a")])).expect("told kept");
    now(store.append(vec![fact(5, 1, "b")])).expect("kept");
    store.cut_power();
    assert_eq!(numbers(&store), [1, 2, 3]);
    let mut book = Notebook::new(BOOK);
    now(store.lines()).expect("read").into_iter().for_each(|line| {
        book.take(line);
    });
    assert_eq!(verify(&book), vec![]);
}

#[test]
fn a_damaged_page_fails_the_reading_and_nothing_else() {
    let store = MemoryStore::new(BOOK, DEVICE);
    now(store.append(vec![fact(1, 1, "204 ft")])).expect("kept");
    store.fail_reading([damaged(), damaged()]);
    assert_eq!(now(store.lines()), Err(damaged()));
    assert_eq!(now(store.held()), Err(damaged()));
    now(store.append(vec![fact(2, 1, "208 ft")])).expect("kept");
    assert_eq!(numbers(&store), [1, 2]);
}

#[test]
fn two_windows_at_once_never_give_one_number_twice() {
    let store = MemoryStore::new(BOOK, DEVICE);
    std::thread::scope(|threads| {
        for window in 0..2_u128 {
            let store = store.another_window();
            threads.spawn(move || {
                for turn in 0..200 {
                    now(store.append(vec![fact(window * 1_000 + turn, 1, "204 ft")])).expect("kept");
                }
            });
        }
    });
    assert!(numbers(&store).into_iter().eq(1..=400));
    // And a line from another device comes in between.
    let theirs = Notebook::new(BOOK).write(DeviceId::from_bits(71), fact(5_000, 1, "1 ft"));
    assert_eq!(now(store.another_window().take(vec![theirs])).expect("taken").new, 1);
    assert_eq!(numbers(&store).len(), 401);
}
