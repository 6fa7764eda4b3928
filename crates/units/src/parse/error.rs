//! What can be wrong with a written quantity, with what was given and what would do.

use super::LONGEST;
use crate::amount::{Arg, Args};
use crate::coded::Coded;
use crate::dimension::Dimension;

/// Why a text is not a quantity of the kind asked for.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum QuantityError {
    /// Nothing was written. Leave the field out if there is nothing to say.
    #[error("nothing was given; {} is needed", .wanted.name())]
    Empty {
        /// What was asked for.
        wanted: Dimension,
    },
    /// No number could be found where one must stand.
    #[error("\"{given}\" does not start with a number")]
    NotANumber {
        /// The text as given.
        given: String,
    },
    /// A number without a unit. Write the unit behind it.
    #[error("\"{given}\" has no unit; {} is needed", .wanted.name())]
    MissingUnit {
        /// The text as given.
        given: String,
        /// What was asked for.
        wanted: Dimension,
    },
    /// A unit that is not in the table.
    #[error("\"{unit}\" in \"{given}\" is not a unit known here; {} is needed", .wanted.name())]
    UnknownUnit {
        /// The text as given.
        given: String,
        /// The part that is not known.
        unit: String,
        /// What was asked for.
        wanted: Dimension,
    },
    /// A unit of something else, such as psi for a width.
    #[error("\"{given}\" is {}, but {} is needed", .found.name(), .wanted.name())]
    WrongUnit {
        /// The text as given.
        given: String,
        /// What its unit measures.
        found: Dimension,
        /// What was asked for.
        wanted: Dimension,
    },
    /// "oz" where a volume is wanted: a weight ounce is not a fluid ounce.
    #[error("\"oz\" in \"{given}\" is an ounce of weight, but {} is needed", .wanted.name())]
    WeightOunce {
        /// The text as given.
        given: String,
        /// What was asked for.
        wanted: Dimension,
    },
    /// "oz" where a volume or a weight would do.
    #[error("\"oz\" in \"{given}\" can be an ounce of liquid or of weight")]
    WhichOunce {
        /// The text as given.
        given: String,
    },
    /// A comma, which means thousands to one reader and a decimal mark to another.
    #[error("the comma in \"{given}\" can be read two ways")]
    Comma {
        /// The text as given.
        given: String,
        /// The number if the comma marks thousands.
        as_thousands: String,
        /// The number if the comma is a decimal mark.
        as_decimal: String,
    },
    /// Less than nothing, where that cannot be.
    #[error("\"{given}\" is less than nothing; {} cannot be", .wanted.name())]
    Negative {
        /// The text as given.
        given: String,
        /// What was asked for.
        wanted: Dimension,
    },
    /// Too large for any arithmetic.
    #[error("\"{}\" is too large a number", short(.given))]
    TooLarge {
        /// The text as given.
        given: String,
    },
    /// More text than any quantity needs.
    #[error("a text of {length} letters is too long for a quantity (at most {LONGEST})")]
    TooLong {
        /// How many letters were given.
        length: usize,
    },
    /// Parts that do not follow from large to small, as "8 in 16 ft".
    #[error("the parts of \"{given}\" do not go from the larger unit to the smaller")]
    PartsOutOfOrder {
        /// The text as given.
        given: String,
    },
    /// A fraction with nothing under the line.
    #[error("the fraction in \"{given}\" divides by nothing")]
    ZeroUnderLine {
        /// The text as given.
        given: String,
    },
    /// "1:75": more than 59 seconds or minutes behind the colon.
    #[error("\"{given}\" has more than 59 behind the colon")]
    PastSixty {
        /// The text as given.
        given: String,
    },
    /// A flow with no pressure, where both are needed.
    #[error("\"{given}\" does not say at which pressure")]
    NoPressure {
        /// The text as given.
        given: String,
    },
    /// A pressure with no flow in front of it, where both are needed.
    #[error("\"{given}\" does not say which flow")]
    NoFlow {
        /// The text as given.
        given: String,
    },
    /// A doubt either way that is larger than the value itself.
    #[error("the doubt in \"{given}\" is larger than the value itself")]
    DoubtOverValue {
        /// The text as given.
        given: String,
    },
    /// A span whose ends are the wrong way round or not two.
    #[error("\"{given}\" is not a span from a smaller to a larger value")]
    NotASpan {
        /// The text as given.
        given: String,
    },
}

impl QuantityError {
    /// The text as it was given, where there was one.
    #[must_use]
    pub fn given(&self) -> Option<&str> {
        match self {
            Self::NotANumber { given }
            | Self::MissingUnit { given, .. }
            | Self::UnknownUnit { given, .. }
            | Self::WrongUnit { given, .. }
            | Self::WeightOunce { given, .. }
            | Self::WhichOunce { given }
            | Self::Comma { given, .. }
            | Self::Negative { given, .. }
            | Self::TooLarge { given }
            | Self::PartsOutOfOrder { given }
            | Self::ZeroUnderLine { given }
            | Self::PastSixty { given }
            | Self::NoPressure { given }
            | Self::NoFlow { given }
            | Self::DoubtOverValue { given }
            | Self::NotASpan { given } => Some(given),
            Self::Empty { .. } | Self::TooLong { .. } => None,
        }
    }

    fn wanted(&self) -> Option<Dimension> {
        match self {
            Self::Empty { wanted }
            | Self::MissingUnit { wanted, .. }
            | Self::UnknownUnit { wanted, .. }
            | Self::WrongUnit { wanted, .. }
            | Self::WeightOunce { wanted, .. }
            | Self::Negative { wanted, .. } => Some(*wanted),
            _ => None,
        }
    }
}

