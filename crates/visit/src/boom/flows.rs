//! What flows in a boom: the flow and pressure at every tip, and what of the pressure is lost where.

use sprayer::plumbing::{NodeId, PlumbingError, Solved};
use units::{Flow, Length, Pressure, Quantity};

use super::network::{Places, SectionPlaces, pressure};
use super::{Boom, Section, Supply};

/// Flows and pressures of a boom.
#[derive(Clone, Debug, PartialEq)]
pub struct BoomFlows {
    /// The flow of all tips together; what a pump sends back to the tank is not in it.
    pub total: Flow,
    /// The pressure at the gauge, or at the pump.
    pub gauge: Pressure,
    /// The pressure where the feeds of the sections begin.
    pub manifold: Pressure,
    /// Where a pump feeds the boom.
    pub pump: Option<PumpFlows>,
    /// From left to right.
    pub sections: Vec<SectionFlows>,
}

/// What a pump gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PumpFlows {
    /// All that it gives.
    pub flow: Flow,
    /// What goes back through the bypass, where there is one.
    pub bypass: Option<Flow>,
    /// What goes to agitation, where there is any.
    pub agitation: Option<Flow>,
}

/// Flows and pressures of a section.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionFlows {
    /// Its tips together.
    pub flow: Flow,
    /// The pressure where the feed meets the boom's hose.
    pub entry: Pressure,
    /// What is lost on the way from the manifold to the running tip with the least pressure; `None` where no tip runs.
    pub lost: Option<Lost>,
    /// From left to right.
    pub tips: Vec<TipFlow>,
}

/// What is lost on the way to a tip. All of it together is the manifold's pressure less the tip's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lost {
    /// Which tip, counted from 1 within its section.
    pub tip: usize,
    /// In the feed with its valve and strainer.
    pub feed: Pressure,
    /// In the hose along the boom.
    pub hose: Pressure,
    /// In the tip's drop, body and strainer.
    pub body: Pressure,
    /// On the check valve.
    pub check_valve: Pressure,
    /// To height; what is gained downhill is negative.
    pub height: Pressure,
}

/// A tip's flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TipFlow {
    /// Out of it.
    pub flow: Flow,
    /// Before its orifice, behind the check valve; in the body of a plugged tip.
    pub pressure: Pressure,
    /// Whether it runs.
    pub state: TipState,
}

/// Whether a tip runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TipState {
    /// It sprays.
    Runs,
    /// It was said to be plugged.
    Plugged,
    /// The pressure before it does not open its check valve.
    Shut,
}

impl Boom {
    /// Returns the flow and pressure at every tip.
    ///
    /// *Assumptions*: flow at rest; each orifice gives its rated flow with water of 1000 kg/m³ and goes by the square root of
    /// the pressure; a check valve that is open takes off the pressure that opened it.
    ///
    /// *Errors*: every tip is plugged or shut; numbers that cannot be.
    ///
    /// *Source*: `sprayer::plumbing`, there with its sources.
    pub fn flows(&self) -> Result<BoomFlows, PlumbingError> {
        let places = self.places();
        let solved = places.network.solve()?;
        let at = Read { boom: self, solved: &solved };
        let sections: Vec<SectionFlows> = self
            .sections
            .iter()
            .zip(&places.sections)
            .map(|(section, found)| at.section(section, found, places.manifold))
            .collect();
        let total = Flow::from_si(sections.iter().map(|section| section.flow.si()).sum());
        if total.si() <= 0.0 {
            // What the bypass of a pump gives is no help to the boom.
            return Err(PlumbingError::NothingFlows);
        }
        Ok(BoomFlows {
            total,
            gauge: at.pressure(places.gauge),
            manifold: at.pressure(places.manifold),
            pump: matches!(self.supply, Supply::Pump(_)).then(|| pump(&solved, &places)),
            sections,
        })
    }
}

fn pump(solved: &Solved, places: &Places) -> PumpFlows {
    let flow = |outlet| Flow::from_si(solved.flow(outlet));
    PumpFlows {
        flow: Flow::from_si(solved.total()),
        bypass: places.bypass.map(flow),
        agitation: places.agitation.map(flow),
    }
}

/// Reads a solved network.
struct Read<'a> {
    boom: &'a Boom,
    solved: &'a Solved,
}

impl Read<'_> {
    fn pressure(&self, node: NodeId) -> Pressure {
        pressure(&self.boom.liquid, self.solved.pressure_head(node))
    }

    /// The pressure of a column of the liquid.
    fn column(&self, height: Length) -> Pressure {
        pressure(&self.boom.liquid, height.si())
    }

    fn section(&self, section: &Section, places: &SectionPlaces, manifold: NodeId) -> SectionFlows {
        let tips: Vec<TipFlow> = section
            .tips
            .iter()
            .zip(&places.tips)
            .map(|(tip, found)| {
                let flow = Flow::from_si(self.solved.flow(found.outlet));
                let before = self.pressure(found.end);
                let (state, pressure) = match tip {
                    None => (TipState::Plugged, before),
                    Some(_) if flow.si() > 0.0 => (TipState::Runs, before - section.check_valve),
                    Some(_) => (TipState::Shut, Pressure::ZERO),
                };
                TipFlow { flow, pressure, state }
            })
            .collect();
        SectionFlows {
            flow: Flow::from_si(tips.iter().map(|tip| tip.flow.si()).sum()),
            entry: self.pressure(places.entry),
            lost: self.lost(section, places, manifold, &tips),
            tips,
        }
    }

    fn lost(
        &self,
        section: &Section,
        places: &SectionPlaces,
        manifold: NodeId,
        tips: &[TipFlow],
    ) -> Option<Lost> {
        let running = tips.iter().enumerate().filter(|(_, tip)| tip.state == TipState::Runs);
        let (tip, _) =
            running.min_by(|(_, one), (_, other)| one.pressure.si().total_cmp(&other.pressure.si()))?;
        let place = &places.tips[tip];
        let (entry_up, tip_up) = (self.column(places.entry_height), self.column(section.heights[tip]));
        let (entry, on_hose) = (self.pressure(places.entry), self.pressure(place.on_hose));
        Some(Lost {
            tip: tip + 1,
            feed: self.pressure(manifold) - entry - entry_up,
            hose: entry + entry_up - on_hose - tip_up,
            body: on_hose - self.pressure(place.end),
            check_valve: section.check_valve,
            height: tip_up,
        })
    }
}
