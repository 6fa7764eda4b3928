//! A quantity ready to be shown, and the named arguments that errors, findings and workings carry.

use crate::kind::{Kind, UnitSystem};
use crate::last_resort::last_resort;
use crate::print::{sensible, sensible_doubt, sensible_with_doubt, tidy_digits};
use crate::quantity::Quantity;
use crate::ranged::Ranged;
use crate::unit::Unit;
use crate::verdict::Verdict;

/// A quantity with the kind of figure it is, which decides the unit it is shown in.
#[derive(Clone, Debug, PartialEq)]
pub struct Amount {
    si: f64,
    range: Option<(f64, f64)>,
    kind: Kind,
    unit: Option<Unit>,
}

impl Amount {
    /// An amount shown in the unit of its kind.
    #[must_use]
    pub fn new<Q: Quantity>(quantity: Q, kind: Kind) -> Self {
        debug_assert_eq!(Q::DIMENSION, kind.dimension());
        Self { si: quantity.si(), range: None, kind, unit: None }
    }

    /// An amount with its 95 % range.
    #[must_use]
    pub fn ranged<Q: Quantity>(ranged: &Ranged<Q>, kind: Kind) -> Self {
        let range = Some((ranged.low.si(), ranged.high.si()));
        Self { range, ..Self::new(ranged.value, kind) }
    }

    /// The same, shown in a unit of the user's own choice (the one a cup is marked in), whatever the system.
    #[must_use]
    pub fn shown_in(self, unit: &Unit) -> Self {
        Self { unit: Some(unit.clone()), ..self }
    }

    /// The unit it is shown in.
    #[must_use]
    pub fn unit(&self, system: UnitSystem) -> Unit {
        self.unit.clone().unwrap_or_else(|| self.kind.unit(system))
    }

    /// The number of those units, at full precision.
    #[must_use]
    pub fn value(&self, system: UnitSystem) -> f64 {
        tidy_digits(self.si / self.unit(system).si_factor())
    }

    /// The ends of the 95 % range in those units, where there is one.
    #[must_use]
    pub fn range(&self, system: UnitSystem) -> Option<(f64, f64)> {
        let factor = self.unit(system).si_factor();
        self.range.map(|(low, high)| (tidy_digits(low / factor), tidy_digits(high / factor)))
    }

    /// For a person to read: sensible digits and the unit, the value alone.
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        let value = self.value(system);
        let number = match self.range(system) {
            Some((low, high)) => sensible_with_doubt(value, (high - low) / 2.0),
            None => sensible(value),
        };
        format!("{number} {}", self.unit(system).text())
    }

    /// The range for a person to read, as "14.1 to 15.1", to the digits of the value; `None` where there is no range.
    #[must_use]
    pub fn range_text(&self, system: UnitSystem) -> Option<String> {
        let (low, high) = self.range(system)?;
        let half = (high - low) / 2.0;
        Some(format!("{} to {}", sensible_with_doubt(low, half), sensible_with_doubt(high, half)))
    }
}

/// One argument of an error, finding or working.
#[derive(Clone, Debug, PartialEq)]
pub enum Arg {
    /// A quantity with its unit.
    Amount(Amount),
    /// A percentage (12.5 means 12.5 %).
    Percent(f64),
    /// A deviation in percent, shown with its sign.
    Deviation(f64),
    /// A deviation in percent held against a limit, shown with its sign and never rounded to the limit's other side.
    DeviationFrom {
        /// The deviation in percent.
        percent: f64,
        /// The limit in percent.
        limit: f64,
    },
    /// How far off something may be either way, in percent, shown to two digits.
    Doubt(f64),
    /// How far off in percent, without its sign, for "16 % more": never rounded to the other side of the limit.
    Off {
        /// The deviation in percent.
        percent: f64,
        /// The limit in percent, where there is one.
        limit: Option<f64>,
    },
    /// A number without a unit.
    Number(f64),
    /// A count of things.
    Count(u32),
    /// Positions on the boom, numbered from the left as the driver sits.
    Tips(Vec<u32>),
    /// Letters as a person wrote them: a name, a reading, a field. Never our own words.
    Text(String),
    /// One of our own words out of a known set, as "the stopwatch".
    Word {
        /// Its stable code, by which it is found in another language.
        code: &'static str,
        /// The word in English.
        english: &'static str,
    },
    /// A sum of money with its sign, written with a decimal point: "$14.18".
    Money(String),
    /// Shorter sentences inside this one, one after the other.
    Phrases(Vec<Phrase>),
    /// How much to measure out, in steps of jugs and cups: 3 gal 3 pt 4 1/4 fl oz.
    Parts(Vec<(String, Unit)>),
    /// A verdict.
    Verdict(Verdict),
}

impl Arg {
    /// One of our own words: its stable code, and the English of it as the last resort.
    #[must_use]
    pub const fn word(code: &'static str, english: &'static str) -> Self {
        Self::Word { code, english: last_resort(english) }
    }

