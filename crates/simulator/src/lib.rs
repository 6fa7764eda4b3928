//! Sprayers with hidden faults, and the cups, watches and people that test them, drawn from a seed.
//!
//! For honest tests and for practice. The caller gives the seed; the same seed gives the same sprayer, the same
//! errors and the same readings on every machine. What people would know (readings as they would write them) and
//! what nobody at the boom knows (true flows, true volumes, slips) stand in types of their own.
//!
//! This crate shares nothing with the inference in `calibration`: it does not know limits, verdicts or readings'
//! intervals. The two meet only in `sprayer`'s physics, by which pressure becomes flow and hoses lose it.
//!
//! | to draw | from | with |
//! |---|---|---|
//! | a boom | [`BoomWorld`]: how many tips, how alike, what faults, what pattern | [`BoomWorld::boom`] |
//! | a whole sprayer, by its plumbing | [`PlumbedWorld`]: what holds the pressure, hoses, strainers, gauge | [`PlumbedWorld::sprayer`] |
//! | a kit | [`KitWorld`]: cup, watch, hands and their slips | [`KitWorld::kit`] |
//! | a catch test | [`TestPlan`]: time, repeats, cups under one run, order | [`Yard::test`] |
//! | one more cup | a tip, a time, a cup | [`Yard::catch`] |

mod between;
mod boom;
mod boom_world;
mod cup;
mod fault;
mod hands;
mod kit;
mod pattern;
mod plan;
mod plumbed;
mod random;
mod slip;
mod watch;
mod yard;

pub use between::{Between, Shape};
pub use boom::{RUNS_FROM, TrueBoom, TrueTip};
pub use boom_world::{BoomWorld, WorldError};
pub use cup::{Cup, CupKind, MarkUnit};
pub use fault::{Fault, FaultLaw, FaultMix};
pub use hands::Hands;
pub use kit::{Kit, KitWorld};
pub use pattern::Pattern;
pub use plan::{Order, TestPlan};
pub use plumbed::{Fed, GaugeWorld, HeldBy, HoseWorld, PlumbedSprayer, PlumbedWorld};
pub use random::{Part, Random};
pub use slip::{Slip, SlipChances};
pub use watch::{Watch, WatchWorld};
pub use yard::{CaughtCup, CupTruth, Yard};
