//! What to do, in order. Tips that are off alike stand in one step, so that a long boom does not fill the page.

use calibration::diagnosis::Diagnosed;
use units::{Arg, Args, Coded, Finding, Weight};
use visit::findings::{Action, Outcome};
use words::Words;

use super::likely;
use crate::sheet::{Block, Sign, Step};

/// More tips than these that are off the same way are told together. Our own choice.
const TOGETHER: usize = 2;

/// The steps; none where nothing is to be done. What the label forbids stands above them already.
pub fn steps(words: &Words, outcome: &Outcome) -> Vec<Step> {
    let told: Vec<&Action> =
        outcome.actions.iter().filter(|action| action.finding.weight != Weight::Stop).collect();
    let mut steps = Vec::new();
    for (place, action) in told.iter().enumerate() {
        let alike = |other: &&&Action| same(&action.finding, &other.finding);
        let all: Vec<&Action> = told.iter().filter(alike).copied().collect();
        let single = matches!(action.finding.args().get("tip"), Some(Arg::Count(_)));
        match all.len() > TOGETHER && single {
            false => steps.push(step(words, action)),
            // The first of them tells them all; the others are told with it.
            true if told.iter().position(|other| alike(&other)) == Some(place) => {
                steps.push(together(words, &all));
            }
            true => {}
        }
    }
    steps
}

/// The steps, and behind them what a diagnosis of the cups says of sections or the whole boom that no tip's step says: a
/// strainer to open where every tip of a section is still within its limit.
pub fn steps_and_likely(words: &Words, outcome: &Outcome, diagnosed: Option<&Diagnosed>) -> Vec<Step> {
    let mut all = steps(words, outcome);
    if let Some((catch, found)) = outcome.catch.as_ref().zip(diagnosed) {
        all.extend(
            likely::of_more_than_a_tip(catch, found).map(|finding| step_of(words, finding, Sign::Act)),
        );
    }
    all
}

/// Whether two findings say the same of different tips.
fn same(one: &units::Finding, other: &units::Finding) -> bool {
    let alike = one.code() == other.code() && Coded::case(one) == Coded::case(other);
    alike && matches!(one.code(), "tip_high" | "tip_low")
}

fn step(words: &Words, action: &Action) -> Step {
    step_of(words, &action.finding, sign(action))
}

fn step_of(words: &Words, finding: &Finding, sign: Sign) -> Step {
    let lead = words.finding(finding);
    let rest = words.action(finding).filter(|rest| *rest != lead).unwrap_or_default();
    Step { sign, lead, rest }
}

fn sign(action: &Action) -> Sign {
    match action.finding.weight {
        Weight::Stop | Weight::Act => Sign::Act,
        Weight::Settle => Sign::Settle,
        Weight::Doubt | Weight::Note => Sign::Plain,
    }
}

/// One step for several tips that are off the same way: which, and from how far to how far.
fn together(words: &Words, all: &[&Action]) -> Step {
    let mut tips = Vec::new();
    let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
    let mut limit = None;
    for action in all {
        let args = action.finding.args();
        if let Some(Arg::Count(tip)) = args.get("tip") {
            tips.push(*tip);
        }
        if let Some(Arg::Off { percent, limit: own }) = args.get("off") {
            least = least.min(percent.abs());
            most = most.max(percent.abs());
            limit = *own;
        }
    }
    tips.sort_unstable();
    let off = |percent: f64| words.arg(&Arg::Off { percent, limit });
    let (least, most) = (off(least), off(most));
    let how_far = if least == most {
        most
    } else {
        words.say("range", &[("low", least.into()), ("high", most.into())])
    };
    let args = Args::new().with("tips", Arg::Tips(tips)).with("off", Arg::Text(how_far));
    let high = all.first().is_some_and(|action| action.finding.code() == "tip_high");
    let (lead, rest) = if high {
        ("sheet-tips_high", "sheet-tips_high_do")
    } else {
        ("sheet-tips_low", "sheet-tips_low_do")
    };
    Step {
        sign: all.first().map_or(Sign::Act, |action| sign(action)),
        lead: words.say_with(lead, &args),
        rest: words.say_with(rest, &args),
    }
}

/// The steps under their heading; that there is nothing to do is told as well.
pub fn blocks(words: &Words, outcome: &Outcome, steps: Vec<Step>) -> Vec<Block> {
    let stops = outcome.all().any(|(_, finding)| finding.weight == Weight::Stop);
    if !steps.is_empty() {
        return vec![Block::Heading(words.label("sheet-what_to_do")), Block::Steps { from: 1, steps }];
    }
    let judged = outcome.catch.is_some() || outcome.rate.is_some() || outcome.spacing.is_some();
    if stops || !judged {
        return Vec::new();
    }
    vec![Block::Heading(words.label("sheet-what_to_do")), Block::Text(words.label("sheet-nothing_to_do"))]
}
