//! `evenswath flow`: a tip's flow at a pressure, or the pressure for a flow, with any carrier.

use serde_json::json;
use sprayer::{RatedFlow, Scale, TipSize};
use units::{Amount, Arg, Density, Flow, Kind, Pressure, UnitSystem, Working};

use super::input::{known, maybe, positive};
use crate::args::FlowArgs;
use crate::error::CliError;
use crate::out::{Answer, number, quantity, working};

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
    let steps = steps(&rated, pressure, factor, flow);
    let mut answer = Answer::of(json!({
        "flow": quantity(flow, Kind::Flow, system),
        "pressure": quantity(pressure, Kind::Pressure, system),
        "water_flow": quantity(water, Kind::Flow, system),
        "density_factor": number(factor),
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
    answer.why(steps);
    Ok(answer)
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
