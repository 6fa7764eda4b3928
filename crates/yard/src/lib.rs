//! The app's state as plain Rust: what is known, what an event makes of it, and what the device is then asked to do.
//!
//! [`step`] is the whole program: the same state, event, moment and chance always give the same. Views show a [`State`] by
//! [`shown`] and send [`Event`]s; the device does [`Effect`]s. Neither decides anything.

mod catching;
mod drive;
mod effect;
mod event;
mod facts;
mod handing;
mod hands_free;
mod keeping;
mod moment;
mod moving;
mod opened;
mod pad;
mod plan;
mod row_of_text;
mod shelf;
pub mod shown;
mod state;
mod step;
mod symptoms;
mod usable;
mod write;

pub use catching::{Ask, Catching, reading_text};
pub use drive::{DriveWatch, Watch};
pub use effect::{Effect, Sound};
pub use event::{Event, Keep};
pub use facts::{field_of, typed_text};
pub use hands_free::{HandsFree, Pace, Phase, READY};
pub use keeping::{LAST_COPY, OPEN, READER, TYPED, reader_of, reader_text};
pub use moment::{Chance, Moment};
pub use opened::{CLOSED, Holder, Opened, PRODUCTS, ROUNDS, RUNS, TIP_PRESSURES, Typed};
pub use pad::{Key, Pad, Side, Sides};
pub use plan::{Plan, Step, Today};
pub use row_of_text::{RowWrong, parts as row_parts};
pub use shelf::{KnownSprayer, KnownVisit, Shelf};
pub use state::{
    CopyFile, Keeping, Notice, Promise, Safety, Screen, ServerState, SheetKind, State, Waits, WhyOf,
};
pub use step::step;
pub use usable::{Fault, FaultIs};
