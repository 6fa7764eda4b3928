//! A world: which booms there are, what they are tested with, how, and what the inference is told.

use simulator::{BoomWorld, CupKind, KitWorld, Order};
use units::Time;

/// A world with its name.
#[derive(Clone, Debug, PartialEq)]
pub struct World {
    /// A short name.
    pub name: &'static str,
    /// What differs in it, in a line.
    pub says: &'static str,
    /// The booms.
    pub boom: BoomWorld,
    /// The cups, watches and hands.
    pub kit: KitWorld,
    /// How tests are gone about.
    pub tests: TestWorld,
    /// What the inference is told beside the readings.
    pub told: Told,
}

/// How tests are gone about: each choice as likely as the others of its list.
#[derive(Clone, Debug, PartialEq)]
pub struct TestWorld {
    /// Cups; one that suits the flow and the time is taken.
    pub cups: Vec<CupKind>,
    /// Times.
    pub times: Vec<Time>,
    /// How often the whole boom is caught.
    pub repeats: Vec<u32>,
    /// How many cups stand under one timed run.
    pub at_once: Vec<u32>,
    /// In what order.
    pub order: Order,
    /// A cup suits from so many marks on.
    pub least_marks: u32,
}

/// What the inference is told beside the readings and the runs they share.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Told {
    /// Nothing more.
    Readings,
    /// The order of the cups, so that it may look for a drift.
    Order,
}
