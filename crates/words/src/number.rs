//! Numbers and amounts as the reader writes them.

use units::{Amount, Arg, Unit, percent_text, phrases_joined, sensible, sensible_doubt, sensible_with_doubt};

use crate::catalogue::Words;
use crate::reader::NumberFormat;

impl Words {
    /// Digits that were made with a decimal point, with the reader's decimal mark.
    #[must_use]
    pub fn digits(&self, text: &str) -> String {
        match self.reader().numbers {
            NumberFormat::Point => text.to_string(),
            NumberFormat::Comma => text.replace('.', ","),
        }
    }

    /// A sentence of the catalogue with numbers in it, which has them with a point: with the reader's decimal mark.
    #[must_use]
    pub fn numbers_in(&self, text: &str) -> String {
        if self.reader().numbers == NumberFormat::Point {
            return text.to_string();
        }
        let signs: Vec<char> = text.chars().collect();
        let digit =
            |place: Option<usize>| place.and_then(|place| signs.get(place)).is_some_and(char::is_ascii_digit);
        let marked = signs.iter().enumerate().map(|(place, sign)| {
            let between = digit(place.checked_sub(1)) && digit(Some(place + 1));
            if *sign == '.' && between { ',' } else { *sign }
        });
        marked.collect()
    }

    /// A bare number to sensible digits.
    #[must_use]
    pub fn number(&self, value: f64) -> String {
        self.digits(&sensible(value))
    }

    /// A number with this many decimals.
    #[must_use]
    pub fn fixed(&self, value: f64, decimals: usize) -> String {
        let text = format!("{value:.decimals$}");
        self.digits(&text.replace('-', "−"))
    }

    /// The name of a unit: the symbol on the cup and the label, or the reader's word where people say another.
    #[must_use]
    pub fn unit(&self, unit: &Unit) -> String {
        let text = unit.text();
        // Of a quotient each part is named by itself: "fl oz/ac".
        text.split('/').map(|part| self.unit_part(part)).collect::<Vec<_>>().join("/")
    }

    /// The name of a unit behind a number: of just one in the singular, where the language has a word for it.
    fn unit_of(&self, number: &str, unit: &Unit) -> String {
        let one =
            (number == "1").then(|| self.find(&format!("unit-{}-one", key(unit.text())), None)).flatten();
        one.unwrap_or_else(|| self.unit(unit))
    }

    fn unit_part(&self, part: &str) -> String {
        // "100 gal" has a number before its unit.
        let start = part.find(|sign: char| sign.is_alphabetic() || sign == '%').unwrap_or(0);
        let (number, symbol) = part.split_at(start);
        let named = self.find(&format!("unit-{}", key(symbol)), None).unwrap_or_else(|| symbol.to_string());
        format!("{number}{named}")
    }

    /// An amount: sensible digits and the unit, the value alone.
    #[must_use]
    pub fn amount(&self, amount: &Amount) -> String {
        let number = self.amount_number(amount);
        let unit = self.unit_of(&number, &amount.unit(self.reader().units));
        format!("{number} {unit}")
    }

    /// The number of an amount, where its unit is set apart from it.
    #[must_use]
    pub fn amount_number(&self, amount: &Amount) -> String {
        let system = self.reader().units;
        let value = amount.value(system);
        self.digits(&match amount.range(system) {
            Some((low, high)) => sensible_with_doubt(value, (high - low) / 2.0),
            None => sensible(value),
        })
    }

    /// The unit of an amount.
    #[must_use]
    pub fn amount_unit(&self, amount: &Amount) -> String {
        self.unit(&amount.unit(self.reader().units))
    }

    /// Both ends of an amount's 95 % range without the unit; `None` where there is no range.
    #[must_use]
    pub fn range_ends(&self, amount: &Amount) -> Option<(String, String)> {
        let (low, high) = amount.range(self.reader().units)?;
        let half = (high - low) / 2.0;
        Some((self.digits(&sensible_with_doubt(low, half)), self.digits(&sensible_with_doubt(high, half))))
    }

    /// The range as "14.1 to 15.1", without the unit; `None` where there is no range.
    #[must_use]
    pub fn range(&self, amount: &Amount) -> Option<String> {
        let (low, high) = self.range_ends(amount)?;
        Some(self.say("range", &[("low", low.into()), ("high", high.into())]))
    }

    /// A deviation in percent with its sign, never rounded to the other side of its limit.
    #[must_use]
    pub fn deviation(&self, percent: f64, limit: Option<f64>) -> String {
        self.digits(&percent_text(percent, limit))
    }

    /// Positions on the boom: "4, 7 and 9", "1 to 6".
    #[must_use]
    pub fn tips(&self, tips: &[u32]) -> String {
        let mut parts: Vec<String> = Vec::new();
        let mut place = 0;
        while place < tips.len() {
            let mut end = place;
            while end + 1 < tips.len() && tips[end + 1] == tips[end] + 1 {
                end += 1;
            }
            // Runs of three and more are drawn together.
            if end >= place + 2 {
                let (first, last) = (tips[place].to_string(), tips[end].to_string());
                parts.push(self.say("tips_run", &[("first", first.into()), ("last", last.into())]));
            } else {
                parts.extend(tips[place..=end].iter().map(u32::to_string));
            }
            place = end + 1;
        }
        self.list(&parts)
    }

    /// Things one after the other: "a, b and c".
    #[must_use]
    pub fn list(&self, parts: &[String]) -> String {
        match parts {
            [] => String::new(),
            [one] => one.clone(),
            [before @ .., last] => {
                self.say("list_and", &[("before", before.join(", ").into()), ("last", last.clone().into())])
            }
        }
    }

    /// An argument as the reader reads it.
    #[must_use]
    pub fn arg(&self, arg: &Arg) -> String {
        match arg {
            Arg::Amount(amount) => self.amount(amount),
            Arg::Percent(percent) => self.digits(&format!("{} %", sensible(*percent))),
            Arg::Deviation(percent) => self.deviation(*percent, None),
            Arg::DeviationFrom { percent, limit } => self.deviation(*percent, Some(*limit)),
            Arg::Doubt(percent) => self.digits(&format!("{} %", sensible_doubt(*percent))),
            Arg::Off { percent, limit } => self.deviation(percent.abs(), *limit).replace('+', ""),
            Arg::Number(number) => self.number(*number),
            Arg::Count(count) => count.to_string(),
            Arg::Tips(tips) => self.tips(tips),
            Arg::Text(text) => text.clone(),
            Arg::Money(text) => self.digits(text),
            Arg::Word { code, english } => {
                self.find(&format!("word-{code}"), None).unwrap_or_else(|| (*english).to_string())
            }
            Arg::Phrases(phrases) => phrases_joined(phrases.iter().map(|phrase| self.phrase(phrase))),
            Arg::Parts(parts) => parts
                .iter()
                .map(|(number, unit)| format!("{} {}", self.digits(number), self.unit_of(number, unit)))
                .collect::<Vec<_>>()
                .join(" "),
            Arg::Verdict(verdict) => self.label(&format!("verdict-{}", verdict.word())),
        }
    }
}

/// The symbol of a unit as a name of the catalogue.
fn key(symbol: &str) -> String {
    symbol.chars().map(|sign| if sign.is_ascii_alphanumeric() { sign } else { '_' }).collect()
}
