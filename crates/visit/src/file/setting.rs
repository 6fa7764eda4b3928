//! The setting and the look in the file.

use super::section::Part;
use crate::record::{Answer, Look, LookItem, Setting, place_from_word};

/// Reads `[setting]`, `[drive.setting]` or `[catch.setting]`.
pub(super) fn setting(part: &Part<'_>) -> Setting {
    Setting {
        gear: part.text("gear"),
        engine_speed: part.text("engine_speed"),
        pto_speed: part.text("pto_speed"),
        pressure: part.positive("pressure"),
        pressure_read_at: part.word(
            "pressure_read_at",
            &["pump", "manifold", "boom", "tip", "cab"],
            place_from_word,
        ),
        gauge_marks: part.positive("gauge_marks"),
        agitation: part.text("agitation"),
        sections_on: part.text("sections_on"),
        controller: part.text("controller"),
        water_in_tank: part.text("water_in_tank"),
    }
}

/// Reads `[look]`.
pub(super) fn look(part: &Part<'_>) -> Look {
    let answer = |word: &str| match word {
        "yes" => Some(Answer::Yes),
        "no" => Some(Answer::No),
        _ => None,
    };
    LookItem::ALL
        .into_iter()
        .filter_map(|item| part.word(item.word(), &["yes", "no"], answer).map(|answer| (item, answer)))
        .collect()
}
