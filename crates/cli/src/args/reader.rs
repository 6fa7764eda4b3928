//! Who reads, as it is typed: units, language, numbers and paper.

use std::ffi::OsString;

use clap::ValueEnum;
use units::UnitSystem;
use words::{Language, NumberFormat, Paper};

/// The two sets of units.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum Units {
    /// gal/ac, mph, psi
    Us,
    /// L/ha, km/h, bar
    Metric,
}

impl Units {
    /// The units meant.
    pub const fn system(self) -> UnitSystem {
        match self {
            Self::Us => UnitSystem::Us,
            Self::Metric => UnitSystem::Metric,
        }
    }
}

/// The two languages.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum Lang {
    /// English
    En,
    /// Spanish
    Es,
}

impl Lang {
    /// The language meant.
    pub const fn language(self) -> Language {
        match self {
            Self::En => Language::English,
            Self::Es => Language::Spanish,
        }
    }
}

/// How decimals are written.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum Numbers {
    /// 14.6
    Point,
    /// 14,6
    Comma,
}

impl Numbers {
    /// The way meant.
    pub const fn format(self) -> NumberFormat {
        match self {
            Self::Point => NumberFormat::Point,
            Self::Comma => NumberFormat::Comma,
        }
    }
}

/// The two papers.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum PaperSize {
    /// 8.5 by 11 in
    Letter,
    /// 210 by 297 mm
    #[value(name = "a4")]
    A4,
}

impl PaperSize {
    /// The paper meant.
    pub const fn paper(self) -> Paper {
        match self {
            Self::Letter => Paper::Letter,
            Self::A4 => Paper::A4,
        }
    }
}

/// What was typed. A number below nothing is written with the minus sign of print, or it would be taken for an
/// option: `--width "-5 in"` shall hear that no width is less than nothing.
pub fn typed() -> Vec<OsString> {
    let print = |word: OsString| match word.to_str().and_then(|text| text.strip_prefix('-')) {
        Some(rest) if rest.starts_with(|sign: char| sign.is_ascii_digit() || sign == '.') => {
            OsString::from(format!("−{rest}"))
        }
        _ => word,
    };
    std::env::args_os().map(print).collect()
}

/// The language that help and mistakes of typing are told in, before anything else of what was typed is understood.
pub fn language(typed: &[OsString]) -> Language {
    let words: Vec<&str> =
        typed.iter().map(|word| word.to_str().unwrap_or_default()).take_while(|word| *word != "--").collect();
    let beside = words.windows(2).filter(|pair| pair[0] == "--lang").map(|pair| pair[1]);
    let joined = words.iter().filter_map(|word| word.strip_prefix("--lang="));
    let tag = beside.chain(joined).next().unwrap_or_default();
    Language::ALL.into_iter().find(|language| language.tag() == tag).unwrap_or_default()
}

/// What was typed, without the language where nothing or help alone is asked for: help takes no options of its own, and
/// the language by itself asks for nothing.
pub fn for_help(typed: Vec<OsString>) -> Vec<OsString> {
    let asks_for_help = typed.get(1).is_some_and(|word| word == "help");
    let mut rest = typed.iter();
    let mut without: Vec<OsString> = Vec::new();
    while let Some(word) = rest.next() {
        if word == "--lang" {
            rest.next();
        } else if !word.to_str().unwrap_or_default().starts_with("--lang=") {
            without.push(word.clone());
        }
    }
    if asks_for_help || without.len() == 1 { without } else { typed }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_is_known_before_the_rest_is_understood() {
        let of = |line: &str| language(&line.split(' ').map(OsString::from).collect::<Vec<_>>());
        for spanish in
            ["evenswath --lang es", "evenswath rate --nonsense --lang=es", "evenswath --lang es --help"]
        {
            assert_eq!(of(spanish), Language::Spanish, "{spanish}");
        }
        for english in
            ["evenswath", "evenswath --lang", "evenswath --lang fr", "evenswath course -- --lang es", "x es"]
        {
            assert_eq!(of(english), Language::English, "{english}");
        }
    }
}
