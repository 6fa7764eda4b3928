//! Pressures and flows of a network: damped Newton on the global gradient.
//!
//! Every head grows with its flow, so the solution is the lowest point of a bowl, and there is one. A step is taken whole
//! where that goes down, else it is cut where the bowl is flat along it. Plugged and shut outlets stand in no equation.
//!
//! *Source*: Todini and Pilati (1987), a gradient method for the analysis of pipe networks; Collins et al. (1978), content
//! models, for the bowl.

use super::friction::Loss;
use super::matrix::Pattern;
use super::network::{Link, Network, Outlet, Supply};
use super::solved::Solved;

/// Why a network cannot be solved.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PlumbingError {
    /// Nothing can flow anywhere.
    #[error("every outlet is plugged or shut, so nothing flows")]
    NothingFlows,
    /// A number that cannot be: no bore, no length or loss below nothing, not a number.
    #[error("a hose, outlet or supply of the network cannot be")]
    Impossible,
    /// It did not come to rest.
    #[error("the pressures did not come to rest after {steps} steps")]
    NoRest {
        /// Steps taken.
        steps: usize,
    },
}

/// The most steps. Our own choice: booms of every kind we tried need fewer than thirty.
const MOST_STEPS: usize = 200;
/// A network is at rest when no way's loss differs from the head that drives it by more than this share of the largest head.
/// Heads, not flows: in a wide hose the least head that a number can hold moves more water than that. Our own choice: what
/// doubles carry through a few hundred nodes, far below any reading.
const AT_REST: f64 = 1e-11;

/// A way from a node to another, or to the air.
#[derive(Clone, Copy, Debug)]
pub(super) enum Way<'a> {
    /// A hose.
    Hose(&'a Link),
    /// An open outlet at a node.
    Outlet(usize, Outlet),
    /// The pump, from a head of its own at nothing.
    Pump { at: usize, shut_off: f64, fall: f64 },
}

impl Network {
    /// Returns the heads and flows.
    ///
    /// *Errors*: numbers that cannot be; nothing can flow; no rest.
    pub fn solve(&self) -> Result<Solved, PlumbingError> {
        if !self.is_possible() {
            return Err(PlumbingError::Impossible);
        }
        let pattern = Pattern::of(self.elevations.len(), self.links.iter().map(|link| (link.from, link.to)));
        // Which check valves are open is not known at first; those that would suck are shut, those pushed open are opened.
        let mut shut: Vec<bool> = self.outlets.iter().map(|(_, outlet)| outlet.is_none()).collect();
        let mut steps = 0;
        loop {
            if shut.iter().all(|shut| *shut) {
                return Err(PlumbingError::NothingFlows);
            }
            let mut solved = self.rest(&pattern, &shut, &mut steps)?;
            let mut changed = false;
            for (index, (node, outlet)) in self.outlets.iter().enumerate() {
                let Some(outlet) = outlet else { continue };
                let pushed = solved.heads[*node] - self.elevations[*node] > outlet.opens_at;
                if shut[index] == pushed {
                    shut[index] = !pushed;
                    changed = true;
                }
            }
            if !changed {
                solved.steps = steps;
                return Ok(solved);
            }
            if steps > MOST_STEPS {
                return Err(PlumbingError::NoRest { steps });
            }
        }
    }

