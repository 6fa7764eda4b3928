//! What the readings alone say: the GUM range of each tip's deviation from the mean.

use std::collections::BTreeMap;

use units::{Density, NORMAL_95, Quantity, Time};

use super::round::TipCatches;

/// How well cups are read and timed. Every value is an input; the defaults are planning values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Uncertainties {
    /// Standard uncertainty of starting, and again of stopping, the watch by hand.
    pub timer: Time,
    /// Relative standard uncertainty of handling one cup: foam, tilt, a wet cup.
    pub handling: f64,
    /// Relative standard uncertainty of the cup's scale, shared by every catch.
    pub cup_scale: f64,
    /// Relative standard uncertainty of the watch's rate, shared by every catch.
    pub watch: f64,
}

impl Default for Uncertainties {
    /// 0.2 s at each end (planning value for hand timing, our assumption); handling 0.5 %, cup scale 1 %,
    /// watch 0.1 % (our assumptions).
    fn default() -> Self {
        Self { timer: Time::seconds(0.2), handling: 0.005, cup_scale: 0.01, watch: 0.001 }
    }
}

/// The range of one tip's deviation, as shares of the mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeviationRange {
    /// The deviation as read.
    pub deviation: f64,
    /// Its standard uncertainty.
    pub standard: f64,
    /// The low end of its 95 % range.
    pub low: f64,
    /// The high end of its 95 % range.
    pub high: f64,
}

impl DeviationRange {
    pub(crate) fn of(deviation: f64, standard: f64) -> Self {
        Self {
            deviation,
            standard,
            low: deviation - NORMAL_95 * standard,
            high: deviation + NORMAL_95 * standard,
        }
    }
}

/// Returns the range that the readings alone give for each tip's deviation from the mean of these tips.
///
/// *Units*: shares of the mean, in the order of `tips`; tips without a catch must not be among them.
///
/// *Assumptions*: first-order propagation, coverage 95 % by the normal law. Reading a cup to its nearest mark
/// has u = step ÷ √12; it does not average out over repeats with the same cup, so the reading errors of one
/// tip's repeats are taken as fully shared. Timing has the watch's start and stop, once for each timed run;
/// handling is each cup's own. The cup's scale and the watch's rate cancel in a comparison of tips.
///
/// *Source*: JCGM 100:2008 (GUM) 4.3.7, 5.1.2, 5.2.2, F.2.2.1; held to GTC 1.5.1 by test.
///
/// *Example*: one tip of 20 alike, 12.8 fl oz to the ounce in 30 s:
/// √((0.2887 ÷ 12.8)² + (0.2828 ÷ 30)² + 0.005²)·√(1 − 1/20) = 2.43 %.
#[must_use]
pub fn measured(tips: &[&TipCatches], density: Density, doubts: &Uncertainties) -> Vec<DeviationRange> {
    let flows: Vec<f64> = tips.iter().map(|tip| flow_of(tip, density)).collect();
    let sum: f64 = flows.iter().sum();
    if sum <= 0.0 {
        return Vec::new();
    }
    let count = flows.len() as f64;
    let weights: Vec<f64> = flows.iter().map(|flow| flow / sum).collect();

    // Every error source with its relative effect on each tip it touches.
    let mut own = vec![0.0; tips.len()]; // squares of effects that touch one tip alone
    let mut shared: BTreeMap<u32, Vec<(usize, f64)>> = BTreeMap::new(); // by timed run
    let ends = core::f64::consts::SQRT_2 * doubts.timer.si();
    for (place, tip) in tips.iter().enumerate() {
        let volume: f64 = tip.catches.iter().map(|catch| catch.volume(density).si()).sum();
        let time: f64 = tip.catches.iter().map(|catch| catch.time().si()).sum();
        let reading: f64 =
            tip.catches.iter().map(|catch| catch.step(density).si()).sum::<f64>() / 12.0_f64.sqrt();
        own[place] += square(reading / volume);
        for catch in &tip.catches {
            own[place] += square(doubts.handling * catch.volume(density).si() / volume);
            match catch.run() {
                None => own[place] += square(ends / time),
                Some(run) => shared.entry(run).or_default().push((place, -ends / time)),
            }
        }
    }

    // d = q·n ÷ Σq − 1, so an effect c moves it by (1 + d)·(c on this tip − Σ weight·c).
    let own_all: f64 = own.iter().zip(&weights).map(|(own, weight)| own * square(*weight)).sum();
    let mut variances: Vec<f64> = (0..tips.len())
        .map(|place| {
            own_all - own[place] * square(weights[place]) + own[place] * square(1.0 - weights[place])
        })
        .collect();
    for effects in shared.values() {
        let mut on_tip = vec![0.0; tips.len()];
        for (place, effect) in effects {
            on_tip[*place] += effect;
        }
        let on_mean: f64 = on_tip.iter().zip(&weights).map(|(effect, weight)| effect * weight).sum();
        for (variance, effect) in variances.iter_mut().zip(&on_tip) {
            *variance += square(effect - on_mean);
        }
    }
    flows
        .iter()
        .zip(variances)
        .map(|(flow, variance)| {
            let relative = flow * count / sum;
            DeviationRange::of(relative - 1.0, relative * variance.max(0.0).sqrt())
        })
        .collect()
}

/// The relative standard uncertainty of one tip's flow from what is its own: reading, timing, handling.
pub(crate) fn own_relative(tip: &TipCatches, density: Density, doubts: &Uncertainties) -> f64 {
    let volume: f64 = tip.catches.iter().map(|catch| catch.volume(density).si()).sum();
    let time: f64 = tip.catches.iter().map(|catch| catch.time().si()).sum();
    let reading: f64 =
        tip.catches.iter().map(|catch| catch.step(density).si()).sum::<f64>() / 12.0_f64.sqrt();
    let mut variance = square(reading / volume);
    for catch in &tip.catches {
        variance += square(doubts.handling * catch.volume(density).si() / volume);
        variance += square(core::f64::consts::SQRT_2 * doubts.timer.si() / time);
    }
    variance.sqrt()
}

/// The flow of one tip from all of its cups: all that was caught over all the time.
pub(crate) fn flow_of(tip: &TipCatches, density: Density) -> f64 {
    let volume: f64 = tip.catches.iter().map(|catch| catch.volume(density).si()).sum();
    let time: f64 = tip.catches.iter().map(|catch| catch.time().si()).sum();
    if time > 0.0 { volume / time } else { 0.0 }
}

pub(crate) fn square(value: f64) -> f64 {
    value * value
}
