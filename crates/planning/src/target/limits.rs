//! What is asked for: the label's carrier and product, the intended rate and how far it may be missed.

use units::{Quantity, VolumePerArea};

use super::error::TargetError;
use crate::given::positive;
use crate::product::{Basis, Product, WrittenRate};

/// What is asked for. Where a limit is given more than once, the stricter one counts.
#[derive(Clone, Debug, PartialEq)]
pub struct Target {
    least_carrier: Option<VolumePerArea>,
    intended: Option<VolumePerArea>,
    limit: RateLimit,
    products: Vec<ProductTarget>,
}

impl Default for Target {
    fn default() -> Self {
        Self::new()
    }
}

impl Target {
    /// Nothing asked for yet, with the usual limit of ±5 % for the rate.
    #[must_use]
    pub const fn new() -> Self {
        Self { least_carrier: None, intended: None, limit: RateLimit::usual(), products: Vec::new() }
    }

    /// Adds a label's least carrier rate; of several the largest counts.
    ///
    /// *Errors*: a rate of nothing.
    pub fn least_carrier(mut self, rate: VolumePerArea) -> Result<Self, TargetError> {
        let rate = positive(rate, |rate| TargetError::NoRate { rate })?;
        self.least_carrier = Some(self.least_carrier.map_or(rate, |before| before.max(rate)));
        Ok(self)
    }

    /// Sets the rate that is meant.
    ///
    /// *Errors*: a rate of nothing.
    pub fn intended(mut self, rate: VolumePerArea) -> Result<Self, TargetError> {
        self.intended = Some(positive(rate, |rate| TargetError::NoRate { rate })?);
        Ok(self)
    }

    /// Adds a limit for missing the intended rate; of several (the usual ±5 % among them) the smallest counts.
    #[must_use]
    pub fn limit(mut self, limit: RateLimit) -> Self {
        if limit.share < self.limit.share {
            self.limit = limit;
        }
        self
    }

    /// Adds a product.
    #[must_use]
    pub fn product(mut self, product: ProductTarget) -> Self {
        self.products.push(product);
        self
    }

    /// The least carrier rate asked for.
    #[must_use]
    pub const fn carrier_at_least(&self) -> Option<VolumePerArea> {
        self.least_carrier
    }

    /// The rate that is meant.
    #[must_use]
    pub const fn meant(&self) -> Option<VolumePerArea> {
        self.intended
    }

    /// How far the intended rate may be missed.
    #[must_use]
    pub const fn rate_limit(&self) -> &RateLimit {
        &self.limit
    }

    /// The products.
    #[must_use]
    pub fn products(&self) -> &[ProductTarget] {
        &self.products
    }
}

/// How far a rate may be from the intended one, either way, and who says so. Exactly on it is within.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RateLimit {
    share: f64,
    source: &'static str,
}

impl RateLimit {
    /// ±5 %.
    ///
    /// *Source*: Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016), and others, which attribute it
    /// to USDA and EPA.
    #[must_use]
    pub const fn usual() -> Self {
        Self {
            share: 0.05,
            source: "Ohio State Univ. Extension, FABE-520 (2016), which attributes ±5 % to USDA and EPA",
        }
    }

    /// A limit of one's own, in percent, with who sets it ("our own limit", "the programme's limit").
    ///
    /// *Errors*: not more than 0 and less than 100 %.
    pub fn own(percent: f64, source: &'static str) -> Result<Self, TargetError> {
        if percent > 0.0 && percent < 100.0 {
            Ok(Self { share: percent / 100.0, source })
        } else {
            Err(TargetError::Limit { percent })
        }
    }

    /// The limit as a share of the rate: 0.05 for 5 %.
    #[must_use]
    pub const fn share(&self) -> f64 {
        self.share
    }

    /// Who sets it.
    #[must_use]
    pub const fn source(&self) -> &'static str {
        self.source
    }
}

/// A product with the label's least and most.
#[derive(Clone, Debug, PartialEq)]
pub struct ProductTarget {
    product: Product,
    least: Vec<WrittenRate>,
    most: Vec<WrittenRate>,
}

impl ProductTarget {
    /// A product at the rate it is mixed at, with no limit yet.
    #[must_use]
    pub const fn new(product: Product) -> Self {
        Self { product, least: Vec::new(), most: Vec::new() }
    }

    /// Adds the least that a label asks for.
    ///
    /// *Errors*: a weight for a liquid or a volume for a dry product; more than the most.
    pub fn at_least(mut self, limit: WrittenRate) -> Result<Self, TargetError> {
        self.fits(&limit)?;
        self.least.push(limit);
        self.in_order()
    }

    /// Adds the most that a label allows.
    ///
    /// *Errors*: a weight for a liquid or a volume for a dry product; less than the least.
    pub fn at_most(mut self, limit: WrittenRate) -> Result<Self, TargetError> {
        self.fits(&limit)?;
        self.most.push(limit);
        self.in_order()
    }

    /// The product as it is mixed.
    #[must_use]
    pub const fn product(&self) -> &Product {
        &self.product
    }

    /// The strictest least that goes by the ground, or by the mix.
    #[must_use]
    pub fn least(&self, basis: Basis) -> Option<&WrittenRate> {
        strictest(&self.least, basis, |one, other| one > other)
    }

    /// The strictest most that goes by the ground, or by the mix.
    #[must_use]
    pub fn most(&self, basis: Basis) -> Option<&WrittenRate> {
        strictest(&self.most, basis, |one, other| one < other)
    }

    fn fits(&self, limit: &WrittenRate) -> Result<(), TargetError> {
        if limit.rate().is_liquid() == self.product.rate().rate().is_liquid() {
            return Ok(());
        }
        Err(TargetError::OtherKind {
            name: self.product.name().to_string(),
            rate: self.product.rate().text().to_string(),
            limit: limit.text().to_string(),
        })
    }

    fn in_order(self) -> Result<Self, TargetError> {
        for basis in [Basis::Area, Basis::Mix] {
            if let (Some(least), Some(most)) = (self.least(basis), self.most(basis))
                && size(least) > size(most)
            {
                return Err(TargetError::LeastOverMost {
                    name: self.product.name().to_string(),
                    least: least.text().to_string(),
                    most: most.text().to_string(),
                });
            }
        }
        Ok(self)
    }
}

fn strictest(limits: &[WrittenRate], basis: Basis, stricter: fn(f64, f64) -> bool) -> Option<&WrittenRate> {
    limits
        .iter()
        .filter(|limit| limit.rate().basis() == basis)
        .reduce(|kept, next| if stricter(size(next), size(kept)) { next } else { kept })
}

/// A number to compare limits of one product by; all of one basis are in one unit, since liquid and dry never meet.
fn size(limit: &WrittenRate) -> f64 {
    use crate::product::ProductRate;
    match limit.rate() {
        ProductRate::LiquidPerArea(rate) => rate.si(),
        ProductRate::DryPerArea(rate) => rate.si(),
        ProductRate::LiquidInMix { share } => *share,
        ProductRate::DryInMix(density) => density.si(),
    }
}
