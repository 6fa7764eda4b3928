//! The tables: each a file, from counts to rows; and the page they make.

mod again;
mod by_kind;
mod compare;
mod held;
mod page;
mod reliability;
mod rounding;
mod table;
mod unannounced;
mod whole;

pub use page::{Sizes, page};
pub use table::Table;
