//! What is said in a field becomes a fact, or the field says why not and keeps the letters.

use notebook::{Entry, RowId, Told, Value};
use units::Coded;
use visit::file::{Field, SECTIONS, Shape};

use crate::effect::Effect;
use crate::opened::{CLOSED, Opened, PRODUCTS, RUNS, TIP_PRESSURES, Typed};
use crate::state::State;
use crate::usable::{FaultIs, usable};
use crate::write::{With, fact, in_place_of, nothing};

/// The description of a field; none where a visit file has no such field.
#[must_use]
pub fn field_of(name: &str) -> Option<&'static Field> {
    let (section, field) = name.rsplit_once('.')?;
    let section = match section.rsplit_once('.') {
        // A row stands between: product.<row>.name, catch.round.<row>.swapped
        Some((list, row)) if RowId::parse(row).is_some() => list,
        _ => section,
    };
    SECTIONS.iter().find(|known| known.name == section)?.fields.iter().find(|known| known.name == field)
}

/// What letters are worth in a field: a list where the field has one, a count, else the letters.
#[must_use]
pub fn value_of(field: &str, text: &str) -> Value {
    let parts = || text.split([',', ';', '\n', '\t']).map(str::trim).filter(|part| !part.is_empty());
    // A phone's number keys have a point and no comma, and counts have no decimals: 4.4.4 is three sections.
    let words = || text.split([',', ';', '\n', '\t', ' ', '.']).filter(|part| !part.is_empty());
    let count = |part: &str| part.parse().map_or_else(|_| Value::text(part), Value::Count);
    match field_of(field).map(|field| field.shape) {
        Some(Shape::Count) => count(text),
        Some(Shape::Counts) => Value::List(words().map(count).collect()),
        Some(Shape::Words(_)) => Value::List(words().map(Value::text).collect()),
        Some(Shape::Quantities(_)) => Value::List(parts().map(Value::text).collect()),
        Some(Shape::Readings) => Value::List(parts().map(Value::text).collect()),
        _ => Value::text(text),
    }
}

/// A value as a person would type it.
#[must_use]
pub fn typed_text(value: &Value) -> String {
    match value {
        Value::Text(text) => text.clone(),
        Value::Count(count) => count.to_string(),
        Value::List(list) => list.iter().map(typed_text).collect::<Vec<_>>().join(", "),
        Value::Table(table) => table
            .iter()
            .map(|(name, value)| format!("{name} {}", typed_text(value)))
            .collect::<Vec<_>>()
            .join(", "),
    }
}

/// The row that a field belongs to, with its list and the name within.
fn in_row(field: &str) -> Option<(&str, RowId, &str)> {
    let (rest, name) = field.rsplit_once('.')?;
    let (list, row) = rest.rsplit_once('.')?;
    Some((list, RowId::parse(row)?, name))
}

/// A row's fields, one of them said anew; empty letters take it out.
fn row_with(opened: &Opened, list: &str, row: RowId, name: &str, value: Option<Value>) -> Value {
    let mut fields = match opened.row(list, row).map(|held| &held.value) {
        Some(Value::Table(fields)) => fields.clone(),
        _ => Vec::new(),
    };
    let place = fields.iter().position(|(known, _)| known == name);
    match (place, value) {
        (Some(place), Some(value)) => fields[place].1 = value,
        (Some(place), None) => {
            fields.remove(place);
        }
        (None, Some(value)) => fields.push((name.to_string(), value)),
        (None, None) => {}
    }
    Value::Table(fields)
}

impl State {
    /// Letters are typed, not yet meant.
    pub fn typing(&mut self, field: String, text: String) {
        if let Some(visit) = &mut self.visit {
            visit.typed.insert(field, Typed { text, wrong: None });
        }
    }

    /// What stands in a field is meant.
    pub fn say(&mut self, field: &str, text: &str, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let text = text.trim();
        let value = (!text.is_empty()).then(|| value_of(field, text));
        let (told, trial) = match in_row(field) {
            Some((list, row, name)) => {
                let Some(held) = visit.row(list, row) else { return Vec::new() };
                let (line, before) = (held.line, held.value.clone());
                let value = row_with(visit, list, row, name, value);
                if value == before {
                    return self.untyped(field);
                }
                let entry = Entry::Row { list: list.to_string(), row, value: value.clone() };
                (in_place_of(Told::from(entry), Some(line)), Trial::Row(list.to_string(), row, value))
            }
            None => {
                let before = visit.fact(field).map(|held| (held.line, held.value.clone()));
                match (value, before) {
                    (Some(value), Some((_, known))) if value == known => return self.untyped(field),
                    (Some(value), before) => (
                        fact(field, value.clone(), before.map(|(line, _)| line)),
                        Trial::Fact(field.to_string(), value),
                    ),
                    (None, Some((line, _))) => (nothing(line), Trial::Gone),
                    (None, None) => return self.untyped(field),
                }
            }
        };
        if let Some(wrong) = self.wrong_with(field, &trial) {
            if let Some(visit) = &mut self.visit {
                visit.typed.insert(field.to_string(), Typed { text: text.to_string(), wrong: Some(wrong) });
            }
            return Vec::new();
        }
        self.untyped(field);
        self.write(&[told], with)
    }

    fn untyped(&mut self, field: &str) -> Vec<Effect> {
        if let Some(visit) = &mut self.visit {
            visit.typed.remove(field);
        }
        Vec::new()
    }

