//! The head of a visit's page: whose sprayer and who was there; and the page of a visit before anything was measured.

use visit::record::{About, Coverage, Machine};

use super::Answer;

/// Whose sprayer, when, who was there, and what they noted.
pub fn heading(answer: &mut Answer, about: &About) {
    let title: Vec<&str> =
        [&about.sprayer, &about.farm, &about.date].into_iter().filter_map(|text| text.as_deref()).collect();
    let given = |text: &Option<String>| text.clone().filter(|text| !text.trim().is_empty());
    let people = match (given(&about.operator), given(&about.with)) {
        (Some(operator), Some(with)) => Some(format!("driven by {operator}, with {with}")),
        (Some(operator), None) => Some(format!("driven by {operator}")),
        (None, Some(with)) => Some(format!("with {with}")),
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
pub fn nothing_measured(answer: &mut Answer, machine: Option<&Machine>) {
    let Some(machine) = machine else {
        answer.main("There is nothing in this visit yet.");
        answer
            .plain("Fill in what was measured: the drive, the cups, the spacing. Each part tells by itself. `evenswath visit new` \
             writes a file with every field and a word about it.");
        return;
    };
    answer.main("The sprayer is known; nothing was measured yet.");
    answer.plain(match &machine.coverage {
        Coverage::Boomless { .. } | Coverage::Hand { .. } => {
            "Next, in any order: time the drive over a measured course ([drive]), catch what comes out ([catch]). The two \
             together tell what it puts out."
        }
        _ => {
            "Next, in any order: measure the spacing ([spacing]), time the drive over a measured course ([drive]), catch \
             under every tip ([catch]). Drive and cups together tell what it puts out."
        }
    });
}
