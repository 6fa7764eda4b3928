//! Numbers as people write them: 14, 14.5, .5, 14 1/2, 1/2, 14½; a point is the decimal mark.

use super::error::QuantityError;

/// A number found at the start of a text.
pub(crate) struct Found<'a> {
    /// The number as written.
    pub text: &'a str,
    /// Its value.
    pub value: f64,
    /// What stands behind it.
    pub rest: &'a str,
}

/// Returns the value of a plain number without a unit, such as `"14"`, `"14.5"` or `"14 1/2"`.
///
/// *Units*: none.
///
/// *Errors*: no number, a comma, a negative or too large number, anything behind the number.
pub fn decimal(text: &str) -> Result<f64, QuantityError> {
    let text = text.trim();
    let found = leading(text, text)?;
    if found.rest.trim().is_empty() {
        Ok(found.value)
    } else {
        Err(QuantityError::NotANumber { given: text.to_string() })
    }
}

/// Takes the number at the start of `text`; `given` is the whole input, for messages.
pub(crate) fn leading<'a>(text: &'a str, given: &str) -> Result<Found<'a>, QuantityError> {
    let not_a_number = || QuantityError::NotANumber { given: given.to_string() };
    let digits = digits_end(text);
    refuse_comma(text, digits, given)?;
    let first = &text[..digits];
    let mut rest = &text[digits..];

    // A vulgar fraction stands right behind the whole number or alone: 14½, ½.
    if let Some((share, after)) = vulgar(rest) {
        if first.contains('.') {
            return Err(not_a_number());
        }
        let whole = if first.is_empty() { 0.0 } else { value_of(first, given)? };
        return Ok(Found { text: used(text, after), value: whole + share, rest: after });
    }
    if first.is_empty() || first == "." {
        return Err(not_a_number());
    }
    let first_value = value_of(first, given)?;
    if let Some(under) = rest.trim_start().strip_prefix('/') {
        // "3/4" is a number; "4/min" is not ours to judge, the unit parser will refuse it.
        let under = under.trim_start();
        let end = digits_end(under);
        if end > 0 {
            rest = &under[end..];
            let value = fraction(first, &under[..end], given)?;
            return Ok(Found { text: used(text, rest), value, rest });
        }
    }
    // "14 1/2": a whole number, a gap, a fraction below one.
    let after_gap = rest.trim_start();
    if after_gap.len() < rest.len() && !first.contains('.') {
        if let Some((share, after)) = vulgar(after_gap) {
            return Ok(Found { text: used(text, after), value: first_value + share, rest: after });
        }
        let over_end = digits_end(after_gap);
        if over_end > 0
            && let Some(under) = after_gap[over_end..].trim_start().strip_prefix('/')
        {
            let under = under.trim_start();
            let under_end = digits_end(under);
            if under_end > 0 {
                let share = fraction(&after_gap[..over_end], &under[..under_end], given)?;
                if share >= 1.0 {
                    return Err(not_a_number());
                }
                let after = &under[under_end..];
                return Ok(Found { text: used(text, after), value: first_value + share, rest: after });
            }
        }
    }
    Ok(Found { text: used(text, rest), value: first_value, rest })
}

fn used<'a>(text: &'a str, rest: &str) -> &'a str {
    text[..text.len() - rest.len()].trim_end()
}

/// The end of digits with at most one point in them.
fn digits_end(text: &str) -> usize {
    let mut point_seen = false;
    for (place, sign) in text.char_indices() {
        match sign {
            '0'..='9' => {}
            '.' if !point_seen => point_seen = true,
            _ => return place,
        }
    }
    text.len()
}

/// "1,234" is one thousand or one and a bit; neither is guessed.
fn refuse_comma(text: &str, digits: usize, given: &str) -> Result<(), QuantityError> {
    let behind = &text[digits..];
    let follows_digit =
        behind.starts_with(',') && behind[1..].starts_with(|sign: char| sign.is_ascii_digit());
    if digits == 0 || !follows_digit {
        return Ok(());
    }
    let end =
        text.find(|sign: char| !sign.is_ascii_digit() && sign != ',' && sign != '.').unwrap_or(text.len());
    let written = text[..end].trim_end_matches([',', '.']);
    let as_thousands: String = written.chars().filter(|sign| *sign != ',').collect();
    let grouped =
        written.split('.').next().is_some_and(|whole| whole.split(',').skip(1).all(|group| group.len() == 3));
    let one_comma = written.matches(',').count() == 1 && !written.contains('.');
    let as_decimal = if one_comma { written.replace(',', ".") } else { as_thousands.clone() };
    Err(QuantityError::Comma {
        given: given.to_string(),
        as_thousands: if grouped { as_thousands } else { as_decimal.clone() },
        as_decimal,
    })
}

fn value_of(digits: &str, given: &str) -> Result<f64, QuantityError> {
    match digits.parse::<f64>() {
        Ok(value) if value.is_finite() && value < LARGEST => Ok(value),
        Ok(_) => Err(QuantityError::TooLarge { given: given.to_string() }),
        Err(_) => Err(QuantityError::NotANumber { given: given.to_string() }),
    }
}

fn fraction(over: &str, under: &str, given: &str) -> Result<f64, QuantityError> {
    if over.contains('.') || under.contains('.') {
        return Err(QuantityError::NotANumber { given: given.to_string() });
    }
    let under = value_of(under, given)?;
    if under == 0.0 {
        return Err(QuantityError::ZeroUnderLine { given: given.to_string() });
    }
    Ok(value_of(over, given)? / under)
}

fn vulgar(text: &str) -> Option<(f64, &str)> {
    let mut signs = text.chars();
    let sign = signs.next()?;
    VULGAR.iter().find(|(known, _)| *known == sign).map(|(_, value)| (*value, signs.as_str()))
}

/// Larger numbers than this are no reading of anything. Our own limit, far above any farm's gallons.
const LARGEST: f64 = 1e15;

/// The ready-made fractions of phone keyboards. Source: Unicode Standard, Number Forms and Latin-1.
const VULGAR: &[(char, f64)] = &[
    ('½', 0.5),
    ('¼', 0.25),
    ('¾', 0.75),
    ('⅓', 1.0 / 3.0),
    ('⅔', 2.0 / 3.0),
    ('⅛', 0.125),
    ('⅜', 0.375),
    ('⅝', 0.625),
    ('⅞', 0.875),
];
