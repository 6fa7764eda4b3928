//! Units people write: the simple ones as a table, quotients such as `gal/1000 sq ft` put together from it.

use crate::dimension::Dimension;
use crate::factor;

/// One row of the table of simple units.
#[derive(Clone, Copy, Debug)]
pub struct UnitDefinition {
    /// The spelling we print.
    pub symbol: &'static str,
    /// Other spellings understood, in lower case without full stops.
    pub spellings: &'static [&'static str],
    /// What it measures.
    pub dimension: Dimension,
    /// How many SI units it is.
    pub si_factor: f64,
}

/// A unit: simple, or a quotient, with the text we print for it.
#[derive(Clone, Debug, PartialEq)]
pub struct Unit {
    text: String,
    dimension: Dimension,
    si_factor: f64,
}

impl Unit {
    /// Looks up a unit by any of its spellings. `None` where there is no such unit.
    ///
    /// *Example*: `Unit::named("GAL/AC")` prints as `gal/ac`; `fl oz` and `fl. oz.` are the same.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let wanted = normal_spelling(text);
        if let Some(simple) = simple(&wanted) {
            return Some(simple);
        }
        if let Some((_, whole)) = SHORT_FORMS.iter().find(|(short, _)| *short == wanted) {
            return Self::named(whole);
        }
        let (above, below) = wanted.split_once('/')?;
        let above = simple(above.trim())?;
        let (count, below) = leading_count(below.trim());
        let below = simple(below.trim())?;
        let counted = if count == 1 { String::new() } else { format!("{count} ") };
        Some(Self {
            text: format!("{}/{counted}{}", above.text, below.text),
            dimension: above.dimension.over(below.dimension)?,
            si_factor: above.si_factor / (f64::from(count) * below.si_factor),
        })
    }

    /// The SI unit of a dimension, for the one place that must have some unit.
    pub(crate) fn si(dimension: Dimension) -> Self {
        Self { text: "SI".to_string(), dimension, si_factor: 1.0 }
    }

    /// The spelling we print.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// What it measures.
    #[must_use]
    pub const fn dimension(&self) -> Dimension {
        self.dimension
    }

    /// How many SI units it is.
    #[must_use]
    pub const fn si_factor(&self) -> f64 {
        self.si_factor
    }
}

/// The table of simple units.
#[must_use]
pub const fn base_units() -> &'static [UnitDefinition] {
    UNITS
}

/// Lower case, single spaces, no full stops after letters, `²` as `2`.
pub(crate) fn normal_spelling(text: &str) -> String {
    let lower = text.to_lowercase().replace('²', "2").replace('³', "3");
    let undotted: String = lower.chars().filter(|sign| *sign != '.' && *sign != '^').collect();
    let words: Vec<&str> = undotted.split_whitespace().collect();
    words.join(" ").replace(" /", "/").replace("/ ", "/").replace(" per ", "/")
}

fn simple(wanted: &str) -> Option<Unit> {
    UNITS.iter().find(|unit| unit.symbol.to_lowercase() == wanted || unit.spellings.contains(&wanted)).map(
        |unit| Unit { text: unit.symbol.to_string(), dimension: unit.dimension, si_factor: unit.si_factor },
    )
}

/// Splits "1000 sq ft" (also "1,000 sq ft", a fixed way of writing it) into the count and the rest.
fn leading_count(text: &str) -> (u32, &str) {
    let end = text.find(|sign: char| !sign.is_ascii_digit() && sign != ',').unwrap_or(text.len());
    let digits: String = text[..end].chars().filter(char::is_ascii_digit).collect();
    match digits.parse::<u32>() {
        Ok(count) if count > 0 => (count, &text[end..]),
        _ => (1, text),
    }
}

/// Short forms of quotients that the trade writes as one word.
const SHORT_FORMS: &[(&str, &str)] = &[
    ("gpm", "gal/min"),
    ("gpa", "gal/ac"),
    ("mph", "mi/h"),
    ("kph", "km/h"),
    ("kmh", "km/h"),
    ("fps", "ft/s"),
];

const fn unit(
    symbol: &'static str,
    spellings: &'static [&'static str],
    dimension: Dimension,
    si_factor: f64,
) -> UnitDefinition {
    UnitDefinition { symbol, spellings, dimension, si_factor }
}