    /// The English text of it.
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match self {
            Self::Amount(amount) => amount.text(system),
            Self::Percent(percent) => format!("{} %", sensible(*percent)),
            Self::Deviation(percent) => crate::print::percent_text(*percent, None),
            Self::DeviationFrom { percent, limit } => crate::print::percent_text(*percent, Some(*limit)),
            Self::Doubt(percent) => format!("{} %", sensible_doubt(*percent)),
            Self::Off { percent, limit } => {
                crate::print::percent_text(percent.abs(), *limit).replace('+', "")
            }
            Self::Number(number) => sensible(*number),
            Self::Count(count) => count.to_string(),
            Self::Tips(tips) => tips_text(tips),
            Self::Text(text) | Self::Money(text) => text.clone(),
            Self::Word { english, .. } => (*english).to_string(),
            Self::Phrases(phrases) => phrases_joined(phrases.iter().map(|phrase| phrase.text(system))),
            Self::Parts(parts) => parts
                .iter()
                .map(|(number, unit)| format!("{number} {}", unit.text()))
                .collect::<Vec<_>>()
                .join(" "),
            Self::Verdict(verdict) => verdict.word().replace('_', " "),
        }
    }
}

/// Phrases one after the other: whole sentences stand side by side, parts of one are parted.
#[must_use]
pub fn phrases_joined(phrases: impl Iterator<Item = String>) -> String {
    let mut all = String::new();
    for phrase in phrases {
        if !all.is_empty() {
            all.push_str(if all.ends_with(['.', '?']) { " " } else { "; " });
        }
        all.push_str(&phrase);
    }
    all
}

/// A part of a sentence with its own code and arguments, so that it too can be said in another language.
#[derive(Clone, Debug, PartialEq)]
pub struct Phrase {
    /// Its stable code.
    pub code: &'static str,
    /// Its fields.
    pub args: Args,
    /// The English of it, in which `{name}` stands for an argument.
    pub english: &'static str,
}

impl Phrase {
    /// A phrase without arguments.
    #[must_use]
    pub const fn new(code: &'static str, english: &'static str) -> Self {
        Self { code, args: Args::new(), english: last_resort(english) }
    }

    /// Adds an argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args = self.args.with(name, arg);
        self
    }

    /// The English text of it.
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        self.args.fill(self.english, system)
    }
}

/// Arguments by name, in the order they were given.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Args(Vec<(&'static str, Arg)>);

impl Args {
    /// No arguments yet.
    #[must_use]
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// Adds one.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.0.push((name, arg));
        self
    }

    /// All of them in order.
    pub fn iter(&self) -> impl Iterator<Item = &(&'static str, Arg)> {
        self.0.iter()
    }

    /// One by its name.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&Arg> {
        self.0.iter().find(|(known, _)| *known == name).map(|(_, arg)| arg)
    }

    /// Puts the arguments into a sentence: each `{name}` is replaced by its text.
    #[must_use]
    pub fn fill(&self, sentence: &str, system: UnitSystem) -> String {
        let mut filled = String::with_capacity(sentence.len() + 32);
        let mut rest = sentence;
        while let Some((before, after)) = rest.split_once('{') {
            filled.push_str(before);
            let Some((name, behind)) = after.split_once('}') else {
                filled.push('{');
                rest = after;
                continue;
            };
            match self.get(name) {
                Some(arg) => filled.push_str(&arg.text(system)),
                None => filled.push_str(&format!("{{{name}}}")),
            }
            rest = behind;
        }
        filled.push_str(rest);
        filled
    }
}

/// "4", "4 and 7", "4, 7 and 9"; runs of three and more are drawn together: "1 to 6 and 9".
fn tips_text(tips: &[u32]) -> String {
    let mut parts: Vec<String> = Vec::new();
    let mut place = 0;
    while place < tips.len() {
        let mut end = place;
        while end + 1 < tips.len() && tips[end + 1] == tips[end] + 1 {
            end += 1;
        }
        if end >= place + 2 {
            parts.push(format!("{} to {}", tips[place], tips[end]));
        } else {
            parts.extend(tips[place..=end].iter().map(u32::to_string));
        }
        place = end + 1;
    }
    match parts.split_last() {
        None => String::new(),
        Some((last, [])) => last.clone(),
        Some((last, before)) => format!("{} and {last}", before.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, VolumePerArea};

    #[test]
    fn a_sentence_is_filled_in_either_system() {
        let rate = Ranged {
            value: VolumePerArea::gallons_per_acre(14.5667),
            low: VolumePerArea::gallons_per_acre(14.1),
            high: VolumePerArea::gallons_per_acre(15.1),
        };
        let args = Args::new()
            .with("rate", Arg::Amount(Amount::ranged(&rate, Kind::Rate)))
            .with("width", Arg::Amount(Amount::new(Length::inches(20.0), Kind::Width)));
        let sentence = "{rate} over {width}, {nothing}";
        assert_eq!(args.fill(sentence, UnitSystem::Us), "14.6 gal/ac over 20 in, {nothing}");
        assert_eq!(args.fill(sentence, UnitSystem::Metric), "136 L/ha over 50.8 cm, {nothing}");
    }

    #[test]
    fn tips_are_named_shortly() {
        for (tips, text) in [
            (vec![], ""),
            (vec![4], "4"),
            (vec![4, 7], "4 and 7"),
            (vec![1, 2], "1 and 2"),
            (vec![1, 2, 3, 4, 9], "1 to 4 and 9"),
            (vec![1, 5, 6, 7, 20], "1, 5 to 7 and 20"),
        ] {
            assert_eq!(tips_text(&tips), text);
        }
    }
}
