//! Patterns over the boom: a section, all of it, one side, the ends, the order of the cups.

use units::{Arg, Finding, Weight};

use super::answer::{Diagnosis, SectionDiagnosis, TipDiagnosis};
use super::chance::told;
use super::tell_tip::LIKELY;

/// A boom off by less than this as a whole is not told (a share). Our own choice: a good gauge is no better.
const BOOM_OFF: f64 = 0.04;
/// A side or the ends off by less than this is not told. Our own choice: the same as a restricted section.
const SIDE_OFF: f64 = 0.04;
/// So many standard errors apart is told. Our own choice: one boom in 700 by chance.
const APART: f64 = 3.2;
/// So many tips at least have sides and ends. Our own choice.
const FEW: usize = 8;
/// A drift of less is not told. Our own choice.
const DRIFT: f64 = 0.01;

/// The boom was not switched on.
pub(super) fn off(found: &Diagnosis) -> Option<Finding> {
    found.boom.is_off().then(|| {
        Finding::new(
            Weight::Act,
            "boom_is_off",
            "Nothing comes out anywhere: most likely the pump or the boom valve is off ({chance}).",
        )
        .with("chance", told(found.boom.probability_off))
        .to_do("Look at the pump, the tank valve and the boom valve, then catch again.")
    })
}

/// Sections that are shut or lose flow.
pub(super) fn sections(found: &Diagnosis) -> Vec<Finding> {
    let of = |(place, section): (usize, &SectionDiagnosis)| {
        let number = Arg::Count(u32::try_from(place + 1).unwrap_or(u32::MAX));
        if section.probability_shut >= LIKELY {
            return Some(
                Finding::new(
                    Weight::Act,
                    "section_shut",
                    "Nothing comes out of section {section} (tips {tips}): most likely its valve is shut or its strainer blocked ({chance}).",
                )
                .with("section", number)
                .with("tips", Arg::Tips(section.tips.clone()))
                .with("chance", told(section.probability_shut))
                .to_do(STRAINER),
            );
        }
        (section.probability_restricted >= LIKELY).then(|| {
            Finding::new(
                Weight::Act,
                "section_restricted",
                "Section {section} (tips {tips}) most likely gives {loss} less than the best-fed section ({low} to {high}). Chance that it is restricted: {chance}.",
            )
            .with("section", number)
            .with("tips", Arg::Tips(section.tips.clone()))
            .with("loss", Arg::Off { percent: 100.0 * section.loss, limit: None })
            .with("low", Arg::Off { percent: 100.0 * section.low, limit: None })
            .with("high", Arg::Off { percent: 100.0 * section.high, limit: None })
            .with("chance", told(section.probability_restricted))
            .to_do(STRAINER)
        })
    };
    found.sections.iter().enumerate().filter_map(of).collect()
}

/// How a strainer is opened safely.
const STRAINER: &str = "Pressure off, tank valve shut, gloves on: then open the section's strainer and clean it with a soft \
                        brush or air, never the mouth. Look at its valve and hose too.";

/// All tips high or all low.
pub(super) fn whole(found: &Diagnosis) -> Option<Finding> {
    found.new_flow?;
    let boom = &found.boom;
    let (code, says) = if boom.low > BOOM_OFF {
        (
            "boom_all_high",
            "All tips give more than new ones would at this pressure, by {off} ({low} to {high}): the gauge reads low, the set is worn alike, or larger tips are fitted. Cups alone cannot tell which.",
        )
    } else if boom.high < -BOOM_OFF {
        (
            "boom_all_low",
            "All tips give less than new ones would at this pressure, by {off} ({low} to {high}): the gauge reads high, pressure is lost on the way to the boom, or smaller tips are fitted. Cups alone cannot tell which.",
        )
    } else {
        return None;
    };
    // Without its sign the nearer end comes first.
    let (near, far) = if boom.offset > 0.0 { (boom.low, boom.high) } else { (boom.high, boom.low) };
    let share = |share: f64| Arg::Off { percent: 100.0 * share, limit: None };
    Some(
        Finding::new(Weight::Act, code, says)
            .with("off", share(boom.offset))
            .with("low", share(near))
            .with("high", share(far))
            .to_do("Read the pressure at a tip with a gauge you trust, and look at the size printed on the tips."),
    )
}

