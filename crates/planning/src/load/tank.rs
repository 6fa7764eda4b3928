//! The tank at the rate that was measured: change nothing, mix for what the sprayer puts out.

use units::{Amount, Area, Arg, Finding, Kind, Ranged, UnitSystem, Volume, VolumePerArea, Weight, Working};

use super::error::LoadError;
use super::findings::{hard_to_measure, label_decides, listed_twice};
use super::measure::Measure;
use super::plan::load;
use crate::given::{positive, sound};
use crate::product::{Basis, Product, ProductRate, RangedAmount};

/// What a tank does at the measured rate.
#[derive(Clone, Debug, PartialEq)]
pub struct TankAtRate {
    /// The mix in the tank, products included.
    pub volume: Volume,
    /// The rate it is worked out for, with its range.
    pub rate: Ranged<VolumePerArea>,
    /// The ground it covers, with its range.
    pub area: Ranged<Area>,
    /// What goes in.
    pub products: Vec<TankProduct>,
    /// What is worth telling; the first says what the tank does.
    pub findings: Vec<Finding>,
}

/// One product in the tank.
#[derive(Clone, Debug, PartialEq)]
pub struct TankProduct {
    /// Its name.
    pub name: String,
    /// Whether the amount goes by the ground (and so by the rate) or by the mix alone.
    pub basis: Basis,
    /// The amount with the range it has from the rate's; one by the mix has none.
    pub amount: RangedAmount,
    /// The amount to measure; `None` where it is too little to measure.
    pub measure: Option<Measure>,
    /// The units it is measured in.
    pub system: UnitSystem,
}

/// Returns the ground a tank covers and the product it takes at the rate the sprayer really puts out.
///
/// *Units*: any; amounts in the units of each product's label.
///
/// *Assumptions*: the range is 95 %; everything else is taken as it stands. Products by the mix (2 pt/100 gal, % v/v) do
/// not depend on the rate, products by the ground do: less on the ground means more ground, so more product.
///
/// *Errors*: a tank or rate of nothing, a range that does not hold the rate, more product than mix.
///
/// *Source*: Univ. of Missouri Extension, MU Guide G1272: acres per tank = tank ÷ gallons per acre.
///
/// *Example*: 300 gal at 15 gal/ac (14.4 to 15.6) is 20 ac (19.2 to 20.8); 1 qt/ac is 20 qt (19.2 to 20.8), measured 5 gal.
pub fn tank_at_rate(
    tank: Volume,
    rate: &Ranged<VolumePerArea>,
    products: &[Product],
    jugs: UnitSystem,
) -> Result<TankAtRate, LoadError> {
    positive(tank, |tank| LoadError::NoTank { tank })?;
    sound(
        rate,
        |rate| LoadError::NoRate { rate },
        |range| LoadError::RangeOfRate { low: range.low, rate: range.value, high: range.high },
    )?;
    let area = rate.map(|rate| tank / rate);
    let load = load(tank, area.value, products, jugs)?;
    let mut findings = vec![covers(tank, rate, &area)];
    findings.extend(load.products.iter().filter_map(|product| hard_to_measure(product, &load)));
    findings.extend(listed_twice(products));
    findings.extend(label_decides(products));
    let products = products
        .iter()
        .zip(&load.products)
        .map(|(product, loaded)| TankProduct {
            name: loaded.name.clone(),
            basis: product.rate().rate().basis(),
            amount: ranged(product.rate().rate(), tank, &area),
            measure: loaded.measure.clone(),
            system: loaded.system,
        })
        .collect();
    Ok(TankAtRate { volume: tank, rate: *rate, area, products, findings })
}

fn ranged(rate: &ProductRate, tank: Volume, area: &Ranged<Area>) -> RangedAmount {
    match *rate {
        ProductRate::LiquidPerArea(rate) => RangedAmount::Liquid(area.map(|area| rate * area)),
        ProductRate::DryPerArea(rate) => RangedAmount::Dry(area.map(|area| rate * area)),
        ProductRate::LiquidInMix { share } => RangedAmount::Liquid(Ranged::exact(tank * share)),
        ProductRate::DryInMix(density) => RangedAmount::Dry(Ranged::exact(density * tank)),
    }
}

fn covers(tank: Volume, rate: &Ranged<VolumePerArea>, area: &Ranged<Area>) -> Finding {
    let (rate, area) = (Amount::ranged(rate, Kind::Rate), Amount::ranged(area, Kind::Area));
    let tank = Arg::Amount(Amount::new(tank, Kind::Volume));
    let working = Working::new(
        "area_per_tank",
        "area per tank = tank ÷ rate",
        "Univ. of Missouri Extension, MU Guide G1272",
    )
    .figure("tank", tank.clone())
    .figure("rate", Arg::Amount(rate.clone()))
    .result(Arg::Amount(area.clone()));
    Finding::new(
        Weight::Note,
        "tank_at_measured_rate",
        "At {rate}, which is what your sprayer puts out, a tank of {tank} covers {area}.",
    )
    .with("rate", Arg::Amount(rate))
    .with("tank", tank)
    .with("area", Arg::Amount(area.clone()))
    .to_do("You need not change the sprayer for this: mix each tank for {area}.")
    .about(area)
    .because(working)
}
