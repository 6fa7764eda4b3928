//! What to change to hit a rate: speed, pressure, the controller, or the tip.

mod at_speed;
mod error;
mod findings;
mod sums;
mod to_hit;

pub use at_speed::{RateAtSpeed, rate_at_speed};
pub use error::ChangeError;
pub use sums::{pressure_for_rate, pressure_to_hold, rate_error_from_speed_error, speed_for_rate};
pub use to_hit::{Change, SMALL_CORRECTION, Setup, SpeedChange, TipNeeded, TipRange, change_to_hit};
