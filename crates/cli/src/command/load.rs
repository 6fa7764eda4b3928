//! `evenswath load`: how many loads an area takes, and what goes in each.

use planning::{Job, Load, LoadProduct, Loads, Measure, Product, ProductAmount, loads};
use serde_json::{Value, json};
use units::{Amount, Arg, Args, Kind, UnitSystem};
use words::Words;

use super::input::{known, positive};
use crate::args::LoadArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, quantity, working};

/// Works it out.
pub fn run(args: &LoadArgs, words: &Words) -> Result<Answer, CliError> {
    let mut products = Vec::new();
    for text in &args.product {
        products.push(known("--product", Product::parse(text))?);
    }
    let job = Job {
        area: positive("--area", &args.area)?,
        carrier: positive("--rate", &args.rate)?,
        tank: positive("--tank", &args.tank)?,
        jugs: words.reader().units,
    };
    let loads = known("", loads(&job, &products))?;
    let mut answer = Answer::of(object(&loads, words));
    lines(&mut answer, &loads, words);
    Ok(answer)
}

/// The JSON object of the loads, for the visit as well.
pub fn object(loads: &Loads, words: &Words) -> Value {
    let system = words.reader().units;
    json!({
        "loads": loads.iter().map(|load| load_object(load, words)).collect::<Vec<_>>(),
        "full_loads": loads.full_loads,
        "area_per_tank": quantity(loads.area_per_tank, Kind::Area, system),
        "totals": loads.totals.iter().map(|product| product_object(product, words)).collect::<Vec<_>>(),
        "findings": findings(&loads.findings, words),
        "working": working(&loads.working, system),
    })
}

fn load_object(load: &Load, words: &Words) -> Value {
    let system = words.reader().units;
    json!({
        "volume": quantity(load.volume, Kind::Volume, system),
        "area": quantity(load.area, Kind::Area, system),
        "products": load.products.iter().map(|product| product_object(product, words)).collect::<Vec<_>>(),
    })
}

fn product_object(product: &LoadProduct, words: &Words) -> Value {
    let system = words.reader().units;
    let mut object = json!({
        "name": product.name,
        "amount": amount(product.amount, system),
        "measure": product.measure.as_ref().map(|measure| amount(measure.amount, system)),
    });
    if let Some(measure) = &product.measure {
        object["measure_text"] = Value::from(parts(measure, words));
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

fn lines(answer: &mut Answer, loads: &Loads, words: &Words) {
    let last = loads.last.as_ref().map(|load| words.amount(&Amount::new(load.volume, Kind::Volume)));
    let area = words.amount(&Amount::new(loads.area_per_tank, Kind::Area));
    let told = [("loads", in_words(loads, last, words).into()), ("area", area.into())];
    answer.main(words.say("line-loads", &told));
    let last = if loads.full_loads == 0 { "line-the_load" } else { "line-last_load" };
    let full = if loads.full_loads == 1 { "line-the_full_load" } else { "line-each_full_load" };
    for (key, load) in [(full, &loads.full), (last, &loads.last)] {
        let Some(load) = load else { continue };
        let told = Args::new()
            .with("volume", Arg::Amount(Amount::new(load.volume, Kind::Volume)))
            .with("area", Arg::Amount(Amount::new(load.area, Kind::Area)));
        answer.head(words.say_with(key, &told));
        for product in &load.products {
            let sum = words.amount(&product.amount.shown(product.system));
            let text = match &product.measure {
                Some(measure) => measured(measure, &sum, words),
                None => words.say("line-too_little", &[("amount", sum.into())]),
            };
            answer.plain(format!("  {}: {text}", product.name));
        }
    }
    answer.plain("");
    answer.findings(&loads.findings, words);
    answer.why(loads.working.clone());
}

/// "2 full loads and a last one of 187 gal", with what is said of the last one given.
pub fn in_words(loads: &Loads, last: Option<String>, words: &Words) -> String {
    let full = loads.full_loads;
    match (full, last) {
        (0, None) => words.label("line-no_load"),
        (0, Some(last)) => words.say("line-one_load", &[("last", last.into())]),
        (full, None) => words.say("line-full_loads", &[("full", full.into())]),
        (full, Some(last)) => {
            words.say("line-full_loads_and_last", &[("full", full.into()), ("last", last.into())])
        }
    }
}

/// "9 gal 3 pt": how much to measure out.
pub fn parts(measure: &Measure, words: &Words) -> String {
    words.arg(&Arg::Parts(measure.parts.clone()))
}

/// "9 gal 3 pt (9.38 gal by the sum)"; the sum is left out where it says the same.
pub fn measured(measure: &Measure, sum: &str, words: &Words) -> String {
    let measure = parts(measure, words);
    if measure == sum {
        return measure;
    }
    words.say("line-measured", &[("measure", measure.into()), ("sum", sum.into())])
}
