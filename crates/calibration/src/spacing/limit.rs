//! How far off a gap may be, with who says so.

use super::error::SpacingError;
use crate::catch::OWN_LIMIT;
use units::{Boundary, Verdict};

/// How far a gap may be off the intended spacing, either way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GapLimit {
    share: f64,
    boundary: Boundary,
    source: &'static str,
}

/// A gap more than 5 % off the nominal spacing is a defect; exactly 5 % is not.
/// Source: French order of 18 December 2008 (NOR AGRP0828914A), annex IV B, 8.3.1.2.
pub const GAP_LIMIT: GapLimit = GapLimit {
    share: 0.05,
    boundary: Boundary::Inclusive,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 8.3.1.2: more than 5 %",
};

/// The largest limit taken. Our own: with gaps half off, tips could stand on one another.
const MOST: f64 = 0.5;

impl GapLimit {
    /// The user's own limit as a share of the spacing (0.05 is 5 %); exactly on it is within.
    ///
    /// *Errors*: a share of nothing, of half or more, or not a number.
    pub fn own(share: f64) -> Result<Self, SpacingError> {
        if share > 0.0 && share < MOST {
            Ok(Self { share, boundary: Boundary::Inclusive, source: OWN_LIMIT })
        } else {
            Err(SpacingError::Limit { given_percent: share * 100.0 })
        }
    }

    /// The share of the spacing.
    #[must_use]
    pub const fn share(&self) -> f64 {
        self.share
    }

    /// Whether exactly on the limit is within.
    #[must_use]
    pub const fn boundary(&self) -> Boundary {
        self.boundary
    }

    /// Who sets it.
    #[must_use]
    pub const fn source(&self) -> &'static str {
        self.source
    }

    /// The verdict on the range of an error as a share of the spacing; both ends the same for a bare reading.
    pub(super) fn verdict(&self, low: f64, high: f64) -> Verdict {
        Verdict::of_range(low, high, self.share, self.share, self.boundary)
    }
}
