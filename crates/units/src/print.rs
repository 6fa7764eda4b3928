//! Printing numbers: canonically for files and JSON, with sensible digits for people.

use crate::quantity::Quantity;
use crate::unit::Unit;

/// The canonical text of a quantity in a unit, which reads back as the same quantity.
///
/// *Units*: the number is given to 15 significant digits, which drops the last-bit noise of converting
/// (204.1875 ft, not 204.18749999999997 ft) and loses nothing that a reading could hold.
///
/// *Example*: `canonical(Length::feet(204.1875), &ft)` is `"204.1875 ft"`.
#[must_use]
pub fn canonical<Q: Quantity>(quantity: Q, unit: &Unit) -> String {
    format!("{} {}", tidy_digits(quantity.in_unit(unit)), unit.text())
}

/// A number rounded to 15 significant digits: what goes into JSON and canonical text.
#[must_use]
pub fn tidy_digits(value: f64) -> f64 {
    if !value.is_finite() || value == 0.0 {
        return value;
    }
    // Going by decimal text is exact and the same on every machine; a power of ten would not be.
    format!("{value:.14e}").parse().unwrap_or(value)
}

/// A number for a person to read, to three significant digits but never short of whole units.
///
/// *Example*: 204.1875 reads `204`, 14.5667 reads `14.6`, 0.26936 reads `0.269`.
#[must_use]
pub fn sensible(value: f64) -> String {
    to_decimals(value, decimals_for(value.abs() / 100.0))
}

/// A doubt for a person to read, to two significant digits but never short of whole units.
///
/// *Source*: JCGM 100:2008 (GUM) 7.2.6: at most two digits.
///
/// *Example*: 2.94 reads `2.9`, 12.6 reads `13`, 0.283 reads `0.28`.
#[must_use]
pub fn sensible_doubt(value: f64) -> String {
    to_decimals(value, decimals_for(value.abs() / 10.0))
}

/// A number for a person to read, to the digit that its doubt (half of its 95 % range) still allows; a nought there
/// is kept, because it was known.
///
/// *Example*: 14.5667 ± 0.4 reads `14.6`; 14.5667 ± 3 reads `15`; 13.62 ± 0.02 reads `13.62`; 14 ± 0.4 reads `14.0`.
#[must_use]
pub fn sensible_with_doubt(value: f64, either_way: f64) -> String {
    if !either_way.is_finite() || either_way <= 0.0 {
        return sensible(value);
    }
    if value == 0.0 {
        return "0".to_string();
    }
    signed(&fixed(value, decimals_for(either_way).min(decimals_for(value.abs() / 1000.0))))
}

/// A deviation in percent with its sign, with as many decimals as keep it on its side of the limit.
///
/// *Example*: 10.04 against a limit of 10 reads `+10.04 %`, not `+10 %` beside the word "outside".
#[must_use]
pub fn percent_text(percent: f64, limit: Option<f64>) -> String {
    if !percent.is_finite() {
        return "?".to_string();
    }
    // Below, on or above the limit: a source may count "exactly on it" either way, so all three are kept apart.
    let side = |value: f64, limit: f64| {
        if (value.abs() - limit).abs() <= limit * 1e-9 {
            0
        } else if value.abs() < limit {
            -1
        } else {
            1
        }
    };
    for decimals in 0..6 {
        let text = format!("{:.decimals$}", percent.abs());
        let shown: f64 = text.parse().unwrap_or(percent);
        let honest = limit.is_none_or(|limit| side(shown, limit) == side(percent, limit));
        let enough = decimals > 0 || percent.abs() >= 3.0 || percent.abs() < 0.05;
        if honest && enough {
            let sign = if shown == 0.0 {
                ""
            } else if percent < 0.0 {
                "−"
            } else {
                "+"
            };
            return format!("{sign}{text} %");
        }
    }
    format!("{percent:+} %")
}

/// How many decimals show a number of this size with its first digit.
fn decimals_for(size: f64) -> usize {
    let mut step = 1.0;
    for decimals in 0..9 {
        if size >= step {
            return decimals;
        }
        step /= 10.0;
    }
    9
}

fn to_decimals(value: f64, decimals: usize) -> String {
    let text = fixed(value, decimals);
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    signed(text)
}

fn fixed(value: f64, decimals: usize) -> String {
    format!("{value:.decimals$}")
}

/// The text with a true minus sign, and nothing without one.
fn signed(text: &str) -> String {
    let nothing = text.bytes().all(|sign| matches!(sign, b'-' | b'0' | b'.'));
    text.replace('-', if nothing { "" } else { "−" })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Length;

    #[test]
    fn noise_of_converting_is_dropped() {
        let ft = Unit::named("ft").expect("known");
        assert_eq!(canonical(Length::feet(204.1875), &ft), "204.1875 ft");
        assert_eq!(canonical(Length::inches(20.0), &ft), "1.66666666666667 ft");
    }

    #[test]
    fn digits_a_person_wants() {
        for (value, text) in [
            (204.1875, "204"),
            (14.5667, "14.6"),
            (0.26936, "0.269"),
            (20.0, "20"),
            (13.0, "13"),
            (1234.6, "1235"),
            (0.0, "0"),
            (-0.001, "−0.001"),
            (5.04, "5.04"),
        ] {
            assert_eq!(sensible(value), text);
        }
        assert_eq!(sensible_with_doubt(14.5667, 0.4), "14.6");
        assert_eq!(sensible_with_doubt(14.5667, 3.0), "15");
        assert_eq!(sensible_with_doubt(13.62, 0.02), "13.62");
    }

    #[test]
    fn a_nought_that_the_doubt_allows_is_kept() {
        let range = [13.3, 14.0].map(|end| sensible_with_doubt(end, 0.35));
        assert_eq!(range, ["13.3", "14.0"]);
        assert_eq!(
            (sensible_with_doubt(8.0, 0.05), sensible_with_doubt(7.98, 0.05)),
            ("8.00".into(), "7.98".into())
        );
        assert_eq!(
            (sensible_with_doubt(0.0, 0.4), sensible_with_doubt(-0.01, 0.4)),
            ("0".into(), "0.0".into())
        );
        assert_eq!(sensible(14.0), "14");
    }

    #[test]
    fn a_doubt_has_two_digits() {
        for (doubt, text) in [(2.94, "2.9"), (12.6, "13"), (0.283, "0.28"), (2.0, "2"), (198.0, "198")] {
            assert_eq!(sensible_doubt(doubt), text);
        }
    }

    #[test]
    fn a_rounded_percentage_never_contradicts_its_limit() {
        assert_eq!(percent_text(10.04, Some(10.0)), "+10.04 %");
        assert_eq!(percent_text(9.96, Some(10.0)), "+9.96 %");
        assert_eq!(percent_text(-12.6, Some(10.0)), "−13 %");
        assert_eq!(percent_text(10.0, Some(10.0)), "+10 %");
        assert_eq!(percent_text(-0.4, None), "−0.4 %");
        assert_eq!(percent_text(0.01, None), "0 %");
    }
}
