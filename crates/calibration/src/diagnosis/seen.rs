//! What was seen beside the cups, each as a likelihood of the tip's causes.

use super::cause::Cause;
use super::priors::Priors;

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
    /// It still drips five seconds after shutting off: its check valve leaks, which changes nothing while it sprays.
    Drips {
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
            | Self::EvenFan { tip }
            | Self::Drips { tip } => tip,
        }
    }

    /// What was seen of a tip, by its stable word.
    #[must_use]
    pub fn from_word(tip: u32, word: &str) -> Option<Self> {
        match word {
            "right_size" => Some(Self::RightSize { tip }),
            "wrong_size" => Some(Self::WrongSize { tip }),
            "streaky_fan" => Some(Self::StreakyFan { tip }),
            "even_fan" => Some(Self::EvenFan { tip }),
            "drips" => Some(Self::Drips { tip }),
            _ => None,
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
                Self::Drips { .. } => 1.0,
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

/// Something that was seen of the sprayer as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Looked {
    /// Tips of several kinds, sizes or colours.
    TipsMixed,
    /// All tips of one kind, size and colour.
    TipsAlike,
    /// Strainers that are dirty.
    StrainersDirty,
    /// Strainers that are clean.
    StrainersClean,
    /// A gauge that does not go back to zero.
    GaugeOff,
    /// Tips that drip five seconds after shutting off, without saying which.
    Drips,
    /// Foam in the cups.
    Foam,
}

impl Looked {
    /// What an answer to a question of the look tells, by the question's stable word; nothing where it tells nothing of causes.
    #[must_use]
    pub fn from_answer(question: &str, yes: bool) -> Option<Self> {
        match (question, yes) {
            ("tips_alike", true) => Some(Self::TipsAlike),
            ("tips_alike", false) => Some(Self::TipsMixed),
            ("strainers_clean", true) => Some(Self::StrainersClean),
            ("strainers_clean", false) => Some(Self::StrainersDirty),
            ("gauge_back_to_zero", false) => Some(Self::GaugeOff),
            ("no_drip_after_5_s", false) => Some(Self::Drips),
            ("foam", true) => Some(Self::Foam),
            _ => None,
        }
    }

    /// Weighs what is believed beforehand by it.
    ///
    /// *Assumptions*: how many times likelier each makes what it points at is ours: a mixed set is five times as likely to
    /// hold a given wrong tip, one that was looked through a fifth; dirty strainers make a restriction three times as
    /// likely and a partly plugged tip twice, clean ones half of both; a gauge that does not return is off more often
    /// than not; foam doubles the cups that are misread.
    pub fn weigh(self, priors: &mut Priors) {
        match self {
            Self::TipsMixed => priors.tips.weigh(&[1.0, 1.0, 1.0, 1.0, 5.0]),
            Self::TipsAlike => priors.tips.weigh(&[1.0, 1.0, 1.0, 1.0, 0.2]),
            Self::StrainersDirty => {
                priors.sections.weigh(&[1.0, 3.0, 3.0]);
                priors.tips.weigh(&[1.0, 1.0, 2.0, 2.0, 1.0]);
            }
            Self::StrainersClean => {
                priors.sections.weigh(&[1.0, 0.5, 1.0]);
                priors.tips.weigh(&[1.0, 1.0, 0.5, 0.5, 1.0]);
            }
            // Leaking check valves hold nothing back while it sprays.
            Self::Drips => {}
            Self::Foam => priors.catches.weigh(&[1.0, 2.0]),
            Self::GaugeOff => {
                let wide = priors.boom.iter().map(|(_, spread)| *spread).fold(0.0, f64::max);
                for (weight, spread) in &mut priors.boom {
                    *weight *= if *spread < wide { 1.0 } else { 6.0 };
                }
                // Of the booms that are off, none for the set's sake.
                let zero = priors.parts.iter().map(|part| part.zero).fold(0.0, f64::max);
                for part in &mut priors.parts {
                    part.weight *= if part.zero < zero { 1.0 } else { 11.0 };
                }
            }
        }
    }
}
