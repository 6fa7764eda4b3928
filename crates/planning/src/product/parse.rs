//! Reading a product's rate as people and labels write it.

use units::{
    Density, Dimension, MassPerArea, Quantity, QuantityError, Unit, UnitSystem, VolumePerArea, Written,
};

use super::ounce::bare_ounces;
use super::rate::{ProductRate, WrittenRate};
use super::rate_error::RateError;
use super::strength::{
    Ingredient, IngredientKind, IngredientRate, Strength, numerator_is, strength, system_of, without_mark,
};
use crate::text::{for_message, has_control};

/// Reads a rate; see [`WrittenRate::parse`] for what may be written.
pub(super) fn rate(text: &str) -> Result<WrittenRate, RateError> {
    let given = text.trim();
    if given.is_empty() {
        return Err(RateError::Empty);
    }
    let length = given.chars().count();
    if length > LONGEST_RATE {
        return Err(RateError::TooLong { length });
    }
    if has_control(given) {
        return Err(RateError::NotARate { given: for_message(given) });
    }
    let slashed = with_slashes(given);
    let (rate_text, strength_text) = split_strength(&slashed);
    let (rate_text, kind) = without_mark(rate_text);
    let understood = match (kind, strength_text) {
        (None, None) => plain(&rate_text),
        (Some(kind), Some(strength_text)) => ingredient(&rate_text, kind, strength_text),
        (Some(kind), None) => Err(RateError::StrengthNeeded { given: given.to_string(), kind }),
        (None, Some(_)) => Err(RateError::StrengthWithoutMark { given: given.to_string() }),
    }?;
    Ok(WrittenRate { text: given.to_string(), ..understood })
}

/// The longest rate taken. Our own limit: no label writes a longer one.
const LONGEST_RATE: usize = 120;

/// " per " written out becomes a slash.
fn with_slashes(text: &str) -> String {
    let mut slashed = text.to_string();
    while let Some(place) = slashed.to_ascii_lowercase().find(" per ") {
        slashed.replace_range(place..place + " per ".len(), "/");
    }
    slashed
}

/// Splits "1.5 lb ai/ac at 4 lb ai/gal" at its "at" or "@".
fn split_strength(text: &str) -> (&str, Option<&str>) {
    if let Some((rate, strength)) = text.split_once('@') {
        return (rate.trim(), Some(strength.trim()));
    }
    match text.to_ascii_lowercase().find(" at ") {
        Some(place) => (text[..place].trim(), Some(text[place + " at ".len()..].trim())),
        None => (text, None),
    }
}

fn plain(text: &str) -> Result<WrittenRate, RateError> {
    if text.contains('%') {
        return percentage(text);
    }
    if let Some(ounces) = bare_ounces(text) {
        let (given, liquid, weight) = (for_message(text), ounces.liquid, ounces.weight);
        return Err(RateError::WhichOunce { given, liquid, weight });
    }
    let found = |written: Written, rate: ProductRate, area_unit: Option<Unit>| {
        let measured_in = written.unit().and_then(system_of);
        finished(text, rate, measured_in, area_unit)
    };
    if let Ok(written) = units::quantity(text, Dimension::VolumePerArea) {
        let (rate, unit) = (VolumePerArea::from_si(written.si()), written.unit().cloned());
        return found(written, ProductRate::LiquidPerArea(rate), unit);
    }
    if let Ok(written) = units::quantity(text, Dimension::MassPerArea) {
        let (rate, unit) = (MassPerArea::from_si(written.si()), written.unit().cloned());
        return found(written, ProductRate::DryPerArea(rate), unit);
    }
    if let Ok(written) = units::quantity(text, Dimension::Density) {
        let rate = Density::from_si(written.si());
        let unit = written.unit().and_then(system_of).and_then(|system| usual_unit(system, false));
        return found(written, ProductRate::DryInMix(rate), unit);
    }
    match units::quantity(text, Dimension::Ratio) {
        Ok(written) if written.unit().is_some_and(|unit| numerator_is(unit, Dimension::Volume)) => {
            let share = written.si();
            let unit = written.unit().and_then(system_of).and_then(in_mix_unit);
            found(written, ProductRate::LiquidInMix { share }, unit)
        }
        Ok(_) => Err(RateError::WeightInWeight { given: text.to_string() }),
        Err(_) => Err(why_not(text)),
    }
}

