//! What to do about each tip, as the trade has it: high means replace; low means clean, catch again, then
//! replace; many worn means the set.

use units::Verdict;

use super::new_tip::AgainstNew;
use super::summary::{RoundSummary, TipState};

/// When so many tips are off that the whole set is to be replaced, kept as data with who says so.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SetShare {
    /// The share of tips.
    pub share: f64,
    /// Who says so.
    pub source: &'static str,
}

/// More than 33 % of the tips off means the set.
/// Source: French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 9.2.2.1 and 9.2.2.2.
pub const SET_SHARE: SetShare = SetShare {
    share: 0.33,
    source: "French order of 18 Dec 2008 (NOR AGRP0828914A), annex IV B, 9.2.2: more than 33 % of the tips",
};

/// What to do with a tip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Change {
    /// It gives next to nothing: clean tip and strainer, catch again.
    Unplug,
    /// It gives too much: replace it. A tip does not wear small.
    Replace,
    /// It gives too little: clean it, catch again, replace it if it stays low.
    Clean,
    /// It gives as the others do, but too much for a new one: it is worn with them.
    Worn,
    /// The readings do not settle it: catch it again, longer or with a finer cup.
    CatchAgain,
    /// It was not caught: catch it.
    Catch,
}

impl Change {
    /// Every one, the surest first.
    pub const ALL: [Self; 6] =
        [Self::Unplug, Self::Replace, Self::Clean, Self::Worn, Self::CatchAgain, Self::Catch];

    /// The stable word in JSON, and its name among the sentences.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Unplug => "unplug",
            Self::Replace => "replace",
            Self::Clean => "clean",
            Self::Worn => "worn",
            Self::CatchAgain => "catch_again",
            Self::Catch => "catch",
        }
    }
}

/// What to do on the boom.
#[derive(Clone, Debug, PartialEq)]
pub struct Advice {
    /// Tips with what to do, from left to right within each kind of change.
    pub tips: Vec<(u32, Change)>,
    /// Whether so many are off that the set should be replaced: how many of how many, and who says so.
    pub whole_set: Option<(u32, u32, SetShare)>,
}

/// Returns what to do about each tip, the surest first.
///
/// *Assumptions*: the settled verdict decides, not the reading as it stands; a tip that cannot be told is caught
/// again before anybody buys anything.
///
/// *Source*: Alberta Agriculture, Agdex 606-1, p. 11: over, replace; under, clean and check again.
#[must_use]
pub fn advise(summary: &RoundSummary, new: &[AgainstNew], set: SetShare) -> Advice {
    let mut tips: Vec<(u32, Change)> = Vec::new();
    for tip in &summary.tips {
        let worn = new.iter().find(|against| against.number == tip.number).map(|against| against.verdict);
        let high = tip.most_likely().is_some_and(|likely| likely.deviation > 0.0);
        let change = match (tip.state, tip.verdict) {
            (TipState::Plugged, _) => Some(Change::Unplug),
            (TipState::NotCaught, _) => Some(Change::Catch),
            (TipState::Runs, Some(Verdict::Outside)) if high => Some(Change::Replace),
            (TipState::Runs, Some(Verdict::Outside)) => Some(Change::Clean),
            (TipState::Runs, Some(Verdict::CannotTell)) => Some(Change::CatchAgain),
            (TipState::Runs, _) if worn == Some(Verdict::Outside) => Some(Change::Worn),
            _ => None,
        };
        tips.extend(change.map(|change| (tip.number, change)));
    }
    tips.sort_by_key(|(number, change)| (*change, *number));
    let caught = summary.tips.iter().filter(|tip| tip.state != TipState::NotCaught).count();
    let off = tips
        .iter()
        .filter(|(_, change)| matches!(change, Change::Replace | Change::Clean | Change::Worn))
        .count();
    let whole_set = (caught > 0 && off as f64 > set.share * caught as f64 && off > 1)
        .then(|| (count(off), count(caught), set));
    Advice { tips, whole_set }
}

fn count(tips: usize) -> u32 {
    u32::try_from(tips).unwrap_or(u32::MAX)
}
