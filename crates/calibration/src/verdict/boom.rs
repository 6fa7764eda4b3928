//! Which booms the cups make likely: the middle flow and the spread of tips that are alike, and how many are faulty.

use super::grid::FlowGrid;
use super::likelihood::Likelihood;
use super::prior::{Prior, fault_density};

/// Tips that share what is unknown about them: one tip by itself, or those caught under one timed run.
pub(super) struct Block {
    /// Places of the tips among the distinct ones of the group.
    pub tips: Vec<usize>,
    /// How many tips of the boom have just these cups, where it is one tip by itself.
    pub copies: u32,
    /// The values tried for what is shared, with their weights, and each tip's likelihood under each.
    pub cases: Vec<Case>,
}

/// One value of what a block shares.
pub(super) struct Case {
    /// Its prior weight.
    pub weight: f64,
    /// Each tip's likelihood, in the order of the block's tips.
    pub likelihoods: Vec<Likelihood>,
}

/// One boom that is tried, with its posterior weight.
#[derive(Clone, Debug)]
pub(super) struct Boom {
    /// The middle flow of tips that are alike, relative to the grid's.
    pub middle: f64,
    /// Their spread, a share.
    pub spread: f64,
    /// The share of faulty tips, its mean given the cups and this boom.
    pub faulty: f64,
    /// The weight, all adding to one.
    pub weight: f64,
}

/// How a tip's flow is distributed on a boom, before its cups: the sound part over a stretch of nodes, and the faulty part.
pub(super) struct TipLaw {
    first: usize,
    sound: Vec<f64>,
    middle: f64,
}

/// Sound tips beyond so many spreads are left out: 1e-10 of them. Our own choice.
const REACH: f64 = 6.4;
/// How many middle flows are tried for each spread, to seek and to integrate. Our own choice: doubling either
/// changes no probability by more than 0.002.
const COARSE: u32 = 13;
const FINE: u32 = 13;
/// How far either way to look, in standard deviations of the middle flow. Our own choice.
const SURE: f64 = 4.5;
/// Middle flows whose logarithm is so far below the best are not looked at: e⁻¹². Our own choice.
const UNLIKELY: f64 = 12.0;
/// The least likely booms that together weigh less than this are left out. Our own choice: no probability moves
/// by more.
const LEFT_OUT: f64 = 1e-3;

impl TipLaw {
    pub fn of(middle: f64, spread: f64, grid: &FlowGrid) -> Self {
        let wide = middle * spread;
        let first = grid.relative_node(middle - REACH * wide);
        let last = grid.relative_node(middle + REACH * wide) + 1;
        let scale = grid.step() / (wide * (2.0 * core::f64::consts::PI).sqrt());
        let sound = (first..=last.min(grid.nodes() - 1)).map(|node| {
            let off = (grid.relative(node) - middle) / wide;
            scale * libm::exp(-0.5 * off * off)
        });
        Self { first, sound: sound.collect(), middle }
    }

    /// The probability that a sound tip lies at a node.
    pub fn sound(&self, node: usize) -> f64 {
        node.checked_sub(self.first).and_then(|place| self.sound.get(place)).copied().unwrap_or(0.0)
    }

    /// The probability that a faulty tip lies at a node.
    pub fn faulty(&self, node: usize, grid: &FlowGrid) -> f64 {
        fault_density(grid.relative(node) / self.middle - 1.0) * grid.step() / self.middle
    }

    /// The probability of a tip's cups on this boom if it is sound.
    fn if_sound(&self, cups: &Likelihood) -> f64 {
        let from = self.first.max(cups.first);
        let to = (self.first + self.sound.len()).min(cups.first + cups.values.len());
        if from >= to {
            return 0.0;
        }
        let sound = &self.sound[from - self.first..to - self.first];
        let cups = &cups.values[from - cups.first..to - cups.first];
        sound.iter().zip(cups).map(|(sound, cup)| sound * cup).sum()
    }
}

/// The probability of a tip's cups if it is faulty, at one middle flow: the fault density is smooth, so the weight
/// of the cups at their centre is enough here; `tips` takes it node by node.
fn if_faulty(cups: &Likelihood, middle: f64) -> f64 {
    cups.mass * fault_density(cups.centre / middle - 1.0) / middle
}

