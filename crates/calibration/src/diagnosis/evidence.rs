//! What one tip's cups say: how likely just these readings are, flow by flow, read right or misread.

use units::{Density, Quantity};

use super::offsets::{FLOWS, LOWEST_FLOW, flow_at, place, split};
use super::priors::Priors;
use crate::catch::{Catch, Uncertainties};
use crate::verdict::likelihood::Cup;

/// What a plugged tip may give, as shares of a new one's flow: nothing to a twentieth. Our own choice of steps.
const PLUGGED: [f64; 6] = [0.0, 0.01, 0.02, 0.03, 0.04, 0.05];

/// Beyond so many standard deviations nothing is left: 2e-9 of the likelihood. Our own choice.
const REACH: f64 = 6.0;
/// A cup whose marks nobody told is taken as marked by so much of what a new tip gives. Our assumption.
const UNTOLD_MARKS: f64 = 0.02;
/// So many of the slips of any size land anywhere, on every mark of up to so many times what was read or due, all alike; the
/// others near what was there. Our assumption.
const ANYWHERE_SHARE: f64 = 0.3;
const ANYWHERE: f64 = 3.0;
/// Slips of any size beyond so many standard deviations are among those that land anywhere. Our own choice.
const SLIP_REACH: f64 = 3.0;

/// How one catch is taken.
#[derive(Clone, Copy)]
pub(super) struct Taken<'a> {
    /// What a new tip gives (SI).
    pub new_flow: f64,
    /// The liquid's density.
    pub density: Density,
    /// The errors of reading and timing.
    pub doubts: &'a Uncertainties,
    /// What is believed.
    pub priors: &'a Priors,
}

/// One cup as it is taken: how much higher its tip's flow stood than at the pressure of the test, and its own timing.
#[derive(Clone, Copy, Debug)]
pub(super) struct OneCup<'a> {
    /// The cup.
    pub catch: &'a Catch,
    /// How much higher the flow stood when it was caught, as a logarithm: drift, another pressure, another section.
    pub by: f64,
    /// The standard uncertainty of its time that it shares with no other cup, in seconds.
    pub ends: f64,
}

/// One catch: its likelihood if read right, and if it was a slip, over the grid of flows and for plugged tips.
#[derive(Clone, Debug)]
pub(super) struct OneCatch {
    right: Vec<f64>,
    slip: Vec<f64>,
    plugged_right: [f64; 6],
    plugged_slip: f64,
}

/// All catches of one tip.
#[derive(Clone, Debug)]
pub(super) struct TipEvidence {
    /// The catches by themselves.
    pub catches: Vec<OneCatch>,
    /// The likelihood of all of them together at each flow.
    pub all: Vec<f64>,
    /// The same for a plugged tip.
    pub plugged: f64,
    /// The first and last place at which it differs from `floor`.
    pub stretch: (usize, usize),
    /// The likelihood far from every reading: all of them slips of any size.
    pub floor: f64,
    misread: f64,
}

impl OneCatch {
    fn of(one: &OneCup<'_>, taken: &Taken<'_>) -> Self {
        let OneCup { catch, by: drift, ends } = *one;
        let read = catch.volume(taken.density).si();
        let due = taken.new_flow * catch.time().si() * libm::exp(drift);
        let step = match catch.step(taken.density).si() {
            step if step > 0.0 => step,
            _ => UNTOLD_MARKS * due,
        };
        let cup = Cup {
            low: read - step / 2.0,
            high: read + step / 2.0,
            step,
            time: catch.time().si(),
            ends,
            handling: taken.doubts.handling,
        };
        let chance = (step / (ANYWHERE * read.max(due))).min(1.0);
        let right = curve(&cup, drift, taken.new_flow);
        let neighbour =
            |by: f64| curve(&Cup { low: cup.low + by, high: cup.high + by, ..cup }, drift, taken.new_flow);
        let priors = taken.priors;
        let mut slip = vec![ANYWHERE_SHARE * priors.any_slip * chance; FLOWS];
        if read > 0.0 {
            // A slip of any size lands on each mark alike within its reach: the height of its law times the mark.
            let weight = (1.0 - ANYWHERE_SHARE) * priors.any_slip * (step / read).min(1.0);
            any_slip(&mut slip, weight, libm::log(read / due), priors.any_slip_spread);
        }
        for marked in [neighbour(step), neighbour(-step)] {
            slip.iter_mut().zip(&marked).for_each(|(sum, value)| *sum += 0.5 * priors.one_mark * value);
        }
        for (weight, factor) in &priors.slips {
            add_shifted(&mut slip, &right, *weight, libm::log(*factor));
        }
        Self {
            plugged_right: PLUGGED.map(|share| cup.probability(share * due / cup.time)),
            plugged_slip: ANYWHERE_SHARE * priors.any_slip * chance,
            right,
            slip,
        }
    }
}

