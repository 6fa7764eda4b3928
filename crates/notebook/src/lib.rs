//! The notebook: everything written is kept, can be merged, and can be shown to be whole.
//!
//! A [`Notebook`] is a set of [`Line`]s. Each device numbers its own from 1 without gaps and chains them by check sums; what
//! a notebook holds is said as [`Ranges`] of numbers, and merging is the union. Folding goes by Lamport's order, never by
//! a clock. A wrong line is struck by a later one and stays readable; an owner can withdraw what is written about a thing
//! and the bare envelopes stay, so that nothing looks lost. [`folded`] makes sprayers and visits of the lines.

mod book;
mod codec;
mod entry;
mod file;
mod fold;
mod hash;
mod ids;
mod import;
mod line;
mod ranges;
mod value;
mod verify;

pub use book::{Notebook, Taken, is_withdrawal};
pub use codec::{LineError, line_text, read_line};
pub use entry::{Entry, Strike, Told, VERSION};
pub use file::{FileContent, FileDamage, read_file, write_file};
pub use fold::{Folded, FoldedSprayer, FoldedVisit, Held, TwoValues, folded};
pub use hash::Hash;
pub use ids::{DeviceId, LineId, NotebookId, RowId, ThingId};
pub use import::{ImportError, entries_of_file};
pub use line::{About, At, Draft, Kept, Kind, Line, MOST_ENTRY_BYTES, Standing, Written};
pub use ranges::Ranges;
pub use value::Value;
pub use verify::{Damage, verify};
