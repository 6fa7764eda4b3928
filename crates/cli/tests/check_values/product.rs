//! Product: its rate from the active ingredient, in the mix, on small ground; and what overlap costs.

use planning::{
    CostPerArea, ProductAmount, WrittenRate, cost_of_overlap, percent_by_weight, percent_solution,
    scaled_to_area,
};
use units::{Area, Mass, VolumePerArea};

use crate::givens::{Found, Givens};
use crate::table::Measures;
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("product_rate_from_active_ingredient", product_rate_from_active_ingredient),
    ("product_per_volume", product_per_volume),
    ("percent_solution", solution),
    ("percent_solution_by_weight", solution_by_weight),
    ("scale_label_rate", scale_label_rate),
    ("overlap_cost", overlap_cost),
];

fn product_rate_from_active_ingredient(given: &Givens) -> Outcome<Found> {
    let written = WrittenRate::parse(&format!("{} at {}", given.text("active")?, given.text("strength")?))?;
    // The carrier does not matter to a product that goes by the ground.
    Found::per_area(written.rate().per_area(VolumePerArea::gallons_per_acre(17.0)))
}

fn product_per_volume(given: &Givens) -> Outcome<Found> {
    let written = WrittenRate::parse(given.text("product")?)?;
    Found::in_mix(written.rate().in_mix(given.get("rate")?))
}

fn solution(given: &Givens) -> Outcome<Found> {
    Found::of(percent_solution(given.get("volume")?, units::percent(given.text("strength")?)?)?)
}

fn solution_by_weight(given: &Givens) -> Outcome<Found> {
    let share = units::percent(given.text("strength")?)?;
    Found::of(percent_by_weight(given.get("volume")?, given.get("density")?, share)?)
}

fn scale_label_rate(given: &Givens) -> Outcome<Found> {
    let amount = ProductAmount::Dry(given.get::<Mass>("amount")?);
    Found::amount(scaled_to_area(amount, given.get("label_area")?, given.get("area")?)?)
}

/// The cost of an area's overlap; of an acre's where no area is given.
fn overlap_cost(given: &Givens) -> Outcome<Found> {
    let cost = CostPerArea::parse(given.text("cost")?)?;
    let percent = given.share("overlap")? * 100.0;
    if given.has("area") {
        Found::money(&cost_of_overlap(&cost, percent, given.get("area")?)?, Measures::Money)
    } else {
        Found::money(&cost_of_overlap(&cost, percent, Area::acres(1.0))?, Measures::MoneyPerAcre)
    }
}
