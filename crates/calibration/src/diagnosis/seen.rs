//! What was seen beside the cups, each as a likelihood of the tip's causes.

use super::cause::Cause;

/// Something that was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The size and colour of a tip are those it should have.
    RightSize {
        /// The tip's number.
        tip: u32,
    },
    /// They are not.
    WrongSize {
        /// The tip's number.
        tip: u32,
    },
    /// The fan of a tip is streaky or to one side.
    StreakyFan {
        /// The tip's number.
        tip: u32,
    },
    /// The fan of a tip is even.
    EvenFan {
        /// The tip's number.
        tip: u32,
    },
}

/// How often a wrong size is noticed, and a right one taken for wrong. Our assumption: the number is small and dirty,
/// colours fade.
const SIZE_NOTICED: f64 = 0.97;
const SIZE_MISTAKEN: f64 = 0.01;
/// How often the fan of a tip is streaky, by cause in the order of [`Cause::ALL`]. Our assumption: dirt shows in the
/// fan more often than wear; a plugged tip has none.
const STREAKY: [f64; 5] = [0.05, 0.35, 0.70, 0.90, 0.05];

impl Seen {
    /// The tip it is about.
    #[must_use]
    pub const fn tip(self) -> u32 {
        match self {
            Self::RightSize { tip }
            | Self::WrongSize { tip }
            | Self::StreakyFan { tip }
            | Self::EvenFan { tip } => tip,
        }
    }

    /// How likely it is under each cause.
    #[must_use]
    pub fn likelihood(self) -> [f64; 5] {
        Cause::ALL.map(|cause| {
            let noticed = if cause == Cause::WrongTip { SIZE_NOTICED } else { SIZE_MISTAKEN };
            match self {
                Self::WrongSize { .. } => noticed,
                Self::RightSize { .. } => 1.0 - noticed,
                Self::StreakyFan { .. } => STREAKY[cause.place()],
                Self::EvenFan { .. } => 1.0 - STREAKY[cause.place()],
            }
        })
    }
}

/// What all that was seen of one tip says, by cause.
pub(super) fn says(seen: &[Seen], tip: u32) -> [f64; 5] {
    let mut says = [1.0; 5];
    for one in seen.iter().filter(|one| one.tip() == tip) {
        says.iter_mut().zip(one.likelihood()).for_each(|(sum, likely)| *sum *= likely);
    }
    says
}
