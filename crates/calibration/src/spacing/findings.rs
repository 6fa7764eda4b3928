//! What the spacing has to say, in a neighbour's words.

use super::check::{GapResult, Measured, Spacing, SpacingReadings};
use super::moves::{Move, SLACK, SMALLEST_MOVE, Side};
use units::{Amount, Arg, Finding, Kind, Length, Quantity, Verdict, Weight};

/// The finest step asked for of a tape: a millimetre. Our own choice.
const FINEST_STEP: Length = Length::metres(0.001);

/// All findings, the most pressing first.
pub(super) fn findings(readings: &SpacingReadings, spacing: &Spacing) -> Vec<Finding> {
    let mut findings = Vec::new();
    findings.extend(outside(spacing));
    if spacing.moves.len() > 1 {
        // One move is told with the gaps it mends; of several, each by itself and only there.
        findings.extend(spacing.moves.iter().map(Move::finding));
    }
    findings.extend(unmendable(spacing));
    findings.extend(cannot_tell(readings, spacing));
    findings.extend(intended_doubtful(spacing));
    findings.extend(too_small(spacing));
    findings.extend(even(spacing));
    findings.extend(gaps_add_up(readings));
    findings
}

/// The gap that is furthest off; the first of those that are so to the micrometre.
pub(super) fn worst(gaps: &[GapResult]) -> Option<&GapResult> {
    gaps.iter().reduce(
        |worst, gap| {
            if gap.error.value.abs() > worst.error.value.abs() + SLACK { gap } else { worst }
        },
    )
}

fn width(length: Length) -> Arg {
    Arg::Amount(Amount::new(length, Kind::Width))
}

fn numbers(spacing: &Spacing, verdict: Verdict) -> Vec<u32> {
    spacing.gaps.iter().filter(|gap| gap.verdict == verdict).map(|gap| gap.number).collect()
}

fn outside(spacing: &Spacing) -> Option<Finding> {
    let outside = numbers(spacing, Verdict::Outside);
    let worst = worst(&spacing.gaps)?;
    let finding = match outside.len() {
        0 => return None,
        1 => Finding::new(
            Weight::Act,
            "spacing_gap_outside",
            "Gap {gaps} is {size} instead of {intended}, more than {limit} off.",
        ),
        _ => Finding::new(
            Weight::Act,
            "spacing_gaps_outside",
            "Gaps {gaps} are more than {limit} off {intended}. The worst is gap {worst}: {size}.",
        ),
    };
    let finding = finding
        .with("gaps", Arg::Tips(outside))
        .with("limit", Arg::Percent(spacing.limit.share() * 100.0))
        .with("intended", width(spacing.intended))
        .with("worst", Arg::Count(worst.number))
        .with("size", width(worst.size))
        .with("tips", Arg::Tips(spacing.moves.iter().map(|one| one.tip).collect()))
        .about(Amount::new(worst.size, Kind::Width))
        .judged(Verdict::Outside, spacing.limit.source());
    Some(match spacing.moves.as_slice() {
        [] => finding,
        [one] => {
            let finding = finding.with("distance", width(one.distance));
            match one.direction {
                Side::Left => {
                    finding.case("left").to_do("Move tip {tips} to the left by {distance}, as you sit.")
                }
                Side::Right => {
                    finding.case("right").to_do("Move tip {tips} to the right by {distance}, as you sit.")
                }
            }
        }
        _ => finding,
    })
}

fn unmendable(spacing: &Spacing) -> Vec<Finding> {
    let one = |gap: &super::Unmendable| {
        Finding::new(
            Weight::Act,
            "spacing_unmendable",
            "Moving tips cannot mend gap {gap}: tips {left} and {right} cannot move, so it stays at {size}.",
        )
        .with("gap", Arg::Count(gap.gap))
        .with("left", Arg::Count(gap.left))
        .with("right", Arg::Count(gap.right))
        .with("size", width(gap.size))
        .to_do("See whether tip {left} or {right} can be moved after all.")
    };
    spacing.unmendable.iter().map(one).collect()
}