/// The flow fell or rose in the order of the cups.
pub(super) fn drift(found: &Diagnosis) -> Option<Finding> {
    let (drift, spread) = found.boom.drift?;
    if drift.abs() < DRIFT || drift.abs() < 2.0 * spread {
        return None;
    }
    let (case, says, does) = if drift < 0.0 {
        (
            "fell",
            "The flow most likely fell by {by} from the first cup to the last: in the order of the cups, not along the boom.",
            "Look at what holds the pressure: a battery running down, a demand switch that cuts in and out, a regulator that is not steady, a strainer filling up. Then catch the first tips again.",
        )
    } else {
        (
            "rose",
            "The flow most likely rose by {by} from the first cup to the last: in the order of the cups, not along the boom.",
            "Let it run until the pressure is steady; look at the regulator and the engine speed. Then catch the first tips again.",
        )
    };
    Some(
        Finding::new(Weight::Doubt, "flow_drifts", says)
            .case(case)
            .with("by", Arg::Off { percent: 100.0 * drift, limit: None })
            .to_do(does),
    )
}

/// One side or both ends lower than the rest.
pub(super) fn sides(found: &Diagnosis) -> Option<Finding> {
    let running: Vec<f64> =
        found.tips.iter().filter(|tip| !tip.misread.is_empty()).filter_map(off_of).collect();
    if running.len() < FEW || found.sections.iter().any(|section| section.probability_restricted >= LIKELY) {
        return None;
    }
    let half = running.len() / 2;
    let quarter = running.len() / 4;
    let (left, right) = (&running[..half], &running[running.len() - half..]);
    let middle = &running[quarter..running.len() - quarter];
    let ends = [&running[..quarter], &running[running.len() - quarter..]];
    let (by, error) = apart(left, right);
    if by.abs() > SIDE_OFF && by.abs() > APART * error {
        let (case, says) = if by < 0.0 {
            ("left", "The left half gives {by} less than the right half.")
        } else {
            ("right", "The right half gives {by} less than the left half.")
        };
        return Some(
            Finding::new(Weight::Act, "boom_one_side", says)
                .case(case)
                .with("by", Arg::Off { percent: -100.0 * libm::expm1(-by.abs()), limit: None })
                .to_do("Look for a kinked hose, a half-shut valve and a dirty strainer on that side; read the pressure at a tip on each side."),
        );
    }
    let tapers = ends.iter().all(|end| {
        let (by, error) = apart(end, middle);
        by < -SIDE_OFF && by.abs() > APART * error
    });
    tapers.then(|| {
        let by = ends.iter().map(|end| apart(end, middle).0).sum::<f64>() / 2.0;
        Finding::new(
            Weight::Act,
            "boom_tapers",
            "Both ends of the boom give less than its middle, by {by}.",
        )
        .with("by", Arg::Off { percent: -100.0 * libm::expm1(by), limit: None })
        .to_do("The boom hose is small for this flow, or its lining has come loose: read the pressure at an end tip and at a middle one.")
    })
}

fn off_of(tip: &TipDiagnosis) -> Option<f64> {
    tip.read
}

/// How far two rows of tips are apart in the middle, and its standard error; single odd tips do not count.
fn apart(one: &[f64], other: &[f64]) -> (f64, f64) {
    let middle = |values: &[f64]| {
        let mut sorted = values.to_vec();
        sorted.sort_by(f64::total_cmp);
        let at = |place: usize| sorted.get(place).copied().unwrap_or(0.0);
        f64::midpoint(at(sorted.len().saturating_sub(1) / 2), at(sorted.len() / 2))
    };
    let error = |values: &[f64]| {
        let centre = middle(values);
        let off: Vec<f64> = values.iter().map(|value| (value - centre).abs()).collect();
        // Half of a normal law lies within 0.6745 spreads, and a median is 1.2533 times as unsure as a mean (NIST/SEMATECH
        // e-Handbook of Statistical Methods, 1.3.5).
        let spread = (middle(&off) / 0.6745).max(SMALLEST_SPREAD);
        1.2533 * spread / (values.len().max(1) as f64).sqrt()
    };
    let errors = [error(one), error(other)];
    (middle(one) - middle(other), (errors[0] * errors[0] + errors[1] * errors[1]).sqrt())
}

/// Tips are never taken to be more alike than this: coarse marks make them look so. Our own choice: new tips spread by 1 %.
const SMALLEST_SPREAD: f64 = 0.01;
