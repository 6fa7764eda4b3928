//! The description of the API: held to what is checked in, and thousands of requests made up out of it, right and wrong.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::Arc;

use axum::Router;
use axum::body::Body;
use axum::http::{HeaderName, HeaderValue, Method, Request, Uri};
use common::{Answer, BOOK, OTHER_BOOK, ask, device, here, kept, lines_of, phone, text_of};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json};
use server::{Kept, OneAtATime, Service};
use store::MemoryStore;

#[test]
fn the_description_is_the_one_checked_in() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("openapi.json");
    let now = server::openapi();
    if std::env::var_os("INSTA_UPDATE").is_some_and(|update| update == "always") {
        std::fs::write(&path, &now).unwrap();
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        kept == now,
        "crates/server/openapi.json is not what the server describes; look at what changed for others, then \
         `cargo xtask bless`"
    );
    let router = Service::new(common::kept(BOOK)).router();
    let served = common::get(&router, "/api/1/openapi.json");
    assert_eq!((served.text(), served.header("content-type")), (now.as_str(), "application/json"));
}

/// Chance out of one number (Steele, Lea and Flood, 2014, "SplitMix").
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    fn below(&mut self, sides: usize) -> usize {
        usize::try_from(self.roll() % sides as u64).unwrap()
    }

    fn one<'a, T: ?Sized>(&mut self, of: &[&'a T]) -> &'a T {
        of[self.below(of.len())]
    }

    fn chance(&mut self, of: usize) -> bool {
        self.below(of) == 0
    }
}

/// What the document says may be asked.
struct Operation {
    method: String,
    path: String,
    /// Type of content and its schema.
    body: Option<(String, Value)>,
    answers: Vec<String>,
}

fn operations(document: &Value) -> Vec<Operation> {
    let mut all = Vec::new();
    for (path, methods) in document["paths"].as_object().unwrap() {
        for (method, operation) in methods.as_object().unwrap() {
            let content = operation["requestBody"]["content"].as_object();
            let body = content.and_then(|content| content.iter().next());
            let answers =
                operation["responses"]["200"]["content"].as_object().unwrap().keys().cloned().collect();
            all.push(Operation {
                method: method.to_uppercase(),
                path: path.clone(),
                body: body.map(|(kind, media)| (kind.clone(), media["schema"].clone())),
                answers,
            });
        }
    }
    all
}

/// Something that a schema allows.
fn fitting(document: &Value, schema: &Value, dice: &mut Dice) -> Value {
    if let Some(name) = schema["$ref"].as_str() {
        let named = document.pointer(name.trim_start_matches('#')).unwrap();
        return fitting(document, named, dice);
    }
    if let Some(choices) = schema["oneOf"].as_array() {
        let choice = &choices[dice.below(choices.len())];
        return fitting(document, choice, dice);
    }
    let kind = match &schema["type"] {
        Value::Array(kinds) => kinds[dice.below(kinds.len())].as_str().unwrap().to_string(),
        kind => kind.as_str().unwrap_or("null").to_string(),
    };
    match kind.as_str() {
        "object" => {
            let mut object = serde_json::Map::new();
            let needed: BTreeSet<&str> =
                schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
            for (name, property) in schema["properties"].as_object().into_iter().flatten() {
                if needed.contains(name.as_str()) || dice.chance(2) {
                    object.insert(name.clone(), fitting(document, property, dice));
                }
            }
            if schema["additionalProperties"].is_object() {
                for number in 0..dice.below(3) {
                    // The names are devices; the schema can only say that they are texts.
                    let name = device(u128::from(dice.roll() % 4) + number as u128).to_string();
                    object.insert(name, fitting(document, &schema["additionalProperties"], dice));
                }
            }
            Value::Object(object)
        }
        "array" => {
            let inner = &schema["items"];
            if inner["type"] == "integer" {
                let first = 1 + dice.roll() % 40;
                return json!([first, first + dice.roll() % 9]);
            }
            (0..dice.below(4)).map(|_| fitting(document, inner, dice)).collect()
        }
        "integer" | "number" => json!(1 + dice.roll() % 50),
        "string" => json!("text"),
        "boolean" => json!(dice.chance(2)),
        _ => Value::Null,
    }
}

