//! A reading: the number as written, the marks it was read to, and how it was read.

use crate::amount::{Arg, Args};
use crate::coded::Coded;
use crate::dimension::Dimension;
use crate::parse::{self, QuantityError};
use crate::quantity::{Density, Mass, Quantity, Volume};
use crate::unit::{Unit, normal_spelling};
use crate::written::Written;

/// With what a reading was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Instrument {
    /// A cup or jug with marks.
    Cup,
    /// A scale; the volume follows from the density.
    Scale,
    /// A tape.
    Tape,
    /// A watch worked by hand.
    HandTimer,
    /// A pressure gauge, and where it sits.
    Gauge(ReadPlace),
    /// The tractor's own display.
    Dash,
}

/// Where a pressure was read. A gauge at the pump does not show what the tips get.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadPlace {
    /// At the pump or regulator.
    Pump,
    /// At the manifold that feeds the sections.
    Manifold,
    /// On the boom.
    Boom,
    /// At a tip.
    Tip,
    /// In the cab.
    Cab,
}

/// The distance between two marks of the instrument: the smallest step that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct Marks(Written);

impl Marks {
    /// Marks a step apart.
    ///
    /// *Errors*: a step of nothing.
    pub fn every(step: Written) -> Result<Self, ReadingError> {
        if step.si() > 0.0 {
            Ok(Self(step))
        } else {
            Err(ReadingError::NoStep { given: step.text().to_string() })
        }
    }

    /// The step as written.
    #[must_use]
    pub const fn step(&self) -> &Written {
        &self.0
    }
}

/// A number as written with the marks it was read to and how. A reading is an interval.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    written: Written,
    marks: Option<Marks>,
    instrument: Instrument,
}

impl Reading {
    /// A reading; without marks it is taken as it stands.
    ///
    /// *Errors*: marks of another dimension (a cup read in ounces with marks of a scale).
    pub fn new(written: Written, marks: Option<Marks>, instrument: Instrument) -> Result<Self, ReadingError> {
        match &marks {
            Some(marks) if marks.0.dimension() != written.dimension() => Err(ReadingError::OtherMarks {
                reading: written.text().to_string(),
                marks: marks.0.text().to_string(),
            }),
            _ => Ok(Self { written, marks, instrument }),
        }
    }

    /// The number and unit as written.
    #[must_use]
    pub const fn written(&self) -> &Written {
        &self.written
    }

    /// The marks it was read to.
    #[must_use]
    pub const fn marks(&self) -> Option<&Marks> {
        self.marks.as_ref()
    }

    /// How it was read.
    #[must_use]
    pub const fn instrument(&self) -> Instrument {
        self.instrument
    }

    /// The distance between marks in SI, nothing where there are none.
    #[must_use]
    pub fn step_si(&self) -> f64 {
        self.marks.as_ref().map_or(0.0, |marks| marks.0.si())
    }

    /// The interval the true value lies in as far as the marks tell: half a step either way, not below nothing.
    #[must_use]
    pub fn interval_si(&self) -> (f64, f64) {
        let (value, half) = (self.written.si(), self.step_si() / 2.0);
        ((value - half).max(0.0), value + half)
    }
}

/// What a cup or a scale gave: liquid by volume or by weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Caught(Written);

impl Caught {
    /// Reads a catch such as `"14 fl oz"`, `"412 mL"` or `"405 g"`; a bare number takes `bare_unit`.
    ///
    /// *Errors*: those of a quantity; `"oz"` alone, which may be liquid or weight, is refused with both.
    pub fn parse(text: &str, bare_unit: Option<&Unit>) -> Result<Self, QuantityError> {
        let given = text.trim();
        let letters = given.trim_start_matches(|sign: char| !sign.is_alphabetic());
        if matches!(normal_spelling(letters).as_str(), "oz" | "ounce" | "ounces") {
            return Err(QuantityError::WhichOunce { given: given.to_string() });
        }
        let wanted = bare_unit.map_or(Dimension::Volume, Unit::dimension);
        let parsed = match parse::quantity(given, wanted) {
            Err(QuantityError::MissingUnit { .. }) if bare_unit.is_some() => {
                let unit = bare_unit.map_or("", Unit::text);
                parse::quantity(&format!("{given} {unit}"), wanted)
            }
            Err(QuantityError::WrongUnit { found: Dimension::Mass, .. }) => {
                parse::quantity(given, Dimension::Mass)
            }
            Err(QuantityError::WrongUnit { found: Dimension::Volume, .. }) => {
                parse::quantity(given, Dimension::Volume)
            }
            other => other,
        };
        parsed.map(Self)
    }

    /// As written.
    #[must_use]
    pub const fn written(&self) -> &Written {
        &self.0
    }

    /// Whether it was weighed.
    #[must_use]
    pub fn instrument(&self) -> Instrument {
        if self.0.dimension() == Dimension::Mass { Instrument::Scale } else { Instrument::Cup }
    }

    /// The volume of it; a weight is converted by the liquid's density.
    #[must_use]
    pub fn volume(&self, density: Density) -> Volume {
        if self.0.dimension() == Dimension::Mass {
            Mass::from_si(self.0.si()) / density
        } else {
            Volume::from_si(self.0.si())
        }
    }
}

/// Why something is not a reading.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadingError {
    /// Marks no distance apart. Say how far the marks of the cup are apart.
    #[error("marks of \"{given}\" are no distance apart")]
    NoStep {
        /// The step as given.
        given: String,
    },
    /// Marks that measure something else than the reading.
    #[error("\"{reading}\" cannot be read on marks of \"{marks}\"")]
    OtherMarks {
        /// The reading as given.
        reading: String,
        /// The marks as given.
        marks: String,
    },
}

impl Coded for ReadingError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoStep { .. } => "reading_no_step",
            Self::OtherMarks { .. } => "reading_other_marks",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NoStep { given } => Args::new().with("given", Arg::Text(given.clone())),
            Self::OtherMarks { reading, marks } => Args::new()
                .with("reading", Arg::Text(reading.clone()))
                .with("marks", Arg::Text(marks.clone())),
        }
    }

    fn hint(&self) -> Option<String> {
        Some("give the distance between two marks of the cup, as 1 fl oz or 10 mL".to_string())
    }
}
