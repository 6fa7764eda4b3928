//! `evenswath catch`: a catch test typed on the command line.

use calibration::catch::{Change, Doubtful, SET_SHARE, TipState, TipSummary, advise, without_the_odd_one};
use serde_json::{Value, json};
use units::{Amount, Kind, Quantity, UnitSystem, Verdict, percent_text};

use super::catch_test::{Given, GivenReading, Outcome};
use crate::args::CatchArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, number, percent};

/// Works it out.
pub fn run(args: &CatchArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let outcome = given(args).work_out()?;
    let mut answer = Answer::of(object(&outcome, system));
    answer.outside = outcome.summary.tips.iter().any(|tip| tip.verdict == Some(Verdict::Outside))
        || outcome.new.iter().any(|tip| tip.verdict == Verdict::Outside);
    lines(&mut answer, &outcome, system);
    Ok(answer)
}

fn given(args: &CatchArgs) -> Given {
    let tip = |text: &String| match text.trim() {
        "-" | "−" => Vec::new(),
        text => text
            .split('+')
            .map(|reading| GivenReading { reading: reading.trim().to_string(), ..GivenReading::default() })
            .collect(),
    };
    Given {
        time: args.time.clone().unwrap_or_default(),
        step: args.step.clone().unwrap_or_default(),
        tips: args.readings.iter().map(tip).collect(),
        limit: args.limit.clone(),
        rated: args.rated.clone(),
        pressure: args.pressure.clone(),
        cup_holds: args.cup_holds.clone(),
        timer: args.timer.clone(),
        shares: [args.cup_scale.clone(), args.watch.clone(), args.handling.clone()],
        risk: args.risk,
        density: args.density.clone(),
        doubtful: if args.keep_doubtful { Doubtful::Keep } else { Doubtful::Refuse },
    }
}

/// The JSON object of a catch test.
pub fn object(outcome: &Outcome, system: UnitSystem) -> Value {
    let group = &outcome.summary.groups[0];
    let advice = advise(&outcome.summary, &outcome.new, SET_SHARE);
    json!({
        "mean": mean(outcome).map(|mean| crate::out::amount(&mean, system)),
        "cv_percent": group.cv_percent.map(number),
        "tips": outcome.summary.tips.iter().map(|tip| tip_object(tip, outcome)).collect::<Vec<_>>(),
        "plugged": group.plugged,
        "not_caught": group.uncaught,
        "limit": {
            "below_percent": percent(outcome.limit.below()),
            "above_percent": percent(outcome.limit.above()),
            "source": outcome.limit.source(),
        },
        "basis": "measured",
        "actions": advice.tips.iter().map(|(tip, change)| json!({ "tip": tip, "change": change_word(*change) })).collect::<Vec<_>>(),
        "findings": findings(&outcome.findings, system),
    })
}

/// The mean catch over the usual time, in the unit the cups were read in.
fn mean(outcome: &Outcome) -> Option<Amount> {
    let round = &outcome.round;
    let caught = outcome.summary.groups[0].mean? * round.time;
    let weighed = round.unit.as_ref().is_some_and(|unit| unit.dimension() == units::Dimension::Mass);
    let amount = if weighed {
        Amount::new(round.density * caught, Kind::Mass)
    } else {
        Amount::new(caught, Kind::Cup)
    };
    Some(match &round.unit {
        Some(unit) => amount.shown_in(unit),
        None => amount,
    })
}

