//! What is seen: views read the state and send events, and decide nothing.

mod cup;
mod drive_watch;
mod gate;
mod hands_free;
mod keeping;
mod last_time;
mod notices;
mod row;
pub mod screen;
mod settings;
mod sheet;
mod visit;
mod why;
