//! Reading what feeds the boom.

use sprayer::RatedFlow;
use sprayer::plumbing::Pipe;
use units::{AsWritten, Flow, Pressure, Quantity};

use super::read::{bore, metres_or_none, minor_loss, needed, optional, pipe, roughness};
use super::{Pump, Supply};
use crate::file::{Mistake, Part, Wanted};

const SUPPLY: Wanted = (
    "wanted_supply",
    "what holds the flow, as gauge_pressure = \"40 psi\", total_flow = \"6 gal/min\", or a part [supply.pump]",
);
const HOSE_BORE: Wanted = ("wanted_hose_bore", "the hose's inner diameter, as hose_bore = \"1 in\"");
const AT_NO_FLOW: Wanted =
    ("wanted_at_no_flow", "the pump's pressure with nothing flowing, as pressure_at_no_flow = \"100 psi\"");
const CURVE_POINT: Wanted =
    ("wanted_curve_point", "another point of the pump's curve, as curve_point = \"15 gal/min @ 60 psi\"");

/// Reads `[supply]`: what feeds, and the hose to the manifold.
pub(super) fn supply(part: &Part<'_>) -> Option<(Supply, Option<Pipe>)> {
    let ways: Vec<&str> =
        ["gauge_pressure", "total_flow", "pump"].into_iter().filter(|name| part.has(name)).collect();
    let supply = match ways.as_slice() {
        [] => {
            part.missing("gauge_pressure", SUPPLY);
            None
        }
        [one] if *one == "gauge_pressure" => pressure(part, "gauge_pressure").map(Supply::Pressure),
        [one] if *one == "total_flow" => {
            part.positive::<Flow>("total_flow").map(|flow| Supply::TotalFlow(flow.value()))
        }
        [_] => part.part("pump").and_then(|pump| self::pump(&pump)).map(Supply::Pump),
        [_, second, ..] => {
            let both = Mistake::value("supply_twice", "the boom is fed in several ways: {ways}");
            part.fault(second, both.would_do("give one of them").names("ways", &ways));
            None
        }
    };
    let hose = ["hose_length", "hose_bore", "minor_loss"].iter().any(|name| part.has(name));
    let to_manifold = if hose {
        let bore = needed(part, "hose_bore", HOSE_BORE, bore);
        let length = optional(part, "hose_length", 0.0, metres_or_none);
        let loss = optional(part, "minor_loss", 0.0, minor_loss);
        pipe(length?, bore?, loss?, roughness(part)?)
    } else {
        None
    };
    Some((supply?, to_manifold))
}

fn pump(part: &Part<'_>) -> Option<Pump> {
    let at_no_flow = needed(part, "pressure_at_no_flow", AT_NO_FLOW, pressure);
    let point = needed(part, "curve_point", CURVE_POINT, rated);
    let opens_at = optional(part, "bypass_opens_at", Pressure::ZERO, pressure_or_none);
    let bypass = optional(part, "bypass", None, |part, name| rated(part, name).map(Some));
    let agitation = optional(part, "agitation", None, |part, name| rated(part, name).map(Some));
    let (at_no_flow, point) = (at_no_flow?, point?);
    if point.pressure() >= at_no_flow {
        let rises = Mistake::value("pump_rises", "the pump's pressure does not fall as it gives more")
            .would_do("the pressure of curve_point must be below pressure_at_no_flow");
        part.fault("curve_point", rises);
        return None;
    }
    let opens_at = opens_at?;
    let bypass = bypass?.map(|bypass| (bypass, opens_at));
    Some(Pump { at_no_flow, point: (point.flow(), point.pressure()), bypass, agitation: agitation? })
}

/// A flow at a pressure, both above nothing.
pub(super) fn rated(part: &Part<'_>, name: &str) -> Option<RatedFlow> {
    let value = part.value(name)?;
    let text = part.text_of(name, value)?;
    let (flow, pressure) = part.known(name, value, units::flow_at_pressure(&text))?;
    part.known(name, value, RatedFlow::new(flow, pressure))
}

/// No sprayer's pump reaches more. Our own limit.
const HIGHEST: Pressure = Pressure::psi(1000.0);

fn pressure(part: &Part<'_>, name: &str) -> Option<Pressure> {
    within(part, name, part.positive(name)?)
}

/// A pressure that may be nothing.
pub(super) fn pressure_or_none(part: &Part<'_>, name: &str) -> Option<Pressure> {
    within(part, name, part.quantity(name)?)
}

fn within(part: &Part<'_>, name: &str, written: AsWritten<Pressure>) -> Option<Pressure> {
    if written.value().si() <= HIGHEST.si() {
        return Some(written.value());
    }
    let mistake = Mistake::value("pressure", "no sprayer reaches \"{given}\"")
        .would_do("at most 1000 psi (about 69 bar) is taken");
    part.fault(name, mistake.text("given", written.text()));
    None
}
