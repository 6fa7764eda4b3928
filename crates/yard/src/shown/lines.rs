//! The answer in a line: what it puts out, what a tank does, what to do.

use report::sheet::Block;
use units::{Amount, Kind};
use visit::findings::{Action, Outcome};
use words::Words;

use crate::state::State;

/// "It puts out 14.7 gal/ac (14.3 to 15.1)"; empty where it cannot be told yet.
#[must_use]
pub fn rate_line(words: &Words, outcome: &Outcome) -> String {
    let Some(rate) = &outcome.rate else { return String::new() };
    let amount = Amount::ranged(&rate.of_mix(), Kind::Rate);
    let range = words.range(&amount).unwrap_or_default();
    let key = if range.is_empty() { "yard-puts_out_plain" } else { "yard-puts_out" };
    words.say(key, &[("rate", words.amount(&amount).into()), ("range", range.into())])
}

/// "A full tank of 200 gal does 13.6 ac; in it 3 gal 3 pt of Product A".
#[must_use]
pub fn tank_line(words: &Words, outcome: &Outcome) -> String {
    let Some(tank) = &outcome.tank else { return String::new() };
    let area = Amount::ranged(&tank.full.area, Kind::Area);
    let holds = words.amount(&Amount::new(tank.full.volume, Kind::Volume));
    let mut line =
        words.say("yard-tank_does", &[("tank", holds.into()), ("area", words.amount(&area).into())]);
    let products: Vec<String> = tank
        .full
        .products
        .iter()
        .map(|product| {
            let amount = match &product.measure {
                Some(measure) => words.arg(&units::Arg::Parts(measure.parts.clone())),
                None => words.amount(&product.amount.value().shown(product.system)),
            };
            words.say("yard-in_it", &[("amount", amount.into()), ("name", product.name.clone().into())])
        })
        .collect();
    if !products.is_empty() {
        line = format!(
            "{line} {}",
            words.say("yard-in_the_tank", &[("products", words.list(&products).into())])
        );
    }
    line
}

/// What to do, in a sentence or two.
#[must_use]
pub fn action_text(words: &Words, action: &Action) -> String {
    words.finding_and_action(&action.finding)
}

/// What the sprayer of the open visit is called.
#[must_use]
pub fn visit_name(state: &State) -> String {
    let name = state.visit.as_ref().map(|visit| visit.text("visit.sprayer")).unwrap_or_default();
    if name.is_empty() { state.words.label("yard-no_name") } else { name.to_string() }
}

/// Its farm and the day.
#[must_use]
pub fn visit_under(state: &State) -> String {
    let Some(visit) = &state.visit else { return String::new() };
    let (farm, date) = (visit.text("visit.farm"), visit.text("visit.date"));
    let date = if date.is_empty() { String::new() } else { state.words.date(date) };
    [farm.to_string(), date].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// The answer first: what the label forbids, what it puts out, what a tank does.
#[must_use]
pub fn answer(state: &State) -> Vec<Block> {
    let Some(visit) = &state.visit else { return Vec::new() };
    let stops = report::make::stops(&state.words, &visit.outcome);
    let answers = report::make::answers(&state.words, &visit.visit, &visit.outcome);
    stops.into_iter().chain([answers]).collect()
}
