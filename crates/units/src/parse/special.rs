//! The special forms: 1:05 for a time, a flow at a pressure, a percentage, a span from one value to another.

use super::error::QuantityError;
use super::number;
use super::terms::quantity;
use crate::dimension::Dimension;
use crate::quantity::{Flow, Pressure, Quantity};
use crate::unit::Unit;
use crate::written::{Term, Written};

/// Returns a time written with colons: minutes and seconds, or hours, minutes and seconds.
///
/// *Units*: `1:05` is one minute and five seconds; `1:02:03.5` has hours in front.
///
/// *Errors*: more than 59 behind a colon, more than two colons, no number.
pub fn clock_time(text: &str) -> Result<Written, QuantityError> {
    let given = text.trim();
    let not_a_number = || QuantityError::NotANumber { given: given.to_string() };
    let parts: Vec<&str> = given.split(':').map(str::trim).collect();
    let units = match parts.len() {
        2 => ["min", "s"].as_slice(),
        3 => ["h", "min", "s"].as_slice(),
        _ => return Err(not_a_number()),
    };
    let mut terms = Vec::new();
    for (place, (part, unit)) in parts.iter().zip(units).enumerate() {
        let found = number::leading(part, given)?;
        let last = place + 1 == parts.len();
        if !found.rest.is_empty() || (part.contains('.') && !last) {
            return Err(not_a_number());
        }
        if place > 0 && found.value >= 60.0 {
            return Err(QuantityError::PastSixty { given: given.to_string() });
        }
        let unit = Unit::named(unit).ok_or_else(not_a_number)?;
        terms.push(Term::new(found.text, found.value, unit));
    }
    Ok(Written::new(given, false, Dimension::Time, terms))
}

/// Returns the flow and the pressure of a text such as `"0.30 gal/min @ 40 psi"` (also with "at").
///
/// *Errors*: no `@`, nothing on one side of it, or either side not a flow or pressure.
pub fn flow_at_pressure(text: &str) -> Result<(Flow, Pressure), QuantityError> {
    let (flow, pressure) =
        text.split_once('@').or_else(|| text.split_once(" at ")).ok_or_else(|| match Flow::parse(text) {
            Ok(_) => QuantityError::NoPressure { given: text.trim().to_string() },
            Err(error) => error,
        })?;
    let given = || text.trim().to_string();
    if flow.trim().is_empty() {
        return Err(QuantityError::NoFlow { given: given() });
    }
    if pressure.trim().is_empty() {
        return Err(QuantityError::NoPressure { given: given() });
    }
    Ok((Flow::parse(flow)?, Pressure::parse(pressure)?))
}

/// Returns the share of a percentage such as `"10 %"` as a fraction of one (0.1).
///
/// *Errors*: no % sign (a bare 10 and a bare 0.1 could mean the same), a negative or too large number.
pub fn percent(text: &str) -> Result<f64, QuantityError> {
    quantity(text, Dimension::Ratio).map(|written| written.si())
}

/// Returns the two ends of a span such as `"4 mph..7 mph"` or `"4..7 mph"`.
///
/// *Errors*: not two values, or the first is not below the second.
pub fn span<Q: Quantity>(text: &str) -> Result<(Q, Q), QuantityError> {
    let not_a_span = || QuantityError::NotASpan { given: text.trim().to_string() };
    let (low, high) = text.split_once("..").ok_or_else(not_a_span)?;
    let to = Q::parse(high)?;
    let from = match Q::parse(low) {
        Err(QuantityError::MissingUnit { .. }) => {
            let unit =
                high.trim_start().trim_start_matches(|sign: char| sign.is_ascii_digit() || sign == '.');
            Q::parse(&format!("{low} {unit}"))?
        }
        other => other?,
    };
    if from < to { Ok((from, to)) } else { Err(not_a_span()) }
}
