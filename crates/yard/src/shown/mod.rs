//! What the screens show, ready to be read: views put these texts and drawings on the page and decide nothing.

mod cups;
mod diagnosis;
mod field;
mod found;
mod gate;
mod keeping;
mod last_time;
mod lines;
mod row;
mod step;
mod symptoms;
mod why;

pub use cups::{CupScreen, SideOfMean, SoFar, cup_screen, small_row};
pub use diagnosis::{CheckShown, DiagnosisShown, LikelyShown, RepairShown, beside, diagnosis};
pub use field::{
    Choice, Editor, FieldShown, Nudge, choice_key, field, field_names, fields_of, list_with_unit,
    list_without_unit, meant_by, read_in, value_said, with_unit, without_unit,
};
pub use found::{Again, FoundShown, closed_names, found, has_controller, product_names, runs, to_do};
pub use gate::{GateLine, known_sprayers, known_visits, plan_lines};
pub use keeping::{KeptLine, kept, last_copy, promise};
pub use last_time::{LastVisit, last_time};
pub use lines::{action_text, answer, rate_line, tank_line, visit_name, visit_under};
pub use row::{CupCell, CupSection, TipLikely, cup_sections};
pub use step::{CAUTIONS, Mark, StepShown, drawings, narrow_drawings, next_step, steps};
pub use symptoms::{AnsweredShown, IsSeen, SymptomCheckShown, SymptomShown, SymptomsShown, symptoms};
pub use why::{Worked, has_why, why};
