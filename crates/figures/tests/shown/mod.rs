//! Invented booms and drives to draw, for the tests and the gallery.
#![allow(
    dead_code,
    unused_imports,
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    missing_docs
)]

mod cups;
mod others;

pub use cups::{Boom, Language, grouped, odd, row};
pub use others::{drive, gaps, ground, rate, spread};

use figures::Drawing;

/// Every drawing of the gallery, with a name.
pub fn all() -> Vec<(String, Drawing)> {
    let mut all = Vec::new();
    cups::all(&mut all);
    others::all(&mut all);
    all
}
