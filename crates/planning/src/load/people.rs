//! Measured amounts as people say them, in steps of jugs and cups: 9 gal 3 pt, 22 1/4 fl oz, 2 lb 8 oz wt, 12.9 L.

use units::Unit;

/// Quarters of a fluid ounce. Below a quart all in ounces; whole quarts as quarts, else pints and ounces.
pub(super) fn quarter_fluid_ounces(count: f64) -> Vec<(String, Unit)> {
    let (gallons, rest) = split(count, QUARTERS_PER_GALLON);
    let mut parts = Vec::new();
    parts.extend(part(whole(gallons), "gal"));
    if rest > 0.0 && rest % QUARTERS_PER_QUART == 0.0 {
        parts.extend(part(whole(rest / QUARTERS_PER_QUART), "qt"));
    } else if gallons == 0.0 && rest < QUARTERS_PER_QUART {
        parts.extend(part(quarters(rest), "fl oz"));
    } else {
        let (pints, rest) = split(rest, QUARTERS_PER_PINT);
        parts.extend(part(whole(pints), "pt"));
        parts.extend(part(quarters(rest), "fl oz"));
    }
    parts
}

/// Quarters of an ounce of weight: pounds and ounces.
pub(super) fn quarter_ounces_of_weight(count: f64) -> Vec<(String, Unit)> {
    let (pounds, rest) = split(count, QUARTERS_PER_POUND);
    part(whole(pounds), "lb").into_iter().chain(part(quarters(rest), "oz wt")).collect()
}

/// Millilitres or grams: from a thousand on in the larger unit, with a decimal point.
pub(super) fn thousandths(count: f64, large: &str, small: &str) -> Vec<(String, Unit)> {
    if count < 1000.0 {
        return part(whole(count), small).into_iter().collect();
    }
    let number = format!("{:.3}", count / 1000.0);
    let number = number.trim_end_matches('0').trim_end_matches('.').to_string();
    part(Some(number), large).into_iter().collect()
}

// Source of these four: NIST HB 44 (2023) App. C; exact.
const QUARTERS_PER_GALLON: f64 = 512.0;
const QUARTERS_PER_QUART: f64 = 128.0;
const QUARTERS_PER_PINT: f64 = 64.0;
const QUARTERS_PER_POUND: f64 = 64.0;

fn split(count: f64, size: f64) -> (f64, f64) {
    let whole = (count / size).floor();
    (whole, count - whole * size)
}

/// A number of a unit, where there is any of it. The units are all in the table, which the tests hold to.
fn part(number: Option<String>, unit: &str) -> Option<(String, Unit)> {
    number.zip(Unit::named(unit))
}

fn whole(count: f64) -> Option<String> {
    (count > 0.0).then(|| format!("{count:.0}"))
}

/// Quarters as whole ones and a fraction: "22 1/4".
fn quarters(count: f64) -> Option<String> {
    let (ones, rest) = split(count, 4.0);
    let fraction = match rest {
        1.0 => Some("1/4"),
        2.0 => Some("1/2"),
        3.0 => Some("3/4"),
        _ => None,
    };
    match (whole(ones), fraction) {
        (Some(ones), Some(fraction)) => Some(format!("{ones} {fraction}")),
        (ones, fraction) => ones.or(fraction.map(str::to_string)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use units::{Arg, UnitSystem};

    fn said(parts: Vec<(String, Unit)>) -> String {
        Arg::Parts(parts).text(UnitSystem::Us)
    }

    #[test]
    fn amounts_read_as_people_measure_them() {
        for (quarters, text) in [
            (1.0, "1/4 fl oz"),
            (88.0, "22 fl oz"),
            (89.0, "22 1/4 fl oz"),
            (127.0, "31 3/4 fl oz"),
            (128.0, "1 qt"),
            (130.0, "2 pt 1/2 fl oz"),
            (192.0, "3 pt"),
            (512.0, "1 gal"),
            (516.0, "1 gal 1 fl oz"),
            (4800.0, "9 gal 3 pt"),
            (768.0, "1 gal 2 qt"),
        ] {
            assert_eq!(said(quarter_fluid_ounces(quarters)), text);
        }
        for (quarters, text) in
            [(2.0, "1/2 oz wt"), (160.0, "2 lb 8 oz wt"), (64.0, "1 lb"), (65.0, "1 lb 1/4 oz wt")]
        {
            assert_eq!(said(quarter_ounces_of_weight(quarters)), text);
        }
        for (count, text) in [(295.0, "295 mL"), (12_900.0, "12.9 L"), (1295.0, "1.295 L"), (4000.0, "4 L")] {
            assert_eq!(said(thousandths(count, "L", "mL")), text);
        }
    }
}
