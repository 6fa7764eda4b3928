//! Every route, what it gives and what it refuses.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;

use std::sync::Arc;

use common::{
    BOOK, OTHER_BOOK, ask, device, get, here, kept, kept_failing, kept_with, lines_of, post_lines,
    post_wanted, request, text_of,
};
use notebook::{Line, NotebookId, Ranges};
use serde_json::json;
use server::{Copied, Kept, Limits, OneAtATime, Service};
use store::{Fails, MemoryStore, StoreError, TakenIn};

#[test]
fn a_notebook_says_what_it_is_and_holds() {
    let router = Service::new(kept_with(&lines_of(BOOK, 1, 3))).router();
    let answer = get(&router, "/api/1/notebook");
    assert_eq!(answer.status, 200);
    assert_eq!(answer.header("cache-control"), "no-store");
    let held = answer.json();
    assert_eq!(held["notebook"], BOOK.to_string());
    assert_eq!(held["held"], json!({ device(1).to_string(): [[1, 3]] }));
    assert_eq!(get(&router, "/api/1/health").json()["status"], "ready");
}

#[test]
fn the_same_lines_again_change_nothing() {
    let lines = lines_of(BOOK, 1, 20);
    let kept = kept(BOOK);
    let router = Service::new(Arc::clone(&kept)).router();
    let first = post_lines(&router, text_of(&lines)).json();
    assert_eq!((&first["new"], &first["known"]), (&json!(20), &json!(0)));
    let before = common::all(kept.as_ref());
    let mut again = lines.clone();
    again.reverse();
    again.extend(lines.clone());
    let second = post_lines(&router, text_of(&again)).json();
    assert_eq!((&second["new"], &second["known"]), (&json!(0), &json!(40)));
    assert_eq!(second["held"], first["held"]);
    assert_eq!(common::all(kept.as_ref()), before);
    // What comes out is letter by letter what went in.
    assert_eq!(post_wanted(&router, "{\"held\":{}}").text(), text_of(&lines));
}

#[test]
fn what_was_taken_out_can_be_filled_in_again() {
    let lines = lines_of(BOOK, 1, 2);
    let bare: Vec<Line> = lines.iter().cloned().map(Line::bare).collect();
    let router = Service::new(kept_with(&bare)).router();
    let answer = post_lines(&router, text_of(&lines)).json();
    assert_eq!(answer["filled_in"], 2);
}

#[test]
fn bad_lines_are_named_and_the_others_kept() {
    let (lines, foreign) = (lines_of(BOOK, 1, 4), lines_of(OTHER_BOOK, 1, 1));
    let kept = kept(BOOK);
    let router = Service::new(Arc::clone(&kept)).router();
    let changed = text_of(&lines[1..2]).replace("boquilla 2", "boquilla 9");
    let future = text_of(&lines[2..3]).replacen("{\"line\":1", "{\"line\":9", 1);
    let cut = text_of(&lines[3..]);
    let mut body = [text_of(&lines[..1]), changed, "\r\n\n".to_string(), future, text_of(&foreign)].concat();
    body.push_str("[1]\n{\"line\":1}\n");
    let mut body = body.into_bytes();
    body.extend_from_slice(b"\xff\xfe\n");
    body.extend_from_slice(&cut.as_bytes()[..cut.len() / 2]);
    let answer = post_lines(&router, body);
    assert_eq!(answer.status, 200);
    let answer = answer.json();
    assert_eq!((&answer["new"], &answer["changed"], &answer["foreign"]), (&json!(1), &json!(1), &json!(1)));
    let named: Vec<_> = answer["refused"]
        .as_array()
        .unwrap()
        .iter()
        .map(|line| (line["at"].as_u64().unwrap(), &line["code"]))
        .collect();
    let expected = [
        (2, "line_changed"),
        (5, "line_newer"),
        (6, "line_foreign"),
        (7, "line_not_a_line"),
        (8, "line_field"),
        (9, "line_not_text"),
        (10, "line_not_a_line"),
    ];
    assert_eq!(named.len(), expected.len(), "{answer}");
    for ((at, code), expected) in named.into_iter().zip(expected) {
        assert_eq!((at, code), (expected.0, &json!(expected.1)));
    }
    assert_eq!(answer["refused"][1]["args"]["version"], "9");
    assert_eq!(answer["unreadable"], 5);
    assert_eq!(kept.held().unwrap().count(), 1);
}

#[test]
fn another_notebooks_lines_are_refused_by_name() {
    let router = Service::new(kept(BOOK)).router();
    let answer = post_lines(&router, text_of(&lines_of(OTHER_BOOK, 1, 3)));
    assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (409, "server_other_notebook"));
    let args = &answer.json()["args"];
    assert_eq!(args["theirs"], OTHER_BOOK.to_string());
    assert_eq!(args["ours"], BOOK.to_string());
}

