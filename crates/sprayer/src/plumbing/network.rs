//! A network of hoses: nodes, links between them, outlets to the air, and what feeds it.

use super::friction::{Liquid, Loss, Pipe};

/// A place where hoses meet, by its number in the network.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct NodeId(pub(super) usize);

/// An outlet, by its number in the network.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct OutletId(pub(super) usize);

/// A hose between two nodes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Link {
    pub from: usize,
    pub to: usize,
    pub pipe: Pipe,
}

/// An orifice to the air: a tip with its check valve, or a bypass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outlet {
    /// Flow at one metre of head, cubic metres a second: q = k √h.
    pub coefficient: f64,
    /// The head that opens its check valve and stays on it, metres.
    pub opens_at: f64,
}

impl Outlet {
    /// The head before it at a flow out of it, and its slope.
    pub(super) fn loss(&self, flow: f64) -> Loss {
        let quick = flow / self.coefficient;
        // Below a ten-thousandth of its flow at one metre it is taken as straight, so that the slope is never nothing.
        // Our own choice.
        let least = 1e-4;
        let (head, slope) = if quick.abs() < least {
            (quick * least, least / self.coefficient)
        } else {
            (quick * quick.abs(), 2.0 * quick.abs() / self.coefficient)
        };
        Loss { head: head + self.opens_at, slope }
    }
}

/// What feeds the network.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Supply {
    /// A head held at a node: metres.
    HeldHead {
        /// Where.
        at: NodeId,
        /// Metres.
        head: f64,
    },
    /// A total flow held into a node, as a rate controller does: cubic metres a second.
    HeldFlow {
        /// Where.
        at: NodeId,
        /// Cubic metres a second.
        flow: f64,
    },
    /// A pump whose head falls with the square of its flow: h = shut-off head - fall · q².
    Pump {
        /// Where it feeds in.
        at: NodeId,
        /// Head with nothing flowing, metres.
        shut_off: f64,
        /// Metres for the square of a cubic metre a second.
        fall: f64,
    },
}

/// A network of hoses.
#[derive(Clone, Debug)]
pub struct Network {
    pub(super) elevations: Vec<f64>,
    pub(super) links: Vec<Link>,
    pub(super) outlets: Vec<(usize, Option<Outlet>)>,
    pub(super) supply: Supply,
    pub(super) liquid: Liquid,
}

impl Network {
    /// A network with one node, which is fed.
    #[must_use]
    pub fn fed(liquid: Liquid, supply: impl FnOnce(NodeId) -> Supply) -> (Self, NodeId) {
        let first = NodeId(0);
        let network = Self {
            elevations: vec![0.0],
            links: Vec::new(),
            outlets: Vec::new(),
            supply: supply(first),
            liquid,
        };
        (network, first)
    }

    /// The first node, which is fed; heights are told from it.
    #[must_use]
    pub const fn first(&self) -> NodeId {
        NodeId(0)
    }

    /// A node at the end of a hose from another, so many metres higher than the first node.
    pub fn branch(&mut self, from: NodeId, pipe: Pipe, elevation: f64) -> NodeId {
        let node = self.elevations.len();
        self.elevations.push(elevation);
        self.links.push(Link { from: from.0, to: node, pipe });
        NodeId(node)
    }

    /// A hose between two nodes that are there.
    pub fn join(&mut self, from: NodeId, to: NodeId, pipe: Pipe) {
        self.links.push(Link { from: from.0, to: to.0, pipe });
    }

    /// An outlet at a node; none is a plugged or shut one, which gives nothing.
    pub fn outlet(&mut self, at: NodeId, outlet: Option<Outlet>) -> OutletId {
        self.outlets.push((at.0, outlet));
        OutletId(self.outlets.len() - 1)
    }

    /// What flows in it.
    #[must_use]
    pub const fn liquid(&self) -> &Liquid {
        &self.liquid
    }

    /// Whether every number of it can be.
    pub(super) fn is_possible(&self) -> bool {
        let sound = |value: f64, least: f64| value.is_finite() && value >= least;
        let hoses = self.links.iter().all(|link| {
            let pipe = &link.pipe;
            sound(pipe.length, 0.0)
                && sound(pipe.bore, 1e-6)
                && sound(pipe.roughness, 0.0)
                && sound(pipe.minor_loss, 0.0)
                && (pipe.length > 0.0 || pipe.minor_loss > 0.0)
        });
        let outlets = self.outlets.iter().filter_map(|(_, outlet)| *outlet);
        let outlets =
            outlets.into_iter().all(|outlet| sound(outlet.coefficient, 1e-12) && sound(outlet.opens_at, 0.0));
        let supply = match self.supply {
            Supply::HeldHead { head, .. } => sound(head, 1e-9),
            Supply::HeldFlow { flow, .. } => sound(flow, 1e-12),
            Supply::Pump { shut_off, fall, .. } => sound(shut_off, 1e-9) && sound(fall, 1e-9),
        };
        let liquid = sound(self.liquid.density, 1.0)
            && sound(self.liquid.viscosity, 1e-9)
            && sound(self.liquid.gravity, 0.1);
        hoses && outlets && supply && liquid
    }
}
