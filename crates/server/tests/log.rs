//! The log: a line for each answer, with nothing in it about a person.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;

use std::io::Write;
use std::sync::{Arc, Mutex};

use axum::body::Body;
use axum::http::Request;
use common::{BOOK, for_network, here, kept_failing, lines_of, phone, request, secret, text_of};
use http_body_util::BodyExt;
use server::{Peer, Service, log_to};
use store::{Fails, StoreError};
use tower::ServiceExt;

#[derive(Clone, Default)]
struct Paper(Arc<Mutex<Vec<u8>>>);

impl Write for Paper {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.lock().unwrap().write(bytes)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

/// What is logged while a service answers, all on this thread.
fn logged(service: Service, requests: Vec<(Peer, Request<Body>)>) -> String {
    let paper = Paper::default();
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    log_to(paper.clone(), || {
        let router = service.router();
        for (from, mut request) in requests {
            request.extensions_mut().insert(from);
            runtime.block_on(async {
                let answer = router.clone().oneshot(request).await.unwrap();
                answer.into_body().collect().await.unwrap();
            });
        }
    });
    let bytes = paper.0.lock().unwrap().clone();
    String::from_utf8(bytes).unwrap()
}

#[test]
fn each_answer_is_a_line_of_fields_and_nobody_is_in_it() {
    let bearer = format!("Bearer {}", secret().shown());
    let lines = text_of(&lines_of(BOOK, 1, 3));
    let path = "/api/1/notebook?grower=willow";
    let sent = [
        ("host", "barn.example"),
        ("authorization", bearer.as_str()),
        ("content-type", "application/x-ndjson"),
    ];
    let wrong = [("host", "barn.example"), ("authorization", "Bearer 1111-2222-3333-4444")];
    let log = logged(
        for_network(kept_failing([])),
        vec![
            (phone(), request("POST", "/api/1/lines", &sent, lines)),
            (here(), request("GET", path, &[("authorization", bearer.as_str())], "")),
            (phone(), request("GET", "/visit/willow-bend", &[("host", "barn.example")], "")),
            (phone(), request("GET", "/api/1/willow", &wrong, "")),
            (phone(), request("WILLOW", "/", &wrong, "")),
        ],
    );
    let told: Vec<&str> = log.lines().collect();
    assert_eq!(told.len(), 5, "{log}");
    for (line, parts) in told.iter().zip([
        &["method=\"POST\"", "route=\"/api/1/lines\"", "status=200", "lines=3", "from=\"network\"", "bytes="]
            [..],
        &[
            "method=\"GET\"",
            "route=\"/api/1/notebook\"",
            "status=200",
            "from=\"this machine\"",
            "milliseconds=",
        ][..],
        &["route=\"file\"", "status=302"][..],
        &["route=\"unknown\"", "status=401", "problem=\"server_secret_wrong\""][..],
        &["method=\"other\"", "status=405"][..],
    ]) {
        for part in parts {
            assert!(line.contains(part), "{part} is not in {line}");
        }
    }
    let shown = secret().shown();
    for personal in ["willow", "WILLOW", "boquilla", "192.168", "barn", &shown, "1111", &BOOK.to_string()] {
        assert!(!log.contains(personal), "{personal} is in\n{log}");
    }
}

#[test]
fn a_failing_store_is_logged_by_its_code_alone() {
    let error = StoreError::System { what: "/farms/willow-bend/notebook: no".to_string() };
    let sent = [("content-type", "application/x-ndjson")];
    let body = text_of(&lines_of(BOOK, 1, 1));
    let log = logged(
        Service::new(kept_failing([Fails::Before(error)])),
        vec![(here(), request("POST", "/api/1/lines", &sent, body))],
    );
    assert!(log.contains("store_system") && log.contains("status=500"), "{log}");
    assert!(!log.contains("willow"), "{log}");
}
