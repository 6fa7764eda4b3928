//! What the boom's offset is made of: the set of tips, the pressure that reaches them, the cup.
//!
//! At one pressure the cups give only their sum. A second pressure, a pressure read at a tip and a new tip caught here each
//! speak of some of them, so together they take it apart. The pressure's zero (gauge offset, check valves, strainers, lines)
//! is summed on a grid; all else is normal given that, and exact.

use units::{Pressure, Quantity};

use super::changed::Changed;
use super::offsets::{BOOM_REACH, STEP, at};
use super::quantile::{TOLD, quantile};

/// How a boom may be off: one of several kinds of boom with its weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartLaw {
    /// How many booms are of this kind.
    pub weight: f64,
    /// How far the whole set of tips is off: standard deviation of the logarithm of flow.
    pub set: f64,
    /// How far the gauge's scale is off: standard deviation, a share of pressure.
    pub gauge: f64,
    /// How much pressure is lost or shown too much whatever the pressure is: standard deviation, a share of the pressure of
    /// the test.
    pub zero: f64,
}

/// What was read beside the cups. Flows as logarithms against a new tip at the pressure that was read.
#[derive(Clone, Debug, Default)]
pub(super) struct ReadBeside {
    /// What a new tip gave here, and its standard uncertainty.
    pub new: Option<(f64, f64)>,
    /// What pressures at tips of free sections stand for, each with its standard uncertainty.
    pub tips: Vec<(f64, f64)>,
    /// What the gauge shows at rest, as a share of the pressure of the test, and its standard uncertainty.
    pub rests_at: Option<(f64, f64)>,
    /// The cups at other pressures.
    pub changed: Vec<Changed>,
    /// The spread of one reading of the gauge.
    pub gauge: f64,
}

/// A middle, as likely more as less, and the ends of its 95 % range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Middle<T = f64> {
    /// As likely more as less.
    pub middle: T,
    /// The low end.
    pub low: T,
    /// The high end.
    pub high: T,
}

/// What the boom's offset is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoomParts {
    /// What the set gives more than new tips would at the pressure that reaches it (a share).
    pub set: Middle,
    /// How much more pressure reaches the tips than was read (a share); nothing where no pressure is known.
    pub pressure: Option<Middle>,
    /// The part of it that stays the same at every pressure, where a second pressure tells: shown too much, or lost in check
    /// valves and lines.
    pub zero: Option<Middle<Pressure>>,
}

/// The boom's parts, taken together with what was read beside the cups.
pub(super) struct Parts {
    entries: Vec<Entry>,
    told: bool,
    pressed: bool,
}

/// One node of the pressure's zero for one kind of boom.
struct Entry {
    weight: f64,
    /// The weight before other pressures were counted.
    before: f64,
    share: f64,
    /// What the zero does to flow.
    zero: f64,
    set: f64,
    /// Cup and gauge scale together: mean and variance.
    both: (f64, f64),
    /// The gauge's scale by itself.
    scale: (f64, f64),
    /// How they go together.
    together: f64,
}

/// The zeros that are tried: shares of the pressure, so many steps either way. Our own choice: 80 % lost is a shut valve.
const ZERO_STEP: f64 = 0.005;
const ZEROS: i32 = 160;
/// Entries with less weight are left out. Our own choice.
const NOTHING: f64 = 1e-9;
/// The grid on which parts are told reaches so many steps either way: twice the boom's. Our own choice.
const TOLD_REACH: i32 = 2 * BOOM_REACH;

fn normal(off: f64, variance: f64) -> f64 {
    libm::exp(-0.5 * off * off / variance) / variance.sqrt()
}

impl Parts {
    /// `cup` is the spread of the cup's scale and the watch's rate, which shift every cup alike.
    pub fn of(read: &ReadBeside, laws: &[PartLaw], cup: f64) -> Self {
        let mut entries = Vec::new();
        for law in laws {
            let grid = if law.zero > 0.0 { ZEROS } else { 0 };
            for node in -grid..=grid {
                let share = f64::from(node) * ZERO_STEP;
                let spread = law.zero.max(ZERO_STEP);
                let mut weight = law.weight * normal(share, spread * spread);
                if let Some((rests, doubt)) = read.rests_at {
                    weight *= normal(share - rests, doubt * doubt);
                }
                entries.push(Entry::of(share, weight, law, read, cup));
            }
        }
        let most = entries.iter().map(|entry| entry.weight).fold(0.0, f64::max);
        entries.retain(|entry| entry.weight > NOTHING * most);
        for entry in &mut entries {
            for changed in &read.changed {
                entry.weight *= changed.likely(entry.share);
            }
        }
        let most = entries.iter().map(|entry| entry.weight).fold(f64::MIN_POSITIVE, f64::max);
        entries.retain(|entry| entry.weight > NOTHING * most);
        let told = !read.changed.is_empty();
        Self { entries, told, pressed: laws.iter().any(|law| law.zero > 0.0) }
    }

    /// What is believed of the boom's offset: weights over its nodes.
    pub fn believed(&self) -> Vec<f64> {
        (-BOOM_REACH..=BOOM_REACH)
            .map(|boom| self.entries.iter().map(|entry| entry.at(at(boom))).sum::<f64>())
            .map(|weight| weight.max(f64::MIN_POSITIVE))
            .collect()
    }

    /// What is believed of the change to another pressure, before the cups caught there: zeros with their weights.
    pub fn zeros(&self) -> impl Iterator<Item = (f64, f64)> {
        self.entries.iter().map(|entry| (entry.share, entry.before))
    }

