//! How evenly the ground gets it across the boom: judged, told, and what would help most.
//!
//! A catch test and a pattern see different faults. Flows average out where fans overlap, so that a worn tip hardly shows
//! here; height, aim, places and plugged tips do, and no cup shows those.

mod across;
mod help;
mod tell;

pub use across::{Across, Overlap, across};
pub use help::{Help, Helps};
