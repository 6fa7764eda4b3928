//! The spray pattern: what each strip of ground gets from fans that overlap.
//!
//! A fan's own pattern is assumed, over several shapes, or was measured. What a groove gets is exact for each of them; over
//! the shapes it is a band and never one figure, because how even a boom is hangs on a shape that nobody knows. Each fan's
//! angle falls with the pressure; it is taken as given. The boom stands still over level ground: see [`MOVEMENT_ADDS`].

mod band;
mod boom;
mod error;
mod fan;
mod grooves;
mod heights;
mod limit;
mod measured;
mod shape;
mod tip;

pub use band::{Band, GrooveBand, Pattern, pattern};
pub use boom::SprayBoom;
pub use error::PatternError;
pub use fan::Fan;
pub use grooves::{Evenness, Extreme, Grooves, Judged};
pub use heights::{HeightRange, heights_within};
pub use limit::{MOVEMENT_ADDS, MOVEMENT_SOURCE, PATTERN_LIMIT, PatternLimit};
pub use measured::MeasuredFan;
pub use shape::Shape;
pub use tip::SprayTip;
