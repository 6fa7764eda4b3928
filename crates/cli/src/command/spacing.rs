//! `evenswath spacing`: whether the tips stand evenly, and the fewest to move.

use calibration::spacing::{GapLimit, Measured, Side, Spacing, SpacingError, SpacingReadings, check_spacing};
use serde_json::{Value, json};
use units::{Amount, Kind, Length, UnitSystem, Verdict, percent_text};

use super::input::{known, maybe, positive, quantity};
use crate::args::SpacingArgs;
use crate::error::CliError;
use crate::out::{self, Answer, findings, number, working};

/// Works it out.
pub fn run(args: &SpacingArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let lengths = |option: &str, texts: &[String]| -> Result<Vec<Length>, CliError> {
        (1..).zip(texts).map(|(number, text)| quantity(&format!("{option} {number}"), text)).collect()
    };
    let measured = if args.marks.is_empty() {
        Measured::Gaps(lengths("gap", &args.gaps)?)
    } else {
        Measured::Marks(lengths("mark", &args.marks)?)
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
    let mut answer = Answer::of(object(&spacing, system));
    lines(&mut answer, &spacing, system);
    answer.outside = spacing.verdict == Verdict::Outside;
    Ok(answer)
}

/// The JSON object of a spacing check, for the visit as well.
pub fn object(spacing: &Spacing, system: UnitSystem) -> Value {
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
        "findings": findings(&spacing.findings, system),
        "working": working(&spacing.working, system),
    })
}

fn side(side: Side) -> &'static str {
    match side {
        Side::Left => "left",
        Side::Right => "right",
    }
}

fn lines(answer: &mut Answer, spacing: &Spacing, system: UnitSystem) {
    let off = spacing.gaps.iter().filter(|gap| gap.verdict == Verdict::Outside).count();
    answer.main(match (spacing.verdict, off) {
        (Verdict::Within, _) => format!("all {} gaps are within the limit", spacing.gaps.len()),
        (Verdict::Outside, 1) => format!("1 of {} gaps is off", spacing.gaps.len()),
        (Verdict::Outside, off) => format!("{off} of {} gaps are off", spacing.gaps.len()),
        (Verdict::CannotTell, _) => "the tape's marks do not settle it".to_string(),
    });
    for gap in &spacing.gaps {
        if gap.verdict == Verdict::Within {
            continue;
        }
        answer.plain(format!(
            "  gap {} (tips {} and {}): {}, {} off: {}",
            gap.number,
            gap.number,
            gap.number + 1,
            Amount::new(gap.size, Kind::Width).text(system),
            percent_text(gap.error_percent, Some(100.0 * spacing.limit.share())),
            gap.verdict.word().replace('_', " "),
        ));
    }
    answer.findings(&spacing.findings, system);
    answer.why(spacing.working.clone());
}
