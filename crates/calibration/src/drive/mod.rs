//! The drive: timed runs over a measured course, both ways, and what they say about the speed and the dash.

mod agree;
mod course_time;
mod dash;
mod error;
mod findings;
mod speed;

pub use agree::{BothWays, Difference, Outlier};
pub use course_time::{ShortCourse, short_course, time_for_course};
pub use dash::DashCheck;
pub use error::DriveError;
pub(crate) use findings::doubtful_speed;
pub use speed::{Direction, Drive, DriveSpeed, Run, RunSpeed, Timing, drive_speed};

/// The most runs taken. Our own limit: more is a file gone wrong.
pub const MOST_RUNS: usize = 1000;
