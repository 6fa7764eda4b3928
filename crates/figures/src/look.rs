//! The ink of each role.
//!
//! Verdicts differ by shape, weight and place first; colour only repeats them, so every drawing holds in black and
//! white. One strong colour is kept for what is to be acted on.

use crate::drawing::Role;

/// Text and outlines. Our own choice, like all inks below: warm dark ink on light paper, for sun and for print.
pub const INK: &str = "#1c1a17";
/// The paper of a page. Drawings leave it to the page.
pub const PAPER: &str = "#fbf8f1";
/// Thin rules.
pub const RULE: &str = "#cfc6b4";
/// Texts that stay behind, dashed borders.
pub const QUIET: &str = "#6a6355";
/// What a limit lets pass.
pub const BAND: &str = "#ece5d6";
/// Water.
pub const WATER: &str = "#bcd3dd";
/// Its surface, and spray.
pub const WATER_LINE: &str = "#2b5d73";
/// What is to be acted on, and nothing else.
pub const ACT: &str = "#9a2f0b";

/// How one role is inked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// Colour of its inside.
    pub fill: Option<&'static str>,
    /// How much of that colour is laid on, from 0 to 1.
    pub fill_opacity: f64,
    /// Colour of its line.
    pub stroke: Option<&'static str>,
    /// Width of that line.
    pub stroke_width: f64,
    /// Lengths of dashes and gaps.
    pub dashes: Option<&'static str>,
}

const fn filled(fill: &'static str) -> Look {
    Look { fill: Some(fill), fill_opacity: 1.0, stroke: None, stroke_width: 0.0, dashes: None }
}

const fn soft(fill: &'static str, fill_opacity: f64) -> Look {
    Look { fill_opacity, ..filled(fill) }
}

const fn drawn(stroke: &'static str, stroke_width: f64) -> Look {
    Look { fill: None, fill_opacity: 1.0, stroke: Some(stroke), stroke_width, dashes: None }
}

const fn dashed(stroke: &'static str, stroke_width: f64, dashes: &'static str) -> Look {
    Look { dashes: Some(dashes), ..drawn(stroke, stroke_width) }
}

/// How a role is inked. Widths, dashes and shares of ink are our own choice, judged on paper at 190 mm for 1000 units.
#[must_use]
pub fn look(role: Role) -> Look {
    match role {
        Role::Part | Role::CupOfTip => {
            Look { fill: None, fill_opacity: 1.0, stroke: None, stroke_width: 0.0, dashes: None }
        }
        Role::Boom | Role::Tip | Role::Value | Role::ArrowHead => filled(INK),
        Role::Fan => soft(WATER_LINE, 0.12),
        Role::Bracket | Role::Axis => drawn(INK, 2.0),
        Role::Leader => drawn(QUIET, 1.0),
        Role::Band => filled(BAND),
        Role::BandEdge => dashed(QUIET, 1.2, "6 4"),
        Role::Cup => drawn(INK, 1.6),
        Role::CupNarrow => drawn(INK, 1.0),
        Role::CupAct => drawn(ACT, 3.6),
        Role::CupCannotTell => drawn(INK, 3.2),
        Role::CupNotCaught => dashed(QUIET, 1.6, "4 4"),
        Role::Water => filled(WATER),
        Role::Doubt => soft(WATER_LINE, 0.36),
        Role::WaterLine => drawn(WATER_LINE, 2.0),
        Role::Overflow => drawn(WATER_LINE, 2.4),
        Role::MarkAct | Role::TextAct => filled(ACT),
        Role::MarkActLine => drawn(ACT, 3.2),
        Role::MarkCannotTell | Role::ValueLine => drawn(INK, 2.2),
        Role::MarkNothing => drawn(QUIET, 2.0),
        Role::Text => filled(INK),
        Role::TextQuiet => filled(QUIET),
        Role::Tick => drawn(INK, 1.4),
        Role::Dot => Look { fill: Some(WATER), ..drawn(INK, 1.2) },
        Role::Wanted => drawn(INK, 3.0),
        Role::Border => drawn(INK, 4.0),
        Role::Arrow => drawn(INK, 2.4),
    }
}

/// The role's name in the drawing's source, for pages that look for it.
#[must_use]
pub fn name(role: Role) -> &'static str {
    match role {
        Role::Part => "part",
        Role::CupOfTip => "cup-of-tip",
        Role::Boom => "boom",
        Role::Tip => "tip",
        Role::Fan => "fan",
        Role::Bracket => "bracket",
        Role::Leader => "leader",
        Role::Band => "band",
        Role::BandEdge => "band-edge",
        Role::Cup => "cup",
        Role::CupNarrow => "cup-narrow",
        Role::CupAct => "cup-act",
        Role::CupCannotTell => "cup-cannot-tell",
        Role::CupNotCaught => "cup-not-caught",
        Role::Water => "water",
        Role::Doubt => "doubt",
        Role::WaterLine => "water-line",
        Role::Overflow => "overflow",
        Role::MarkAct => "mark-act",
        Role::MarkActLine => "mark-act-line",
        Role::MarkCannotTell => "mark-cannot-tell",
        Role::MarkNothing => "mark-nothing",
        Role::Text => "text",
        Role::TextAct => "text-act",
        Role::TextQuiet => "text-quiet",
        Role::Axis => "axis",
        Role::Tick => "tick",
        Role::Value => "value",
        Role::ValueLine => "value-line",
        Role::Dot => "dot",
        Role::Wanted => "wanted",
        Role::Border => "border",
        Role::Arrow => "arrow",
        Role::ArrowHead => "arrow-head",
    }
}
