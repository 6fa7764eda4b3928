//! What a catch test tells, in a neighbour's words: tip by tip where they differ, together where they do not.

use units::{Amount, Arg, Finding, Flow, Kind, Time, Unit, Verdict, Weight};

use super::advice::{Advice, Change};
use super::agree::{Agreement, without_the_odd_one};
use super::limit::Limit;
use super::new_tip::AgainstNew;
use super::round::Round;
use super::summary::{GroupSummary, Likely, RoundSummary, TipState, TipSummary};
use super::tell_new::{under, whole_set, worn};
use crate::verdict::NextCatch;

/// Returns what there is to tell about a round: what to do about tips first, then what is in order.
#[must_use]
pub fn tell(
    round: &Round,
    summary: &RoundSummary,
    new: &[AgainstNew],
    advice: &Advice,
    limit: &Limit,
    next: &[NextCatch],
) -> Vec<Finding> {
    let of = |change: Change| -> Vec<u32> {
        advice.tips.iter().filter(|(_, what)| *what == change).map(|(number, _)| *number).collect()
    };
    let mut findings: Vec<Finding> = Vec::new();
    findings.extend(unplug(&of(Change::Unplug)));
    findings.extend(whole_set(advice, summary, new));
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
    findings.extend(under(summary, new));
    findings.extend(catch_again(&of(Change::CatchAgain), round, summary, limit, next));
    // Where the whole set is to be replaced no more cups of it are worth catching.
    let told = |next: &&NextCatch| advice.whole_set.is_none() && !covers(next, &of(Change::CatchAgain));
    findings.extend(next.iter().filter(told).map(|next| catch_next(next, round)));
    findings.extend(not_caught(&of(Change::Catch), summary));
    for group in &summary.groups {
        let odd =
            without_the_odd_one(summary, group, limit).filter(|odd| settled_without(odd, summary, group));
        findings.extend(odd.map(|odd| agreement(&odd, round)));
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
    let likely = tip.most_likely();
    let low = likely.is_some_and(|likely| likely.deviation < 0.0);
    let limit_percent =
        Some(100.0 * if low { limit.below() } else { limit.above() }).filter(|limit| limit.is_finite());
    let percent =
        |share: Option<f64>| Arg::Off { percent: 100.0 * share.unwrap_or(f64::NAN), limit: limit_percent };
    let ends = likely.map(|likely| if low { (likely.high, likely.low) } else { (likely.low, likely.high) });
    Finding::new(Weight::Act, code, says)
        .with("tip", Arg::Count(tip.number))
        .with("off", percent(likely.map(|likely| likely.deviation)))
        .with("low", percent(ends.map(|ends| ends.0)))
        .with("high", percent(ends.map(|ends| ends.1)))
        .to_do(does)
        .judged(Verdict::Outside, limit.source())
}

fn unplug(tips: &[u32]) -> Option<Finding> {
    let (says, does) = match tips {
        [] => return None,
        [_] => (
            "Tip {tips} is plugged. It is left out of the mean.",
            "Pressure off. Clean the tip and its strainer with a soft brush or air, never the mouth, and catch it again.",
        ),
        _ => (
            "Tips {tips} are plugged. They are left out of the mean.",
            "Pressure off. Clean each of them and its strainer with a soft brush or air, never the mouth, and catch \
             them again.",
        ),
    };
    let finding =
        Finding::new(Weight::Act, "tips_plugged", says).with("tips", Arg::Tips(tips.to_vec())).to_do(does);
    Some(finding)
}

/// Whether a next cup is for all open tips at once, so that it is told with them.
fn covers(next: &NextCatch, open: &[u32]) -> bool {
    !open.is_empty() && open.iter().all(|tip| next.tips.contains(tip))
}

fn catch_again(
    tips: &[u32],
    round: &Round,
    summary: &RoundSummary,
    limit: &Limit,
    next: &[NextCatch],
) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => {
            "Tip {tips} cannot be told yet: most likely {off} off the mean, but it may be {low} to {high}."
        }
        _ => "Tips {tips} cannot be told yet: the marks are too coarse for them, or the time too short.",
    };
    let likely = summary.tips.iter().find(|tip| tips == [tip.number]).and_then(TipSummary::most_likely);
    let percent = |share: Option<f64>| Arg::Deviation(100.0 * share.unwrap_or(f64::NAN));
    let finding = Finding::new(Weight::Settle, "tips_cannot_tell", says)
        .with("tips", Arg::Tips(tips.to_vec()))
        .with("off", percent(likely.map(|likely| likely.deviation)))
        .with("low", percent(likely.map(|likely| likely.low)))
        .with("high", percent(likely.map(|likely| likely.high)))
        .judged(Verdict::CannotTell, limit.source());
    let named = |tip: &u32| next.iter().any(|next| next.tips.contains(tip));
    Some(match next.iter().find(|next| covers(next, tips)) {
        Some(next) => with_cup(finding, next, round).case(longer_or_finer(next)).to_do(match (next.tips.as_slice(), next.finer) {
            ([_], true) => "Catch it again for {time} and read it to {step}, on the finer side of the cup; about {spent}.",
            ([_], false) => "Catch it again for {time}; about {spent}.",
            (_, true) => {
                "Catch tips {again} again for {time} and read them to {step}, on the finer side of the cup; about \
                 {spent}."
            }
            (_, false) => "Catch tips {again} again for {time}; about {spent}.",
        }),
        None if next.is_empty() => {
            finding.case("enough").to_do("One more such cup costs more time than it settles. If in doubt, change the tip.")
        }
        None if !tips.iter().all(named) => {
            finding.case("some_enough").to_do("For those not named below, one more cup costs more time than it settles.")
        }
        None => finding.case("named_below"),
    })
}

