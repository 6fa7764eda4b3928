//! The sums: from tips' tables to what the boom, its sections and its tips most likely are.

use super::beyond::beyond;
use super::cause::Cause;
use super::evidence::TipEvidence;
use super::offsets::{BASES, BOOM_REACH, FLOWS, LOWEST_BASE, place};
use super::priors::Priors;
use super::section::{LOSSES, LossLaw, Losses, OfTips, Section};
use super::states::{Laws, TipTables};

/// Tips of one section with the same cups: worked out once.
#[derive(Clone)]
pub(super) struct Alike {
    /// How many there are.
    pub copies: f64,
    /// Their cups.
    pub evidence: TipEvidence,
    /// Their tables.
    pub tables: TipTables,
    /// What was seen of them beside their cups, by cause.
    pub says: [f64; 5],
    /// Which of the section's shared runs their cups were timed under.
    pub run: Option<usize>,
}

/// The tips of one section, and how far each of its shared runs may be off (logarithm of time).
#[derive(Clone)]
pub(super) struct OfSection {
    /// The tips by kind.
    pub tips: Vec<Alike>,
    /// The spread of each run.
    pub runs: Vec<f64>,
}

/// What is believed before the cups: of the boom's offset, node by node, and of each section's loss.
pub(super) struct Believed<'a> {
    /// Weights over the boom's offsets; they need not add to one.
    pub boom: &'a [f64],
    /// The law of each section's loss.
    pub losses: &'a [LossLaw],
}

/// How many offsets of the boom are tried.
pub(super) const BOOMS: usize = place(-BOOM_REACH, BOOM_REACH) + 1;
/// How many offsets there are between the best-fed section of a low boom and the highest boom.
pub(super) const FED: usize = BASES;
/// The flows of one coarse step, for tips' posteriors by cause. Our own choice: 2 %, a third of what parts sound from worn.
pub(super) const COARSE: usize = 4;
/// Weights below this are passed over: together they move no probability by more than a millionth. Our own choice.
const NOTHING: f64 = 1e-8;

/// What is most likely of the sprayer, all cups taken together.
#[derive(Clone, Debug)]
pub(super) struct Found {
    /// The logarithm of the probability of all cups.
    pub log: f64,
    /// The boom's offset: weights over its nodes.
    pub boom: Vec<f64>,
    /// What the best-fed section gives against new: weights over bases.
    pub fed: Vec<f64>,
    /// Each section.
    pub sections: Vec<FoundSection>,
}

/// What is most likely of one section.
#[derive(Clone, Debug)]
pub(super) struct FoundSection {
    /// The chance of each loss beyond the best-fed section.
    pub losses: Vec<f64>,
    /// The chance that it is shut.
    pub shut: f64,
    /// The weights of its bases, boom and loss together, while it is not shut.
    pub bases: Vec<f64>,
    /// Each kind of tip in it.
    pub tips: Vec<FoundTip>,
}

/// What is most likely of one tip.
#[derive(Clone, Debug)]
pub(super) struct FoundTip {
    /// The chance of each cause.
    pub causes: [f64; 5],
    /// The chance for each catch that it was misread or mistimed.
    pub misread: Vec<f64>,
    /// The chance that it is sound and every catch of it right.
    pub in_order: f64,
    /// Weights over coarse flows, by cause: what a tip that runs may give.
    pub flows: Vec<[f64; 5]>,
}

/// Returns what is most likely; sections hold tips by kind.
pub(super) fn infer(sections: &[OfSection], laws: &Laws, priors: &Priors, believed: &Believed<'_>) -> Found {
    let ready: Vec<Section> = sections.iter().map(put_together).collect();
    let (booms, log) = booms(&ready, believed);

    let mut fed = vec![0.0; FED];
    let mut losses = vec![vec![0.0; LOSSES]; sections.len()];
    let mut shut = vec![0.0; sections.len()];
    let mut bases = vec![vec![0.0; BASES]; sections.len()];
    for (boom, weight) in (-BOOM_REACH..).zip(&booms).filter(|(_, weight)| **weight > NOTHING) {
        let of_all: Vec<Losses> =
            ready.iter().zip(believed.losses).map(|(section, law)| section.losses(boom, law)).collect();
        let found = beyond(&of_all);
        let own = place(LOWEST_BASE, boom);
        for (loss, chance) in found.best.iter().enumerate() {
            fed[own - loss] += weight * chance;
        }
        for (section, of_one) in of_all.iter().enumerate() {
            shut[section] += weight * of_one.shut;
            for (loss, chance) in of_one.chances.iter().enumerate() {
                bases[section][own - loss] += weight * chance;
            }
            for (sum, chance) in losses[section].iter_mut().zip(&found.sections[section]) {
                *sum += weight * chance;
            }
        }
    }
    let of_section = |(section, of): (usize, &OfSection)| {
        let on_run = |run: usize| ready[section].bases_of_run(run, &bases[section]);
        let of_runs: Vec<Vec<f64>> = (0..of.runs.len()).map(on_run).collect();
        let tips = of.tips.iter().map(|tip| {
            let bases = tip.run.and_then(|run| of_runs.get(run)).unwrap_or(&bases[section]);
            tip_on(tip, bases, shut[section], laws, priors)
        });
        FoundSection {
            losses: losses[section].clone(),
            shut: shut[section],
            tips: tips.collect(),
            bases: bases[section].clone(),
        }
    };
    let sections = sections.iter().enumerate().map(of_section).collect();
    Found { log, boom: booms, fed, sections }
}

