//! Carriers that are not water: density, nutrients, water conditioning.

use planning::{
    PartsPerMillion, WaterTest, ammonium_sulfate_for_hard_water, carrier_for_nutrient, nutrient_at_rate,
    nutrient_in_volume, water_stands_in,
};
use sprayer::{OWN_TEST_ABOVE, WATER_DENSITY, density_factor, from_water, to_water};
use units::{Density, MassPerArea, Quantity, VolumePerArea};

use crate::givens::{Found, Givens, turning_point};
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("density_factor", factor),
    ("water_equivalent_rate", water_equivalent_rate),
    ("solution_rate", solution_rate),
    ("threshold_density", threshold_density),
    ("nutrient_per_gallon", nutrient_per_gallon),
    ("carrier_for_nutrient", liquid_for_nutrient),
    ("water_conditioning_ams", ammonium_sulfate),
];

/// The row's density of water, which must be one that sources take; ours is [`WATER_DENSITY`] throughout.
fn water(given: &Givens) -> Outcome<Density> {
    let water: Density = given.get("water")?;
    if (water.ratio_to(WATER_DENSITY) - 1.0).abs() < 0.002 {
        Ok(water)
    } else {
        Err("no water weighs that".into())
    }
}

fn factor(given: &Givens) -> Outcome<Found> {
    water(given)?;
    Found::ratio(density_factor(given.get("density")?)?)
}

/// Water's rate for a liquid's, from which the liquid's must come back.
fn water_equivalent_rate(given: &Givens) -> Outcome<Found> {
    water(given)?;
    let (rate, density): (VolumePerArea, Density) = (given.get("rate")?, given.get("density")?);
    let water = to_water(rate, density)?;
    let back = from_water(water, density)?;
    if (back.ratio_to(rate) - 1.0).abs() > 1e-12 {
        return Err(format!("{rate:?} came back as {back:?}").into());
    }
    Found::of(water)
}

fn solution_rate(given: &Givens) -> Outcome<Found> {
    water(given)?;
    Found::of(from_water(given.get("rate")?, given.get("density")?)?)
}

/// The density from which on a calibration with water alone is said not to do.
fn threshold_density(given: &Givens) -> Outcome<Found> {
    let (water, limit) = (water(given)?, given.share("limit")?);
    if (limit - OWN_TEST_ABOVE).abs() > 1e-12 {
        return Err(format!("our limit is {OWN_TEST_ABOVE}").into());
    }
    let does = |times: f64| Ok(water_stands_in(water * times)?.is_none());
    Found::of(water * turning_point(1.0, 2.0, does)?)
}

fn nutrient_per_gallon(given: &Givens) -> Outcome<Found> {
    Found::of(nutrient_in_volume(given.get("density")?, given.share("share")?)?)
}

fn liquid_for_nutrient(given: &Givens) -> Outcome<Found> {
    let (nutrient, density): (MassPerArea, Density) = (given.get("nutrient")?, given.get("density")?);
    let share = given.share("share")?;
    let rate = carrier_for_nutrient(nutrient, density, share)?;
    let back = nutrient_at_rate(rate, density, share)?;
    if (back.si() / nutrient.si() - 1.0).abs() > 1e-12 {
        return Err(format!("{nutrient:?} came back as {back:?}").into());
    }
    Found::of(rate)
}

fn ammonium_sulfate(given: &Givens) -> Outcome<Found> {
    let parts = |name| -> Outcome<PartsPerMillion> { Ok(PartsPerMillion::parse(given.text(name)?)?) };
    let test = WaterTest {
        potassium: parts("potassium")?,
        sodium: parts("sodium")?,
        calcium: parts("calcium")?,
        magnesium: parts("magnesium")?,
        iron: parts("iron")?,
    };
    Found::of(ammonium_sulfate_for_hard_water(&test).amount)
}
