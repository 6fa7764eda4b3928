//! How a catch test is gone about: how long, how often, how many cups at once, in what order.

use units::Time;

use crate::cup::CupKind;

/// How a catch test is gone about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TestPlan {
    /// Which cup.
    pub cup: CupKind,
    /// How long each catch is meant to last.
    pub time: Time,
    /// How often the whole boom is caught.
    pub repeats: u32,
    /// How many neighbours are caught under one timed run.
    pub cups_at_once: u32,
    /// In what order.
    pub order: Order,
}

/// The order of the cups.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Order {
    /// From left to right.
    #[default]
    LeftToRight,
    /// From left to right, and the first tip once more at the end, to see whether the sprayer drifted.
    FirstAgainAtTheEnd,
}
