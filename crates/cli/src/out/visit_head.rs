//! The head of a visit's page: whose sprayer and who was there; and the page of a visit before anything was measured.

use visit::record::{About, Coverage, Machine};
use words::Words;

use super::Answer;

/// Whose sprayer, when, who was there, and what they noted.
pub fn heading(answer: &mut Answer, about: &About, words: &Words) {
    let date = about.date.as_deref().map(|date| words.date(date));
    let title: Vec<&str> =
        [&about.sprayer, &about.farm, &date].into_iter().filter_map(|text| text.as_deref()).collect();
    let given = |text: &Option<String>| text.clone().filter(|text| !text.trim().is_empty());
    let people = match (given(&about.operator), given(&about.with)) {
        (Some(operator), Some(with)) => {
            let told = [("operator", operator.into()), ("with", with.into())];
            Some(words.say("page-driven_by_with", &told))
        }
        (Some(operator), None) => Some(words.say("page-driven_by", &[("operator", operator.into())])),
        (None, Some(with)) => Some(words.say("page-with", &[("with", with.into())])),
        (None, None) => None,
    };
    let lines = [Some(title.join(" · ")).filter(|title| !title.is_empty()), people, given(&about.notes)];
    let lines: Vec<String> = lines.into_iter().flatten().collect();
    if !lines.is_empty() {
        lines.into_iter().for_each(|line| answer.plain(line));
        answer.plain("");
    }
}

/// A visit before anything was measured: what is known, and what can be measured next.
pub fn nothing_measured(answer: &mut Answer, machine: Option<&Machine>, words: &Words) {
    let Some(machine) = machine else {
        answer.main(words.label("page-nothing_yet"));
        answer.plain(words.label("page-nothing_yet_do"));
        return;
    };
    answer.main(words.label("page-sprayer_known"));
    answer.plain(words.label(match &machine.coverage {
        Coverage::Boomless { .. } | Coverage::Hand { .. } => "page-next_by_hand",
        _ => "page-next_with_boom",
    }));
}
