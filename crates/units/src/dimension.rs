//! What kind of thing a unit measures, and the units to name when a wrong one was written.

use crate::amount::Arg;

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

/// One row a dimension: its stable code, its name for a message, and the units that would do.
macro_rules! dimensions {
    ($($dimension:ident: $code:literal, $name:literal, $would_do:literal;)*) => {
        impl Dimension {
            /// Every dimension.
            pub const ALL: &[Self] = &[$(Self::$dimension),*];

            /// The name for a message: "a length".
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$dimension => $name),* }
            }

            /// The units to name to someone who wrote another one or none.
            #[must_use]
            pub const fn would_do(self) -> &'static str {
                match self { $(Self::$dimension => $would_do),* }
            }

            /// The name, to be said in any language.
            #[must_use]
            pub const fn word(self) -> Arg {
                match self {
                    $(Self::$dimension => Arg::word(concat!("dimension_", $code), $name)),*
                }
            }

            /// The units that would do, to be said in any language.
            #[must_use]
            pub const fn would_do_word(self) -> Arg {
                match self {
                    $(Self::$dimension => Arg::word(concat!("would_do_", $code), $would_do)),*
                }
            }
        }
    };
}

dimensions! {
    Length: "length", "a length", "ft, in, yd, m or cm";
    Area: "area", "an area", "ac, sq ft, ha or sq m";
    Volume: "volume", "a volume", "gal, qt, pt, fl oz, mL or L";
    Mass: "mass", "a weight", "lb, oz wt, g or kg";
    Time: "time", "a time", "s, min or h, or 1:05 for a minute and five seconds";
    Speed: "speed", "a speed", "mph, km/h, ft/s or m/s";
    Flow: "flow", "a flow", "gal/min, fl oz/min, L/min or mL/min";
    Pressure: "pressure", "a pressure", "psi, bar or kPa";
    Density: "density", "a density", "lb/gal, kg/L or g/L";
    VolumePerArea: "volume_per_area", "a volume on an area", "gal/ac, pt/ac, fl oz/ac, gal/1000 sq ft or L/ha";
    MassPerArea: "mass_per_area", "a weight on an area", "lb/ac, oz wt/ac or kg/ha";
    WorkRate: "work_rate", "an area in a time", "ac/h or ha/h";
    Angle: "angle", "an angle", "deg";
    Ratio: "ratio", "a share", "%";
}

impl Dimension {
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
