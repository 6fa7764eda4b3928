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

/// What speaks for a cause: their product over that of all causes is its chance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Weighed {
    /// How common it is.
    pub common: f64,
    /// How often it brings what is seen, and not what is not.
    pub seen: f64,
    /// How often the checks are answered so.
    pub checked: f64,
}

impl Weighed {
    /// Everything is taken in the table's order, so that the order of the answers does not matter, to the last digit.
    pub fn of(signs: &Signs, trouble: Trouble) -> Self {
        let mut weighed = Self { common: trouble_row(trouble).common.share(), seen: 1.0, checked: 1.0 };
        for symptom in Symptom::ALL {
            match signs.of_symptom(*symptom) {
                Some(Seen::Present) => weighed.seen *= brings(trouble, *symptom).share(),
                Some(Seen::Absent) => weighed.seen *= 1.0 - brings(trouble, *symptom).share(),
                None => {}
            }
        }
        for check in Check::ALL {
            // What was seen already speaks once.
            if check.said_by().is_some_and(|symptom| signs.of_symptom(symptom).is_some()) {
                continue;
            }
            match signs.of_check(*check) {
                Some(Outcome::Yes) => weighed.checked *= says_yes(*check, trouble).share(),
                Some(Outcome::No) => weighed.checked *= 1.0 - says_yes(*check, trouble).share(),
                Some(Outcome::Skipped) | None => {}
            }
        }
        weighed
    }

    /// All of it together.
    pub const fn whole(&self) -> f64 {
        self.common * self.seen * self.checked
    }
}

/// The causes that this sprayer can have, in the table's order.
pub(super) fn possible(signs: &Signs) -> impl Iterator<Item = Trouble> {
    Trouble::ALL.iter().copied().filter(|trouble| trouble_row(*trouble).fits.on(&signs.pumping))
}

/// The chance of each cause that this sprayer can have, in the table's order.
fn chances(signs: &Signs) -> Vec<(Trouble, f64)> {
    let mut all: Vec<(Trouble, f64)> =
        possible(signs).map(|trouble| (trouble, Weighed::of(signs, trouble).whole())).collect();
    let sum: f64 = all.iter().map(|(_, weight)| weight).sum();
    all.iter_mut().for_each(|(_, weight)| *weight /= sum);
    all
}
