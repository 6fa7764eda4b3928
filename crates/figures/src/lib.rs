//! Drawings: the row of cups under a boom, the timed drive, the rate against what is wanted, the tips on a tape, what the
//! ground gets.
//!
//! A drawing is a tree of shapes with roles and ids. [`svg()`] makes it an SVG for pages, print and PDF. Nothing here
//! decides anything or words a label: verdicts and texts come in ready.

mod drawing;
mod drive;
pub mod fonts;
mod gap_row;
mod ground_row;
mod line_up;
mod look;
mod mark;
mod pen;
mod rate_scale;
mod row_of_cups;
mod spread_strip;
mod svg;
mod text;
mod type_widths;

pub use drawing::{Anchor, Bounds, Drawing, Node, PathEnd, Point, Role, Shape, TextLine};
pub use drive::{DriveFigure, RunShown, Way};
pub use gap_row::{GapRow, GapShown, MoveShown, TipOnTape, Toward};
pub use ground_row::{Across, GrooveShown, GroundRow, Spot, TipOverGround};
pub use look::{ACT, BAND, INK, Look, PAPER, QUIET, RULE, WATER, WATER_LINE, look};
pub use mark::Mark;
pub use rate_scale::{Allowed, Labelled, RateScale};
pub use row_of_cups::{CupMark, CupShown, Density, LimitBand, RowOfCups, Seen, TipGroup, TipShape, TipShown};
pub use spread_strip::{DotShown, SpreadStrip};
pub use svg::svg;
pub use text::{Fitted, Room, Weight, Wholeness, fit, text_width};
