//! One sprayer on one day: the record of what was read, and what follows from it.

pub mod boom;
pub mod file;
pub mod findings;
pub mod record;

pub use record::Visit;
