//! What one tip's cups say about its flow: the probability of just these readings, flow by flow.

use units::{Density, Quantity};

use super::grid::FlowGrid;
use crate::catch::{TipCatches, Uncertainties};

/// The likelihood of one tip's cups over a stretch of the flow grid; nothing outside the stretch.
#[derive(Clone, Debug)]
pub(super) struct Likelihood {
    /// The first node of the stretch.
    pub first: usize,
    /// The likelihood at each node from there on.
    pub values: Vec<f64>,
    /// The integral of it over relative flows.
    pub mass: f64,
    /// Its centre, a relative flow.
    pub centre: f64,
}

impl Likelihood {
    /// A tip that was not caught: every flow is as likely as before.
    pub fn of_nothing(grid: &FlowGrid) -> Self {
        Self::new(0, vec![1.0; grid.nodes()], grid)
    }

    fn new(first: usize, values: Vec<f64>, grid: &FlowGrid) -> Self {
        let (mut mass, mut moment) = (0.0, 0.0);
        for (place, value) in values.iter().enumerate() {
            mass += value;
            moment += value * grid.relative(first + place);
        }
        let centre = if mass > 0.0 { moment / mass } else { grid.relative(first) };
        Self { first, values, mass: mass * grid.step(), centre }
    }

    /// The likelihood of a tip's cups.
    pub fn of(tip: &TipCatches, cups: &CupModel<'_>, grid: &FlowGrid) -> Self {
        let mut stretch: Option<(usize, usize)> = None;
        let catches: Vec<Cup> =
            tip.catches.iter().zip(0..).map(|(catch, turn)| cups.cup(catch, turn)).collect();
        for cup in &catches {
            let (first, last) = cup.stretch(grid);
            stretch = Some(match stretch {
                None => (first, last),
                // Cups that contradict each other still leave a likelihood between them, however small.
                Some((from, to)) => (from.min(first), to.max(last)),
            });
        }
        let Some((first, last)) = stretch else { return Self::of_nothing(grid) };
        let values = (first..=last).map(|node| {
            let flow = grid.flow(node);
            catches
                .iter()
                .map(|cup| (1.0 - cups.misread) * cup.probability(flow) + cups.misread * cup.by_chance())
                .product()
        });
        let found = Self::new(first, values.collect(), grid);
        if found.mass > 0.0 {
            return found;
        }
        // A reading far beyond the grid: all that is known is that the flow lies at its end.
        Self::new(grid.nodes() - 1, vec![1.0], grid)
    }
}

/// How cups are read and timed, and what is assumed of a shared run and of drift.
#[derive(Clone, Copy)]
pub(super) struct CupModel<'a> {
    /// The liquid's density.
    pub density: Density,
    /// The errors of reading and timing.
    pub doubts: &'a Uncertainties,
    /// How late the shared run was stopped, in seconds.
    pub late: f64,
    /// The drift of the flow over the whole test, as a share.
    pub drift: f64,
    /// The share of cups that are misread.
    pub misread: f64,
    /// When each cup of the tip was caught, from −½ at the first cup of the test to ½ at the last.
    pub turns: &'a [f64],
}

impl CupModel<'_> {
    fn cup(&self, catch: &crate::catch::Catch, turn: usize) -> Cup {
        let step = catch.step(self.density).si();
        let read = catch.volume(self.density).si();
        let shared = catch.run().is_some();
        // Drift changes the flow; for the volume it is as if the cup had been held that much longer.
        let drifted = 1.0 + self.drift * self.turns.get(turn).copied().unwrap_or(0.0);
        let time = (catch.time().si() + if shared { self.late } else { 0.0 }) * drifted;
        let ends = if shared { 0.0 } else { core::f64::consts::SQRT_2 * self.doubts.timer.si() };
        Cup {
            low: read - step / 2.0,
            high: read + step / 2.0,
            step,
            time,
            ends,
            handling: self.doubts.handling,
        }
    }
}

#[derive(Clone, Copy)]
/// One cup: the interval its reading leaves open, and how that interval is smeared.
pub(crate) struct Cup {
    /// The low end of the interval, a volume (SI).
    pub low: f64,
    /// The high end.
    pub high: f64,
    /// The distance between marks.
    pub step: f64,
    /// How long it was held, in seconds.
    pub time: f64,
    /// The standard uncertainty of that time.
    pub ends: f64,
    /// That of handling, a share.
    pub handling: f64,
}

/// Eye level and foam soften the edge of a mark by a tenth of a step. Our assumption.
const SOFT_EDGE: f64 = 0.1;
/// Beyond so many standard deviations nothing is left: 1e-10 of the likelihood. Our own choice.
const REACH: f64 = 6.0;

impl Cup {
    /// The probability that a flow gives just this reading.
    pub fn probability(&self, flow: f64) -> f64 {
        let volume = flow * self.time;
        let smear = self.smear(flow);
        if self.step == 0.0 {
            // A reading without marks is taken as it stands: a density, not an interval.
            let off = (volume - self.low) / smear;
            return libm::exp(-0.5 * off * off) / smear;
        }
        let from = (self.low - volume) / smear * core::f64::consts::FRAC_1_SQRT_2;
        let to = (self.high - volume) / smear * core::f64::consts::FRAC_1_SQRT_2;
        // The difference of two tails, taken on the side where both are small, keeps its digits.
        if from > 0.0 {
            0.5 * (libm::erfc(from) - libm::erfc(to))
        } else {
            0.5 * (libm::erfc(-to) - libm::erfc(-from))
        }
    }

    /// The probability of just this reading if the cup was misread: one mark of all up to twice what was read.
    fn by_chance(&self) -> f64 {
        let most = self.low + self.high;
        if self.step > 0.0 && most > 0.0 { (self.step / most).min(1.0) } else { 0.0 }
    }

    /// The standard deviation of the caught volume at a flow: timing, handling and the soft edge of the marks.
    pub fn smear(&self, flow: f64) -> f64 {
        let timing = flow * self.ends;
        let handling = flow * self.time * self.handling;
        let edge = SOFT_EDGE * self.step;
        let smear = (timing * timing + handling * handling + edge * edge).sqrt();
        // A watch and a cup without any error still cannot be sharper than the grid.
        smear.max(1e-4 * flow * self.time).max(f64::MIN_POSITIVE)
    }

    fn stretch(&self, grid: &FlowGrid) -> (usize, usize) {
        let (low, high) = (self.low.max(0.0) / self.time, self.high / self.time);
        let (below, above) = (self.smear(low) * REACH / self.time, self.smear(high) * REACH / self.time);
        // The smear grows with the flow, so the upper reach is taken once more at the upper end.
        let top = high + above;
        let last = grid.node_below(top + self.smear(top) * 0.5 / self.time) + 1;
        (grid.node_below(low - below), last.min(grid.nodes() - 1))
    }
}

/// The standard deviation of the sharpest cup, as a share of the flow: what the grid must resolve.
pub(super) fn sharpness(tip: &TipCatches, cups: &CupModel<'_>) -> f64 {
    let mut precision = 0.0;
    for catch in &tip.catches {
        let cup = cups.cup(catch, 0);
        let volume = f64::midpoint(cup.low.max(0.0), cup.high);
        if volume > 0.0 {
            let share = cup.smear(volume / cup.time) / volume;
            precision += 1.0 / (share * share);
        }
    }
    if precision > 0.0 { 1.0 / precision.sqrt() } else { 1.0 }
}