/// The simple units. Factors and their sources stand in [`factor`]; multiples are by definition
/// (4 qt, 8 pt and 128 fl oz to the gallon: NIST HB 44 (2023) App. C).
const UNITS: &[UnitDefinition] = &[
    unit("ft", &["foot", "feet", "'", "’"], Dimension::Length, factor::FOOT),
    unit("in", &["inch", "inches", "\"", "”"], Dimension::Length, factor::INCH),
    unit("yd", &["yard", "yards"], Dimension::Length, factor::YARD),
    unit("mi", &["mile", "miles"], Dimension::Length, factor::MILE),
    unit("m", &["metre", "metres", "meter", "meters"], Dimension::Length, 1.0),
    unit("cm", &["centimetre", "centimetres", "centimeter", "centimeters"], Dimension::Length, 0.01),
    unit("mm", &["millimetre", "millimetres", "millimeter", "millimeters"], Dimension::Length, 0.001),
    unit("km", &["kilometre", "kilometres", "kilometer", "kilometers"], Dimension::Length, 1000.0),
    unit("ac", &["acre", "acres"], Dimension::Area, factor::ACRE),
    unit("sq ft", &["sqft", "ft2", "square foot", "square feet"], Dimension::Area, factor::SQUARE_FOOT),
    unit("sq yd", &["sqyd", "yd2", "square yards"], Dimension::Area, 9.0 * factor::SQUARE_FOOT),
    unit("ha", &["hectare", "hectares"], Dimension::Area, factor::HECTARE),
    unit("sq m", &["sqm", "m2", "square metres", "square meters"], Dimension::Area, 1.0),
    unit("gal", &["gals", "gallon", "gallons", "us gal"], Dimension::Volume, factor::US_GALLON),
    unit("qt", &["qts", "quart", "quarts"], Dimension::Volume, factor::US_GALLON / 4.0),
    unit("pt", &["pts", "pint", "pints"], Dimension::Volume, factor::US_GALLON / 8.0),
    unit(
        "fl oz",
        &["floz", "fluid ounce", "fluid ounces", "us fl oz"],
        Dimension::Volume,
        factor::US_FLUID_OUNCE,
    ),
    unit(
        "imp gal",
        &["imperial gal", "imperial gallons", "uk gal"],
        Dimension::Volume,
        factor::IMPERIAL_GALLON,
    ),
    unit(
        "imp qt",
        &["imperial qt", "imperial quarts", "uk qt"],
        Dimension::Volume,
        factor::IMPERIAL_GALLON / 4.0,
    ),
    unit(
        "imp pt",
        &["imperial pt", "imperial pints", "uk pt"],
        Dimension::Volume,
        factor::IMPERIAL_GALLON / 8.0,
    ),
    unit("imp fl oz", &["imperial fl oz", "uk fl oz"], Dimension::Volume, factor::IMPERIAL_FLUID_OUNCE),
    unit("L", &["litre", "litres", "liter", "liters", "lt"], Dimension::Volume, factor::LITRE),
    unit(
        "mL",
        &["millilitre", "millilitres", "milliliter", "milliliters", "cc"],
        Dimension::Volume,
        factor::LITRE / 1000.0,
    ),
    unit("m3", &["cubic metres", "cubic meters"], Dimension::Volume, 1.0),
    unit("lb", &["lbs", "pound", "pounds"], Dimension::Mass, factor::POUND),
    unit(
        "oz wt",
        &["oz", "ozwt", "ounce", "ounces", "dry oz", "oz dry", "wt oz"],
        Dimension::Mass,
        factor::OUNCE_WEIGHT,
    ),
    unit("g", &["gram", "grams"], Dimension::Mass, 0.001),
    unit("kg", &["kilo", "kilos", "kilogram", "kilograms"], Dimension::Mass, 1.0),
    unit("s", &["sec", "secs", "second", "seconds"], Dimension::Time, 1.0),
    unit("min", &["mins", "minute", "minutes"], Dimension::Time, factor::MINUTE),
    unit("h", &["hr", "hrs", "hour", "hours"], Dimension::Time, factor::HOUR),
    unit("mph", &["mi/h"], Dimension::Speed, factor::MILE / factor::HOUR),
    unit("psi", &["lb/sq in", "lbf/in2"], Dimension::Pressure, factor::PSI),
    unit("bar", &["bars"], Dimension::Pressure, factor::BAR),
    unit("kPa", &["kilopascal", "kilopascals"], Dimension::Pressure, 1000.0),
    unit("Pa", &["pascal", "pascals"], Dimension::Pressure, 1.0),
    unit("MPa", &["megapascal", "megapascals"], Dimension::Pressure, 1_000_000.0),
    unit("deg", &["degree", "degrees", "°"], Dimension::Angle, factor::DEGREE),
    unit("rad", &["radian", "radians"], Dimension::Angle, 1.0),
    unit("%", &["percent", "pct", "per cent"], Dimension::Ratio, 0.01),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quotients_are_put_together() {
        for (written, printed) in [
            ("gal/ac", "gal/ac"),
            ("GPA", "gal/ac"),
            ("gal / 1,000 sq ft", "gal/1000 sq ft"),
            ("fl. oz./min", "fl oz/min"),
            ("lb/100 gal", "lb/100 gal"),
            ("L/ha", "L/ha"),
            ("km/h", "km/h"),
            ("gallons per acre", "gal/ac"),
        ] {
            assert_eq!(Unit::named(written).map(|unit| unit.text), Some(printed.to_string()), "{written}");
        }
        assert!(Unit::named("psi/gal").is_none());
        assert!(Unit::named("furlong").is_none());
    }

    #[test]
    fn every_spelling_is_found_once() {
        let mut seen = std::collections::BTreeSet::new();
        for unit in UNITS {
            for spelling in unit.spellings.iter().copied().chain([unit.symbol]) {
                assert!(seen.insert(spelling.to_lowercase()), "{spelling} stands twice");
            }
        }
    }

    #[test]
    fn one_us_gallon_per_acre_in_metric() {
        // Pesticide Environmental Stewardship, Measurements, Conversions, and Formulas: 1 gal/ac = 9.35 L/ha.
        let (us, metric) = (Unit::named("gal/ac"), Unit::named("L/ha"));
        let (us, metric) = (us.expect("known"), metric.expect("known"));
        assert!((us.si_factor() / metric.si_factor() - 9.35).abs() < 0.005);
    }
}
