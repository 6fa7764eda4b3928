//! What goes in the tank at the rate that was measured, and whether that keeps to the label.

use planning::{
    Basis, Job, Judged, Loads, Product, ProductTarget, PutDown, RateLimit, TankAtRate, Target, WrittenRate,
    judge, loads, tank_at_rate,
};
use units::{Amount, Arg, AsWritten, Finding, Kind, Ranged, UnitSystem, VolumePerArea, Weight};

use super::error::CheckError;
use super::rate::RateOutcome;
use crate::record::{PlannedProduct, Visit};

/// What goes in the tank.
#[derive(Clone, Debug)]
pub struct TankOutcome {
    /// A full tank.
    pub full: TankAtRate,
    /// The loads of the job ahead, where its area is known.
    pub loads: Option<Loads>,
}

impl TankOutcome {
    /// What is worth telling. The loads speak of the same products, so only what is new in them.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        let told = |finding: &&Finding| !self.full.findings.iter().any(|full| same(full, finding));
        self.full.findings.iter().chain(self.loads.iter().flat_map(|loads| &loads.findings).filter(told))
    }
}

fn same(one: &Finding, other: &Finding) -> bool {
    units::Coded::code(one) == units::Coded::code(other)
}

/// Works out what is wanted against what it puts out.
pub(super) fn target(visit: &Visit, rate: Option<&RateOutcome>) -> Result<Option<Judged>, CheckError> {
    let Some(rate) = rate else { return Ok(None) };
    if visit.target.is_none() && visit.products.is_empty() {
        return Ok(None);
    }
    let mut target = Target::new();
    if let Some(facts) = &visit.target {
        target = target.intended(facts.rate.value()).map_err(CheckError::of("target.rate"))?;
        if let Some(share) = facts.within {
            let limit = RateLimit::own(100.0 * share, "the user's own limit")
                .map_err(CheckError::of("target.within"))?;
            target = target.limit(limit);
        }
    }
    for planned in &visit.products {
        if let Some(least) = &planned.label.least_carrier {
            target =
                target.least_carrier(least.value()).map_err(CheckError::of("product.label_least_carrier"))?;
        }
        target = target.product(product_target(planned)?);
    }
    let ranged = rate.of_mix();
    let mixed_for = mixed_for(visit).unwrap_or(ranged.value);
    let mut judged = judge(&target, Some(mixed_for), &ranged).map_err(CheckError::of("target"))?;
    if mixed_for != ranged.value {
        let meant = visit.products.iter().map(|planned| &planned.product);
        judged.findings.extend(
            meant
                .zip(&judged.products)
                .filter_map(|(product, down)| mixed_otherwise(product, down, mixed_for)),
        );
    }
    Ok(Some(judged))
}

/// What goes on of a product in a tank that is mixed already, for another rate than the sprayer puts out.
fn mixed_otherwise(product: &Product, down: &PutDown, mixed_for: VolumePerArea) -> Option<Finding> {
    if product.rate().rate().basis() == Basis::Mix {
        return None;
    }
    let finding = Finding::new(
        Weight::Note,
        "product_mixed_for_other_rate",
        "The tank is mixed for {mixed_for}, so {name} goes on at {rate}; {meant} was meant.",
    )
    .with("mixed_for", Arg::Amount(Amount::new(mixed_for, Kind::Rate)))
    .with("name", Arg::Text(product.name().to_string()))
    .with("rate", Arg::Amount(down.rate.shown(product.rate().area_unit())))
    .with("meant", Arg::Text(product.rate().text().to_string()));
    Some(finding)
}

fn product_target(planned: &PlannedProduct) -> Result<ProductTarget, CheckError> {
    let rate = |text: &String| WrittenRate::parse(text).map_err(CheckError::of("product.label"));
    let mut target = ProductTarget::new(planned.product.clone());
    if let Some(least) = &planned.label.least {
        target = target.at_least(rate(least)?).map_err(CheckError::of("product.label_least"))?;
    }
    if let Some(most) = &planned.label.most {
        target = target.at_most(rate(most)?).map_err(CheckError::of("product.label_most"))?;
    }
    Ok(target)
}

/// The rate the tank is mixed for: as it was said. Where nothing was said the advice to mix for what the sprayer
/// puts out is taken as followed.
pub(super) fn mixed_for(visit: &Visit) -> Option<VolumePerArea> {
    visit.target.as_ref().and_then(|target| target.mixed_for.as_ref()).map(AsWritten::value)
}

/// Works out the tank, where its size is known.
pub(super) fn tank(
    visit: &Visit,
    rate: Option<&RateOutcome>,
    jugs: UnitSystem,
) -> Result<Option<TankOutcome>, CheckError> {
    let Some(rate) = rate else { return Ok(None) };
    let Some(tank) = visit.machine.as_ref().and_then(|machine| machine.tank.as_ref()) else {
        return Ok(None);
    };
    let products: Vec<Product> = visit.products.iter().map(|planned| planned.product.clone()).collect();
    let ranged: Ranged<VolumePerArea> = rate.of_mix();
    let full =
        tank_at_rate(tank.value(), &ranged, &products, jugs).map_err(CheckError::of("sprayer.tank"))?;
    let loads = match &visit.job.area {
        Some(area) => {
            // Of a field sprayed in bands only the bands are treated.
            let treated = area.value() * rate.treated.unwrap_or(1.0);
            let job = Job { area: treated, carrier: ranged.value, tank: tank.value(), jugs };
            Some(loads(&job, &products).map_err(CheckError::of("job.area"))?)
        }
        None => None,
    };
    Ok(Some(TankOutcome { full, loads }))
}
