//! The app's files: compressed, known by their tags, and nothing else on the disk.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

mod common;

use axum::Router;
use axum::body::Bytes;
use common::{Answer, BOOK, ask, here, kept, request};
use server::{AppFile, AppFiles, Service};

fn app() -> Router {
    let file = |path: &str, text: &str, br: Option<&'static [u8]>, gz: Option<&'static [u8]>| AppFile {
        path: path.to_string(),
        bytes: Bytes::from(text.to_string()),
        br: br.map(Bytes::from_static),
        gz: gz.map(Bytes::from_static),
    };
    let files = AppFiles::of([
        file("index.html", "<p>page", Some(b"B"), Some(b"GG")),
        file("sw.js", "worker", None, Some(b"GGG")),
        file("assets/app-1f3c9a70be.wasm", "code", Some(b"BB"), None),
        file("assets/app-1f3c9a70be.css", "style", None, None),
        file("notes.txt", "ni\u{f1}o", None, None),
    ]);
    Service::new(kept(BOOK)).with_files(files).router()
}

fn get(router: &Router, path: &str, headers: &[(&str, &str)]) -> Answer {
    ask(router, here(), request("GET", path, headers, ""))
}

#[test]
fn files_come_with_their_type_and_are_kept_as_long_as_they_hold() {
    let app = app();
    for (path, kind, keep) in [
        ("/", "text/html; charset=utf-8", "no-cache"),
        ("/index.html", "text/html; charset=utf-8", "no-cache"),
        ("/sw.js", "text/javascript; charset=utf-8", "no-cache"),
        ("/assets/app-1f3c9a70be.wasm", "application/wasm", "public, max-age=31536000, immutable"),
        ("/assets/app-1f3c9a70be.css", "text/css; charset=utf-8", "public, max-age=31536000, immutable"),
        ("/notes.txt", "text/plain; charset=utf-8", "no-cache"),
    ] {
        let answer = get(&app, path, &[]);
        assert_eq!(answer.status, 200, "{path}");
        assert_eq!((answer.header("content-type"), answer.header("cache-control")), (kind, keep), "{path}");
        assert_eq!(answer.header("content-length"), answer.body.len().to_string());
        assert_eq!(answer.header("vary"), "Accept-Encoding");
        let head = ask(&app, here(), request("HEAD", path, &[], ""));
        assert_eq!(head.body.len(), 0);
        for name in ["content-type", "content-length", "etag", "cache-control"] {
            assert_eq!(head.header(name), answer.header(name), "{path} {name}");
        }
    }
}

#[test]
fn an_address_within_the_app_leads_behind_the_sign_that_no_host_sees() {
    let app = app();
    for (path, to) in [
        ("/visit", "./#/visit"),
        ("/visit/7", "./../#/visit/7"),
        ("/visit/7?tip=4", "./../#/visit/7?tip=4"),
        ("/a/b/c", "./../../#/a/b/c"),
        // Nothing that leads away from here.
        ("//example.org/a", "./../../#/example.org/a"),
        ("//", "./../#/"),
        ("/%0d%0aSet-Cookie", ""),
    ] {
        let answer = get(&app, path, &[]);
        assert_eq!(answer.header("location"), to, "{path}");
        assert_eq!(answer.status, if to.is_empty() { 404 } else { 302 }, "{path}");
    }
}

#[test]
fn the_form_that_is_wanted_most_is_given() {
    let app = app();
    for (path, wanted, coding, body) in [
        ("/", "gzip, deflate, br, zstd", "br", "B"),
        ("/", "gzip", "gzip", "GG"),
        ("/", "br;q=0.1, gzip;q=0.9", "gzip", "GG"),
        ("/", "br;q=0, gzip;q=0", "", "<p>page"),
        ("/", "*", "br", "B"),
        ("/", "br;q=0, *", "gzip", "GG"),
        ("/", "identity", "", "<p>page"),
        ("/", "", "", "<p>page"),
        ("/", "br;q=nan, gzip;q=7", "", "<p>page"),
        ("/sw.js", "br, gzip", "gzip", "GGG"),
        ("/sw.js", "br", "", "worker"),
        ("/notes.txt", "br, gzip", "", "ni\u{f1}o"),
    ] {
        let answer = get(&app, path, &[("accept-encoding", wanted)]);
        assert_eq!((answer.header("content-encoding"), answer.text()), (coding, body), "{path} {wanted}");
    }
}

#[test]
fn what_the_asker_has_is_not_sent_again() {
    let app = app();
    let plain = get(&app, "/", &[]).header("etag").to_string();
    let packed = get(&app, "/", &[("accept-encoding", "br")]).header("etag").to_string();
    assert!(plain.starts_with('"') && plain.ends_with('"') && plain != packed);
    for (known, encoding, status) in [
        (plain.as_str(), "", 304),
        (packed.as_str(), "br", 304),
        (plain.as_str(), "br", 200),
        ("*", "", 304),
        (&format!("\"x\", W/{plain}"), "", 304),
        ("\"x\"", "", 200),
        ("", "", 200),
    ] {
        let answer = get(&app, "/", &[("if-none-match", known), ("accept-encoding", encoding)]);
        assert_eq!(answer.status, status, "{known} {encoding}");
        if status == 304 {
            assert_eq!(answer.body.len(), 0);
            assert!(!answer.header("etag").is_empty() && !answer.headers.contains_key("content-type"));
        }
    }
    assert_ne!(get(&app, "/sw.js", &[]).header("etag"), plain);
}

#[test]
fn no_path_leads_out_of_the_app() {
    let app = app();
    for path in [
        "/../Cargo.toml",
        "/assets/../../Cargo.toml",
        "/%2e%2e/Cargo.toml",
        "/%2e%2e%2fCargo.toml",
        "/..%2fCargo.toml",
        "/..%5cCargo.toml",
        "/assets%5capp.css",
        "/%00",
        "/index%00",
        "/notes%00.txt",
        "/%",
        "/%2",
        "/%zz",
        "/%ff",
        "/%2e%2e",
        "/..",
        "/.",
        "/assets/./app",
        "//etc/passwd.txt",
        "/etc/passwd.txt",
        "/%252e%252e/Cargo.toml",
        "/c:/windows/win.ini",
        "/notes.txt/",
        "/NOTES.TXT",
    ] {
        let answer = get(&app, path, &[]);
        let within = answer.status == 302 && answer.header("location").contains("#/");
        assert!(within || answer.problem() == "server_no_file", "{path}: {answer:?}");
        assert!(!within || !path.contains("..") && !path.contains("%00"), "{path}");
    }
    assert_eq!(get(&app, "/notes%2Etxt", &[]).text(), "ni\u{f1}o");
}

#[test]
fn without_the_app_the_page_says_so_in_both_languages() {
    let router = Service::new(kept(BOOK)).router();
    let page = get(&router, "/", &[]);
    assert!(page.text().contains("without the app") && page.text().contains("sin la aplicación"));
    assert!(page.text().contains("lang=\"es\""));
    // Its own policy would not let it run or style anything by itself.
    assert!(
        !page.text().contains("<style")
            && !page.text().contains("<script")
            && !page.text().contains("style=")
    );
    assert_eq!(get(&router, "/placeholder.css", &[]).header("content-type"), "text/css; charset=utf-8");
    // An app without a page has nowhere to lead to.
    let bare = Service::new(kept(BOOK)).with_files(AppFiles::default()).router();
    assert_eq!(get(&bare, "/visit/7", &[]).problem(), "server_no_file");
}
