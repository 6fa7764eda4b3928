//! Facts that a person may have put in one of our own few words or in theirs: ours can be said in any language.

use calibration::catch::RoundKind;
use units::Arg;

/// A part of the setting that is written in free words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Switch {
    /// Agitation on or off.
    Agitation,
    /// Which sections were on.
    SectionsOn,
    /// The controller on, or in manual.
    Controller,
    /// How full the tank was.
    WaterInTank,
}

/// The usual answers: where it stands, what is typed, and the code of the word.
const USUAL: &[(Switch, &str, &str)] = &[
    (Switch::Agitation, "on", "agitation_on"),
    (Switch::Agitation, "off", "agitation_off"),
    (Switch::SectionsOn, "all", "sections_on_all"),
    (Switch::SectionsOn, "none", "sections_on_none"),
    (Switch::Controller, "on", "controller_on"),
    (Switch::Controller, "off", "controller_off"),
    (Switch::Controller, "manual", "controller_manual"),
    (Switch::Controller, "in manual", "controller_in_manual"),
    (Switch::Controller, "auto", "controller_auto"),
    (Switch::Controller, "automatic", "controller_automatic"),
    (Switch::Controller, "in automatic", "controller_in_automatic"),
    (Switch::WaterInTank, "full", "water_full"),
    (Switch::WaterInTank, "half full", "water_half_full"),
    (Switch::WaterInTank, "a quarter full", "water_quarter_full"),
    (Switch::WaterInTank, "empty", "water_empty"),
];

/// What was typed of a setting: one of the few usual answers as a word of ours, all else as it was typed.
#[must_use]
pub fn setting_said(of: Switch, typed: &str) -> Arg {
    let usual = USUAL.iter().find(|(place, word, _)| *place == of && word.eq_ignore_ascii_case(typed.trim()));
    match usual {
        Some((_, english, code)) => Arg::Word { code, english },
        None => Arg::Text(typed.to_string()),
    }
}

/// What was done before a round: one of our own words, or the person's.
#[must_use]
pub fn round_said(kind: &RoundKind) -> Arg {
    let word = |code, english| Arg::Word { code, english };
    match kind {
        RoundKind::AsFound => word("round_as_found", "as found"),
        RoundKind::AfterCleaning => word("round_after_cleaning", "after cleaning"),
        RoundKind::NewTips => word("round_new_tips", "new tips"),
        RoundKind::PressureChanged => word("round_pressure_changed", "pressure changed"),
        RoundKind::Swapped => word("round_swapped", "tips swapped"),
        RoundKind::After(words) => Arg::Text(words.clone()),
    }
}
