//! What is worth telling about a set of loads.

use units::{Amount, Arg, Finding, Kind, UnitSystem, Weight};

use super::plan::{Job, Load, LoadProduct, Loads};
use crate::product::Product;

/// Findings about the loads of a job, the most pressing first.
pub(super) fn about_loads(loads: &Loads, job: &Job, products: &[Product]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for load in loads.full.iter().chain(loads.last.iter()) {
        findings.extend(load.products.iter().filter_map(|product| hard_to_measure(product, load)));
    }
    findings.extend(listed_twice(products));
    if let (Some(last), Some(shared)) = (&loads.last, &loads.shared) {
        findings.push(small_last_load(last, shared, job));
    }
    findings.extend(label_decides(products));
    findings.sort_by_key(|finding| finding.weight);
    findings
}

/// More short of the amount than this, and a finer measure is asked for. Our own choice: the usual ±5 % of a rate.
const MOST_SHORT: f64 = 0.05;

/// A product that a jug or scale cannot measure, or only badly.
pub(super) fn hard_to_measure(product: &LoadProduct, load: &Load) -> Option<Finding> {
    let about = |finding: Finding| {
        finding
            .with("name", Arg::Text(product.name.clone()))
            .with("amount", Arg::Amount(product.amount.shown(product.system)))
            .with("fine", Arg::Amount(product.amount.shown(UnitSystem::Metric)))
            .with("load", Arg::Amount(Amount::new(load.volume, Kind::Volume)))
    };
    let Some(measure) = &product.measure else {
        let finding = Finding::new(
            Weight::Act,
            "load_too_little_to_measure",
            "A load of {load} takes only {amount} of {name}. A jug or farm scale cannot measure that.",
        );
        return Some(about(finding).to_do("Use a syringe or a fine scale for {fine}, or mix a larger load."));
    };
    let short = 1.0 - measure.amount.ratio_to(product.amount)?;
    if short <= MOST_SHORT {
        return None;
    }
    let finding = Finding::new(
        Weight::Doubt,
        "load_measure_too_coarse",
        "{measure} of {name} is {short} less than the {amount} that a load of {load} takes.",
    );
    Some(
        about(finding)
            .with("measure", Arg::Parts(measure.parts.clone()))
            .with("short", Arg::Percent(short * 100.0))
            .to_do("Measure it finer if you can: {fine}."),
    )
}

/// The same name twice is more often a slip than two products.
pub(super) fn listed_twice(products: &[Product]) -> Vec<Finding> {
    let mut told: Vec<String> = Vec::new();
    let mut findings = Vec::new();
    for (place, product) in products.iter().enumerate() {
        let name = product.name().to_lowercase();
        let before = products[..place].iter().any(|other| other.name().to_lowercase() == name);
        if before && !told.contains(&name) {
            findings.push(
                Finding::new(Weight::Doubt, "load_product_twice", "{name} is listed twice.")
                    .with("name", Arg::Text(product.name().to_string()))
                    .to_do("Take one out, or give them different names if both are meant."),
            );
            told.push(name);
        }
    }
    findings
}

fn small_last_load(last: &Load, shared: &Load, job: &Job) -> Finding {
    Finding::new(
        Weight::Note,
        "load_last_small",
        "The last load is only {last} in a {tank} tank. A little mix is hard to measure and to stir.",
    )
    .with("last", Arg::Amount(Amount::new(last.volume, Kind::Volume)))
    .with("tank", Arg::Amount(Amount::new(job.tank, Kind::Volume)))
    .with("each", Arg::Amount(Amount::new(shared.volume, Kind::Volume)))
    .with("area", Arg::Amount(Amount::new(shared.area, Kind::Area)))
    .to_do("Make the last two loads alike: {each} each, for {area} each.")
}

/// What no sum can decide.
pub(super) fn label_decides(products: &[Product]) -> Option<Finding> {
    let finding = match products {
        [] => return None,
        [_] => Finding::new(
            Weight::Note,
            "load_label_decides",
            "The label is the law: read its rate, its water and what to wear before you open the jug.",
        ),
        _ => Finding::new(
            Weight::Note,
            "load_labels_decide_mix",
            "The labels are the law: they say whether these products may go together and which goes in first. \
             This sheet does not.",
        )
        .to_do("Read every label. If they leave it open, ask your dealer or county agent, or try a jar first."),
    };
    Some(finding)
}
