//! The table of published check values: its rows as text, and the numbers in them.

use std::collections::BTreeSet;

use units::{Dimension, Unit};

use crate::Outcome;

const TABLE: &str = include_str!("../../../../check-values/check-values.tsv");

/// The columns, in the order `check-values/NOTES.md` gives them.
const COLUMNS: &str = "id flag topic description inputs expected tolerance source calc given answer printed within \
                       not_equal note";

/// One published figure.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    pub id: &'static str,
    pub flag: &'static str,
    pub tolerance: &'static str,
    pub source: &'static str,
    pub calc: &'static str,
    pub given: &'static str,
    pub answer: &'static str,
    pub printed: &'static str,
    pub within: &'static str,
    pub not_equal: &'static str,
    pub note: &'static str,
}

/// The `calc` of rows that hold a rule and no figure.
pub const NOT_USABLE: &str = "not_usable";

/// Every row, those that are not usable included.
pub fn rows() -> Outcome<Vec<Row>> {
    let mut lines = TABLE.lines();
    let columns: Vec<&str> = lines.next().unwrap_or_default().split('\t').collect();
    if columns.join(" ") != COLUMNS {
        return Err(format!("the columns are {columns:?}").into());
    }
    let rows: Vec<Row> = lines.map(row).collect::<Outcome<_>>()?;
    let ids: BTreeSet<&str> = rows.iter().map(|row| row.id).collect();
    if ids.len() == rows.len() { Ok(rows) } else { Err("an id stands twice".into()) }
}

/// The row with an id.
pub fn row_of(id: &str) -> Outcome<Row> {
    rows()?.into_iter().find(|row| row.id == id).ok_or_else(|| format!("there is no row {id}").into())
}

fn row(line: &'static str) -> Outcome<Row> {
    let cells: Vec<&str> = line.split('\t').collect();
    let [id, flag, _, _, _, _, tolerance, source, calc, given, answer, printed, within, not_equal, note] =
        cells[..]
    else {
        return Err(format!("{} cells in {line}", cells.len()).into());
    };
    Ok(Row { id, flag, tolerance, source, calc, given, answer, printed, within, not_equal, note })
}

/// A number with the unit it is written in.
pub struct Figure {
    pub number: f64,
    pub unit: FigureUnit,
}

/// What a figure is counted in.
#[derive(Clone, Debug, PartialEq)]
pub struct FigureUnit {
    text: &'static str,
    pub measures: Measures,
    /// How many SI units it is; how many dollars, or dollars an acre, where it measures money.
    pub factor: f64,
}

/// What a result measures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Measures {
    /// A quantity, or a bare ratio or count.
    Quantity(Dimension),
    /// Money.
    Money,
    /// Money on an acre.
    MoneyPerAcre,
}

impl Row {
    /// The right value.
    pub fn answer(&self) -> Outcome<Figure> {
        figure(self.answer)
    }

    /// What the source printed, in the unit of the answer; `None` where it printed nothing.
    pub fn printed(&self) -> Outcome<Option<f64>> {
        self.in_unit_of_answer(self.printed)
    }

    /// The misprint, in the unit of the answer; `None` where the row holds none.
    pub fn misprint(&self) -> Outcome<Option<f64>> {
        self.in_unit_of_answer(self.not_equal)
    }

    /// How far off a printed value may be, in the unit of the answer.
    pub fn within(&self) -> Outcome<f64> {
        Ok(self.within.parse()?)
    }

    /// The step of the last digit the source printed: 0.01 for "1.33 pt/ac".
    pub fn last_printed_digit(&self) -> f64 {
        let number = self.printed.split(' ').next().unwrap_or_default();
        let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        (0..decimals).fold(1.0, |step, _| step / 10.0)
    }

    fn in_unit_of_answer(&self, text: &'static str) -> Outcome<Option<f64>> {
        if text.is_empty() {
            return Ok(None);
        }
        let (wanted, found) = (self.answer()?.unit, figure(text)?);
        if found.unit == wanted {
            Ok(Some(found.number))
        } else {
            Err(format!("{text} is in another unit").into())
        }
    }
}

fn figure(text: &'static str) -> Outcome<Figure> {
    let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
    Ok(Figure { number: number.parse()?, unit: unit_of(unit)? })
}

fn unit_of(text: &'static str) -> Outcome<FigureUnit> {
    let (measures, factor) = match text {
        "" => (Measures::Quantity(Dimension::Ratio), 1.0),
        "$" => (Measures::Money, 1.0),
        "$/ac" => (Measures::MoneyPerAcre, 1.0),
        _ => {
            let unit = Unit::named(text).ok_or_else(|| format!("our units do not know {text}"))?;
            (Measures::Quantity(unit.dimension()), unit.si_factor())
        }
    };
    Ok(FigureUnit { text, measures, factor })
}
