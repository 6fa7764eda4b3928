//! What can be wrong with a product's rate, with what was given and what would do.

use units::{Arg, Args, Coded, QuantityError};

use super::strength::IngredientKind;

/// Why a text is not a product's rate.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum RateError {
    /// Nothing stands where the rate should be. Copy it from the label.
    #[error("no rate was given")]
    Empty,
    /// A text longer than any rate; often something pasted by mistake.
    #[error("a text of {length} letters is too long for a rate (at most 120)")]
    TooLong {
        /// How many letters were given.
        length: usize,
    },
    /// The number cannot be read.
    #[error("{0}")]
    Number(QuantityError),
    /// A number alone.
    #[error("\"{given}\" has no unit")]
    NoUnit {
        /// The text as given.
        given: String,
    },
    /// An amount that does not say on or in how much. Look on the label for "per acre" or "per 100 gallons".
    #[error("\"{given}\" does not say on how much ground or in how much mix")]
    NoBasis {
        /// The text as given.
        given: String,
    },
    /// Something else than a rate.
    #[error("\"{given}\" is not a product's rate")]
    NotARate {
        /// The text as given.
        given: String,
    },
    /// "oz" alone, which can be liquid or weight: a fluid ounce of product seldom weighs an ounce.
    #[error("\"oz\" in \"{given}\" can be an ounce of liquid ({liquid}) or of weight ({weight})")]
    WhichOunce {
        /// The text as given.
        given: String,
        /// The rate if the ounces are liquid.
        liquid: String,
        /// The rate if the ounces are weight.
        weight: String,
    },
    /// A percentage that does not say of what.
    #[error("\"{given}\" does not say whether it goes by volume or by weight")]
    BarePercent {
        /// The text as given.
        given: String,
    },
    /// A percentage by weight, which a jug cannot measure.
    #[error("\"{given}\" goes by weight, which a jug cannot measure")]
    PercentByWeight {
        /// The text as given.
        given: String,
    },
    /// Weight in weight, which is a strength and not a rate.
    #[error("\"{given}\" is weight in weight, which is no rate")]
    WeightInWeight {
        /// The text as given.
        given: String,
    },
    /// A rate of nothing. Leave the product out if it is not used.
    #[error("\"{given}\" is a rate of nothing; it must be more than 0")]
    Nothing {
        /// The text as given.
        given: String,
    },
    /// More product than mix.
    #[error("\"{given}\" is more product than mix; at most 100 % of the mix can be product")]
    OverWhole {
        /// The text as given.
        given: String,
    },
    /// Active ingredient without the strength of the product.
    #[error("\"{given}\" counts {}, but does not say how strong the product is", .kind.letters())]
    StrengthNeeded {
        /// The text as given.
        given: String,
        /// Active ingredient or acid equivalent.
        kind: IngredientKind,
    },
    /// A strength, but the rate does not say that it counts active ingredient.
    #[error("\"{given}\" has a strength, but its rate does not say ai")]
    StrengthWithoutMark {
        /// The text as given.
        given: String,
    },
    /// `ai` on one side and `ae` on the other: two different strengths of one product.
    #[error("\"{given}\" counts ai on one side and ae on the other")]
    MixedMarks {
        /// The text as understood, marks left out.
        given: String,
    },
    /// Not a strength.
    #[error("\"{given}\" is not the strength of a product")]
    NotAStrength {
        /// The text as given.
        given: String,
    },
    /// A product with more in it than itself.
    #[error("a strength of \"{given}\" is more than the whole; at most 100 % would do")]
    StrengthOverWhole {
        /// The text as given.
        given: String,
    },
    /// Active ingredient that is not a weight on an area or in the mix.
    #[error("\"{given}\" is not a weight of {} on an area or in the mix", .kind.letters())]
    IngredientRate {
        /// The text as given, its mark left out.
        given: String,
        /// Active ingredient or acid equivalent.
        kind: IngredientKind,
    },
}

impl RateError {
    /// The text as it was given, where there was one.
    #[must_use]
    pub fn given(&self) -> Option<&str> {
        match self {
            Self::Empty | Self::TooLong { .. } => None,
            Self::Number(error) => error.given(),
            Self::NoUnit { given }
            | Self::NoBasis { given }
            | Self::NotARate { given }
            | Self::WhichOunce { given, .. }
            | Self::BarePercent { given }
            | Self::PercentByWeight { given }
            | Self::WeightInWeight { given }
            | Self::Nothing { given }
            | Self::OverWhole { given }
            | Self::StrengthNeeded { given, .. }
            | Self::StrengthWithoutMark { given }
            | Self::MixedMarks { given }
            | Self::NotAStrength { given }
            | Self::StrengthOverWhole { given }
            | Self::IngredientRate { given, .. } => Some(given),
        }
    }
}

