//! Tips that were caught again after something was done: the old reading stays, the new one stands beside it, and what
//! was to be done about it is done, or is not.

use std::collections::BTreeMap;

use calibration::catch::{Limit, Round, RoundKind, RoundSummary, TipState};
use units::{Amount, Arg, Coded, Finding, Flow, Kind, Verdict, Weight};

use crate::record::round_said;

/// What became of a tip that was caught again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Since {
    /// It gives what the others gave.
    Mended,
    /// It is still beyond the limit.
    StillOff,
}

/// What each tip of a later, partial round gives beside what it gave before; and what became of those at which
/// something was done in between.
pub(super) fn caught_again(
    later: &Round,
    later_summary: &RoundSummary,
    before: &Round,
    before_summary: &RoundSummary,
    limit: &Limit,
) -> (Vec<Finding>, BTreeMap<u32, Since>) {
    let shown = |flow: Flow| {
        let amount = Amount::new(flow * before.time, Kind::Cup);
        Arg::Amount(match &before.unit {
            Some(unit) if unit.dimension() == units::Dimension::Volume => amount.shown_in(unit),
            _ => amount,
        })
    };
    // At another pressure every tip gives something else; a second cup of an untouched boom and a swap mend nothing.
    let done = !matches!(later.kind, RoundKind::AsFound | RoundKind::PressureChanged | RoundKind::Swapped);
    let mut findings = Vec::new();
    let mut since = BTreeMap::new();
    for tip in later_summary.tips.iter().filter(|tip| tip.state != TipState::NotCaught) {
        let Some(now) = tip.flow else { continue };
        let old = before_summary.tips.iter().find(|old| old.number == tip.number);
        let mean =
            before_summary.groups.iter().find(|group| group.group == tip.group).and_then(|group| group.mean);
        let (Some(old), Some(mean)) = (old, mean) else { continue };
        let Some(old_flow) = old.flow else { continue };
        let off = now.ratio_to(mean) - 1.0;
        let is_off = limit.as_read(off) == Verdict::Outside;
        let was_off = old.verdict != Some(Verdict::Within);
        if done {
            since.insert(tip.number, if is_off { Since::StillOff } else { Since::Mended });
        }
        let finding = if done && is_off && was_off {
            Finding::new(
                Weight::Act,
                "tip_still_off",
                "Tip {tip}, {after}: {now} in {time}, still {off} off the mean of {mean}. Before it gave {old}.",
            )
            .with("off", Arg::Deviation(100.0 * off))
            .to_do("Replace it with a new one of the same kind and size, and catch it again.")
        } else {
            Finding::new(
                Weight::Note,
                "tip_caught_again",
                "Tip {tip}, {after}: {now} in {time}. Before it gave {old}; the mean was {mean}.",
            )
        };
        let finding = finding
            .with("tip", Arg::Count(tip.number))
            .with("after", round_said(&later.kind))
            .with("now", shown(now))
            .with("time", Arg::Amount(Amount::new(before.time, Kind::Time)))
            .with("old", shown(old_flow))
            .with("mean", shown(mean));
        findings.push(finding);
    }
    (findings, since)
}

/// Returns the findings of the whole boom with what has been done since taken out of what is to be done; its cup
/// stands in the row as it was.
pub(super) fn done_since(findings: Vec<Finding>, since: &BTreeMap<u32, Since>) -> Vec<Finding> {
    findings.into_iter().map(|finding| one_done_since(finding, since)).collect()
}

fn one_done_since(finding: Finding, since: &BTreeMap<u32, Since>) -> Finding {
    let args = finding.args();
    let tips = match (args.get("tip"), args.get("tips")) {
        (Some(Arg::Count(tip)), _) => vec![*tip],
        (_, Some(Arg::Tips(tips))) => tips.clone(),
        _ => return finding,
    };
    let (done, open): (Vec<u32>, Vec<u32>) = tips.iter().partition(|tip| since.contains_key(tip));
    if done.is_empty() {
        return finding;
    }
    let changed = match (finding.code(), open.is_empty()) {
        ("tip_high", _) => past(
            "tip_high",
            "Tip {tip} put out {off} more than the mean of the tips ({low} to {high} more) when the whole boom was caught.",
        ),
        ("tip_low", _) => past(
            "tip_low",
            "Tip {tip} put out {off} less than the mean of the tips ({low} to {high} less) when the whole boom was caught.",
        ),
        ("tips_plugged", true) => {
            past("tips_plugged", "Plugged when the whole boom was caught, and caught again since: {tips}.")
        }
        ("tips_plugged", false) => {
            let says = match open.as_slice() {
                [_] => "Tip {tips} is plugged. It is left out of the mean.",
                _ => "Tips {tips} are plugged. They are left out of the mean.",
            };
            return Finding::new(Weight::Act, "tips_plugged", says)
                .with("tips", Arg::Tips(open))
                .to_do("Pressure off. Clean the tip and its strainer with a soft brush or air, never the mouth, and catch it again.");
        }
        ("tips_worn", true) => {
            past("tips_worn", "Worn when the whole boom was caught, and caught again since: {tips}.")
        }
        ("tips_cannot_tell", true) => past(
            "tips_cannot_tell",
            "Not settled when the whole boom was caught, and caught again since: {tips}.",
        ),
        _ => return finding,
    };
    let mut changed = args.iter().fold(changed, |changed, (name, arg)| changed.with(name, arg.clone()));
    changed.verdict = finding.verdict;
    changed.limit_source = finding.limit_source;
    changed.working = finding.working;
    changed
}

const fn past(code: &'static str, says: &'static str) -> Finding {
    Finding::new(Weight::Note, code, says).case("since")
}
