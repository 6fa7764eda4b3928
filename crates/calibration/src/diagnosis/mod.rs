//! What is most likely wrong: tips, sections, the boom as a whole, a cup misread; and what to look at next.
//!
//! Any number of things may be wrong at once. Everything is summed on grids in a fixed order: no chance, the same digits on
//! every machine.
//!
//! | file | idea |
//! |---|---|
//! | `priors` | what is believed before a cup is caught, as counts that records can be added to |
//! | `cause` | what a tip may be |
//! | `seen` | what was seen beside the cups |
//! | `offsets` | the grid |
//! | `evidence` | what one tip's cups say, read right or misread |
//! | `states` | the same under each cause |
//! | `section` | a section's tips together, and what it may lose |
//! | `beyond` | losses beyond the best-fed section |
//! | `infer` | the sums over boom and sections |
//! | `diagnose` | from a round to all of that |
//! | `answer` | what is told |
//! | `tell`, `tell_tip`, `patterns` | the same in a grower's words |
//! | `next` | what to look at next, and when to stop |
//! | `whole` | all of it at once |
//! | `chance` | chances as they are told |
//! | `quantile` | medians and ranges |

mod answer;
mod beyond;
mod cause;
mod chance;
mod diagnose;
mod evidence;
mod infer;
mod next;
mod offsets;
mod patterns;
mod priors;
mod quantile;
mod section;
mod seen;
mod states;
mod tell;
mod tell_tip;
mod whole;

pub use answer::{BoomDiagnosis, Diagnosis, RESTRICTED_FROM, SectionDiagnosis, TipDiagnosis};
pub use cause::Cause;
pub use diagnose::{DiagnosisModel, Rated, diagnose};
pub use next::{CheckKind, Checking, NextCheck, next_checks};
pub use priors::{Broad, Counts, Priors};
pub use seen::{Looked, Seen};
pub use tell::tell_diagnosis;
pub use whole::{Diagnosed, diagnose_and_tell};
