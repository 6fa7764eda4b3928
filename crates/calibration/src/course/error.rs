//! Why there is no course.

use super::{NARROWEST, WIDEST};
use units::{Amount, Arg, Args, Coded, Kind, Length, UnitSystem};

/// Why there is no course.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CourseError {
    /// A width that no sprayer covers.
    #[error(
        "the width must be {} to {}, got {}",
        Amount::new(NARROWEST, Kind::Width).text(UnitSystem::Us),
        Amount::new(WIDEST, Kind::Length).text(UnitSystem::Us),
        Amount::new(*.given, Kind::Width).text(UnitSystem::Us)
    )]
    Width {
        /// The width as given.
        given: Length,
    },
}

impl Coded for CourseError {
    fn code(&self) -> &'static str {
        "course_width"
    }

    fn args(&self) -> Args {
        let Self::Width { given } = self;
        Args::new()
            .with("given", Arg::Amount(Amount::new(*given, Kind::Width)))
            .with("least", Arg::Amount(Amount::new(NARROWEST, Kind::Width)))
            .with("most", Arg::Amount(Amount::new(WIDEST, Kind::Length)))
    }

    fn hint(&self) -> Option<String> {
        Some(
            "give the width that the catch serves: tip spacing for one tip, as 20 in; swath for all"
                .to_string(),
        )
    }
}
