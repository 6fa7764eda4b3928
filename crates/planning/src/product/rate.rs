//! A product's rate: on an area or in the mix, of a liquid or a dry product, and as it was written.

use units::{Area, Density, MassPerArea, Unit, UnitSystem, Volume, VolumePerArea};

use super::amount::{ProductAmount, ProductPerArea};
use super::parse;
use super::rate_error::RateError;
use super::strength::Ingredient;

/// A product's rate, ready to work with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ProductRate {
    /// A liquid on an area, as 3 pt/ac.
    LiquidPerArea(VolumePerArea),
    /// A dry product on an area, as 2 lb/ac.
    DryPerArea(MassPerArea),
    /// A liquid in the mix, as 2 pt/100 gal or 0.25 % v/v.
    LiquidInMix {
        /// Volume of product in a volume of mix: 0.0025 for 0.25 % v/v.
        share: f64,
    },
    /// A dry product in the mix, as 2 lb/100 gal.
    DryInMix(Density),
}

/// What a rate goes by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// The ground covered: what a tank needs depends on the gallons per acre.
    Area,
    /// The mix in the tank: what a tank needs does not depend on the gallons per acre.
    Mix,
}

/// How strong a mix is in one product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum InMix {
    /// A liquid product.
    Liquid {
        /// Volume of product in a volume of mix.
        share: f64,
    },
    /// A dry product, weight in a volume of mix.
    Dry(Density),
}

impl InMix {
    /// How many times `other` this is; `None` where one is a liquid and the other dry.
    #[must_use]
    pub fn ratio_to(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Liquid { share: one }, Self::Liquid { share: two }) => Some(one / two),
            (Self::Dry(one), Self::Dry(two)) => Some(one.ratio_to(two)),
            _ => None,
        }
    }
}

impl ProductRate {
    /// Returns the product in a volume of mix that covers an area.
    ///
    /// *Units*: any; a volume for liquids, a weight for dry products.
    ///
    /// *Assumptions*: `volume` is that of the whole mix, the product in it included; a percentage or an amount
    /// in 100 gal is of that mix.
    ///
    /// *Source*: Univ. of Missouri Extension, MU Guide G1272 (rate × acres in the tank); common practice.
    ///
    /// *Example*: 3 pt/ac in 500 gal that cover 25 ac is 75 pt; 2 lb/100 gal in 500 gal is 10 lb.
    #[must_use]
    pub fn amount_in(&self, volume: Volume, area: Area) -> ProductAmount {
        match *self {
            Self::LiquidPerArea(rate) => ProductAmount::Liquid(rate * area),
            Self::DryPerArea(rate) => ProductAmount::Dry(rate * area),
            Self::LiquidInMix { share } => ProductAmount::Liquid(volume * share),
            Self::DryInMix(density) => ProductAmount::Dry(density * volume),
        }
    }

    /// Returns the product for an area at a carrier rate.
    ///
    /// *Units* and *assumptions*: those of [`Self::amount_in`].
    ///
    /// *Source*: Oklahoma State Univ.-Oklahoma City, Calibrating Application Equipment (2013): 3.6 pt/ac on 25 ac is
    /// 11.25 gal.
    ///
    /// *Example*: 0.25 % v/v on 10 ac at 20 gal/ac is 0.5 gal.
    #[must_use]
    pub fn amount_for(&self, area: Area, carrier: VolumePerArea) -> ProductAmount {
        self.amount_in(carrier * area, area)
    }

    /// Returns the product on an area at a carrier rate.
    ///
    /// *Units*: volume or weight on an area.
    ///
    /// *Source*: common practice: what is in the mix times the mix on the area.
    ///
    /// *Example*: 1 gal/100 gal at 25 gal/ac is 0.25 gal/ac, which is 1 qt/ac.
    #[must_use]
    pub fn per_area(&self, carrier: VolumePerArea) -> ProductPerArea {
        match *self {
            Self::LiquidPerArea(rate) => ProductPerArea::Liquid(rate),
            Self::DryPerArea(rate) => ProductPerArea::Dry(rate),
            Self::LiquidInMix { share } => ProductPerArea::Liquid(carrier * share),
            Self::DryInMix(density) => ProductPerArea::Dry(density * carrier),
        }
    }

    /// Returns how strong the mix is at a carrier rate.
    ///
    /// *Units*: volume in volume, or weight in volume.
    ///
    /// *Source*: common practice: product on the area divided by the mix on the area.
    ///
    /// *Example*: 1 qt/ac at 10 gal/ac is 2.5 % v/v.
    #[must_use]
    pub fn in_mix(&self, carrier: VolumePerArea) -> InMix {
        match *self {
            Self::LiquidPerArea(rate) => InMix::Liquid { share: rate.ratio_to(carrier) },
            Self::DryPerArea(rate) => InMix::Dry(rate / carrier),
            Self::LiquidInMix { share } => InMix::Liquid { share },
            Self::DryInMix(density) => InMix::Dry(density),
        }
    }

    /// What the rate goes by.
    #[must_use]
    pub const fn basis(&self) -> Basis {
        match self {
            Self::LiquidPerArea(_) | Self::DryPerArea(_) => Basis::Area,
            Self::LiquidInMix { .. } | Self::DryInMix(_) => Basis::Mix,
        }
    }

    /// Whether it is a liquid.
    pub(crate) const fn is_liquid(&self) -> bool {
        matches!(self, Self::LiquidPerArea(_) | Self::LiquidInMix { .. })
    }
}

/// A rate as it was written, and what was understood of it.
#[derive(Clone, Debug, PartialEq)]
pub struct WrittenRate {
    pub(super) text: String,
    pub(super) rate: ProductRate,
    pub(super) ingredient: Option<Ingredient>,
    pub(super) measured_in: Option<UnitSystem>,
    pub(super) area_unit: Option<Unit>,
}

impl WrittenRate {
    /// Reads a rate such as `"3 pt/ac"`, `"2 lb/100 gal"`, `"0.25 % v/v"`, `"1.5 lb ai/ac at 4 lb ai/gal"` or
    /// `"2 lb ai/ac at 80 %"`; `per` may stand for the slash, and `ae` (acid equivalent) for `ai`.
    ///
    /// *Errors*: see [`RateError`]; each names what was given, and its hint what would do. `oz/ac` alone is
    /// refused with both readings, a percentage must say `v/v`.
    pub fn parse(text: &str) -> Result<Self, RateError> {
        parse::rate(text)
    }

    /// The text as given, without blanks at its ends.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The rate of the product itself.
    #[must_use]
    pub const fn rate(&self) -> &ProductRate {
        &self.rate
    }

    /// The active ingredient and its strength, where the rate was written that way.
    #[must_use]
    pub const fn ingredient(&self) -> Option<&Ingredient> {
        self.ingredient.as_ref()
    }

    /// The units the product is measured in, as far as the writing tells; a percentage does not.
    ///
    /// Imperial pints and gallons go with metric jugs: a US jug would mislead, and imperial ones are rare by now.
    #[must_use]
    pub const fn measured_in(&self) -> Option<UnitSystem> {
        self.measured_in
    }

    /// The unit to show the product on an area in: the label's own where it has one.
    #[must_use]
    pub const fn area_unit(&self) -> Option<&Unit> {
        self.area_unit.as_ref()
    }
}
