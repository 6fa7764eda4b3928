//! Sheets to keep or hand over.
//!
//! A [`Sheet`] describes what stands on the pages, in words and drawings that are ready to be read; nothing in it is
//! worked out here. [`html`] renders it as one page that prints by itself, without fetching anything; the crate
//! `report-pdf` renders the same description as PDF. Sizes and heights of both stand in [`style`] and [`layout`], so that
//! what fits a page in one fits it in the other.

pub mod html;
pub mod layout;
pub mod make;
pub mod picture;
pub mod sheet;
pub mod style;
mod texts;

pub use picture::{Picture, PictureError};
pub use sheet::Sheet;
pub use texts::texts;
