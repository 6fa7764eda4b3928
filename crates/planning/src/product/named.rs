//! A product by its name with its rate, as written in one text: `NAME: 3 pt/ac`.

use super::error::ProductError;
use super::rate::WrittenRate;
use crate::text::for_message;

/// A product and its rate.
#[derive(Clone, Debug, PartialEq)]
pub struct Product {
    name: String,
    rate: WrittenRate,
}

impl Product {
    /// A product with its rate.
    ///
    /// *Errors*: no name, one of more than 120 letters, or one with control signs in it.
    pub fn new(name: &str, rate: WrittenRate) -> Result<Self, ProductError> {
        let name = name.trim();
        if name.is_empty() {
            return Err(ProductError::NoName { given: rate.text().to_string() });
        }
        let length = name.chars().count();
        if length > LONGEST_NAME {
            return Err(ProductError::NameTooLong { length });
        }
        if name.chars().any(char::is_control) {
            return Err(ProductError::ControlSign { given: name.escape_debug().to_string() });
        }
        Ok(Self { name: name.to_string(), rate })
    }

    /// Reads `NAME: RATE`. The text is split at its last colon, because a name may hold one ("Mix A: part 2")
    /// and a rate never does.
    ///
    /// *Errors*: no colon, a bad name, or a bad rate; see [`ProductError`].
    pub fn parse(text: &str) -> Result<Self, ProductError> {
        let given = text.trim();
        if given.is_empty() {
            return Err(ProductError::Empty);
        }
        let Some((name, rate)) = given.rsplit_once(':') else {
            return Err(ProductError::NoColon { given: for_message(given) });
        };
        let rate = WrittenRate::parse(rate)
            .map_err(|error| ProductError::Rate { name: for_message(name.trim()), error })?;
        Self::new(name, rate)
    }

    /// The name as given.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The rate as written.
    #[must_use]
    pub const fn rate(&self) -> &WrittenRate {
        &self.rate
    }
}

/// The longest name taken. Our own limit: no label's name is longer, and a file pasted by mistake is refused.
const LONGEST_NAME: usize = 120;