    /// The parts, given the weights of the boom's offsets that the cups leave, and the pressure of the test.
    pub fn told(&self, booms: &[f64], pressure_read: Option<Pressure>) -> BoomParts {
        let mut set = vec![0.0; grid_of(TOLD_REACH)];
        let mut pressure = vec![0.0; grid_of(TOLD_REACH)];
        let mut zero = vec![0.0; grid_of(ZEROS)];
        let nodes: Vec<(f64, f64)> = (-BOOM_REACH..=BOOM_REACH)
            .zip(booms)
            .filter(|(_, weight)| **weight > NOTHING)
            .map(|(boom, weight)| {
                let all: f64 = self.entries.iter().map(|entry| entry.at(at(boom))).sum();
                (at(boom), if all > 0.0 { weight / all } else { 0.0 })
            })
            .collect();
        for entry in &self.entries {
            let (mut all, mut first, mut second) = (0.0, 0.0, 0.0);
            for (boom, per) in &nodes {
                let weight = per * entry.at(*boom);
                all += weight;
                first += weight * boom;
                second += weight * boom * boom;
            }
            if all < NOTHING {
                continue;
            }
            let mean = first / all;
            let spread = (second / all - mean * mean).max(0.0);
            // Given the boom's offset the set takes its share of what is left over, the gauge's scale its own.
            let left = mean - entry.zero - entry.both.0;
            let whole = entry.set * entry.set + entry.both.1;
            let to_set = entry.set * entry.set / whole;
            let to_scale = entry.together / whole;
            put(&mut set, all, to_set * left, to_set * entry.both.1 + to_set * to_set * spread);
            let scale = (entry.scale.1 - entry.together * to_scale).max(0.0) + to_scale * to_scale * spread;
            put(&mut pressure, all, entry.zero + entry.scale.0 + to_scale * left, scale);
            let place = (entry.share / ZERO_STEP).round() + f64::from(ZEROS);
            if let Some(sum) = zero.iter_mut().enumerate().find(|(at, _)| (*at as f64 - place).abs() < 0.5) {
                *sum.1 += all;
            }
        }
        let flow = |share: f64, weights: &[f64]| (quantile(weights, share) - f64::from(TOLD_REACH)) * STEP;
        let zero_at = |share: f64| (quantile(&zero, share) - f64::from(ZEROS)) * ZERO_STEP;
        BoomParts {
            set: middle(|share| libm::expm1(flow(share, &set))),
            // Flow goes with the square root of pressure.
            pressure: self.pressed.then(|| middle(|share| libm::expm1(2.0 * flow(share, &pressure)))),
            zero: pressure_read
                .filter(|_| self.pressed && self.told)
                .map(|read| middle(|share| Pressure::from_si(read.si() * zero_at(share)))),
        }
    }
}

fn middle<T>(of: impl Fn(f64) -> T) -> Middle<T> {
    let [middle, low, high] = TOLD.map(of);
    Middle { middle, low, high }
}

const fn grid_of(reach: i32) -> usize {
    2 * reach.unsigned_abs() as usize + 1
}

/// Adds a normal law to weights over the grid of what is told.
fn put(weights: &mut [f64], weight: f64, mean: f64, variance: f64) {
    // A law narrower than the grid still stands on it.
    let spread = (variance + STEP * STEP / 12.0).sqrt();
    let law = |place: usize| {
        let off = (place as f64 - f64::from(TOLD_REACH)) * STEP - mean;
        if off.abs() > 5.0 * spread { 0.0 } else { libm::exp(-0.5 * off * off / (spread * spread)) }
    };
    let laws: Vec<f64> = (0..weights.len()).map(law).collect();
    let all: f64 = laws.iter().sum();
    if all > 0.0 {
        weights.iter_mut().zip(laws).for_each(|(sum, law)| *sum += weight * law / all);
    }
}

impl Entry {
    /// The zero is fixed here; what was read updates cup and gauge as for any normal law (Kalman's step).
    fn of(share: f64, prior: f64, law: &PartLaw, read: &ReadBeside, cup: f64) -> Self {
        let zero = 0.5 * libm::log1p(-share);
        let mut means = [0.0, 0.0];
        // Flow goes with the square root of pressure: half of the gauge's relative error.
        let mut variances = [cup * cup, 0.25 * law.gauge * law.gauge + read.gauge * read.gauge];
        let mut together = 0.0;
        let mut weight = prior;
        let mut update = |on_cup: f64, value: f64, doubt: f64| {
            let gain = [on_cup * variances[0] + together, on_cup * together + variances[1]];
            let spread = on_cup * gain[0] + gain[1] + doubt * doubt;
            let off = value - zero - on_cup * means[0] - means[1];
            weight *= normal(off, spread);
            for which in 0..2 {
                means[which] += gain[which] / spread * off;
                variances[which] -= gain[which] * gain[which] / spread;
            }
            together -= gain[0] * gain[1] / spread;
        };
        if let Some((value, doubt)) = read.new {
            update(1.0, value, doubt);
        }
        for (value, doubt) in &read.tips {
            update(0.0, *value, *doubt);
        }
        let both = (means[0] + means[1], variances[0] + variances[1] + 2.0 * together);
        Self {
            weight,
            before: weight,
            share,
            zero,
            set: law.set,
            both,
            scale: (means[1], variances[1]),
            together: variances[1] + together,
        }
    }

    /// Its weight together with an offset of the boom.
    fn at(&self, boom: f64) -> f64 {
        let variance = self.set * self.set + self.both.1;
        self.weight * normal(boom - self.zero - self.both.0, variance)
    }
}
