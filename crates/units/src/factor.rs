//! Exact factors to SI, each with its source.
//!
//! Every value here is exact by definition or an exact product of such values; none is rounded. Rounded,
//! unsourced factors (an acre that is the old survey acre, a gallon cut after six digits) cause errors
//! that no test inside a program can see.

/// Metres in an international foot. Source: NIST SP 811 (2008) App. B.6, the 1959 agreement; exact.
pub const FOOT: f64 = 0.3048;
/// Metres in an inch. Source: NIST SP 811 (2008) App. B.6; exact, a twelfth of a foot.
pub const INCH: f64 = 0.0254;
/// Metres in a yard. Source: NIST SP 811 (2008) App. B.6; exact.
pub const YARD: f64 = 0.9144;
/// Metres in a mile of 5,280 international feet. Source: NIST SP 811 (2008) App. B.6; exact.
pub const MILE: f64 = 1609.344;
/// Square metres in a square foot. Source: the foot squared; exact.
pub const SQUARE_FOOT: f64 = 0.092_903_04;
/// Square metres in an international acre of 43,560 sq ft. Source: NIST HB 44 (2023) App. C; exact.
pub const ACRE: f64 = 4_046.856_422_4;
/// Square metres in a hectare. Source: SI Brochure, 9th ed. (2019), table 8; exact.
pub const HECTARE: f64 = 10_000.0;
/// Cubic metres in a litre. Source: SI Brochure, 9th ed. (2019), table 8; exact.
pub const LITRE: f64 = 0.001;
/// Cubic metres in a US gallon of 231 cubic inches. Source: NIST HB 44 (2023) App. C; exact.
pub const US_GALLON: f64 = 0.003_785_411_784;
/// Cubic metres in a US fluid ounce, 1/128 gallon. Source: NIST HB 44 (2023) App. C; exact.
pub const US_FLUID_OUNCE: f64 = 0.000_029_573_529_562_5;
/// Cubic metres in an imperial gallon of 4.54609 L. Source: UK Weights and Measures Act 1985, sch. 1; exact.
pub const IMPERIAL_GALLON: f64 = 0.004_546_09;
/// Cubic metres in an imperial fluid ounce, 1/160 gallon. Source: UK Weights and Measures Act 1985; exact.
pub const IMPERIAL_FLUID_OUNCE: f64 = 0.000_028_413_062_5;
/// Kilograms in an avoirdupois pound. Source: NIST SP 811 (2008) App. B.6, the 1959 agreement; exact.
pub const POUND: f64 = 0.453_592_37;
/// Kilograms in an ounce of weight, 1/16 lb. Source: NIST HB 44 (2023) App. C; exact.
pub const OUNCE_WEIGHT: f64 = 0.028_349_523_125;
/// Metres per second squared, standard gravity. Source: 3rd CGPM (1901); exact. Used in [`PSI`].
pub const STANDARD_GRAVITY: f64 = 9.806_65;
/// Pascals in a pound-force on a square inch. Source: pound × standard gravity ÷ inch², NIST SP 811 App. B.8.
pub const PSI: f64 = POUND * STANDARD_GRAVITY / (INCH * INCH);
/// Pascals in a bar. Source: SI Brochure, 8th ed. (2006), table 8; exact.
pub const BAR: f64 = 100_000.0;
/// Seconds in a minute. Source: SI Brochure, 9th ed. (2019), table 8; exact.
pub const MINUTE: f64 = 60.0;
/// Seconds in an hour. Source: SI Brochure, 9th ed. (2019), table 8; exact.
pub const HOUR: f64 = 3_600.0;
/// Radians in a degree. Source: SI Brochure, 9th ed. (2019), table 8; π/180.
pub const DEGREE: f64 = core::f64::consts::PI / 180.0;

#[cfg(test)]
mod tests {
    use super::*;

    fn close(left: f64, right: f64) {
        assert!((left / right - 1.0).abs() < 1e-15, "{left} is not {right}");
    }

    #[test]
    fn factors_hang_together_as_the_handbook_says() {
        // NIST Handbook 44 (2023) Appendix C: the definitions that tie the units to one another.
        close(US_GALLON, 231.0 * INCH * INCH * INCH);
        close(US_FLUID_OUNCE * 128.0, US_GALLON);
        close(ACRE, 43_560.0 * SQUARE_FOOT);
        close(MILE, 5_280.0 * FOOT);
        close(POUND, 16.0 * OUNCE_WEIGHT);
        close(IMPERIAL_FLUID_OUNCE * 160.0, IMPERIAL_GALLON);
    }

    #[test]
    fn psi_is_the_long_value() {
        // NIST SP 811 (2008) App. B.8: 6.894 757 E+03 Pa (printed to seven digits).
        assert!((PSI - 6_894.757).abs() < 5e-4);
    }
}
