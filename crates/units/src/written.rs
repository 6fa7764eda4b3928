//! A quantity as it was written, kept letter for letter; it is converted only when it is used.

use crate::dimension::Dimension;
use crate::unit::Unit;

/// One number with its unit, as "8 in" in "16 ft 8 in".
#[derive(Clone, Debug, PartialEq)]
pub struct Term {
    number: String,
    value: f64,
    unit: Unit,
}

impl Term {
    pub(crate) fn new(number: &str, value: f64, unit: Unit) -> Self {
        Self { number: number.to_string(), value, unit }
    }

    /// The number as written, decimal or fraction.
    #[must_use]
    pub fn number(&self) -> &str {
        &self.number
    }

    /// The number's value.
    #[must_use]
    pub const fn value(&self) -> f64 {
        self.value
    }

    /// The unit.
    #[must_use]
    pub const fn unit(&self) -> &Unit {
        &self.unit
    }
}

/// A quantity as written: the text, and what was understood of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Written {
    text: String,
    negative: bool,
    dimension: Dimension,
    terms: Vec<Term>,
}

impl Written {
    pub(crate) fn new(text: &str, negative: bool, dimension: Dimension, terms: Vec<Term>) -> Self {
        Self { text: text.to_string(), negative, dimension, terms }
    }

    /// The text as given, without blanks at its ends.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// What it measures.
    #[must_use]
    pub const fn dimension(&self) -> Dimension {
        self.dimension
    }

    /// The parts, largest unit first.
    #[must_use]
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// The unit to answer in: the first part's.
    #[must_use]
    pub fn unit(&self) -> Option<&Unit> {
        self.terms.first().map(Term::unit)
    }

    /// Whether a minus sign stood in front of more than nothing.
    #[must_use]
    pub fn is_negative(&self) -> bool {
        self.negative && self.terms.iter().any(|term| term.value > 0.0)
    }

    /// The value in the SI unit of its dimension.
    #[must_use]
    pub fn si(&self) -> f64 {
        let sum: f64 = self.terms.iter().map(|term| term.value * term.unit.si_factor()).sum();
        if self.negative { -sum } else { sum }
    }

    /// The canonical printing: the numbers as written with the units as we spell them.
    #[must_use]
    pub fn canonical(&self) -> String {
        let parts: Vec<String> =
            self.terms.iter().map(|term| format!("{} {}", term.number, term.unit.text())).collect();
        format!("{}{}", if self.negative { "-" } else { "" }, parts.join(" "))
    }
}
