//! What a command answers, as one JSON object or as lines for a person.

mod answer;
mod json;
pub mod visit_json;
pub mod visit_text;

pub use answer::{Answer, BOLD};
pub use json::{amount, finding, findings, number, percent, quantity, ranged, working};