#[test]
fn lines_are_given_in_parts_and_by_what_is_held() {
    let lines = lines_of(BOOK, 1, 1_200);
    let router = Service::new(kept_with(&lines)).router();
    let asked = |held: &str, most: &str| {
        let answer = post_wanted(&router, format!("{{\"held\":{held}{most}}}"));
        assert_eq!(answer.header("content-type"), "application/x-ndjson");
        answer.text().to_string()
    };
    let device = device(1);
    assert_eq!(asked("{}", ""), text_of(&lines));
    assert_eq!(asked("{}", ",\"most\":7"), text_of(&lines[..7]));
    assert_eq!(asked(&format!("{{\"{device}\":[[1,1190],[1195,1200]]}}"), ""), text_of(&lines[1190..1194]));
    assert_eq!(asked(&format!("{{\"{device}\":[[1,1200]]}}"), ""), "");
    // Of a device that nobody here knows, and of numbers that are not there yet.
    assert_eq!(asked(&format!("{{\"{device}\":[[1,18446744073709551615]]}}"), ""), "");
    assert_eq!(asked(&format!("{{\"{}\":[[1,5]]}}", common::device(9)), ",\"most\":1"), text_of(&lines[..1]));
}

#[test]
fn an_answer_ends_when_it_is_long_enough() {
    let lines = lines_of(BOOK, 1, 50);
    let one = text_of(&lines[..1]).len();
    let limits = Limits { answer_bytes: one * 10, ..Limits::USUAL };
    let router = Service::new(kept_with(&lines)).within(limits).router();
    let given = post_wanted(&router, "{\"held\":{}}").text().lines().count();
    assert!((9..=11).contains(&given), "{given}");
}

#[test]
fn what_is_no_question_is_refused() {
    let router = Service::new(kept(BOOK)).router();
    let long = format!("{{\"held\":{{\"{}\":[{}]}}}}", device(1), vec!["[5,5]"; 10_001].join(","));
    for (body, status, code) in [
        ("", 400, "server_unreadable"),
        ("{", 400, "server_unreadable"),
        ("[]", 400, "server_unreadable"),
        ("{\"held\":{},\"all\":1}", 400, "server_unreadable"),
        ("{\"held\":{\"nobody\":[[1,2]]}}", 422, "server_field"),
        ("{\"held\":{},\"most\":0}", 422, "server_field"),
        ("{\"held\":{},\"most\":-1}", 400, "server_unreadable"),
        (&long, 413, "server_too_many_ranges"),
        (&"[".repeat(100_000), 400, "server_unreadable"),
    ] {
        let answer = post_wanted(&router, body.to_string());
        assert_eq!(
            (answer.status.as_u16(), answer.problem().as_str()),
            (status, code),
            "{}",
            &body[..body.len().min(60)]
        );
    }
}

#[test]
fn too_much_is_refused_before_it_is_read() {
    let limits = Limits { body_bytes: 10_000, asking_bytes: 100, lines_taken: 5, ..Limits::USUAL };
    let kept = kept(BOOK);
    let router = Service::new(Arc::clone(&kept)).within(limits).router();
    let too_large = post_lines(&router, "x".repeat(10_001));
    assert_eq!((too_large.status.as_u16(), too_large.problem().as_str()), (413, "server_too_large"));
    assert_eq!(too_large.json()["args"]["most"], 10_000);
    assert_eq!(post_wanted(&router, " ".repeat(101)).problem(), "server_too_large");
    let lines = lines_of(BOOK, 1, 6);
    assert_eq!(post_lines(&router, text_of(&lines)).problem(), "server_too_many_lines");
    assert_eq!(kept.held().unwrap(), Ranges::none());
    assert_eq!(post_lines(&router, text_of(&lines[..5])).status, 200);
    // A body that does not say how long it is.
    let endless = axum::body::Body::new(http_body_util::StreamBody::new(Endless));
    assert_eq!(post_lines(&router, endless).problem(), "server_too_large");
}

/// A body without an end.
struct Endless;

impl futures_core::Stream for Endless {
    type Item = Result<http_body::Frame<axum::body::Bytes>, core::convert::Infallible>;

    fn poll_next(
        self: core::pin::Pin<&mut Self>,
        _: &mut core::task::Context<'_>,
    ) -> core::task::Poll<Option<Self::Item>> {
        let frame = http_body::Frame::data(axum::body::Bytes::from_static(&[b'x'; 4_000]));
        core::task::Poll::Ready(Some(Ok(frame)))
    }
}

