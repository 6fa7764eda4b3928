//! Tips that were swapped and caught again: does what was low go with the tip, or stay at its place?

use super::answer::{Diagnosis, TipDiagnosis};
use super::cause::Cause;
use super::cups::TipCups;
use super::infer::{Alike, Found, OfSection};
use super::kinds::Boom;
use super::model::Swap;
use super::offsets::{LOWEST_BASE, at};
use super::quantile::mean_and_spread;

/// Where a fault sits that a swap can tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sits {
    /// In the tip: it goes along.
    InTip,
    /// At the place: body, its hose, its check valve. It stays.
    AtPlace,
}

/// A base with less weight tells nothing. Our own choice, as in the sums.
const NOTHING: f64 = 1e-8;

/// How much lower one section stands than another: the logarithm of flow.
fn from_to(found: &Found, from: usize, to: usize) -> f64 {
    let base = |section: usize| {
        let bases = found.sections.get(section)?.bases.iter().enumerate();
        let of = |(place, weight): (usize, &f64)| (at(LOWEST_BASE) + place as f64 * (at(1) - at(0)), *weight);
        mean_and_spread(bases.map(of)).map(|(mean, _)| mean)
    };
    match (base(from), base(to)) {
        (Some(low), Some(high)) if from != to => high - low,
        _ => 0.0,
    }
}

/// The tips with the cups caught after the swaps, as they count where faults sit in tips or at places.
pub(super) fn with_swaps<'a>(
    cups: &[TipCups<'a>],
    swaps: &'a [Swap],
    sits: Sits,
    at_place: f64,
    kinds: &[(usize, usize)],
    found: &Found,
) -> Vec<TipCups<'a>> {
    let mut cups = cups.to_vec();
    let place = |number: u32| cups.iter().position(|tip| tip.tip.number == number);
    let mut added = Vec::new();
    for swap in swaps {
        let (Some(one), Some(other)) = (place(swap.tips.0), place(swap.tips.1)) else { continue };
        for (tip, across, own, gone) in
            [(one, other, &swap.after[0], &swap.after[1]), (other, one, &swap.after[1], &swap.after[0])]
        {
            match sits {
                Sits::InTip => added.push((tip, from_to(found, kinds[tip].0, kinds[across].0), gone)),
                Sits::AtPlace => added.push((tip, 0.0, own)),
            }
        }
    }
    for (tip, by, after) in added {
        cups[tip].after.extend(after.iter().map(|catch| (by, catch)));
        // Only what lowers the flow can sit at the place.
        cups[tip].weigh = match sits {
            Sits::InTip => [1.0, 1.0, 1.0 - at_place, 1.0 - at_place, 1.0],
            Sits::AtPlace => [1.0, 0.0, at_place, at_place, 0.0],
        };
    }
    cups
}

/// What is needed to hold one way against the other.
pub(super) struct Way<'a> {
    /// The tips of the boom.
    pub boom: &'a Boom<'a>,
    /// Their tables.
    pub sections: &'a [OfSection],
}

/// The chance that what is the matter with a swapped pair sits at a place, in the order of the swaps; nothing for tips that
/// are not on the boom. `plain` and `found` are the boom without the cups caught after.
pub(super) fn chances(
    swaps: &[Swap],
    plain: &Way<'_>,
    found: &Found,
    in_tip: &Way<'_>,
    at_place: &Way<'_>,
    shares: [f64; 5],
) -> Vec<Option<f64>> {
    let of = |swap: &Swap| {
        let of_tip = |number: u32| {
            let tip = plain.boom.tips.iter().position(|tip| tip.tip.number == number)?;
            let table = |way: &Way<'_>| -> Option<(f64, f64)> {
                let (section, kind) = way.boom.kinds[tip];
                let own = way.sections.get(section)?.tips.get(kind)?;
                let before = plain.boom.kinds[tip];
                let without = plain.sections.get(before.0)?.tips.get(before.1)?;
                Some(likely(own, without, &found.sections.get(section)?.bases, shares))
            };
            Some((table(in_tip)?, table(at_place)?))
        };
        let (one, other) = (of_tip(swap.tips.0)?, of_tip(swap.tips.1)?);
        let moved = one.0.0 * other.0.0;
        // Both sound is no fault of any place: it counts once, with the tips.
        let stayed = (one.1.0 * other.1.0 - one.1.1 * other.1.1).max(0.0);
        (moved + stayed > 0.0).then(|| stayed / (moved + stayed))
    };
    swaps.iter().map(of).collect()
}

/// How likely a tip's cups are, on what the rest of the boom makes of its base: whatever it is, and if it is sound.
fn likely(own: &Alike, without: &Alike, bases: &[f64], shares: [f64; 5]) -> (f64, f64) {
    let (mut all, mut sound) = (0.0, 0.0);
    for (base, weight) in bases.iter().enumerate().filter(|(_, weight)| **weight > NOTHING) {
        let weight = weight / without.tables.all[base];
        all += weight * own.tables.all[base];
        let which = Cause::Sound.place();
        sound += weight * shares[which] * own.says[which] * own.tables.by_cause[which][base];
    }
    (all, sound)
}

/// Puts what is found under both ways together: each swapped tip by the chance of its pair, all else as the likelier way has it.
pub(super) fn mixed(
    swaps: &[Swap],
    chances: &[Option<f64>],
    in_tip: Diagnosis,
    at_place: &Diagnosis,
) -> Diagnosis {
    let known: Vec<f64> = chances.iter().flatten().copied().collect();
    let stays = known.iter().sum::<f64>() > 0.5 * known.len() as f64;
    let mut found = if stays { at_place.clone() } else { in_tip.clone() };
    for (swap, chance) in swaps.iter().zip(chances) {
        let Some(chance) = chance else { continue };
        for number in [swap.tips.0, swap.tips.1] {
            let of = |found: &Diagnosis| found.tips.iter().find(|tip| tip.number == number).cloned();
            let (Some(moved), Some(stayed)) = (of(&in_tip), of(at_place)) else { continue };
            if let Some(tip) = found.tips.iter_mut().find(|tip| tip.number == number) {
                *tip = between(&moved, &stayed, *chance);
            }
        }
    }
    found
}

fn between(moved: &TipDiagnosis, stayed: &TipDiagnosis, chance: f64) -> TipDiagnosis {
    let mix = |one: f64, other: f64| (1.0 - chance) * one + chance * other;
    let all =
        |one: &[f64], other: &[f64]| one.iter().zip(other).map(|(one, other)| mix(*one, *other)).collect();
    let mut tip = moved.clone();
    tip.causes.iter_mut().zip(stayed.causes).for_each(|(one, other)| *one = mix(*one, other));
    tip.misread = all(&moved.misread, &stayed.misread);
    tip.misread_beside = all(&moved.misread_beside, &stayed.misread_beside);
    tip.in_order = mix(moved.in_order, stayed.in_order);
    for (one, other) in tip.flows.iter_mut().zip(&stayed.flows) {
        one.iter_mut().zip(other).for_each(|(one, other)| *one = mix(*one, *other));
    }
    if chance > 0.5 {
        tip.off = stayed.off;
    }
    let low =
        |tip: &TipDiagnosis| tip.probability_of(Cause::PartlyPlugged) + tip.probability_of(Cause::Plugged);
    tip.at_place = Some((chance * low(stayed)).clamp(0.0, 1.0));
    tip
}
