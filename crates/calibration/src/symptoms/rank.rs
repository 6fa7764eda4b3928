//! Causes, the likeliest first.

use super::check::Check;
use super::next::{NextStep, next};
use super::signs::{Outcome, Seen, Signs, SignsError};
use super::symptom::Symptom;
use super::tables::{brings, says_yes, trouble_row};
use super::trouble::Trouble;

/// A cause with its chance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Likely {
    /// The cause.
    pub trouble: Trouble,
    /// Its chance, from 0 to 1; those of all causes add to 1.
    pub chance: f64,
}

/// Causes, the likeliest first, and what to do next.
#[derive(Clone, Debug, PartialEq)]
pub struct Ranked {
    /// Every cause that this sprayer can have.
    pub causes: Vec<Likely>,
    /// The next check, or why there is none.
    pub next: NextStep,
}

/// A cause at least this likely settles the question. Our own choice: the first thing mended is then the right
/// one some six times in seven.
pub const SETTLED: f64 = 0.85;

/// Returns the causes of what is seen, the likeliest first, and the next check.
///
/// *Units*: chances are shares of 1.
///
/// *Assumptions*: one cause brings all that is seen, or it is [`Trouble::Other`]; symptoms and checks speak independently
/// given the cause; how often in coarse grades. What nobody said of the sprayer rules nothing out.
///
/// *Errors*: nothing seen; one thing answered in two ways; what this kind of sprayer cannot have.
///
/// *Source*: Bayes' rule over a table of common practice (each row has its source).
pub fn ranked(signs: &Signs) -> Result<Ranked, SignsError> {
    signs.check()?;
    let chances = chances(signs);
    let mut causes: Vec<Likely> =
        chances.iter().map(|(trouble, chance)| Likely { trouble: *trouble, chance: *chance }).collect();
    // Sorting keeps the table's order among equals.
    causes.sort_by(|one, other| other.chance.total_cmp(&one.chance));
    Ok(Ranked { causes, next: next(signs, &chances) })
}

/// The chance of each cause that this sprayer can have, in the table's order. Everything is taken in the table's order, so
/// that the order of the answers does not matter, to the last digit.
pub(super) fn chances(signs: &Signs) -> Vec<(Trouble, f64)> {
    let weight = |trouble: Trouble| {
        let mut weight = trouble_row(trouble).common.share();
        for symptom in Symptom::ALL {
            match signs.of_symptom(*symptom) {
                Some(Seen::Present) => weight *= brings(trouble, *symptom).share(),
                Some(Seen::Absent) => weight *= 1.0 - brings(trouble, *symptom).share(),
                None => {}
            }
        }
        for check in Check::ALL {
            // What was seen already speaks once.
            if check.said_by().is_some_and(|symptom| signs.of_symptom(symptom).is_some()) {
                continue;
            }
            match signs.of_check(*check) {
                Some(Outcome::Yes) => weight *= says_yes(*check, trouble).share(),
                Some(Outcome::No) => weight *= 1.0 - says_yes(*check, trouble).share(),
                Some(Outcome::Skipped) | None => {}
            }
        }
        weight
    };
    let mut all: Vec<(Trouble, f64)> = Trouble::ALL
        .iter()
        .filter(|trouble| trouble_row(**trouble).fits.on(&signs.pumping))
        .map(|trouble| (*trouble, weight(*trouble)))
        .collect();
    let sum: f64 = all.iter().map(|(_, weight)| weight).sum();
    all.iter_mut().for_each(|(_, weight)| *weight /= sum);
    all
}
