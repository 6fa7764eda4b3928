//! What stands on each sheet.

mod answers;
mod before;
mod cab;
mod cups;
mod example;
mod figures_of;
mod head;
mod likely;
mod measured;
mod paper;
mod repeat;
mod said;
mod steps;
mod tags;
mod told;
mod visit_sheet;
mod worked;

pub use answers::{answers, stops};
pub use before::before;
pub use cab::cab;
pub use cups::{blocks as cup_blocks, cups};
pub use figures_of::{ground as ground_blocks, spacing as spacing_blocks};
pub use likely::{
    Since, Standing, TIP_IS, check_how, check_minutes, check_said, checks_now, findings_now,
    of_more_than_a_tip, section_said, since, standing, tip_is, tip_likely, tip_likely_said,
};
pub use measured::{reading_text, shown_reading, state as tip_state};
pub use paper::{MOST_TIPS, PaperFor, paper};
pub use repeat::pairs as setting_pairs;
pub use steps::{steps, steps_and_likely};
pub use tags::tags;
pub use told::notes;
pub use visit_sheet::visit;
pub use worked::{cups as cup_tables, workings};

/// What made the sheet: named on its foot, so that a figure can be asked about years later.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Maker<'a> {
    /// The program.
    pub name: &'a str,
    /// Its version.
    pub version: &'a str,
}

impl Default for Maker<'static> {
    fn default() -> Self {
        Self { name: "Evenswath", version: env!("CARGO_PKG_VERSION") }
    }
}

/// Which languages a sheet is in.
#[derive(Debug)]
pub struct Readers<'a> {
    /// The one who reads it first.
    pub first: &'a words::Words,
    /// The one who reads it beside the first, where two do.
    pub beside: Option<&'a words::Words>,
}

impl<'a> Readers<'a> {
    /// One reader.
    #[must_use]
    pub const fn one(words: &'a words::Words) -> Self {
        Self { first: words, beside: None }
    }

    /// Each reader in turn.
    pub fn each(&self) -> impl Iterator<Item = &'a words::Words> {
        core::iter::once(self.first).chain(self.beside)
    }
}