impl Coded for RateError {
    fn code(&self) -> &'static str {
        match self {
            Self::Empty => "rate_empty",
            Self::TooLong { .. } => "rate_too_long",
            Self::Number(error) => error.code(),
            Self::NoUnit { .. } => "rate_no_unit",
            Self::NoBasis { .. } => "rate_no_basis",
            Self::NotARate { .. } => "rate_not_a_rate",
            Self::WhichOunce { .. } => "rate_which_ounce",
            Self::BarePercent { .. } => "rate_bare_percent",
            Self::PercentByWeight { .. } => "rate_percent_by_weight",
            Self::WeightInWeight { .. } => "rate_weight_in_weight",
            Self::Nothing { .. } => "rate_nothing",
            Self::OverWhole { .. } => "rate_over_whole",
            Self::StrengthNeeded { .. } => "rate_strength_needed",
            Self::StrengthWithoutMark { .. } => "rate_strength_without_mark",
            Self::MixedMarks { .. } => "rate_mixed_marks",
            Self::NotAStrength { .. } => "rate_not_a_strength",
            Self::StrengthOverWhole { .. } => "rate_strength_over_whole",
            Self::IngredientRate { .. } => "rate_ingredient",
        }
    }

    fn case(&self) -> Option<&'static str> {
        match self {
            Self::Number(error) if hints_itself(error) => error.case(),
            // The sentence is the number's own, but what would do is a rate's.
            Self::Number(_) => Some("in_rate"),
            _ => None,
        }
    }

    fn args(&self) -> Args {
        let args = self
            .given()
            .map_or_else(Args::new, |given| Args::new().with("given", Arg::Text(given.to_string())));
        match self {
            Self::TooLong { length } => {
                args.with("length", Arg::Count(u32::try_from(*length).unwrap_or(u32::MAX)))
            }
            Self::Number(error) => error.args(),
            Self::WhichOunce { liquid, weight, .. } => {
                args.with("liquid", Arg::Text(liquid.clone())).with("weight", Arg::Text(weight.clone()))
            }
            Self::StrengthNeeded { kind, .. } | Self::IngredientRate { kind, .. } => {
                args.with("mark", Arg::Word { code: kind.letters(), english: kind.letters() })
            }
            _ => args,
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::Number(error) if hints_itself(error) => return error.hint(),
            Self::WhichOunce { liquid, weight, .. } => {
                return Some(format!("write {liquid} or {weight}, as the label means it"));
            }
            Self::NoBasis { given } => {
                return Some(format!("write {given}/ac or {given}/100 gal, as the label has it"));
            }
            Self::BarePercent { given } => {
                return Some(format!(
                    "write {given} v/v if the label goes by volume; if it goes by weight, write the pounds in 100 gal"
                ));
            }
            Self::PercentByWeight { .. } => "write the weight in a volume of mix, as 8 lb/100 gal",
            Self::StrengthNeeded { kind: IngredientKind::Acid, .. } => {
                "add what the label says the product holds, as \"at 3.8 lb ae/gal\""
            }
            Self::StrengthNeeded { .. } => {
                "add what the label says the product holds, as \"at 4 lb ai/gal\" or, if it is dry, \"at 80 %\""
            }
            Self::StrengthWithoutMark { .. } => {
                "write 1.5 lb ai/ac at 4 lb ai/gal if the rate is of active ingredient; leave the strength out if it is \
                 of product"
            }
            Self::MixedMarks { .. } => "the label gives both; take ai on both sides or ae on both sides",
            Self::NotAStrength { .. } | Self::StrengthOverWhole { .. } => {
                "a strength is written as 4 lb ai/gal, 480 g ai/L or, for a dry product, 80 %"
            }
            Self::IngredientRate { .. } => "active ingredient is written as 1.5 lb ai/ac or 720 g ai/ha",
            Self::OverWhole { .. } | Self::Nothing { .. } => "look at the label again",
            Self::Empty
            | Self::TooLong { .. }
            | Self::Number(_)
            | Self::NoUnit { .. }
            | Self::NotARate { .. }
            | Self::WeightInWeight { .. } => WOULD_DO,
        };
        Some(hint.to_string())
    }
}

/// Whether what would do for a number does for a rate as well.
const fn hints_itself(error: &QuantityError) -> bool {
    matches!(error, QuantityError::Comma { .. } | QuantityError::ZeroUnderLine { .. })
}

/// The ways to write a rate, for hints.
const WOULD_DO: &str = "a rate is written as 3 pt/ac, 2 lb/ac, 2 pt/100 gal, 0.25 % v/v, 2 fl oz/1000 sq ft, 1.5 L/ha or \
                        1.5 lb ai/ac at 4 lb ai/gal";
