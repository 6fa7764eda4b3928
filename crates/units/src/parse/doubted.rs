//! A quantity whose writer says how far it may be off: "5.0 mph ± 0.1 mph", "0.27 gal/min ± 2 %".

use super::error::QuantityError;
use super::special::percent;
use crate::quantity::Quantity;

/// A quantity with, where it was said, how far it may be off either way (95 %).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubted<Q> {
    /// The value.
    pub value: Q,
    /// The half-width of its 95 % range, where the writer gave one.
    pub either_way: Option<Q>,
}

/// Returns a quantity and the doubt written behind `±` or `+-`, as a quantity or a percentage of the value.
///
/// *Errors*: those of a quantity, for either side; a doubt larger than the value.
pub fn doubted<Q: Quantity>(text: &str) -> Result<Doubted<Q>, QuantityError> {
    let Some((value, doubt)) = text.split_once('±').or_else(|| text.split_once("+-")) else {
        return Ok(Doubted { value: Q::parse(text)?, either_way: None });
    };
    let value = Q::parse(value)?;
    let either_way =
        if doubt.contains('%') { Q::from_si(value.si() * percent(doubt)?) } else { Q::parse(doubt)? };
    if value.is_positive() && either_way > value {
        return Err(QuantityError::DoubtOverValue { given: text.trim().to_string() });
    }
    Ok(Doubted { value, either_way: Some(either_way) })
}
