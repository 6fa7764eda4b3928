//! Each tip against a new one: wear shows here even when the whole boom is worn alike.

use sprayer::{FlowError, GroupId, RatedFlow};
use units::{Density, Flow, Pressure, Quantity, Verdict};

use super::conformity::Risk;
use super::error::CatchError;
use super::limit::Limit;
use super::measured::{DeviationRange, Uncertainties, flow_of, own_relative, square};
use super::round::{Round, TipCatches};
use super::summary::plugged_line;

/// The group of tips that are in no group of their own: those the fitted tip is named for.
const USUAL_GROUP: GroupId = GroupId(0);

/// What a new tip gives, and how well that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NewTip {
    /// The maker's rated flow, brought to the pressure at the tip; the pressure's standard uncertainty with it.
    Rated {
        /// The rated flow.
        rated: RatedFlow,
        /// The pressure at the tips.
        pressure: Pressure,
        /// The standard uncertainty of that pressure.
        pressure_doubt: Pressure,
    },
    /// One new tip of the same size, fitted and caught with the same cup and watch, whose errors then cancel.
    Caught {
        /// Its flow.
        flow: Flow,
        /// Its own relative standard uncertainty.
        doubt: f64,
    },
}

impl NewTip {
    /// A new tip that was fitted and caught with the same cup and watch as the others.
    ///
    /// *Errors*: nothing came out of it.
    pub fn from_catch(
        tip: &TipCatches,
        density: Density,
        doubts: &Uncertainties,
    ) -> Result<Self, CatchError> {
        let flow = Flow::from_si(flow_of(tip, density));
        if flow.is_positive() {
            Ok(Self::Caught { flow, doubt: own_relative(tip, density, doubts) })
        } else {
            Err(CatchError::NothingCaught)
        }
    }

    /// The flow of a new tip.
    ///
    /// *Errors*: a pressure of nothing.
    pub fn flow(&self) -> Result<Flow, FlowError> {
        match self {
            Self::Rated { rated, pressure, .. } => rated.flow_at(*pressure),
            Self::Caught { flow, .. } => Ok(*flow),
        }
    }

    /// The relative standard uncertainty that a comparison with it brings in, shared by every tip.
    pub(crate) fn shared_doubt(&self, doubts: &Uncertainties) -> f64 {
        match self {
            // Flow goes with the square root of pressure, so half of the pressure's relative error counts.
            Self::Rated { pressure, pressure_doubt, .. } => {
                let half = 0.5 * pressure_doubt.ratio_to(*pressure);
                (square(doubts.cup_scale) + square(doubts.watch) + square(half)).sqrt()
            }
            Self::Caught { doubt, .. } => *doubt,
        }
    }
}

/// One tip against new.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AgainstNew {
    /// The tip's number.
    pub number: u32,
    /// How far off new, with the range the readings, the cup, the watch and the gauge give.
    pub measured: DeviationRange,
    /// The plain rule on the readings as they stand.
    pub as_read: Verdict,
    /// The verdict at the risk taken.
    pub verdict: Verdict,
}

/// Returns each tip that runs against a new one. A plugged tip says nothing about wear or size and is left out; so are
/// groups of their own, whose tips are meant to be others than the new one.
///
/// *Units*: shares of the new tip's flow.
///
/// *Assumptions*: the pressure is that at the tips; cup scale, watch and gauge errors are the same for every tip
/// and do not average out. A new tip has a tolerance of its own (a study of 1,565 new tips of three makers found
/// 20 % of them beyond the makers' own: Huyghebaert et al., Trans. ASAE 44(4), 2001, 769–773), so a catch of one new tip is better.
///
/// *Errors*: a pressure of nothing.
///
/// *Source*: JCGM 100:2008 (GUM) 5.1.2 with the square-root law of an orifice; held to GTC 1.5.1 by test.
///
/// *Example*: 14 fl oz in 30 s is 0.21875 gal/min, 9.4 % over a size 02 tip at 40 psi.
pub fn against_new(
    round: &Round,
    new: &NewTip,
    limit: &Limit,
    doubts: &Uncertainties,
    risk: Risk,
) -> Result<Vec<AgainstNew>, FlowError> {
    let reference = new.flow()?.si();
    let shared = new.shared_doubt(doubts);
    let against = |tip: &TipCatches| {
        let ratio = flow_of(tip, round.density) / reference;
        let own = if ratio > 0.0 { own_relative(tip, round.density, doubts) } else { 0.0 };
        let range = DeviationRange::of(ratio - 1.0, ratio * (square(own) + square(shared)).sqrt());
        AgainstNew {
            number: tip.number,
            measured: range,
            as_read: limit.as_read(range.deviation),
            verdict: risk.verdict(range.probability_within(limit)),
        }
    };
    let caught = || round.tips.iter().filter(|tip| !tip.catches.is_empty() && tip.group == USUAL_GROUP);
    let line = plugged_line(&caught().collect::<Vec<_>>(), round);
    Ok(caught().filter(|tip| flow_of(tip, round.density) > line).map(against).collect())
}