#[test]
fn other_types_methods_and_addresses_are_problems() {
    let router = Service::new(kept(BOOK)).router();
    for (kind, code) in [
        ("text/plain", "server_content_type"),
        ("application/json", "server_content_type"),
        ("multipart/form-data", "server_content_type"),
    ] {
        let answer = ask(&router, here(), request("POST", "/api/1/lines", &[("content-type", kind)], "x"));
        assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (415, code));
    }
    for (method, path, status) in [
        ("POST", "/api/1/notebook", 405),
        ("GET", "/api/1/lines", 405),
        ("DELETE", "/api/1/lines", 405),
        ("OPTIONS", "/api/1/lines", 405),
        ("PATCH", "/", 405),
        ("BREW", "/api/1/health", 405),
        ("GET", "/api/1/nothing", 404),
        ("GET", "/api", 404),
        ("GET", "/api/", 404),
        ("GET", "/api/2/notebook", 404),
        ("GET", "/api/1/notebook/", 404),
        ("GET", "/nothing.css", 404),
    ] {
        let answer = ask(&router, here(), request(method, path, &[], ""));
        assert_eq!(answer.status, status, "{method} {path}");
        answer.problem();
        assert_eq!(answer.headers.contains_key("allow"), status == 405, "{method} {path}");
    }
    let head = ask(&router, here(), request("HEAD", "/api/1/nothing", &[], ""));
    assert_eq!((head.status.as_u16(), head.body.len()), (404, 0));
}

#[test]
fn problems_are_told_in_the_readers_language() {
    let router = Service::new(kept(BOOK)).router();
    let answer =
        ask(&router, here(), request("GET", "/api/1/x", &[("accept-language", "es-MX,en;q=0.2")], ""));
    assert_eq!(answer.header("content-language"), "es");
    assert_eq!(answer.json()["detail"], "no hay nada en esta dirección");
    assert_eq!(get(&router, "/api/1/x").json()["detail"], "there is nothing at this address");
}

#[test]
fn a_store_that_fails_is_told_without_what_the_system_says() {
    let system = StoreError::System { what: "/secret/folder".to_string() };
    for (error, status, code) in [
        (StoreError::Full, 507, "server_store_full"),
        (StoreError::Locked, 503, "server_store_locked"),
        (StoreError::ReadOnly, 500, "server_store_read_only"),
        (system, 500, "server_fault"),
    ] {
        let router = Service::new(kept_failing([Fails::Before(error)])).router();
        let lines = text_of(&lines_of(BOOK, 1, 2));
        let answer = post_lines(&router, lines.clone());
        assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (status, code));
        assert!(!answer.text().contains("secret/folder"), "{answer:?}");
        assert_eq!(answer.headers.contains_key("retry-after"), status == 503);
        // Sent again, all is well.
        assert_eq!(post_lines(&router, lines).json()["new"], 2);
    }
    // The power goes after all was kept: sent again, it is known.
    let router = Service::new(kept_failing([Fails::After(StoreError::Full)])).router();
    let lines = text_of(&lines_of(BOOK, 1, 2));
    assert_eq!(post_lines(&router, lines.clone()).status, 507);
    assert_eq!(post_lines(&router, lines).json()["known"], 2);
}

/// A notebook whose own work falls over.
struct FallsOver;

impl Kept for FallsOver {
    fn notebook(&self) -> NotebookId {
        BOOK
    }
    fn held(&self) -> Result<Ranges, StoreError> {
        panic!("a fault made for this test")
    }
    fn lines_beyond(&self, _: &Ranges, _: usize) -> Result<Vec<Line>, StoreError> {
        Err(StoreError::Other)
    }
    fn take(&self, _: Vec<Line>) -> Result<TakenIn, StoreError> {
        Err(StoreError::Damaged { what: "page 7".to_string() })
    }
}

#[test]
fn a_fault_of_ours_is_a_problem_and_the_server_goes_on() {
    let router = Service::new(Arc::new(FallsOver)).router();
    for _ in 0..2 {
        let answer = get(&router, "/api/1/notebook");
        assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (500, "server_fault"));
        assert!(!answer.text().contains("made for this test"));
    }
    assert_eq!(get(&router, "/").status, 200);
}

#[test]
fn a_second_copy_is_made_while_the_server_runs() {
    let copy = |router: &axum::Router| ask(router, here(), request("POST", "/api/1/copy", &[], ""));
    let answer = copy(&Service::new(kept(BOOK)).router());
    assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (404, "server_no_copy"));
    let copied = Arc::new(std::sync::atomic::AtomicUsize::new(0));
    let counter = Arc::clone(&copied);
    let kept = OneAtATime::new(MemoryStore::new(BOOK, device(0))).with_copy(move |_| {
        counter.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
        Ok(())
    });
    assert_eq!(kept.copy(), Ok(Copied::Yes));
    assert_eq!(copy(&Service::new(Arc::new(kept)).router()).json()["copy"], "made");
    assert_eq!(copied.load(std::sync::atomic::Ordering::Relaxed), 2);
}
