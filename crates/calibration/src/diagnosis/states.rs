//! Each tip's readings under each cause, for every base it may stand on (boom and section together).

use super::cause::Cause;
use super::evidence::{TipEvidence, add_shifted};
use super::offsets::{BASES, FLOWS, HIGHEST_FLOW, LOWEST_BASE, LOWEST_FLOW, STEP, at, place};
use super::priors::{Broad, Priors};

/// A law of a tip's own offset: probabilities over nodes from the first on.
#[derive(Clone, Debug)]
struct Law {
    first: i32,
    shares: Vec<f64>,
}

/// The laws of all causes, ready to be laid over a tip's evidence.
#[derive(Clone, Debug)]
pub(super) struct Laws {
    sound: Law,
    worn: Law,
    partly_plugged: Law,
    /// Other sizes: weight, and the logarithm of their flow against the right one's.
    sizes: Vec<(f64, f64)>,
    shares: [f64; 5],
}

/// Sound tips beyond so many standard deviations are left out: 6e-5 of them, and those only of the widest law. Our own choice.
const SOUND_REACH: f64 = 4.0;
/// Broad laws are summed on every so-manyth base: 1 % for wear, 2 % for dirt, well within what their edges are wide.
/// Our own choice: finer ones move no chance by more than a hundredth.
const COARSE_WORN: usize = 2;
const COARSE_PLUGGED: usize = 4;
/// Bases with less weight than this, against the heaviest, are left out. Our own choice: no chance moves by a thousandth of
/// a percent.
const NOTHING: f64 = 1e-7;

impl Law {
    fn normal(laws: &[(f64, f64)]) -> Self {
        let widest = laws.iter().map(|(_, spread)| *spread).fold(STEP, f64::max);
        let reach = super::offsets::split(SOUND_REACH * widest).0 + 1;
        Self::of(-reach, reach, |offset| {
            let one = |(weight, spread): &(f64, f64)| {
                let off = offset / spread.max(STEP / 2.0);
                weight / spread.max(STEP / 2.0) * libm::exp(-0.5 * off * off)
            };
            laws.iter().map(one).sum()
        })
    }

    /// A broad law over shares; a share of flow is a logarithm here, so heights change with its slope.
    fn broad(law: &Broad) -> Self {
        let end = |share: f64| super::offsets::split(libm::log1p(share.max(-0.999))).0;
        let (low, high) = match (law.0.first(), law.0.last()) {
            (Some(first), Some(last)) => (end(first.0), end(last.0) + 1),
            _ => (0, 0),
        };
        Self::of(low, high, |offset| law.height(libm::expm1(offset)) * libm::exp(offset))
    }

    fn of(first: i32, last: i32, height: impl Fn(f64) -> f64) -> Self {
        let heights: Vec<f64> = (first..=last).map(|node| height(at(node))).collect();
        let sum: f64 = heights.iter().sum();
        let shares = heights.iter().map(|height| if sum > 0.0 { height / sum } else { 0.0 }).collect();
        Self { first, shares }
    }

    /// The likelihood on each base of some grid whose lowest node is `lowest`: flows weighed by the law about the base. Only
    /// every so-manyth base is summed; between them it runs straight.
    fn over(&self, evidence: &TipEvidence, lowest: i32, bases: usize, every: usize) -> Vec<f64> {
        let (first, last) = evidence.stretch;
        // Far from every reading the likelihood is flat; only what rises above it is summed.
        let above: Vec<f64> = evidence.all[first..=last].iter().map(|value| value - evidence.floor).collect();
        let start = i64::from(lowest) + i64::from(self.first)
            - i64::from(LOWEST_FLOW)
            - i64::try_from(first).unwrap_or(0);
        let sum_at = |base: usize| {
            // The place among `above` at which this base's first share stands.
            let start = start + i64::try_from(base).unwrap_or(0);
            let (skip, from) = match usize::try_from(start) {
                Ok(from) => (0, from),
                Err(_) => (usize::try_from(-start).unwrap_or(0), 0),
            };
            let shares = self.shares.get(skip..).unwrap_or(&[]);
            let above = above.get(from..).unwrap_or(&[]);
            shares.iter().zip(above).map(|(share, above)| share * above).sum::<f64>()
        };
        let mut table = vec![evidence.floor; bases];
        let mut before = sum_at(0);
        table[0] += before;
        for next in (every..bases + every - 1).step_by(every) {
            let here = sum_at(next);
            for between in 1..=every {
                if let Some(value) = table.get_mut(next - every + between) {
                    let along = between as f64 / every as f64;
                    *value += before + along * (here - before);
                }
            }
            before = here;
        }
        table
    }

