//! The controller's part of the file.

use super::mistake::{CLOSED_SECTION, PRESSURE_BEFORE, PRESSURE_CLOSED};
use super::section::Part;
use crate::record::{Answer, ClosedFacts, ControllerFacts};

/// Reads `[controller]` with the sections closed in turn.
pub(super) fn controller(part: &Part<'_>) -> ControllerFacts {
    ControllerFacts {
        shown_flow: part.positive("shown_flow"),
        shown_rate: part.positive("shown_rate"),
        shown_speed: part.positive("shown_speed"),
        widths: part
            .quantities("widths")
            .into_iter()
            .filter(|width| units::Quantity::is_positive(width.value()))
            .collect(),
        valves_pulse: part.word("valves_pulse", &["yes", "no"], |word| match word {
            "yes" => Some(Answer::Yes),
            "no" => Some(Answer::No),
            _ => None,
        }),
        duty: part.share("duty"),
        closed: part.parts("closed").iter().filter_map(closed).collect(),
    }
}

fn closed(part: &Part<'_>) -> Option<ClosedFacts> {
    for (name, wanted) in
        [("section", CLOSED_SECTION), ("before", PRESSURE_BEFORE), ("closed", PRESSURE_CLOSED)]
    {
        if !part.has(name) {
            part.missing(name, wanted);
        }
    }
    // All are read before one that lacks ends it, so that every mistake is told at once.
    let (section, before) = (part.count("section"), part.positive("before"));
    let (closed, after) = (part.positive("closed"), part.positive("after"));
    Some(ClosedFacts { section: section?, before: before?, closed: closed?, after })
}
