//! Who is let in: names, pages, secrets, places, and how often.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;

use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

use common::{Answer, BOOK, ask, for_network, here, kept, peer, phone, request, secret};
use server::{Carried, Clock, Limits, Pace, Peer, Reach, Service};

const ASKED: &str = "/api/1/notebook";

fn here_with(headers: &[(&str, &str)]) -> Answer {
    ask(&Service::new(kept(BOOK)).router(), here(), request("GET", ASKED, headers, ""))
}

#[test]
fn only_names_of_this_machine_are_answered_on_it() {
    for host in ["localhost", "localhost:8427", "LocalHost:1", "127.0.0.1:8427", "[::1]:8427", "127.0.0.1"] {
        assert_eq!(here_with(&[("host", host)]).status, 200, "{host}");
    }
    for host in [
        "evil.example",
        "localhost.evil.example",
        "evil.example:8427",
        "127.0.0.1.evil.example",
        "192.168.1.5:8427",
        "0.0.0.0:8427",
        "",
        "localhost:8427, evil.example",
        "user@localhost",
        "[::1",
        "localhost:x",
        "127.1",
    ] {
        let answer = here_with(&[("host", host)]);
        assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (403, "server_host"), "{host}");
    }
    assert_eq!(here_with(&[("host", "localhost"), ("host", "localhost")]).problem(), "server_host");
    let router = Service::new(kept(BOOK)).router();
    let none = axum::http::Request::get(ASKED).body(axum::body::Body::empty()).unwrap();
    assert_eq!(ask(&router, here(), none).problem(), "server_host");
    // An address written out in full does not get around it, in either direction.
    let written = request("GET", "http://evil.example/api/1/notebook", &[("host", "localhost")], "");
    assert_eq!(ask(&router, here(), written).problem(), "server_host");
    let written = request("GET", "http://localhost:8427/api/1/notebook", &[("host", "localhost:8427")], "");
    assert_eq!(ask(&router, here(), written).status, 200);
    // The app's files have the same doorkeeper.
    assert_eq!(ask(&router, here(), request("GET", "/", &[("host", "evil.example")], "")).status, 403);
}

#[test]
fn pages_of_other_sites_may_not_ask() {
    for (origin, status) in [
        ("http://localhost:8427", 200),
        ("http://LOCALHOST:8427", 200),
        ("http://localhost:3000", 403),
        ("http://localhost", 403),
        ("https://localhost:8427", 403),
        ("http://127.0.0.1:8427", 403),
        ("https://evil.example", 403),
        ("null", 403),
        ("", 403),
        ("http://localhost:8427.evil.example", 403),
        ("file://", 403),
    ] {
        let answer = here_with(&[("origin", origin)]);
        assert_eq!(answer.status, status, "{origin}");
        assert!(status == 200 || answer.problem() == "server_origin");
    }
    let both = [("origin", "http://localhost:8427"), ("origin", "https://evil.example")];
    assert_eq!(here_with(&both).problem(), "server_origin");
    for (site, status) in
        [("same-origin", 200), ("none", 200), ("cross-site", 403), ("same-site", 403), ("x", 403)]
    {
        assert_eq!(here_with(&[("sec-fetch-site", site)]).status, status, "{site}");
    }
    // A link from elsewhere to the app is no question of that page's.
    let router = Service::new(kept(BOOK)).router();
    let link = [("sec-fetch-site", "cross-site"), ("sec-fetch-mode", "navigate")];
    assert_eq!(ask(&router, here(), request("GET", "/", &link, "")).status, 200);
    // A form of another site that writes.
    let form =
        [("content-type", "text/plain"), ("origin", "https://evil.example"), ("sec-fetch-mode", "navigate")];
    assert_eq!(ask(&router, here(), request("POST", "/api/1/lines", &form, "x")).problem(), "server_origin");
}

#[test]
fn a_proxy_that_nobody_told_of_does_not_open_the_notebook_to_the_world() {
    for header in ["X-Forwarded-For", "Forwarded", "Via", "X-Real-IP", "X-Forwarded-Host"] {
        assert_eq!(here_with(&[(header, "203.0.113.9")]).problem(), "server_proxy", "{header}");
    }
    let names = vec!["barn.example".to_string()];
    let router = Service::new(kept(BOOK)).for_reach(Reach::BehindProxy { names, secret: secret() }).router();
    let bearer = format!("Bearer {}", secret().shown());
    let through = |headers: &[(&str, &str)]| {
        let mut all = vec![("host", "barn.example"), ("x-forwarded-for", "203.0.113.9")];
        all.extend_from_slice(headers);
        ask(&router, here(), request("GET", ASKED, &all, ""))
    };
    assert_eq!(through(&[]).problem(), "server_secret_missing");
    let origin = ("origin", "https://barn.example");
    assert_eq!(through(&[("authorization", &bearer), origin]).status, 200);
    // Whoever comes through a proxy is not on this machine, though the proxy is.
    let copy = [("host", "localhost"), ("via", "1.1 barn"), ("authorization", &bearer)];
    assert_eq!(ask(&router, here(), request("POST", "/api/1/copy", &copy, "")).problem(), "server_only_here");
    let copy = [("host", "barn.example"), ("authorization", &bearer)];
    assert_eq!(ask(&router, here(), request("POST", "/api/1/copy", &copy, "")).problem(), "server_only_here");
}

