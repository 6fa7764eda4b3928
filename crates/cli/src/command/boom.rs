//! `evenswath boom`: the pressure and flow at every tip, from the boom's hoses, valves and bodies.

use std::path::Path;

use serde_json::{Map, Value, json};
use units::{Amount, Arg, Args, Kind, Pressure, Working};
use visit::boom::{BoomFlows, Lost, PlumbingError, SectionFlows, TipState};
use words::Words;

use super::{input, visit_check};
use crate::args::BoomArgs;
use crate::error::CliError;
use crate::out::{Answer, boom_text, quantity, working};

/// The most bytes read of a boom's file; the reader refuses more with a word of its own.
const MOST_BYTES: u64 = 1_000_001;

/// Reads the file and works it out.
pub fn run(args: &BoomArgs, words: &Words) -> Result<Answer, CliError> {
    let bytes = input::bytes(&args.file, MOST_BYTES)?;
    let boom = visit::boom::read(&bytes).map_err(|errors| visit_check::mistakes(&args.file, &errors))?;
    let flows = boom.flows().map_err(|error| refused(&args.file, error))?;
    let steps = steps(&flows);
    let mut answer = Answer::of(object(&flows, &steps, words));
    boom_text::lines(&mut answer, &flows, words);
    answer.why(steps);
    Ok(answer)
}

/// A boom in which nothing can be worked out.
fn refused(file: &Path, error: PlumbingError) -> CliError {
    let whole = match error {
        PlumbingError::NothingFlows => CliError::usage("boom_nothing_flows", Args::new()),
        PlumbingError::Impossible => CliError::usage("boom_impossible", Args::new()),
        PlumbingError::NoRest { .. } => CliError::fault("boom_no_rest", Args::new()),
    };
    whole.at(input::place(file))
}

fn object(flows: &BoomFlows, steps: &Working, words: &Words) -> Value {
    let system = words.reader().units;
    let pressure = |pressure| quantity(pressure, Kind::Pressure, system);
    let flow = |flow| quantity(flow, Kind::Flow, system);
    let mut object = Map::new();
    object.insert("total_flow".into(), flow(flows.total));
    object.insert("gauge_pressure".into(), pressure(flows.gauge));
    object.insert("manifold_pressure".into(), pressure(flows.manifold));
    if let Some(pump) = &flows.pump {
        object.insert(
            "pump".into(),
            json!({
                "flow": flow(pump.flow),
                "bypass": pump.bypass.map(flow),
                "agitation": pump.agitation.map(flow),
            }),
        );
    }
    let mut first = 1;
    let sections: Vec<Value> = flows
        .sections
        .iter()
        .enumerate()
        .map(|(place, section)| {
            let tips = section.tips.iter().enumerate().map(|(tip, found)| {
                json!({
                    "number": first + tip,
                    "flow": flow(found.flow),
                    "pressure": pressure(found.pressure),
                    "state": state_word(found.state),
                })
            });
            let made = json!({
                "number": place + 1,
                "flow": flow(section.flow),
                "entry_pressure": pressure(section.entry),
                "lost": section.lost.map(|lost| lost_object(&lost, first, &pressure)),
                "tips": tips.collect::<Vec<Value>>(),
            });
            first += section.tips.len();
            made
        })
        .collect();
    object.insert("sections".into(), Value::Array(sections));
    object.insert("working".into(), working(steps, system));
    Value::Object(object)
}

fn lost_object(lost: &Lost, first: usize, pressure: &impl Fn(Pressure) -> Value) -> Value {
    json!({
        "tip": first - 1 + lost.tip,
        "feed": pressure(lost.feed),
        "hose": pressure(lost.hose),
        "body": pressure(lost.body),
        "check_valve": pressure(lost.check_valve),
        "height": pressure(lost.height),
    })
}

/// The stable word for whether a tip runs.
const fn state_word(state: TipState) -> &'static str {
    match state {
        TipState::Runs => "runs",
        TipState::Plugged => "plugged",
        TipState::Shut => "shut",
    }
}

/// How the tip with the least pressure comes by it.
fn steps(flows: &BoomFlows) -> Working {
    let amount = |pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
    let whole = Working::new(
        "boom_flows",
        "pressure at a tip = pressure at the manifold − lost in feed, hose, body, check valve and height",
        "Darcy and Weisbach; 64/Re, Dunlop (1991), Swamee and Jain (1976) by Reynolds number; Todini and Pilati (1987)",
    );
    let Some((lost, pressure)) =
        flows.sections.iter().filter_map(least).min_by(|one, other| one.1.total_cmp(&other.1))
    else {
        return whole;
    };
    whole
        .figure("pressure at the manifold", amount(flows.manifold))
        .figure("lost in the feed", amount(lost.feed))
        .figure("lost in the hose", amount(lost.hose))
        .figure("lost in the body", amount(lost.body))
        .figure("lost on the check valve", amount(lost.check_valve))
        .figure("lost to height", amount(lost.height))
        .result(amount(Pressure::pascals(pressure)))
}

/// What is lost on the way to a section's tip with the least pressure, and that pressure in pascals.
fn least(section: &SectionFlows) -> Option<(Lost, f64)> {
    let lost = section.lost?;
    let tip = section.tips.get(lost.tip - 1)?;
    Some((lost, tip.pressure.as_pascals()))
}
