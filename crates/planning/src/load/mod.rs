//! What goes in the tank: full loads and the last part load, and the tank at the rate that was measured.

mod error;
mod findings;
mod measure;
mod people;
mod plan;
mod tank;

pub use error::LoadError;
pub use measure::{Measure, measure};
pub use plan::{Job, Load, LoadProduct, Loads, MOST_LOADS, SMALL_LAST_LOAD, loads};
pub use tank::{TankAtRate, TankProduct, tank_at_rate};
