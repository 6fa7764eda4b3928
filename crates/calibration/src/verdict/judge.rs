//! From a round's cups to a verdict for each tip: what is most likely, how far it may be off, whether that settles it.

use std::collections::BTreeMap;

use units::{Quantity, Verdict};

use super::boom::{Block, Case, Search, booms};
use super::grid::FlowGrid;
use super::likelihood::{CupModel, Likelihood, sharpness};
use super::prior::Prior;
use super::tips::{Deviations, posterior};
use crate::catch::{Likely, Limit, Risk, Round, RoundSummary, TipCatches, TipState, Uncertainties};

/// How cups are read and what is believed beforehand.
#[derive(Clone, Debug, Default)]
pub struct Model {
    /// The errors of reading and timing.
    pub doubts: Uncertainties,
    /// What is believed of a boom.
    pub prior: Prior,
    /// The risk that a verdict may carry.
    pub risk: Risk,
    /// The order in which tips were caught, by number, where it is known; a tip may stand twice.
    pub order: Vec<u32>,
}

/// What is most likely of one tip.
#[derive(Clone, Debug, PartialEq)]
pub struct TipJudgement {
    /// The tip's number.
    pub number: u32,
    /// The deviation from the mean of the tips that run, as likely over as under it (a share).
    pub deviation: f64,
    /// The low end of the 95 % range.
    pub low: f64,
    /// The high end.
    pub high: f64,
    /// The probability that it is within the limit.
    pub probability_within: f64,
    /// The verdict.
    pub verdict: Verdict,
    /// Whether the verdict would differ without what the rest of the boom says.
    pub rests_on_boom: bool,
}

/// What is most likely of the boom.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoomJudgement {
    /// The verdicts within or outside that are wrong, on average.
    pub expected_wrong_calls: f64,
    /// The probability that every tip that runs is within the limit.
    pub probability_all_within: f64,
}

/// A round judged.
#[derive(Clone, Debug)]
pub struct Judged {
    /// Each tip that runs, caught or not, from left to right.
    pub tips: Vec<TipJudgement>,
    /// The boom.
    pub boom: BoomJudgement,
    pub(super) deviations: BTreeMap<u32, Deviations>,
    pub(super) grids: BTreeMap<u32, FlowGrid>,
}

/// Returns a verdict for each tip that runs, each group of tips meant to be alike by itself.
///
/// *Units*: deviations as shares of the mean of the group's tips that run, caught or not.
///
/// *Assumptions*: the model of `prior` and `likelihood`: sound tips spread normally about a middle flow, faulty ones
/// broadly; a reading is an interval whose edges timing, handling and foam soften; cups under one timed run share its
/// timing; with the order of cups given, the flow may drift evenly during the test. Plugged tips are set aside.
///
/// *Source*: JCGM 106:2012 for probabilities of conformity; the model is our own and held to simulated booms made by
/// other code.
///
/// *Example*: twenty tips of 14 and 15 fl oz read to the ounce are all within 10 %, although an ounce is 7 %: alike
/// tips that read alike are alike.
#[must_use]
pub fn judge_round(round: &Round, summary: &RoundSummary, limit: &Limit, model: &Model) -> Judged {
    let mut tips: BTreeMap<u32, TipJudgement> = BTreeMap::new();
    let mut deviations = BTreeMap::new();
    let mut grids = BTreeMap::new();
    let mut all_within = 1.0;
    for group in &summary.groups {
        let of_group: Vec<&TipCatches> = round
            .tips
            .iter()
            .filter(|tip| tip.group == group.group && !group.plugged.contains(&tip.number))
            .collect();
        let Some(result) = judge_group(&of_group, round, summary, limit, model) else { continue };
        all_within *= result.all_within;
        for (tip, place) in of_group.iter().zip(&result.place_of) {
            let deviation = &result.tips[*place];
            tips.insert(tip.number, judgement(tip, deviation, summary, model));
            deviations.insert(tip.number, deviation.clone());
            grids.insert(tip.number, result.grid.clone());
        }
    }
    let wrong = |tip: &TipJudgement| match tip.verdict {
        Verdict::Within => 1.0 - tip.probability_within,
        Verdict::Outside => tip.probability_within,
        Verdict::CannotTell => 0.0,
    };
    let expected_wrong_calls = tips.values().map(wrong).sum();
    let plugged = summary.tips.iter().any(|tip| tip.state == TipState::Plugged);
    let boom = BoomJudgement {
        expected_wrong_calls,
        probability_all_within: if plugged { 0.0 } else { all_within },
    };
    let tips = round.tips.iter().filter_map(|tip| tips.remove(&tip.number)).collect();
    Judged { tips, boom, deviations, grids }
}

