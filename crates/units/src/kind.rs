//! In which unit a figure is shown: US unless metric is asked for, never by where the computer thinks it is.

use crate::dimension::Dimension;
use crate::unit::Unit;

/// The two sets of units answers come in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum UnitSystem {
    /// gal/ac, mph, psi.
    #[default]
    Us,
    /// L/ha, km/h, bar.
    Metric,
}

/// What a figure stands for, which decides its unit. A spacing and a course are both lengths, but nobody
/// says that tips stand 1.67 ft apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A course or a boom: ft, m.
    Length,
    /// A spacing, a band, a move: in, cm.
    Width,
    /// ac, ha.
    Area,
    /// A tank: gal, L.
    Volume,
    /// What a cup or jug holds: fl oz, mL.
    Cup,
    /// lb, kg.
    Mass,
    /// s.
    Time,
    /// mph, km/h.
    Speed,
    /// gal/min, L/min.
    Flow,
    /// psi, bar.
    Pressure,
    /// lb/gal, kg/L.
    Density,
    /// gal/ac, L/ha.
    Rate,
    /// fl oz/ac, mL/ha: a liquid product.
    ProductRate,
    /// lb/ac, kg/ha.
    MassRate,
    /// ac/h, ha/h.
    WorkRate,
    /// deg.
    Angle,
    /// gal/1000 sq ft, L/100 sq m.
    SmallAreaRate,
}

impl Kind {
    /// The unit this kind of figure is shown in.
    #[must_use]
    pub fn unit(self, system: UnitSystem) -> Unit {
        let (us, metric) = match self {
            Self::Length => ("ft", "m"),
            Self::Width => ("in", "cm"),
            Self::Area => ("ac", "ha"),
            Self::Volume => ("gal", "L"),
            Self::Cup => ("fl oz", "mL"),
            Self::Mass => ("lb", "kg"),
            Self::Time => ("s", "s"),
            Self::Speed => ("mph", "km/h"),
            Self::Flow => ("gal/min", "L/min"),
            Self::Pressure => ("psi", "bar"),
            Self::Density => ("lb/gal", "kg/L"),
            Self::Rate => ("gal/ac", "L/ha"),
            Self::ProductRate => ("fl oz/ac", "mL/ha"),
            Self::MassRate => ("lb/ac", "kg/ha"),
            Self::WorkRate => ("ac/h", "ha/h"),
            Self::Angle => ("deg", "deg"),
            Self::SmallAreaRate => ("gal/1000 sq ft", "L/100 sq m"),
        };
        let name = match system {
            UnitSystem::Us => us,
            UnitSystem::Metric => metric,
        };
        // The names above are rows of the table (a test holds them to it), so the fallback never shows.
        Unit::named(name).unwrap_or_else(|| Unit::si(self.dimension()))
    }

    /// What it measures.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Length | Self::Width => Dimension::Length,
            Self::Area => Dimension::Area,
            Self::Volume | Self::Cup => Dimension::Volume,
            Self::Mass => Dimension::Mass,
            Self::Time => Dimension::Time,
            Self::Speed => Dimension::Speed,
            Self::Flow => Dimension::Flow,
            Self::Pressure => Dimension::Pressure,
            Self::Density => Dimension::Density,
            Self::Rate | Self::ProductRate | Self::SmallAreaRate => Dimension::VolumePerArea,
            Self::MassRate => Dimension::MassPerArea,
            Self::WorkRate => Dimension::WorkRate,
            Self::Angle => Dimension::Angle,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_has_its_units() {
        for kind in [
            Kind::Length,
            Kind::Width,
            Kind::Area,
            Kind::Volume,
            Kind::Cup,
            Kind::Mass,
            Kind::Time,
            Kind::Speed,
            Kind::Flow,
            Kind::Pressure,
            Kind::Density,
            Kind::Rate,
            Kind::ProductRate,
            Kind::MassRate,
            Kind::WorkRate,
            Kind::Angle,
            Kind::SmallAreaRate,
        ] {
            for system in [UnitSystem::Us, UnitSystem::Metric] {
                let unit = kind.unit(system);
                assert_eq!(unit.dimension(), kind.dimension(), "{kind:?}");
                assert_ne!(unit.text(), "SI", "{kind:?}");
            }
        }
    }
}
