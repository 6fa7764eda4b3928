//! What a boom with plugged or uncaught tips puts out, what it will put out once cleaned, and why not to mix for it.

use calibration::catch::total_flow;
use calibration::doubt::Known;
use units::{Amount, Arg, Coded, Finding, Flow, Kind, Ranged, VolumePerArea, Weight};

use super::catching::CatchOutcome;

/// What all tips put out once the plugged ones run as the others of their group do, where some are plugged.
pub(super) fn flow_once_cleaned(catch: &CatchOutcome) -> Option<Known<Flow>> {
    let plugged = catch.plugged();
    if plugged.is_empty() {
        return None;
    }
    // As tips that nobody caught: what they will give is the mean of their group, give or take its spread.
    let mut round = catch.now().round.clone();
    for tip in round.tips.iter_mut().filter(|tip| plugged.contains(&tip.number)) {
        tip.catches.clear();
    }
    let mut summary = catch.now().verdicts.summary.clone();
    for group in &mut summary.groups {
        group.uncaught.append(&mut group.plugged);
    }
    total_flow(&round, &summary, &catch.doubts)
}

/// The rate as found, beside what it will be once cleaned.
pub(super) fn rate_as_found(plugged: &[u32], cleaned: &Ranged<VolumePerArea>) -> Finding {
    let says = match plugged {
        [_] => {
            "The rate is as found, with tip {tips} plugged. Once it runs as the others do, it will be about {cleaned}."
        }
        _ => {
            "The rate is as found, with tips {tips} plugged. Once they run as the others do, it will be about {cleaned}."
        }
    };
    Finding::new(Weight::Note, "rate_with_plugged", says)
        .with("tips", Arg::Tips(plugged.to_vec()))
        .with("cleaned", Arg::Amount(Amount::ranged(cleaned, Kind::Rate)))
}

/// What the rate takes of tips that nobody caught.
pub(super) fn rate_with_uncaught(catch: &CatchOutcome) -> Option<Finding> {
    let groups = &catch.now().verdicts.summary.groups;
    let mut tips: Vec<u32> = groups.iter().flat_map(|group| group.uncaught.clone()).collect();
    tips.sort_unstable();
    let says = match tips.as_slice() {
        [] => return None,
        [_] => "For the rate tip {tips} is taken to give what the others do.",
        _ => "For the rate the tips that were not caught are taken to give what the others do.",
    };
    Some(Finding::new(Weight::Note, "rate_with_uncaught", says).with("tips", Arg::Tips(tips)))
}

/// A rate with tips plugged is none to mix for, nor to fit other tips for.
pub(super) fn clean_first(finding: Finding) -> Finding {
    match finding.code() {
        "rate_outside"
        | "rate_cannot_tell"
        | "product_under_least"
        | "product_may_be_under_least"
        | "product_may_be_over_label"
        | "carrier_under_label"
        | "carrier_may_be_under_label" => {
            let says = "Do not mix for a boom with plugged tips: clean them first, then catch again.";
            finding.case("plugged").to_do(says)
        }
        _ => finding,
    }
}

/// What a tank's figures rest on where tips were plugged.
pub(super) fn tank_as_found(plugged: &[u32]) -> Option<Finding> {
    let says = match plugged {
        [] => return None,
        [_] => "What a tank does and takes is worked out with tip {tips} plugged.",
        _ => "What a tank does and takes is worked out with tips {tips} plugged.",
    };
    let finding = Finding::new(Weight::Doubt, "tank_with_plugged", says)
        .with("tips", Arg::Tips(plugged.to_vec()))
        .to_do("Clean first, then catch again before you mix.");
    Some(finding)
}