/// The case of a sentence about a next cup: only longer, or read on the finer side besides.
const fn longer_or_finer(next: &NextCatch) -> &'static str {
    if next.finer { "finer" } else { "longer" }
}

/// The cup that settles most for its minutes.
fn catch_next(next: &NextCatch, round: &Round) -> Finding {
    let says = match (next.tips.as_slice(), next.finer) {
        ([_], true) => "Catch tip {again} for {time} and read it to {step}, on the finer side of the cup.",
        ([_], false) => "Catch tip {again} for {time}.",
        (_, true) => "Catch tips {again} for {time} and read them to {step}, on the finer side of the cup.",
        (_, false) => "Catch tips {again} for {time}.",
    };
    with_cup(Finding::new(Weight::Settle, "tips_catch_next", says), next, round)
        .case(longer_or_finer(next))
        .to_do("About {spent}.")
}

fn with_cup(finding: Finding, next: &NextCatch, round: &Round) -> Finding {
    let step = Amount::new(next.step, Kind::Cup);
    let step = match (&round.unit, next.finer) {
        // The finer side is marked in millilitres.
        (_, true) => Unit::named("mL").map_or(step.clone(), |unit| step.shown_in(&unit)),
        (Some(unit), false) if unit.dimension() == units::Dimension::Volume => step.shown_in(unit),
        _ => step,
    };
    finding
        .with("again", Arg::Tips(next.tips.clone()))
        .with("time", Arg::Amount(Amount::new(next.time, Kind::Time)))
        .with("step", Arg::Amount(step))
        .with("minutes", Arg::Text(format!("{:.1}", next.minutes)))
        .with("spent", Arg::Amount(spent(next.minutes)))
        .with("open", Arg::Count(next.open))
}

/// "50 s" or "2.4 min": short times in tens of seconds, as nobody counts in tenths of a minute.
fn spent(minutes: f64) -> Amount {
    let in_minutes = Unit::named("min").filter(|_| minutes >= 1.5);
    match in_minutes {
        None => Amount::new(Time::seconds((minutes * 6.0).ceil() * 10.0), Kind::Time),
        Some(unit) => Amount::new(Time::minutes((minutes * 10.0).round() / 10.0), Kind::Time).shown_in(&unit),
    }
}

fn not_caught(tips: &[u32], summary: &RoundSummary) -> Option<Finding> {
    let says = match tips {
        [] => return None,
        [_] => "Tip {tips} was not caught; whether it agrees is open.",
        _ => "{caught} of {all} tips were caught; whether the rest ({tips}) agree is open.",
    };
    let count = |tips: usize| Arg::Count(u32::try_from(tips).unwrap_or(u32::MAX));
    let finding = Finding::new(Weight::Doubt, "tips_not_caught", says)
        .with("tips", Arg::Tips(tips.to_vec()))
        .with("caught", count(summary.tips.len() - tips.len()))
        .with("all", count(summary.tips.len()));
    Some(finding)
}

/// Whether the verdicts of all the others are settled and say the same as their readings without the odd one;
/// where not, nothing is claimed of them.
fn settled_without(odd: &Agreement, summary: &RoundSummary, group: &GroupSummary) -> bool {
    let others =
        summary.tips.iter().filter(|tip| group.running.contains(&tip.number) && tip.number != odd.without);
    others.into_iter().all(|tip| match tip.verdict {
        Some(Verdict::Within) => !odd.still_off.contains(&tip.number),
        Some(Verdict::Outside) => odd.still_off.contains(&tip.number),
        Some(Verdict::CannotTell) | None => false,
    })
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
    let says = match odd.still_off.as_slice() {
        [] => "Without tip {tip} the others agree with each other: mean {without} instead of {with}.",
        [_] => "Tip {tip} moves the mean from {without} to {with}; without it tip {still} is still off.",
        _ => "Tip {tip} moves the mean from {without} to {with}; without it tips {still} are still off.",
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
    // The far end of each range, not the middle: never more certainty than the reading allows.
    let far = |likely: Likely| likely.low.abs().max(likely.high.abs());
    let most = within.iter().filter_map(|tip| tip.most_likely()).map(far).fold(0.0, f64::max);
    let count = u32::try_from(within.len()).unwrap_or(u32::MAX);
    let all = within.len() == summary.tips.len();
    // A range may reach a little past a limit that its tip is within all the same; then the far end is not told.
    let allowed = limit.above().min(limit.below());
    let shown = (1000.0 * most).ceil() / 10.0;
    let past = shown > 100.0 * allowed;
    let (case, says) = match (count, all) {
        (0, _) => return None,
        (2, true) if past => ("all_likely", "Both tips are most likely within the limit."),
        (_, true) if past => ("all_likely", "All {count} tips are most likely within the limit."),
        (2, true) => {
            ("all", "Both tips are within the limit: neither is likely to be more than {most} off the mean.")
        }
        (_, true) => (
            "all",
            "All {count} tips are within the limit: none is likely to be more than {most} off the mean.",
        ),
        (1, _) => ("one", "One tip is within the limit."),
        (_, false) if past => ("some_likely", "{count} tips are most likely within the limit."),
        (_, false) => (
            "some",
            "{count} tips are within the limit: none of them is likely to be more than {most} off the mean.",
        ),
    };
    let finding = Finding::new(Weight::Note, "tips_within", says)
        .case(case)
        .with("count", Arg::Count(count))
        .with(
            "most",
            Arg::Off {
                percent: 100.0 * most,
                limit: Some(100.0 * limit.above()).filter(|limit| limit.is_finite()),
            },
        )
        .judged(Verdict::Within, limit.source());
    Some(finding)
}
