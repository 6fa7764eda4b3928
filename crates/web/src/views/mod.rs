//! What is seen: views read the state and send events, and decide nothing.

mod body;
mod cells;
mod cup;
mod drive_watch;
mod field;
mod found;
mod gate;
mod go_to_tip;
mod hand_over;
mod hands_free;
mod keeping;
mod large_cup;
mod last_time;
mod likely;
mod notices;
mod pad;
mod row;
pub mod screen;
mod settings;
mod sheet;
mod step;
mod stepper;
mod symptoms;
mod visit;
mod why;
