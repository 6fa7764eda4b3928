//! What a command answers, as one JSON object or as lines for a person.

mod answer;
pub mod boom_text;
mod json;
pub mod pattern_lines;
pub mod pattern_object;
mod visit_again;
mod visit_answer;
mod visit_cups;
mod visit_head;
pub mod visit_json;
mod visit_tank;
pub mod visit_text;

pub use answer::{Answer, BOLD, with_range};
pub use json::{amount, finding, findings, number, percent, quantity, ranged, working};
