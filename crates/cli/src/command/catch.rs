//! `evenswath catch`: a catch test typed on the command line.

use calibration::catch::{Change, Doubtful, GroupSummary, Round, TipState, TipSummary};
use calibration::verdict::{CatchVerdicts, NextCatch};
use serde_json::{Value, json};
use units::{Amount, Arg, Args, Kind, Verdict};
use words::Words;

use super::catch_test::{Given, GivenReading, Outcome};
use crate::args::CatchArgs;
use crate::error::{CliError, Place};
use crate::out::{Answer, findings, number, percent};

/// Works it out.
pub fn run(args: &CatchArgs, words: &Words) -> Result<Answer, CliError> {
    let outcome = given(args).work_out().map_err(as_typed)?;
    let mut answer = Answer::of(object(&outcome, words));
    let verdicts = &outcome.verdicts;
    answer.outside = verdicts.summary.tips.iter().any(|tip| tip.verdict == Some(Verdict::Outside))
        || verdicts.new.iter().any(|tip| tip.verdict == Verdict::Outside);
    lines(&mut answer, &outcome, words);
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
    for place in error.problems.iter_mut().flat_map(|problem| &mut problem.at) {
        if let Place::Named(name) = place
            && name != "readings"
            && super::catch_batch::KNOWN.contains(&name.as_str())
        {
            *name = format!("--{}", name.replace('_', "-"));
        }
    }
    error
}

/// The JSON object of a catch test.
pub fn object(outcome: &Outcome, words: &Words) -> Value {
    round_object(&outcome.round, &outcome.verdicts, words)
}

/// The JSON object of one round; groups of tips meant to differ stand each by itself when there are several.
pub fn round_object(round: &Round, verdicts: &CatchVerdicts, words: &Words) -> Value {
    let system = words.reader().units;
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
        "next": verdicts.next.iter().map(|next| next_object(next, round, words)).collect::<Vec<_>>(),
        "plugged": summary.groups.iter().flat_map(|group| group.plugged.clone()).collect::<Vec<_>>(),
        "not_caught": summary.groups.iter().flat_map(|group| group.uncaught.clone()).collect::<Vec<_>>(),
        "limit": {
            "below_percent": percent(limit.below()),
            "above_percent": percent(limit.above()),
            "source": limit.source(),
        },
        "actions": advice.tips.iter().map(|(tip, change)| json!({ "tip": tip, "change": change_word(*change) })).collect::<Vec<_>>(),
        "findings": findings(&verdicts.findings, words),
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
fn next_object(next: &NextCatch, round: &Round, words: &Words) -> Value {
    let system = words.reader().units;
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
            "text": why_next(next, words),
        },
    })
}

fn why_next(next: &NextCatch, words: &Words) -> String {
    let key = if next.open > 0 { "why-settles_open_tips" } else { "why-makes_surer" };
    let told = [
        ("tips", next.tips.len().into()),
        ("open", next.open.to_string().into()),
        ("minutes", words.fixed(next.minutes, 1).into()),
    ];
    words.say(key, &told)
}

/// The mean catch of a group over the usual time, in the unit the cups were read in.
pub fn mean(round: &Round, group: &GroupSummary) -> Option<Amount> {
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

fn lines(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let CatchVerdicts { summary, working, findings, .. } = &outcome.verdicts;
    let group = &summary.groups[0];
    match mean(&outcome.round, group) {
        Some(mean) => answer.main(mean_line(mean, outcome, group, words)),
        None => answer.main(words.label("line-no_tip_runs")),
    }
    table(answer, &outcome.verdicts, words);
    answer.findings(findings, words);
    answer.working.extend(working.clone());
}

/// The mean over the time, with the spread where there is one.
fn mean_line(mean: Amount, outcome: &Outcome, group: &GroupSummary, words: &Words) -> String {
    let told = Args::new()
        .with("mean", Arg::Amount(mean))
        .with("time", Arg::Amount(Amount::new(outcome.round.time, Kind::Time)));
    match group.cv_percent {
        Some(cv) => {
            let spread = Arg::Text(format!("{} %", words.fixed(cv, 1)));
            words.say_with("line-mean_spread", &told.with("spread", spread))
        }
        None => words.say_with("line-mean", &told),
    }
}

/// The tips one below the other: how far off the mean, the range, the verdict.
fn table(answer: &mut Answer, verdicts: &CatchVerdicts, words: &Words) {
    let heads = ["line-tip", "line-off_the_mean", "line-most_likely"].map(|key| words.label(key));
    let wide = |place: usize, least: usize| heads[place].chars().count().max(least);
    // As wide as the longest of head and figures: "120", "+9.96 %", "−14 to −8 %".
    let (first, second, third) = (wide(0, 3), wide(1, 12), wide(2, 15));
    let row = |cells: [&str; 4]| {
        let [tip, off, likely, word] = cells;
        format!("  {tip:>first$}    {off:>second$}    {likely:>third$}    {word}")
    };
    answer.verbatim(row([&heads[0], &heads[1], &heads[2], &words.label("line-verdict")]));
    for tip in &verdicts.summary.tips {
        let word = match tip.state {
            TipState::Plugged => words.label("line-plugged"),
            TipState::NotCaught => words.label("line-not_caught"),
            TipState::Runs => tip.verdict.map_or(String::new(), |verdict| words.arg(&Arg::Verdict(verdict))),
        };
        let (off, likely) = match (tip.measured, tip.most_likely()) {
            (Some(range), Some(likely)) => {
                let ends =
                    [likely.low, likely.high].map(|end| format!("{:+.0}", 100.0 * end).replace('-', "−"));
                let [low, high] = ends.map(Into::into);
                let range_text = words.say("range", &[("low", low), ("high", high)]);
                let limit = 100.0 * verdicts.limit.above();
                (words.deviation(100.0 * range.deviation, Some(limit)), format!("{range_text} %"))
            }
            _ => (String::new(), String::new()),
        };
        let text = row([&tip.number.to_string(), &off, &likely, &word]);
        match tip.verdict {
            Some(Verdict::Outside) => answer.act(text),
            _ => answer.verbatim(text),
        }
    }
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
