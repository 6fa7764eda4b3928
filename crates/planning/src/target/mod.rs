//! The target: what the label asks for and what was meant, held against what the sprayer really puts out.

mod error;
mod findings;
mod judge;
mod limits;
mod put_down;

pub use error::TargetError;
pub use judge::{Deviation, Judged, judge};
pub use limits::{ProductTarget, RateLimit, Target};
pub use put_down::{PutDown, put_down};
