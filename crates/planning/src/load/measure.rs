//! An amount as it can be measured: rounded down to a step of jug or scale, never above the label.

use units::{Arg, Mass, Quantity, Unit, UnitSystem, Volume, factor};

use super::people;
use crate::product::ProductAmount;

/// An amount rounded down to what can be measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Measure {
    /// The amount to measure, never more than what was asked for.
    pub amount: ProductAmount,
    /// The step it was rounded to.
    pub step: ProductAmount,
    /// As people measure it, from the largest jug down: 9 gal, 3 pt.
    pub parts: Vec<(String, Unit)>,
    /// The parts in English: "9 gal 3 pt", "22 fl oz", "2 lb 8 oz wt", "12.9 L".
    pub text: String,
}

/// Returns an amount of product rounded down to what can be measured; `None` where it is less than the
/// smallest step, which no jug or scale for farm use shows.
///
/// *Units*: US steps are gal, qt, pt, 8, 1, 1/2 and 1/4 fl oz, and 1, 1/2 lb, 4, 1, 1/2 and 1/4 oz wt; metric ones
/// L, 500, 100, 50, 10, 5 and 1 mL, and the same in kg and g.
///
/// *Assumptions*: the coarsest step that is at most 1 % of the amount is fine enough; below a hundred of the smallest
/// steps the smallest one is taken. Both are our own rule. A hair below a step, from arithmetic alone, is on it.
///
/// *Source*: none for the steps; that a label's rate must not be passed is the label's.
///
/// *Example*: 75 pt is measured as 9 gal 3 pt; 1.4 pt (22.4 fl oz) as 22 1/4 fl oz.
#[must_use]
pub fn measure(amount: ProductAmount, system: UnitSystem) -> Option<Measure> {
    let (smallest, steps) = ladder(amount, system);
    let count = amount.ratio_to(smallest).filter(|count| count.is_finite())?;
    let finest_wanted = count * FINE_ENOUGH * (1.0 + SLACK);
    let step = steps.iter().copied().find(|step| *step <= finest_wanted).unwrap_or(1.0);
    let measured = (count / step * (1.0 + SLACK)).floor() * step;
    if measured < 1.0 {
        return None;
    }
    let parts = match (amount, system) {
        (ProductAmount::Liquid(_), UnitSystem::Us) => people::quarter_fluid_ounces(measured),
        (ProductAmount::Dry(_), UnitSystem::Us) => people::quarter_ounces_of_weight(measured),
        (ProductAmount::Liquid(_), UnitSystem::Metric) => people::thousandths(measured, "L", "mL"),
        (ProductAmount::Dry(_), UnitSystem::Metric) => people::thousandths(measured, "kg", "g"),
    };
    let text = Arg::Parts(parts.clone()).text(system);
    let rounded = smallest.times(measured);
    // The slack must not lift the measure above the amount, not even by its last bit.
    let down = if rounded.si() > amount.si() { amount } else { rounded };
    Some(Measure { amount: down, step: smallest.times(step), parts, text })
}

/// How fine a step must be: a hundredth of the amount. Our own rule, well below the 5 % of a rate's limit.
const FINE_ENOUGH: f64 = 0.01;
/// A hair that arithmetic may be off, in parts of the amount. Our own choice, far below any jug's mark.
const SLACK: f64 = 1e-12;

/// Steps in quarters of a fluid ounce: gal, qt, pt, 8, 1, 1/2 and 1/4 fl oz.
/// Source: NIST HB 44 (2023) App. C, 128 fl oz to the gallon; which steps a jug shows is common practice.
const US_LIQUID: &[f64] = &[512.0, 128.0, 64.0, 32.0, 4.0, 2.0, 1.0];
/// Steps in quarters of an ounce of weight: 1, 1/2 lb, 4, 1, 1/2 and 1/4 oz wt. Source: NIST HB 44 (2023) App. C.
const US_DRY: &[f64] = &[64.0, 32.0, 16.0, 4.0, 2.0, 1.0];
/// Steps in mL or g: one litre or kilogram, 500, 100, 50, 10, 5 and 1. Source: common practice.
const METRIC: &[f64] = &[1000.0, 500.0, 100.0, 50.0, 10.0, 5.0, 1.0];

/// The smallest step, and all steps in multiples of it, coarsest first.
fn ladder(amount: ProductAmount, system: UnitSystem) -> (ProductAmount, &'static [f64]) {
    match (amount, system) {
        (ProductAmount::Liquid(_), UnitSystem::Us) => {
            (ProductAmount::Liquid(Volume::from_si(factor::US_FLUID_OUNCE / 4.0)), US_LIQUID)
        }
        (ProductAmount::Dry(_), UnitSystem::Us) => {
            (ProductAmount::Dry(Mass::from_si(factor::OUNCE_WEIGHT / 4.0)), US_DRY)
        }
        (ProductAmount::Liquid(_), UnitSystem::Metric) => {
            (ProductAmount::Liquid(Volume::millilitres(1.0)), METRIC)
        }
        (ProductAmount::Dry(_), UnitSystem::Metric) => (ProductAmount::Dry(Mass::grams(1.0)), METRIC),
    }
}
