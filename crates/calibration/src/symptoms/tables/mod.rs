//! The rows: causes, what each brings, checks and what each says.

mod brings;
mod checks;
mod troubles;

use super::check::{Check, CheckRow};
use super::grade::Grade;
use super::symptom::Symptom;
use super::trouble::{Trouble, TroubleRow};

pub use brings::Brings;

/// Every symptom with what brings it; what stands in no row comes next to never.
#[must_use]
pub const fn all_brings() -> &'static [Brings] {
    brings::ROWS
}

/// The row of a cause.
#[must_use]
pub fn trouble_row(trouble: Trouble) -> &'static TroubleRow {
    troubles::ROWS.iter().find(|row| row.trouble == trouble).unwrap_or(&troubles::ROWS[0])
}

/// The row of a check.
#[must_use]
pub fn check_row(check: Check) -> &'static CheckRow {
    checks::ROWS.iter().find(|row| row.check == check).unwrap_or(&checks::ROWS[0])
}

/// How often a cause brings a symptom; what stands in no row, next to never.
#[must_use]
pub fn brings(trouble: Trouble, symptom: Symptom) -> Grade {
    let row = brings::ROWS.iter().find(|row| row.trouble == trouble && row.symptom == symptom);
    row.map_or(if trouble == Trouble::Other { Grade::Sometimes } else { Grade::Never }, |row| row.how)
}

/// How often a check's question is answered with yes when this is the matter.
#[must_use]
pub fn says_yes(check: Check, trouble: Trouble) -> Grade {
    let row = check_row(check);
    let named = row.yes.iter().find(|(known, _)| *known == trouble).map(|(_, grade)| *grade);
    // Something else answers like the causes that a check does not speak of.
    named.unwrap_or(row.otherwise)
}

/// Pairs of causes that no check here parts, though one symptom can come of both.
/// Common practice, from memory: both are seen only with the pump opened, on the bench.
#[must_use]
pub const fn inseparable() -> &'static [(Trouble, Trouble)] {
    &[]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_has_its_row_once() {
        for trouble in Trouble::ALL {
            assert_eq!(troubles::ROWS.iter().filter(|row| row.trouble == *trouble).count(), 1, "{trouble:?}");
        }
        for check in Check::ALL {
            assert_eq!(checks::ROWS.iter().filter(|row| row.check == *check).count(), 1, "{check:?}");
        }
        for (place, row) in brings::ROWS.iter().enumerate() {
            let twice =
                |other: &&brings::Brings| other.trouble == row.trouble && other.symptom == row.symptom;
            assert!(!brings::ROWS[..place].iter().any(|other| twice(&other)), "{row:?}");
        }
    }

    #[test]
    fn every_row_says_who_says_so() {
        assert!(troubles::ROWS.iter().all(|row| row.source.len() > 10));
        assert!(brings::ROWS.iter().all(|row| row.source.len() > 10));
        assert!(checks::ROWS.iter().all(|row| row.source.len() > 10));
    }
}
