//! How often verdicts are right, held to simulated sprayers whose truth is known.
//!
//! Worlds are drawn by two generators that share nothing with the inference and nothing with each other:
//! the `simulator` crate and [`second`]. Each draw is judged in three ways ([`Way`]), and the calls are counted
//! against the truth. `cargo xtask accuracy` prints the tables; `accuracy/TABLES.md` at the repository's top keeps them.
//!
//! | file | idea |
//! |---|---|
//! | `world` | what is drawn: booms, kits, tests, and what the inference is told |
//! | `announced`, `unannounced` | the worlds there are |
//! | `one_bad_tip` | twenty tips, one of them off by a known share |
//! | `draw`, `written` | one draw, ready to be judged: readings go in as text, as people write them |
//! | `calls` | the three ways to judge |
//! | `again` | catching some tips again, chosen or not |
//! | `ratio`, `tally` | counting, with Monte Carlo standard errors |
//! | `split` | both cores, the same sums whatever the split |
//! | `whole` | what is said of a boom as a whole |
//! | `bar` | what the house is held to |
//! | `ailing`, `plumbed` | sprayers with several things wrong, drawn plainly and over their plumbing |
//! | `diagnosed` | their diagnoses scored |
//! | `ceiling` | what a judge who knows all but the tip could find |
//! | `tables` | the tables, one file each |

pub mod again;
pub mod ailing;
pub mod announced;
pub mod bar;
pub mod calls;
pub mod ceiling;
pub mod diagnosed;
pub mod draw;
pub mod one_bad_tip;
mod plumbed;
pub mod ratio;
pub mod second;
pub mod split;
pub mod tables;
pub mod tally;
pub mod unannounced;
pub mod whole;
pub mod world;
mod written;

pub use calls::{Call, Way, judge};
pub use draw::{Draw, DrawError};
pub use world::World;
