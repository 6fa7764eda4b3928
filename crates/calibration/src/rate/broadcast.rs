//! The width of broadcast spraying, tied to what was collected.

use super::collected::Collected;
use super::error::{Input, RateError};
use super::findings::{
    WIDEST_SPACING, doubtful_rate, doubtful_width, spacing_like_swath, swath_like_spacing,
};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Arg, Kind, Length};

/// Which width the amount collected serves.
#[derive(Clone, Debug, PartialEq)]
pub enum BroadcastWidth {
    /// One tip was collected (or the mean of all): its spacing.
    TipSpacing(Known<Length>),
    /// The whole boom was collected: tips times spacing.
    Swath(Known<Length>),
    /// The caller answers for it that amount and width belong together.
    AsGiven(Known<Length>),
}

impl BroadcastWidth {
    fn parts(&self) -> (Input, &Known<Length>, WidthKind) {
        match self {
            Self::TipSpacing(width) => (Input::TipSpacing, width, WidthKind::TipSpacing),
            Self::Swath(width) => (Input::Swath, width, WidthKind::Swath),
            Self::AsGiven(width) => (Input::Width, width, WidthKind::AsGiven),
        }
    }

    /// The rate over this width.
    pub(super) fn rate(
        &self,
        collected: &Collected,
        method: Method,
        source: &'static str,
    ) -> Result<Rate, RateError> {
        let (input, width, kind) = self.parts();
        let known = collected.rate_over(input, width)?;
        // Nobody says that a boom is 260 in wide, nor that tips stand 1.67 ft apart.
        let shown = if width.value > WIDEST_SPACING { Kind::Length } else { Kind::Width };
        let working = collected
            .working(method.code(), source)
            .figure("width", Arg::Amount(Amount::new(width.value, shown)));
        let mixed_up = match self {
            Self::TipSpacing(spacing) => spacing_like_swath(spacing.value),
            Self::Swath(swath) => swath_like_spacing(swath.value),
            Self::AsGiven(width) => doubtful_width(width.value),
        };
        let findings =
            collected.doubtful().into_iter().chain(mixed_up).chain(doubtful_rate(known.value)).collect();
        Ok(Rate::new(known, method, kind, working, findings))
    }
}