/// `0.25 % v/v`: a percentage that says it goes by volume.
fn percentage(text: &str) -> Result<WrittenRate, RateError> {
    let given = || text.to_string();
    let (number, said) = text.split_once('%').unwrap_or((text, ""));
    let value = units::decimal(number).map_err(RateError::Number)?;
    let said = said.trim().trim_matches(['(', ')']).to_ascii_lowercase();
    match said.as_str() {
        "v/v" | "vol/vol" | "by volume" | "by vol" => {}
        "" => return Err(RateError::BarePercent { given: given() }),
        "w/w" | "w/v" | "wt/wt" | "wt/vol" | "by weight" => {
            return Err(RateError::PercentByWeight { given: given() });
        }
        _ => return Err(RateError::NotARate { given: given() }),
    }
    finished(text, ProductRate::LiquidInMix { share: value / 100.0 }, None, None)
}

fn ingredient(text: &str, kind: IngredientKind, strength_text: &str) -> Result<WrittenRate, RateError> {
    let (strength_text, strength_kind) = without_mark(strength_text);
    if strength_kind.is_some_and(|other| other != kind) {
        return Err(RateError::MixedMarks { given: format!("{text} at {strength_text}") });
    }
    let strength = strength(&strength_text)?;
    // An ounce of active ingredient is always one of weight, so "oz ai/ac" is clear.
    let (rate, written) = if let Ok(written) = units::quantity(text, Dimension::MassPerArea) {
        (IngredientRate::Area(MassPerArea::from_si(written.si())), written)
    } else if let Ok(written) = units::quantity(text, Dimension::Density) {
        (IngredientRate::Mix(Density::from_si(written.si())), written)
    } else {
        return Err(match why_not(text) {
            RateError::NotARate { given } | RateError::NoBasis { given } => {
                RateError::IngredientRate { given, kind }
            }
            other => other,
        });
    };
    let ingredient = Ingredient { kind, rate, strength };
    let liquid = matches!(strength, Strength::Liquid(_));
    let system = written.unit().and_then(system_of);
    let unit = match rate {
        IngredientRate::Area(_) => system.and_then(|system| usual_unit(system, liquid)),
        IngredientRate::Mix(_) if liquid => system.and_then(in_mix_unit),
        IngredientRate::Mix(_) => system.and_then(|system| usual_unit(system, false)),
    };
    let understood = finished(text, ingredient.product_rate(), system, unit)?;
    Ok(WrittenRate { ingredient: Some(ingredient), ..understood })
}

fn finished(
    text: &str,
    rate: ProductRate,
    measured_in: Option<UnitSystem>,
    area_unit: Option<Unit>,
) -> Result<WrittenRate, RateError> {
    let (amount, share) = match rate {
        ProductRate::LiquidPerArea(rate) => (rate.si(), None),
        ProductRate::DryPerArea(rate) => (rate.si(), None),
        ProductRate::LiquidInMix { share } => (share, Some(share)),
        ProductRate::DryInMix(density) => (density.si(), None),
    };
    if amount <= 0.0 {
        return Err(RateError::Nothing { given: text.to_string() });
    }
    if share.is_some_and(|share| share > 1.0) {
        return Err(RateError::OverWhole { given: text.to_string() });
    }
    Ok(WrittenRate { text: text.to_string(), rate, ingredient: None, measured_in, area_unit })
}

/// The unit a product on an area is shown in when its label goes by active ingredient or by weight in the mix.
fn usual_unit(system: UnitSystem, liquid: bool) -> Option<Unit> {
    Unit::named(match (system, liquid) {
        (UnitSystem::Us, true) => "pt/ac",
        (UnitSystem::Us, false) => "lb/ac",
        (UnitSystem::Metric, true) => "L/ha",
        (UnitSystem::Metric, false) => "kg/ha",
    })
}

/// The unit a liquid on an area is shown in when its label goes by the mix.
fn in_mix_unit(system: UnitSystem) -> Option<Unit> {
    Unit::named(match system {
        UnitSystem::Us => "fl oz/ac",
        UnitSystem::Metric => "mL/ha",
    })
}

/// Why a text is not a rate, as plainly as can be told.
fn why_not(text: &str) -> RateError {
    let given = || text.to_string();
    let whole = |dimension| units::quantity(text, dimension).is_ok();
    if whole(Dimension::Volume) || whole(Dimension::Mass) {
        return RateError::NoBasis { given: given() };
    }
    match units::quantity(text, Dimension::VolumePerArea) {
        Err(QuantityError::MissingUnit { .. }) => RateError::NoUnit { given: given() },
        Err(
            error @ (QuantityError::NotANumber { .. }
            | QuantityError::Comma { .. }
            | QuantityError::Negative { .. }
            | QuantityError::TooLarge { .. }
            | QuantityError::ZeroUnderLine { .. }),
        ) => RateError::Number(error),
        _ => RateError::NotARate { given: given() },
    }
}
