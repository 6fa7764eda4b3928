//! The ways that something can flow: hoses, open outlets, the pump; and where Newton stands on them.

use super::friction::{Loss, Resistance};
use super::network::{Network, Outlet, Supply};
use super::wall::Walls;

/// A way from a node to another, or to the air.
#[derive(Clone, Copy, Debug)]
pub(super) enum Way {
    /// A hose between two nodes; it is a link of the same number.
    Hose { from: usize, to: usize, resistance: Resistance },
    /// An open outlet at a node, with its number.
    Outlet { node: usize, index: usize, outlet: Outlet },
    /// The pump, from a head of its own at nothing; as an orifice its curve falls with the square of the flow.
    Pump { at: usize, shut_off: f64, curve: Outlet },
}

impl Way {
    pub fn loss(&self, flow: f64, walls: &mut Walls) -> Loss {
        match self {
            Self::Hose { resistance, .. } => resistance.loss(flow, walls),
            Self::Outlet { outlet, .. } => outlet.loss(flow),
            Self::Pump { curve, .. } => curve.loss(flow),
        }
    }
}

/// Where Newton stands.
pub(super) struct Standing {
    pub flows: Vec<f64>,
    /// The head each way loses.
    pub lost: Vec<f64>,
    /// How much more flows for a metre more.
    pub eases: Vec<f64>,
}

impl Standing {
    pub fn at(ways: &[Way], flows: Vec<f64>, walls: &mut Walls) -> Self {
        let loss = |(way, flow): (&Way, &f64)| {
            let loss = way.loss(*flow, walls);
            (loss.head, 1.0 / loss.slope)
        };
        let (lost, eases) = ways.iter().zip(&flows).map(loss).unzip();
        Self { flows, lost, eases }
    }
}

impl Network {
    /// Every way that something can flow; the hoses first, in their order.
    pub(super) fn ways(&self, shut: &[bool], walls: &mut Walls) -> Vec<Way> {
        let hoses = self.links.iter().map(|link| {
            let resistance = Resistance::of(&link.pipe, &self.liquid, walls);
            Way::Hose { from: link.from, to: link.to, resistance }
        });
        let outlets = self.outlets.iter().enumerate().filter_map(|(index, (node, outlet))| {
            let outlet = outlet.filter(|_| !shut[index])?;
            Some(Way::Outlet { node: *node, index, outlet })
        });
        let mut ways: Vec<Way> = hoses.chain(outlets).collect();
        if let Supply::Pump { at, shut_off, fall } = self.supply {
            // What the pump lacks of its shut-off head; straight near nothing, as an outlet.
            let curve = Outlet { coefficient: 1.0 / fall.sqrt(), opens_at: 0.0 };
            ways.push(Way::Pump { at: at.0, shut_off, curve });
        }
        ways
    }
}
