//! A table with its title and what must be known to read it.

use crate::bar::{Bar, Side, Standing};
use crate::ratio::Ratio;

/// A table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// Its title.
    pub title: String,
    /// What it shows, and from which draws.
    pub says: String,
    /// The heads of its columns.
    pub heads: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
    /// How many bars are missed in it.
    pub missed: u32,
}

impl Table {
    /// A table without rows yet.
    #[must_use]
    pub fn new(title: &str, says: &str, heads: &[&str]) -> Self {
        Self {
            title: title.to_owned(),
            says: says.to_owned(),
            heads: heads.iter().map(|head| (*head).to_owned()).collect(),
            ..Self::default()
        }
    }

    /// Adds a row.
    pub fn row(&mut self, cells: Vec<String>) {
        self.rows.push(cells);
    }

    /// The table as Markdown.
    #[must_use]
    pub fn markdown(&self) -> String {
        let line = |cells: &[String]| format!("| {} |\n", cells.join(" | "));
        let mut text = format!("## {}\n\n{}\n\n", self.title, self.says);
        text.push_str(&line(&self.heads));
        text.push_str(&format!("|{}\n", "---|".repeat(self.heads.len())));
        for row in &self.rows {
            text.push_str(&line(row));
        }
        text
    }

    /// The cell for how a figure stands against a bar; a missed one is counted.
    pub(crate) fn standing(&mut self, bar: &Bar, ratio: &Ratio) -> String {
        match bar.standing(ratio) {
            Standing::Held => "held".to_owned(),
            Standing::Nothing => "nothing to count".to_owned(),
            Standing::Missed => {
                self.missed += 1;
                let errors = bar.errors_beyond(ratio).map_or(String::new(), |by| format!(" by {by:.1} se"));
                format!("**MISSED**{errors}")
            }
        }
    }
}

/// A share in percent with its standard error: `99.71 ± 0.03 %`.
pub(crate) fn percent(ratio: &Ratio) -> String {
    figure(ratio, 100.0, 2).map_or("-".to_owned(), |text| format!("{text} %"))
}

/// A figure with its standard error, and so many decimals.
pub(crate) fn number(ratio: &Ratio, decimals: usize) -> String {
    figure(ratio, 1.0, decimals).unwrap_or_else(|| "-".to_owned())
}

fn figure(ratio: &Ratio, times: f64, decimals: usize) -> Option<String> {
    let value = times * ratio.value()?;
    let error = times * ratio.standard_error().unwrap_or(0.0);
    Some(format!("{value:.decimals$} ± {error:.decimals$}"))
}

/// A bar in words: `at least 99.5 %`.
pub(crate) fn bar_text(bar: &Bar) -> String {
    let side = match bar.side {
        Side::AtLeast => "at least",
        Side::AtMost => "at most",
    };
    if bar.share < 0.02 {
        format!("{side} {}", bar.share)
    } else {
        format!("{side} {} %", units::tidy_digits(bar.share * 100.0))
    }
}
