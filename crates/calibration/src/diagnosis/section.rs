//! One section: its tips' tables put together, and what it may lose, given what is common to the boom.

use super::offsets::{BASES, BOOM_REACH, LOWEST_BASE, MOST_LOSS, STEP, place};
use super::priors::Priors;
use super::runs::SharedTime;
use super::states::TipTables;

/// How many losses are tried: nothing, and every step up to the most.
pub(super) const LOSSES: usize = place(0, MOST_LOSS) + 1;

/// The law of a section's loss: weights over steps, and the chance that it is shut.
#[derive(Clone, Debug)]
pub(super) struct LossLaw {
    /// Nothing first, then every step.
    weights: Vec<f64>,
    shut: f64,
}

impl LossLaw {
    pub fn of(priors: &Priors) -> Self {
        let [free, restricted, shut] = priors.sections.shares();
        let falling: Vec<f64> = (1..LOSSES)
            .map(|steps| libm::exp(-(steps as f64) * STEP / priors.section_loss.max(STEP)))
            .collect();
        let sum: f64 = falling.iter().sum();
        let mut weights = vec![free];
        weights.extend(falling.iter().map(|weight| restricted * weight / sum));
        Self { weights, shut }
    }

    /// The law of a section that loses nothing.
    pub fn none() -> Self {
        let mut weights = vec![0.0; LOSSES];
        weights[0] = 1.0;
        Self { weights, shut: 0.0 }
    }

    /// Weighs each loss by how likely something that was read is under it, and likewise that it is shut.
    pub fn weigh(&mut self, likely: impl Fn(f64) -> f64, shut: f64) {
        for (steps, weight) in self.weights.iter_mut().enumerate() {
            *weight *= likely(steps as f64 * STEP);
        }
        self.shut *= shut;
        let sum = self.weights.iter().sum::<f64>() + self.shut;
        if sum > 0.0 {
            self.weights.iter_mut().for_each(|weight| *weight /= sum);
            self.shut /= sum;
        }
    }
}

/// Tips that are alike: how many, their table, their likelihood if nothing runs.
pub(super) type OfTips<'a> = (f64, &'a TipTables, f64);

fn logs_of(tips: &[OfTips<'_>]) -> Vec<f64> {
    let mut logs = vec![0.0; BASES];
    for (copies, tables, _) in tips {
        logs.iter_mut().zip(&tables.all).for_each(|(sum, value)| *sum += copies * libm::log(*value));
    }
    logs
}

fn shut_of(tips: &[OfTips<'_>]) -> f64 {
    tips.iter().map(|(copies, _, nothing)| copies * libm::log(nothing.max(f64::MIN_POSITIVE))).sum()
}

/// One section on a boom, ready to be asked about any offset of the boom.
pub(super) struct Section {
    /// Tips whose cups were timed together.
    runs: Vec<SharedTime>,
    /// The likelihood of all of its tips on each base, against the best of them.
    rise: Vec<f64>,
    /// The same if it is shut and nothing runs.
    shut: f64,
    /// The logarithm of the best.
    top: f64,
}

/// What a section may lose, given the boom.
pub(super) struct Losses {
    /// The chance of each loss.
    pub chances: Vec<f64>,
    /// The chance that it is shut.
    pub shut: f64,
}

impl Section {
    /// Puts tips together: by themselves, and under each timed run with the spread of its time.
    pub fn of(alone: &[OfTips<'_>], runs: &[(f64, Vec<OfTips<'_>>)]) -> Self {
        let mut logs = logs_of(alone);
        let mut shut = shut_of(alone);
        let of_run = |(spread, tips): &(f64, Vec<OfTips<'_>>)| {
            shut += shut_of(tips);
            let run = SharedTime::of(logs_of(tips), *spread);
            logs.iter_mut().zip(run.together()).for_each(|(sum, log)| *sum += log);
            run
        };
        let runs: Vec<SharedTime> = runs.iter().map(of_run).collect();
        let top = logs.iter().copied().fold(shut, f64::max);
        let rise = logs.iter().map(|log| libm::exp(log - top)).collect();
        Self { runs, rise, shut: libm::exp(shut - top), top }
    }

    /// The weights of the bases as the tips of one run see them, the run's own lateness with them.
    pub fn bases_of_run(&self, run: usize, bases: &[f64]) -> Vec<f64> {
        self.runs.get(run).map_or_else(|| bases.to_vec(), |run| run.bases(bases))
    }

    /// The logarithm of the likelihood of its tips, given the boom's offset in steps.
    pub fn log(&self, boom: i32, law: &LossLaw) -> f64 {
        let running: f64 = self.down_from(boom).zip(&law.weights).map(|(rise, weight)| rise * weight).sum();
        self.top + libm::log((running + law.shut * self.shut).max(f64::MIN_POSITIVE))
    }

    /// What it may lose, given the boom's offset.
    pub fn losses(&self, boom: i32, law: &LossLaw) -> Losses {
        let mut chances: Vec<f64> =
            self.down_from(boom).zip(&law.weights).map(|(rise, weight)| rise * weight).collect();
        let mut shut = law.shut * self.shut;
        let sum = chances.iter().sum::<f64>() + shut;
        if sum > 0.0 {
            chances.iter_mut().for_each(|chance| *chance /= sum);
            shut /= sum;
        } else {
            // An offset of the boom that these tips cannot stand on has no weight of its own; the law stands.
            chances.clone_from(&law.weights);
            shut = law.shut;
        }
        Losses { chances, shut }
    }

    /// The likelihoods from the boom's own base downwards.
    fn down_from(&self, boom: i32) -> impl Iterator<Item = &f64> {
        let top = place(LOWEST_BASE, boom.min(BOOM_REACH));
        self.rise[..=top].iter().rev()
    }
}
