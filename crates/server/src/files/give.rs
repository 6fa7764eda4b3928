//! Giving a file of the app: compressed as the asker takes it, and not at all where the asker has it.

use axum::body::{Body, Bytes};
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode, Uri, header};
use axum::response::{IntoResponse, Response};

use super::kind::kind;
use super::{AppFiles, Held, is_hashed};
use crate::problem::Problem;
use crate::quality;

/// The answer to a request for an address of the app.
pub fn give(files: &AppFiles, method: &Method, uri: &Uri, headers: &HeaderMap) -> Response {
    if !matches!(*method, Method::GET | Method::HEAD) {
        let allow = [(header::ALLOW, HeaderValue::from_static("GET, HEAD"))];
        return (allow, Problem::method(method)).into_response();
    }
    match find(files, uri.path()) {
        Some(Found::File(held)) => of_file(&held.file.path, held, method, headers),
        Some(Found::Within) => lead(uri),
        None => Problem::NoFile.into_response(),
    }
}

/// What stands at a path.
enum Found<'a> {
    /// A file.
    File(&'a Held),
    /// No file, but by its name, which has no file ending, it may be an address within the app, which has a page.
    Within,
}

fn find<'a>(files: &'a AppFiles, path: &str) -> Option<Found<'a>> {
    let path = decoded(path)?;
    let path = path.strip_prefix('/')?;
    let odd = |sign: char| sign.is_control() || sign == '\\';
    if path.contains(odd) || path.split('/').any(|part| matches!(part, "." | "..")) {
        return None;
    }
    let path = if path.is_empty() { "index.html" } else { path };
    let last = path.rsplit('/').next().unwrap_or(path);
    match files.get(path) {
        Some(held) => Some(Found::File(held)),
        None if last.contains('.') => None,
        None => files.get("index.html").map(|_| Found::Within),
    }
}

/// Addresses within the app stand behind `#`, so that they work on every host and the page finds its files wherever it
/// stands; others lead there. The way is told from where the asker is: what stands before us may have put us under a path.
fn lead(uri: &Uri) -> Response {
    let path = uri.path().strip_prefix('/').unwrap_or(uri.path());
    let up = "../".repeat(path.matches('/').count());
    let path = path.trim_start_matches('/');
    let query = uri.query().map(|query| format!("?{query}")).unwrap_or_default();
    let Ok(to) = HeaderValue::from_str(&format!("./{up}#/{path}{query}")) else {
        return Problem::NoFile.into_response();
    };
    let told = [(header::LOCATION, to), (header::CACHE_CONTROL, HeaderValue::from_static("no-cache"))];
    (StatusCode::FOUND, told).into_response()
}

/// A path without its percent signs; none where they are wrong or it is no text.
fn decoded(path: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(path.len());
    let mut rest = path.bytes();
    while let Some(byte) = rest.next() {
        if byte != b'%' {
            bytes.push(byte);
            continue;
        }
        let digit =
            |byte: Option<u8>| char::from(byte?).to_digit(16).and_then(|digit| u8::try_from(digit).ok());
        let (high, low) = (digit(rest.next())?, digit(rest.next())?);
        bytes.push(high << 4 | low);
    }
    String::from_utf8(bytes).ok()
}

fn of_file(path: &str, held: &Held, method: &Method, headers: &HeaderMap) -> Response {
    let (bytes, coding) = form(held, headers);
    // Each form is a file of its own to whoever keeps it (RFC 9110, 8.8.3).
    let tag = match coding {
        Some(coding) => format!("\"{}-{coding}\"", held.sum),
        None => format!("\"{}\"", held.sum),
    };
    let known = is_known(headers, &tag);
    let mut response =
        Response::new(if known || method == Method::HEAD { Body::empty() } else { bytes.clone().into() });
    if known {
        *response.status_mut() = StatusCode::NOT_MODIFIED;
    }
    let out = response.headers_mut();
    out.insert(header::CACHE_CONTROL, HeaderValue::from_static(keep(path)));
    out.insert(header::VARY, HeaderValue::from_static("Accept-Encoding"));
    if let Ok(tag) = HeaderValue::from_str(&tag) {
        out.insert(header::ETAG, tag);
    }
    if !known {
        out.insert(header::CONTENT_TYPE, HeaderValue::from_static(kind(path)));
        out.insert(header::CONTENT_LENGTH, HeaderValue::from(bytes.len()));
        if let Some(coding) = coding {
            out.insert(header::CONTENT_ENCODING, HeaderValue::from_static(coding));
        }
    }
    response
}

/// How long a file may be kept without asking: for ever where its name changes with its content.
fn keep(path: &str) -> &'static str {
    if is_hashed(path) { "public, max-age=31536000, immutable" } else { "no-cache" }
}

/// The form that the asker wants most, of those there are: the smallest first.
fn form<'a>(held: &'a Held, headers: &HeaderMap) -> (&'a Bytes, Option<&'static str>) {
    let file = &held.file;
    let forms = [(file.br.as_ref(), "br"), (file.gz.as_ref(), "gzip")];
    let mut best: (f32, &Bytes, Option<&'static str>) = (0.0, &file.bytes, None);
    for (bytes, coding) in forms {
        let wanted = wanted(headers, coding);
        if let Some(bytes) = bytes.filter(|_| wanted > best.0) {
            best = (wanted, bytes, Some(coding));
        }
    }
    (best.1, best.2)
}

/// How much a coding is wanted.
fn wanted(headers: &HeaderMap, coding: &str) -> f32 {
    let mut any = 0.0;
    for range in lists(headers, header::ACCEPT_ENCODING) {
        match quality::split(range) {
            (named, wanted) if named.eq_ignore_ascii_case(coding) => return wanted,
            ("*", wanted) => any = wanted,
            _ => {}
        }
    }
    any
}

/// Whether the asker has this already (RFC 9110, 13.1.2: compared as if both were weak).
fn is_known(headers: &HeaderMap, tag: &str) -> bool {
    lists(headers, header::IF_NONE_MATCH).any(|known| {
        let known = known.trim();
        known == "*" || known.strip_prefix("W/").unwrap_or(known) == tag
    })
}

fn lists(headers: &HeaderMap, name: header::HeaderName) -> impl Iterator<Item = &str> {
    headers.get_all(name).into_iter().filter_map(|list| list.to_str().ok()).flat_map(|list| list.split(','))
}
