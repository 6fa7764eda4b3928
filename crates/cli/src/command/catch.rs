//! `evenswath catch`: a catch test typed on the command line.

use calibration::catch::{
    AgainstNew, Change, Doubtful, GroupSummary, Limit, Round, RoundSummary, SET_SHARE, TipState, TipSummary,
    advise, tell,
};
use serde_json::{Value, json};
use units::{Amount, Kind, UnitSystem, Verdict, percent_text};

use super::catch_test::{Given, GivenReading, Outcome};
use crate::args::CatchArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, number, percent};

/// Works it out.
pub fn run(args: &CatchArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let outcome = given(args).work_out().map_err(as_typed)?;
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
        doubtful: doubtful(args),
    }
}

/// What to do with readings that cannot be.
pub fn doubtful(args: &CatchArgs) -> Doubtful {
    if args.keep_doubtful { Doubtful::Keep } else { Doubtful::Refuse }
}

/// A batch names its fields, the command line its options.
fn as_typed(mut error: CliError) -> CliError {
    for (message, _) in &mut error.messages {
        if let Some((name, rest)) = message.split_once(": ")
            && name != "readings"
            && super::catch_batch::KNOWN.contains(&name)
        {
            *message = format!("--{}: {rest}", name.replace('_', "-"));
        }
    }
    error
}

/// The JSON object of a catch test.
pub fn object(outcome: &Outcome, system: UnitSystem) -> Value {
    let mut object = round_object(&outcome.round, &outcome.limit, &outcome.summary, &outcome.new, system);
    object["findings"] = findings(&outcome.findings, system);
    object
}

/// The JSON object of one round; groups of tips meant to differ stand each by itself when there are several.
pub fn round_object(
    round: &Round,
    limit: &Limit,
    summary: &RoundSummary,
    new: &[AgainstNew],
    system: UnitSystem,
) -> Value {
    let advice = advise(summary, new, SET_SHARE);
    let group = &summary.groups[0];
    let mut object = json!({
        "mean": mean(round, group).map(|mean| crate::out::amount(&mean, system)),
        "cv_percent": group.cv_percent.map(number),
        "tips": summary.tips.iter().map(|tip| tip_object(tip, summary, new)).collect::<Vec<_>>(),
        "plugged": summary.groups.iter().flat_map(|group| group.plugged.clone()).collect::<Vec<_>>(),
        "not_caught": summary.groups.iter().flat_map(|group| group.uncaught.clone()).collect::<Vec<_>>(),
        "limit": {
            "below_percent": percent(limit.below()),
            "above_percent": percent(limit.above()),
            "source": limit.source(),
        },
        "basis": "measured",
        "actions": advice.tips.iter().map(|(tip, change)| json!({ "tip": tip, "change": change_word(*change) })).collect::<Vec<_>>(),
    });
    if summary.groups.len() > 1 {
        let groups = summary.groups.iter().map(|group| {
            json!({
                "mean": mean(round, group).map(|mean| crate::out::amount(&mean, system)),
                "cv_percent": group.cv_percent.map(number),
                "tips": group.running,
            })
        });
        object["groups"] = Value::Array(groups.collect());
    }
    object
}

/// The mean catch of a group over the usual time, in the unit the cups were read in.
fn mean(round: &Round, group: &GroupSummary) -> Option<Amount> {
    let caught = group.mean? * round.time;
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

fn tip_object(tip: &TipSummary, summary: &RoundSummary, new: &[AgainstNew]) -> Value {
    let mean = summary.groups.iter().find(|group| group.group == tip.group).and_then(|group| group.mean);
    let deviation = match (tip.measured, tip.flow, mean) {
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
    if let Some(against) = new.iter().find(|against| against.number == tip.number) {
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
    if let Some(mean) = mean(&outcome.round, group) {
        let spread =
            group.cv_percent.map_or(String::new(), |cv| format!(", spread (CV) {} %", units::sensible(cv)));
        answer.main(format!(
            "mean {} over {}{spread}",
            mean.text(system),
            Amount::new(outcome.round.time, Kind::Time).text(system)
        ));
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
                format!("{:+.1} to {:+.1} %", 100.0 * range.low, 100.0 * range.high).replace('-', "−"),
            ),
            None => format!("  {:>3}    {:>12}    {:>20}    {word}", tip.number, "", ""),
        };
        match tip.verdict {
            Some(Verdict::Outside) => answer.act(text),
            _ => answer.verbatim(text),
        }
    }
    let advice = advise(&outcome.summary, &outcome.new, SET_SHARE);
    let told = tell(&outcome.round, &outcome.summary, &outcome.new, &advice, &limit);
    answer.findings(&told, system);
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
