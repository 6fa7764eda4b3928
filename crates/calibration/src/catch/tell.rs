//! What a catch test tells, in a neighbour's words: tip by tip where they differ, together where they do not.

use units::{Amount, Arg, Finding, Flow, Kind, Verdict, Weight};

use super::advice::{Advice, Change};
use super::agree::{Agreement, without_the_odd_one};
use super::limit::Limit;
use super::new_tip::AgainstNew;
use super::round::Round;
use super::summary::{RoundSummary, TipState, TipSummary};

/// Returns what there is to tell about a round: what to do about tips first, then what is in order.
#[must_use]
pub fn tell(
    round: &Round,
    summary: &RoundSummary,
    new: &[AgainstNew],
    advice: &Advice,
    limit: &Limit,
) -> Vec<Finding> {
    let of = |change: Change| -> Vec<u32> {
        advice.tips.iter().filter(|(_, what)| *what == change).map(|(number, _)| *number).collect()
    };
    let mut findings: Vec<Finding> = Vec::new();
    findings.extend(unplug(&of(Change::Unplug)));
    findings.extend(whole_set(advice, new));
    for tip in &summary.tips {
        match advice.tips.iter().find(|(number, _)| *number == tip.number) {
            Some((_, Change::Replace)) => findings.push(off(tip, limit, HIGH)),
            Some((_, Change::Clean)) => findings.push(off(tip, limit, LOW)),
            _ => {}
        }
    }
    if advice.whole_set.is_none() {
        findings.extend(worn(&of(Change::Worn), new));
    }
    findings.extend(catch_again(&of(Change::CatchAgain), summary, limit));
    findings.extend(not_caught(&of(Change::Catch)));
    for group in &summary.groups {
        findings.extend(without_the_odd_one(summary, group, limit).map(|odd| agreement(&odd, round)));
    }
    findings.extend(in_order(summary, limit));
    findings.sort_by_key(|finding| finding.weight);
    findings
}

/// A code, what is wrong, what to do.
type Words = (&'static str, &'static str, &'static str);

const HIGH: Words = (
    "tip_high",
    "Tip {tip} puts out {off} more than the mean of the tips ({low} to {high} more).",
    "Replace tip {tip} with one of the same kind and size, and catch it again.",
);
const LOW: Words = (
    "tip_low",
    "Tip {tip} puts out {off} less than the mean of the tips ({low} to {high} less).",
    "Clean tip {tip} and its strainer with a soft brush or air, never the mouth, and catch it again; replace it if it stays low.",
);

fn off(tip: &TipSummary, limit: &Limit, (code, says, does): Words) -> Finding {
    let allowed =
        if tip.measured.is_some_and(|range| range.deviation < 0.0) { limit.below() } else { limit.above() };
    let limit_percent = Some(100.0 * allowed).filter(|limit| limit.is_finite());
    let percent =
        |share: Option<f64>| Arg::Off { percent: 100.0 * share.unwrap_or(f64::NAN), limit: limit_percent };
    let ends = tip
        .measured
        .map(|range| if range.deviation < 0.0 { (range.high, range.low) } else { (range.low, range.high) });
    Finding::new(Weight::Act, code, says)
        .with("tip", Arg::Count(tip.number))
        .with("off", percent(tip.measured.map(|range| range.deviation)))
        .with("low", percent(ends.map(|ends| ends.0)))
        .with("high", percent(ends.map(|ends| ends.1)))
        .to_do(does)
        .judged(Verdict::Outside, limit.source())
}

fn unplug(tips: &[u32]) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => "Tip {tips} is plugged. It is left out of the mean.",
        _ => "Tips {tips} are plugged. They are left out of the mean.",
    };
    let finding = Finding::new(Weight::Act, "tips_plugged", says)
        .with("tips", Arg::Tips(tips.to_vec()))
        .to_do("Pressure off. Clean the tip and its strainer with a soft brush or air, never the mouth, and catch it again.");
    Some(finding)
}

