//! Tips that were caught again after something was done: the old reading stays, the new one stands beside it.

use calibration::catch::{Round, RoundSummary, TipState};
use units::{Amount, Arg, Finding, Flow, Kind, Weight};

/// Returns what each tip of a later, partial round gives beside what it gave before.
pub(super) fn caught_again(
    later: &Round,
    later_summary: &RoundSummary,
    before: &Round,
    before_summary: &RoundSummary,
) -> Vec<Finding> {
    let shown = |flow: Flow| {
        let amount = Amount::new(flow * before.time, Kind::Cup);
        Arg::Amount(match &before.unit {
            Some(unit) if unit.dimension() == units::Dimension::Volume => amount.shown_in(unit),
            _ => amount,
        })
    };
    let mut findings = Vec::new();
    for tip in later_summary.tips.iter().filter(|tip| tip.state != TipState::NotCaught) {
        let Some(now) = tip.flow else { continue };
        let old = before_summary.tips.iter().find(|old| old.number == tip.number);
        let mean =
            before_summary.groups.iter().find(|group| group.group == tip.group).and_then(|group| group.mean);
        let (Some(old), Some(mean)) = (old.and_then(|old| old.flow), mean) else { continue };
        let finding = Finding::new(
            Weight::Note,
            "tip_caught_again",
            "Tip {tip}, {after}: {now} in {time}. Before it gave {old}; the mean was {mean}.",
        )
        .with("tip", Arg::Count(tip.number))
        .with("after", Arg::Text(later.kind.word().to_string()))
        .with("now", shown(now))
        .with("time", Arg::Amount(Amount::new(before.time, Kind::Time)))
        .with("old", shown(old))
        .with("mean", shown(mean));
        findings.push(finding);
    }
    findings
}
