//! What kind of thing a unit measures, and the units to name when a wrong one was written.

/// The kinds of quantity there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Dimension {
    /// Metres.
    Length,
    /// Square metres.
    Area,
    /// Cubic metres.
    Volume,
    /// Kilograms.
    Mass,
    /// Seconds.
    Time,
    /// Metres per second.
    Speed,
    /// Cubic metres per second.
    Flow,
    /// Pascals.
    Pressure,
    /// Kilograms per cubic metre.
    Density,
    /// Cubic metres per square metre.
    VolumePerArea,
    /// Kilograms per square metre.
    MassPerArea,
    /// Square metres per second.
    WorkRate,
    /// Radians.
    Angle,
    /// A number without a unit, as volume in volume.
    Ratio,
}

impl Dimension {
    /// The name for a message: "a length".
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Length => "a length",
            Self::Area => "an area",
            Self::Volume => "a volume",
            Self::Mass => "a weight",
            Self::Time => "a time",
            Self::Speed => "a speed",
            Self::Flow => "a flow",
            Self::Pressure => "a pressure",
            Self::Density => "a density",
            Self::VolumePerArea => "a volume on an area",
            Self::MassPerArea => "a weight on an area",
            Self::WorkRate => "an area in a time",
            Self::Angle => "an angle",
            Self::Ratio => "a share",
        }
    }

    /// The units to name to someone who wrote another one or none.
    #[must_use]
    pub const fn would_do(self) -> &'static str {
        match self {
            Self::Length => "ft, in, yd, m or cm",
            Self::Area => "ac, sq ft, ha or sq m",
            Self::Volume => "gal, qt, pt, fl oz, mL or L",
            Self::Mass => "lb, oz wt, g or kg",
            Self::Time => "s, min or h, or 1:05 for a minute and five seconds",
            Self::Speed => "mph, km/h, ft/s or m/s",
            Self::Flow => "gal/min, fl oz/min, L/min or mL/min",
            Self::Pressure => "psi, bar or kPa",
            Self::Density => "lb/gal, kg/L or g/L",
            Self::VolumePerArea => "gal/ac, pt/ac, fl oz/ac, gal/1000 sq ft or L/ha",
            Self::MassPerArea => "lb/ac, oz wt/ac or kg/ha",
            Self::WorkRate => "ac/h or ha/h",
            Self::Angle => "deg",
            Self::Ratio => "%",
        }
    }

    /// The dimension of `self` divided by `by`, where that is one we know.
    #[must_use]
    pub(crate) const fn over(self, by: Self) -> Option<Self> {
        match (self, by) {
            (Self::Length, Self::Time) => Some(Self::Speed),
            (Self::Volume, Self::Time) => Some(Self::Flow),
            (Self::Volume, Self::Area) => Some(Self::VolumePerArea),
            (Self::Mass, Self::Area) => Some(Self::MassPerArea),
            (Self::Mass, Self::Volume) => Some(Self::Density),
            (Self::Area, Self::Time) => Some(Self::WorkRate),
            (Self::Volume, Self::Volume) | (Self::Mass, Self::Mass) => Some(Self::Ratio),
            _ => None,
        }
    }
}
