//! The application rate, by every method in use.
//!
//! Each method is a type of its own that takes the width it needs and no other, so that one tip's catch cannot be
//! divided by the whole boom's swath, nor a band's by its row. All of them are volume over ground; no constant here
//! depends on the units.

mod band;
mod boomless;
mod broadcast;
mod catch_over_course;
mod collected;
mod directed;
mod distance_refill;
mod error;
mod findings;
mod flow_speed_width;
mod hand;
mod known_area;
mod method;
mod outcome;
mod small_area;
mod swath;
mod whole_tank;

pub use band::{Band, BandRate};
pub use boomless::{Boomless, EffectiveSwath, Overlap};
pub use broadcast::BroadcastWidth;
pub use catch_over_course::CatchOverCourse;
pub use collected::{Collected, CourseTiming};
pub use directed::{Directed, FromRow};
pub use distance_refill::DistanceRefill;
pub use error::{Input, RateError};
pub use flow_speed_width::FlowSpeedWidth;
pub use hand::{HandPlot, HandTimed, HandWalking};
pub use known_area::KnownArea;
pub use method::{Method, WidthKind};
pub use outcome::Rate;
pub use small_area::{SmallAreaRate, area_covered_by, per_small_area};
pub use swath::{check_swath, swath_of_boom};
pub use whole_tank::WholeTank;
