//! What stands around every answer: headers that keep a browser strict, problems put into words, one line of log.

use std::sync::Arc;

use axum::Json;
use axum::body::{Body, HttpBody};
use axum::extract::{MatchedPath, Request, State};
use axum::http::{HeaderMap, HeaderName, HeaderValue, Method, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use crate::document::document;
use crate::guard::{Place, is_api, peer_of};
use crate::problem::Problem;
use crate::service::Inside;

/// Nothing but our own files is run, shown or asked; WebAssembly may be compiled; nobody may put the app in a frame.
const CONTENT_SECURITY_POLICY: &str = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; \
     style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; object-src 'none'; \
     frame-ancestors 'none'; base-uri 'none'; form-action 'self'";

/// What the app may ask the phone for, and what it has no use for.
const PERMISSIONS_POLICY: &str = "accelerometer=(), camera=(self), display-capture=(), geolocation=(self), \
     gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), screen-wake-lock=(self), serial=(), usb=()";

/// On every answer. There is no Strict-Transport-Security: whoever runs this with a certificate of their own would be
/// locked out of a notebook in the field when it runs out.
const ALWAYS: [(HeaderName, &str); 6] = [
    (header::CONTENT_SECURITY_POLICY, CONTENT_SECURITY_POLICY),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (header::REFERRER_POLICY, "no-referrer"),
    (HeaderName::from_static("permissions-policy"), PERMISSIONS_POLICY),
    (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
];

/// How many lines an answer was about, for the log.
#[derive(Clone, Copy, Debug)]
pub struct LineCount(pub usize);

/// Stands around every answer.
pub async fn around(State(inside): State<Arc<Inside>>, request: Request, next: Next) -> Response {
    let before = (inside.clock)();
    let told = Told::of(&request);
    let method = request.method().clone();
    let api = is_api(request.uri().path());
    let asked = request.headers().get(header::ACCEPT_LANGUAGE).cloned();
    let mut response = next.run(request).await;
    let problem = problem_of(&mut response, &method);
    if let Some(problem) = &problem {
        response = in_words(&inside, problem, asked.as_ref(), &response, &method);
    }
    headers(response.headers_mut(), api);
    told.log(&response, problem.as_ref(), (inside.clock)().saturating_sub(before));
    response
}

/// The problem of an answer. Answers that came from elsewhere with a status alone get the problem of that status.
fn problem_of(response: &mut Response, method: &Method) -> Option<Problem> {
    let status = response.status();
    let told = response.extensions_mut().remove::<Problem>();
    let failed = status.is_client_error() || status.is_server_error();
    told.or_else(|| failed.then(|| Problem::of_status(status, method)))
}

fn in_words(
    inside: &Inside,
    problem: &Problem,
    asked: Option<&HeaderValue>,
    before: &Response,
    method: &Method,
) -> Response {
    let words = inside.words.for_reader(asked);
    let mut response = (problem.status(), Json(document(problem, words))).into_response();
    let headers = response.headers_mut();
    headers.insert(header::CONTENT_TYPE, HeaderValue::from_static("application/problem+json"));
    headers.insert(header::CONTENT_LANGUAGE, HeaderValue::from_static(words.reader().language.tag()));
    headers.insert(header::VARY, HeaderValue::from_static("Accept-Language"));
    headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    if let Some(seconds) = problem.retry_after() {
        headers.insert(header::RETRY_AFTER, HeaderValue::from(seconds));
    }
    if problem.status() == axum::http::StatusCode::UNAUTHORIZED {
        headers.insert(header::WWW_AUTHENTICATE, HeaderValue::from_static("Bearer realm=\"notebook\""));
    }
    if let Some(allow) = before.headers().get(header::ALLOW) {
        headers.insert(header::ALLOW, allow.clone());
    }
    if method == Method::HEAD {
        *response.body_mut() = Body::empty();
    }
    response
}

fn headers(headers: &mut HeaderMap, api: bool) {
    for (name, value) in ALWAYS {
        headers.insert(name, HeaderValue::from_static(value));
    }
    if api {
        headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    }
}

/// What the log is told of a request: never an address, a query, a name, a body or a secret.
struct Told {
    method: &'static str,
    route: String,
    from: Place,
}

impl Told {
    fn of(request: &Request) -> Self {
        let route = match request.extensions().get::<MatchedPath>() {
            Some(route) => route.as_str().to_string(),
            None if is_api(request.uri().path()) => "unknown".to_string(),
            None => "file".to_string(),
        };
        let method = match *request.method() {
            Method::GET => "GET",
            Method::HEAD => "HEAD",
            Method::POST => "POST",
            _ => "other",
        };
        Self { method, route, from: peer_of(request).place() }
    }

    fn log(&self, response: &Response, problem: Option<&Problem>, took: std::time::Duration) {
        let from = match self.from {
            Place::Here => "this machine",
            Place::Network => "network",
        };
        let lines = response.extensions().get::<LineCount>().map(|lines| lines.0);
        tracing::info!(
            method = self.method,
            route = self.route,
            status = response.status().as_u16(),
            problem = problem.map(units::Coded::code),
            milliseconds = u64::try_from(took.as_millis()).unwrap_or(u64::MAX),
            bytes = response.body().size_hint().exact(),
            lines,
            from,
            "answered"
        );
    }
}