    fn ways(&self, shut: &[bool]) -> Vec<Way<'_>> {
        let mut ways: Vec<Way<'_>> = self.links.iter().map(Way::Hose).collect();
        for (index, (node, outlet)) in self.outlets.iter().enumerate() {
            if let (Some(outlet), false) = (outlet, shut[index]) {
                ways.push(Way::Outlet(*node, *outlet));
            }
        }
        if let Supply::Pump { at, shut_off, fall } = self.supply {
            ways.push(Way::Pump { at: at.0, shut_off, fall });
        }
        ways
    }

    pub(super) fn loss(&self, way: &Way<'_>, flow: f64) -> Loss {
        match way {
            Way::Hose(link) => link.pipe.loss(flow, &self.liquid),
            Way::Outlet(_, outlet) => outlet.loss(flow),
            // What the pump lacks of its shut-off head; straight near nothing, as an outlet.
            Way::Pump { fall, .. } => Outlet { coefficient: 1.0 / fall.sqrt(), opens_at: 0.0 }.loss(flow),
        }
    }

    /// The head that drives a way at these heads of the nodes.
    fn driving(&self, way: &Way<'_>, heads: &[f64]) -> f64 {
        match way {
            Way::Hose(link) => heads[link.from] - heads[link.to],
            // The air is at the height of the node.
            Way::Outlet(node, _) => heads[*node] - self.elevations[*node],
            Way::Pump { at, shut_off, .. } => shut_off - heads[*at],
        }
    }

    /// Newton to rest, with these outlets shut.
    fn rest(&self, pattern: &Pattern, shut: &[bool], steps: &mut usize) -> Result<Solved, PlumbingError> {
        let ways = self.ways(shut);
        let mut flows: Vec<f64> = ways.iter().map(|way| self.first_guess(way)).collect();
        let mut feasible = false;
        loop {
            *steps += 1;
            let losses: Vec<Loss> =
                ways.iter().zip(&flows).map(|(way, flow)| self.loss(way, *flow)).collect();
            let heads = self.heads(pattern, &ways, &flows, &losses);
            let left: Vec<f64> =
                ways.iter().zip(&losses).map(|(way, loss)| self.driving(way, &heads) - loss.head).collect();
            let change: Vec<f64> = left.iter().zip(&losses).map(|(left, loss)| left / loss.slope).collect();
            let largest = heads.iter().fold(1e-3_f64, |most, head| most.max(head.abs()));
            let most = left.iter().fold(0.0_f64, |most, left| most.max(left.abs()));
            // The first step only makes the flows agree at every node; from then on they stay so.
            let part = if feasible { self.part(&ways, &flows, &change) } else { 1.0 };
            for (flow, change) in flows.iter_mut().zip(&change) {
                *flow += part * change;
            }
            let rests = feasible && most <= AT_REST * largest;
            feasible = feasible || part >= 1.0;
            if rests {
                return Ok(self.solved(pattern, &ways, &flows, shut, heads));
            }
            if *steps > MOST_STEPS {
                return Err(PlumbingError::NoRest { steps: *steps });
            }
        }
    }

    /// A flow to begin with: water at a foot a second in a hose, as EPANET does; an outlet at the head of ten metres.
    fn first_guess(&self, way: &Way<'_>) -> f64 {
        match way {
            // Source: EPANET 2.2, initial flows for a velocity of 1 ft/s (0.3048 m/s).
            Way::Hose(link) => 0.3048 * core::f64::consts::PI * link.pipe.bore * link.pipe.bore / 4.0,
            Way::Outlet(_, outlet) => outlet.coefficient * 10.0_f64.sqrt(),
            Way::Pump { shut_off, fall, .. } => (shut_off / fall / 2.0).sqrt(),
        }
    }

    /// The heads at which the straightened losses make the flows agree at every node.
    fn heads(&self, pattern: &Pattern, ways: &[Way<'_>], flows: &[f64], losses: &[Loss]) -> Vec<f64> {
        let nodes = self.elevations.len();
        let mut system = pattern.system();
        let mut right = vec![0.0; nodes];
        for ((way, flow), loss) in ways.iter().zip(flows).zip(losses) {
            let ease = 1.0 / loss.slope;
            // What flows at a driving head of nothing by the straight line.
            let still = flow - loss.head * ease;
            match way {
                Way::Hose(link) => {
                    system.add_link(link.from, link.to, ease);
                    right[link.from] -= still;
                    right[link.to] += still;
                }
                Way::Outlet(node, _) => {
                    system.add(*node, ease);
                    right[*node] += ease * self.elevations[*node] - still;
                }
                Way::Pump { at, shut_off, .. } => {
                    system.add(*at, ease);
                    right[*at] += ease * shut_off + still;
                }
            }
        }
        match self.supply {
            Supply::HeldHead { at, head } => {
                // A held head outweighs all that is joined to it, so far that nothing of it is lost to the others.
                system.add(at.0, HELD);
                right[at.0] += HELD * head;
            }
            Supply::HeldFlow { at, flow } => right[at.0] += flow,
            Supply::Pump { .. } => {}
        }
        // A node that only shut outlets hang on is held by its hose; nothing stands alone, because nodes are branched.
        let mut heads = system.factored().solve(&right);
        if let Supply::HeldHead { at, head } = self.supply {
            heads[at.0] = head;
        }
        heads
    }

    /// How much of a step to take: all of it, unless the bowl rises again before its end.
    fn part(&self, ways: &[Way<'_>], flows: &[f64], change: &[f64]) -> f64 {
        // The slope of the bowl along the step; heads of nodes drop out of it because the step keeps every node in agreement.
        let slope = |part: f64| -> f64 {
            ways.iter()
                .zip(flows)
                .zip(change)
                .map(|((way, flow), change)| {
                    let held = match (way, self.supply) {
                        (Way::Pump { shut_off, .. }, _) => *shut_off,
                        (Way::Outlet(node, _), _) => -self.elevations[*node],
                        _ => 0.0,
                    };
                    (self.loss(way, flow + part * change).head - held) * change
                })
                .sum::<f64>()
                - self.held_slope(ways, change)
        };
        let begin = slope(0.0);
        if begin >= 0.0 || slope(1.0) <= -0.5 * begin {
            return 1.0;
        }
        let (mut low, mut high) = (0.0, 1.0);
        // Ten halvings come within a thousandth, which is near enough for a step of Newton.
        for _ in 0..10 {
            let middle = f64::midpoint(low, high);
            if slope(middle) < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        f64::midpoint(low, high)
    }

    /// What the held head gives along a step: the change of what it feeds in.
    fn held_slope(&self, ways: &[Way<'_>], change: &[f64]) -> f64 {
        let Supply::HeldHead { at, head } = self.supply else { return 0.0 };
        let out: f64 = ways
            .iter()
            .zip(change)
            .map(|(way, change)| match way {
                Way::Hose(link) if link.from == at.0 => *change,
                Way::Hose(link) if link.to == at.0 => -change,
                Way::Outlet(node, _) if *node == at.0 => *change,
                _ => 0.0,
            })
            .sum();
        head * out
    }

    fn solved(
        &self,
        pattern: &Pattern,
        ways: &[Way<'_>],
        flows: &[f64],
        shut: &[bool],
        heads: Vec<f64>,
    ) -> Solved {
        let mut outlets = vec![0.0; self.outlets.len()];
        let mut open = (0..self.outlets.len()).filter(|index| !shut[*index]);
        for (way, flow) in ways.iter().zip(flows) {
            if let (Way::Outlet(..), Some(index)) =
                (way, matches!(way, Way::Outlet(..)).then(|| open.next()).flatten())
            {
                outlets[index] = *flow;
            }
        }
        let sensitivities = self.sensitivities(pattern, ways, flows, shut, &outlets);
        Solved {
            heads,
            elevations: self.elevations.clone(),
            total: outlets.iter().sum(),
            outlets,
            sensitivities,
            steps: 0,
        }
    }
}

/// How stiffly a held head is held, cubic metres a second for a metre. Our own choice: a million times what a boom takes.
pub(super) const HELD: f64 = 1e4;
