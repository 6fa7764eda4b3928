//! Flows for Newton to begin with, near enough that two or three steps do for most booms.

use super::network::{Network, Supply};
use super::wall::Walls;
use super::ways::Way;

impl Network {
    /// Flows to begin with, and whether they agree at every node: each outlet at the head that is held, less what the hoses
    /// would lose, and in the hoses what their outlets take, where they form a tree.
    pub(super) fn first_guess(&self, ways: &[Way], walls: &mut Walls) -> (Vec<f64>, bool) {
        // Without a held head ten metres, about a bar. Our own choice: Newton soon finds the right one.
        let head = match self.supply {
            Supply::HeldHead { head, .. } => head,
            Supply::Pump { shut_off, .. } => shut_off / 2.0,
            Supply::HeldFlow { .. } => 10.0,
        };
        let tree = self.feeds_first()
            && self.links.iter().enumerate().all(|(place, link)| link.to == place + 1 && link.from < link.to);
        let mut heads = vec![head; self.elevations.len()];
        let (mut flows, mut carried) = self.taken(ways, &heads, tree);
        if let (true, Supply::HeldHead { .. }) = (tree, self.supply) {
            for (place, link) in self.links.iter().enumerate() {
                heads[link.to] = heads[link.from] - ways[place].loss(flows[place], walls).head;
            }
            // Where much is lost much less flows than was thought, and this would go too far. Our own choice.
            if heads.iter().all(|at| *at > head / 2.0) {
                (flows, carried) = self.taken(ways, &heads, tree);
            }
        }
        if let (Some(Way::Pump { .. }), Some(flow)) = (ways.last(), flows.last_mut()) {
            *flow = carried[0];
        }
        // A held flow is another than that of the guess.
        (flows, tree && !matches!(self.supply, Supply::HeldFlow { .. }))
    }

    /// What outlets take at these heads and what hoses carry for them, and what each node is fed.
    fn taken(&self, ways: &[Way], heads: &[f64], tree: bool) -> (Vec<f64>, Vec<f64>) {
        let mut carried = vec![0.0; self.elevations.len()];
        let mut flows = vec![0.0; ways.len()];
        for (way, flow) in ways.iter().zip(&mut flows).skip(self.links.len()) {
            if let Way::Outlet { node, outlet, .. } = way {
                // A metre at least, so that no slope begins at nothing. Our own choice.
                let driving = heads[*node] - self.elevations[*node] - outlet.opens_at;
                *flow = outlet.coefficient * driving.max(1.0).sqrt();
                carried[*node] += *flow;
            }
        }
        for (place, link) in self.links.iter().enumerate().rev() {
            flows[place] = if tree {
                carried[link.from] += carried[link.to];
                carried[link.to]
            } else {
                // Source: EPANET 2.2, initial flows for a velocity of 1 ft/s (0.3048 m/s).
                0.3048 * core::f64::consts::PI * link.pipe.bore * link.pipe.bore / 4.0
            };
        }
        (flows, carried)
    }

    /// Whether the first node is the one that is fed, to which the hoses of a tree lead.
    fn feeds_first(&self) -> bool {
        let (Supply::HeldHead { at, .. } | Supply::HeldFlow { at, .. } | Supply::Pump { at, .. }) =
            self.supply;
        at.0 == 0
    }
}
