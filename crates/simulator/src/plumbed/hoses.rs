//! The hoses of one sprayer, and the network they make with its tips.

use sprayer::plumbing::{Liquid, Network, NodeId, Outlet, OutletId, Pipe, Supply};

use crate::between::{Between, Shape};
use crate::random::Random;

/// Hoses, strainers and valves to draw from.
#[derive(Clone, Debug, PartialEq)]
pub struct HoseWorld {
    /// The bore of feeds and boom hoses in metres, each as likely as the others.
    pub bores: Vec<f64>,
    /// How long a section's feed is, in metres.
    pub feed: Between<f64>,
    /// What valve and clean strainer of a section cost together: K on the velocity in the feed.
    pub clean: Between<f64>,
    /// How often a section's strainer is blocked so far that it is felt.
    pub restricted: f64,
    /// Which part of such a strainer's open area is blocked.
    pub blocked: Between<f64>,
    /// What a body with its strainer costs: K on the velocity in the drop.
    pub body: Between<f64>,
}

impl HoseWorld {
    /// A mounted boom: feeds of 2 to 7 m in hose of 16 or 19 mm, now and then a strainer blocked by 80 to 97 %.
    ///
    /// *Source*: bores and lengths as on the check network that this project holds its plumbing to; that a blocked part b
    /// of a strainer's area makes K (1 − b)⁻² times as large follows from a loss that goes with the square of the velocity
    /// in what stays open; how often, and how far, is our assumption.
    #[must_use]
    pub fn mounted() -> Self {
        Self {
            bores: vec![0.016, 0.019, 0.019],
            feed: Between::new(2.0, 7.0),
            clean: Between::new(1.0, 4.0),
            restricted: 0.1,
            blocked: Between::new(0.80, 0.97),
            body: Between::new(4.0, 8.0),
        }
    }

    pub(super) fn draw(&self, sections: usize, random: &mut Random) -> Hoses {
        let bore = random.one_of(&self.bores).copied().unwrap_or(0.019);
        let body = self.body.draw(Shape::Even, random);
        let feeds = (0..sections)
            .map(|_| {
                let length = self.feed.draw(Shape::Even, random);
                let clean = self.clean.draw(Shape::Even, random);
                let open = if random.happens(self.restricted) {
                    1.0 - self.blocked.draw(Shape::Even, random)
                } else {
                    1.0
                };
                Feed { length, loss: clean / (open * open) }
            })
            .collect();
        Hoses { bore, body, feeds }
    }
}

/// One section's feed.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Feed {
    length: f64,
    loss: f64,
}

/// The hoses of one sprayer.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Hoses {
    bore: f64,
    body: f64,
    feeds: Vec<Feed>,
}

/// The network of a sprayer, and where its tips are in it.
pub(super) struct Plumbed {
    pub network: Network,
    /// Each tip's outlet and the node before it, from left to right.
    pub tips: Vec<(OutletId, NodeId)>,
}

/// Tips stand half a metre apart, and a section is fed in its middle.
const SPACING: f64 = 0.5;
/// Smooth hose, metres. Source: EPANET 2.2 User Manual, table 3.2 (plastic, 0.0015 mm).
const SMOOTH: f64 = 1.5e-6;
/// The drop to a tip: bore and length in metres, as on the check network.
const DROP: (f64, f64) = (0.008, 0.03);
/// From the gauge to the manifold: length and bore in metres and K, as on the check network.
const TO_MANIFOLD: (f64, f64, f64) = (2.0, 0.025, 2.0);

impl Hoses {
    /// The network of tips with these coefficients, section by section; `more` is a further outlet at the gauge, a bypass.
    pub fn network(
        &self,
        sections: &[Vec<f64>],
        supply: impl FnOnce(NodeId) -> Supply,
        more: Option<Outlet>,
    ) -> Plumbed {
        let pipe =
            |length: f64, bore: f64, minor_loss: f64| Pipe { length, bore, roughness: SMOOTH, minor_loss };
        let (mut network, gauge) = Network::fed(Liquid::default(), supply);
        if more.is_some() {
            network.outlet(gauge, more);
        }
        let manifold = network.branch(gauge, pipe(TO_MANIFOLD.0, TO_MANIFOLD.1, TO_MANIFOLD.2), 0.0);
        let mut tips = Vec::new();
        for (feed, coefficients) in self.feeds.iter().zip(sections) {
            let entry = network.branch(manifold, pipe(feed.length, self.bore, feed.loss), 0.0);
            let middle = coefficients.len() / 2;
            let (left, right) = coefficients.split_at(middle);
            let mut of_section = Vec::with_capacity(coefficients.len());
            let mut half = |coefficients: &mut dyn Iterator<Item = &f64>| {
                let mut node = entry;
                let mut found = Vec::new();
                for (place, coefficient) in coefficients.enumerate() {
                    let along = if place == 0 { SPACING / 2.0 } else { SPACING };
                    node = network.branch(node, pipe(along, self.bore, 0.0), 0.0);
                    let body = network.branch(node, pipe(DROP.1, DROP.0, self.body), 0.0);
                    let open = *coefficient > 0.0;
                    let outlet = open.then_some(Outlet { coefficient: *coefficient, opens_at: 0.0 });
                    found.push((network.outlet(body, outlet), body));
                }
                found
            };
            of_section.extend(half(&mut left.iter().rev()).into_iter().rev());
            of_section.extend(half(&mut right.iter()));
            tips.extend(of_section);
        }
        Plumbed { network, tips }
    }
}
