//! `evenswath spacing`: whether the tips stand evenly, and the fewest to move.

use calibration::spacing::{GapLimit, Measured, Side, Spacing, SpacingError, SpacingReadings, check_spacing};
use serde_json::{Value, json};
use units::{Amount, Arg, Args, Kind, Length, Verdict};
use words::Words;

use super::input::{known, maybe, positive, quantity};
use crate::args::SpacingArgs;
use crate::error::{CliError, Place};
use crate::out::{self, Answer, findings, number, working};

/// Works it out.
pub fn run(args: &SpacingArgs, words: &Words) -> Result<Answer, CliError> {
    let lengths = |place: fn(u32) -> Place, texts: &[String]| -> Result<Vec<Length>, CliError> {
        (1..).zip(texts).map(|(number, text)| quantity(place(number), text)).collect()
    };
    let measured = if args.marks.is_empty() {
        Measured::Gaps(lengths(Place::Gap, &args.gaps)?)
    } else {
        Measured::Marks(lengths(Place::Mark, &args.marks)?)
    };
    let share = known("--limit", units::percent(&args.limit))?;
    let usual = SpacingReadings::new(positive("--intended", &args.intended)?, measured);
    // The usual 5 % keeps the name of who sets it.
    let limit = if (share - usual.limit.share()).abs() < 1e-12 {
        usual.limit
    } else {
        known("--limit", GapLimit::own(share))?
    };
    let readings = SpacingReadings {
        step: maybe("--step", args.step.as_ref())?,
        fixed: args.fixed.clone(),
        limit,
        ..usual
    };
    let spacing = check_spacing(&readings).map_err(|error| {
        let name = if matches!(error, SpacingError::NoSuchTip { .. }) { "--fixed" } else { "" };
        CliError::input(name, &error)
    })?;
    let mut answer = Answer::of(object(&spacing, words));
    lines(&mut answer, &spacing, words);
    answer.outside = spacing.verdict == Verdict::Outside;
    Ok(answer)
}

/// The JSON object of a spacing check, for the visit as well.
pub fn object(spacing: &Spacing, words: &Words) -> Value {
    let system = words.reader().units;
    let gaps: Vec<Value> = spacing
        .gaps
        .iter()
        .map(|gap| {
            json!({
                "number": gap.number,
                "size": out::quantity(gap.size, Kind::Width, system),
                "error": out::ranged(&gap.error, Kind::Width, system),
                "error_percent": number(gap.error_percent),
                "verdict": gap.verdict.word(),
            })
        })
        .collect();
    let moves: Vec<Value> = spacing
        .moves
        .iter()
        .map(|one| {
            json!({
                "tip": one.tip,
                "direction": side(one.direction),
                "distance": out::quantity(one.distance, Kind::Width, system),
            })
        })
        .collect();
    json!({
        "verdict": spacing.verdict.word(),
        "gaps": gaps,
        "moves": moves,
        "limit": { "percent": out::percent(spacing.limit.share()), "source": spacing.limit.source() },
        "findings": findings(&spacing.findings, words),
        "working": working(&spacing.working, system),
    })
}

fn side(side: Side) -> &'static str {
    match side {
        Side::Left => "left",
        Side::Right => "right",
    }
}

fn lines(answer: &mut Answer, spacing: &Spacing, words: &Words) {
    let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
    let key = match spacing.verdict {
        Verdict::Within => "line-gaps_within",
        Verdict::Outside => "line-gaps_off",
        Verdict::CannotTell => "line-gaps_open",
    };
    answer.main(words.say(key, &[("gaps", spacing.gaps.len().into()), ("off", off.into())]));
    for gap in &spacing.gaps {
        if gap.verdict == Verdict::Within {
            continue;
        }
        let limit = 100.0 * spacing.limit.share();
        let told = Args::new()
            .with("gap", Arg::Count(gap.number))
            .with("next", Arg::Count(gap.number + 1))
            .with("size", Arg::Amount(Amount::new(gap.size, Kind::Width)))
            .with("off", Arg::DeviationFrom { percent: gap.error_percent, limit })
            .with("verdict", Arg::Verdict(gap.verdict));
        answer.plain(format!("  {}", words.say_with("line-gap", &told)));
    }
    answer.findings(&spacing.findings, words);
    answer.why(spacing.working.clone());
}
