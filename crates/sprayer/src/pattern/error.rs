//! Why a pattern cannot be worked out.

use units::{Amount, Angle, Arg, Args, Coded, Kind, Length, Quantity, UnitSystem};

/// Why a pattern cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum PatternError {
    /// Too few tips to overlap, or more than any boom has.
    #[error("{tips} tips make no pattern across a boom; 2 to 1000 would do")]
    Tips {
        /// How many were given.
        tips: usize,
    },
    /// No spacing.
    #[error("a spacing of {} cannot be; it must be more than nothing", shown(*.spacing, Kind::Width))]
    Spacing {
        /// The spacing as given.
        spacing: Length,
    },
    /// No height, or one no boom is carried at.
    #[error("a height of {} over what is sprayed cannot be; more than nothing and at most 5 m would do", shown(*.height, Kind::Width))]
    NoHeight {
        /// The tip, where it is one tip's.
        tip: Option<u32>,
        /// The height as given.
        height: Length,
    },
    /// An angle no fan has.
    #[error("tip {tip}: no fan is {} wide; 10 to 170 deg would do", shown(*.angle, Kind::Angle))]
    Angle {
        /// The tip.
        tip: u32,
        /// The angle as given.
        angle: Angle,
    },
    /// A flow that cannot be.
    #[error("tip {tip} cannot give {} times a sound tip's flow; 0 or more would do", units::sensible(*.flow))]
    Flow {
        /// The tip.
        tip: u32,
        /// The share as given.
        flow: f64,
    },
    /// A fan that leans so far that its edge does not come down.
    #[error("tip {tip}: a fan of {} that leans by {} sprays into the air", shown(*.angle, Kind::Angle), shown(*.tilt, Kind::Angle))]
    Tilt {
        /// The tip.
        tip: u32,
        /// The tilt as given.
        tilt: Angle,
        /// Its fan.
        angle: Angle,
    },
    /// A fan turned out of the boom's line too far.
    #[error("tip {tip}: a fan turned by {} cannot be; up to 60 deg would do", shown(*.twist, Kind::Angle))]
    Twist {
        /// The tip.
        tip: u32,
        /// The twist as given.
        twist: Angle,
    },
    /// Places not from left to right.
    #[error("tip {tip} is at {}, but the tip before it is at {}; give places from left to right", shown(*.place, Kind::Width), shown(*.before, Kind::Width))]
    Order {
        /// The tip.
        tip: u32,
        /// Its place.
        place: Length,
        /// The place of the tip before it.
        before: Length,
    },
    /// Nothing sprays, or nothing where it is judged.
    #[error("every tip is plugged, so nothing comes down")]
    AllPlugged,
    /// Grooves that cannot be.
    #[error("grooves of {} cannot be; 50 or 100 mm would do", shown(*.groove, Kind::Width))]
    Groove {
        /// The width as given.
        groove: Length,
    },
    /// One groove would hold the whole boom.
    #[error("a groove of {} is wider than the boom, {}; 50 or 100 mm would do", shown(*.groove, Kind::Width), shown(*.boom, Kind::Width))]
    GrooveWiderThanBoom {
        /// The groove's width.
        groove: Length,
        /// What the boom covers.
        boom: Length,
    },
    /// Nowhere do as many fans overlap as would on a longer boom.
    #[error(
        "with {tips} tips no part of the boom has all fans over it that overlap there; more tips, or a lower boom, would do"
    )]
    NoOverlap {
        /// How many tips there are.
        tips: usize,
    },
    /// Nothing was collected under a tip.
    #[error(
        "{grooves} grooves that collected nothing are no pattern of a tip; 1 to 1000 grooves, some of them wet, would do"
    )]
    NothingCollected {
        /// How many grooves there were.
        grooves: usize,
    },
    /// A groove collected what cannot be.
    #[error("groove {groove} cannot have collected {}; 0 or more would do", units::sensible(*.amount))]
    Collected {
        /// Which groove, from the left from 1.
        groove: usize,
        /// What was given.
        amount: f64,
    },
}

fn shown(quantity: impl Quantity, kind: Kind) -> String {
    Amount::new(quantity, kind).text(UnitSystem::Us)
}

fn count(number: usize) -> Arg {
    Arg::Count(u32::try_from(number).unwrap_or(u32::MAX))
}

impl Coded for PatternError {
    fn code(&self) -> &'static str {
        match self {
            Self::Tips { .. } => "pattern_tips",
            Self::Spacing { .. } => "pattern_spacing",
            Self::NoHeight { .. } => "pattern_no_height",
            Self::Angle { .. } => "pattern_angle",
            Self::Flow { .. } => "pattern_flow",
            Self::Tilt { .. } => "pattern_into_the_air",
            Self::Twist { .. } => "pattern_twist",
            Self::Order { .. } => "pattern_order",
            Self::AllPlugged => "pattern_all_plugged",
            Self::Groove { .. } => "pattern_groove",
            Self::GrooveWiderThanBoom { .. } => "pattern_groove_wider_than_boom",
            Self::NoOverlap { .. } => "pattern_no_overlap",
            Self::NothingCollected { .. } => "pattern_nothing_collected",
            Self::Collected { .. } => "pattern_collected",
        }
    }

    fn args(&self) -> Args {
        let width = |length: Length| Arg::Amount(Amount::new(length, Kind::Width));
        let degrees = |angle: Angle| Arg::Amount(Amount::new(angle, Kind::Angle));
        match self {
            Self::Tips { tips } | Self::NoOverlap { tips } => Args::new().with("tips", count(*tips)),
            Self::Spacing { spacing } => Args::new().with("spacing", width(*spacing)),
            Self::NoHeight { height, .. } => Args::new().with("height", width(*height)),
            Self::Angle { tip, angle } => {
                Args::new().with("tip", Arg::Count(*tip)).with("angle", degrees(*angle))
            }
            Self::Flow { tip, flow } => {
                Args::new().with("tip", Arg::Count(*tip)).with("flow", Arg::Number(*flow))
            }
            Self::Tilt { tip, tilt, angle } => Args::new()
                .with("tip", Arg::Count(*tip))
                .with("tilt", degrees(*tilt))
                .with("angle", degrees(*angle)),
            Self::Twist { tip, twist } => {
                Args::new().with("tip", Arg::Count(*tip)).with("twist", degrees(*twist))
            }
            Self::Order { tip, place, before } => Args::new()
                .with("tip", Arg::Count(*tip))
                .with("place", width(*place))
                .with("before", width(*before)),
            Self::AllPlugged => Args::new(),
            Self::Groove { groove } => Args::new().with("groove", width(*groove)),
            Self::GrooveWiderThanBoom { groove, boom } => {
                Args::new().with("groove", width(*groove)).with("boom", width(*boom))
            }
            Self::NothingCollected { grooves } => Args::new().with("grooves", count(*grooves)),
            Self::Collected { groove, amount } => {
                Args::new().with("groove", count(*groove)).with("amount", Arg::Number(*amount))
            }
        }
    }
}
