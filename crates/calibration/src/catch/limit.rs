//! A limit on how far a tip may be off, with who sets it and on which side the limit itself lies.

use units::{Boundary, Verdict};

use super::error::{CatchError, ShareOf};

/// Who sets a limit that the user gave.
pub(crate) const OWN_LIMIT: &str = "the user's own limit";

/// What a tip is held against.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Against {
    /// The mean of the tips that run.
    Mean,
    /// A new tip's flow at the pressure.
    New,
}

/// How far off a tip may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    below: f64,
    above: f64,
    boundary: Boundary,
    against: Against,
    source: &'static str,
}

impl Limit {
    /// A limit of shares below and above (0.1 is 10 %); an open side is [`f64::INFINITY`].
    #[must_use]
    pub const fn new(
        below: f64,
        above: f64,
        boundary: Boundary,
        against: Against,
        source: &'static str,
    ) -> Self {
        Self { below, above, boundary, against, source }
    }

    /// The user's own limit, the same either way, from the mean of the tips that run; exactly on it is within.
    ///
    /// *Errors*: a share of nothing, of more than 1 or not a number.
    pub fn own(share: f64) -> Result<Self, CatchError> {
        if share > 0.0 && share <= 1.0 {
            Ok(Self::new(share, share, Boundary::Inclusive, Against::Mean, OWN_LIMIT))
        } else {
            let given = format!("{} %", units::tidy_digits(share * 100.0));
            Err(CatchError::Share { of: ShareOf::Limit, given })
        }
    }

    /// The share allowed below.
    #[must_use]
    pub const fn below(&self) -> f64 {
        self.below
    }

    /// The share allowed above.
    #[must_use]
    pub const fn above(&self) -> f64 {
        self.above
    }

    /// Whether exactly on the limit is within.
    #[must_use]
    pub const fn boundary(&self) -> Boundary {
        self.boundary
    }

    /// What a tip is held against.
    #[must_use]
    pub const fn against(&self) -> Against {
        self.against
    }

    /// Who sets it.
    #[must_use]
    pub const fn source(&self) -> &'static str {
        self.source
    }

    /// The plain rule on a deviation as it reads: within or outside, nothing between.
    #[must_use]
    pub fn as_read(&self, deviation: f64) -> Verdict {
        if self.boundary.holds(deviation, -self.below, self.above) {
            Verdict::Within
        } else {
            Verdict::Outside
        }
    }
}
