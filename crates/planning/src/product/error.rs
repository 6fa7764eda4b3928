//! What can be wrong with a product as written, with what was given and what would do.

use units::{Arg, Args, Coded, QuantityError};

use super::rate_error::RateError;

/// Why a text is not a product with its rate.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ProductError {
    /// Nothing was written.
    #[error("no product was given")]
    Empty,
    /// No colon between name and rate.
    #[error("\"{given}\" has no colon between the product's name and its rate")]
    NoColon {
        /// The text as given.
        given: String,
    },
    /// A rate without the product's name.
    #[error("the rate \"{given}\" has no product's name in front of it")]
    NoName {
        /// The rate as given.
        given: String,
    },
    /// A name longer than any label's.
    #[error("a name of {length} letters is too long (at most 120)")]
    NameTooLong {
        /// How many letters were given.
        length: usize,
    },
    /// Signs that cannot be shown.
    #[error("the name \"{given}\" has signs in it that cannot be shown")]
    ControlSign {
        /// The name with those signs made visible.
        given: String,
    },
    /// The rate cannot be used.
    #[error("rate of \"{name}\": {error}")]
    Rate {
        /// The product's name as given.
        name: String,
        /// What is wrong with its rate.
        error: RateError,
    },
}

impl Coded for ProductError {
    fn code(&self) -> &'static str {
        match self {
            Self::Empty => "product_empty",
            Self::NoColon { .. } => "product_no_colon",
            Self::NoName { .. } => "product_no_name",
            Self::NameTooLong { .. } => "product_name_too_long",
            Self::ControlSign { .. } => "product_control_sign",
            Self::Rate { error, .. } => error.code(),
        }
    }

    fn case(&self) -> Option<&'static str> {
        match self {
            Self::Rate {
                error: RateError::Number(QuantityError::Comma { as_thousands, as_decimal, .. }),
                ..
            } if as_thousands == as_decimal => Some("named_one_reading"),
            // The rate's sentence with the product's name in front.
            Self::Rate { .. } => Some("named"),
            _ => None,
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::Empty => Args::new(),
            Self::NoColon { given } | Self::NoName { given } | Self::ControlSign { given } => {
                Args::new().with("given", Arg::Text(given.clone()))
            }
            Self::NameTooLong { length } => {
                Args::new().with("length", Arg::Count(u32::try_from(*length).unwrap_or(u32::MAX)))
            }
            Self::Rate { name, error } => error.args().with("name", Arg::Text(name.clone())),
        }
    }

    fn hint(&self) -> Option<String> {
        match self {
            Self::Rate { error, .. } => error.hint(),
            _ => Some("a product is written as NAME: 3 pt/ac".to_string()),
        }
    }
}
