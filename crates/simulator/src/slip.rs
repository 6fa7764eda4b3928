//! Slips of people: a mark misread, the line of a wrong number taken, a time written that was not timed.

use crate::random::Random;

/// What went wrong with one reading. Nobody at the boom knows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// Nothing.
    None,
    /// One mark too many or too few was read.
    OneMark,
    /// The line of another number was taken: some 10 to 25 % too much or too little.
    WrongLine,
    /// The cup stood under for twice or half the time that was written.
    WrongTime,
}

/// How often slips happen, for each cup; a wrong time for each timed run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlipChances {
    /// The chance of one mark too many or too few.
    pub one_mark: f64,
    /// The chance of a wrong line.
    pub wrong_line: f64,
    /// The chance of a wrong time.
    pub wrong_time: f64,
}

impl SlipChances {
    /// Nobody slips.
    #[must_use]
    pub const fn none() -> Self {
        Self { one_mark: 0.0, wrong_line: 0.0, wrong_time: 0.0 }
    }

    /// Some three cups of a hundred in all: one mark most often, a wrong time rarely.
    ///
    /// *Source*: about .03 for each catch (planning value of this house, our assumption), shared out by us.
    #[must_use]
    pub const fn now_and_then() -> Self {
        Self { one_mark: 0.02, wrong_line: 0.008, wrong_time: 0.002 }
    }

    /// Draws what goes wrong with the reading of a cup.
    pub(crate) fn of_reading(&self, random: &mut Random) -> Slip {
        let place = random.share();
        if place < self.one_mark {
            Slip::OneMark
        } else if place < self.one_mark + self.wrong_line {
            Slip::WrongLine
        } else {
            Slip::None
        }
    }

    /// Draws by how many times the time of a run differs from what is written.
    pub(crate) fn of_run(&self, random: &mut Random) -> f64 {
        if !random.happens(self.wrong_time) {
            1.0
        } else if random.happens(0.5) {
            2.0
        } else {
            0.5
        }
    }
}

impl Slip {
    /// The marks that are written for marks that should have been read.
    pub(crate) fn change(self, marks: f64, random: &mut Random) -> f64 {
        match self {
            Self::None | Self::WrongTime => marks,
            Self::OneMark if random.happens(0.5) => marks + 1.0,
            Self::OneMark => marks - 1.0,
            Self::WrongLine => marks * random.one_of(&WRONG_LINES).copied().unwrap_or(1.0),
        }
    }
}

/// By how much a wrong line is off. Source: factors taken for misreadings in this house's physics, from memory.
const WRONG_LINES: [f64; 4] = [0.9, 1.1, 0.8, 1.25];
