//! What goes in the tank at the rate that was measured, and whether that keeps to the label.

use calibration::rate::Method;
use planning::{
    Basis, Job, Judged, Loads, Product, ProductTarget, PutDown, RateLimit, TankAtRate, Target, WrittenRate,
    judge, loads, tank_at_rate,
};
use units::{Amount, Arg, AsWritten, Coded, Finding, Kind, Ranged, UnitSystem, VolumePerArea, Weight};

use super::error::CheckError;
use super::plugged;
use super::rate::RateOutcome;
use crate::record::{PlannedProduct, Visit};

/// What goes in the tank.
#[derive(Clone, Debug)]
pub struct TankOutcome {
    /// A full tank.
    pub full: TankAtRate,
    /// The loads of the job ahead, where its area is known.
    pub loads: Option<Loads>,
    /// What is worth telling beside what planning tells.
    pub own_findings: Vec<Finding>,
}

impl TankOutcome {
    /// What is worth telling. The loads speak of the same products, so only what is new in them.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        let told = |finding: &&Finding| !self.full.findings.iter().any(|full| same(full, finding));
        let own = self.own_findings.iter();
        own.chain(&self.full.findings).chain(self.loads.iter().flat_map(|loads| &loads.findings).filter(told))
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
    let refilled = matches!(rate.main().method, Method::KnownArea | Method::DistanceRefill);
    let fitting = |finding| match (rate.plugged.is_empty(), refilled) {
        (false, _) => plugged::clean_first(finding),
        (true, true) => use_up_more(finding),
        (true, false) => finding,
    };
    judged.findings = judged.findings.into_iter().map(fitting).collect();
    Ok(Some(judged))
}

/// A rate from a refill is known better by using up more, not by cups and a drive that there were none of.
fn use_up_more(finding: Finding) -> Finding {
    let with_mix_for = finding.args().get("mix_for").is_some();
    let refilled = finding.clone().case("refilled");
    match (finding.code(), with_mix_for) {
        ("rate_cannot_tell", _) => {
            refilled.to_do("Mix the tank for {rate}; use up more before filling again to know better.")
        }
        ("product_may_be_over_label", true) => refilled.to_do(
            "To be sure, work the load out for {mix_for}; or use up more before filling again to know better.",
        ),
        ("product_may_be_over_label", false) => {
            let says =
                "To be sure, make it a little weaker; or use up more before filling again to know better.";
            refilled.case("refilled_weaker").to_do(says)
        }
        ("product_may_be_under_least", _) => refilled.to_do(
            "Mix the tank for the rate the sprayer really puts out; use up more before filling again to know better.",
        ),
        ("carrier_may_be_under_label", _) => {
            refilled.to_do("Use up more before filling again to know the rate better, or put out a little more.")
        }
        _ => finding,
    }
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
    Ok(Some(TankOutcome {
        full,
        loads,
        own_findings: plugged::tank_as_found(&rate.plugged).into_iter().collect(),
    }))
}
