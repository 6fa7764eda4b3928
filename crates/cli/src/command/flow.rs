//! `evenswath flow`: a tip's flow at a pressure, or the pressure for a flow, with any carrier.

use serde_json::json;
use sprayer::{RatedFlow, Scale, TipSize};
use units::{Amount, Arg, Args, Density, Finding, Flow, Kind, Pressure, UnitSystem, Weight, Working};
use words::Words;

use super::input::{known, maybe, positive};
use crate::args::FlowArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, number, quantity, working};

/// Works it out.
pub fn run(args: &FlowArgs, words: &Words) -> Result<Answer, CliError> {
    let system = words.reader().units;
    let rated = rated_of(args, system)?;
    let density: Option<Density> = maybe("--density", args.density.as_ref())?;
    let factor = match density {
        Some(density) => known("--density", sprayer::density_factor(density))?,
        None => 1.0,
    };
    let (water, pressure) = match (&args.pressure, &args.flow) {
        (Some(pressure), _) => {
            let pressure: Pressure = positive("--pressure", pressure)?;
            (known("--pressure", rated.flow_at(pressure))?, pressure)
        }
        (None, Some(flow)) => {
            let flow: Flow = positive("--flow", flow)?;
            let water = flow * factor;
            (water, known("--flow", rated.pressure_for(water))?)
        }
        (None, None) => {
            return Err(CliError::usage("no_pressure", Args::new()));
        }
    };
    let flow = water / factor;
    if pressure > HIGHEST {
        return Err(beyond(args, pressure));
    }
    let doubtful: Vec<Finding> = doubtful(pressure).into_iter().collect();
    let steps = steps(&rated, pressure, factor, flow);
    let mut answer = Answer::of(json!({
        "flow": quantity(flow, Kind::Flow, system),
        "pressure": quantity(pressure, Kind::Pressure, system),
        "water_flow": quantity(water, Kind::Flow, system),
        "density_factor": number(factor),
        "findings": findings(&doubtful, words),
        "working": working(&steps, system),
    }));
    let told = Args::new()
        .with("flow", Arg::Amount(Amount::new(flow, Kind::Flow)))
        .with("pressure", Arg::Amount(Amount::new(pressure, Kind::Pressure)))
        .with("water", Arg::Amount(Amount::new(water, Kind::Flow)))
        .with("factor", Arg::Number(factor));
    answer.main(words.say_with("line-flow", &told));
    if density.is_some() {
        answer.plain(words.say_with("line-of_this_carrier", &told));
        if (factor - 1.0).abs() > sprayer::OWN_TEST_ABOVE {
            answer.plain(words.label("line-differs_from_water"));
        }
    }
    answer.findings(&doubtful, words);
    answer.why(steps);
    Ok(answer)
}

/// No sprayer's pump reaches more. Our own limit.
const HIGHEST: Pressure = Pressure::psi(1000.0);
/// Tips of booms hardly spray below or above these. Our assumption.
const SELDOM: (Pressure, Pressure) = (Pressure::psi(5.0), Pressure::psi(150.0));

/// A pressure that no tip is sprayed at, with the option that asks for it.
fn beyond(args: &FlowArgs, pressure: Pressure) -> CliError {
    let (name, text, case) = match (&args.pressure, &args.flow) {
        (Some(text), _) => ("--pressure", text.as_str(), "pressure"),
        (None, flow) => ("--flow", flow.as_deref().unwrap_or_default(), "flow"),
    };
    let shown = |pressure| Arg::Amount(Amount::new(pressure, Kind::Pressure));
    let mut told = Args::new().with("given", Arg::Text(text.trim().to_string())).with("most", shown(HIGHEST));
    if case == "flow" {
        told = told.with("takes", shown(pressure));
    }
    CliError::usage("pressure_beyond", told).case(case).at(name)
}

/// A pressure that is seldom meant.
fn doubtful(pressure: Pressure) -> Option<Finding> {
    let (case, english) = if pressure < SELDOM.0 {
        ("low", "At {pressure} hardly any tip makes a whole fan. Are the numbers and their units right?")
    } else if pressure > SELDOM.1 {
        ("high", "Hardly any boom sprays at {pressure}. Are the numbers and their units right?")
    } else {
        return None;
    };
    let finding = Finding::new(Weight::Doubt, "pressure_doubtful", english).case(case);
    Some(finding.with("pressure", Arg::Amount(Amount::new(pressure, Kind::Pressure))))
}

/// The rated flow by either way of naming a tip; a size is taken on the scale of the units asked for.
pub fn rated_of(args: &FlowArgs, system: UnitSystem) -> Result<RatedFlow, CliError> {
    match (&args.rated, &args.size) {
        (Some(text), _) => rated_from("--rated", text),
        (None, Some(name)) => size_from("--size", name, system),
        (None, None) => Err(CliError::usage("no_tip", Args::new())),
    }
}

/// A rated flow as written.
pub fn rated_from(option: &str, text: &str) -> Result<RatedFlow, CliError> {
    let (flow, pressure) = known(option, units::flow_at_pressure(text))?;
    known(option, RatedFlow::new(flow, pressure))
}

fn size_from(option: &str, name: &str, system: UnitSystem) -> Result<RatedFlow, CliError> {
    let scale = match system {
        UnitSystem::Us => Scale::UsAt40Psi,
        UnitSystem::Metric => Scale::MetricAt3Bar,
    };
    let size = known(option, TipSize::named(name))?;
    known(option, size.rated(scale))
}

fn steps(rated: &RatedFlow, pressure: Pressure, factor: f64, flow: Flow) -> Working {
    Working::new(
        "flow_at_pressure",
        "flow = rated flow × √(pressure ÷ rated pressure) ÷ density factor",
        "orifice equation; density factor √(density ÷ water's), Univ. of Nebraska-Lincoln CropWatch, 2016",
    )
    .figure("rated flow", Arg::Amount(Amount::new(rated.flow(), Kind::Flow)))
    .figure("rated pressure", Arg::Amount(Amount::new(rated.pressure(), Kind::Pressure)))
    .figure("pressure", Arg::Amount(Amount::new(pressure, Kind::Pressure)))
    .figure("density factor", Arg::Number(factor))
    .result(Arg::Amount(Amount::new(flow, Kind::Flow)))
}
