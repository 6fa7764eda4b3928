//! The tables: each a file, from counts to rows; and the page they make.

mod again;
mod aimed;
mod aims;
mod by_kind;
mod compare;
mod diagnosed;
mod diagnosed_reliability;
mod diagnosis_page;
mod held;
mod page;
mod reliability;
mod rounding;
mod table;
mod unannounced;
mod whole;

pub use diagnosis_page::diagnosis_page;
pub use page::{Sizes, page};
pub use table::Table;
