//! The methods by code, and which width each needs and why.

use units::Arg;

/// How a rate was reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Method {
    /// Flow over speed times width.
    FlowSpeedWidth,
    /// A catch that lasted as long as the drive over a course.
    CatchOverCourse,
    /// What was filled up again after a driven length.
    DistanceRefill,
    /// What was used on an area.
    KnownArea,
    /// A whole tank over the acres it did.
    WholeTank,
    /// A boomless cluster.
    Boomless,
    /// A band over the row.
    Band,
    /// Several tips directed at a row.
    Directed,
    /// What a hand sprayer used on a plot.
    HandPlot,
    /// A hand sprayer's flow, walking speed and width.
    HandWalking,
    /// A catch that lasted as long as spraying a plot by hand.
    HandTimed,
}

/// Which width a rate was worked with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WidthKind {
    /// The distance from tip to tip.
    TipSpacing,
    /// Tips times spacing.
    Swath,
    /// The width that the caller says the amount serves.
    AsGiven,
    /// A boomless swath less what the next pass wets again.
    EffectiveSwath,
    /// The width of the band.
    Band,
    /// The distance from row to row.
    Rows,
    /// One tip's share of the band.
    BandShare,
    /// One tip's share of the row.
    RowShare,
    /// The width sprayed by hand.
    HandWidth,
    /// No width: the ground itself was measured.
    Ground,
}

impl Method {
    /// The stable code.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::FlowSpeedWidth => "flow_speed_width",
            Self::CatchOverCourse => "catch_over_course",
            Self::DistanceRefill => "distance_refill",
            Self::KnownArea => "known_area",
            Self::WholeTank => "whole_tank",
            Self::Boomless => "boomless",
            Self::Band => "band",
            Self::Directed => "directed",
            Self::HandPlot => "hand_plot",
            Self::HandWalking => "hand_walking",
            Self::HandTimed => "hand_timed",
        }
    }
}

/// One row a width: its stable code, and which width it is and why that one.
macro_rules! widths {
    ($($width:ident: $code:literal, $why:literal;)*) => {
        impl WidthKind {
            /// Every width.
            pub const ALL: &[Self] = &[$(Self::$width),*];

            /// The stable code.
            #[must_use]
            pub const fn code(self) -> &'static str {
                match self { $(Self::$width => $code),* }
            }

            /// Which width, and why that one.
            #[must_use]
            pub const fn why(self) -> &'static str {
                match self { $(Self::$width => $why),* }
            }

            /// Which width, and why that one, to be said in any language.
            #[must_use]
            pub const fn why_word(self) -> Arg {
                match self { $(Self::$width => Arg::word(concat!("width_", $code), $why)),* }
            }
        }
    };
}

widths! {
    TipSpacing: "tip_spacing",
        "tip spacing: one tip was collected, and it serves the ground up to half way to its neighbours";
    Swath: "swath",
        "tips times spacing: the whole boom was collected, and its end tips spray half a spacing beyond";
    AsGiven: "as_given",
        "the width that one tip (tip spacing) or the whole boom (tips × spacing) covers, as given";
    EffectiveSwath: "effective_swath",
        "the effective swath: what is wetted less what the next pass wets again";
    Band: "band",
        "the band: only that ground is treated";
    Rows: "rows",
        "row spacing: all that sprays one row was collected, and it serves the ground from row to row";
    BandShare: "band_share",
        "the band divided by its tips: one tip was collected, and it does its share of the band";
    RowShare: "row_share",
        "row spacing divided by the tips of a row: one tip was collected, and it does its share";
    HandWidth: "hand_width",
        "the width sprayed in one pass by hand";
    Ground: "ground",
        "none: the ground that was sprayed is known itself";
}
