//! Pressures and flows of a network: damped Newton on the global gradient.
//!
//! Every head grows with its flow, so the solution is the lowest point of a bowl, and there is one. A step is taken whole
//! where that goes down, else it is cut where the bowl is flat along it. Plugged and shut outlets stand in no equation.
//!
//! *Source*: Todini and Pilati (1987), a gradient method for the analysis of pipe networks; Collins et al. (1978), content
//! models, for the bowl.

use super::matrix::{Pattern, System};
use super::network::{Network, Supply};
use super::solved::Solved;
use super::wall::Walls;
use super::ways::{Standing, Way};

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

/// Nearer to rest than this, as a share of the largest head, every step is taken whole: there Newton only nears. Our own choice.
const NEAR_REST: f64 = 1e-3;

impl Network {
    /// Returns the heads and flows.
    ///
    /// *Errors*: numbers that cannot be; nothing can flow; no rest.
    pub fn solve(&self) -> Result<Solved, PlumbingError> {
        if !self.is_possible() {
            return Err(PlumbingError::Impossible);
        }
        let joined: Vec<(usize, usize)> = self.links.iter().map(|link| (link.from, link.to)).collect();
        let pattern = Pattern::of(self.elevations.len(), &joined);
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
                solved.pattern = pattern;
                return Ok(solved);
            }
            if steps > MOST_STEPS {
                return Err(PlumbingError::NoRest { steps });
            }
        }
    }

    /// The head that drives a way at these heads of the nodes.
    fn driving(&self, way: &Way, heads: &[f64]) -> f64 {
        match way {
            Way::Hose { from, to, .. } => heads[*from] - heads[*to],
            // The air is at the height of the node.
            Way::Outlet { node, .. } => heads[*node] - self.elevations[*node],
            Way::Pump { at, shut_off, .. } => shut_off - heads[*at],
        }
    }

    /// Newton to rest, with these outlets shut.
    fn rest(&self, pattern: &Pattern, shut: &[bool], steps: &mut usize) -> Result<Solved, PlumbingError> {
        let mut walls = Walls::default();
        let ways = self.ways(shut, &mut walls);
        let (flows, mut agreed) = self.first_guess(&ways, &mut walls);
        let mut now = Standing::at(&ways, flows, &mut walls);
        let mut system = pattern.system();
        loop {
            *steps += 1;
            let heads = self.heads(pattern, &mut system, &ways, &now);
            let change: Vec<f64> = ways
                .iter()
                .zip(now.lost.iter().zip(&now.eases))
                .map(|(way, (lost, ease))| (self.driving(way, &heads) - lost) * ease)
                .collect();
            let stepped = |part: f64| -> Vec<f64> {
                now.flows.iter().zip(&change).map(|(flow, change)| flow + part * change).collect()
            };
            let mut next = Standing::at(&ways, stepped(1.0), &mut walls);
            // At these heads the whole step is at rest where each way's loss is what drives it.
            let largest = heads.iter().fold(1e-3_f64, |most, head| most.max(head.abs()));
            let most = ways
                .iter()
                .zip(&next.lost)
                .fold(0.0_f64, |most, (way, lost)| most.max((self.driving(way, &heads) - lost).abs()));
            if most <= AT_REST * largest {
                return Ok(self.solved(system, &ways, &next.flows, heads));
            }
            if *steps > MOST_STEPS {
                return Err(PlumbingError::NoRest { steps: *steps });
            }
            // A step from flows that do not agree at every node only makes them agree; from then on they stay so.
            if agreed && most > NEAR_REST * largest {
                let part = self.part(&ways, &now, &next, &change, &mut walls);
                if part < 1.0 {
                    next = Standing::at(&ways, stepped(part), &mut walls);
                }
            }
            agreed = true;
            now = next;
        }
    }

    /// The heads at which the straightened losses make the flows agree at every node; the system is left factored.
    fn heads(&self, pattern: &Pattern, system: &mut System, ways: &[Way], now: &Standing) -> Vec<f64> {
        system.clear();
        let mut right = vec![0.0; self.elevations.len()];
        let standing = now.flows.iter().zip(now.lost.iter().zip(&now.eases));
        for (number, (way, (flow, (lost, ease)))) in ways.iter().zip(standing).enumerate() {
            // What flows at a driving head of nothing by the straight line.
            let (ease, still) = (*ease, flow - lost * ease);
            match way {
                Way::Hose { from, to, .. } => {
                    system.add_link(pattern, number, ease);
                    right[*from] -= still;
                    right[*to] += still;
                }
                Way::Outlet { node, .. } => {
                    system.add(pattern, *node, ease);
                    right[*node] += ease * self.elevations[*node] - still;
                }
                Way::Pump { at, shut_off, .. } => {
                    system.add(pattern, *at, ease);
                    right[*at] += ease * shut_off + still;
                }
            }
        }
        match self.supply {
            Supply::HeldHead { at, head } => {
                // A held head outweighs all that is joined to it, so far that nothing of it is lost to the others.
                system.add(pattern, at.0, HELD);
                right[at.0] += HELD * head;
            }
            Supply::HeldFlow { at, flow } => right[at.0] += flow,
            Supply::Pump { .. } => {}
        }
        // A node that only shut outlets hang on is held by its hose; nothing stands alone, because nodes are branched.
        system.factor(pattern);
        let mut heads = system.solve(pattern, &right);
        if let Supply::HeldHead { at, head } = self.supply {
            heads[at.0] = head;
        }
        heads
    }

    /// How much of a step to take: all of it, unless the bowl rises again before its end.
    fn part(&self, ways: &[Way], now: &Standing, next: &Standing, change: &[f64], walls: &mut Walls) -> f64 {
        // The slope of the bowl along the step; heads of nodes drop out of it because the step keeps every node in agreement.
        let held: f64 = ways.iter().zip(change).map(|(way, change)| self.held(way) * change).sum();
        let slope_of = |lost: &[f64]| -> f64 {
            lost.iter().zip(change).map(|(lost, change)| lost * change).sum::<f64>() - held
        };
        let begin = slope_of(&now.lost);
        if begin >= 0.0 || slope_of(&next.lost) <= -0.5 * begin {
            return 1.0;
        }
        let mut slope = |part: f64| -> f64 {
            let stepped: Vec<f64> =
                now.flows.iter().zip(change).map(|(flow, change)| flow + part * change).collect();
            slope_of(&Standing::at(ways, stepped, walls).lost)
        };
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

    /// The head that is given to a way from without: by the pump, the air at the outlet's height, the held head where it begins.
    fn held(&self, way: &Way) -> f64 {
        let at = |node: usize| match self.supply {
            Supply::HeldHead { at, head } if at.0 == node => head,
            _ => 0.0,
        };
        match way {
            Way::Hose { from, to, .. } => at(*from) - at(*to),
            Way::Outlet { node, .. } => at(*node) - self.elevations[*node],
            Way::Pump { at: node, shut_off, .. } => shut_off - at(*node),
        }
    }

    fn solved(&self, system: System, ways: &[Way], flows: &[f64], heads: Vec<f64>) -> Solved {
        let mut outlets = vec![0.0; self.outlets.len()];
        let mut eases = vec![0.0; self.outlets.len()];
        for (way, flow) in ways.iter().zip(flows) {
            if let Way::Outlet { index, outlet, .. } = way {
                outlets[*index] = *flow;
                eases[*index] = 1.0 / outlet.loss(*flow).slope;
            }
        }
        Solved {
            heads,
            elevations: self.elevations.clone(),
            total: outlets.iter().sum(),
            outlets,
            nodes: self.outlets.iter().map(|(node, _)| *node).collect(),
            eases,
            system,
            pattern: Pattern::of(0, &[]),
            steps: 0,
        }
    }
}

/// How stiffly a held head is held, cubic metres a second for a metre. Our own choice: a million times what a boom takes.
const HELD: f64 = 1e4;
