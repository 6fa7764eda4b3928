//! What people see that no cup shows: no pressure, a jumping needle, foam, a weak section, drips; what brings it, and the
//! check that tells the causes apart, the safest and cheapest first.
//!
//! The table is data: symptoms by causes, causes by checks, each row with its source. One cause is taken to bring all that
//! is seen; that it is several, or none of these, is a cause of its own ([`Trouble::Other`]).
//!
//! | file | idea |
//! |---|---|
//! | `named` | stable words for the kinds of things here |
//! | `symptom`, `trouble`, `check` | what is seen, what brings it, what tells |
//! | `grade` | how often, in coarse grades |
//! | `pumping` | what drives the pump and holds the pressure, which rules causes out |
//! | `limits` | limits that a check is held to |
//! | `tables` | the rows |
//! | `said` | what each thing is called |
//! | `signs` | what is known so far |
//! | `rank` | causes, the likeliest first |
//! | `next` | the next check, and when to stop |
//! | `why` | how a chance came about |

mod check;
mod grade;
pub mod limits;
mod named;
mod next;
mod pumping;
mod rank;
mod said;
mod signs;
mod symptom;
mod tables;
mod trouble;
mod why;

pub use check::{Before, Check, CheckRow, Costs, Risk};
pub use grade::{COMMON_PRACTICE, Grade};
pub use next::{IN_PLAY, NextStep, TELLS_FROM, in_play, tells};
pub use pumping::{AirChamber, Control, Drive, Fits, Pumping};
pub use rank::{Likely, Ranked, SETTLED, ranked};
pub use said::{chance_said, chance_told, check_said, nothing_more_said};
pub use signs::{Outcome, Seen, Signs, SignsError};
pub use symptom::Symptom;
pub use tables::{Brings, all_brings, brings, check_row, inseparable, says_yes, trouble_row};
pub use trouble::{Trouble, TroubleRow};
pub use why::working;
