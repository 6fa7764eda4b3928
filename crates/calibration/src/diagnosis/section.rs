//! One section: its tips' tables put together, and what it may lose, given what is common to the boom.

use super::offsets::{BASES, BOOM_REACH, LOWEST_BASE, MOST_LOSS, STEP, place};
use super::priors::Priors;
use super::states::TipTables;

/// How many losses are tried: nothing, and every step up to the most.
pub(super) const LOSSES: usize = place(0, MOST_LOSS) + 1;

/// The law of a section's loss: weights over steps, and the chance that it is shut.
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
}

/// One section on a boom, ready to be asked about any offset of the boom.
pub(super) struct Section {
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
    /// Puts tips together: how many of each table, each with its likelihood if nothing runs.
    pub fn of(tips: &[(f64, &TipTables, f64)]) -> Self {
        let mut logs = vec![0.0; BASES];
        let mut shut = 0.0;
        for (copies, tables, nothing_runs) in tips {
            logs.iter_mut().zip(&tables.all).for_each(|(sum, value)| *sum += copies * libm::log(*value));
            shut += copies * libm::log(nothing_runs.max(f64::MIN_POSITIVE));
        }
        let top = logs.iter().copied().fold(shut, f64::max);
        let rise = logs.iter().map(|log| libm::exp(log - top)).collect();
        Self { rise, shut: libm::exp(shut - top), top }
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
