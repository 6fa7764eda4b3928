//! What is to be said of the facts themselves: read beside the cups, and of no use as they stand.

use units::{Amount, Arg, Finding, Kind, Pressure, Weight};

use super::diagnose::Sections;
use super::model::DiagnosisModel;

/// Returns it. `apart` is how many other pressures are far enough from that of the test.
pub(super) fn remarks(
    apart: usize,
    pressure: Option<Pressure>,
    sections: &Sections,
    model: &DiagnosisModel,
) -> Vec<Finding> {
    let mut remarks = Vec::new();
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
    remarks
}
