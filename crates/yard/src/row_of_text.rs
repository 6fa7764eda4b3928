//! A whole row typed or pasted from paper: one reading for each tip, "-" where no cup was held.

use notebook::{Entry, Told, Value};
use units::{Caught, Unit};

use crate::catching::reading_value;
use crate::effect::Effect;
use crate::facts::said;
use crate::opened::Opened;
use crate::plan::Step;
use crate::state::{Screen, State};
use crate::write::{With, in_place_of};

/// What is wrong with a row.
#[derive(Clone, Debug, PartialEq)]
pub struct RowWrong {
    /// Which reading, counted from 1; none where it is the whole row.
    pub place: Option<usize>,
    /// In words.
    pub says: String,
}

/// The readings in a text. Commas, semicolons, tabs and line ends part them; where there is none of these, spaces do.
#[must_use]
pub fn parts(text: &str) -> Vec<String> {
    let strong = [',', ';', '\t', '\n', '\r'];
    let parted: Vec<&str> =
        if text.contains(strong) { text.split(strong).collect() } else { text.split_whitespace().collect() };
    parted.into_iter().map(str::trim).filter(|part| !part.is_empty()).map(str::to_string).collect()
}

/// Whether a part says that no cup was held.
fn is_left_out(part: &str) -> bool {
    matches!(part, "-" | "−" | "–" | "—")
}

impl Opened {
    /// The unit that bare numbers take.
    #[must_use]
    pub fn cup_unit(&self) -> Option<Unit> {
        Unit::named(self.sides().given)
    }
}

impl State {
    /// The row is typed, not yet meant.
    pub fn row_typing(&mut self, text: String) {
        if let Some(catching) = &mut self.catching {
            catching.row = text;
            catching.row_wrong = None;
        }
    }

    /// The row is meant: all of it is kept, or none and it is said where it is wrong.
    pub fn row_meant(&mut self, with: &mut With<'_>) -> Vec<Effect> {
        let (Some(visit), Some(catching)) = (&self.visit, &self.catching) else { return Vec::new() };
        let round = catching.round;
        let parts = parts(&catching.row);
        let told = match row(self, visit, &catching.tips, &parts) {
            Ok(values) => values
                .into_iter()
                .map(|(tip, value)| {
                    let value = held_for(value, catching.seconds.as_deref());
                    let before = visit.cups(round, tip).last().map(|held| held.line);
                    in_place_of(Told::from(Entry::Reading { round, tip, value }), before)
                })
                .collect::<Vec<_>>(),
            Err(wrong) => {
                if let Some(catching) = &mut self.catching {
                    catching.row_wrong = Some(wrong);
                }
                return vec![Effect::Focus("row-wrong".to_string())];
            }
        };
        let effects = self.write(&told, with);
        if let Some(visit) = &mut self.visit {
            visit.unfolded = Some(Step::Catch);
        }
        if let Some(catching) = &mut self.catching {
            catching.row.clear();
        }
        self.screen = Screen::Visit;
        effects
    }
}

/// A reading with the time its cup was held, where that is not the round's.
fn held_for(value: Value, seconds: Option<&str>) -> Value {
    match (&value, seconds) {
        (Value::Text(text), Some(_)) if text != "-" => reading_value(text, seconds, None),
        _ => value,
    }
}

/// The readings by tip, or what is wrong.
fn row(state: &State, visit: &Opened, tips: &[u32], parts: &[String]) -> Result<Vec<(u32, Value)>, RowWrong> {
    let words = &state.words;
    if parts.len() != tips.len() {
        let counts = [("given", count(parts.len())), ("tips", count(tips.len()))];
        let says = words.say("yard-row_length", &counts.map(|(name, number)| (name, number.into())));
        return Err(RowWrong { place: None, says });
    }
    let unit = visit.cup_unit();
    let mut values = Vec::new();
    for (place, (tip, part)) in tips.iter().zip(parts).enumerate() {
        if is_left_out(part) {
            values.push((*tip, Value::text("-")));
            continue;
        }
        match Caught::parse(part, unit.as_ref()) {
            // Bare numbers take the cup's unit, and the line says so for itself.
            Ok(_) if part.ends_with(|sign: char| sign.is_ascii_digit() || "¼½¾⅛⅜⅝⅞".contains(sign)) =>
            {
                values.push((*tip, Value::Text(format!("{part} {}", visit.sides().given))));
            }
            Ok(_) => values.push((*tip, Value::text(part))),
            Err(error) => {
                let says = words.say(
                    "yard-row_place",
                    &[
                        ("place", count(place + 1).into()),
                        ("tip", tip.to_string().into()),
                        ("what", said(state, &error).into()),
                    ],
                );
                return Err(RowWrong { place: Some(place + 1), says });
            }
        }
    }
    Ok(values)
}

fn count(number: usize) -> i64 {
    i64::try_from(number).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_is_parted_as_people_write_it() {
        assert_eq!(parts("14 14.5 15"), ["14", "14.5", "15"]);
        assert_eq!(parts("14 1/2, 15,\n14"), ["14 1/2", "15", "14"]);
        assert_eq!(parts("14\t-\t15\r\n"), ["14", "-", "15"]);
        assert!(parts(" \n").is_empty());
    }
}
