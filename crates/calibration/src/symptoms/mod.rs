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
//! | `signs` | what is known so far |
//! | `rank` | causes, the likeliest first |
//! | `next` | the next check, and when to stop |

mod check;
mod grade;
pub mod limits;
mod named;
mod next;
mod pumping;
mod rank;
mod signs;
mod symptom;
mod tables;
mod trouble;

pub use check::{Before, Check, CheckRow, Costs, Risk};
pub use grade::{COMMON_PRACTICE, Grade};
pub use next::{NextStep, TELLS_FROM, tells};
pub use pumping::{AirChamber, Control, Drive, Fits, Pumping};
pub use rank::{Likely, Ranked, SETTLED, ranked};
pub use signs::{Outcome, Seen, Signs, SignsError};
pub use symptom::Symptom;
pub use tables::{Brings, all_brings, brings, check_row, inseparable, says_yes, trouble_row};
pub use trouble::{Trouble, TroubleRow};
