//! One type for each quantity, SI inside, so that a rate cannot be handed in where a width is wanted.

use crate::dimension::Dimension;
use crate::factor;
use crate::parse::{self, QuantityError};
use crate::unit::Unit;

/// What every quantity can do: be made from its SI value, give it back, be read in a unit, be parsed.
pub trait Quantity: Copy + PartialOrd + core::fmt::Debug {
    /// The dimension this type stands for.
    const DIMENSION: Dimension;

    /// Makes the quantity from its value in the SI unit of [`Self::DIMENSION`].
    fn from_si(value: f64) -> Self;

    /// The value in the SI unit of [`Self::DIMENSION`].
    fn si(self) -> f64;

    /// The value in `unit`, which must be of this dimension (another dimension gives NaN).
    fn in_unit(self, unit: &Unit) -> f64 {
        if unit.dimension() == Self::DIMENSION { self.si() / unit.si_factor() } else { f64::NAN }
    }

    /// Reads what a person wrote, such as `"16 ft 8 in"`.
    ///
    /// *Errors*: no unit, a unit of another dimension, an unknown unit, a comma, a negative or too large number.
    fn parse(text: &str) -> Result<Self, QuantityError> {
        parse::quantity(text, Self::DIMENSION).map(|written| Self::from_si(written.si()))
    }

    /// Whether the value is a positive finite number, as a course, a time or a width must be.
    fn is_positive(self) -> bool {
        self.si() > 0.0 && self.si().is_finite()
    }
}

macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident { $($(#[$unit_doc:meta])* $unit:ident / $reader:ident = $factor:expr;)+ })+) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0); // the number nought, no source needed

            $(
                $(#[$unit_doc])*
                #[must_use]
                pub const fn $unit(value: f64) -> Self { Self(value * $factor) }

                /// The number of these units.
                #[must_use]
                pub const fn $reader(self) -> f64 { self.0 / $factor }
            )+

            /// How many times `other` this is.
            #[must_use]
            pub const fn ratio_to(self, other: Self) -> f64 { self.0 / other.0 }

            /// The size of it without its sign.
            #[must_use]
            pub const fn abs(self) -> Self { Self(self.0.abs()) }

            /// The smaller of two.
            #[must_use]
            pub const fn min(self, other: Self) -> Self { Self(self.0.min(other.0)) }

            /// The larger of two.
            #[must_use]
            pub const fn max(self, other: Self) -> Self { Self(self.0.max(other.0)) }
        }

        impl Quantity for $name {
            const DIMENSION: Dimension = Dimension::$name;
            fn from_si(value: f64) -> Self { Self(value) }
            fn si(self) -> f64 { self.0 }
        }

        impl core::ops::Add for $name { type Output = Self; fn add(self, other: Self) -> Self { Self(self.0 + other.0) } }
        impl core::ops::Sub for $name { type Output = Self; fn sub(self, other: Self) -> Self { Self(self.0 - other.0) } }
        impl core::ops::Neg for $name { type Output = Self; fn neg(self) -> Self { Self(-self.0) } }
        impl core::ops::Mul<f64> for $name { type Output = Self; fn mul(self, times: f64) -> Self { Self(self.0 * times) } }
        impl core::ops::Div<f64> for $name { type Output = Self; fn div(self, by: f64) -> Self { Self(self.0 / by) } }
        impl core::iter::Sum for $name { fn sum<I: Iterator<Item = Self>>(items: I) -> Self { Self(items.map(|item| item.0).sum()) } }
    )+};
}

