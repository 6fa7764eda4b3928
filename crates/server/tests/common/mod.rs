//! Notebooks, lines and requests for tests: names and chance by counting, never by luck.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]
#![allow(dead_code, reason = "each test takes what it needs")]

use std::net::IpAddr;
use std::sync::Arc;

use axum::Router;
use axum::body::{Body, Bytes};
use axum::http::{HeaderMap, Request, StatusCode};
use http_body_util::BodyExt;
use notebook::{
    About, At, DeviceId, Draft, Kind, Line, LineId, Notebook, NotebookId, ThingId, VERSION, Written,
    line_text,
};
use serde_json::Value;
use server::{Carried, Kept, OneAtATime, Peer, Reach, Secret, Service};
use store::{Fails, MemoryStore};
use tower::ServiceExt;

/// The notebook of the tests.
pub const BOOK: NotebookId = NotebookId::from_bits(1);
/// A notebook of somebody else.
pub const OTHER_BOOK: NotebookId = NotebookId::from_bits(2);
/// The address of the tests' server.
pub const HOST: &str = "localhost:8427";

/// A device by its number.
pub const fn device(number: u128) -> DeviceId {
    DeviceId::from_bits(100 + number)
}

/// Lines of one device, chained as they should be, with something of every kind of letter in them.
pub fn lines_of(book: NotebookId, writer: u128, count: u64) -> Vec<Line> {
    let mut notebook = Notebook::new(book);
    (1..=count)
        .map(|number| {
            let salt = (writer << 64 | u128::from(number)).to_be_bytes();
            let text = format!(
                "{{\"kind\":\"fact\",\"field\":\"visit.notes\",\"value\":\"boquilla {number} \\u00e9 \u{1f33e} \\\\ \"}}"
            );
            let draft = Draft {
                id: LineId::from_bits(writer << 64 | u128::from(number)),
                about: About { kind: Kind::Visit, id: ThingId::from_bits(7) },
                at: At { utc_milliseconds: 1_800_000_000_000 + i64::try_from(number).unwrap(), offset_minutes: -300 },
                version: VERSION,
                written: Written::new(text, salt),
            };
            notebook.write(device(writer), draft)
        })
        .collect()
}

/// Lines as they are sent.
pub fn text_of(lines: &[Line]) -> String {
    lines.iter().map(|line| line_text(line) + "\n").collect()
}

/// A notebook in memory.
pub fn kept(book: NotebookId) -> Arc<dyn Kept> {
    Arc::new(OneAtATime::new(MemoryStore::new(book, device(0))))
}

/// A notebook in memory that holds these lines.
pub fn kept_with(lines: &[Line]) -> Arc<dyn Kept> {
    let kept = kept(BOOK);
    assert_eq!(kept.take(lines.to_vec()).unwrap().new, lines.len());
    kept
}

/// A notebook in memory whose next writings go like this.
pub fn kept_failing(fails: impl IntoIterator<Item = Fails>) -> Arc<dyn Kept> {
    let store = MemoryStore::new(BOOK, device(0));
    store.fail(fails);
    Arc::new(OneAtATime::new(store))
}

/// Every line of a notebook, as it is sent.
pub fn all(kept: &dyn Kept) -> Vec<String> {
    kept.lines_beyond(&notebook::Ranges::none(), usize::MAX).unwrap().iter().map(line_text).collect()
}

