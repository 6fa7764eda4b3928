//! The setting, the look and the symptoms in the file.

use calibration::symptoms::{AirChamber, Check, Drive, Symptom};

use super::section::Part;
use crate::record::{Answer, Look, LookItem, SeenFacts, Setting, SymptomFacts, place_from_word};

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
        boom_height: part.positive("boom_height"),
    }
}

/// Reads what `[look]` tells of single tips, cups and gauge.
pub(super) fn seen(part: &Part<'_>) -> SeenFacts {
    SeenFacts {
        streaky: part.counts("streaky_tips"),
        dripping: part.counts("dripping_tips"),
        odd: part.counts("odd_tips"),
        foam: part.word("foam", &["yes", "no"], yes_or_no),
        gauge_rests_at: part.quantity("gauge_rests_at"),
    }
}

fn yes_or_no(word: &str) -> Option<Answer> {
    match word {
        "yes" => Some(Answer::Yes),
        "no" => Some(Answer::No),
        _ => None,
    }
}

/// Reads `[look]`.
pub(super) fn look(part: &Part<'_>) -> Look {
    LookItem::ALL
        .into_iter()
        .filter_map(|item| part.word(item.word(), &["yes", "no"], yes_or_no).map(|answer| (item, answer)))
        .collect()
}

/// Reads `[symptoms]`.
pub(super) fn symptoms(part: &Part<'_>) -> SymptomFacts {
    let seen = |name| part.words(name, Symptom::WORDS, Symptom::from_word);
    let checks = |name| part.words(name, Check::WORDS, Check::from_word);
    SymptomFacts {
        drive: part.word("drive", Drive::WORDS, Drive::from_word),
        air_chamber: part.word("air_chamber", AirChamber::WORDS, AirChamber::from_word),
        seen: seen("seen"),
        absent: seen("absent"),
        yes: checks("yes"),
        no: checks("no"),
        skipped: checks("skipped"),
    }
}