#[test]
fn the_network_must_know_the_secret() {
    let router = for_network(kept(BOOK)).router();
    let shown = secret().shown();
    let with = |authorization: &str| {
        let headers = [("host", "192.168.7.1:8427"), ("authorization", authorization)];
        ask(&router, phone(), request("GET", ASKED, &headers, ""))
    };
    for right in [format!("Bearer {shown}"), format!("bearer {}", shown.to_lowercase().replace('-', ""))] {
        assert_eq!(with(&right).status, 200, "{right}");
    }
    for wrong in
        ["Bearer ", "Bearer", "Basic eDp5", &shown, "Bearer 0000-0000-0000-0000", &format!("Bearer {shown}1")]
    {
        let answer = with(wrong);
        assert_eq!(
            (answer.status.as_u16(), answer.problem().as_str()),
            (401, "server_secret_wrong"),
            "{wrong}"
        );
        assert!(answer.header("www-authenticate").starts_with("Bearer"));
        assert!(!answer.text().contains(&shown));
    }
    for path in [ASKED, "/api/1/health", "/api/1/openapi.json", "/api/1/nothing", "/api"] {
        let answer =
            ask(&router, peer("192.168.7.99"), request("GET", path, &[("host", "barn.example")], ""));
        assert_eq!(answer.problem(), "server_secret_missing", "{path}");
    }
    // The app itself must open before anybody can be paired; and names that nobody gave are refused here too.
    assert_eq!(ask(&router, phone(), request("GET", "/", &[("host", "barn.example")], "")).status, 200);
    assert_eq!(ask(&router, phone(), request("GET", "/", &[("host", "evil.example")], "")).status, 403);
    // This machine must know it as well: on the network anybody may claim to be it.
    assert_eq!(ask(&router, here(), request("GET", ASKED, &[], "")).status, 401);
    let copy = [("authorization", format!("Bearer {shown}"))].map(|(name, value)| (name, value));
    let copy: Vec<(&str, &str)> = copy.iter().map(|(name, value)| (*name, value.as_str())).collect();
    assert_eq!(
        ask(&router, phone(), request("POST", "/api/1/copy", &copy, "")).problem(),
        "server_only_here"
    );
    assert_eq!(ask(&router, here(), request("POST", "/api/1/copy", &copy, "")).problem(), "server_no_copy");
}

#[test]
fn a_request_without_a_known_other_end_is_of_the_network() {
    use tower::ServiceExt;
    let router = Service::new(kept(BOOK)).router();
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    let answered = runtime.block_on(router.oneshot(request("POST", "/api/1/copy", &[], ""))).unwrap();
    assert_eq!(answered.status(), 403);
}

#[test]
fn over_tls_the_page_must_be_of_https() {
    let router = for_network(kept(BOOK)).router();
    let tls = Peer { carried: Carried::Tls, ..phone() };
    let bearer = format!("Bearer {}", secret().shown());
    for (origin, status) in
        [("https://barn.example", 200), ("https://barn.example:443", 200), ("http://barn.example", 403)]
    {
        let headers = [("host", "barn.example"), ("origin", origin), ("authorization", &bearer)];
        assert_eq!(ask(&router, tls, request("GET", ASKED, &headers, "")).status, status, "{origin}");
    }
}

fn by_hand() -> (Clock, Arc<AtomicU64>) {
    let time = Arc::new(AtomicU64::new(0));
    let hand = Arc::clone(&time);
    (Arc::new(move || Duration::from_millis(hand.load(Ordering::Relaxed))), time)
}

#[test]
fn too_many_requests_are_told_when_to_come_again() {
    let (clock, time) = by_hand();
    let limits = Limits { here: Pace { at_once: 3, each_second: 1 }, ..Limits::USUAL };
    let router = Service::new(kept(BOOK)).within(limits).by_clock(clock).router();
    let once = || ask(&router, here(), request("GET", ASKED, &[], ""));
    (0..3).for_each(|_| assert_eq!(once().status, 200));
    let answer = once();
    assert_eq!((answer.status.as_u16(), answer.problem().as_str()), (429, "server_too_many"));
    assert_eq!(answer.header("retry-after"), "1");
    time.store(1_000, Ordering::Relaxed);
    assert_eq!(once().status, 200);
    assert_eq!(once().status, 429);
    // Files count as well, and a phone elsewhere has its own.
    assert_eq!(ask(&router, here(), request("GET", "/", &[], "")).status, 429);
    assert_eq!(ask(&router, peer("::1"), request("GET", "/", &[], "")).status, 200);
}

#[test]
fn trying_secrets_out_is_slow() {
    let (clock, time) = by_hand();
    let router = for_network(kept(BOOK)).by_clock(clock).router();
    let attempt = |secret: &str| {
        let headers = [("host", "barn.example"), ("authorization", secret)];
        ask(&router, phone(), request("GET", ASKED, &headers, "")).status.as_u16()
    };
    let mut answered = 0;
    // An hour of trying, a hundred a second, in steps of a minute.
    for minute in 0..60 {
        time.store(minute * 60_000, Ordering::Relaxed);
        answered += (0..600).filter(|_| attempt("Bearer 0000-0000-0000-0001") == 401).count();
    }
    assert!((9..=60 * 10).contains(&answered), "{answered}");
    assert_eq!(attempt(&format!("Bearer {}", secret().shown())), 429);
    // Another phone is not locked out by it, and the first is let in again after a while.
    let headers = [("host", "barn.example"), ("authorization", &format!("Bearer {}", secret().shown()))];
    assert_eq!(ask(&router, peer("192.168.7.21"), request("GET", ASKED, &headers, "")).status, 200);
    time.store(4_000_000, Ordering::Relaxed);
    assert_eq!(attempt(&format!("Bearer {}", secret().shown())), 200);
}
