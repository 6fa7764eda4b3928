//! Spacing of the tips: how far each gap is off, and the fewest tips to move so that none is off too far.
//!
//! Tip 1 is the leftmost as the driver sits, and so is gap 1, between tips 1 and 2. Marks read off one stretched
//! tape are the better reading: each is off by half a step at most however long the boom is, while the small
//! errors of gaps measured one by one add up along it.

mod check;
mod error;
mod findings;
mod limit;
mod moves;
mod plan;

pub use check::{GapResult, Measured, Spacing, SpacingReadings, check_spacing};
pub use error::SpacingError;
pub use limit::{GAP_LIMIT, GapLimit};
pub use moves::{Move, Side, Unmendable};

/// The most tips taken. Our own limit, far beyond any boom: more is a file gone wrong.
pub const MOST_TIPS: usize = 1000;
