//! `evenswath visit new`: a commented visit file to fill in.

use crate::out::Answer;

/// Prints the empty file.
pub fn run() -> Answer {
    let template = visit::file::template();
    let mut answer = Answer::of(serde_json::json!({ "template": template }));
    for line in template.lines() {
        answer.verbatim(line);
    }
    answer
}
