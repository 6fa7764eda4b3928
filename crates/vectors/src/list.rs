//! The list: numbers with names.

use std::error::Error;
use std::fmt;

use units::{Quantity, Ranged};

/// A number and what it is.
#[derive(Clone, Debug, PartialEq)]
pub struct Number {
    /// The calculation and its input, in words.
    pub name: String,
    /// The result, in whatever unit the calculation gives it.
    pub value: f64,
}

/// Numbers in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct List {
    numbers: Vec<Number>,
}

impl List {
    /// Adds a number.
    pub fn put(&mut self, name: impl Into<String>, value: f64) {
        self.numbers.push(Number { name: name.into(), value });
    }

    /// Adds the number of a calculation that can fail. A failure is kept as NaN, which a test then finds.
    pub fn try_put<Error>(&mut self, name: impl Into<String>, result: Result<f64, Error>) {
        self.put(name, result.unwrap_or(f64::NAN));
    }

    /// Adds a quantity in SI.
    pub fn quantity(&mut self, name: impl Into<String>, quantity: impl Quantity) {
        self.put(name, quantity.si());
    }

    /// Adds a quantity in SI with both ends of its range.
    pub fn ranged<Q: Quantity>(&mut self, name: impl fmt::Display, ranged: &Ranged<Q>) {
        self.quantity(format!("{name}"), ranged.value);
        self.quantity(format!("{name}, low"), ranged.low);
        self.quantity(format!("{name}, high"), ranged.high);
    }

    /// Adds what a longer calculation puts. A failure on its way is kept as NaN under its name.
    pub fn attempt(&mut self, name: &str, calculation: impl FnOnce(&mut Self) -> Result<(), Box<dyn Error>>) {
        if let Err(error) = calculation(self) {
            self.put(format!("{name}: {error}"), f64::NAN);
        }
    }

    /// The numbers in order.
    #[must_use]
    pub fn numbers(&self) -> &[Number] {
        &self.numbers
    }
}

impl fmt::Display for Number {
    /// The bits, which are compared, and the decimal form, which is read.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{:016x} {:>23e}  {}", self.value.to_bits(), self.value, self.name)
    }
}
