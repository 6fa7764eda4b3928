//! Each tip's deviation from the mean of the tips that run, over all booms worth keeping.
//!
//! On one boom the tips are independent, so the mean of the others is nearly normal; with few tips their flows
//! are taken one by one instead.

use super::boom::{Block, Boom, TipLaw};
use super::grid::{FlowGrid, whole};
use super::likelihood::Likelihood;
use crate::catch::Limit;

/// The posterior of one tip's deviation, as weights on an even line of deviations.
#[derive(Clone, Debug)]
pub(super) struct Deviations {
    weights: Vec<f64>,
    /// The probability that the tip is within the limit.
    pub within: f64,
    /// The tip's flow itself, as weights on the flow grid.
    pub flows: Vec<f64>,
}

/// The line of deviations: from −100 % in steps of 0.2 %, up to +140 %. Finer than any cup tells. Our own choice.
const LINE_STEP: f64 = 0.002;
const LINE_NODES: usize = 1200;

/// What all booms together say.
pub(super) struct Posterior {
    /// Each tip's deviation.
    pub tips: Vec<Deviations>,
    /// The probability that all are within.
    pub all_within: f64,
}

/// Three flows that stand for a normal law: mean and √3 standard deviations either way, weights 2/3 and 1/6.
/// Source: Gauss–Hermite quadrature of order three, any handbook (Abramowitz and Stegun, table 25.10).
const NORMAL_NODES: [(f64, f64); 3] =
    [(-1.732_050_807_568_877_2, 1.0 / 6.0), (0.0, 2.0 / 3.0), (1.732_050_807_568_877_2, 1.0 / 6.0)];

/// Up to so many tips the others are taken one by one.
const FEW: f64 = 4.0;
/// By so many flows each.
const FLOWS_OF_FEW: usize = 9;

/// Returns each distinct tip's deviation and the probability that all tips are within the limit; `copies` says how
/// many tips of the boom are just like each.
pub(super) fn posterior(
    blocks: &[Block],
    copies: &[u32],
    booms: &[Boom],
    grid: &FlowGrid,
    limit: &Limit,
) -> Posterior {
    let mut tips = vec![Deviations::nothing(grid.nodes()); copies.len()];
    let mut all_within = 0.0;
    for boom in booms {
        let flows = flows_on(boom, blocks, copies.len(), grid);
        let all = Sum::of(&flows, copies);
        let mut together = 1.0;
        for place in 0..copies.len() {
            let others = Others::of(&flows, place, copies, &all, grid);
            let within = tips[place].add(&flows[place], &others, boom.weight, grid, limit);
            for _ in 0..copies[place] {
                together *= within;
            }
        }
        all_within += boom.weight * together;
    }
    Posterior { tips, all_within }
}

/// What all tips give together: mean and variance.
struct Sum {
    count: f64,
    mean: f64,
    variance: f64,
}

impl Sum {
    fn of(flows: &[Flow], copies: &[u32]) -> Self {
        let add = |sum: Self, (flow, copies): (&Flow, &u32)| {
            let copies = f64::from(*copies);
            Self {
                count: sum.count + copies,
                mean: sum.mean + copies * flow.mean,
                variance: sum.variance + copies * flow.variance,
            }
        };
        flows.iter().zip(copies).fold(Self { count: 0.0, mean: 0.0, variance: 0.0 }, add)
    }
}

/// One tip's flow on one boom, given its cups: weights that add to one over a stretch of nodes.
struct Flow {
    first: usize,
    weights: Vec<f64>,
    /// The weight of all nodes before each, and last of all of them.
    below: Vec<f64>,
    mean: f64,
    variance: f64,
}

impl Flow {
    fn new(first: usize, mut weights: Vec<f64>, grid: &FlowGrid) -> Self {
        let scale = 1.0 / weights.iter().sum::<f64>();
        let (mut mean, mut square, mut sum) = (0.0, 0.0, 0.0);
        let mut below = Vec::with_capacity(weights.len() + 1);
        for (place, weight) in weights.iter_mut().enumerate() {
            *weight *= scale;
            below.push(sum);
            sum += *weight;
            let flow = grid.relative(first + place);
            mean += *weight * flow;
            square += *weight * flow * flow;
        }
        below.push(sum);
        Self { first, weights, below, mean, variance: (square - mean * mean).max(0.0) }
    }