fn tip_object(tip: &TipSummary, outcome: &Outcome) -> Value {
    let group = &outcome.summary.groups[0];
    let deviation = match (tip.measured, tip.flow, group.mean) {
        (Some(range), _, _) => Some(range.deviation),
        (None, Some(flow), Some(mean)) => Some(flow.ratio_to(mean) - 1.0),
        _ => None,
    };
    let mut object = json!({
        "number": tip.number,
        "deviation_percent": deviation.map(percent),
        "verdict": tip.verdict.unwrap_or(Verdict::CannotTell).word(),
        "measured": tip.measured.map(|range| json!({ "low": percent(range.low), "high": percent(range.high) })),
        "as_read": tip.as_read.map(Verdict::word),
        "state": state_word(tip.state),
    });
    if let Some(against) = outcome.new.iter().find(|against| against.number == tip.number) {
        object["against_new"] = json!({
            "deviation_percent": percent(against.measured.deviation),
            "verdict": against.verdict.word(),
            "as_read": against.as_read.word(),
            "measured": { "low": percent(against.measured.low), "high": percent(against.measured.high) },
        });
    }
    object
}

fn lines(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let group = &outcome.summary.groups[0];
    let limit = outcome.limit;
    if let Some(mean) = mean(outcome) {
        let spread = group.cv_percent.map_or(String::new(), |cv| format!(", spread (CV) {} %", units::sensible(cv)));
        answer.main(format!("mean {} over {}{spread}", mean.text(system), Amount::new(outcome.round.time, Kind::Time).text(system)));
    } else {
        answer.main("no tip runs");
    }
    answer.plain("  tip    off the mean    range of the reading    verdict");
    for tip in &outcome.summary.tips {
        let word = match tip.state {
            TipState::Plugged => "plugged".to_string(),
            TipState::NotCaught => "not caught".to_string(),
            TipState::Runs => tip.verdict.map_or(String::new(), |verdict| verdict.word().replace('_', " ")),
        };
        let text = match tip.measured {
            Some(range) => format!(
                "  {:>3}    {:>12}    {:>20}    {word}",
                tip.number,
                percent_text(100.0 * range.deviation, Some(100.0 * limit.above())),
                format!("{} to {}", percent_text(100.0 * range.low, None), percent_text(100.0 * range.high, None)),
            ),
            None => format!("  {:>3}    {:>12}    {:>20}    {word}", tip.number, "", ""),
        };
        match tip.verdict {
            Some(Verdict::Outside) => answer.act(text),
            _ => answer.plain(text),
        }
    }
    for (tip, change) in advise(&outcome.summary, &outcome.new, SET_SHARE).tips {
        answer.plain(format!("tip {tip}: {}", change_english(change)));
    }
    if let Some(odd) = without_the_odd_one(&outcome.summary, group, &limit) {
        let over = |flow: units::Flow| Amount::new(flow * outcome.round.time, Kind::Cup);
        let shown = |flow| outcome.round.unit.as_ref().filter(|unit| unit.dimension() == units::Volume::DIMENSION)
            .map_or_else(|| over(flow), |unit| over(flow).shown_in(unit)).text(system);
        let agree = if odd.still_off.is_empty() { "the others agree with each other" } else { "the others still differ" };
        answer.plain(format!(
            "without tip {} {agree}: mean {} instead of {}",
            odd.without,
            shown(odd.mean_without),
            shown(odd.mean_with)
        ));
    }
    answer.findings(&outcome.findings, system);
}

fn state_word(state: TipState) -> &'static str {
    match state {
        TipState::Runs => "runs",
        TipState::Plugged => "plugged",
        TipState::NotCaught => "not_caught",
    }
}

/// The stable word for what to do.
pub fn change_word(change: Change) -> &'static str {
    match change {
        Change::Unplug => "unplug",
        Change::Replace => "replace",
        Change::Clean => "clean",
        Change::Worn => "worn",
        Change::CatchAgain => "catch_again",
        Change::Catch => "catch",
    }
}

fn change_english(change: Change) -> &'static str {
    match change {
        Change::Unplug => "plugged; clean tip and strainer, then catch it again",
        Change::Replace => "too much; replace it with one of the same size and catch it again",
        Change::Clean => "too little; clean it and catch it again, replace it if it stays low",
        Change::Worn => "worn, as its neighbours are; replace it",
        Change::CatchAgain => "cannot be told from this cup; catch it again for longer, or read the millilitre side",
        Change::Catch => "not caught",
    }
}
