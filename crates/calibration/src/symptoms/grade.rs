//! How often, in coarse grades: nobody has counted, and a table that looks finer than it is would mislead.

/// How often something is so.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Next to never.
    Never,
    /// Seldom.
    Seldom,
    /// Now and then.
    Sometimes,
    /// As often as not.
    Even,
    /// Mostly.
    Often,
    /// Nearly always.
    Always,
}

/// Where a row rests on what people of the trade know.
pub const COMMON_PRACTICE: &str = "common practice, from memory";

impl Grade {
    /// The share of cases, from 0 to 1: never 0 or 1, because eyes and hands err.
    ///
    /// *Source*: our assumption; grades of some factor of two to three.
    #[must_use]
    pub const fn share(self) -> f64 {
        match self {
            Self::Never => 0.02,
            Self::Seldom => 0.08,
            Self::Sometimes => 0.25,
            Self::Even => 0.5,
            Self::Often => 0.75,
            Self::Always => 0.95,
        }
    }
}