/// A section's tips put together, those of one run under its shared time.
fn put_together(section: &OfSection) -> Section {
    let of = |run: Option<usize>| {
        let tips = section.tips.iter().filter(|tip| tip.run == run);
        tips.map(|tip| (tip.copies, &tip.tables, tip.evidence.plugged)).collect::<Vec<OfTips<'_>>>()
    };
    let runs: Vec<(f64, Vec<OfTips<'_>>)> =
        section.runs.iter().enumerate().map(|(run, spread)| (*spread, of(Some(run)))).collect();
    Section::of(&of(None), &runs)
}

/// The weights of the boom's offsets, and the logarithm of the probability of all cups.
fn booms(sections: &[Section], believed: &Believed<'_>) -> (Vec<f64>, f64) {
    let all: f64 = believed.boom.iter().sum();
    let logs: Vec<f64> = (-BOOM_REACH..)
        .zip(believed.boom)
        .map(|(boom, weight)| {
            let tips: f64 =
                sections.iter().zip(believed.losses).map(|(section, law)| section.log(boom, law)).sum();
            libm::log((weight / all).max(f64::MIN_POSITIVE)) + tips
        })
        .collect();
    let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut weights: Vec<f64> = logs.iter().map(|log| libm::exp(log - best)).collect();
    let sum: f64 = weights.iter().sum();
    weights.iter_mut().for_each(|weight| *weight /= sum);
    debug_assert_eq!(weights.len(), BOOMS);
    (weights, best + libm::log(sum))
}

fn tip_on(tip: &Alike, bases: &[f64], shut: f64, laws: &Laws, priors: &Priors) -> FoundTip {
    let shares = priors.tips.shares();
    // The weight of each base, the tip's own cups taken out again, so that they are counted once below.
    let without: Vec<f64> = bases
        .iter()
        .zip(&tip.tables.all)
        .map(|(weight, all)| if *weight > NOTHING { weight / all } else { 0.0 })
        .collect();
    let top = without.iter().copied().fold(0.0, f64::max).max(f64::MIN_POSITIVE);
    let scaled: Vec<f64> = without.iter().map(|weight| weight / top).collect();

    let mut causes = [0.0; 5];
    let mut flows = vec![[0.0; 5]; FLOWS.div_ceil(COARSE)];
    let mut misread = vec![0.0; tip.evidence.catches.len()];
    let mut in_order = 0.0;
    for cause in Cause::ALL {
        let which = cause.place();
        let share = shares[which] * tip.says[which];
        let table = &tip.tables.by_cause[which];
        let chance: f64 = without.iter().zip(table).map(|(weight, value)| weight * value).sum();
        causes[which] = share * chance;
        if cause == Cause::Plugged {
            for (sum, catch) in misread.iter_mut().zip(&tip.evidence.catches) {
                *sum += share * chance * tip.evidence.misread_if_plugged(catch);
            }
            continue;
        }
        if share * chance < NOTHING {
            continue;
        }
        let on = laws.flows(cause, &scaled);
        for (here, weight) in on.iter().enumerate().filter(|(_, weight)| **weight > 0.0) {
            let weight = weight * top * share * tip.evidence.all[here];
            flows[here / COARSE][which] += weight;
            if weight > NOTHING && cause == Cause::Sound {
                let right =
                    tip.evidence.catches.iter().map(|catch| 1.0 - tip.evidence.misread_at(catch, here));
                in_order += weight * right.product::<f64>();
            }
            if weight > NOTHING {
                for (sum, catch) in misread.iter_mut().zip(&tip.evidence.catches) {
                    *sum += weight * tip.evidence.misread_at(catch, here);
                }
            }
        }
    }
    // A tip in a shut section is what it was before; its cups were empty whatever it is.
    let running: f64 = causes.iter().sum();
    let believed: f64 = shares.iter().zip(tip.says).map(|(share, says)| share * says).sum();
    for ((cause, share), says) in causes.iter_mut().zip(shares).zip(tip.says) {
        let runs = if running > 0.0 { *cause / running } else { 0.0 };
        *cause = (1.0 - shut) * runs + shut * share * says / believed;
    }
    for (sum, catch) in misread.iter_mut().zip(&tip.evidence.catches) {
        let runs = if running > 0.0 { *sum / running } else { 0.0 };
        *sum = ((1.0 - shut) * runs + shut * tip.evidence.misread_if_plugged(catch)).clamp(0.0, 1.0);
    }
    // Nothing of a tip in a shut section is known to be in order.
    in_order = if running > 0.0 { (1.0 - shut) * in_order / running } else { 0.0 };
    if running > 0.0 {
        flows.iter_mut().flatten().for_each(|weight| *weight /= running);
    }
    FoundTip { causes, misread, in_order: in_order.clamp(0.0, 1.0), flows }
}
