//! Verdicts that know their doubt: how far off each tip most likely is, by the readings and by the boom itself.
//!
//! A reading is an interval, rounding is not noise, and tips that are meant to be alike say something about one
//! another. Everything is integrated on grids in a fixed order, so the digits are the same on every machine.
//!
//! | file | idea |
//! |---|---|
//! | `prior` | what is believed of a boom before a cup is caught |
//! | `likelihood` | what one tip's cups say about its flow |
//! | `grid` | the flows and the booms that are tried |
//! | `boom` | which booms the cups make likely |
//! | `tips` | each tip's deviation over all those booms |
//! | `judge` | from there to verdicts |
//! | `new` | each tip against a new one |
//! | `next` | which cup to catch next, and when to stop |
//! | `whole` | all of it for one round |

mod boom;
mod grid;
mod judge;
pub(crate) mod likelihood;
mod new;
mod next;
mod prior;
mod tips;
mod whole;

pub(crate) use judge::NORMAL_FIVE;
pub use judge::{BoomJudgement, Judged, Model, TipJudgement, judge_round, settled};
pub use new::{NewJudgement, judge_new};
pub use next::{NextCatch, Settles, next_catches};
pub use prior::Prior;
pub use whole::{CatchVerdicts, judge_catches};
