//! What is most likely wrong: tips, sections, the boom as a whole, a cup misread; and what to look at next.
//!
//! Any number of things may be wrong at once. Everything is summed on grids in a fixed order: no chance, the same digits on
//! every machine.
//!
//! | file | idea |
//! |---|---|
//! | `priors` | what is believed before a cup is caught, as counts that records can be added to |
//! | `records` | a season's own records, added to that |
//! | `cause` | what a tip may be |
//! | `seen` | what was seen beside the cups |
//! | `model` | what is known beside the cups |
//! | `offsets` | the grid |
//! | `cups` | each tip's cups and how they were caught |
//! | `kinds` | tips alike, worked out once |
//! | `evidence` | what one tip's cups say, read right or misread |
//! | `states` | the same under each cause |
//! | `section` | a section's tips together, and what it may lose |
//! | `runs` | cups that were timed together |
//! | `beyond` | losses beyond the best-fed section |
//! | `infer` | the sums over boom and sections |
//! | `beside` | a second pressure, a pressure at a tip, a new tip |
//! | `changed` | what cups at two pressures say of the pressure's zero |
//! | `parts` | what the boom's offset is made of |
//! | `swapped` | whether a fault goes with the tip or stays at its place |
//! | `aside` | tips in groups of their own |
//! | `diagnose` | from a round to all of that |
//! | `answer` | what is told |
//! | `remarks` | facts that are of no use as they stand |
//! | `tell`, `tell_tip`, `tell_parts`, `patterns` | the same in a grower's words |
//! | `next` | what to look at next, and when to stop |
//! | `checks`, `worth` | every check, and what it settles |
//! | `whole` | all of it at once |
//! | `chance` | chances as they are told |
//! | `quantile` | medians and ranges |

mod answer;
mod aside;
mod beside;
mod beyond;
mod cause;
mod chance;
mod changed;
mod checks;
mod cups;
mod diagnose;
mod evidence;
mod infer;
mod kinds;
mod model;
mod next;
mod offsets;
mod parts;
mod patterns;
mod priors;
mod quantile;
mod records;
mod remarks;
mod runs;
mod section;
mod seen;
mod states;
mod swapped;
mod tell;
mod tell_parts;
mod tell_tip;
mod whole;
mod worth;

pub use answer::{BoomDiagnosis, Diagnosis, RESTRICTED_FROM, SectionDiagnosis, TipDiagnosis};
pub use cause::Cause;
pub use diagnose::diagnose;
pub use model::{DiagnosisModel, Gauge, OtherPressure, Rated, Swap, TipPressure};
pub use next::{CheckKind, Checking, NextCheck, next_checks, why_stop};
pub use parts::{BoomParts, Middle, PartLaw};
pub use priors::{Broad, Counts, Priors};
pub use records::Records;
pub use seen::{Looked, Seen};
pub use tell::tell_diagnosis;
pub use whole::{Diagnosed, diagnose_and_tell};
