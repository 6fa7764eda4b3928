//! Measured amounts in words: "9 gal 3 pt", "22 1/4 fl oz", "2 lb 8 oz wt", "12.9 L".

/// Quarters of a fluid ounce. Below a quart all in ounces; whole quarts as quarts, else pints and ounces.
pub(super) fn quarter_fluid_ounces(count: f64) -> String {
    let (gallons, rest) = split(count, QUARTERS_PER_GALLON);
    let mut parts = Vec::new();
    if gallons > 0.0 {
        parts.push(format!("{gallons:.0} gal"));
    }
    if rest > 0.0 && rest % QUARTERS_PER_QUART == 0.0 {
        parts.push(format!("{:.0} qt", rest / QUARTERS_PER_QUART));
    } else if gallons == 0.0 && rest < QUARTERS_PER_QUART {
        parts.push(ounces(rest, "fl oz"));
    } else {
        let (pints, rest) = split(rest, QUARTERS_PER_PINT);
        if pints > 0.0 {
            parts.push(format!("{pints:.0} pt"));
        }
        if rest > 0.0 {
            parts.push(ounces(rest, "fl oz"));
        }
    }
    parts.join(" ")
}

/// Quarters of an ounce of weight: pounds and ounces.
pub(super) fn quarter_ounces_of_weight(count: f64) -> String {
    let (pounds, rest) = split(count, QUARTERS_PER_POUND);
    let mut parts = Vec::new();
    if pounds > 0.0 {
        parts.push(format!("{pounds:.0} lb"));
    }
    if rest > 0.0 {
        parts.push(ounces(rest, "oz wt"));
    }
    parts.join(" ")
}

/// Millilitres or grams: from a thousand on in the larger unit, with a decimal point.
pub(super) fn thousandths(count: f64, large: &str, small: &str) -> String {
    if count < 1000.0 {
        return format!("{count:.0} {small}");
    }
    let number = format!("{:.3}", count / 1000.0);
    format!("{} {large}", number.trim_end_matches('0').trim_end_matches('.'))
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

fn ounces(quarters: f64, unit: &str) -> String {
    let (whole, rest) = split(quarters, 4.0);
    let fraction = match rest {
        1.0 => "1/4",
        2.0 => "1/2",
        3.0 => "3/4",
        _ => "",
    };
    match (whole > 0.0, fraction.is_empty()) {
        (true, true) => format!("{whole:.0} {unit}"),
        (true, false) => format!("{whole:.0} {fraction} {unit}"),
        (false, _) => format!("{fraction} {unit}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
            assert_eq!(quarter_fluid_ounces(quarters), text);
        }
        for (quarters, text) in
            [(2.0, "1/2 oz wt"), (160.0, "2 lb 8 oz wt"), (64.0, "1 lb"), (65.0, "1 lb 1/4 oz wt")]
        {
            assert_eq!(quarter_ounces_of_weight(quarters), text);
        }
        for (count, text) in [(295.0, "295 mL"), (12_900.0, "12.9 L"), (1295.0, "1.295 L"), (4000.0, "4 L")] {
            assert_eq!(thousandths(count, "L", "mL"), text);
        }
    }
}
