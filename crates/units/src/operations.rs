//! The products and quotients of quantities that mean something in the yard; no others compile.

use crate::quantity::{
    Area, Density, Flow, Length, Mass, MassPerArea, Quantity, Speed, Time, Volume, VolumePerArea, WorkRate,
};

/// `$left * $right = $product`, and the two divisions that undo it.
macro_rules! product {
    ($($left:ident * $right:ident = $product:ident;)+) => {$(
        impl core::ops::Mul<$right> for $left {
            type Output = $product;
            fn mul(self, other: $right) -> $product { $product::from_si(self.si() * other.si()) }
        }
        impl core::ops::Div<$right> for $product {
            type Output = $left;
            fn div(self, other: $right) -> $left { $left::from_si(self.si() / other.si()) }
        }
        impl core::ops::Div<$left> for $product {
            type Output = $right;
            fn div(self, other: $left) -> $right { $right::from_si(self.si() / other.si()) }
        }
    )+};
}

product! {
    Speed * Time = Length;
    Flow * Time = Volume;
    WorkRate * Time = Area;
    Speed * Length = WorkRate;
    VolumePerArea * Area = Volume;
    VolumePerArea * WorkRate = Flow;
    MassPerArea * Area = Mass;
    Density * Volume = Mass;
    Density * VolumePerArea = MassPerArea;
}

impl core::ops::Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area::from_si(self.si() * other.si())
    }
}

impl core::ops::Div<Length> for Area {
    type Output = Length;
    fn div(self, other: Length) -> Length {
        Length::from_si(self.si() / other.si())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rate_is_flow_over_speed_times_width() {
        // The classic 5,940: gal/ac = 5940 × gal/min ÷ (mph × in). Illinois Ext., "60 Ways Farmers Can
        // Protect Surface Water", no. 55; exact from the definitions of the units.
        let rate = Flow::gallons_per_minute(0.2) / (Speed::miles_per_hour(5.0) * Length::inches(20.0));
        assert!((rate.as_gallons_per_acre() - 5940.0 * 0.2 / 100.0).abs() < 1e-12);
    }
}
