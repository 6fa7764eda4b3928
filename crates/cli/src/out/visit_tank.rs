//! What a full tank does, what goes in it, and the loads of the job ahead.

use planning::{LoadProduct, Loads};
use units::{Amount, Arg, Args, Kind, UnitSystem};
use visit::findings::Outcome;
use words::Words;

use super::Answer;
use crate::command::load;

/// Writes it.
pub fn full_tank(answer: &mut Answer, outcome: &Outcome, words: &Words) {
    let Some(tank) = &outcome.tank else { return };
    let area = Amount::ranged(&tank.full.area, Kind::Area);
    let shown = match (outcome.rate.as_ref().and_then(|rate| rate.treated), words.reader().units) {
        (None, _) => words.amount(&area),
        // Of a field sprayed in bands a tank does the bands alone.
        (Some(_), system) => {
            let key = match system {
                UnitSystem::Us => "page-treated_acres",
                UnitSystem::Metric => "page-treated_hectares",
            };
            words.say(key, &[("number", words.amount_number(&area).into())])
        }
    };
    let told = [
        ("volume", words.amount(&Amount::new(tank.full.volume, Kind::Volume)).into()),
        ("area", shown.into()),
        ("range", words.range(&area).unwrap_or_default().into()),
    ];
    let key = if words.range(&area).is_some() { "page-full_tank_range" } else { "page-full_tank" };
    answer.main(words.say(key, &told));
    for finding in &tank.own_findings {
        answer.plain(format!("  {}", words.finding_and_action(finding)));
    }
    for product in &tank.full.products {
        let exact = words.amount(&product.amount.value().shown(product.system));
        let (key, amount) = match &product.measure {
            Some(measure) => ("page-in_it", load::measured(measure, &exact, words)),
            None => ("page-in_it_too_little", exact),
        };
        let told = [("amount", amount.into()), ("product", product.name.clone().into())];
        answer.plain(format!("  {}", words.say(key, &told)));
    }
    if let Some(loads) = &tank.loads {
        let ahead = load::in_words(loads, last_load(loads, words), words);
        answer.plain(format!("  {}", words.say("page-job_ahead", &[("loads", ahead.into())])));
    }
}

/// The last load with what goes in it.
fn last_load(loads: &Loads, words: &Words) -> Option<String> {
    let load = loads.last.as_ref()?;
    let volume = Amount::new(load.volume, Kind::Volume);
    if load.products.is_empty() {
        return Some(words.amount(&volume));
    }
    let products: Vec<String> = load.products.iter().map(|product| in_it(product, words)).collect();
    let told =
        Args::new().with("volume", Arg::Amount(volume)).with("products", Arg::Text(products.join(", ")));
    Some(words.say_with("page-last_with", &told))
}

fn in_it(product: &LoadProduct, words: &Words) -> String {
    let name = ("product", product.name.clone().into());
    match &product.measure {
        Some(measure) => words.say("page-product", &[("measure", load::parts(measure, words).into()), name]),
        None => words.say("page-product_too_little", &[name]),
    }
}
