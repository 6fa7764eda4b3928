//! Reading what people write: numbers with their unit, fractions, minutes and seconds, ranges, doubts.

mod doubted;
mod error;
mod number;
mod special;
mod terms;

pub use doubted::{Doubted, doubted};
pub use error::QuantityError;
pub use number::decimal;
pub use special::{clock_time, flow_at_pressure, percent, span};
pub use terms::{quantity, signed_quantity};

/// The longest text taken for a quantity. Our own limit: no quantity needs more, and a file pasted by
/// mistake should be refused, not searched.
pub(crate) const LONGEST: usize = 120;
