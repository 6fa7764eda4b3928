//! The tank: acres it does, tanks for a job, product in each.

use planning::{Job, Loads, Product, loads, tank_at_rate};
use units::{Area, Length, Ranged, UnitSystem, Volume, VolumePerArea};

use crate::givens::{Found, Givens};
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("acres_per_tank", acres_per_tank),
    ("tank_count", tank_count),
    ("total_mix", total_mix),
    ("product_per_tank", product_per_tank),
    ("product_per_tank_from_active_ingredient", product_per_tank_from_active_ingredient),
    ("product_total", product_total),
    ("product_for_volume", product_for_volume),
];

fn plan(area: Area, carrier: VolumePerArea, tank: Volume, products: &[Product]) -> Outcome<Loads> {
    Ok(loads(&Job { area, carrier, tank, jugs: UnitSystem::Us }, products)?)
}

fn acres_per_tank(given: &Givens) -> Outcome<Found> {
    let (tank, rate): (Volume, VolumePerArea) = (given.get("tank")?, given.get("rate")?);
    let measured = tank_at_rate(tank, &Ranged::exact(rate), &[], UnitSystem::Us)?;
    let planned = plan(Area::acres(100.0), rate, tank, &[])?;
    Found::by_all(&[measured.area.value, planned.area_per_tank])
}

fn tank_count(given: &Givens) -> Outcome<Found> {
    let plan = plan(given.get("area")?, given.get("rate")?, given.get("tank")?, &[])?;
    if plan.iter().count() != usize::try_from(plan.count())? {
        return Err("the loads one by one are not as many as are counted".into());
    }
    Found::ratio(f64::from(plan.count()))
}

/// Mix for a plot, as the loads of a tank smaller than it and of one larger.
fn total_mix(given: &Givens) -> Outcome<Found> {
    let (length, width): (Length, Length) = (given.get("length")?, given.get("width")?);
    let area = length * width;
    let rate: VolumePerArea = given.get("rate")?;
    let mix = |tank: Volume| -> Outcome<Volume> {
        Ok(plan(area, rate, tank, &[])?.iter().map(|load| load.volume).sum())
    };
    Found::by_all(&[mix(Volume::gallons(13.0))?, mix(Volume::gallons(500.0))?])
}

fn in_tank(written: &str, tank: Volume, rate: VolumePerArea) -> Outcome<Found> {
    let product = Product::parse(&format!("Product A: {written}"))?;
    let measured = tank_at_rate(tank, &Ranged::exact(rate), &[product], UnitSystem::Us)?;
    Found::amount(measured.products[0].amount.value())
}

fn product_per_tank(given: &Givens) -> Outcome<Found> {
    in_tank(given.text("product")?, given.get("tank")?, given.get("rate")?)
}

fn product_per_tank_from_active_ingredient(given: &Givens) -> Outcome<Found> {
    let written = format!("{} at {}", given.text("active")?, given.text("strength")?);
    in_tank(&written, given.get("tank")?, given.get("rate")?)
}

fn product_total(given: &Givens) -> Outcome<Found> {
    let product = Product::parse(&format!("Product A: {}", given.text("product")?))?;
    // Neither rate nor tank changes the sum of a product that goes by the ground.
    let plan =
        plan(given.get("area")?, VolumePerArea::gallons_per_acre(15.0), Volume::gallons(60.0), &[product])?;
    Found::amount(plan.totals[0].amount)
}

/// Product for a volume of mix; the rate does not matter to one that goes by the mix.
fn product_for_volume(given: &Givens) -> Outcome<Found> {
    in_tank(given.text("product")?, given.get("volume")?, VolumePerArea::gallons_per_acre(17.0))
}