/// Returns the summary with each tip's verdict and most likely deviation as judged, for advice and telling.
#[must_use]
pub fn settled(summary: &RoundSummary, judged: &Judged) -> RoundSummary {
    let mut settled = summary.clone();
    for tip in settled.tips.iter_mut().filter(|tip| tip.state == TipState::Runs) {
        if let Some(judged) = judged.tips.iter().find(|judged| judged.number == tip.number) {
            tip.verdict = Some(judged.verdict);
            tip.likely = Some(Likely { deviation: judged.deviation, low: judged.low, high: judged.high });
        }
    }
    settled
}

fn judgement(
    tip: &TipCatches,
    deviation: &Deviations,
    summary: &RoundSummary,
    model: &Model,
) -> TipJudgement {
    let probability_within = deviation.within.clamp(0.0, 1.0);
    // A tip that nobody caught is open, however alike the others are: nothing of its own speaks for it.
    let caught = !tip.catches.is_empty();
    let verdict = if caught { model.risk.verdict(probability_within) } else { Verdict::CannotTell };
    let alone = summary.tips.iter().find(|other| other.number == tip.number).and_then(|other| other.verdict);
    TipJudgement {
        number: tip.number,
        deviation: deviation.quantile(0.5),
        low: deviation.quantile(0.025),
        high: deviation.quantile(0.975),
        probability_within,
        verdict,
        rests_on_boom: alone.unwrap_or(Verdict::CannotTell) != verdict,
    }
}

struct GroupResult {
    /// Each distinct tip.
    tips: Vec<Deviations>,
    /// Which of them each tip of the group is.
    place_of: Vec<usize>,
    all_within: f64,
    grid: FlowGrid,
}

fn judge_group(
    tips: &[&TipCatches],
    round: &Round,
    summary: &RoundSummary,
    limit: &Limit,
    model: &Model,
) -> Option<GroupResult> {
    let flow = |tip: &TipCatches| {
        summary.tips.iter().find(|other| other.number == tip.number).and_then(|other| other.flow)
    };
    let mut flows: Vec<f64> = tips.iter().filter_map(|tip| flow(tip)).map(Quantity::si).collect();
    flows.sort_by(f64::total_cmp);
    let middle = *flows.get(flows.len() / 2)?;
    let plain = CupModel {
        density: round.density,
        doubts: &model.doubts,
        late: 0.0,
        drift: 0.0,
        misread: model.prior.misread,
        turns: &[],
    };
    let sharp: Vec<f64> =
        tips.iter().filter(|tip| !tip.catches.is_empty()).map(|tip| sharpness(tip, &plain)).collect();
    let finest = sharp.iter().copied().fold(1.0, f64::min);
    let largest = flows.last().copied().unwrap_or(middle);
    let grid = FlowGrid::about(middle, finest, largest);
    let search = search(tips, round, &flows, middle, &sharp);

    let distinct = Distinct::of(tips, model);
    let mut sum: Option<GroupResult> = None;
    let mut parts: Vec<(f64, GroupResult)> = Vec::new();
    for (drift, weight) in drifts(model) {
        let (uncaught, mut all) = blocks(tips, &distinct, round, model, drift, &grid);
        let (booms, log) = booms(&all, &model.prior, &grid, &search);
        if booms.is_empty() {
            // Cups that no boom explains get no verdict of the boom's; what was measured stands.
            return None;
        }
        all.extend(uncaught);
        let result = posterior(&all, &distinct.copies, &booms, &grid, limit);
        let place_of = distinct.place_of.clone();
        let result =
            GroupResult { tips: result.tips, place_of, all_within: result.all_within, grid: grid.clone() };
        parts.push((log + libm::log(weight), result));
    }
    let best = parts.iter().map(|(log, _)| *log).fold(f64::NEG_INFINITY, f64::max);
    let total: f64 = parts.iter().map(|(log, _)| libm::exp(log - best)).sum();
    for (log, part) in parts {
        let weight = if total.is_finite() && total > 0.0 { libm::exp(log - best) / total } else { 1.0 };
        match &mut sum {
            None => sum = Some(part.times(weight)),
            Some(sum) => sum.plus(part.times(weight)),
        }
    }
    sum
}

