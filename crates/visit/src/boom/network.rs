//! A boom as a network of hoses: nodes and outlets, and which of them is which tip.

use sprayer::RatedFlow;
use sprayer::plumbing::{Liquid, Network, NodeId, Outlet, OutletId, Pipe, Supply as Feed};
use units::{Length, Pressure, Quantity};

use super::{Boom, Enters, Section, Supply};

/// A boom's network and its places.
pub(super) struct Places {
    pub network: Network,
    /// Where the pressure is held, or where the pump feeds in.
    pub gauge: NodeId,
    pub manifold: NodeId,
    pub bypass: Option<OutletId>,
    pub agitation: Option<OutletId>,
    pub sections: Vec<SectionPlaces>,
}

/// A section's places.
pub(super) struct SectionPlaces {
    pub entry: NodeId,
    pub entry_height: Length,
    pub tips: Vec<TipPlaces>,
}

/// A tip's places: on the hose, before its orifice, and the orifice.
pub(super) struct TipPlaces {
    pub on_hose: NodeId,
    pub end: NodeId,
    pub outlet: OutletId,
}

/// Metres of the liquid for a pressure.
pub(super) fn head(liquid: &Liquid, pressure: Pressure) -> f64 {
    pressure.si() / (liquid.density * liquid.gravity)
}

/// The pressure of metres of the liquid.
pub(super) fn pressure(liquid: &Liquid, head: f64) -> Pressure {
    Pressure::from_si(head * liquid.density * liquid.gravity)
}

/// An orifice that was rated with water, as the plumbing has it: flow at a metre of head. An orifice lets the same through at
/// the same head whatever the liquid weighs: q = c A √(2 g h).
fn orifice(liquid: &Liquid, rated: &RatedFlow, opens_at: Pressure) -> Outlet {
    let water = Liquid { gravity: liquid.gravity, ..Liquid::default() };
    let coefficient = rated.flow().si() / head(&water, rated.pressure()).sqrt();
    Outlet { coefficient, opens_at: head(liquid, opens_at) }
}

impl Boom {
    /// The network.
    pub(super) fn places(&self) -> Places {
        let liquid = &self.liquid;
        let (mut network, gauge) = Network::fed(*liquid, |at| self.feed(at));
        let (mut bypass, mut agitation) = (None, None);
        if let Supply::Pump(pump) = &self.supply {
            bypass = pump
                .bypass
                .as_ref()
                .map(|(rated, opens_at)| network.outlet(gauge, Some(orifice(liquid, rated, *opens_at))));
            agitation = pump
                .agitation
                .as_ref()
                .map(|rated| network.outlet(gauge, Some(orifice(liquid, rated, Pressure::ZERO))));
        }
        let manifold = self.to_manifold.map_or(gauge, |hose| network.branch(gauge, hose, 0.0));
        let sections =
            self.sections.iter().map(|section| section.places(&mut network, manifold, liquid)).collect();
        Places { network, gauge, manifold, bypass, agitation, sections }
    }

    fn feed(&self, at: NodeId) -> Feed {
        match &self.supply {
            Supply::Pressure(pressure) => Feed::HeldHead { at, head: head(&self.liquid, *pressure) },
            Supply::TotalFlow(flow) => Feed::HeldFlow { at, flow: flow.si() },
            Supply::Pump(pump) => {
                let shut_off = head(&self.liquid, pump.at_no_flow);
                let (flow, pressure) = pump.point;
                let fall = (shut_off - head(&self.liquid, pressure)) / (flow.si() * flow.si());
                Feed::Pump { at, shut_off, fall }
            }
        }
    }
}

impl Section {
    fn places(&self, network: &mut Network, manifold: NodeId, liquid: &Liquid) -> SectionPlaces {
        let (left, right, entry_height) = match self.enters {
            Enters::At(tip) => (tip, tip, self.heights[tip]),
            Enters::Behind(tip) => (tip, tip + 1, (self.heights[tip] + self.heights[tip + 1]) / 2.0),
        };
        let entry = network.branch(manifold, self.feed, entry_height.si());
        let mut on_hose = vec![entry; self.tips.len()];
        if let Some(hose) = self.hose {
            let half = Pipe { length: hose.length / 2.0, ..hose };
            if left != right {
                on_hose[left] = network.branch(entry, half, self.heights[left].si());
                on_hose[right] = network.branch(entry, half, self.heights[right].si());
            }
            for tip in (0..left).rev() {
                on_hose[tip] = network.branch(on_hose[tip + 1], hose, self.heights[tip].si());
            }
            for tip in right + 1..self.tips.len() {
                on_hose[tip] = network.branch(on_hose[tip - 1], hose, self.heights[tip].si());
            }
        }
        let tips = self.tips.iter().zip(on_hose).zip(&self.heights);
        let tips = tips.map(|((tip, on_hose), height)| {
            let end = self.body.map_or(on_hose, |body| network.branch(on_hose, body, height.si()));
            let outlet = tip.as_ref().map(|rated| orifice(liquid, rated, self.check_valve));
            TipPlaces { on_hose, end, outlet: network.outlet(end, outlet) }
        });
        SectionPlaces { entry, entry_height, tips: tips.collect() }
    }
}
