//! `GET /api/1/openapi.json`: what all of this takes and gives, for programs.

use axum::body::Bytes;
use axum::http::{HeaderName, header};

use super::JSON;

/// The document with its type.
pub type Answer = ([(HeaderName, &'static str); 1], Bytes);

/// The document, ready to be given any number of times.
pub fn answer(document: String) -> Answer {
    ([(header::CONTENT_TYPE, JSON)], Bytes::from(document))
}
