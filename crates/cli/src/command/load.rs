//! `evenswath load`: how many loads an area takes, and what goes in each.

use planning::{Job, Load, LoadProduct, Loads, Product, ProductAmount, loads};
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
fn amount(amount: ProductAmount, system: UnitSystem) -> Value {
    match amount {
        ProductAmount::Liquid(volume) => quantity(volume, Kind::Volume, system),
        ProductAmount::Dry(mass) => quantity(mass, Kind::Mass, system),
    }
}

fn lines(answer: &mut Answer, loads: &Loads, system: UnitSystem) {
    let area = |area| Amount::new(area, Kind::Area).text(system);
    let volume = |volume| Amount::new(volume, Kind::Volume).text(system);
    let full = match loads.full_loads {
        0 => String::new(),
        1 => "1 full load".to_string(),
        many => format!("{many} full loads"),
    };
    let last = loads.last.as_ref().map(|load| format!("a last load of {}", volume(load.volume)));
    let parts: Vec<String> =
        [Some(full).filter(|text| !text.is_empty()), last].into_iter().flatten().collect();
    answer.main(format!("{}; a full tank does {}", parts.join(" and "), area(loads.area_per_tank)));
    for (name, load) in [("each full load", &loads.full), ("the last load", &loads.last)] {
        let Some(load) = load else { continue };
        answer.head(format!("{name}: {} of mix for {}", volume(load.volume), area(load.area)));
        for product in &load.products {
            answer.plain(format!("  {}: {}", product.name, measured(product)));
        }
    }
    answer.plain("");
    answer.findings(&loads.findings, system);
    answer.why(loads.working.clone());
}

/// "9 gal 3 pt (exactly 9.38 gal)".
fn measured(product: &LoadProduct) -> String {
    let exact = product.amount.shown(product.system).text(product.system);
    match &product.measure {
        Some(measure) => format!("{} (exactly {exact})", measure.text),
        None => format!("{exact}, too little to measure"),
    }
}
