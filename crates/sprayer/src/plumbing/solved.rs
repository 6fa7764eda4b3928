//! A solved network: heads, flows, and how each flow answers to each orifice.

use super::matrix::Pattern;
use super::network::{Network, NodeId, OutletId, Supply};
use super::solve::{HELD, Way};

/// A solved network.
#[derive(Clone, Debug)]
pub struct Solved {
    pub(super) heads: Vec<f64>,
    pub(super) elevations: Vec<f64>,
    pub(super) outlets: Vec<f64>,
    pub(super) total: f64,
    pub(super) sensitivities: Vec<Vec<f64>>,
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

    /// How the flow of one outlet answers to another's coefficient: dq / d ln k, cubic metres a second.
    #[must_use]
    pub fn sensitivity(&self, of: OutletId, to: OutletId) -> f64 {
        self.sensitivities[to.0][of.0]
    }
}

impl Network {
    /// How the flow of each outlet answers to each outlet's coefficient: dq_i / d ln k_j, cubic metres a second.
    pub(super) fn sensitivities(
        &self,
        pattern: &Pattern,
        ways: &[Way<'_>],
        flows: &[f64],
        shut: &[bool],
        outlets: &[f64],
    ) -> Vec<Vec<f64>> {
        let mut system = pattern.system();
        let mut ease_of = vec![0.0; self.outlets.len()];
        let mut open = (0..self.outlets.len()).filter(|index| !shut[*index]);
        for (way, flow) in ways.iter().zip(flows) {
            let ease = 1.0 / self.loss(way, *flow).slope;
            match way {
                Way::Hose(link) => system.add_link(link.from, link.to, ease),
                Way::Outlet(node, _) => {
                    system.add(*node, ease);
                    if let Some(index) = open.next() {
                        ease_of[index] = ease;
                    }
                }
                Way::Pump { at, .. } => system.add(*at, ease),
            }
        }
        if let Supply::HeldHead { at, .. } = self.supply {
            system.add(at.0, HELD);
        }
        let system = system.factored();
        (0..self.outlets.len())
            .map(|changed| {
                if shut[changed] {
                    return vec![0.0; outlets.len()];
                }
                // A larger orifice lets q more through at the same head; the heads give way to it.
                let mut right = vec![0.0; self.elevations.len()];
                right[self.outlets[changed].0] = -outlets[changed];
                let heads = system.solve(&right);
                let follow = |index: usize| ease_of[index] * heads[self.outlets[index].0];
                (0..outlets.len())
                    .map(|index| follow(index) + if index == changed { outlets[changed] } else { 0.0 })
                    .collect()
            })
            .collect()
    }
}
