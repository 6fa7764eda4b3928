//! A quantity is one or more numbers with units: "14 fl oz", "16 ft 8 in", "1 min 5 s".

use super::LONGEST;
use super::error::QuantityError;
use super::number;
use super::special::clock_time;
use crate::dimension::Dimension;
use crate::unit::{Unit, normal_spelling};
use crate::written::{Term, Written};

/// Returns what was written, checked to be `wanted` and not below nothing.
///
/// *Units*: any of the dimension, mixed (`"16 ft 8 in"`); times also as `1:05`.
///
/// *Errors*: every case of [`QuantityError`]; each names what was given and the units that would do.
pub fn quantity(text: &str, wanted: Dimension) -> Result<Written, QuantityError> {
    let written = signed_quantity(text, wanted)?;
    if written.is_negative() {
        return Err(QuantityError::Negative { given: written.text().to_string(), wanted });
    }
    Ok(written)
}

/// As [`quantity`], but a minus sign in front is taken: for errors and differences.
pub fn signed_quantity(text: &str, wanted: Dimension) -> Result<Written, QuantityError> {
    let given = text.trim();
    if given.is_empty() {
        return Err(QuantityError::Empty { wanted });
    }
    if given.len() > LONGEST {
        return Err(QuantityError::TooLong { length: given.chars().count() });
    }
    if wanted == Dimension::Time && given.contains(':') {
        return clock_time(given);
    }
    let (negative, mut rest) = match given.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, given.strip_prefix('+').unwrap_or(given)),
    };
    let mut terms: Vec<Term> = Vec::new();
    while !rest.is_empty() {
        let found = number::leading(rest, given)?;
        let (name, after) = split_unit(found.rest);
        let unit = unit_of(name, given, wanted)?;
        if terms.last().is_some_and(|last: &Term| last.unit().si_factor() <= unit.si_factor()) {
            return Err(QuantityError::PartsOutOfOrder { given: given.to_string() });
        }
        terms.push(Term::new(found.text, found.value, unit));
        rest = after.trim_start();
    }
    if terms.is_empty() {
        return Err(QuantityError::NotANumber { given: given.to_string() });
    }
    Ok(Written::new(given, negative, wanted, terms))
}

fn unit_of(name: &str, given: &str, wanted: Dimension) -> Result<Unit, QuantityError> {
    let given = || given.to_string();
    let name = name.trim();
    if name.is_empty() {
        return Err(QuantityError::MissingUnit { given: given(), wanted });
    }
    let unit = Unit::named(name);
    if let Some(unit) = unit.as_ref().filter(|unit| unit.dimension() == wanted) {
        return Ok(unit.clone());
    }
    let spelling = normal_spelling(name);
    let bare_ounce = spelling == "oz" || spelling.starts_with("oz/");
    let liquid = matches!(wanted, Dimension::Volume | Dimension::Flow | Dimension::VolumePerArea);
    if bare_ounce && liquid {
        return Err(QuantityError::WeightOunce { given: given(), wanted });
    }
    let Some(unit) = unit else {
        return Err(QuantityError::UnknownUnit { given: given(), unit: name.to_string(), wanted });
    };
    Err(QuantityError::WrongUnit { given: given(), found: unit.dimension(), wanted })
}

/// Splits the unit from the next part. A digit starts the next part unless it belongs to the unit: behind a
/// slash ("lb/100 gal") or as an exponent ("ft2").
fn split_unit(text: &str) -> (&str, &str) {
    let mut before = ' ';
    let mut after_slash = false;
    for (place, sign) in text.char_indices() {
        let starts_number = sign.is_ascii_digit() || "½¼¾⅓⅔⅛⅜⅝⅞".contains(sign);
        if starts_number && !after_slash {
            let exponent =
                before.is_alphabetic() && matches!(sign, '2' | '3') && ends_word(&text[place + 1..]);
            if !exponent {
                return (&text[..place], &text[place..]);
            }
        }
        if sign == '/' {
            after_slash = true;
        } else if !sign.is_whitespace() && !sign.is_ascii_digit() && sign != ',' {
            after_slash = false;
        }
        before = sign;
    }
    (text, "")
}

fn ends_word(text: &str) -> bool {
    !text.starts_with(|sign: char| sign.is_alphanumeric() || sign == '.')
}