/// Returns the booms worth keeping with their weights, and the logarithm of the probability of all cups.
///
/// For each spread the middle flow is first sought on a coarse grid as wide as the marks leave it open (alike
/// tips are all rounded alike, so the marks do not average out), then integrated on a fine one about the best.
pub(super) fn booms(blocks: &[Block], prior: &Prior, grid: &FlowGrid, search: &Search) -> (Vec<Boom>, f64) {
    let mut found: Vec<(Boom, f64)> = Vec::new();
    for (spread, believed) in &prior.spreads {
        let alike = ((spread * spread + search.smear * search.smear) / search.tips.max(1.0)).sqrt();
        let reach = search.about * (SURE * alike + 0.6 * search.marks);
        let coarse = line(search.about - reach, search.about + reach, COARSE);
        let tried: Vec<f64> =
            coarse.iter().map(|middle| weigh(blocks, *middle, *spread, prior, grid).0).collect();
        let best = tried.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        if best == f64::NEG_INFINITY {
            continue;
        }
        let good = |log: &f64| *log > best - UNLIKELY;
        let first = tried.iter().position(good).unwrap_or(0).saturating_sub(1);
        let last = (tried.iter().rposition(good).unwrap_or(0) + 1).min(coarse.len() - 1);
        let fine = line(coarse[first], coarse[last], FINE);
        let apart = fine[1] - fine[0];
        for middle in fine {
            let (log, faulty) = weigh(blocks, middle, *spread, prior, grid);
            if log.is_finite() {
                // Middle flows stand wider apart for wider spreads; each stands for its own stretch.
                let log = log + libm::log(apart * believed);
                found.push((Boom { middle, spread: *spread, faulty, weight: 0.0 }, log));
            }
        }
    }
    let best = found.iter().map(|(_, log)| *log).fold(f64::NEG_INFINITY, f64::max);
    found.sort_by(|one, other| other.1.total_cmp(&one.1));
    let all: f64 = found.iter().map(|(_, log)| libm::exp(log - best)).sum();
    let mut kept = 0.0;
    found.retain(|(_, log)| {
        let keep = kept < (1.0 - LEFT_OUT) * all;
        kept += libm::exp(log - best);
        keep
    });
    let sum: f64 = found.iter().map(|(_, log)| libm::exp(log - best)).sum();
    let booms =
        found.into_iter().map(|(boom, log)| Boom { weight: libm::exp(log - best) / sum, ..boom }).collect();
    (booms, best + libm::log(sum))
}

/// Where to look for the middle flow.
pub(super) struct Search {
    /// About where it is, relative to the grid's.
    pub about: f64,
    /// How many tips were caught.
    pub tips: f64,
    /// The smear of one tip's cups, a share.
    pub smear: f64,
    /// The marks of one tip's cups, a share.
    pub marks: f64,
}

/// The logarithm of the probability of all cups on one boom, and the mean share of faulty tips given them.
fn weigh(blocks: &[Block], middle: f64, spread: f64, prior: &Prior, grid: &FlowGrid) -> (f64, f64) {
    if middle <= grid.step() {
        return (f64::NEG_INFINITY, 0.0);
    }
    let law = TipLaw::of(middle, spread, grid);
    let evidence: Vec<Vec<Evidence>> = blocks.iter().map(|block| evidence(block, &law)).collect();
    let log_of = |(faulty, weight): &(f64, f64)| {
        libm::log(*weight)
            + blocks.iter().zip(&evidence).map(|(block, cases)| block_log(block, cases, *faulty)).sum::<f64>()
    };
    let logs: Vec<f64> = prior.faulty.iter().map(log_of).collect();
    let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if best == f64::NEG_INFINITY {
        return (best, 0.0);
    }
    let shares: Vec<f64> = logs.iter().map(|log| libm::exp(log - best)).collect();
    let sum: f64 = shares.iter().sum();
    let faulty =
        shares.iter().zip(&prior.faulty).map(|(share, (faulty, _))| share * faulty).sum::<f64>() / sum;
    (best + libm::log(sum), faulty)
}

/// Evenly spaced values from one to another.
fn line(from: f64, to: f64, count: u32) -> Vec<f64> {
    (0..count).map(|place| from + (to - from) * f64::from(place) / f64::from(count - 1)).collect()
}

/// One case of a block on one boom.
struct Evidence {
    /// The case's prior weight.
    weight: f64,
    /// For each tip the probability of its cups if it is sound, and if it is faulty.
    tips: Vec<(f64, f64)>,
}

fn evidence(block: &Block, law: &TipLaw) -> Vec<Evidence> {
    let of_case = |case: &Case| Evidence {
        weight: case.weight,
        tips: case.likelihoods.iter().map(|cups| (law.if_sound(cups), if_faulty(cups, law.middle))).collect(),
    };
    block.cases.iter().map(of_case).collect()
}

fn block_log(block: &Block, cases: &[Evidence], faulty: f64) -> f64 {
    let of_case = |case: &Evidence| {
        let tips = case.tips.iter();
        case.weight * tips.map(|(sound, broken)| (1.0 - faulty) * sound + faulty * broken).product::<f64>()
    };
    f64::from(block.copies) * libm::log(cases.iter().map(of_case).sum::<f64>())
}
