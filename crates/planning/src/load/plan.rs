//! Loads for a job: how many full tanks, what is in each, and the last part load worked out on its own.

use units::{Amount, Area, Arg, Finding, Kind, UnitSystem, Volume, VolumePerArea, Working};

use super::error::LoadError;
use super::findings;
use super::measure::{Measure, measure};
use crate::count::whole;
use crate::given::positive;
use crate::product::{Product, ProductAmount};

/// The most loads worked out for one job. Our own limit: at four loads an hour it is a year of days and nights, so a
/// larger number is a wrong unit.
pub const MOST_LOADS: u32 = 10_000;

/// Below this share of a tank the last load is called small. Our own choice: agitation and the last rounding of
/// measures suffer in it.
pub const SMALL_LAST_LOAD: f64 = 0.10;

/// What a job is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Job {
    /// The ground to cover.
    pub area: Area,
    /// Mix on the ground: what the sprayer really puts out.
    pub carrier: VolumePerArea,
    /// What the tank holds.
    pub tank: Volume,
    /// Jugs and scales for products whose rate does not say, as 0.25 % v/v.
    pub jugs: UnitSystem,
}

/// One load of the tank.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// The mix in the tank, products included.
    pub volume: Volume,
    /// The ground it covers.
    pub area: Area,
    /// What goes in, in the order in which it was given, which is no advice on the order of adding.
    pub products: Vec<LoadProduct>,
}

/// One product in a load.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadProduct {
    /// Its name.
    pub name: String,
    /// The amount at full precision.
    pub amount: ProductAmount,
    /// The amount to measure; `None` where it is too little to measure.
    pub measure: Option<Measure>,
    /// The units it is measured in.
    pub system: UnitSystem,
}

/// The loads of a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Loads {
    /// The ground a full tank covers.
    pub area_per_tank: Area,
    /// How many full loads there are.
    pub full_loads: u32,
    /// Each of the full loads; `None` where the whole job is less than a tank.
    pub full: Option<Load>,
    /// The last part load; `None` where the job comes out in full tanks.
    pub last: Option<Load>,
    /// Where the last load is small: what the last two hold when they share their mix evenly.
    pub shared: Option<Load>,
    /// Each product for the whole job, to order or fetch.
    pub totals: Vec<LoadProduct>,
    /// What is worth telling.
    pub findings: Vec<Finding>,
    /// How it was reached.
    pub working: Working,
}

impl Loads {
    /// How many loads there are in all.
    #[must_use]
    pub fn count(&self) -> u32 {
        self.full_loads + u32::from(self.last.is_some())
    }

    /// Every load in turn, the last part load last.
    pub fn iter(&self) -> impl Iterator<Item = &Load> {
        let full = self.full.iter().flat_map(|load| (0..self.full_loads).map(move |_| load));
        full.chain(self.last.iter())
    }
}