    /// Why a fact would not do, in words; none where it does.
    fn wrong_with(&self, field: &str, trial: &Trial) -> Option<String> {
        let visit = self.visit.as_ref()?;
        let mut folded = visit.folded.clone();
        let name = match trial {
            Trial::Gone => return None,
            Trial::Fact(field, value) => {
                let held = notebook::Held { value: value.clone(), line: notebook::LineId::from_bits(0) };
                folded.facts.insert(field.clone(), held);
                field.clone()
            }
            Trial::Row(list, row, value) => {
                let known = folded.rows.get_mut(list)?.iter_mut().find(|(known, _)| known == row)?;
                known.1.value = value.clone();
                format!("{list}.{}", field.rsplit('.').next().unwrap_or_default())
            }
        };
        // What was wrong before is not this fact's doing.
        let already = |fault: &crate::usable::Fault| visit.faults.contains(fault);
        let (_, faults) = usable(&folded);
        let wrong = faults
            .iter()
            .find(|fault| fault.field == name && fault.is == FaultIs::Wrong && !already(fault))?;
        Some(said(self, &wrong.error))
    }

    /// A product more, with nothing in it.
    pub fn add_product(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let row = with.chance.row();
        let entry = Entry::Row { list: PRODUCTS.to_string(), row, value: Value::Table(Vec::new()) };
        self.write(&[Told::from(entry)], with)
    }

    /// A pressure at a tip, not said yet.
    pub fn add_tip_pressure(&mut self, tip: u32, with: &mut With<'_>) -> Vec<Effect> {
        let (row, list) = (with.chance.row(), TIP_PRESSURES.to_string());
        let value = Value::Table(vec![("tip".to_string(), Value::Count(tip.into()))]);
        let mut effects = self.write(&[Told::from(Entry::Row { list, row, value })], with);
        effects.push(Effect::Focus(format!("entry-{TIP_PRESSURES}.{row}.pressure")));
        effects
    }

    /// One more section closed, the next from the left.
    pub fn add_closed(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let before = visit.folded.rows.get(CLOSED).map_or(0, Vec::len);
        let section = Value::Count(i64::try_from(before + 1).unwrap_or(1));
        let value = Value::Table(vec![("section".to_string(), section)]);
        let entry = Entry::Row { list: CLOSED.to_string(), row: with.chance.row(), value };
        self.write(&[Told::from(entry)], with)
    }

    /// A row is struck, and of a round its readings too.
    pub fn strike_row(&mut self, list: &str, row: RowId, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let Some(held) = visit.row(list, row) else { return Vec::new() };
        let mut told = vec![nothing(held.line)];
        let readings = visit.folded.readings.get(&row).into_iter().flat_map(|tips| tips.values()).flatten();
        told.extend(readings.map(|held| nothing(held.line)));
        self.write(&told, with)
    }

    /// Of two values one holds: the others are struck.
    pub fn choose(&mut self, field: &str, index: usize, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let Some(two) = visit.folded.two_values.iter().find(|two| two.field == field) else {
            return Vec::new();
        };
        let others = two.values.iter().enumerate().filter(|(place, _)| *place != index);
        let told: Vec<Told> = others.map(|(_, (_, line, _))| nothing(*line)).collect();
        self.write(&told, with)
    }

    /// A run of the drive, by its seconds as written; the ways go there and back by turns.
    pub fn run(&mut self, seconds: &str, with: &mut With<'_>) -> Vec<Effect> {
        let Some(visit) = &self.visit else { return Vec::new() };
        let before = visit.folded.rows.get(RUNS).map_or(0, Vec::len);
        let way = if before % 2 == 0 { "there" } else { "back" };
        let value = Value::Table(vec![
            ("time".to_string(), Value::text(seconds)),
            ("way".to_string(), Value::text(way)),
        ]);
        let entry = Entry::Row { list: RUNS.to_string(), row: with.chance.row(), value };
        self.write(&[Told::from(entry)], with)
    }

    /// A run that was typed: seconds, or minutes and seconds.
    pub fn run_typed(&mut self, text: &str, with: &mut With<'_>) -> Vec<Effect> {
        let text = text.trim();
        let with_unit = |text: &str| {
            if text.ends_with(|letter: char| letter.is_ascii_digit()) && !text.contains(':') {
                format!("{text} s")
            } else {
                text.to_string()
            }
        };
        let seconds = with_unit(text);
        match units::quantity(&seconds, units::Dimension::Time) {
            Ok(written) if written.si() > 0.0 => {
                self.untyped(RUNS);
                self.run(&seconds, with)
            }
            Ok(_) => self.wrong_run(text, self.words.label("yard-run_nothing")),
            Err(error) => self.wrong_run(text, said(self, &error)),
        }
    }

    fn wrong_run(&mut self, text: &str, wrong: String) -> Vec<Effect> {
        if let Some(visit) = &mut self.visit {
            visit.typed.insert(RUNS.to_string(), Typed { text: text.to_string(), wrong: Some(wrong) });
        }
        Vec::new()
    }
}

/// A fact on trial.
enum Trial {
    Gone,
    Fact(String, Value),
    Row(String, RowId, Value),
}

/// An error with what would do, in words.
pub(crate) fn said(state: &State, error: &dyn Coded) -> String {
    let words = &state.words;
    match words.hint(error) {
        Some(hint) => format!("{} · {hint}", words.error(error)),
        None => words.error(error),
    }
}
