//! Every sentence that people read, in English and Spanish.
//!
//! The words stand in the Fluent files under `locales`, one folder a language, the same file names and keys in both.
//! A finding, an error or a label is found by its stable code; its arguments are put in as the reader writes them.
//! A [`Reader`] has four settings that do not depend on one another: language, number format, paper and units.
//!
//! **Keys.** The sentence of a code is the message of that name, `tips_plugged`; where a code has several sentences the
//! case follows a hyphen, `tips_plugged-one`. What to do about it is the attribute `.do`. A formula is
//! `formula-<code of the working>`, a figure in it `figure-<name>`, one of our own words `word-<code>`, a short sentence
//! inside another `phrase-<code>`, a unit `unit-<symbol>` with `_` for what is no letter or digit.
//!
//! **Arguments.** Each argument comes in as text, ready to be read. Beside it come, for choosing among forms:
//! a count as a number; `<name>-count` for tips; `<name>-low` and `<name>-high` for an amount with a range; the code of a
//! word or verdict as `<name>-code`.

mod catalogue;
mod date;
mod error;
mod number;
mod reader;
mod sentence;
mod working;

pub use fluent_bundle::FluentValue as Value;

pub use catalogue::Words;
#[cfg(feature = "embedded")]
pub use catalogue::sources;
pub use error::Said;
pub use reader::{Language, NumberFormat, Paper, Reader};
