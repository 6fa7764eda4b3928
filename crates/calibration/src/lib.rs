//! The working floor of a visit: spacing, drive, catch test, application rate, and how well each is known.
//!
//! Nothing here reads a clock, a file or a random source; the caller hands everything in.

pub mod catch;
pub mod controller;
pub mod course;
pub mod diagnosis;
pub mod doubt;
pub mod drive;
pub mod pattern;
pub mod rate;
pub mod spacing;
pub mod symptoms;
pub mod verdict;
