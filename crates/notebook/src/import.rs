//! A visit file as entries: every field a fact, every round, run and product a row, every cup a reading.

use toml::de::{DeTable, DeValue};
use visit::file::{FileErrors, SECTIONS, Several};

use crate::entry::Entry;
use crate::ids::RowId;
use crate::value::Value;

/// Why a visit file gives no entries.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ImportError {
    /// The file has mistakes; a notebook takes only what a visit file may hold.
    #[error("{0}")]
    File(FileErrors),
}

/// Returns the entries of a visit file, in the order of the file. `row` gives each row a name of its own.
///
/// *Errors*: those of the file, all at once.
pub fn entries_of_file(bytes: &[u8], mut row: impl FnMut() -> RowId) -> Result<Vec<Entry>, ImportError> {
    visit::file::read(bytes).map_err(ImportError::File)?;
    // It was read just now, so both of these hold; an empty list is what is left of a file that does not.
    let text = core::str::from_utf8(bytes).unwrap_or_default();
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let Ok(document) = DeTable::parse(text) else { return Ok(Vec::new()) };
    let mut entries = Vec::new();
    for section in SECTIONS {
        let tables = tables_at(document.get_ref(), section.name);
        for table in tables {
            match section.several {
                Several::Yes => several(section.name, table, text, &mut row, &mut entries),
                Several::No => once(section.name, table, text, &mut row, &mut entries),
            }
        }
    }
    Ok(entries)
}

/// The tables of a section, as `catch.round` within `catch`.
fn tables_at<'a>(document: &'a DeTable<'a>, name: &str) -> Vec<&'a DeTable<'a>> {
    let mut tables = vec![document];
    for part in name.split('.') {
        tables = tables
            .into_iter()
            .filter_map(|table| table.get(part))
            .flat_map(|value| match value.get_ref() {
                DeValue::Table(table) => vec![table],
                DeValue::Array(list) => list.iter().filter_map(|item| item.get_ref().as_table()).collect(),
                _ => Vec::new(),
            })
            .collect();
    }
    tables
}

/// Whether a name within a section is a section of its own.
fn is_section(section: &str, name: &str) -> bool {
    SECTIONS.iter().any(|other| other.name == format!("{section}.{name}"))
}

fn once(
    section: &str,
    table: &DeTable<'_>,
    text: &str,
    row: &mut impl FnMut() -> RowId,
    entries: &mut Vec<Entry>,
) {
    for (name, value) in table {
        let (name, value) = (name.get_ref().as_ref(), value.get_ref());
        if is_section(section, name) {
            continue;
        }
        let field = format!("{section}.{name}");
        match value {
            // Each run is a row, so that one can be struck and another added without writing all of them again.
            DeValue::Array(list) if field == RUNS => {
                entries.extend(list.iter().filter_map(|run| {
                    let value = value_of(run.get_ref(), run.span(), text)?;
                    Some(Entry::Row { list: field.clone(), row: row(), value })
                }));
            }
            _ => entries.extend(
                value_of(value, table_span(table, name), text).map(|value| Entry::Fact { field, value }),
            ),
        }
    }
}

/// The list of timed runs.
pub(crate) const RUNS: &str = "drive.runs";
/// The rounds of catches.
pub(crate) const ROUNDS: &str = "catch.round";

fn several(
    section: &str,
    table: &DeTable<'_>,
    text: &str,
    row: &mut impl FnMut() -> RowId,
    entries: &mut Vec<Entry>,
) {
    let id = row();
    let is_round = section == ROUNDS;
    let fields: Vec<(String, Value)> = table
        .iter()
        .filter(|(name, _)| !is_round || !matches!(name.get_ref().as_ref(), "readings" | "tips"))
        .filter_map(|(name, value)| {
            Some((name.get_ref().to_string(), value_of(value.get_ref(), value.span(), text)?))
        })
        .collect();
    entries.push(Entry::Row { list: section.to_string(), row: id, value: Value::Table(fields) });
    if !is_round {
        return;
    }
    let list = |name: &str| match table.get(name).map(|value| value.get_ref()) {
        Some(DeValue::Array(list)) => {
            list.iter().filter_map(|item| value_of(item.get_ref(), item.span(), text)).collect()
        }
        _ => Vec::new(),
    };
    let tips = list("tips");
    for (place, value) in list("readings").into_iter().enumerate() {
        let counted = u32::try_from(place + 1).unwrap_or(u32::MAX);
        let tip = match tips.get(place) {
            Some(Value::Count(tip)) => u32::try_from(*tip).unwrap_or(counted),
            _ => counted,
        };
        entries.push(Entry::Reading { round: id, tip, value });
    }
}

fn table_span(table: &DeTable<'_>, name: &str) -> core::ops::Range<usize> {
    table.get(name).map_or(0..0, |value| value.span())
}

/// A value by its letters; what a visit file cannot hold is none.
fn value_of(value: &DeValue<'_>, span: core::ops::Range<usize>, text: &str) -> Option<Value> {
    Some(match value {
        DeValue::String(words) => Value::Text(words.to_string()),
        DeValue::Integer(_) => match text.get(span)?.parse() {
            Ok(count) => Value::Count(count),
            // Written otherwise than a plain whole number; the letters are kept.
            Err(_) => Value::Text(value.as_integer()?.as_str().to_string()),
        },
        DeValue::Float(_) => Value::Text(text.get(span)?.to_string()),
        DeValue::Array(list) => {
            let items = list.iter().map(|item| value_of(item.get_ref(), item.span(), text));
            Value::List(items.collect::<Option<_>>()?)
        }
        DeValue::Table(table) => {
            let fields = table.iter().map(|(name, item)| {
                Some((name.get_ref().to_string(), value_of(item.get_ref(), item.span(), text)?))
            });
            Value::Table(fields.collect::<Option<_>>()?)
        }
        DeValue::Boolean(_) | DeValue::Datetime(_) => return None,
    })
}
