//! Who reads: four settings that do not depend on one another.
//!
//! People who speak Spanish in the United States and Mexico write a decimal point, use Letter paper and US units; so none
//! of the other three follows from the language.

use units::UnitSystem;

/// The language of the words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Language {
    /// English as it is spoken in the United States.
    #[default]
    English,
    /// Spanish as it is spoken in the United States and Mexico.
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The tag, as BCP 47 has it and a page names it.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The language's own name for itself.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "español",
        }
    }
}

/// How decimals are written. Digits are never grouped: 1,234 means two things, and is refused where it is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum NumberFormat {
    /// 14.6
    #[default]
    Point,
    /// 14,6
    Comma,
}

/// The paper in the printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Paper {
    /// 8.5 by 11 in.
    #[default]
    Letter,
    /// 210 by 297 mm.
    A4,
}

impl Paper {
    /// Width and height in millimetres.
    ///
    /// *Source*: ANSI/ASME Y14.1 size A is 8.5 by 11 in (215.9 by 279.4 mm); ISO 216 A4 is 210 by 297 mm.
    #[must_use]
    pub const fn millimetres(self) -> (f64, f64) {
        match self {
            Self::Letter => (215.9, 279.4),
            Self::A4 => (210.0, 297.0),
        }
    }

    /// The name a page style knows it by.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Letter => "letter",
            Self::A4 => "A4",
        }
    }
}

/// Who reads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Reader {
    /// The language of the words.
    pub language: Language,
    /// How decimals are written.
    pub numbers: NumberFormat,
    /// The paper in the printer.
    pub paper: Paper,
    /// The units figures are shown in.
    pub units: UnitSystem,
}
