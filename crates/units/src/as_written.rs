//! A typed quantity that remembers how it was written.

use core::marker::PhantomData;

use crate::parse::{self, QuantityError};
use crate::quantity::Quantity;
use crate::written::Written;

/// What a person wrote, known to be a quantity of one kind. It is kept letter for letter and turned into a
/// quantity each time it is used.
#[derive(Clone, Debug, PartialEq)]
pub struct AsWritten<Q> {
    written: Written,
    kind: PhantomData<Q>,
}

impl<Q: Quantity> AsWritten<Q> {
    /// Reads what a person wrote.
    ///
    /// *Errors*: those of [`Quantity::parse`].
    pub fn parse(text: &str) -> Result<Self, QuantityError> {
        parse::quantity(text, Q::DIMENSION).map(|written| Self { written, kind: PhantomData })
    }

    /// The quantity.
    #[must_use]
    pub fn value(&self) -> Q {
        Q::from_si(self.written.si())
    }

    /// The text as given.
    #[must_use]
    pub fn text(&self) -> &str {
        self.written.text()
    }

    /// The numbers and units as given.
    #[must_use]
    pub const fn written(&self) -> &Written {
        &self.written
    }
}
