//! `evenswath flow`: a tip's flow at a pressure, or the pressure for a flow, with any carrier.

use serde_json::json;
use sprayer::{RatedFlow, Scale, TipSize};
use units::{Amount, Arg, Density, Finding, Flow, Kind, Pressure, UnitSystem, Weight, Working};

use super::input::{known, maybe, positive};
use crate::args::FlowArgs;
use crate::error::CliError;
use crate::out::{Answer, findings, number, quantity, working};

/// Works it out.
pub fn run(args: &FlowArgs, system: UnitSystem) -> Result<Answer, CliError> {
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
            return Err(CliError::usage("no_pressure", "no pressure is given", "give --pressure or --flow"));
        }
    };
    let flow = water / factor;
    if pressure > HIGHEST {
        return Err(beyond(args, pressure, system));
    }
    let doubtful: Vec<Finding> = doubtful(pressure).into_iter().collect();
    let steps = steps(&rated, pressure, factor, flow);
    let mut answer = Answer::of(json!({
        "flow": quantity(flow, Kind::Flow, system),
        "pressure": quantity(pressure, Kind::Pressure, system),
        "water_flow": quantity(water, Kind::Flow, system),
        "density_factor": number(factor),
        "findings": findings(&doubtful, system),
        "working": working(&steps, system),
    }));
    let text = |amount: Amount| amount.text(system);
    answer.main(format!(
        "{} at {}",
        text(Amount::new(flow, Kind::Flow)),
        text(Amount::new(pressure, Kind::Pressure))
    ));
    if density.is_some() {
        answer.plain(format!(
            "of this carrier; water would be {} (factor {})",
            text(Amount::new(water, Kind::Flow)),
            units::sensible(factor)
        ));
        let differs = (factor - 1.0).abs();
        if differs > sprayer::OWN_TEST_ABOVE {
            answer.plain(
                "The flow differs from water's by more than 5 %: a calibration with water must be corrected for it (ASTM E549-87, 4.2).",
            );
        }
    }
    answer.findings(&doubtful, system);
    answer.why(steps);
    Ok(answer)
}

/// No sprayer's pump reaches more. Our own limit.
const HIGHEST: Pressure = Pressure::psi(1000.0);
/// Tips of booms hardly spray below or above these. Our assumption.
const SELDOM: (Pressure, Pressure) = (Pressure::psi(5.0), Pressure::psi(150.0));

/// A pressure that no tip is sprayed at, with the option that asks for it.
fn beyond(args: &FlowArgs, pressure: Pressure, system: UnitSystem) -> CliError {
    let (name, text) = match (&args.pressure, &args.flow) {
        (Some(text), _) => ("--pressure", text.as_str()),
        (None, flow) => ("--flow", flow.as_deref().unwrap_or_default()),
    };
    let shown = |pressure| Amount::new(pressure, Kind::Pressure).text(system);
    let message = if name == "--flow" {
        format!(
            "{name}: \"{}\" takes {} through this tip; at most {} can be",
            text.trim(),
            shown(pressure),
            shown(HIGHEST)
        )
    } else {
        format!("{name}: \"{}\" is more than any sprayer has; at most {} can be", text.trim(), shown(HIGHEST))
    };
    CliError::usage(
        "pressure_beyond",
        message,
        "look at the number and its unit; 0.30 gal/min and 40 psi are usual for a tip",
    )
}

/// A pressure that is seldom meant.
fn doubtful(pressure: Pressure) -> Option<Finding> {
    let english = if pressure < SELDOM.0 {
        "At {pressure} hardly any tip makes a whole fan. Are the numbers and their units right?"
    } else if pressure > SELDOM.1 {
        "Hardly any boom sprays at {pressure}. Are the numbers and their units right?"
    } else {
        return None;
    };
    let finding = Finding::new(Weight::Doubt, "pressure_doubtful", english);
    Some(finding.with("pressure", Arg::Amount(Amount::new(pressure, Kind::Pressure))))
}

/// The rated flow by either way of naming a tip; a size is taken on the scale of the units asked for.
pub fn rated_of(args: &FlowArgs, system: UnitSystem) -> Result<RatedFlow, CliError> {
    match (&args.rated, &args.size) {
        (Some(text), _) => rated_from("--rated", text),
        (None, Some(name)) => size_from("--size", name, system),
        (None, None) => Err(CliError::usage("no_tip", "no tip is given", "give --rated or --size")),
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
