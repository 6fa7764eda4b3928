//! What the look found that is not as it should be, and what to do about each.

use units::{Finding, Weight};

use crate::record::{Answer, LookItem};

/// Returns a finding for each thing that is not as it should be.
pub(super) fn look(look: &[(LookItem, Answer)]) -> Vec<Finding> {
    look.iter().filter(|(_, answer)| *answer == Answer::No).map(|(item, _)| finding(*item)).collect()
}

fn finding(item: LookItem) -> Finding {
    let (code, says, does) = match item {
        LookItem::TipsAlike => (
            "look_tips_differ",
            "The tips are not all of one kind, size and angle.",
            "Fit one kind, size and angle all along before you catch; tips meant to differ go in a group of their own.",
        ),
        LookItem::AllSpraying => (
            "look_not_all_spraying",
            "Not every tip sprays.",
            "Pressure off. Clean that tip and its strainer with a soft brush or air, never the mouth; look at its valve.",
        ),
        LookItem::FansStraight => (
            "look_fans_crooked",
            "Some fans are crooked, streaky or hit one another.",
            "Turn the tips straight in their bodies, a few degrees off the boom's line; clean or replace streaky ones.",
        ),
        LookItem::NoLeaks => (
            "look_leaks",
            "Something leaks.",
            "Pressure off, then tighten or replace it before product goes in the tank.",
        ),
        LookItem::NoDripAfter5S => (
            "look_drips",
            "Tips still drip five seconds after shutting off.",
            "Clean or replace the check valves of those bodies.",
        ),
        LookItem::GaugeBackToZero => (
            "look_gauge_off_zero",
            "The gauge does not go back to zero.",
            "Replace the gauge; pressures read on it are doubtful.",
        ),
        LookItem::StrainersClean => (
            "look_strainers",
            "Strainers are missing or dirty.",
            "Shut the tank valve and let the pressure off, then open, clean or replace them; wear gloves and eye protection.",
        ),
        LookItem::BoomLevel => (
            "look_boom_not_level",
            "The boom is not level, or not at its height.",
            "Set it level at the height the tips are made for; keep everybody out of the fold zone.",
        ),
    };
    Finding::new(Weight::Act, code, says).to_do(does)
}