impl GroupResult {
    fn times(mut self, weight: f64) -> Self {
        self.tips.iter_mut().for_each(|tip| tip.scale(weight));
        Self { all_within: self.all_within * weight, ..self }
    }

    fn plus(&mut self, other: Self) {
        self.all_within += other.all_within;
        for (tip, other) in self.tips.iter_mut().zip(other.tips) {
            tip.plus(&other);
        }
    }
}

/// About where the middle of the alike tips lies: the reading that most others stand near.
fn search(tips: &[&TipCatches], round: &Round, flows: &[f64], middle: f64, sharp: &[f64]) -> Search {
    let smear = mean(sharp);
    let marks = tips.iter().flat_map(|tip| &tip.catches).map(|catch| {
        catch.step(round.density).si() / catch.volume(round.density).si().max(f64::MIN_POSITIVE)
    });
    let marks = mean(&marks.collect::<Vec<_>>()).min(1.0);
    let near = middle * (smear + marks / 2.0 + 0.03);
    let score = |centre: f64| {
        flows
            .iter()
            .map(|flow| 1.0 / (1.0 + ((flow - centre) / near) * ((flow - centre) / near)))
            .sum::<f64>()
    };
    let best = flows.iter().copied().fold((middle, score(middle)), |best, flow| {
        let found = score(flow);
        if found > best.1 { (flow, found) } else { best }
    });
    let close: Vec<f64> = flows.iter().copied().filter(|flow| (flow - best.0).abs() <= 2.0 * near).collect();
    Search { about: mean(&close) / middle, tips: flows.len() as f64, smear, marks }
}

fn mean(values: &[f64]) -> f64 {
    if values.is_empty() { 0.0 } else { values.iter().sum::<f64>() / values.len() as f64 }
}

/// The drifts that are tried, with their weights; none where the order of the cups is not known.
fn drifts(model: &Model) -> Vec<(f64, f64)> {
    if model.order.is_empty() {
        return vec![(0.0, 1.0)];
    }
    NORMAL_FIVE.iter().map(|(node, weight)| (node * model.prior.drift, *weight)).collect()
}

/// Five values that stand for a standard normal law. Source: Gauss–Hermite quadrature of order five
/// (Abramowitz and Stegun, table 25.10, abscissas times √2, weights over √π).
pub(crate) const NORMAL_FIVE: [(f64, f64); 5] = [
    (-2.856_970_013_872_806, 0.011_257_411_327_720_69),
    (-1.355_626_179_974_266, 0.222_075_922_005_612_6),
    (0.0, 0.533_333_333_333_333_3),
    (1.355_626_179_974_266, 0.222_075_922_005_612_6),
    (2.856_970_013_872_806, 0.011_257_411_327_720_69),
];

/// Tips with just the same cups are worked out once: on a boom read to the ounce most tips are.
struct Distinct {
    /// For each tip of the group, which distinct one it is.
    place_of: Vec<usize>,
    /// The first tip of the group that is each distinct one.
    first: Vec<usize>,
    /// How many tips are each distinct one.
    copies: Vec<u32>,
}