/// The pairing secret of the tests.
pub fn secret() -> Secret {
    Secret::made_of([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
}

/// A service for the network.
pub fn for_network(kept: Arc<dyn Kept>) -> Service {
    Service::new(kept).for_reach(Reach::Network { names: vec!["barn.example".to_string()], secret: secret() })
}

/// This machine.
pub fn here() -> Peer {
    peer("127.0.0.1")
}

/// A phone in the yard.
pub fn phone() -> Peer {
    peer("192.168.7.20")
}

/// An address.
pub fn peer(address: &str) -> Peer {
    Peer { address: address.parse::<IpAddr>().unwrap(), carried: Carried::Plain }
}

/// An answer, read to its end.
#[derive(Debug)]
pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: Bytes,
}

impl Answer {
    /// Its body as text.
    pub fn text(&self) -> &str {
        core::str::from_utf8(&self.body).unwrap()
    }

    /// Its body as JSON.
    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.body).unwrap_or_else(|error| panic!("{error}: {:?}", self.body))
    }

    /// A header.
    pub fn header(&self, name: &str) -> &str {
        self.headers.get(name).map_or("", |value| value.to_str().unwrap())
    }

    /// The code of a problem document, which must be as it should be.
    pub fn problem(&self) -> String {
        assert_eq!(self.header("content-type"), "application/problem+json", "{self:?}");
        let document = self.json();
        let code = document["code"].as_str().unwrap().to_string();
        assert_eq!(document["status"], self.status.as_u16(), "{document}");
        assert_eq!(document["type"], format!("/problems/{code}"));
        assert!(document["args"].is_object());
        for text in ["title", "detail"] {
            let text = document[text].as_str().unwrap();
            assert!(!text.is_empty() && !text.contains("server_") && !text.contains("{ $"), "{document}");
        }
        code
    }
}

/// What every answer must carry.
pub fn is_guarded(answer: &Answer) {
    let policy = answer.header("content-security-policy");
    for part in ["default-src 'self'", "script-src 'self' 'wasm-unsafe-eval'", "frame-ancestors 'none'"] {
        assert!(policy.contains(part), "{answer:?}");
    }
    assert!(!policy.contains("unsafe-inline") && !policy.contains("'unsafe-eval'") && !policy.contains('*'));
    assert_eq!(answer.header("x-content-type-options"), "nosniff");
    assert_eq!(answer.header("referrer-policy"), "no-referrer");
    assert_eq!(answer.header("cross-origin-opener-policy"), "same-origin");
    assert_eq!(answer.header("cross-origin-resource-policy"), "same-origin");
    assert!(answer.header("permissions-policy").contains("geolocation=(self)"));
    assert!(!answer.headers.contains_key("access-control-allow-origin"));
}

/// Asks a router, and holds its answer to what every answer must carry.
pub fn ask(router: &Router, from: Peer, mut request: Request<Body>) -> Answer {
    request.extensions_mut().insert(from);
    static RUNTIME: std::sync::OnceLock<tokio::runtime::Runtime> = std::sync::OnceLock::new();
    let runtime = RUNTIME.get_or_init(|| tokio::runtime::Runtime::new().unwrap());
    let answer = runtime.block_on(async {
        let response = router.clone().oneshot(request).await.unwrap();
        let (head, body) = response.into_parts();
        Answer { status: head.status, headers: head.headers, body: body.collect().await.unwrap().to_bytes() }
    });
    is_guarded(&answer);
    answer
}

/// A request with the right `Host`.
pub fn request(method: &str, path: &str, headers: &[(&str, &str)], body: impl Into<Body>) -> Request<Body> {
    let mut request = Request::builder().method(method).uri(path);
    if !headers.iter().any(|(name, _)| name.eq_ignore_ascii_case("host")) {
        request = request.header("host", HOST);
    }
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    request.body(body.into()).unwrap()
}

/// Asks this machine's server for something.
pub fn get(router: &Router, path: &str) -> Answer {
    ask(router, here(), request("GET", path, &[], ""))
}

/// Sends lines to this machine's server.
pub fn post_lines(router: &Router, body: impl Into<Body>) -> Answer {
    ask(router, here(), request("POST", "/api/1/lines", &[("content-type", "application/x-ndjson")], body))
}

/// Asks this machine's server for lines.
pub fn post_wanted(router: &Router, body: impl Into<Body>) -> Answer {
    ask(router, here(), request("POST", "/api/1/lines/wanted", &[("content-type", "application/json")], body))
}
