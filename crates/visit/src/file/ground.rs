//! What was measured on the ground: spacing, drive, refill.

use super::section::Part;
use super::setting::setting;
use crate::record::{DriveFacts, RefillFacts, RunFacts, SpacingFacts, UsedOver, Way};

/// Reads `[spacing]`.
pub(super) fn spacing(part: &Part<'_>) -> Option<SpacingFacts> {
    let facts = SpacingFacts {
        marks: part.quantities("marks"),
        gaps: part.quantities("gaps"),
        tape_marks: part.positive("tape_marks"),
        cannot_move: part.counts("cannot_move"),
        limit: part.share("limit"),
    };
    if part.has("marks") && part.has("gaps") {
        part.fault(
            "gaps",
            "both marks and gaps are given".to_string(),
            "give the marks of one stretched tape, or the gaps",
        );
        return None;
    }
    if facts.marks.is_empty() && facts.gaps.is_empty() {
        if !part.has("marks") && !part.has("gaps") {
            part.missing("marks", "what the tape shows at each tip, as marks = [\"0 in\", \"20 in\"]");
        }
        part.refuse_empty("marks", "what the tape shows at each tip, as marks = [\"0 in\", \"20 in\"]");
        part.refuse_empty("gaps", "each gap, as gaps = [\"20 in\", \"20 1/4 in\"]");
        return None;
    }
    Some(facts)
}

/// Reads `[drive]`.
pub(super) fn drive(part: &Part<'_>) -> Option<DriveFacts> {
    let own = part.part("setting").map(|part| setting(&part));
    let course = part.positive("course");
    let mut runs = Vec::new();
    for value in part.list("runs") {
        if let Some(table) = value.get_ref().as_table() {
            let Some(time) = table.get("time") else {
                part.wrong(
                    "runs",
                    value,
                    "a time in each run",
                    "write it as { time = \"27.8 s\", way = \"there\" }",
                );
                continue;
            };
            let way = table.get("way").and_then(|way| {
                let words = ["there", "back"];
                let found = part
                    .text_of("runs", way)
                    .and_then(|word| words.iter().position(|known| *known == word.trim()));
                if found.is_none() {
                    part.push_value(
                        "runs",
                        way,
                        "file_word",
                        "this is not a way of driving".into(),
                        Some("write \"there\" or \"back\"".into()),
                    );
                }
                found.map(|place| if place == 0 { Way::There } else { Way::Back })
            });
            if let Some(odd) = table.keys().find(|key| !["time", "way"].contains(&key.get_ref().as_ref())) {
                part.push_value(
                    "runs",
                    value,
                    "file_unknown_field",
                    format!("a run has no \"{}\"", odd.get_ref()),
                    Some("a run has time and way".into()),
                );
            }
            runs.extend(part.positive_of("runs", time).map(|time| RunFacts { time, way }));
        } else {
            runs.extend(part.positive_of("runs", value).map(|time| RunFacts { time, way: None }));
        }
    }
    if !part.has("course") {
        part.missing("course", "the measured course, as course = \"204 ft\"");
    }
    if !part.has("runs") {
        part.missing("runs", "each run's time, as runs = [\"27.8 s\", \"28.3 s\"]");
    }
    part.refuse_empty("runs", "each run's time, as runs = [\"27.8 s\", \"28.3 s\"]");
    if runs.is_empty() {
        return None;
    }
    Some(DriveFacts { course: course?, runs, dash: part.positive("dash"), setting: own.unwrap_or_default() })
}

/// Reads `[refill]`.
pub(super) fn refill(part: &Part<'_>) -> Option<RefillFacts> {
    if !part.has("used") {
        part.missing("used", "what it took to fill up again, as used = \"6.5 gal\"");
    }
    let used = part.positive("used");
    let over = match (part.positive("distance"), part.positive("area")) {
        (Some(_), Some(_)) => {
            part.fault("area", "both distance and area are given".to_string(), "give one of them");
            None
        }
        (Some(distance), None) => Some(UsedOver::Distance(distance)),
        (None, Some(area)) => Some(UsedOver::Area(area)),
        (None, None) => {
            if !part.has("distance") && !part.has("area") {
                part.missing(
                    "distance",
                    "over which distance or area, as distance = \"660 ft\" or area = \"13.5 ac\"",
                );
            }
            None
        }
    };
    Some(RefillFacts { used: used?, over: over? })
}
