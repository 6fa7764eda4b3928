//! What is to be said of the facts themselves: read beside the cups, and of no use as they stand.

use units::{Amount, Arg, Finding, Kind, Pressure, Weight};

use super::diagnose::Sections;
use super::model::{DiagnosisModel, Rated};
use super::seen::{Looked, Seen};

/// So many tips at least tell a tip's own fault from the boom's. Our own choice: the middle of three is none of the odd ones.
const ENOUGH: usize = 3;
/// A pressure so many times the rated one, or that part of it, is a slip of the unit. Our own choice: tips are sold for a
/// range of pressures of one to six or less.
const TIMES_RATED: f64 = 6.0;

/// Returns it. `apart` is how many other pressures are far enough from that of the test, `caught` how many tips were caught.
pub(super) fn remarks(
    apart: usize,
    caught: usize,
    rated: Option<Rated>,
    sections: &Sections,
    model: &DiagnosisModel,
) -> Vec<Finding> {
    let mut remarks = Vec::new();
    let pressure = rated.map(|rated| rated.pressure);
    if caught < ENOUGH {
        remarks.push(
            Finding::new(
                Weight::Doubt,
                "few_tips",
                "So few tips were caught that a tip's own fault looks like the whole boom's.",
            )
            .to_do("Catch at least three tips, better all of them."),
        );
    }
    remarks.extend(rated.and_then(far_from_rated));
    if let (Some(first), Some(other)) =
        (pressure, model.others.first().filter(|_| apart < model.others.len()))
    {
        let shown = |pressure: Pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
        remarks.push(
            Finding::new(
                Weight::Doubt,
                "second_pressure_near",
                "The second pressure ({second}) is next to the first ({first}): it tells nothing of gauge and wear.",
            )
            .with("first", shown(first))
            .with("second", shown(other.pressure))
            .to_do("Catch a few tips again at about twice the pressure, or half of it, within what the tips are made for."),
        );
    }
    if pressure.is_none() && !(model.others.is_empty() && model.tip_pressures.is_empty()) {
        remarks.push(
            Finding::new(
                Weight::Doubt,
                "pressures_without_rated",
                "Pressures were read, but it is not known what a new tip gives, so they tell nothing here.",
            )
            .to_do("Give the size on the tips, or their rated flow, and the pressure of the catch."),
        );
    }
    if let Some(odd) = model.tip_pressures.iter().find(|read| sections.place_of(read.tip).is_none()) {
        remarks.push(
            Finding::new(
                Weight::Doubt,
                "tip_pressure_no_such_tip",
                "A pressure was read at tip {tip}, but no such tip was caught.",
            )
            .with("tip", Arg::Count(odd.tip)),
        );
    }
    remarks.extend(drips(model));
    if model.looked.contains(&Looked::Foam) {
        remarks.push(
            Finding::new(Weight::Doubt, "cups_foam", "The cups foam: they are taken as read less well.")
                .to_do("Let the foam settle and read the line of the water, or weigh the cups."),
        );
    }
    remarks
}

/// A pressure that such a tip is not made for: most likely a slip of the unit.
fn far_from_rated(rated: Rated) -> Option<Finding> {
    let times = rated.pressure.ratio_to(rated.rated.pressure());
    let shown = |pressure: Pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
    (!(1.0 / TIMES_RATED..=TIMES_RATED).contains(&times)).then(|| {
        Finding::new(
            Weight::Doubt,
            "pressure_far_from_rated",
            "The pressure, {pressure}, is far from {rated}, at which the tip is rated: what is told of the whole boom rests on it.",
        )
        .with("pressure", shown(rated.pressure))
        .with("rated", shown(rated.rated.pressure()))
        .to_do("Look at the pressure and its unit again.")
    })
}

/// Leaking check valves: a fault of its own, which the cups cannot show.
fn drips(model: &DiagnosisModel) -> Option<Finding> {
    let mut tips: Vec<u32> = model
        .seen
        .iter()
        .filter_map(|seen| if let Seen::Drips { tip } = seen { Some(*tip) } else { None })
        .collect();
    tips.sort_unstable();
    tips.dedup();
    let does = "Pressure off, gloves on: clean the check valve of each such body with a soft brush or air, never the mouth; replace what is worn.";
    if !tips.is_empty() {
        let (case, says) = match tips.as_slice() {
            [_] => (
                "tip",
                "A check valve leaks: tip {tips} drips five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.",
            ),
            _ => (
                "tips",
                "Check valves leak: tips {tips} drip five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.",
            ),
        };
        return Some(
            Finding::new(Weight::Act, "check_valves_leak", says)
                .case(case)
                .with("tips", Arg::Tips(tips))
                .to_do(does),
        );
    }
    model.looked.contains(&Looked::Drips).then(|| {
        let says = "Check valves leak: tips drip five seconds after shutting off. While it sprays that changes nothing, so the cups do not show it.";
        Finding::new(Weight::Act, "check_valves_leak", says).to_do(does)
    })
}
