//! What a command answers, as one JSON object or as lines for a person.

mod answer;
mod json;

pub use answer::{Answer, BOLD, Line};
pub use json::{amount, finding, findings, number, percent, quantity, ranged, working};