    /// The probability that the flow is below a relative flow; a node stands for its whole step.
    fn below(&self, flow: f64, grid: &FlowGrid) -> f64 {
        let place = flow / grid.step() - self.first as f64;
        if place <= 0.0 {
            return 0.0;
        }
        let node = whole(place);
        match (self.below.get(node), self.weights.get(node)) {
            (Some(below), Some(weight)) => below + weight * (place - place.floor()),
            _ => 1.0,
        }
    }

    /// A few flows of equal weight that stand for the whole: its quantiles.
    fn few(&self, grid: &FlowGrid) -> Vec<f64> {
        let mut flows = Vec::with_capacity(FLOWS_OF_FEW);
        let mut sum = 0.0;
        for (place, weight) in self.weights.iter().enumerate() {
            let before = sum;
            sum += weight;
            while flows.len() < FLOWS_OF_FEW && sum >= (flows.len() as f64 + 0.5) / FLOWS_OF_FEW as f64 {
                let wanted = (flows.len() as f64 + 0.5) / FLOWS_OF_FEW as f64;
                let part = if *weight > 0.0 { (wanted - before) / weight } else { 0.5 };
                flows.push(grid.relative(self.first + place) + (part - 0.5) * grid.step());
            }
        }
        while flows.len() < FLOWS_OF_FEW {
            flows.push(self.mean);
        }
        flows
    }
}

fn flows_on(boom: &Boom, blocks: &[Block], count: usize, grid: &FlowGrid) -> Vec<Flow> {
    let law = TipLaw::of(boom.middle, boom.spread, grid);
    let mut flows: Vec<Option<Flow>> = (0..count).map(|_| None).collect();
    for block in blocks {
        // What the block shares is weighed by how well it explains all of its tips.
        let explained: Vec<Vec<(Vec<f64>, f64)>> = block
            .cases
            .iter()
            .map(|case| case.likelihoods.iter().map(|cups| explain(cups, &law, boom.faulty, grid)).collect())
            .collect();
        let weights: Vec<f64> = block
            .cases
            .iter()
            .zip(&explained)
            .map(|(case, tips)| case.weight * tips.iter().map(|(_, sum)| sum).product::<f64>())
            .collect();
        let total: f64 = weights.iter().sum();
        for (turn, place) in block.tips.iter().enumerate() {
            let first = block.cases.iter().map(|case| case.likelihoods[turn].first).min().unwrap_or(0);
            let end = block
                .cases
                .iter()
                .map(|case| case.likelihoods[turn].first + case.likelihoods[turn].values.len());
            let mut mixed = vec![0.0; end.max().unwrap_or(first + 1) - first];
            for ((case, tips), weight) in block.cases.iter().zip(&explained).zip(&weights) {
                let (values, sum) = &tips[turn];
                let share = if total > 0.0 && *sum > 0.0 { weight / total / sum } else { case.weight };
                let from = case.likelihoods[turn].first - first;
                for (node, value) in values.iter().enumerate() {
                    mixed[from + node] += share * value;
                }
            }
            if mixed.iter().sum::<f64>() <= 0.0 {
                // Cups that no boom explains: their likelihood alone speaks.
                mixed = block.cases[0].likelihoods[turn].values.clone();
            }
            flows[*place] = Some(Flow::new(first, mixed, grid));
        }
    }
    flows.into_iter().map(|flow| flow.unwrap_or_else(|| Flow::new(0, vec![1.0], grid))).collect()
}

/// The weight of each node of a tip's stretch: cups times boom; and their sum.
fn explain(cups: &Likelihood, law: &TipLaw, faulty: f64, grid: &FlowGrid) -> (Vec<f64>, f64) {
    let values: Vec<f64> = cups
        .values
        .iter()
        .enumerate()
        .map(|(place, cup)| {
            let node = cups.first + place;
            cup * ((1.0 - faulty) * law.sound(node) + faulty * law.faulty(node, grid))
        })
        .collect();
    let sum = values.iter().sum();
    (values, sum)
}

/// The sum of the other tips' flows: a few values with their weights.
struct Others {
    sums: Vec<(f64, f64)>,
    count: f64,
}