    /// Spreads weights on bases over the flows.
    fn spread(&self, bases: &[f64], weight: f64, flows: &mut [f64]) {
        for (base, on) in (0_i64..).zip(bases).filter(|(_, on)| **on > NOTHING) {
            let start = base + i64::from(LOWEST_BASE) + i64::from(self.first) - i64::from(LOWEST_FLOW);
            let (skip, from) = match usize::try_from(start) {
                Ok(from) => (0, from),
                Err(_) => (usize::try_from(-start).unwrap_or(0), 0),
            };
            let shares = self.shares.get(skip..).unwrap_or(&[]);
            let flows = flows.get_mut(from..).unwrap_or(&mut []);
            let height = weight * on;
            flows.iter_mut().zip(shares).for_each(|(sum, share)| *sum += height * share);
        }
    }
}

/// One tip's likelihood by cause, on every base.
#[derive(Clone, Debug)]
pub(super) struct TipTables {
    /// In the order of [`Cause::ALL`]; a plugged tip's does not depend on the base.
    pub by_cause: [Vec<f64>; 5],
    /// All causes by their shares.
    pub all: Vec<f64>,
}

impl Laws {
    /// The laws; `sizes` are the flows of other sizes against the right one's.
    pub fn of(priors: &Priors, sizes: &[f64]) -> Self {
        Self {
            sound: Law::normal(&priors.sound),
            worn: Law::broad(&priors.worn),
            partly_plugged: Law::broad(&priors.partly_plugged),
            sizes: other_sizes(sizes, &priors.size_steps),
            shares: priors.tips.shares(),
        }
    }

    /// The tables of one tip; `says` weighs the causes by what was seen of this tip beside its cups.
    pub fn tables(&self, evidence: &TipEvidence, says: &[f64; 5]) -> TipTables {
        let span = place(LOWEST_FLOW, HIGHEST_FLOW) + 1;
        let sound_at_any = self.sound.over(evidence, LOWEST_FLOW, span, 1);
        let from = place(LOWEST_FLOW, LOWEST_BASE);
        let sound = sound_at_any[from..from + BASES].to_vec();
        let mut wrong = vec![0.0; BASES];
        for (weight, by) in &self.sizes {
            add_shifted(&mut wrong, &sound_at_any, *weight, *by + from as f64 * STEP);
        }
        let by_cause = [
            sound,
            self.worn.over(evidence, LOWEST_BASE, BASES, COARSE_WORN),
            self.partly_plugged.over(evidence, LOWEST_BASE, BASES, COARSE_PLUGGED),
            vec![evidence.plugged; BASES],
            wrong,
        ];
        let mut all = vec![0.0; BASES];
        for ((table, share), says) in by_cause.iter().zip(self.shares).zip(says) {
            all.iter_mut().zip(table).for_each(|(all, value)| *all += share * says * value);
        }
        all.iter_mut().for_each(|value| *value = value.max(f64::MIN_POSITIVE));
        TipTables { by_cause, all }
    }

    /// What a tip that runs may give under one cause, given weights on its bases: weights over flows, its cups not yet
    /// counted.
    pub fn flows(&self, cause: Cause, bases: &[f64]) -> Vec<f64> {
        let mut flows = vec![0.0; FLOWS];
        match cause {
            Cause::Sound => self.sound.spread(bases, 1.0, &mut flows),
            Cause::Worn => self.worn.spread(bases, 1.0, &mut flows),
            Cause::PartlyPlugged => self.partly_plugged.spread(bases, 1.0, &mut flows),
            Cause::Plugged => {}
            Cause::WrongTip => {
                let mut sound = vec![0.0; FLOWS];
                self.sound.spread(bases, 1.0, &mut sound);
                for (weight, by) in &self.sizes {
                    add_shifted(&mut flows, &sound, *weight, -by);
                }
            }
        }
        flows
    }
}

/// Sizes nearer than this to the right one are the right one. Our own choice: below any step of ISO 10625.
const SAME_SIZE: f64 = 0.03;

/// Other sizes with their weights: neighbours in the series are the likeliest.
fn other_sizes(sizes: &[f64], steps: &[f64]) -> Vec<(f64, f64)> {
    let logs: Vec<f64> = sizes.iter().filter(|ratio| **ratio > 0.0).map(|ratio| libm::log(*ratio)).collect();
    let side = |up: f64| {
        let mut side: Vec<f64> = logs.iter().copied().filter(|log| up * log > SAME_SIZE).collect();
        side.sort_by(|one, other| one.abs().total_cmp(&other.abs()));
        side.dedup_by(|one, other| (*one - *other).abs() < SAME_SIZE);
        let last = steps.last().copied().unwrap_or(0.0);
        let weigh = |(rank, log): (usize, f64)| (steps.get(rank).copied().unwrap_or(last), log);
        side.into_iter().enumerate().map(weigh).collect::<Vec<_>>()
    };
    let both = [side(-1.0), side(1.0)].concat();
    let sum: f64 = both.iter().map(|(weight, _)| weight).sum();
    both.into_iter().map(|(weight, log)| (if sum > 0.0 { weight / sum } else { 0.0 }, log)).collect()
}
