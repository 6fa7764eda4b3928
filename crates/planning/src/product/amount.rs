//! How much of a product: a volume or a weight, in all or on an area, alone or with its 95 % range.

use units::{
    Amount, Area, Kind, Mass, MassPerArea, Quantity, Ranged, Unit, UnitSystem, Volume, VolumePerArea,
};

/// An amount of product, as it is measured: a liquid by volume, a dry one by weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ProductAmount {
    /// Measured in a jug.
    Liquid(Volume),
    /// Measured on a scale.
    Dry(Mass),
}

impl ProductAmount {
    /// This many times as much.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        match self {
            Self::Liquid(volume) => Self::Liquid(volume * factor),
            Self::Dry(mass) => Self::Dry(mass * factor),
        }
    }

    /// Both together; `None` where one is a liquid and the other dry.
    #[must_use]
    pub fn plus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Liquid(one), Self::Liquid(two)) => Some(Self::Liquid(one + two)),
            (Self::Dry(one), Self::Dry(two)) => Some(Self::Dry(one + two)),
            _ => None,
        }
    }

    /// How many times `other` this is; `None` where one is a liquid and the other dry.
    #[must_use]
    pub fn ratio_to(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Liquid(one), Self::Liquid(two)) => Some(one.ratio_to(two)),
            (Self::Dry(one), Self::Dry(two)) => Some(one.ratio_to(two)),
            _ => None,
        }
    }

    /// The value in SI: m³ or kg.
    #[must_use]
    pub(crate) fn si(self) -> f64 {
        match self {
            Self::Liquid(volume) => volume.si(),
            Self::Dry(mass) => mass.si(),
        }
    }

    /// For showing, in the unit people measure this much in: gal or fl oz, lb or oz wt, L or mL, kg or g.
    #[must_use]
    pub fn shown(self, system: UnitSystem) -> Amount {
        let unit = self.unit(system);
        match self {
            Self::Liquid(volume) => shown_in(Amount::new(volume, Kind::Volume), unit.as_ref()),
            Self::Dry(mass) => shown_in(Amount::new(mass, Kind::Mass), unit.as_ref()),
        }
    }

    /// The unit this much is shown in.
    #[must_use]
    pub fn unit(self, system: UnitSystem) -> Option<Unit> {
        let (large, small) = match (self, system) {
            (Self::Liquid(_), UnitSystem::Us) => ("gal", "fl oz"),
            (Self::Liquid(_), UnitSystem::Metric) => ("L", "mL"),
            (Self::Dry(_), UnitSystem::Us) => ("lb", "oz wt"),
            (Self::Dry(_), UnitSystem::Metric) => ("kg", "g"),
        };
        // A hair below one gallon from arithmetic is still one gallon.
        let large = Unit::named(large).filter(|unit| self.si() >= unit.si_factor() * (1.0 - 1e-9));
        large.or_else(|| Unit::named(small))
    }
}

/// An amount of product on an area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ProductPerArea {
    /// A liquid, by volume.
    Liquid(VolumePerArea),
    /// A dry product, by weight.
    Dry(MassPerArea),
}

impl ProductPerArea {
    /// The amount on an area.
    #[must_use]
    pub fn on(self, area: Area) -> ProductAmount {
        match self {
            Self::Liquid(rate) => ProductAmount::Liquid(rate * area),
            Self::Dry(rate) => ProductAmount::Dry(rate * area),
        }
    }

    /// This many times as much on the area.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        match self {
            Self::Liquid(rate) => Self::Liquid(rate * factor),
            Self::Dry(rate) => Self::Dry(rate * factor),
        }
    }

    /// How many times `other` this is; `None` where one is a liquid and the other dry.
    #[must_use]
    pub fn ratio_to(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Liquid(one), Self::Liquid(two)) => Some(one.ratio_to(two)),
            (Self::Dry(one), Self::Dry(two)) => Some(one.ratio_to(two)),
            _ => None,
        }
    }

    /// For showing, in a unit of choice (the label's); the usual unit of product rates where there is none.
    #[must_use]
    pub fn shown(self, unit: Option<&Unit>) -> Amount {
        RangedPerArea::exact(self).shown(unit)
    }
}

/// An amount of product with its 95 % range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RangedAmount {
    /// A liquid.
    Liquid(Ranged<Volume>),
    /// A dry product.
    Dry(Ranged<Mass>),
}

impl RangedAmount {
    /// The amount itself.
    #[must_use]
    pub fn value(&self) -> ProductAmount {
        match self {
            Self::Liquid(ranged) => ProductAmount::Liquid(ranged.value),
            Self::Dry(ranged) => ProductAmount::Dry(ranged.value),
        }
    }

    /// For showing, in the unit people measure this much in.
    #[must_use]
    pub fn shown(&self, system: UnitSystem) -> Amount {
        let unit = self.value().unit(system);
        match self {
            Self::Liquid(ranged) => shown_in(Amount::ranged(ranged, Kind::Volume), unit.as_ref()),
            Self::Dry(ranged) => shown_in(Amount::ranged(ranged, Kind::Mass), unit.as_ref()),
        }
    }
}

/// An amount of product on an area with its 95 % range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RangedPerArea {
    /// A liquid.
    Liquid(Ranged<VolumePerArea>),
    /// A dry product.
    Dry(Ranged<MassPerArea>),
}

impl RangedPerArea {
    /// A rate that is taken as it stands.
    #[must_use]
    pub fn exact(rate: ProductPerArea) -> Self {
        match rate {
            ProductPerArea::Liquid(rate) => Self::Liquid(Ranged::exact(rate)),
            ProductPerArea::Dry(rate) => Self::Dry(Ranged::exact(rate)),
        }
    }

    /// The rate itself.
    #[must_use]
    pub fn value(&self) -> ProductPerArea {
        match self {
            Self::Liquid(ranged) => ProductPerArea::Liquid(ranged.value),
            Self::Dry(ranged) => ProductPerArea::Dry(ranged.value),
        }
    }

    /// The low end of the range.
    #[must_use]
    pub fn low(&self) -> ProductPerArea {
        match self {
            Self::Liquid(ranged) => ProductPerArea::Liquid(ranged.low),
            Self::Dry(ranged) => ProductPerArea::Dry(ranged.low),
        }
    }

    /// The high end of the range.
    #[must_use]
    pub fn high(&self) -> ProductPerArea {
        match self {
            Self::Liquid(ranged) => ProductPerArea::Liquid(ranged.high),
            Self::Dry(ranged) => ProductPerArea::Dry(ranged.high),
        }
    }

    /// For showing, in a unit of choice; the usual unit of product rates where there is none.
    #[must_use]
    pub fn shown(&self, unit: Option<&Unit>) -> Amount {
        match self {
            Self::Liquid(ranged) => shown_in(Amount::ranged(ranged, Kind::ProductRate), unit),
            Self::Dry(ranged) => shown_in(Amount::ranged(ranged, Kind::MassRate), unit),
        }
    }
}

/// Shows an amount in a unit if that is of its own kind.
fn shown_in(amount: Amount, unit: Option<&Unit>) -> Amount {
    match unit {
        Some(unit) if unit.dimension() == amount.unit(UnitSystem::Us).dimension() => amount.shown_in(unit),
        _ => amount,
    }
}
