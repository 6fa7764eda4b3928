//! Sizes and colours of a sheet, the same for the page and the PDF.
//!
//! Our own look: light paper, dark ink, one strong colour for what is to be acted on. Letters are in points, all else in
//! millimetres, at the scale 1 of a page.

use crate::sheet::{Lie, Page};
use words::Paper;

/// Ink.
pub const INK: &str = "#1c1a17";
/// Quiet text, large or secondary only: 5.9 to 1 against white.
pub const QUIET: &str = "#6a6355";
/// Rules.
pub const RULE: &str = "#cfc6b4";
/// What is to be acted on, and nothing else.
pub const ACT: &str = "#9a2f0b";

/// Letters of the text. Our own choice: at arm's length outdoors.
pub const TEXT: f64 = 10.5;
/// Small letters; never below 7 pt after scaling. Our own choice.
pub const SMALL: f64 = 9.0;
/// Headings. Our own choice.
pub const HEADING: f64 = 12.5;
/// The title. Our own choice.
pub const TITLE: f64 = 17.0;
/// The number of an answer. Our own choice: read across a tailgate.
pub const BIG: f64 = 30.0;
/// The unit beside it. Our own choice.
pub const UNIT: f64 = 13.0;
/// A value on the cab card. Our own choice: read from the seat.
pub const LARGE: f64 = 21.0;
/// The number of a tip on a tag. Our own choice.
pub const TAG: f64 = 54.0;
/// The word on a tag that says what is wrong. Our own choice.
pub const TAG_WORD: f64 = 15.0;
/// Line height as a share of the letters' size. Our own choice.
pub const LINE: f64 = 1.36;
/// Millimetres in a point. Source: 1 pt = 1/72 in (ISO 32000-2 user space unit) and 1 in = 25.4 mm.
pub const MM_PER_POINT: f64 = 25.4 / 72.0;
/// White around a page, in millimetres; within what printers can print. Our own choice.
pub const MARGIN: f64 = 13.0;
/// What the foot of a page takes, in millimetres. Our own choice.
pub const FOOT: f64 = 7.0;
/// White between columns, in millimetres. Our own choice.
pub const GUTTER: f64 = 9.0;
/// White between blocks, in millimetres. Our own choice.
pub const GAP: f64 = 3.0;
/// A row to write in by hand, in millimetres: as ruled school paper, 8.7 mm (11/32 in) wide ruled. Common practice.
pub const HAND_ROW: f64 = 8.0;

/// Letters are never made smaller than this share of their size, so that the smallest stay above 7 pt. Our own choice.
pub const SMALLEST_SCALE: f64 = 0.78;

/// The width and height of the paper as it lies, in millimetres.
#[must_use]
pub fn paper(paper: Paper, lie: Lie) -> (f64, f64) {
    let (short, long) = paper.millimetres();
    match lie {
        Lie::Upright => (short, long),
        Lie::OnItsSide => (long, short),
    }
}

/// The width and height that blocks may take on a page, in millimetres.
#[must_use]
pub fn room(of: Paper, page: &Page) -> (f64, f64) {
    let (width, height) = paper(of, page.lie);
    (width - 2.0 * MARGIN, height - 2.0 * MARGIN - FOOT)
}

/// The width of one of a page's columns, in millimetres.
#[must_use]
pub fn column_width(of: Paper, page: &Page) -> f64 {
    let (width, _) = room(of, page);
    let columns = page.columns.len().max(1) as f64;
    (width - GUTTER * (columns - 1.0)) / columns
}