impl Distinct {
    fn of(tips: &[&TipCatches], model: &Model) -> Self {
        let mut distinct = Self { place_of: Vec::new(), first: Vec::new(), copies: Vec::new() };
        for (place, tip) in tips.iter().enumerate() {
            // Cups under a shared run, or in a known order, are each something of their own.
            let alone = model.order.is_empty() && tip.catches.iter().all(|catch| catch.run().is_none());
            let found = distinct.first.iter().position(|first| alone && same_cups(tips[*first], tip));
            match found {
                Some(found) => distinct.copies[found] += 1,
                None => {
                    distinct.first.push(place);
                    distinct.copies.push(1);
                }
            }
            distinct.place_of.push(found.unwrap_or(distinct.first.len() - 1));
        }
        distinct
    }
}

/// Whether two tips have the same cups, in whatever order.
fn same_cups(one: &TipCatches, other: &TipCatches) -> bool {
    let cups = |tip: &TipCatches| {
        let of = |catch: &crate::catch::Catch| {
            let reading = catch.reading();
            (
                reading.written().si().to_bits(),
                reading.step_si().to_bits(),
                catch.time().si().to_bits(),
                catch.run(),
            )
        };
        let mut cups: Vec<_> = tip.catches.iter().map(of).collect();
        cups.sort_unstable();
        cups
    };
    one.catches.len() == other.catches.len() && cups(one) == cups(other)
}

/// The blocks of a group: tips that were not caught, and those that were, by what they share.
fn blocks(
    tips: &[&TipCatches],
    distinct: &Distinct,
    round: &Round,
    model: &Model,
    drift: f64,
    grid: &FlowGrid,
) -> (Vec<Block>, Vec<Block>) {
    let cups = |tip: &TipCatches, late: f64| {
        let turns = turns_of(tip.number, &model.order);
        let cups = CupModel {
            density: round.density,
            doubts: &model.doubts,
            late,
            drift,
            misread: model.prior.misread,
            turns: &turns,
        };
        Likelihood::of(tip, &cups, grid)
    };
    let mut uncaught = Vec::new();
    let mut caught = Vec::new();
    let mut shared: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    for (place, (first, copies)) in distinct.first.iter().zip(&distinct.copies).enumerate() {
        let tip = tips[*first];
        let alone = |likelihood| Block {
            tips: vec![place],
            copies: *copies,
            cases: vec![Case { weight: 1.0, likelihoods: vec![likelihood] }],
        };
        // A tip caught under several runs is counted with the first; the others' timing is its own to a good part.
        let run = tip.catches.iter().find_map(crate::catch::Catch::run);
        match (tip.catches.is_empty(), run) {
            (true, _) => uncaught.push(alone(Likelihood::of_nothing(grid))),
            (false, Some(run)) => shared.entry(run).or_default().push(place),
            (false, None) => caught.push(alone(cups(tip, 0.0))),
        }
    }
    let late = core::f64::consts::SQRT_2 * model.doubts.timer.si();
    for places in shared.into_values() {
        let case = |(node, weight): &(f64, f64)| Case {
            weight: *weight,
            likelihoods: places.iter().map(|place| cups(tips[distinct.first[*place]], node * late)).collect(),
        };
        let cases = NORMAL_FIVE.iter().map(case).collect();
        caught.push(Block { tips: places, copies: 1, cases });
    }
    (uncaught, caught)
}

/// When each cup of a tip was caught, from −½ at the first cup of the test to ½ at the last.
fn turns_of(number: u32, order: &[u32]) -> Vec<f64> {
    let last = (order.len().max(2) - 1) as f64;
    let turns = order.iter().enumerate().filter(|(_, tip)| **tip == number);
    turns.map(|(turn, _)| turn as f64 / last - 0.5).collect()
}
