//! `evenswath visit new`: a commented visit file to fill in.

use words::Words;

use crate::out::Answer;

/// Prints the empty file. Names and values are the same in every language; its remarks are in the reader's.
pub fn run(words: &Words) -> Answer {
    let template = visit::file::template_in(|remark| words.label(&remark.key()));
    let mut answer = Answer::of(serde_json::json!({ "template": template }));
    for line in template.lines() {
        answer.verbatim(line);
    }
    answer
}
