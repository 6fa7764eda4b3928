//! A season's own records for a diagnosis: counts in a file, or visits' files whose later rounds tell what was so.

use std::path::{Path, PathBuf};

use calibration::diagnosis::{Counts, Priors, Records};
use serde_json::{Map, Value};
use words::Words;

use super::catch_batch::{check_fields, wrong};
use crate::error::CliError;

/// The most bytes read of a file, as of a visit's.
const MOST_BYTES: u64 = 1_000_001;

/// The tables of a file of counts with their fields.
const TABLES: [(&str, &[&str]); 4] = [
    ("tips", &["sound", "worn", "partly_plugged", "plugged", "wrong_tip"]),
    ("cups", &["right", "misread"]),
    ("sections", &["free", "restricted", "shut"]),
    ("swaps", &["tip", "place"]),
];

/// What is believed beforehand, with these records added.
pub fn learned(files: &[PathBuf], words: &Words) -> Result<Priors, CliError> {
    let mut priors = Priors::default();
    for path in files {
        priors.learn(&records_of(path, words)?);
    }
    Ok(priors)
}

fn records_of(path: &Path, words: &Words) -> Result<Records, CliError> {
    let bytes = super::input::bytes(path, MOST_BYTES)?;
    let counts = std::str::from_utf8(&bytes)
        .ok()
        .and_then(|text| toml::from_str::<Map<String, Value>>(text).ok())
        .filter(|tables| tables.keys().all(|name| TABLES.iter().any(|(table, _)| table == name)));
    if let Some(tables) = counts {
        return counted(&tables).map_err(|error| error.at(super::input::place(path)));
    }
    let visit = super::visit_check::read_bytes(path, &bytes)?;
    let outcome = super::visit_check::work_out(path, &visit, words)?;
    let diagnosed = visit::findings::diagnosis(&visit, &outcome)
        .map_err(|error| super::visit_check::cannot_be(path, &error))?;
    Ok(visit::findings::records(&visit, &outcome, diagnosed.as_ref()))
}

fn counted(tables: &Map<String, Value>) -> Result<Records, CliError> {
    Ok(Records {
        tips: Counts::new(counts(tables, 0)?),
        cups: Counts::new(counts(tables, 1)?),
        sections: Counts::new(counts(tables, 2)?),
        swaps: Counts::new(counts(tables, 3)?),
    })
}

/// The counts of one table; what it does not name was not seen.
fn counts<const KINDS: usize>(tables: &Map<String, Value>, which: usize) -> Result<[f64; KINDS], CliError> {
    let (table, names) = TABLES[which];
    let mut counts = [0.0; KINDS];
    let fields = match tables.get(table) {
        None => return Ok(counts),
        Some(Value::Object(fields)) => fields,
        Some(other) => return Err(wrong(table, other, "counts")),
    };
    check_fields(fields, names)?;
    for (count, name) in counts.iter_mut().zip(names) {
        if let Some(value) = fields.get(*name) {
            let told = value.as_u64().and_then(|told| u32::try_from(told).ok());
            *count = f64::from(told.ok_or_else(|| wrong(table, value, "counts"))?);
        }
    }
    Ok(counts)
}