/// Lines, some of them as they should not be.
fn lines(dice: &mut Dice) -> Vec<u8> {
    let book = if dice.chance(12) { OTHER_BOOK } else { BOOK };
    let writer = u128::from(1 + dice.roll() % 3);
    let count = 1 + dice.roll() % 12;
    let mut lines: Vec<String> =
        text_of(&lines_of(book, writer, count)).lines().map(str::to_string).collect();
    for _ in 0..dice.below(3) {
        let (from, to) = (dice.below(lines.len()), dice.below(lines.len()));
        match dice.below(6) {
            0 => lines.swap(from, to),
            1 => lines.push(lines[from].clone()),
            2 => lines[from] = lines[from].replacen("{\"line\":1", "{\"line\":2", 1),
            3 => lines[from].truncate(to * 7),
            4 => lines[from] = text_of(&lines_of(OTHER_BOOK, 9, 1)),
            _ => lines[from] = lines[from].replace("boquilla", "tip"),
        }
    }
    (lines.join("\n") + "\n").into_bytes()
}

/// Bytes with a few of them changed, cut or doubled.
fn spoiled(mut bytes: Vec<u8>, dice: &mut Dice) -> Vec<u8> {
    for _ in 0..=dice.below(4) {
        let at = dice.below(bytes.len().max(1));
        match dice.below(4) {
            _ if bytes.is_empty() => bytes.push(b'{'),
            0 => bytes[at] = u8::try_from(dice.roll() & 255).unwrap(),
            1 => bytes.truncate(at),
            2 => bytes.extend_from_within(at..),
            _ => bytes.insert(at, dice.one(&["\"", "}", "[", "-", "9", "\0", "\n"]).as_bytes()[0]),
        }
    }
    bytes
}

const HEADERS: [&str; 14] = [
    "host",
    "origin",
    "authorization",
    "content-type",
    "accept",
    "accept-language",
    "accept-encoding",
    "if-none-match",
    "content-length",
    "sec-fetch-site",
    "x-forwarded-for",
    "range",
    "expect",
    "x-anything",
];

const VALUES: [&str; 16] = [
    "",
    "*",
    "localhost",
    "http://localhost:8427",
    "null",
    "Bearer x",
    "text/plain",
    "application/json; charset=utf-8",
    "es;q=0.5,,;;q=",
    "br;q=9",
    "\"x\"",
    "0",
    "99999999999999999999",
    "same-origin",
    "bytes=0-1",
    "\u{e9}\u{ff}",
];

/// A request out of the document, or near it.
fn made_up(document: &Value, operation: &Operation, dice: &mut Dice) -> Option<(Request<Body>, String)> {
    let mut path = operation.path.clone();
    let mut method = operation.method.clone();
    if dice.chance(8) {
        method = dice
            .one(&["GET", "HEAD", "PUT", "DELETE", "OPTIONS", "POST", "PATCH", "TRACE", "M-SEARCH"])
            .to_string();
    }
    if dice.chance(10) {
        path.push_str(dice.one(&[
            "/",
            "/..",
            "%00",
            "?x=1",
            "?held=%7B%7D&most=1",
            "//",
            "/%2e%2e/x.js",
            "#x",
            "\\",
        ]));
    }
    let mut body = match &operation.body {
        None => Vec::new(),
        Some((kind, _)) if kind.contains("ndjson") => lines(dice),
        Some((_, schema)) => fitting(document, schema, dice).to_string().into_bytes(),
    };
    if dice.chance(3) {
        body = spoiled(body, dice);
    }
    let told = format!("{method} {path} {}", String::from_utf8_lossy(&body));
    let mut request = Request::new(Body::from(body));
    *request.method_mut() = Method::from_bytes(method.as_bytes()).ok()?;
    *request.uri_mut() = path.parse::<Uri>().ok()?;
    let headers = request.headers_mut();
    headers.insert("host", HeaderValue::from_static("localhost:8427"));
    if let Some((kind, _)) = &operation.body {
        headers.insert("content-type", HeaderValue::from_str(kind).unwrap());
    }
    for _ in 0..dice.below(8).saturating_sub(4) {
        let name = HeaderName::from_static(dice.one(&HEADERS));
        headers.append(name, HeaderValue::from_bytes(dice.one(&VALUES).as_bytes()).unwrap());
    }
    Some((request, told))
}