quantities! {
    /// A length: a course, a boom, a spacing, a height.
    Length {
        /// From metres.
        metres / as_metres = 1.0;
        /// From centimetres.
        centimetres / as_centimetres = 0.01;
        /// From feet.
        feet / as_feet = factor::FOOT;
        /// From inches.
        inches / as_inches = factor::INCH;
    }
    /// An area of ground.
    Area {
        /// From square metres.
        square_metres / as_square_metres = 1.0;
        /// From acres.
        acres / as_acres = factor::ACRE;
        /// From hectares.
        hectares / as_hectares = factor::HECTARE;
        /// From square feet.
        square_feet / as_square_feet = factor::SQUARE_FOOT;
    }
    /// A volume of liquid.
    Volume {
        /// From cubic metres.
        cubic_metres / as_cubic_metres = 1.0;
        /// From litres.
        litres / as_litres = factor::LITRE;
        /// From millilitres.
        millilitres / as_millilitres = factor::LITRE / 1000.0;
        /// From US gallons.
        gallons / as_gallons = factor::US_GALLON;
        /// From US fluid ounces.
        fluid_ounces / as_fluid_ounces = factor::US_FLUID_OUNCE;
    }
    /// A mass; what a scale shows.
    Mass {
        /// From kilograms.
        kilograms / as_kilograms = 1.0;
        /// From grams.
        grams / as_grams = 0.001;
        /// From pounds.
        pounds / as_pounds = factor::POUND;
        /// From ounces of weight.
        ounces / as_ounces = factor::OUNCE_WEIGHT;
    }
    /// A length of time.
    Time {
        /// From seconds.
        seconds / as_seconds = 1.0;
        /// From minutes.
        minutes / as_minutes = factor::MINUTE;
        /// From hours.
        hours / as_hours = factor::HOUR;
    }
    /// A speed over the ground.
    Speed {
        /// From metres per second.
        metres_per_second / as_metres_per_second = 1.0;
        /// From miles per hour.
        miles_per_hour / as_miles_per_hour = factor::MILE / factor::HOUR;
        /// From kilometres per hour.
        kilometres_per_hour / as_kilometres_per_hour = 1000.0 / factor::HOUR;
    }
    /// A flow of liquid: volume in a time.
    Flow {
        /// From cubic metres per second.
        cubic_metres_per_second / as_cubic_metres_per_second = 1.0;
        /// From US gallons per minute.
        gallons_per_minute / as_gallons_per_minute = factor::US_GALLON / factor::MINUTE;
        /// From litres per minute.
        litres_per_minute / as_litres_per_minute = factor::LITRE / factor::MINUTE;
    }
    /// A pressure above that of the air.
    Pressure {
        /// From pascals.
        pascals / as_pascals = 1.0;
        /// From pounds-force per square inch.
        psi / as_psi = factor::PSI;
        /// From bar.
        bar / as_bar = factor::BAR;
    }
    /// A density, or a mass of product in a volume of carrier.
    Density {
        /// From kilograms per cubic metre.
        kilograms_per_cubic_metre / as_kilograms_per_cubic_metre = 1.0;
        /// From kilograms per litre.
        kilograms_per_litre / as_kilograms_per_litre = 1.0 / factor::LITRE;
        /// From pounds per US gallon.
        pounds_per_gallon / as_pounds_per_gallon = factor::POUND / factor::US_GALLON;
    }
    /// A volume put on an area: the application rate, or a liquid product's rate. Not a length.
    VolumePerArea {
        /// From cubic metres per square metre.
        cubic_metres_per_square_metre / as_cubic_metres_per_square_metre = 1.0;
        /// From US gallons per acre.
        gallons_per_acre / as_gallons_per_acre = factor::US_GALLON / factor::ACRE;
        /// From litres per hectare.
        litres_per_hectare / as_litres_per_hectare = factor::LITRE / factor::HECTARE;
    }
    /// A mass put on an area: a dry product's rate, or active ingredient.
    MassPerArea {
        /// From kilograms per square metre.
        kilograms_per_square_metre / as_kilograms_per_square_metre = 1.0;
        /// From pounds per acre.
        pounds_per_acre / as_pounds_per_acre = factor::POUND / factor::ACRE;
        /// From kilograms per hectare.
        kilograms_per_hectare / as_kilograms_per_hectare = 1.0 / factor::HECTARE;
    }
    /// The area covered in a time: speed times width.
    WorkRate {
        /// From square metres per second.
        square_metres_per_second / as_square_metres_per_second = 1.0;
        /// From acres per hour.
        acres_per_hour / as_acres_per_hour = factor::ACRE / factor::HOUR;
        /// From hectares per hour.
        hectares_per_hour / as_hectares_per_hour = factor::HECTARE / factor::HOUR;
    }
    /// An angle, as of a spray fan.
    Angle {
        /// From radians.
        radians / as_radians = 1.0;
        /// From degrees.
        degrees / as_degrees = factor::DEGREE;
    }
}
