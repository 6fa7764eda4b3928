//! Two notebooks over a real socket: whatever breaks off, comes twice or out of order, they end up the same.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;
mod served;

use std::io;
use std::sync::Arc;

use common::{BOOK, OTHER_BOOK, all, for_network, kept, lines_of, secret};
use notebook::{Line, Ranges};
use proptest::prelude::*;
use served::Served;
use server::{Answered, ExchangeError, Exchanged, Kept, Other, PlainHttp, Service, exchange};

/// The other side over a line that breaks: before the request arrives, or after it was done and before the answer came.
struct Breaking<'a> {
    whole: PlainHttp,
    breaks: &'a mut dyn Iterator<Item = Breaks>,
}

#[derive(Clone, Copy, Debug)]
enum Breaks {
    Not,
    Before,
    After,
    Halfway,
    Twice,
}

impl Other for Breaking<'_> {
    fn ask(&mut self, path: &str, body: Option<(&'static str, String)>) -> io::Result<Answered> {
        let broken = || io::Error::from(io::ErrorKind::ConnectionReset);
        match self.breaks.next().unwrap_or(Breaks::Not) {
            Breaks::Not => self.whole.ask(path, body),
            Breaks::Before => Err(broken()),
            Breaks::After => self.whole.ask(path, body).and_then(|_| Err(broken())),
            Breaks::Twice => self.whole.ask(path, body.clone()).and_then(|_| self.whole.ask(path, body)),
            Breaks::Halfway => {
                let mut answer = self.whole.ask(path, body)?;
                if path.ends_with("wanted") {
                    answer.body.truncate(answer.body.len() / 2);
                }
                Ok(answer)
            }
        }
    }
}

fn taking(kept: &dyn Kept, lines: impl IntoIterator<Item = Line>) {
    kept.take(lines.into_iter().collect()).unwrap();
}

#[test]
fn each_gets_what_it_lacks_and_then_nothing_more_is_sent() {
    let (here, there) = (kept(BOOK), kept(BOOK));
    taking(here.as_ref(), lines_of(BOOK, 1, 2_300));
    taking(there.as_ref(), lines_of(BOOK, 2, 1_700));
    taking(there.as_ref(), lines_of(BOOK, 1, 100));
    let served = Served::start(for_network(Arc::clone(&there)));
    let mut other = PlainHttp::new(served.address, Some(secret()));
    let done = exchange(here.as_ref(), &mut other).unwrap();
    assert_eq!(done, Exchanged { sent: 2_200, taken: 1_700, refused: 0 });
    assert_eq!(all(here.as_ref()), all(there.as_ref()));
    assert_eq!(exchange(here.as_ref(), &mut other).unwrap(), Exchanged::default());
}

#[test]
fn a_wrong_secret_and_another_notebook_are_told() {
    let served = Served::start(for_network(kept(OTHER_BOOK)));
    let mut unpaired = PlainHttp::new(served.address, None);
    match exchange(kept(BOOK).as_ref(), &mut unpaired) {
        Err(ExchangeError::Refused { status: 401, code }) => assert_eq!(code, "server_secret_missing"),
        other => panic!("{other:?}"),
    }
    let mut paired = PlainHttp::new(served.address, Some(secret()));
    match exchange(kept(BOOK).as_ref(), &mut paired) {
        Err(ExchangeError::OtherNotebook { theirs }) => assert_eq!(theirs, OTHER_BOOK),
        other => panic!("{other:?}"),
    }
    drop(served);
    assert!(matches!(exchange(kept(BOOK).as_ref(), &mut paired), Err(ExchangeError::Unreachable(_))));
}

/// A side that gives the same line for ever and never says that it is done.
struct ForEver(String);

impl Other for ForEver {
    fn ask(&mut self, path: &str, _: Option<(&'static str, String)>) -> io::Result<Answered> {
        let body = if path.ends_with("wanted") {
            self.0.clone()
        } else {
            format!(
                "{{\"notebook\":\"{BOOK}\",\"held\":{{\"{}\":[[1,9]]}},\"program\":\"x\"}}",
                common::device(1)
            )
        };
        Ok(Answered { status: 200, body: body.into_bytes() })
    }
}

#[test]
fn a_side_that_never_ends_is_left() {
    let mut other = ForEver(common::text_of(&lines_of(BOOK, 1, 1)));
    assert!(matches!(exchange(kept(BOOK).as_ref(), &mut other), Err(ExchangeError::Strange)));
}

#[test]
fn a_side_that_has_more_ranges_than_ours_ever_has_is_strange() {
    let mut other = ForEver("no lines\n".to_string());
    assert_eq!(exchange(kept(BOOK).as_ref(), &mut other).unwrap().refused, 1);
}

proptest! {
    // Our own choice: each case opens a server and some dozens of connections.
    #![proptest_config(ProptestConfig { cases: 24, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn whatever_breaks_they_end_up_the_same(
        parts in proptest::collection::vec((0_u128..4, 0_usize..60, 0_usize..60, any::<bool>()), 1..12),
        breaks in proptest::collection::vec(
            prop_oneof![
                Just(Breaks::Not), Just(Breaks::Before), Just(Breaks::After), Just(Breaks::Halfway), Just(Breaks::Twice)
            ],
            0..24,
        ),
    ) {
        let (here, there) = (kept(BOOK), kept(BOOK));
        let mut every = Ranges::none();
        for (writer, from, to, is_here) in parts {
            // Any part of what a device wrote, in any order: parts overlap, gaps stay.
            let lines = lines_of(BOOK, writer, 60);
            let part: Vec<Line> = lines.into_iter().skip(from.min(to)).take(from.abs_diff(to)).rev().collect();
            part.iter().for_each(|line| every.add(line.device(), line.number()));
            taking(if is_here { here.as_ref() } else { there.as_ref() }, part);
        }
        let served = Served::start(Service::new(Arc::clone(&there)));
        let mut breaks = breaks.into_iter();
        for _ in 0..40 {
            let mut other = Breaking { whole: PlainHttp::new(served.address, None), breaks: &mut breaks };
            let _ = exchange(here.as_ref(), &mut other);
        }
        prop_assert_eq!(here.held().unwrap(), every.clone());
        prop_assert_eq!(there.held().unwrap(), every);
        prop_assert_eq!(all(here.as_ref()), all(there.as_ref()));
    }
}
