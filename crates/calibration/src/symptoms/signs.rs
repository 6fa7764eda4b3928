//! What is known so far: what is seen, the kind of sprayer, the checks made.

use units::{Arg, Args, Coded};

use super::check::Check;
use super::pumping::Pumping;
use super::symptom::Symptom;
use super::tables::check_row;

/// Whether a symptom is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// It is.
    Present,
    /// It was looked for and is not.
    Absent,
}

/// What became of a check.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Its question is answered with yes.
    Yes,
    /// With no.
    No,
    /// It was not made and is not wanted.
    Skipped,
}

/// What is known so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Signs {
    /// What is seen, and what is not.
    pub seen: Vec<(Symptom, Seen)>,
    /// The kind of sprayer.
    pub pumping: Pumping,
    /// The checks made so far, in any order.
    pub checked: Vec<(Check, Outcome)>,
}

/// Why nothing can be said.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SignsError {
    /// Nothing is seen.
    #[error("no symptom is given, so there is nothing to go by")]
    NothingSeen,
    /// A symptom both seen and not seen, or a check answered twice in two ways.
    #[error("\"{given}\" is answered in two ways")]
    TwoAnswers {
        /// Its word.
        given: &'static str,
    },
    /// A symptom or check that this kind of sprayer cannot have.
    #[error("\"{given}\" does not belong to this kind of sprayer")]
    OtherSprayer {
        /// Its word.
        given: &'static str,
    },
}

impl Coded for SignsError {
    fn code(&self) -> &'static str {
        match self {
            Self::NothingSeen => "symptom_none",
            Self::TwoAnswers { .. } => "symptom_two_answers",
            Self::OtherSprayer { .. } => "symptom_other_sprayer",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NothingSeen => Args::new(),
            Self::TwoAnswers { given } | Self::OtherSprayer { given } => {
                Args::new().with("given", Arg::Text((*given).to_string()))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NothingSeen => "give at least one symptom that is seen",
            Self::TwoAnswers { .. } => "answer it once",
            Self::OtherSprayer { .. } => "take it out, or put right what the sprayer is",
        };
        Some(hint.to_string())
    }
}

impl Signs {
    /// Whether it can be worked with.
    ///
    /// *Errors*: nothing seen; one thing answered in two ways; what this kind of sprayer cannot have.
    pub(super) fn check(&self) -> Result<(), SignsError> {
        for (symptom, seen) in &self.seen {
            if self.seen.iter().any(|(other, so)| other == symptom && so != seen) {
                return Err(SignsError::TwoAnswers { given: symptom.word() });
            }
            if *seen == Seen::Present && !symptom.fits().on(&self.pumping) {
                return Err(SignsError::OtherSprayer { given: symptom.word() });
            }
        }
        for (check, outcome) in &self.checked {
            if self.checked.iter().any(|(other, so)| other == check && so != outcome) {
                return Err(SignsError::TwoAnswers { given: check.word() });
            }
            if *outcome != Outcome::Skipped && !check_row(*check).fits.on(&self.pumping) {
                return Err(SignsError::OtherSprayer { given: check.word() });
            }
        }
        if self.seen.iter().any(|(_, seen)| *seen == Seen::Present) {
            Ok(())
        } else {
            Err(SignsError::NothingSeen)
        }
    }

    /// Whether a symptom is seen or not, where that was said.
    #[must_use]
    pub fn of_symptom(&self, symptom: Symptom) -> Option<Seen> {
        self.seen.iter().find(|(known, _)| *known == symptom).map(|(_, seen)| *seen)
    }

    /// What became of a check, where it was answered or skipped.
    #[must_use]
    pub fn of_check(&self, check: Check) -> Option<Outcome> {
        self.checked.iter().find(|(known, _)| *known == check).map(|(_, outcome)| *outcome)
    }
}