fn cannot_tell(readings: &SpacingReadings, spacing: &Spacing) -> Option<Finding> {
    let open = numbers(spacing, Verdict::CannotTell);
    let (step, first) = (readings.step?, open.first()?);
    let limit = spacing.intended * spacing.limit.share();
    // The marks settle a gap when what they leave open is less than its distance from the limit.
    let margins = spacing.gaps.iter().filter(|gap| open.contains(&gap.number));
    let margin = margins
        .map(|gap| (gap.error.value.abs() - limit).abs())
        .reduce(Length::min)
        .map(|margin| margin * step.ratio_to(readings.either_way()))?;
    let finding = if readings.either_way() > limit {
        Finding::new(
            Weight::Settle,
            "spacing_step_too_coarse",
            "Marks every {step} are too coarse to judge a spacing of {intended} to {limit}.",
        )
    } else if open.len() == 1 {
        Finding::new(
            Weight::Settle,
            "spacing_gap_open",
            "Gap {first} is so near the limit that marks every {step} do not settle it.",
        )
    } else {
        Finding::new(
            Weight::Settle,
            "spacing_gaps_open",
            "Gaps {gaps} are so near the limit that marks every {step} do not settle them.",
        )
    };
    Some(
        finding
            .with("first", Arg::Count(*first))
            .with("gaps", Arg::Tips(open.clone()))
            .with("step", width(step))
            .with("intended", width(spacing.intended))
            .with("limit", Arg::Percent(spacing.limit.share() * 100.0))
            .with("finer", width(margin.max(FINEST_STEP)))
            .judged(Verdict::CannotTell, spacing.limit.source())
            .to_do("Read the tape again, to {finer} or finer."),
    )
}

/// When even the middle one of all gaps is off, it is rather the intended spacing that is wrong.
fn intended_doubtful(spacing: &Spacing) -> Option<Finding> {
    let mut sizes: Vec<Length> = spacing.gaps.iter().map(|gap| gap.size).collect();
    sizes.sort_by(|one, other| one.si().total_cmp(&other.si()));
    let middle = *sizes.get(sizes.len() / 2)?;
    let limit = spacing.intended * spacing.limit.share();
    // One or two gaps do not say what the boom was meant to have.
    if sizes.len() < 3 || (middle - spacing.intended).abs() <= limit {
        return None;
    }
    Some(
        Finding::new(
            Weight::Doubt,
            "spacing_intended_doubtful",
            "Most gaps are nearer {middle} than {intended}. Is {intended} right?",
        )
        .with("middle", width(middle))
        .with("intended", width(spacing.intended))
        .to_do("If the boom is meant to have {middle}, give that as the spacing before you move anything."),
    )
}

fn too_small(spacing: &Spacing) -> Option<Finding> {
    if spacing.too_small.is_empty() {
        return None;
    }
    let tips = spacing.too_small.iter().map(|one| one.tip).collect();
    Some(
        Finding::new(
            Weight::Note,
            "spacing_move_too_small",
            "By the letter these tips should move too, but by less than {smallest}, so leave them: {tips}.",
        )
        .with("tips", Arg::Tips(tips))
        .with("smallest", width(SMALLEST_MOVE)),
    )
}

fn even(spacing: &Spacing) -> Option<Finding> {
    let worst = worst(&spacing.gaps)?;
    let alike = spacing.gaps.iter().all(|gap| (gap.size - worst.size).abs() <= SLACK);
    let as_meant = worst.error.value.abs() <= SLACK;
    let (case, english) = match (alike, as_meant) {
        (true, true) => ("as_meant", "Every gap is {size}."),
        (true, false) => ("alike", "Every gap is {size}, within {limit} of {intended}."),
        (false, _) => {
            ("within", "Every gap is within {limit} of {intended}; the worst, gap {worst}, is {size}.")
        }
    };
    (spacing.verdict == Verdict::Within).then(|| {
        Finding::new(Weight::Note, "spacing_even", english)
            .case(case)
            .with("limit", Arg::Percent(spacing.limit.share() * 100.0))
            .with("intended", width(spacing.intended))
            .with("worst", Arg::Count(worst.number))
            .with("size", width(worst.size))
            .judged(Verdict::Within, spacing.limit.source())
    })
}

fn gaps_add_up(readings: &SpacingReadings) -> Option<Finding> {
    match &readings.measured {
        Measured::Gaps(gaps) if gaps.len() > 2 => Some(
            Finding::new(
                Weight::Note,
                "spacing_gaps_add_up",
                "Small errors of gaps measured one by one add up along the boom.",
            )
            .to_do("Next time stretch one tape along the boom and read the mark of every tip."),
        ),
        _ => None,
    }
}
