//! How far off a figure may be: named doubts of products and quotients, added up as the GUM does.

mod budget;
mod defaults;
mod known;
mod source;

pub use budget::{Budget, Contribution, LARGE, Share, Tie};
pub use defaults::{
    BAND, CATCH_LASTS, COURSE_TAPE, CUP_SCALE, FIELD_AREA, FLOW_AS_GIVEN, HAND_TIMING_EACH_END, HANDLING,
    PLOT_AREA, REFILL, SPACING, SPEED_AS_GIVEN, SWATH_BY_SIGHT, TANK, WATCH, hand_timing, of_marks,
};
pub use known::Known;
pub use source::DoubtOf;
