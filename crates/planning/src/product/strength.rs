//! Active ingredient: a rate in pounds of it, and how much of it the product holds.

use units::{Amount, Arg, Density, Dimension, Kind, MassPerArea, Quantity, Unit, UnitSystem, Working};

use super::rate::ProductRate;
use super::rate_error::RateError;

/// A rate of active ingredient, and the strength of the product that brings it.
#[derive(Clone, Debug, PartialEq)]
pub struct Ingredient {
    pub(super) kind: IngredientKind,
    pub(super) rate: IngredientRate,
    pub(super) strength: Strength,
}

/// What the label counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum IngredientKind {
    /// Active ingredient, `ai`.
    Active,
    /// Acid equivalent, `ae`: the acid in a salt or ester. The same product has two different strengths.
    Acid,
}

impl IngredientKind {
    /// The letters on the label.
    #[must_use]
    pub const fn letters(self) -> &'static str {
        match self {
            Self::Active => "ai",
            Self::Acid => "ae",
        }
    }
}

/// How much active ingredient the product holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Strength {
    /// A liquid: weight in a volume, as 4 lb ai/gal.
    Liquid(Density),
    /// A dry product: weight in weight.
    Dry {
        /// 0.8 for 80 %.
        share: f64,
    },
}

/// Active ingredient on an area or in the mix.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum IngredientRate {
    Area(MassPerArea),
    Mix(Density),
}

impl Ingredient {
    /// Whether the label counts active ingredient or acid equivalent.
    #[must_use]
    pub const fn kind(&self) -> IngredientKind {
        self.kind
    }

    /// The strength of the product.
    #[must_use]
    pub const fn strength(&self) -> Strength {
        self.strength
    }

    /// Returns the rate of the product that brings this much active ingredient.
    ///
    /// *Units*: volume on an area or in the mix for a liquid, weight for a dry product.
    ///
    /// *Assumptions*: a strength in percent is by weight, and the product is weighed.
    ///
    /// *Source*: Univ. of Missouri Extension, MU Guide G1272: rate of active ingredient divided by the strength.
    ///
    /// *Example*: 1.5 lb ai/ac at 4 lb ai/gal is 0.375 gal/ac, which is 3 pt/ac; 2 lb ai/ac at 80 % is 2.5 lb/ac.
    pub(super) fn product_rate(&self) -> ProductRate {
        match (self.rate, self.strength) {
            (IngredientRate::Area(rate), Strength::Liquid(strength)) => {
                ProductRate::LiquidPerArea(rate / strength)
            }
            (IngredientRate::Area(rate), Strength::Dry { share }) => ProductRate::DryPerArea(rate / share),
            (IngredientRate::Mix(rate), Strength::Liquid(strength)) => {
                ProductRate::LiquidInMix { share: rate.ratio_to(strength) }
            }
            (IngredientRate::Mix(rate), Strength::Dry { share }) => ProductRate::DryInMix(rate / share),
        }
    }

    /// The working of the product's rate, for those who want to see it.
    #[must_use]
    pub fn working(&self) -> Working {
        let working = Working::new(
            "product_from_active_ingredient",
            "product = active ingredient ÷ strength",
            "Univ. of Missouri Extension, MU Guide G1272",
        );
        let active = match self.rate {
            IngredientRate::Area(rate) => Amount::new(rate, Kind::MassRate),
            IngredientRate::Mix(rate) => Amount::new(rate, Kind::Density),
        };
        let strength = match self.strength {
            Strength::Liquid(density) => Arg::Amount(Amount::new(density, Kind::Density)),
            Strength::Dry { share } => Arg::Percent(share * 100.0),
        };
        let result = match self.product_rate() {
            ProductRate::LiquidPerArea(rate) => Arg::Amount(Amount::new(rate, Kind::ProductRate)),
            ProductRate::DryPerArea(rate) => Arg::Amount(Amount::new(rate, Kind::MassRate)),
            ProductRate::LiquidInMix { share } => Arg::Percent(share * 100.0),
            ProductRate::DryInMix(density) => Arg::Amount(Amount::new(density, Kind::Density)),
        };
        working.figure("active ingredient", Arg::Amount(active)).figure("strength", strength).result(result)
    }
}

/// Takes the mark `ai` or `ae` (also `a.i.`, `a.e.`) out of a text, if there is one.
pub(super) fn without_mark(text: &str) -> (String, Option<IngredientKind>) {
    // ASCII lower case keeps every place in the text where it is.
    let lower = text.to_ascii_lowercase();
    for (mark, kind) in MARKS {
        for (place, _) in lower.match_indices(mark) {
            let end = place + mark.len();
            let free_before = lower[..place].ends_with([' ', '\t']);
            let free_behind = lower[end..].is_empty() || lower[end..].starts_with([' ', '\t', '/']);
            if free_before && free_behind {
                return (format!("{}{}", text[..place].trim_end(), &text[end..]), Some(*kind));
            }
        }
    }
    (text.to_string(), None)
}

/// Reads a strength such as `4 lb/gal`, `480 g/L`, `80 %` or `800 g/kg`, its mark already taken out.
pub(super) fn strength(text: &str) -> Result<Strength, RateError> {
    let given = || text.trim().to_string();
    let not_one = || RateError::NotAStrength { given: given() };
    if let Ok(written) = units::quantity(text, Dimension::Density) {
        let density = Density::from_si(written.si());
        return if density.is_positive() { Ok(Strength::Liquid(density)) } else { Err(not_one()) };
    }
    let written = units::quantity(text, Dimension::Ratio).map_err(|_| not_one())?;
    let of_weight =
        written.unit().is_some_and(|unit| unit.text() == "%" || numerator_is(unit, Dimension::Mass));
    let share = written.si();
    if !of_weight || share <= 0.0 {
        return Err(not_one());
    }
    if share > 1.0 {
        Err(RateError::StrengthOverWhole { given: given() })
    } else {
        Ok(Strength::Dry { share })
    }
}

/// Whether what stands above the slash of a unit is of this dimension.
pub(super) fn numerator_is(unit: &Unit, dimension: Dimension) -> bool {
    numerator(unit).is_some_and(|above| above.dimension() == dimension)
}

/// The units a product is measured in, told by what stands above the slash.
pub(super) fn system_of(unit: &Unit) -> Option<UnitSystem> {
    let above = numerator(unit)?;
    let metric = ["L", "mL", "m3", "g", "kg"].contains(&above.text()) || above.text().starts_with("imp ");
    Some(if metric { UnitSystem::Metric } else { UnitSystem::Us })
}

fn numerator(unit: &Unit) -> Option<Unit> {
    let (above, _) = unit.text().split_once('/')?;
    Unit::named(above)
}

const MARKS: &[(&str, IngredientKind)] = &[
    ("a.i.", IngredientKind::Active),
    ("a.e.", IngredientKind::Acid),
    ("a.i", IngredientKind::Active),
    ("a.e", IngredientKind::Acid),
    ("ai", IngredientKind::Active),
    ("ae", IngredientKind::Acid),
];
