//! A visit as one would tell it to a neighbour: the answer first, then what to do, then how to get it again.

use units::{Finding, Weight};
use visit::Visit;
use visit::findings::{Outcome, Place};
use words::Words;

use super::Answer;

/// Writes it.
pub fn lines(answer: &mut Answer, visit: &Visit, outcome: &Outcome, words: &Words) {
    super::visit_head::heading(answer, &visit.about, words);
    if outcome.all().next().is_none()
        && outcome.rate.is_none()
        && outcome.speed.is_none()
        && outcome.catch.is_none()
        && outcome.spacing.is_none()
    {
        super::visit_head::nothing_measured(answer, visit.machine.as_ref(), words);
        return;
    }
    stops(answer, outcome, words);
    super::visit_answer::puts_out(answer, visit, outcome, words);
    super::visit_tank::full_tank(answer, outcome, words);
    to_do(answer, outcome, words);
    super::visit_cups::cups(answer, visit, outcome, words);
    super::visit_again::again(answer, outcome, words);
    good_to_know(answer, outcome, words);
    answer.plain("");
    answer.plain(words.label("page-take_care"));
    working(answer, outcome);
}

/// What the label forbids, before everything else.
fn stops(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let stops: Vec<&Finding> =
        outcome.all().map(|(_, finding)| finding).filter(|finding| finding.weight == Weight::Stop).collect();
    for stop in &stops {
        answer.act(words.finding_and_action(stop));
    }
    if !stops.is_empty() {
        answer.plain("");
    }
}

fn to_do(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let list: Vec<_> =
        outcome.actions.iter().filter(|action| action.finding.weight != Weight::Stop).collect();
    if list.is_empty() {
        return;
    }
    answer.head(words.label("page-what_to_do"));
    for (number, action) in (1..).zip(list) {
        let sign = match action.finding.weight {
            Weight::Settle => "?",
            _ => "!",
        };
        let text = format!("{number:>3}. {sign} {}", words.finding_and_action(&action.finding));
        match action.finding.weight {
            Weight::Act => answer.act(text),
            _ => answer.plain(text),
        }
    }
}

fn good_to_know(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let notes: Vec<String> = outcome
        .all()
        .filter(|(place, finding)| {
            let told = *place == Place::Tank || TOLD_ABOVE.contains(&units::Coded::code(*finding));
            let note = match finding.weight {
                Weight::Note | Weight::Doubt => true,
                Weight::Settle => words.action(finding).is_none(),
                Weight::Stop | Weight::Act => false,
            };
            note && !told
        })
        .map(|(_, finding)| format!("  - {}", words.finding_and_action(finding)))
        .collect();
    if notes.is_empty() {
        return;
    }
    answer.head(words.label("page-good_to_know"));
    for note in notes {
        answer.plain(note);
    }
}

/// Findings whose figures stand at the top of the page already.
const TOLD_ABOVE: &[&str] =
    &["rate_within", "rate_outside", "rate_cannot_tell", "rate_of_two_settings", "rate_with_plugged"];

fn working(answer: &mut Answer, outcome: &Outcome) {
    answer.working.extend(outcome.rate.as_ref().map(|rate| rate.main().working.clone()));
    answer.working.extend(outcome.speed.as_ref().map(|speed| speed.working.clone()));
    answer.working.extend(outcome.catch.as_ref().and_then(|catch| catch.now().verdicts.working.clone()));
    answer.working.extend(outcome.spacing.as_ref().map(|spacing| spacing.working.clone()));
    let told: Vec<_> = outcome.all().filter_map(|(_, finding)| finding.working.clone()).collect();
    answer.working.extend(told);
}
