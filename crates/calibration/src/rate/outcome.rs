//! What every method answers, and how it is put together.

use super::findings::large_doubt;
use super::method::{Method, WidthKind};
use crate::doubt::{Budget, Known};
use units::{Amount, Arg, Finding, Kind, Ranged, VolumePerArea, Working};

/// A rate with its range, how it was reached, and what is worth telling.
#[derive(Clone, Debug, PartialEq)]
pub struct Rate {
    /// The rate with its 95 % range.
    pub rate: Ranged<VolumePerArea>,
    /// The doubts that make the range.
    pub doubt: Budget,
    /// How it was reached.
    pub method: Method,
    /// Which width it was worked with; [`WidthKind::why`] says why that one.
    pub width: WidthKind,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// The working, with that of the doubt as a step.
    pub working: Working,
}

impl Rate {
    /// Puts a rate together; `working` has its figures already.
    pub(super) fn new(
        known: Known<VolumePerArea>,
        method: Method,
        width: WidthKind,
        working: Working,
        mut findings: Vec<Finding>,
    ) -> Self {
        findings.extend(large_doubt(&known));
        let rate = known.ranged();
        let working = working
            .figure("which width", width.why_word())
            .result(Arg::Amount(Amount::ranged(&rate, Kind::Rate)))
            .step(known.doubt.working());
        Self { rate, doubt: known.doubt, method, width, findings, working }
    }

    /// The rate with its doubts, for working on.
    #[must_use]
    pub fn known(&self) -> Known<VolumePerArea> {
        Known::of(self.rate.value, self.doubt.clone())
    }
}
