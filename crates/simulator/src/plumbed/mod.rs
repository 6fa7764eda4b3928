//! Whole sprayers: from what holds the pressure, through hoses, strainers and valves, to every tip, by the network solver.
//!
//! A fault here does what it does on a sprayer: a plugged tip leaves more for its neighbours, a blocked strainer starves its
//! section and under a rate controller feeds the others, worn tips drag the pressure of a pump down.

mod hoses;
mod supply;
mod world;

pub use hoses::HoseWorld;
pub use supply::{GaugeWorld, HeldBy};
pub use world::{Fed, PlumbedSprayer, PlumbedWorld};
