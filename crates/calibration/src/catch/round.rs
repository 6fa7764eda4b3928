//! What was caught: cups, tips, rounds. Facts only; everything else follows from them.

use sprayer::GroupId;
use units::{Caught, Density, Marks, Quantity, Reading, Time, Unit, Volume};

use super::error::CatchError;

/// The cup of a round: how far its marks are apart and how much it holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Cup {
    /// The marks, where they are known.
    pub marks: Option<Marks>,
    /// How much the cup holds, where that is known.
    pub holds: Option<Volume>,
}

/// One cup caught under one tip.
#[derive(Clone, Debug, PartialEq)]
pub struct Catch {
    reading: Reading,
    caught: Caught,
    time: Time,
    run: Option<u32>,
}

impl Catch {
    /// A catch of `caught`, read to `marks`, over `time`. Catches of one round with the same `run` were caught
    /// under one timed run and share its time, error and all.
    ///
    /// *Errors*: a time of nothing; marks that measure something else than the cup.
    pub fn new(
        caught: Caught,
        marks: Option<Marks>,
        time: Time,
        run: Option<u32>,
    ) -> Result<Self, CatchError> {
        if !time.is_positive() {
            return Err(CatchError::NoTime { given: time });
        }
        let reading = Reading::new(caught.written().clone(), marks, caught.instrument())?;
        Ok(Self { reading, caught, time, run })
    }

    /// The reading as written, with its marks.
    #[must_use]
    pub const fn reading(&self) -> &Reading {
        &self.reading
    }

    /// How long it was caught.
    #[must_use]
    pub const fn time(&self) -> Time {
        self.time
    }

    /// The timed run it shares with others.
    #[must_use]
    pub const fn run(&self) -> Option<u32> {
        self.run
    }

    /// The volume caught.
    #[must_use]
    pub fn volume(&self, density: Density) -> Volume {
        self.caught.volume(density)
    }

    /// The distance between marks as a volume, nothing where it is not known.
    #[must_use]
    pub fn step(&self, density: Density) -> Volume {
        let step = self.reading.step_si();
        if self.caught.instrument() == units::Instrument::Scale {
            units::Mass::from_si(step) / density
        } else {
            Volume::from_si(step)
        }
    }
}

/// The catches of one tip in one round; none at all means that it was not caught.
#[derive(Clone, Debug, PartialEq)]
pub struct TipCatches {
    /// The tip's number from the left as the driver sits.
    pub number: u32,
    /// The group of tips it is meant to be like.
    pub group: GroupId,
    /// The section that feeds it, counted from the left from 0.
    pub section: u16,
    /// Its cups.
    pub catches: Vec<Catch>,
}

/// What was done before a round. Rounds of different kinds never mix.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RoundKind {
    /// Before anything was touched.
    AsFound,
    /// After tips or strainers were cleaned.
    AfterCleaning,
    /// After tips were swapped or replaced.
    NewTips,
    /// After the pressure was changed.
    PressureChanged,
    /// After two tips changed places.
    Swapped,
    /// After something else, in the user's words.
    After(String),
}

impl RoundKind {
    /// The stable word in files and JSON.
    #[must_use]
    pub fn word(&self) -> &str {
        match self {
            Self::AsFound => "as found",
            Self::AfterCleaning => "after cleaning",
            Self::NewTips => "new tips",
            Self::PressureChanged => "pressure changed",
            Self::Swapped => "swapped",
            Self::After(words) => words,
        }
    }

    /// Looks the word up; other words are kept as they are.
    #[must_use]
    pub fn from_words(words: &str) -> Self {
        [Self::AsFound, Self::AfterCleaning, Self::NewTips, Self::PressureChanged, Self::Swapped]
            .into_iter()
            .find(|kind| kind.word() == words.trim())
            .unwrap_or_else(|| Self::After(words.trim().to_string()))
    }
}

/// One go along the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Round {
    /// What was done before it.
    pub kind: RoundKind,
    /// The tips from left to right.
    pub tips: Vec<TipCatches>,
    /// The liquid's density, by which a weight on a scale becomes a volume.
    pub density: Density,
    /// The usual time of a catch, in which the mean is told.
    pub time: Time,
    /// The unit the cups were read in, in which the mean is told.
    pub unit: Option<Unit>,
}
