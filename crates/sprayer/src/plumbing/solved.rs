//! A solved network: heads, flows, and how each flow answers to each orifice.

use super::matrix::{Pattern, System};
use super::network::{NodeId, OutletId};

/// A solved network.
#[derive(Clone, Debug)]
pub struct Solved {
    pub(super) heads: Vec<f64>,
    pub(super) elevations: Vec<f64>,
    pub(super) outlets: Vec<f64>,
    pub(super) total: f64,
    /// The node of each outlet.
    pub(super) nodes: Vec<usize>,
    /// How much more each outlet gives for a metre more before it; nothing where it is shut.
    pub(super) eases: Vec<f64>,
    /// The last step's system, factored.
    pub(super) system: System,
    pub(super) pattern: Pattern,
    /// Steps taken.
    pub steps: usize,
}

impl Solved {
    /// The pressure head at a node, metres above the air at its height.
    #[must_use]
    pub fn pressure_head(&self, node: NodeId) -> f64 {
        self.heads[node.0] - self.elevations[node.0]
    }

    /// The flow out of an outlet, cubic metres a second.
    #[must_use]
    pub fn flow(&self, outlet: OutletId) -> f64 {
        self.outlets[outlet.0]
    }

    /// The flow of all outlets together, cubic metres a second.
    #[must_use]
    pub const fn total(&self) -> f64 {
        self.total
    }

    /// How the flow of every outlet, in their order, answers to one outlet's coefficient: dq / d ln k, cubic metres a second.
    #[must_use]
    pub fn sensitivities(&self, to: OutletId) -> Vec<f64> {
        let own = self.outlets[to.0];
        // A larger orifice lets q more through at the same head; the heads give way to it.
        let mut right = vec![0.0; self.heads.len()];
        right[self.nodes[to.0]] = -own;
        let heads = self.system.solve(&self.pattern, &right);
        let mut flows: Vec<f64> =
            self.nodes.iter().zip(&self.eases).map(|(node, ease)| ease * heads[*node]).collect();
        flows[to.0] += own;
        flows
    }

    /// How the flow of one outlet answers to another's coefficient; [`Self::sensitivities`] has all of them at once.
    #[must_use]
    pub fn sensitivity(&self, of: OutletId, to: OutletId) -> f64 {
        self.sensitivities(to)[of.0]
    }
}
