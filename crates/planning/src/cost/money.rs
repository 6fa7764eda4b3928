//! Money as written: a number with the sign the writer uses. Nothing is ever changed from one money into another.

use super::error::MoneyError;
use crate::text::{for_message, has_control};

/// An amount of money.
#[derive(Clone, Debug, PartialEq)]
pub struct Money {
    amount: f64,
    symbol: String,
    place: Place,
}

/// Where the sign stands, so that it is printed where it was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Place {
    Before,
    BeforeWithGap,
    Behind,
}

impl Money {
    /// Reads an amount with its sign in front or behind: `"$25"`, `"25 $"`, `"€ 18.50"`, `"25 USD"`.
    ///
    /// *Units*: any sign or letters people write for their money; the decimal mark is a point.
    ///
    /// *Errors*: no sign, two signs, no number, a comma (refused with both readings), a negative number.
    pub fn parse(text: &str) -> Result<Self, MoneyError> {
        let given = text.trim();
        let length = given.chars().count();
        if given.is_empty() {
            return Err(MoneyError::Empty);
        }
        if length > LONGEST {
            return Err(MoneyError::TooLong { length });
        }
        if has_control(given) {
            return Err(MoneyError::NotMoney { given: for_message(given) });
        }
        let not_money = || MoneyError::NotMoney { given: for_message(given) };
        let no_symbol = || MoneyError::NoSymbol { given: for_message(given) };
        let digits = given.find(|sign: char| sign.is_ascii_digit()).ok_or_else(not_money)?;
        let end = given.rfind(|sign: char| sign.is_ascii_digit()).map_or(digits, |last| last + 1);
        // ".50" begins with its point; the point of "Rs.50" belongs to the letters.
        let point = given[..digits].strip_suffix('.').filter(|before| !before.ends_with(char::is_alphabetic));
        let first = if point.is_some() { digits - 1 } else { digits };
        let (before, number, behind) = (&given[..first], &given[first..end], &given[end..]);
        let (symbol, place) = match (before.trim(), behind.trim()) {
            ("", "") => return Err(no_symbol()),
            ("", symbol) => (symbol, Place::Behind),
            (symbol, "") if before.ends_with(char::is_whitespace) => (symbol, Place::BeforeWithGap),
            (symbol, "") => (symbol, Place::Before),
            _ => return Err(not_money()),
        };
        if symbol.starts_with(['-', '−']) || symbol.ends_with(['-', '−']) {
            return Err(MoneyError::Negative { given: for_message(given) });
        }
        let is_sign = |sign: char| sign.is_alphabetic() || CURRENCY_SIGNS.contains(sign);
        let fits = symbol.chars().all(|sign| is_sign(sign) || sign == '.') && symbol.chars().any(is_sign);
        if !fits || symbol.chars().count() > LONGEST_SYMBOL {
            return Err(not_money());
        }
        let amount = units::decimal(number).map_err(MoneyError::Number)?;
        Ok(Self { amount, symbol: symbol.to_string(), place })
    }

    /// The number of dollars, euros or whatever the sign stands for.
    #[must_use]
    pub const fn amount(&self) -> f64 {
        self.amount
    }

    /// The sign as written.
    #[must_use]
    pub fn symbol(&self) -> &str {
        &self.symbol
    }

    /// This many times as much.
    #[must_use]
    pub fn times(&self, factor: f64) -> Self {
        Self { amount: self.amount * factor, ..self.clone() }
    }

    /// Both together.
    ///
    /// *Errors*: two different signs; what one is worth in the other is not known here.
    pub fn plus(&self, other: &Self) -> Result<Self, MoneyError> {
        if self.symbol.to_lowercase() == other.symbol.to_lowercase() {
            Ok(Self { amount: self.amount + other.amount, ..self.clone() })
        } else {
            Err(MoneyError::OtherSymbol { one: self.symbol.clone(), other: other.symbol.clone() })
        }
    }

    /// For reading, its number written as the reader writes numbers: `digits` is handed one with a decimal point.
    ///
    /// With hundredths up to a thousand, in whole ones from there on; the sign stands where it was written.
    #[must_use]
    pub fn written(&self, digits: impl Fn(&str) -> String) -> String {
        let amount = self.amount.abs();
        let number = if amount < WHOLE_FROM { format!("{amount:.2}") } else { format!("{amount:.0}") };
        let number = digits(&number);
        let minus = if self.amount < 0.0 { "−" } else { "" };
        let symbol = &self.symbol;
        match self.place {
            Place::Before => format!("{minus}{symbol}{number}"),
            Place::BeforeWithGap => format!("{minus}{symbol} {number}"),
            Place::Behind => format!("{minus}{number} {symbol}"),
        }
    }
}

impl core::fmt::Display for Money {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str(&self.written(str::to_string))
    }
}

/// The longest text taken for money. Our own limit.
const LONGEST: usize = 60;
/// The longest sign taken. Our own limit: words such as "pesos" fit.
const LONGEST_SYMBOL: usize = 8;
/// From here on cents are left out. Our own choice.
const WHOLE_FROM: f64 = 1000.0;
/// Signs for money on keyboards. Source: Unicode Standard, block Currency Symbols and Latin-1.
const CURRENCY_SIGNS: &str = "$€£¥¢₡₦₩₪₫₱₲₴₵₹₺₽₿";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn money_is_printed_as_it_was_written() {
        for (written, printed) in [
            ("$25", "$25.00"),
            ("25 $", "25.00 $"),
            ("25$", "25.00 $"),
            ("€ 18.5", "€ 18.50"),
            ("18.50 EUR", "18.50 EUR"),
            ("US$4", "US$4.00"),
            ("$ 1 1/2", "$ 1.50"),
            ("$2500.40", "$2500"),
            ("Rs. 50", "Rs. 50.00"),
            ("$.50", "$0.50"),
        ] {
            assert_eq!(
                Money::parse(written).map(|money| money.to_string()),
                Ok(printed.to_string()),
                "{written}"
            );
        }
    }

    #[test]
    fn money_is_written_with_the_readers_decimal_mark() {
        let comma = |text: &str| text.replace('.', ",");
        for (written, printed) in [("$18.5", "$18,50"), ("18.5 €", "18,50 €"), ("Rs. 50", "Rs. 50,00")] {
            assert_eq!(Money::parse(written).expect(written).written(comma), printed);
        }
    }

    #[test]
    fn what_is_not_money_is_refused() {
        use units::Coded;
        for (written, code) in [
            ("", "money_empty"),
            ("25", "money_no_symbol"),
            ("$", "money_not_money"),
            ("$25 USD", "money_not_money"),
            ("-$25", "money_negative"),
            ("$-25", "money_negative"),
            ("25 %", "money_not_money"),
            ("$1,234", "quantity_comma"),
            ("$1.2.3", "quantity_not_a_number"),
        ] {
            let error = Money::parse(written).expect_err(written);
            assert_eq!(error.code(), code, "{written}: {error}");
            assert!(error.hint().is_some(), "{written}");
        }
    }

    #[test]
    fn moneys_are_never_mixed() {
        let (dollars, euros) = (Money::parse("$5").expect("money"), Money::parse("5 €").expect("money"));
        assert!(dollars.plus(&euros).is_err());
        let pesos = Money::parse("5 mxn").expect("money");
        assert_eq!(
            pesos.plus(&Money::parse("MXN 7").expect("money")).expect("same").to_string(),
            "12.00 mxn"
        );
    }
}