fn whole_set(advice: &Advice, new: &[AgainstNew]) -> Option<Finding> {
    let (off, of, set) = advice.whole_set?;
    let worn = advice.tips.iter().any(|(_, change)| *change == Change::Worn) && !new.is_empty();
    let says = if worn {
        "{off} of {of} tips put out more than the limit over a new tip. The set is worn."
    } else {
        "{off} of {of} tips are off."
    };
    let finding = Finding::new(Weight::Act, "tips_replace_set", says)
        .with("off", Arg::Count(off))
        .with("of", Arg::Count(of))
        .to_do("Replace the whole set, not tip by tip, and catch again: new tips can be off too.")
        .judged(Verdict::Outside, set.source);
    Some(finding)
}

fn worn(tips: &[u32], new: &[AgainstNew]) -> Option<Finding> {
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

fn catch_again(tips: &[u32], summary: &RoundSummary, limit: &Limit) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => "Tip {tips} cannot be told from this cup: it reads {off}, but may be {low} to {high}.",
        _ => "Tips {tips} cannot be told from this cup: the marks are too coarse, or the time too short.",
    };
    let tip = summary.tips.iter().find(|tip| tips == [tip.number]);
    let range = tip.and_then(|tip| tip.measured);
    let percent = |share: Option<f64>| Arg::Deviation(100.0 * share.unwrap_or(f64::NAN));
    let does = match tips {
        [_] => "Catch it again for twice as long, or read the millilitre side of the cup.",
        _ => "Catch them again for twice as long, or read the millilitre side of the cup.",
    };
    let finding = Finding::new(Weight::Settle, "tips_cannot_tell", says)
        .with("tips", Arg::Tips(tips.to_vec()))
        .with("off", percent(range.map(|range| range.deviation)))
        .with("low", percent(range.map(|range| range.low)))
        .with("high", percent(range.map(|range| range.high)))
        .to_do(does)
        .judged(Verdict::CannotTell, limit.source());
    Some(finding)
}

fn not_caught(tips: &[u32]) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => "Tip {tips} was not caught. For the rate it is taken to put out what the others do.",
        _ => "Tips {tips} were not caught. For the rate they are taken to put out what the others do.",
    };
    Some(Finding::new(Weight::Doubt, "tips_not_caught", says).with("tips", Arg::Tips(tips.to_vec())))
}

fn agreement(odd: &Agreement, round: &Round) -> Finding {
    let caught = |flow: Flow| {
        let weighed = round.unit.as_ref().is_some_and(|unit| unit.dimension() == units::Dimension::Mass);
        let amount = Amount::new(flow * round.time, Kind::Cup);
        Arg::Amount(match &round.unit {
            Some(unit) if !weighed => amount.shown_in(unit),
            _ => amount,
        })
    };
    let says = if odd.still_off.is_empty() {
        "Without tip {tip} the others agree with each other: mean {without} instead of {with}."
    } else {
        "Tip {tip} moves the mean from {without} to {with}; without it tips {still} are still off."
    };
    Finding::new(Weight::Note, "tips_agree_without", says)
        .with("tip", Arg::Count(odd.without))
        .with("without", caught(odd.mean_without))
        .with("with", caught(odd.mean_with))
        .with("still", Arg::Tips(odd.still_off.clone()))
}

fn in_order(summary: &RoundSummary, limit: &Limit) -> Option<Finding> {
    let within: Vec<&TipSummary> = summary
        .tips
        .iter()
        .filter(|tip| tip.state == TipState::Runs && tip.verdict == Some(Verdict::Within))
        .collect();
    // One tip by itself has nobody to agree with.
    if summary.tips.len() < 2 {
        return None;
    }
    let most = within
        .iter()
        .filter_map(|tip| tip.measured)
        .fold(0.0, |most: f64, range| most.max(range.deviation.abs()));
    let count = u32::try_from(within.len()).unwrap_or(u32::MAX);
    let all = within.len() == summary.tips.len();
    let says = match (count, all) {
        (0, _) => return None,
        (_, true) => "All {count} tips are within the limit; the furthest is {most} off the mean.",
        (1, _) => "One tip is within the limit.",
        (_, false) => "{count} tips are within the limit; the furthest of them is {most} off the mean.",
    };
    let finding = Finding::new(Weight::Note, "tips_within", says)
        .with("count", Arg::Count(count))
        .with("most", Arg::Percent(100.0 * most))
        .judged(Verdict::Within, limit.source());
    Some(finding)
}