/// Returns the loads for a job: full tanks, and the last part load with its own, smaller amounts.
///
/// *Units*: any; amounts in the units of each product's label.
///
/// *Assumptions*: `volume` is mix, products included; the tank is filled to what it holds and sprayed out. A job
/// that comes out in full tanks but for a billionth does come out in full tanks.
///
/// *Errors*: an area, rate or tank of nothing; more than [`MOST_LOADS`]; more product than mix.
///
/// *Source*: Univ. of Missouri Extension, MU Guide G1272: acres per tank = tank ÷ gallons per acre, product in a
/// tank = acres per tank × rate. The last load from the acres that are left: Agrochemical and Pesticide Safety
/// handbook, chapter on diluting pesticides.
///
/// *Example*: 25 ac at 20 gal/ac from a 500 gal tank is one load; 3 pt/ac of product is 75 pt, measured as 9 gal 3 pt.
pub fn loads(job: &Job, products: &[Product]) -> Result<Loads, LoadError> {
    positive(job.area, |area| LoadError::NoArea { area })?;
    positive(job.carrier, |rate| LoadError::NoRate { rate })?;
    positive(job.tank, |tank| LoadError::NoTank { tank })?;
    let total = job.carrier * job.area;
    let tanks = total.ratio_to(job.tank);
    if !tanks.is_finite() || tanks > f64::from(MOST_LOADS) * (1.0 + HAIR) {
        return Err(LoadError::TooManyLoads {
            area: job.area,
            rate: job.carrier,
            tank: job.tank,
            loads: tanks.ceil(),
        });
    }
    let comes_out = tanks.round() >= 1.0 && (tanks - tanks.round()).abs() <= HAIR * tanks;
    let full_tanks = if comes_out { tanks.round() } else { tanks.floor() };
    let full_loads = whole(full_tanks);
    let area_per_tank = job.tank / job.carrier;

    let load = |volume: Volume| load(volume, volume / job.carrier, products, job.jugs);
    let full = if full_loads > 0 { Some(load(job.tank)?) } else { None };
    let left = tidied(total - job.tank * full_tanks);
    let last = if comes_out { None } else { Some(load(left)?) };
    let small = full_loads > 0 && last.is_some() && left.ratio_to(job.tank) < SMALL_LAST_LOAD * (1.0 - HAIR);
    let shared = if small { Some(load((job.tank + left) / 2.0)?) } else { None };
    let totals = in_volume(total, job.area, products, job.jugs);

    let mut loads = Loads {
        area_per_tank,
        full_loads,
        full,
        last,
        shared,
        totals,
        findings: Vec::new(),
        working: working(job, area_per_tank),
    };
    loads.findings = findings::about_loads(&loads, job, products);
    Ok(loads)
}

/// A job that misses full tanks by this share of itself comes out in full tanks. Our own slack for binary
/// arithmetic: a billionth of 1,000 gal is a fiftieth of a drop.
const HAIR: f64 = 1e-9;

/// What is left after full tanks without the noise of subtracting: 100 gal, not 99.9999999999999. A thousandth of a
/// gallon or a litre that it misses by a hair counts as hit.
fn tidied(left: Volume) -> Volume {
    for step in [Volume::gallons(0.001), Volume::litres(0.001)] {
        let steps = left.ratio_to(step);
        if (steps - steps.round()).abs() <= HAIR * steps {
            return step * steps.round();
        }
    }
    left
}

/// A load of a volume of mix that covers an area.
pub(super) fn load(
    volume: Volume,
    area: Area,
    products: &[Product],
    jugs: UnitSystem,
) -> Result<Load, LoadError> {
    for product in products {
        if let ProductAmount::Liquid(amount) = product.rate().rate().amount_in(volume, area)
            && amount.ratio_to(volume) > 1.0 + HAIR
        {
            return Err(LoadError::MoreProductThanMix {
                name: product.name().to_string(),
                rate: product.rate().text().to_string(),
                product: amount,
                mix: volume,
            });
        }
    }
    Ok(Load { volume, area, products: in_volume(volume, area, products, jugs) })
}

fn in_volume(volume: Volume, area: Area, products: &[Product], jugs: UnitSystem) -> Vec<LoadProduct> {
    let one = |product: &Product| {
        let amount = product.rate().rate().amount_in(volume, area);
        let system = product.rate().measured_in().unwrap_or(jugs);
        LoadProduct { name: product.name().to_string(), amount, measure: measure(amount, system), system }
    };
    products.iter().map(one).collect()
}

fn working(job: &Job, area_per_tank: Area) -> Working {
    Working::new(
        "area_per_tank",
        "area per tank = tank ÷ rate",
        "Univ. of Missouri Extension, MU Guide G1272",
    )
    .figure("tank", Arg::Amount(Amount::new(job.tank, Kind::Volume)))
    .figure("rate", Arg::Amount(Amount::new(job.carrier, Kind::Rate)))
    .result(Arg::Amount(Amount::new(area_per_tank, Kind::Area)))
}
