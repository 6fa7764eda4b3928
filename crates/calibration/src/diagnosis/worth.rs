//! What one check settles, on average over what it may show (preposterior analysis).

use units::{Quantity, Time};

use super::answer::TipDiagnosis;
use super::cause::Cause;
use super::infer::COARSE;
use super::model::DiagnosisModel;
use super::offsets::STEP;
use super::seen::Seen;
use crate::catch::{Round, TipCatches};

/// What is wrong on average of the likeliest cause.
pub(super) fn loss(causes: &[f64; 5]) -> f64 {
    1.0 - causes.iter().copied().fold(0.0, f64::max)
}

/// What a look at the size settles.
pub(super) fn one_look(tip: &TipDiagnosis) -> f64 {
    let after: f64 = [Seen::RightSize { tip: tip.number }, Seen::WrongSize { tip: tip.number }]
        .map(|seen| {
            let likely = seen.likelihood();
            tip.causes.iter().zip(likely).map(|(chance, likely)| chance * likely).fold(0.0, f64::max)
        })
        .iter()
        .sum();
    (loss(&tip.causes) - (1.0 - after)).max(0.0)
}

/// What a test of a thing settles that is so with a chance.
pub(super) fn test(chance: f64, sensitive: f64, specific: f64) -> f64 {
    let now = chance.min(1.0 - chance);
    let told_so = (chance * sensitive).min((1.0 - chance) * (1.0 - specific));
    let told_not = (chance * (1.0 - sensitive)).min((1.0 - chance) * specific);
    (now - told_so - told_not).max(0.0)
}

/// What one more cup settles, and how long it is held: readings on the coarse flows, as likely as what is known makes them.
pub(super) fn one_more_cup(
    tip: &TipDiagnosis,
    cups: &TipCatches,
    round: &Round,
    model: &DiagnosisModel,
) -> Option<(f64, Time)> {
    let last = cups.catches.last()?;
    let (volume, time) = (last.volume(round.density).si(), last.time());
    let marks =
        last.step(round.density).si() / volume.max(last.step(round.density).si()).max(f64::MIN_POSITIVE);
    let ends = core::f64::consts::SQRT_2 * model.doubts.timer.ratio_to(time);
    let own = COARSE as f64 * STEP;
    let handling = model.doubts.handling;
    let spread = (marks * marks / 12.0 + ends * ends + handling * handling + own * own / 12.0).sqrt();
    let misread = model.priors.misread();
    let reach = ((REACH * spread / own).ceil()).min(tip.flows.len() as f64);
    // A few hundred at most.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let reach = reach as usize;
    let kernel: Vec<f64> = (0..=2 * reach)
        .map(|place| {
            let off = (place as f64 - reach as f64) * own / spread;
            libm::exp(-0.5 * off * off)
        })
        .collect();
    let whole: f64 = kernel.iter().sum();
    let mut readings = vec![[0.0; 5]; tip.flows.len()];
    for (flow, weights) in
        tip.flows.iter().enumerate().filter(|(_, weights)| weights.iter().sum::<f64>() > LITTLE)
    {
        for (place, share) in kernel.iter().enumerate() {
            let Some(reading) = (flow + place).checked_sub(reach).and_then(|place| readings.get_mut(place))
            else {
                continue;
            };
            let share = (1.0 - misread) * share / whole;
            reading.iter_mut().zip(weights).for_each(|(sum, weight)| *sum += share * weight);
        }
    }
    // A slip says nothing: it leaves the likeliest cause what it is. A plugged tip shows itself by a cup that stays empty.
    let slip = misread * (1.0 - loss(&tip.causes));
    let plugged = (1.0 - misread) * tip.probability_of(Cause::Plugged);
    let right: f64 = readings.iter().map(|weights| weights.iter().copied().fold(0.0, f64::max)).sum::<f64>()
        + plugged
        + slip;
    Some(((right - (1.0 - loss(&tip.causes))).max(0.0), time))
}

/// Beyond so many standard deviations nothing is left. Our own choice.
const REACH: f64 = 4.0;
/// Flows less likely than this are passed over. Our own choice.
const LITTLE: f64 = 1e-6;
