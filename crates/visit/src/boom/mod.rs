//! The machine's plumbing as a file tells of it: from what holds the pressure to every tip, and what flows there.
//!
//! [`read`] takes the file, [`Boom::flows`] works it out. Pressures are those above the air at the place's own height.

mod fields;
mod flows;
mod network;
mod read;
mod section;
mod supply;

pub use fields::BOOM_PARTS;
pub use flows::{BoomFlows, Lost, PumpFlows, SectionFlows, TipFlow, TipState};
pub use read::read;
pub use sprayer::plumbing::PlumbingError;

use sprayer::RatedFlow;
use sprayer::plumbing::{Liquid, Pipe};
use units::{Flow, Length, Pressure};

/// A sprayer's plumbing.
#[derive(Clone, Debug, PartialEq)]
pub struct Boom {
    /// What flows in it.
    pub liquid: Liquid,
    /// What feeds it.
    pub supply: Supply,
    /// From the gauge, or the pump, to the manifold; `None` where the pressure is held at the manifold itself.
    pub to_manifold: Option<Pipe>,
    /// From left to right as the driver sits.
    pub sections: Vec<Section>,
}

/// What feeds a boom.
#[derive(Clone, Debug, PartialEq)]
pub enum Supply {
    /// A pressure held at the gauge.
    Pressure(Pressure),
    /// A flow to all tips together, held by a rate controller.
    TotalFlow(Flow),
    /// A pump that gives what it can.
    Pump(Pump),
}

/// A pump with what it feeds besides the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Pump {
    /// Its pressure with nothing flowing.
    pub at_no_flow: Pressure,
    /// Another point of its curve, which falls with the square of the flow.
    pub point: (Flow, Pressure),
    /// What goes back to the tank: the orifice's flow of water at a pressure, and the pressure that opens it.
    pub bypass: Option<(RatedFlow, Pressure)>,
    /// What stirs the tank.
    pub agitation: Option<RatedFlow>,
}

/// One section of the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// From the manifold to where it meets the boom's hose; valve and strainer count in its minor loss.
    pub feed: Pipe,
    /// Where it meets the boom's hose.
    pub enters: Enters,
    /// The hose from one tip to the next; a section of one tip has none.
    pub hose: Option<Pipe>,
    /// The drop and body of each tip with its strainer.
    pub body: Option<Pipe>,
    /// The pressure that opens the check valve of each body and stays on it.
    pub check_valve: Pressure,
    /// From left to right; `None` is a plugged tip.
    pub tips: Vec<Option<RatedFlow>>,
    /// How much higher than the gauge each tip stands.
    pub heights: Vec<Length>,
}

/// Where the feed meets the boom's hose; tips count from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Enters {
    /// At a tip.
    At(usize),
    /// Midway between a tip and the next.
    Behind(usize),
}
