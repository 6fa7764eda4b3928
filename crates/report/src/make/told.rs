//! What else is good to know: doubts and notes that are no step to take.

use units::{Coded, Weight};
use visit::findings::{Outcome, Place};
use words::Words;

/// Findings whose figures stand at the top of the sheet already.
const TOLD_ABOVE: &[&str] =
    &["rate_within", "rate_outside", "rate_cannot_tell", "rate_of_two_settings", "rate_with_plugged"];

/// The notes, one sentence or two each.
pub fn notes(words: &Words, outcome: &Outcome) -> Vec<String> {
    outcome
        .all()
        .filter(|(place, finding)| {
            let note = match finding.weight {
                Weight::Note | Weight::Doubt => true,
                Weight::Settle => words.action(finding).is_none(),
                Weight::Stop | Weight::Act => false,
            };
            // What goes into the tank has its own place on the sheet, doubts about it have not.
            let tank = *place == Place::Tank && finding.weight == Weight::Note;
            note && !tank && !TOLD_ABOVE.contains(&finding.code())
        })
        .map(|(_, finding)| words.finding_and_action(finding))
        .collect()
}
