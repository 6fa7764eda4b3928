//! What was measured on the ground: spacing, drive, refill.

use super::mistake::{COURSE, GAPS, MARKS, Mistake, RUNS, USED, USED_OVER};
use super::section::{Part, UNKNOWN, WRONG_KIND};
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
        let both = Mistake::value("marks_and_gaps", "both marks and gaps are given");
        part.fault("gaps", both.would_do("give the marks of one stretched tape, or the gaps"));
        return None;
    }
    if facts.marks.is_empty() && facts.gaps.is_empty() {
        if !part.has("marks") && !part.has("gaps") {
            part.missing("marks", MARKS);
        }
        part.refuse_empty("marks", MARKS);
        part.refuse_empty("gaps", GAPS);
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
                let wrong = Mistake::new(WRONG_KIND, "a time in each run is needed, but {found} stands here")
                    .case("run")
                    .would_do("write it as { time = \"27.8 s\", way = \"there\" }");
                part.wrong("runs", value, wrong);
                continue;
            };
            let way = table.get("way").and_then(|way| {
                let words = ["there", "back"];
                let found = part
                    .text_of("runs", way)
                    .and_then(|word| words.iter().position(|known| *known == word.trim()));
                if found.is_none() {
                    let no_way = Mistake::new("file_word", "this is not a way of driving").case("way");
                    part.push_value("runs", way, no_way.would_do("write \"there\" or \"back\""));
                }
                found.map(|place| if place == 0 { Way::There } else { Way::Back })
            });
            if let Some(odd) = table.keys().find(|key| !["time", "way"].contains(&key.get_ref().as_ref())) {
                let unknown = Mistake::new(UNKNOWN, "a run has no \"{name}\"").case("run");
                let unknown = unknown.would_do("a run has time and way").text("name", odd.get_ref());
                part.push_value("runs", value, unknown);
            }
            runs.extend(part.positive_of("runs", time).map(|time| RunFacts { time, way }));
        } else {
            runs.extend(part.positive_of("runs", value).map(|time| RunFacts { time, way: None }));
        }
    }
    if !part.has("course") {
        part.missing("course", COURSE);
    }
    if !part.has("runs") {
        part.missing("runs", RUNS);
    }
    part.refuse_empty("runs", RUNS);
    if runs.is_empty() {
        return None;
    }
    Some(DriveFacts { course: course?, runs, dash: part.positive("dash"), setting: own.unwrap_or_default() })
}

/// Reads `[refill]`.
pub(super) fn refill(part: &Part<'_>) -> Option<RefillFacts> {
    if !part.has("used") {
        part.missing("used", USED);
    }
    let used = part.positive("used");
    let over = match (part.positive("distance"), part.positive("area")) {
        (Some(_), Some(_)) => {
            let both = Mistake::value("distance_and_area", "both distance and area are given");
            part.fault("area", both.would_do("give one of them"));
            None
        }
        (Some(distance), None) => Some(UsedOver::Distance(distance)),
        (None, Some(area)) => Some(UsedOver::Area(area)),
        (None, None) => {
            if !part.has("distance") && !part.has("area") {
                part.missing("distance", USED_OVER);
            }
            None
        }
    };
    Some(RefillFacts { used: used?, over: over? })
}