impl Others {
    fn of(flows: &[Flow], place: usize, copies: &[u32], all: &Sum, grid: &FlowGrid) -> Self {
        let count = all.count;
        if count <= FEW {
            let mut sums = vec![(0.0, 1.0)];
            for (other, (flow, copies)) in flows.iter().zip(copies).enumerate() {
                let few = flow.few(grid);
                for _ in 0..copies - u32::from(other == place) {
                    let share = 1.0 / FLOWS_OF_FEW as f64;
                    let add = |(sum, weight): &(f64, f64)| {
                        let (sum, weight) = (*sum, *weight);
                        few.iter().map(move |flow| (sum + flow, weight * share)).collect::<Vec<_>>()
                    };
                    sums = sums.iter().flat_map(add).collect();
                }
            }
            return Self { sums, count };
        }
        let own = &flows[place];
        let mean = all.mean - own.mean;
        let deviation = (all.variance - own.variance).max(0.0).sqrt();
        let sums = NORMAL_NODES.iter().map(|(node, weight)| (mean + node * deviation, *weight)).collect();
        Self { sums, count }
    }

    /// The probability that a tip is within the limit beside others that give `sum`: its deviation is
    /// own × count ÷ (own + sum) − 1, so the limit lies at own = sum × (1 + limit) ÷ (count − 1 − limit).
    fn within(&self, flow: &Flow, sum: f64, grid: &FlowGrid, limit: &Limit) -> f64 {
        let at = |limit: f64| {
            let rest = self.count - 1.0 - limit;
            if rest > 0.0 { sum * (1.0 + limit) / rest } else { f64::INFINITY }
        };
        // A tip by itself is its own mean.
        if self.count < 2.0 {
            return 1.0;
        }
        let low = if limit.below() < 1.0 { flow.below(at(-limit.below()), grid) } else { 0.0 };
        let high = if limit.above().is_finite() { flow.below(at(limit.above()), grid) } else { 1.0 };
        (high - low).max(0.0)
    }
}

impl Deviations {
    /// Nothing yet.
    pub fn nothing(flow_nodes: usize) -> Self {
        Self { weights: vec![0.0; LINE_NODES], within: 0.0, flows: vec![0.0; flow_nodes] }
    }

    /// Adds one boom's part; returns the probability on that boom that the tip is within the limit.
    fn add(&mut self, flow: &Flow, others: &Others, weight: f64, grid: &FlowGrid, limit: &Limit) -> f64 {
        let mut within = 0.0;
        for (sum, part) in &others.sums {
            within += part * others.within(flow, *sum, grid, limit);
            let weight = weight * part;
            for (place, share) in flow.weights.iter().enumerate() {
                if *share > NOTHING {
                    let own = grid.relative(flow.first + place);
                    self.put(own * others.count / (own + sum), weight * share);
                }
            }
        }
        self.within += weight * within;
        for (place, share) in flow.weights.iter().enumerate() {
            if let Some(node) = self.flows.get_mut(flow.first + place) {
                *node += weight * share;
            }
        }
        within
    }

    /// Puts a weight on the line, shared by the two nodes it lies between; `ratio` is one more than the deviation.
    pub fn put(&mut self, ratio: f64, weight: f64) {
        let place = (ratio / LINE_STEP - 0.5).max(0.0);
        let node = whole(place);
        let part = place - node as f64;
        if let Some([one, next]) = self.weights.get_mut(node..node + 2) {
            *one += weight * (1.0 - part);
            *next += weight * part;
        } else if let Some(last) = self.weights.last_mut() {
            *last += weight;
        }
    }

    /// Weighs it, to be added to others.
    pub fn scale(&mut self, weight: f64) {
        self.weights.iter_mut().for_each(|value| *value *= weight);
        self.within *= weight;
        self.flows.iter_mut().for_each(|value| *value *= weight);
    }

    /// Adds another part of the same tip.
    pub fn plus(&mut self, other: &Self) {
        self.weights.iter_mut().zip(&other.weights).for_each(|(own, other)| *own += other);
        self.within += other.within;
        self.flows.iter_mut().zip(&other.flows).for_each(|(own, other)| *own += other);
    }

    /// The deviation below which a share of the probability lies.
    pub fn quantile(&self, share: f64) -> f64 {
        let total: f64 = self.weights.iter().sum();
        let mut sum = 0.0;
        for (node, weight) in self.weights.iter().enumerate() {
            if sum + weight >= share * total && *weight > 0.0 {
                let part = (share * total - sum) / weight;
                return -1.0 + (node as f64 + part) * LINE_STEP;
            }
            sum += weight;
        }
        1.0
    }

    /// The line as pairs of deviation and weight, for trying further cups.
    pub fn points(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        self.weights
            .iter()
            .enumerate()
            .filter(|(_, weight)| **weight > NOTHING)
            .map(|(node, weight)| (-1.0 + (node as f64 + 0.5) * LINE_STEP, *weight))
    }
}

/// Weights below this change nothing. Our own choice.
const NOTHING: f64 = 1e-9;
