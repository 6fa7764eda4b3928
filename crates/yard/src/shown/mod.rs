//! What the screens show, ready to be read: views put these texts and drawings on the page and decide nothing.

mod cups;
mod field;
mod lines;
mod step;
mod why;

pub use cups::{CupScreen, cup_screen, small_row};
pub use field::{Choice, Editor, FieldShown, choice_key, field, fields_of, value_said};
pub use lines::{action_text, rate_line, tank_line};
pub use step::{CAUTIONS, Mark, StepShown, steps};
pub use why::{Worked, has_why, why};
