//! The boom as it is laid out: positions, sections, groups of tips meant to be alike, and the swath.

use units::{Amount, Arg, Args, Coded, Kind, Length, Quantity, UnitSystem};

/// A place on the boom for a tip. It stays the same when tips are swapped or the numbering changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PositionId(pub u32);

/// One tip, wherever it is fitted. The caller hands the number in (a UUID fits); none is made up here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FittedTipId(pub u128);

/// A group of tips meant to be alike. Tips of different groups are never compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct GroupId(pub u16);

/// Where the boom is mounted. The number from the left is as the driver sits, looking forward; a front boom is
/// drawn mirrored because the driver faces it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Mounting {
    /// Behind the driver.
    #[default]
    Rear,
    /// In front of the driver.
    Front,
}

/// One position with what belongs to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Position {
    /// Its stable name.
    pub id: PositionId,
    /// The section that feeds it, counted from the left from 0.
    pub section: u16,
    /// The group its tip belongs to.
    pub group: GroupId,
    /// The tip that is fitted, where that is known.
    pub tip: Option<FittedTipId>,
}

/// A group with its name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TipGroup {
    /// Its stable name.
    pub id: GroupId,
    /// What people call it: "boom", "end tips", "fence row".
    pub name: String,
}

/// A boom: positions from left to right as the driver sits, one spacing apart.
#[derive(Clone, Debug, PartialEq)]
pub struct BoomLayout {
    positions: Vec<Position>,
    groups: Vec<TipGroup>,
    spacing: Length,
    mounting: Mounting,
}

impl BoomLayout {
    /// A boom of `sections` tips, all of one group, `spacing` apart.
    ///
    /// *Errors*: no tips, a section without tips, no spacing, more than 1,000 tips.
    pub fn new(sections: &[u32], spacing: Length, mounting: Mounting) -> Result<Self, BoomError> {
        if !spacing.is_positive() {
            return Err(BoomError::NoSpacing { spacing });
        }
        let total: u64 = sections.iter().copied().map(u64::from).sum();
        if total == 0 || sections.contains(&0) {
            return Err(BoomError::EmptySection);
        }
        if total > u64::from(MOST_TIPS) {
            return Err(BoomError::TooMany { tips: total });
        }
        let mut positions = Vec::new();
        for (section, tips) in (0_u16..).zip(sections) {
            for _ in 0..*tips {
                let id = PositionId(u32::try_from(positions.len()).unwrap_or(MOST_TIPS) + 1);
                positions.push(Position { id, section, group: GroupId(0), tip: None });
            }
        }
        let groups = vec![TipGroup { id: GroupId(0), name: "boom".to_string() }];
        Ok(Self { positions, groups, spacing, mounting })
    }

    /// Puts tips, numbered from the left from 1, into a group of their own, because they are meant to differ.
    ///
    /// *Errors*: a number that is not on the boom.
    pub fn with_group(mut self, name: &str, numbers: &[u32]) -> Result<Self, BoomError> {
        let id = GroupId(u16::try_from(self.groups.len()).map_err(|_| BoomError::EmptySection)?);
        for number in numbers {
            let tips = self.positions.len();
            let place = usize::try_from(*number).ok().and_then(|number| number.checked_sub(1));
            let position = place.and_then(|place| self.positions.get_mut(place));
            position.ok_or(BoomError::NoSuchTip { number: *number, tips })?.group = id;
        }
        self.groups.push(TipGroup { id, name: name.to_string() });
        Ok(self)
    }

    /// The positions from left to right as the driver sits.
    #[must_use]
    pub fn positions(&self) -> &[Position] {
        &self.positions
    }

    /// The groups; the first holds every tip that is in no other.
    #[must_use]
    pub fn groups(&self) -> &[TipGroup] {
        &self.groups
    }

    /// The intended distance between neighbours.
    #[must_use]
    pub const fn spacing(&self) -> Length {
        self.spacing
    }

    /// Where the boom is mounted.
    #[must_use]
    pub const fn mounting(&self) -> Mounting {
        self.mounting
    }

    /// How many tips there are.
    #[must_use]
    pub fn tips(&self) -> u32 {
        u32::try_from(self.positions.len()).unwrap_or(MOST_TIPS)
    }

    /// Returns the swath: tips times spacing. Each end tip covers half a spacing beyond itself, so this is one
    /// spacing more than the boom from first to last tip.
    ///
    /// *Source*: state applicator-exam practice problems, Henderson County extension office (13 × 20 in = 21.7 ft).
    #[must_use]
    pub fn swath(&self) -> Length {
        self.spacing * f64::from(self.tips())
    }

    /// The number shown for a position, from the left from 1.
    #[must_use]
    pub fn number_of(&self, id: PositionId) -> Option<u32> {
        let place = self.positions.iter().position(|position| position.id == id)?;
        u32::try_from(place + 1).ok()
    }
}

/// Why a boom cannot be laid out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum BoomError {
    /// No tips, or a section without any.
    #[error("a boom needs at least one tip in every section")]
    EmptySection,
    /// No spacing.
    #[error("a spacing of {} cannot be; it must be more than nothing", Amount::new(*.spacing, Kind::Width).text(UnitSystem::Us))]
    NoSpacing {
        /// The spacing as given.
        spacing: Length,
    },
    /// More tips than any boom has.
    #[error("{tips} tips are more than any boom has (at most 1000)")]
    TooMany {
        /// The number given.
        tips: u64,
    },
    /// A tip number that is not on the boom.
    #[error("there is no tip {number}; the boom has {tips}, numbered from the left from 1")]
    NoSuchTip {
        /// The number given.
        number: u32,
        /// How many tips there are.
        tips: usize,
    },
}

impl Coded for BoomError {
    fn code(&self) -> &'static str {
        match self {
            Self::EmptySection => "boom_empty_section",
            Self::NoSpacing { .. } => "boom_no_spacing",
            Self::TooMany { .. } => "boom_too_many_tips",
            Self::NoSuchTip { .. } => "boom_no_such_tip",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::EmptySection => Args::new(),
            Self::NoSpacing { spacing } => {
                Args::new().with("spacing", Arg::Amount(Amount::new(*spacing, Kind::Width)))
            }
            Self::TooMany { tips } => {
                Args::new().with("tips", Arg::Count(u32::try_from(*tips).unwrap_or(u32::MAX)))
            }
            Self::NoSuchTip { number, tips } => Args::new()
                .with("number", Arg::Count(*number))
                .with("tips", Arg::Count(u32::try_from(*tips).unwrap_or(u32::MAX))),
        }
    }
}

/// The most tips taken. Our own bound: 72 bodies with three tips each make 216, the largest boom we know of.
const MOST_TIPS: u32 = 1000;
