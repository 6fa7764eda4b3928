//! Prices as written, and what a product costs on an area.

use units::{Area, Dimension, Mass, Quantity, UnitSystem, Volume, VolumePerArea};

use super::error::{CostError, MoneyError};
use super::money::Money;
use crate::product::{Product, ProductAmount, ProductPerArea};
use crate::text::for_message;

/// A price: money for so much of something.
#[derive(Clone, Debug, PartialEq)]
pub struct Price {
    text: String,
    money: Money,
    goods: PriceFor,
}

/// What a price is for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PriceFor {
    /// So much ground, as "$25/ac".
    Area(Area),
    /// So much liquid, as "18.50 $/gal" or "$300/2.5 gal".
    Volume(Volume),
    /// So much weight, as "4 $/lb" or "€90/25 kg".
    Mass(Mass),
}

impl Price {
    /// Reads a price: money, a slash or "per", and what it is for: `"$25/ac"`, `"18.50 $/gal"`, `"$300 per 2.5 gal"`.
    ///
    /// *Units*: any area, volume or weight; `oz` alone is refused.
    ///
    /// *Errors*: those of [`Money::parse`]; nothing behind the slash, or something else than ground, liquid or weight.
    pub fn parse(text: &str) -> Result<Self, MoneyError> {
        let given = text.trim();
        let split = given.split_once('/').or_else(|| {
            let place = given.to_ascii_lowercase().find(" per ")?;
            Some((&given[..place], &given[place + " per ".len()..]))
        });
        if given.is_empty() {
            return Err(MoneyError::Empty);
        }
        let no_goods = || MoneyError::NoGoods { given: for_message(given) };
        let (money, goods) = split.ok_or_else(no_goods)?;
        let goods = goods.trim();
        // "/gal" is for one gallon, "/2.5 gal" for a jug.
        let counted = goods.starts_with(|sign: char| sign.is_ascii_digit() || "½¼¾.".contains(sign));
        let goods = if counted { goods.to_string() } else { format!("1 {goods}") };
        let letters = goods.trim_start_matches(|sign: char| !sign.is_alphabetic()).to_ascii_lowercase();
        if matches!(letters.trim_end_matches('.'), "oz" | "ounce" | "ounces") {
            return Err(MoneyError::WhichOunce { given: for_message(given) });
        }
        let size = |dimension| units::quantity(&goods, dimension).map(|written| written.si()).ok();
        let goods = if let Some(area) = size(Dimension::Area) {
            PriceFor::Area(Area::from_si(area))
        } else if let Some(volume) = size(Dimension::Volume) {
            PriceFor::Volume(Volume::from_si(volume))
        } else if let Some(mass) = size(Dimension::Mass) {
            PriceFor::Mass(Mass::from_si(mass))
        } else {
            return Err(no_goods());
        };
        let positive = match goods {
            PriceFor::Area(area) => area.is_positive(),
            PriceFor::Volume(volume) => volume.is_positive(),
            PriceFor::Mass(mass) => mass.is_positive(),
        };
        if !positive {
            return Err(no_goods());
        }
        Ok(Self { text: given.to_string(), money: Money::parse(money)?, goods })
    }

    /// The text as given.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The money.
    #[must_use]
    pub const fn money(&self) -> &Money {
        &self.money
    }

    /// What it is for.
    #[must_use]
    pub const fn goods(&self) -> PriceFor {
        self.goods
    }

    /// Returns the cost of an amount of product.
    ///
    /// *Units*: any.
    ///
    /// *Errors*: a price by volume for a product by weight, or the reverse, or a price by area.
    ///
    /// *Source*: definition: price × amount ÷ what the price is for.
    ///
    /// *Example*: 3 gal at $300 for 2.5 gal is $360.
    pub fn of(&self, amount: ProductAmount) -> Result<Money, CostError> {
        match (self.goods, amount) {
            (PriceFor::Volume(size), ProductAmount::Liquid(volume)) => {
                Ok(self.money.times(volume.ratio_to(size)))
            }
            (PriceFor::Mass(size), ProductAmount::Dry(mass)) => Ok(self.money.times(mass.ratio_to(size))),
            (PriceFor::Area(_), _) => Err(CostError::PriceByArea { price: self.text.clone() }),
            (PriceFor::Volume(_) | PriceFor::Mass(_), _) => {
                Err(CostError::OtherMeasure { price: self.text.clone() })
            }
        }
    }

    /// Returns what a product at its rate costs on an area.
    ///
    /// *Units*: any. A price by area is taken as it stands.
    ///
    /// *Assumptions*: `carrier` is the rate the tank is mixed for; only products by the mix depend on it.
    ///
    /// *Errors*: a carrier rate of nothing; a price by volume for a product by weight, or the reverse.
    ///
    /// *Source*: definition: price × product on the area.
    ///
    /// *Example*: 3 pt/ac at $40/gal is $15/ac.
    pub fn on_area(&self, product: &Product, carrier: VolumePerArea) -> Result<CostPerArea, CostError> {
        if !carrier.is_positive() {
            return Err(CostError::NoRate { rate: carrier });
        }
        if let PriceFor::Area(area) = self.goods {
            return Ok(CostPerArea::new(self.money.clone(), area));
        }
        let rate: ProductPerArea = product.rate().rate().per_area(carrier);
        // Any area would do; one acre keeps the digits as people would work it out.
        let acre = Area::acres(1.0);
        Ok(CostPerArea::new(self.of(rate.on(acre))?, acre))
    }
}

/// What product costs on an area.
#[derive(Clone, Debug, PartialEq)]
pub struct CostPerArea {
    money: Money,
    area: Area,
}

impl CostPerArea {
    /// So much money for so much ground, which must be more than nothing ([`Price::parse`] sees to it).
    pub(super) const fn new(money: Money, area: Area) -> Self {
        Self { money, area }
    }

    /// Reads a cost such as `"$25/ac"`.
    ///
    /// *Errors*: those of [`Price::parse`]; a price that is not by area.
    pub fn parse(text: &str) -> Result<Self, MoneyError> {
        let price = Price::parse(text)?;
        match price.goods {
            PriceFor::Area(area) => Ok(Self { money: price.money, area }),
            PriceFor::Volume(_) | PriceFor::Mass(_) => {
                Err(MoneyError::NotByArea { given: for_message(text.trim()) })
            }
        }
    }

    /// The cost of an area.
    #[must_use]
    pub fn on(&self, area: Area) -> Money {
        self.money.times(area.ratio_to(self.area))
    }

    /// A share of it: 0.2 for 20 %.
    #[must_use]
    pub fn times(&self, share: f64) -> Self {
        Self { money: self.money.times(share), area: self.area }
    }

    /// Two products on the same ground.
    ///
    /// *Errors*: two different moneys.
    pub fn plus(&self, other: &Self) -> Result<Self, MoneyError> {
        Ok(Self { money: self.money.plus(&other.on(self.area))?, area: self.area })
    }

    /// For reading: "$25.00/ac" or "€61.78/ha".
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match system {
            UnitSystem::Us => format!("{}/ac", self.on(Area::acres(1.0))),
            UnitSystem::Metric => format!("{}/ha", self.on(Area::hectares(1.0))),
        }
    }
}
