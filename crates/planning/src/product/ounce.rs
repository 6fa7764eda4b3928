//! "oz" alone in a product's rate: an ounce of liquid or of weight, which is never guessed.

/// What a rate written in bare ounces may mean, once as liquid and once as weight.
pub(super) struct Ounces {
    pub liquid: String,
    pub weight: String,
}

/// The two readings of a rate such as `"4 oz/ac"`; `None` where its ounces say what they are.
pub(super) fn bare_ounces(rate: &str) -> Option<Ounces> {
    let (above, below) = rate.split_once('/').map_or((rate, None), |(above, below)| (above, Some(below)));
    // A fraction has a slash of its own: "1/2 oz/ac" is split once more behind it.
    if let Some(below) = below
        && above.trim_end().ends_with(|sign: char| sign.is_ascii_digit())
    {
        let behind = bare_ounces(below)?;
        return Some(Ounces {
            liquid: format!("{above}/{}", behind.liquid),
            weight: format!("{above}/{}", behind.weight),
        });
    }
    let above = above.trim_end();
    let letters = above.trim_start_matches(|sign: char| !sign.is_alphabetic()).to_ascii_lowercase();
    let word = letters.trim_end_matches('.');
    if !matches!(word, "oz" | "ozs" | "ounce" | "ounces") {
        return None;
    }
    let number = above[..above.len() - letters.len()].trim_end();
    let rest = below.map_or(String::new(), |below| format!("/{}", below.trim()));
    Some(Ounces { liquid: format!("{number} fl oz{rest}"), weight: format!("{number} oz wt{rest}") })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bare_ounces_are_found_and_named_ones_are_left() {
        for (given, liquid, weight) in [
            ("4 oz/ac", "4 fl oz/ac", "4 oz wt/ac"),
            ("1/2 oz/ac", "1/2 fl oz/ac", "1/2 oz wt/ac"),
            ("1 1/2 OZ. / acre", "1 1/2 fl oz/acre", "1 1/2 oz wt/acre"),
            ("4oz", "4 fl oz", "4 oz wt"),
            ("3 ounces/100 gal", "3 fl oz/100 gal", "3 oz wt/100 gal"),
        ] {
            let found = bare_ounces(given).expect(given);
            assert_eq!((found.liquid.as_str(), found.weight.as_str()), (liquid, weight));
        }
        for named in ["4 fl oz/ac", "4 oz wt/ac", "4 dry oz/ac", "1/2 pt/ac", "3 lb/ac", "", "/", "½"] {
            assert!(bare_ounces(named).is_none(), "{named}");
        }
    }
}
