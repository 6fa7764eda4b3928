//! `evenswath catch`: a catch test typed on the command line.

use calibration::catch::{Change, Doubtful, GroupSummary, Round, TipState, TipSummary};
use calibration::verdict::{CatchVerdicts, NextCatch};
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
    let verdicts = &outcome.verdicts;
    answer.outside = verdicts.summary.tips.iter().any(|tip| tip.verdict == Some(Verdict::Outside))
        || verdicts.new.iter().any(|tip| tip.verdict == Verdict::Outside);
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
        order: args.order.clone(),
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
    round_object(&outcome.round, &outcome.verdicts, system)
}

/// The JSON object of one round; groups of tips meant to differ stand each by itself when there are several.
pub fn round_object(round: &Round, verdicts: &CatchVerdicts, system: UnitSystem) -> Value {
    let CatchVerdicts { limit, summary, judged, advice, .. } = verdicts;
    let group = &summary.groups[0];
    let mut object = json!({
        "mean": mean(round, group).map(|mean| crate::out::amount(&mean, system)),
        "cv_percent": group.cv_percent.map(number),
        "tips": summary.tips.iter().map(|tip| tip_object(tip, verdicts)).collect::<Vec<_>>(),
        "boom": {
            "expected_wrong_calls": number(judged.boom.expected_wrong_calls),
            "probability_all_within": number(judged.boom.probability_all_within),
        },
        "next": verdicts.next.iter().map(|next| next_object(next, round, system)).collect::<Vec<_>>(),
        "plugged": summary.groups.iter().flat_map(|group| group.plugged.clone()).collect::<Vec<_>>(),
        "not_caught": summary.groups.iter().flat_map(|group| group.uncaught.clone()).collect::<Vec<_>>(),
        "limit": {
            "below_percent": percent(limit.below()),
            "above_percent": percent(limit.above()),
            "source": limit.source(),
        },
        "actions": advice.tips.iter().map(|(tip, change)| json!({ "tip": tip, "change": change_word(*change) })).collect::<Vec<_>>(),
        "findings": findings(&verdicts.findings, system),
    });
    if let Some(working) = &verdicts.working {
        object["working"] = crate::out::working(working, system);
    }
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

/// One go of cups worth catching next, with why in words.
fn next_object(next: &NextCatch, round: &Round, system: UnitSystem) -> Value {
    let step = Amount::new(next.step, Kind::Cup);
    let millilitres = units::Unit::named("mL").filter(|_| next.finer);
    let step = match millilitres
        .or_else(|| round.unit.clone().filter(|unit| unit.dimension() == units::Dimension::Volume))
    {
        Some(unit) => step.shown_in(&unit),
        None => step,
    };
    json!({
        "tips": next.tips,
        "time": crate::out::quantity(next.time, Kind::Time, system),
        "step": crate::out::amount(&step, system),
        "minutes": number(next.minutes),
        "settles": number(next.settles),
        "why": {
            "code": if next.open > 0 { "settles_open_tips" } else { "makes_surer" },
            "args": { "open": next.open, "minutes": number(next.minutes), "settles": number(next.settles) },
            "text": match next.open {
                0 => format!("makes {} surer in about {:.1} min", tips_word(next), next.minutes),
                _ => format!("{} of {} open; the most this settles in about {:.1} min", next.open, tips_word(next), next.minutes),
            },
        },
    })
}

fn tips_word(next: &NextCatch) -> String {
    format!("{} {}", next.tips.len(), if next.tips.len() == 1 { "tip" } else { "tips" })
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

fn tip_object(tip: &TipSummary, verdicts: &CatchVerdicts) -> Value {
    let CatchVerdicts { summary, judged, new, new_judged, .. } = verdicts;
    let mean = summary.groups.iter().find(|group| group.group == tip.group).and_then(|group| group.mean);
    let likely = judged.tips.iter().find(|judged| judged.number == tip.number);
    let as_is = tip.flow.zip(mean).map(|(flow, mean)| flow.ratio_to(mean) - 1.0);
    let plugged = tip.state == TipState::Plugged;
    let mut object = json!({
        "number": tip.number,
        "deviation_percent": likely.map(|likely| likely.deviation).or(as_is).map(percent),
        "low": likely.map(|likely| percent(likely.low)),
        "high": likely.map(|likely| percent(likely.high)),
        "probability_within": likely.map(|likely| likely.probability_within).or(plugged.then_some(0.0)).map(number),
        "verdict": tip.verdict.unwrap_or(Verdict::CannotTell).word(),
        "measured": tip.measured.map(|range| {
            json!({ "deviation_percent": percent(range.deviation), "low": percent(range.low), "high": percent(range.high) })
        }),
        "as_read": tip.as_read.map(Verdict::word),
        "rests_on_boom": likely.is_some_and(|likely| likely.rests_on_boom),
        "state": state_word(tip.state),
    });
    let measured = new.iter().find(|against| against.number == tip.number);
    if let Some(likely) = new_judged.iter().find(|against| against.number == tip.number) {
        object["against_new"] = json!({
            "deviation_percent": percent(likely.deviation),
            "low": percent(likely.low),
            "high": percent(likely.high),
            "probability_over": number(likely.probability_over),
            "verdict": likely.verdict.word(),
            "as_read": measured.map(|measured| measured.as_read.word()),
            "measured": measured.map(|measured| json!({
                "deviation_percent": percent(measured.measured.deviation),
                "low": percent(measured.measured.low),
                "high": percent(measured.measured.high),
            })),
        });
    }
    object
}

fn lines(answer: &mut Answer, outcome: &Outcome, system: UnitSystem) {
    let CatchVerdicts { summary, limit, working, findings, .. } = &outcome.verdicts;
    let group = &summary.groups[0];
    if let Some(mean) = mean(&outcome.round, group) {
        let spread = group.cv_percent.map_or(String::new(), |cv| format!(", spread (CV) {cv:.1} %"));
        answer.main(format!(
            "mean {} over {}{spread}",
            mean.text(system),
            Amount::new(outcome.round.time, Kind::Time).text(system)
        ));
    } else {
        answer.main("no tip runs");
    }
    answer.verbatim("  tip    off the mean        most likely    verdict");
    for tip in &summary.tips {
        let word = match tip.state {
            TipState::Plugged => "plugged".to_string(),
            TipState::NotCaught => "not caught".to_string(),
            TipState::Runs => tip.verdict.map_or(String::new(), |verdict| verdict.word().replace('_', " ")),
        };
        let text = match (tip.measured, tip.most_likely()) {
            (Some(range), Some(likely)) => format!(
                "  {:>3}    {:>12}    {:>15}    {word}",
                tip.number,
                percent_text(100.0 * range.deviation, Some(100.0 * limit.above())),
                format!("{:+.0} to {:+.0} %", 100.0 * likely.low, 100.0 * likely.high).replace('-', "−"),
            ),
            _ => format!("  {:>3}    {:>12}    {:>15}    {word}", tip.number, "", ""),
        };
        match tip.verdict {
            Some(Verdict::Outside) => answer.act(text),
            _ => answer.verbatim(text),
        }
    }
    answer.findings(findings, system);
    answer.working.extend(working.clone());
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