/// Adds a slip of any size: normal in the logarithm about what was read.
fn any_slip(slip: &mut [f64], weight: f64, read: f64, spread: f64) {
    let scale = weight / (spread * (2.0 * core::f64::consts::PI).sqrt());
    let first = place(LOWEST_FLOW, split(read - SLIP_REACH * spread).0);
    let last = place(LOWEST_FLOW, split(read + SLIP_REACH * spread).0).min(FLOWS - 1);
    for (here, sum) in slip.iter_mut().enumerate().take(last + 1).skip(first) {
        let off = (flow_at(here) - read) / spread;
        *sum += scale * libm::exp(-0.5 * off * off);
    }
}

/// The likelihood of a reading at each flow of the grid.
fn curve(cup: &Cup, drift: f64, new_flow: f64) -> Vec<f64> {
    let mut values = vec![0.0; FLOWS];
    let spread = |volume: f64| REACH * cup.smear(volume.max(0.0) / cup.time);
    let low = cup.low - spread(cup.low);
    let high = cup.high + 1.3 * spread(cup.high);
    let near = |volume: f64| {
        let flow = volume / cup.time / new_flow;
        if flow > 0.0 { split(libm::log(flow) - drift).0 } else { LOWEST_FLOW }
    };
    let last = (place(LOWEST_FLOW, near(high)) + 2).min(FLOWS);
    for (here, value) in values.iter_mut().enumerate().take(last).skip(place(LOWEST_FLOW, near(low))) {
        *value = cup.probability(new_flow * libm::exp(flow_at(here) + drift));
    }
    values
}

/// Adds a curve moved: what stands at `by` above a flow is added at that flow.
pub(super) fn add_shifted(sum: &mut [f64], curve: &[f64], weight: f64, by: f64) {
    let (steps, part) = split(by);
    add_moved(sum, curve, weight * (1.0 - part), steps);
    add_moved(sum, curve, weight * part, steps + 1);
}

/// The same by whole steps; nothing stands beyond the curve's ends.
fn add_moved(sum: &mut [f64], curve: &[f64], weight: f64, steps: i32) {
    let ahead = place(0, steps);
    let behind = place(0, -steps);
    let from = curve.get(ahead..).unwrap_or(&[]);
    let to = sum.get_mut(behind..).unwrap_or(&mut []);
    to.iter_mut().zip(from).for_each(|(sum, value)| *sum += weight * value);
}

impl TipEvidence {
    /// The cups of one tip.
    pub fn of(cups: &[OneCup<'_>], taken: &Taken<'_>) -> Self {
        let misread = taken.priors.misread();
        let catches: Vec<OneCatch> = cups.iter().map(|cup| OneCatch::of(cup, taken)).collect();
        let mut all = vec![1.0; FLOWS];
        let mut floor = 1.0;
        for catch in &catches {
            for ((all, right), slip) in all.iter_mut().zip(&catch.right).zip(&catch.slip) {
                *all *= (1.0 - misread) * right + misread * slip;
            }
            floor *= misread * catch.plugged_slip;
        }
        let differs = |value: &f64| (value - floor).abs() > 1e-12 * floor;
        let stretch = match (all.iter().position(differs), all.iter().rposition(differs)) {
            (Some(first), Some(last)) => (first, last),
            _ => (0, 0),
        };
        let plugged = (0..PLUGGED.len())
            .map(|which| {
                let of = |catch: &OneCatch| {
                    (1.0 - misread) * catch.plugged_right[which] + misread * catch.plugged_slip
                };
                catches.iter().map(of).product::<f64>()
            })
            .sum::<f64>()
            / PLUGGED.len() as f64;
        Self { catches, all, plugged, stretch, floor, misread }
    }

    /// The chance that each catch was misread, at a flow of the grid.
    pub fn misread_at(&self, catch: &OneCatch, place: usize) -> f64 {
        self.chance_of_slip(catch.right[place], catch.slip[place])
    }

    /// The same for a plugged tip.
    pub fn misread_if_plugged(&self, catch: &OneCatch) -> f64 {
        let right = catch.plugged_right.iter().sum::<f64>() / PLUGGED.len() as f64;
        self.chance_of_slip(right, catch.plugged_slip)
    }

    fn chance_of_slip(&self, right: f64, slip: f64) -> f64 {
        let wrong = self.misread * slip;
        let all = (1.0 - self.misread) * right + wrong;
        if all > 0.0 { wrong / all } else { self.misread }
    }
}