impl Coded for QuantityError {
    fn code(&self) -> &'static str {
        match self {
            Self::Empty { .. } => "quantity_empty",
            Self::NotANumber { .. } => "quantity_not_a_number",
            Self::MissingUnit { .. } => "quantity_missing_unit",
            Self::UnknownUnit { .. } => "quantity_unknown_unit",
            Self::WrongUnit { .. } => "quantity_wrong_unit",
            Self::WeightOunce { .. } => "quantity_weight_ounce",
            Self::WhichOunce { .. } => "quantity_which_ounce",
            Self::Comma { .. } => "quantity_comma",
            Self::Negative { .. } => "quantity_negative",
            Self::TooLarge { .. } => "quantity_too_large",
            Self::TooLong { .. } => "quantity_too_long",
            Self::PartsOutOfOrder { .. } => "quantity_parts_out_of_order",
            Self::ZeroUnderLine { .. } => "quantity_zero_under_line",
            Self::PastSixty { .. } => "quantity_past_sixty",
            Self::NoPressure { .. } => "quantity_no_pressure",
            Self::NoFlow { .. } => "quantity_no_flow",
            Self::DoubtOverValue { .. } => "quantity_doubt_over_value",
            Self::NotASpan { .. } => "quantity_not_a_span",
        }
    }

    fn case(&self) -> Option<&'static str> {
        match self {
            // A cup may stand on a scale, so there another thing would do too.
            Self::WeightOunce { wanted: Dimension::Volume, .. } => Some("cup"),
            Self::WeightOunce { .. } => Some("other"),
            Self::Comma { as_thousands, as_decimal, .. } if as_thousands == as_decimal => Some("left_out"),
            Self::Comma { .. } => Some("two_ways"),
            _ => None,
        }
    }

    fn args(&self) -> Args {
        let mut args = Args::new();
        if let Some(given) = self.given() {
            args = args.with("given", Arg::Text(given.to_string()));
        }
        if let Some(wanted) = self.wanted() {
            args = args.with("wanted", wanted.word()).with("would_do", wanted.would_do_word());
        }
        match self {
            Self::UnknownUnit { unit, .. } => args.with("unit", Arg::Text(unit.clone())),
            Self::WrongUnit { found, .. } => args.with("found", found.word()),
            Self::Comma { as_thousands, as_decimal, .. } => args
                .with("as_thousands", Arg::Text(as_thousands.clone()))
                .with("as_decimal", Arg::Text(as_decimal.clone())),
            Self::TooLarge { given } => args.with("start", Arg::Text(short(given))),
            Self::TooLong { length } => args
                .with("length", Arg::Count(u32::try_from(*length).unwrap_or(u32::MAX)))
                .with("most", Arg::Count(u32::try_from(LONGEST).unwrap_or(u32::MAX))),
            _ => args,
        }
    }

    fn hint(&self) -> Option<String> {
        match self {
            Self::WeightOunce { wanted: Dimension::Volume, .. } => {
                Some("write fl oz for an ounce of liquid; a cup on a scale needs the scale mode".to_string())
            }
            Self::WeightOunce { wanted, .. } => Some(format!(
                "write fl oz for an ounce of liquid; units that would do: {}",
                wanted.would_do()
            )),
            Self::WhichOunce { .. } => Some("write fl oz for liquid or oz wt for weight".to_string()),
            Self::Comma { as_thousands, as_decimal, .. } if as_thousands == as_decimal => {
                Some(format!("leave the comma out and write {as_decimal}"))
            }
            Self::Comma { as_thousands, as_decimal, .. } => {
                Some(format!("write {as_thousands} or {as_decimal}; the decimal mark is a point"))
            }
            Self::NotANumber { .. } => Some("a number may be 14, 14.5, 14 1/2 or 1/2".to_string()),
            Self::PartsOutOfOrder { .. } => Some("write the larger part first, as 16 ft 8 in".to_string()),
            Self::NoPressure { .. } | Self::NoFlow { .. } => {
                Some("write it as 0.30 gal/min @ 40 psi".to_string())
            }
            Self::DoubtOverValue { .. } => Some(
                "write how far it may be off either way, as 5.0 mph ± 0.1 mph or 5.0 mph ± 2 %".to_string(),
            ),
            Self::TooLarge { .. } => Some(
                "look at the digits and the unit; at most fifteen digits before the point are taken"
                    .to_string(),
            ),
            Self::TooLong { .. } => Some("write a number and its unit, as 16 ft 8 in".to_string()),
            Self::ZeroUnderLine { .. } => Some("write a fraction as 1/2 or 14 1/2".to_string()),
            Self::PastSixty { .. } => {
                Some("1:05 is a minute and five seconds; write 75 s for 75 seconds".to_string())
            }
            Self::NotASpan { .. } => Some("write it as 4 mph..7 mph".to_string()),
            _ => self.wanted().map(|wanted| format!("units that would do: {}", wanted.would_do())),
        }
    }
}

/// As much of a given text as a message needs: its first 40 letters.
fn short(given: &str) -> String {
    let mut letters = given.chars();
    let mut short: String = letters.by_ref().take(LONGEST_SHOWN).collect();
    if letters.next().is_some() {
        short.push('…');
    }
    short
}

/// How many letters of a number too large are shown. Our own choice: half a line of a terminal.
const LONGEST_SHOWN: usize = 40;
