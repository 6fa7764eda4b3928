//! `evenswath load`: how many loads an area takes, and what goes in each.

use planning::{Job, Load, LoadProduct, Loads, Measure, Product, ProductAmount, loads};
use serde_json::{Value, json};
use units::{Amount, Kind, UnitSystem};

use super::input::{known, positive};
use crate::args::LoadArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, quantity, working};

/// Works it out.
pub fn run(args: &LoadArgs, system: UnitSystem) -> Result<Answer, CliError> {
    let mut products = Vec::new();
    for text in &args.product {
        products.push(known("--product", Product::parse(text))?);
    }
    let job = Job {
        area: positive("--area", &args.area)?,
        carrier: positive("--rate", &args.rate)?,
        tank: positive("--tank", &args.tank)?,
        jugs: system,
    };
    let loads = known("", loads(&job, &products))?;
    let mut answer = Answer::of(object(&loads, system));
    lines(&mut answer, &loads, system);
    Ok(answer)
}

/// The JSON object of the loads, for the visit as well.
pub fn object(loads: &Loads, system: UnitSystem) -> Value {
    json!({
        "loads": loads.iter().map(|load| load_object(load, system)).collect::<Vec<_>>(),
        "full_loads": loads.full_loads,
        "area_per_tank": quantity(loads.area_per_tank, Kind::Area, system),
        "totals": loads.totals.iter().map(|product| product_object(product, system)).collect::<Vec<_>>(),
        "findings": findings(&loads.findings, system),
        "working": working(&loads.working, system),
    })
}

fn load_object(load: &Load, system: UnitSystem) -> Value {
    json!({
        "volume": quantity(load.volume, Kind::Volume, system),
        "area": quantity(load.area, Kind::Area, system),
        "products": load.products.iter().map(|product| product_object(product, system)).collect::<Vec<_>>(),
    })
}

fn product_object(product: &LoadProduct, system: UnitSystem) -> Value {
    let mut object = json!({
        "name": product.name,
        "amount": amount(product.amount, system),
        "measure": product.measure.as_ref().map(|measure| amount(measure.amount, system)),
    });
    if let Some(measure) = &product.measure {
        object["measure_text"] = Value::from(measure.text.as_str());
    }
    object
}

/// An amount of product in the large unit of the answer's system, as the contract has volumes and weights.
pub fn amount(amount: ProductAmount, system: UnitSystem) -> Value {
    match amount {
        ProductAmount::Liquid(volume) => quantity(volume, Kind::Volume, system),
        ProductAmount::Dry(mass) => quantity(mass, Kind::Mass, system),
    }
}

fn lines(answer: &mut Answer, loads: &Loads, system: UnitSystem) {
    let area = |area| Amount::new(area, Kind::Area).text(system);
    let volume = |volume| Amount::new(volume, Kind::Volume).text(system);
    let last = loads.last.as_ref().map(|load| volume(load.volume));
    answer.main(format!("{}; a full tank does {}", in_words(loads, last), area(loads.area_per_tank)));
    let (full, last) = match loads.full_loads {
        0 => ("each full load", "the load"),
        1 => ("the full load", "the last load"),
        _ => ("each full load", "the last load"),
    };
    for (name, load) in [(full, &loads.full), (last, &loads.last)] {
        let Some(load) = load else { continue };
        answer.head(format!("{name}: {} of mix for {}", volume(load.volume), area(load.area)));
        for product in &load.products {
            let sum = product.amount.shown(product.system).text(product.system);
            let text = match &product.measure {
                Some(measure) => measured(measure, &sum),
                None => format!("{sum}, too little to measure"),
            };
            answer.plain(format!("  {}: {text}", product.name));
        }
    }
    answer.plain("");
    answer.findings(&loads.findings, system);
    answer.why(loads.working.clone());
}

/// "2 full loads and a last one of 187 gal", with what is said of the last one given.
pub fn in_words(loads: &Loads, last: Option<String>) -> String {
    let full = match loads.full_loads {
        0 => None,
        1 => Some("1 full load".to_string()),
        many => Some(format!("{many} full loads")),
    };
    match (full, last) {
        (Some(full), Some(last)) => format!("{full} and a last one of {last}"),
        (Some(full), None) => full,
        (None, Some(last)) => format!("1 load of {last}"),
        (None, None) => "no load".to_string(),
    }
}

/// "9 gal 3 pt (9.38 gal by the sum)"; the sum is left out where it says the same.
pub fn measured(measure: &Measure, sum: &str) -> String {
    if measure.text == sum { sum.to_string() } else { format!("{} ({sum} by the sum)", measure.text) }
}