fn judge(operation: &Operation, answer: &Answer, head: bool, told: &str) -> Option<String> {
    let status = answer.status.as_u16();
    assert!(status < 500, "{told}: {answer:?}");
    if answer.status.is_client_error() {
        if head {
            assert!(answer.body.is_empty(), "{told}");
            return None;
        }
        return Some(answer.problem());
    }
    assert!(matches!(status, 200 | 304), "{told}: {status}");
    let kind = answer.header("content-type");
    let of_app = kind.starts_with("text/html");
    assert!(
        of_app || status == 304 || operation.answers.iter().any(|answer| answer == kind),
        "{told}: {kind}"
    );
    if kind == "application/json" && !head {
        answer.json();
    }
    None
}

/// What must have been refused at least once.
const CODES: [&str; 10] = [
    "server_unreadable",
    "server_field",
    "server_other_notebook",
    "server_content_type",
    "server_method",
    "server_host",
    "server_origin",
    "server_proxy",
    "server_no_route",
    "server_only_here",
];

#[test]
fn no_request_made_out_of_the_description_breaks_the_server() {
    let document: Value = serde_json::from_str(&server::openapi()).unwrap();
    let operations = operations(&document);
    assert_eq!(operations.len(), 5);
    let store = OneAtATime::new(MemoryStore::new(BOOK, device(0))).with_copy(|_| Ok(()));
    let kept: Arc<dyn Kept> = Arc::new(store);
    // A clock that stands still would soon have all requests answered with 429, so each one comes a second later.
    let second = std::sync::atomic::AtomicU64::new(0);
    let next =
        move || std::time::Duration::from_secs(second.fetch_add(1, std::sync::atomic::Ordering::Relaxed));
    let router: Router = Service::new(Arc::clone(&kept)).by_clock(Arc::new(next)).router();
    let answered: RefCell<BTreeMap<String, BTreeSet<u16>>> = RefCell::default();
    let problems: RefCell<BTreeSet<String>> = RefCell::default();
    let one = |seed| {
        let mut dice = Dice(seed);
        let operation = &operations[dice.below(operations.len())];
        let from = if dice.chance(9) { phone() } else { here() };
        if let Some((request, told)) = made_up(&document, operation, &mut dice) {
            let as_described =
                request.method().as_str() == operation.method && request.uri() == operation.path.as_str();
            let head = request.method() == Method::HEAD;
            let answer = ask(&router, from, request);
            problems.borrow_mut().extend(judge(operation, &answer, head, &told));
            if as_described {
                let name = format!("{} {}", operation.method, operation.path);
                answered.borrow_mut().entry(name).or_default().insert(answer.status.as_u16());
            }
        }
        Ok(())
    };
    let all_came_up = || CODES.iter().all(|code| problems.borrow().contains(*code));
    // Our own choice: enough that each part of the description is asked some hundred times; again where one of the rarer
    // answers did not come up by chance.
    for _ in 0..10 {
        let config = Config { cases: 3_000, failure_persistence: None, ..Config::default() };
        TestRunner::new(config).run(&any::<u64>(), one).unwrap();
        if all_came_up() {
            break;
        }
    }
    // A test of requests that are all refused would say nothing.
    for operation in &operations {
        let name = format!("{} {}", operation.method, operation.path);
        assert!(answered.borrow()[&name].contains(&200), "{name} was never answered: {answered:?}");
    }
    for code in CODES {
        assert!(problems.borrow().contains(code), "{code} never came up: {problems:?}");
    }
    // Whatever was sent, what is kept is whole.
    let mut book = notebook::Notebook::new(BOOK);
    for line in kept.lines_beyond(&notebook::Ranges::none(), usize::MAX).unwrap() {
        assert_eq!(book.take(line), notebook::Taken::New);
    }
    assert!(book.len() > 10);
    assert!(notebook::verify(&book).iter().all(|damage| matches!(damage, notebook::Damage::Missing { .. })));
}

#[test]
fn a_notebook_of_the_tests_is_not_by_chance_empty() {
    assert_eq!(kept(BOOK).take(lines_of(BOOK, 1, 3)).unwrap().new, 3);
}
