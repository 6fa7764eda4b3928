//! The facts of a visit that can be worked with. A fact that cannot be read, or a part that lacks one, stands aside and is
//! named; it never takes the rest of the visit with it.

use notebook::{FoldedVisit, Value};
use units::Coded;
use visit::Visit;
use visit::file::FileError;

use crate::opened::{CLOSED, PRODUCTS, ROUNDS, RUNS};

/// A fact that cannot be, or one that a part still needs.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// The field, as `drive.course`.
    pub field: String,
    /// Whether something stands there.
    pub is: FaultIs,
    /// What is wrong and what would do.
    pub error: FileError,
}

/// Whether something stands in the field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FaultIs {
    /// What stands there cannot be.
    Wrong,
    /// Nothing stands there, and the part means nothing without it.
    Missing,
}

/// How often we read again without what was in the way. Our own choice: each time at least one fact stands aside, and no
/// visit has as many mistakes.
const TRIES: usize = 60;

/// The visit that can be read out of the facts, and what stands in the way of the rest.
#[must_use]
pub fn usable(folded: &FoldedVisit) -> (Visit, Vec<Fault>) {
    let mut left = folded.clone();
    without_empty_rounds(&mut left);
    without_half_closings(&mut left);
    let mut faults: Vec<Fault> = Vec::new();
    for _ in 0..TRIES {
        let errors = match left.visit() {
            Ok(visit) => return (visit, faults),
            Err(errors) => errors,
        };
        for error in errors.list() {
            let field = error.field.clone().unwrap_or_default();
            let is = if error.code() == "file_missing_field" { FaultIs::Missing } else { FaultIs::Wrong };
            stand_aside(&mut left, &field, is);
            if !faults.iter().any(|known| known.field == field) {
                faults.push(Fault { field, is, error: error.clone() });
            }
        }
    }
    (Visit::default(), faults)
}

/// A round that was begun and in which no cup was caught says nothing yet.
fn without_empty_rounds(left: &mut FoldedVisit) {
    let readings = &left.readings;
    if let Some(rounds) = left.rows.get_mut(ROUNDS) {
        rounds.retain(|(row, _)| readings.get(row).is_some_and(|tips| !tips.is_empty()));
    }
    if left.rows.get(ROUNDS).is_none_or(Vec::is_empty) {
        left.facts.retain(|field, _| !field.starts_with("catch."));
    }
}

/// A section that was closed says nothing before both pressures are there.
fn without_half_closings(left: &mut FoldedVisit) {
    let Some(rows) = left.rows.get_mut(CLOSED) else { return };
    let says = |value: &Value| match value {
        Value::Table(fields) => {
            ["before", "closed"].iter().all(|wanted| fields.iter().any(|(name, _)| name == wanted))
        }
        _ => false,
    };
    rows.retain(|(_, held)| says(&held.value));
}

/// Takes out what is in the way: the fact itself, or where it is missing the part that cannot be without it.
fn stand_aside(left: &mut FoldedVisit, field: &str, is: FaultIs) {
    if is == FaultIs::Wrong && left.facts.remove(field).is_some() {
        return;
    }
    let section = field.split(['.', '[']).next().unwrap_or_default();
    let of_section = |name: &str| name == section || name.starts_with(&format!("{section}."));
    left.facts.retain(|name, _| !of_section(name));
    for list in [ROUNDS, RUNS, PRODUCTS, CLOSED] {
        if of_section(list) {
            left.rows.remove(list);
        }
    }
}
