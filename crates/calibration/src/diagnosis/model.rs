//! What is known beside a round of cups: how they were read, what is believed, what else was read and seen.

use sprayer::RatedFlow;
use units::Pressure;

use super::priors::Priors;
use super::seen::{Looked, Seen};
use crate::catch::{Catch, TipCatches, Uncertainties};
use crate::doubt::of_marks;

/// What the tips are held against.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rated {
    /// What a new tip gives.
    pub rated: RatedFlow,
    /// The pressure that was read.
    pub pressure: Pressure,
}

/// How cups are read and what is believed and seen beside them. All but the cups may be left at its default.
#[derive(Clone, Debug, Default)]
pub struct DiagnosisModel {
    /// The errors of reading and timing.
    pub doubts: Uncertainties,
    /// What is believed beforehand.
    pub priors: Priors,
    /// The order in which tips were caught, by number, where it is known; a tip may stand twice.
    pub order: Vec<u32>,
    /// What was seen beside the cups.
    pub seen: Vec<Seen>,
    /// Cups caught at other pressures, nothing else being changed. They count where the rated pressure is known.
    pub others: Vec<OtherPressure>,
    /// Pressures read at tips with a gauge that is trusted, while the boom ran as for the cups.
    pub tip_pressures: Vec<TipPressure>,
    /// Cups of one new tip of the same size, fitted and caught here and now.
    pub new_tip: Vec<Catch>,
    /// The sprayer's own gauge.
    pub gauge: Gauge,
    /// Tips that were swapped and caught again, nothing else being changed.
    pub swaps: Vec<Swap>,
    /// What was seen of the sprayer as a whole.
    pub looked: Vec<Looked>,
}

impl DiagnosisModel {
    /// The model with what was seen of the sprayer as a whole counted in.
    pub(super) fn looked_at(&self) -> Self {
        let mut model = self.clone();
        for looked in model.looked.clone() {
            looked.weigh(&mut model.priors);
            if looked == Looked::Foam {
                model.doubts.handling = model.doubts.handling.max(FOAM);
            }
        }
        model
    }
}

/// How well a foaming cup is read: a standard uncertainty, as a share. Our assumption: a finger of foam on a full cup.
const FOAM: f64 = 0.02;

/// Two tips swapped, and the cups caught after.
#[derive(Clone, Debug, PartialEq)]
pub struct Swap {
    /// Their numbers as they stood before.
    pub tips: (u32, u32),
    /// The cups caught after at the place of the first, which now has the second tip, and at the place of the second.
    pub after: [Vec<Catch>; 2],
}

/// Some tips caught at another pressure.
#[derive(Clone, Debug, PartialEq)]
pub struct OtherPressure {
    /// The pressure read off the same gauge.
    pub pressure: Pressure,
    /// The tips that were caught, one to all of them.
    pub tips: Vec<TipCatches>,
}

/// A pressure read at a tip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TipPressure {
    /// The tip's number.
    pub tip: u32,
    /// The pressure.
    pub pressure: Pressure,
    /// Its standard uncertainty from the gauge's marks.
    pub doubt: Pressure,
}

/// The gauge that the pressure was read off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gauge {
    /// The standard uncertainty of one reading, from its marks.
    pub doubt: Pressure,
    /// What it shows when nothing runs, where that was looked at.
    pub rests_at: Option<Pressure>,
}

impl Default for Gauge {
    /// Marks every 2 psi. Our assumption for a good small gauge.
    fn default() -> Self {
        Self { doubt: of_marks(Pressure::psi(2.0)), rests_at: None }
    }
}
