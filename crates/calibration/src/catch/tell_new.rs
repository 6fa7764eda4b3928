//! What a catch test tells of tips against new ones: worn ones, a worn set, and a boom that gives less than its size.

use units::{Arg, Finding, Verdict, Weight};

use super::advice::{Advice, Change};
use super::new_tip::AgainstNew;
use super::summary::{RoundSummary, TipState, TipSummary};

/// How far under new is worth telling: 10 %, as far as the usual limit over new. Our own choice: a new tip, a gauge
/// and a cup together may well be 5 % off.
const UNDER_NEW: f64 = 0.10;

/// So many are off that the set is to be replaced: how many of how many, why, and which are in order.
pub(super) fn whole_set(advice: &Advice, summary: &RoundSummary, new: &[AgainstNew]) -> Option<Finding> {
    let (off, of, set) = advice.whole_set?;
    let is_off = |change: Change| matches!(change, Change::Replace | Change::Clean | Change::Worn);
    let over_new = |tip: &u32| {
        new.iter()
            .any(|new| new.number == *tip && new.verdict == Verdict::Outside && new.measured.deviation > 0.0)
    };
    let worn = advice.tips.iter().filter(|(_, change)| is_off(*change)).all(|(tip, _)| over_new(tip));
    let in_order = |tip: &TipSummary| {
        tip.state == TipState::Runs && !advice.tips.iter().any(|(off, _)| *off == tip.number)
    };
    let as_new =
        |tip: &TipSummary| new.iter().any(|new| new.number == tip.number && new.verdict == Verdict::Within);
    let good: Vec<u32> = summary
        .tips
        .iter()
        .filter(|tip| if worn { as_new(tip) } else { in_order(tip) })
        .map(|tip| tip.number)
        .collect();
    let says = match (worn, good.as_slice()) {
        (true, []) => "{off} of {of} tips put out more than the limit over a new tip. The set is worn.",
        (true, [_]) => {
            "{off} of {of} tips put out more than the limit over a new tip; tip {good} does not. The set is worn."
        }
        (true, _) => {
            "{off} of {of} tips put out more than the limit over a new tip; tips {good} do not. The set is worn."
        }
        (false, []) => "{off} of {of} tips are off.",
        (false, [_]) => "{off} of {of} tips are off; tip {good} is in order.",
        (false, _) => "{off} of {of} tips are off; tips {good} are in order.",
    };
    let finding = Finding::new(Weight::Act, "tips_replace_set", says)
        .case(if worn { "worn" } else { "off" })
        .with("off", Arg::Count(off))
        .with("of", Arg::Count(of))
        .with("good", Arg::Tips(good))
        .to_do("Replace the whole set, not tip by tip, and catch again: new tips can be off too.")
        .judged(Verdict::Outside, set.source);
    Some(finding)
}

/// Tips that agree with the others and are worn with them.
pub(super) fn worn(tips: &[u32], new: &[AgainstNew]) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => "Tip {tips} agrees with the others but puts out {most} against a new tip.",
        _ => "Tips {tips} agree with the others but put out up to {most} against a new tip.",
    };
    let deviations = new.iter().filter(|tip| tips.contains(&tip.number)).map(|tip| tip.measured.deviation);
    let most = deviations.fold(0.0, f64::max);
    let finding = Finding::new(Weight::Act, "tips_worn", says)
        .with("tips", Arg::Tips(tips.to_vec()))
        .with("most", Arg::Deviation(100.0 * most))
        .to_do("Worn out: replace, with the same kind and size.");
    Some(finding)
}

/// A boom, or single tips, that give clearly less than new ones. No tip wears small, so something else is wrong.
pub(super) fn under(summary: &RoundSummary, new: &[AgainstNew]) -> Option<Finding> {
    let mean = new.iter().map(|tip| tip.measured.deviation).sum::<f64>() / new.len().max(1) as f64;
    if mean < -UNDER_NEW {
        // Cup scale, watch and gauge are the same for every tip, so the widest range stands for the mean's.
        let clear = new.iter().all(|tip| tip.measured.high < -UNDER_NEW / 2.0);
        let (case, says) = match new {
            [_] => (
                "tip",
                "The tip puts out {under} less than new. No tip wears small: the tip's size, the pressure at it or the \
                 gauge does not agree with the rated flow.",
            ),
            _ => (
                "boom",
                "The whole boom puts out {under} less than new tips would. No tip wears small: the tips' size, the \
                 pressure at them or the gauge does not agree with the rated flow.",
            ),
        };
        let finding =
            Finding::new(if clear { Weight::Act } else { Weight::Doubt }, "boom_under_new", says)
                .case(case)
                .with("under", Arg::Off { percent: 100.0 * mean, limit: Some(100.0 * UNDER_NEW) })
                .to_do(
                    "Look at the size printed on the tips, read the pressure at a tip, and try another gauge; clean the \
                     strainers.",
                );
        return Some(finding);
    }
    let in_order = |number: u32| {
        summary.tips.iter().any(|tip| tip.number == number && tip.verdict == Some(Verdict::Within))
    };
    let low = || new.iter().filter(|tip| tip.measured.high < -UNDER_NEW && in_order(tip.number));
    let tips: Vec<u32> = low().map(|tip| tip.number).collect();
    let says = match tips.as_slice() {
        [] => return None,
        [_] => {
            "Tip {tips} agrees with the others but puts out {under} less than a new one: partly blocked, or another size."
        }
        _ => {
            "Tips {tips} agree with the others but put out up to {under} less than new ones: partly blocked, or another size."
        }
    };
    let most = low().map(|tip| tip.measured.deviation).fold(0.0, f64::min);
    let finding = Finding::new(Weight::Act, "tips_under_new", says)
        .with("tips", Arg::Tips(tips))
        .with("under", Arg::Off { percent: 100.0 * most, limit: Some(100.0 * UNDER_NEW) })
        .to_do("Clean tip and strainer with a soft brush or air, never the mouth; look at the size printed on it.");
    Some(finding)
}
