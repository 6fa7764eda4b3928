//! The API, version 1: one route, one file.

mod copy;
mod health;
mod lines;
mod notebook;
mod openapi;
mod ranges;
mod wanted;

use std::sync::Arc;

use axum::Router;
use axum::routing::get;
use utoipa::OpenApi;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

use crate::service::Inside;

pub use lines::{LineRefused, LinesTaken};
pub use notebook::NotebookHeld;
pub use ranges::{RangesHeld, RangesWrong};
pub use wanted::LinesWanted;

/// Lines of a notebook, one a line (newline-delimited JSON).
pub const LINES: &str = "application/x-ndjson";
/// One JSON value.
pub const JSON: &str = "application/json";

#[derive(OpenApi)]
#[openapi(
    info(
        title = "Evenswath notebook",
        description = "A notebook's lines, given and taken by ranges of numbers. Sending the same lines again changes \
                       nothing. Every error is a problem document (RFC 9457) with a stable code. Beyond the machine \
                       itself each request carries the pairing secret as a bearer token.",
        license(name = "MIT OR Apache-2.0")
    ),
    modifiers(&Pairing)
)]
struct Document;

/// How askers show that they are paired.
struct Pairing;

impl utoipa::Modify for Pairing {
    fn modify(&self, document: &mut utoipa::openapi::OpenApi) {
        use utoipa::openapi::security::{Http, HttpAuthScheme, SecurityRequirement, SecurityScheme};
        let bearer = SecurityScheme::Http(Http::new(HttpAuthScheme::Bearer));
        let components = document.components.get_or_insert_default();
        components.security_schemes.insert("pairing".to_string(), bearer.into());
        // On the machine itself none is asked for.
        document.security =
            Some(vec![SecurityRequirement::new("pairing", [""; 0]), SecurityRequirement::default()]);
    }
}

fn described() -> OpenApiRouter<Arc<Inside>> {
    OpenApiRouter::with_openapi(Document::openapi())
        .routes(routes!(health::health))
        .routes(routes!(notebook::notebook))
        .routes(routes!(wanted::wanted))
        .routes(routes!(lines::take))
        .routes(routes!(copy::copy))
}

/// Every route.
pub fn routes() -> Router<Arc<Inside>> {
    let (routes, document) = described().split_for_parts();
    let answer = openapi::answer(text_of(&document));
    routes.route("/api/1/openapi.json", get(move || core::future::ready(answer.clone())))
}

/// The description of the API, as it is served and checked in.
#[must_use]
pub fn openapi() -> String {
    text_of(&described().split_for_parts().1)
}

fn text_of(document: &utoipa::openapi::OpenApi) -> String {
    // It is our own and made of texts; it can be written.
    let mut text = document.to_pretty_json().unwrap_or_default();
    text.push('\n');
    text
}
