//! The machine: tips and their flow, the carrier they spray, the boom they stand on, the fan they make.
//!
//! Nothing here knows about people, readings or verdicts.

mod boom;
mod carrier;
mod control;
mod fan;
mod flow;
pub mod pattern;
pub mod plumbing;
mod size;

pub use boom::{BoomError, BoomLayout, FittedTipId, GroupId, Mounting, Position, PositionId, TipGroup};
pub use carrier::{
    CarrierError, OWN_TEST_ABOVE, WATER_AT_20_C, WATER_DENSITY, density_factor, from_water, to_water,
};
pub use control::PressureControl;
pub use fan::{FanError, footprint, height_for_overlap};
pub use flow::{FlowError, RatedFlow};
pub use size::{Scale, SizeError, TipSize};
