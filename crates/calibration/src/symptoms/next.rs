//! The next check: the safest, then the cheapest of those that still tell causes apart; among equals the one that tells
//! most for its minutes.

use super::check::{Check, CheckRow};
use super::rank::SETTLED;
use super::signs::{Seen, Signs};
use super::tables::{check_row, says_yes};
use super::trouble::Trouble;

/// What to do next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NextStep {
    /// This check.
    Check(Check),
    /// Nothing: one cause is likely enough. Mend it and look again.
    Settled,
    /// Nothing a person can do at the sprayer tells the causes apart any more: a sprayer mechanic or the dealer.
    NothingMore,
}

/// A check that tells less than this is not worth making, in natural units of information.
/// Our own choice: with ln 2 = 0.69 for a question that settles an even chance, this is a fourteenth of one.
pub const TELLS_FROM: f64 = 0.05;

/// Causes less likely than this are no longer in play: no check is made for their sake. Our own choice.
pub const IN_PLAY: f64 = 0.05;

/// The causes in play, their chances adding to 1.
#[must_use]
pub fn in_play(chances: &[(Trouble, f64)]) -> Vec<(Trouble, f64)> {
    let mut left: Vec<(Trouble, f64)> =
        chances.iter().copied().filter(|(_, chance)| *chance >= IN_PLAY).collect();
    let sum: f64 = left.iter().map(|(_, chance)| chance).sum();
    left.iter_mut().for_each(|(_, chance)| *chance /= sum);
    left
}

pub(super) fn next(signs: &Signs, chances: &[(Trouble, f64)]) -> NextStep {
    let likeliest = chances.iter().map(|(_, chance)| *chance).fold(0.0, f64::max);
    let chances = &in_play(chances);
    if likeliest >= SETTLED || chances.len() == 1 {
        return NextStep::Settled;
    }
    let open = |row: &CheckRow| {
        row.fits.on(&signs.pumping)
            && signs.of_check(row.check).is_none()
            && row.only_with.is_none_or(|symptom| signs.of_symptom(symptom) == Some(Seen::Present))
            && row.check.said_by().is_none_or(|symptom| signs.of_symptom(symptom).is_none())
            && tells(chances, row.check) >= TELLS_FROM
    };
    let mut worth: Vec<&CheckRow> =
        Check::ALL.iter().map(|check| check_row(*check)).filter(|row| open(row)).collect();
    let for_its_minutes = |row: &CheckRow| tells(chances, row.check) / row.minutes;
    worth.sort_by(|one, other| {
        (one.risk, one.costs)
            .cmp(&(other.risk, other.costs))
            .then(for_its_minutes(other).total_cmp(&for_its_minutes(one)))
    });
    worth.first().map_or(NextStep::NothingMore, |row| NextStep::Check(row.check))
}

/// Returns what a check tells about which cause it is, on average.
///
/// *Units*: natural units of information (nats), from 0.
///
/// *Source*: C. E. Shannon, "A Mathematical Theory of Communication", 1948: the mutual information of answer and cause.
///
/// *Example*: two causes alike likely, of which one always says yes and one never: ln 2 = 0.69.
#[must_use]
pub fn tells(chances: &[(Trouble, f64)], check: Check) -> f64 {
    let yes: f64 = chances.iter().map(|(trouble, chance)| chance * says_yes(check, *trouble).share()).sum();
    let told: f64 =
        chances.iter().map(|(trouble, chance)| chance * doubt(says_yes(check, *trouble).share())).sum();
    (doubt(yes) - told).max(0.0)
}

/// The doubt of a question answered with yes at a chance.
fn doubt(yes: f64) -> f64 {
    let part = |chance: f64| if chance > 0.0 { -chance * libm::log(chance) } else { 0.0 };
    part(yes) + part(1.0 - yes)
}
