//! The rate of a boomless cluster: everything collected, over the effective swath.

use super::collected::Collected;
use super::error::{Input, RateError};
use super::findings::{checked, doubtful_rate, swath_like_spacing};
use super::method::{Method, WidthKind};
use super::outcome::Rate;
use crate::doubt::Known;
use units::{Amount, Arg, Finding, Kind, Length, Weight, Working};

/// How much the passes side by side overlap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Overlap {
    /// The strip that two passes side by side both wet.
    Strip(Length),
    /// That strip as a part of the width one pass wets (one part in one): 6 ft of 30 ft are 0.2.
    ///
    /// It is the part of the wetted width that one neighbour covers a second time. Makers of boom tips say "overlap"
    /// for the fan's width over the spacing; that is another figure and must not be put in here.
    PartOfWetted(f64),
}

/// The width by which each pass moves on.
#[derive(Clone, Debug, PartialEq)]
pub enum EffectiveSwath {
    /// Measured from pass to pass.
    Given(Known<Length>),
    /// From the width one pass wets and the overlap.
    Wetted {
        /// The width wetted by one pass.
        wetted: Known<Length>,
        /// How much of it the next pass wets again.
        overlap: Overlap,
    },
}

/// A boomless cluster.
#[derive(Clone, Debug, PartialEq)]
pub struct Boomless {
    /// What the whole cluster gave; all of its tips must be collected, each gives another amount.
    pub collected: Collected,
    /// The width by which each pass moves on.
    pub swath: EffectiveSwath,
}

/// With more overlap than this, some ground is wetted three times. By geometry: half of the wetted width.
const THREE_TIMES: f64 = 0.5;

impl EffectiveSwath {
    /// Returns the effective swath: what is wetted less what the next pass wets again.
    ///
    /// *Units*: lengths; an overlap as a part is one part in one.
    ///
    /// *Assumptions*: passes side by side, each overlapping the next by the same strip.
    ///
    /// *Errors*: [`RateError`]: a width of nothing, below nothing or not a number; an overlap below nothing or of the whole.
    ///
    /// *Source*: by geometry: passes side by side move on by the wetted width less the shared strip.
    ///
    /// *Example*: 30 ft wetted with a strip of 6 ft (20 %) shared with the next pass: 24 ft.
    pub fn length(&self) -> Result<Known<Length>, RateError> {
        match self {
            Self::Given(swath) => checked(Input::Swath, swath, Kind::Length).cloned(),
            Self::Wetted { wetted, .. } => {
                checked(Input::Wetted, wetted, Kind::Length)?;
                let part = self.part();
                if (0.0..1.0).contains(&part) {
                    Ok(wetted.clone().scaled(1.0 - part))
                } else {
                    Err(RateError::Overlap { given_percent: part * 100.0 })
                }
            }
        }
    }

    /// The overlap as a part of the wetted width.
    fn part(&self) -> f64 {
        match self {
            Self::Given(_) => 0.0,
            Self::Wetted { overlap: Overlap::PartOfWetted(part), .. } => *part,
            Self::Wetted { wetted, overlap: Overlap::Strip(strip) } => strip.ratio_to(wetted.value),
        }
    }

    fn findings(&self, swath: Length) -> Vec<Finding> {
        let Self::Wetted { wetted, .. } = self else {
            return swath_like_spacing(swath).into_iter().collect();
        };
        let (wetted, part) = (wetted.value, self.part());
        let finding = if part > THREE_TIMES {
            Finding::new(
                Weight::Doubt,
                "rate_overlap_large",
                "With {overlap} overlap some ground is wetted three times. Is it really the strip that one next pass shares?",
            )
        } else if part.abs() < f64::EPSILON {
            Finding::new(
                Weight::Doubt,
                "rate_overlap_none",
                "Without overlap the edges of a boomless swath get too little.",
            )
            .to_do("Spray dry ground and see how far in from the edge it is wetted as well as in the middle.")
        } else {
            Finding::new(
                Weight::Note,
                "rate_effective_swath",
                "Of {wetted} wetted, each pass moves on by {swath}.",
            )
        };
        let finding = finding
            .with("overlap", Arg::Percent(part * 100.0))
            .with("wetted", Arg::Amount(Amount::new(wetted, Kind::Length)))
            .with("swath", Arg::Amount(Amount::new(swath, Kind::Length)));
        vec![finding]
    }

    fn working(&self, swath: Length) -> Option<Working> {
        let Self::Wetted { wetted, .. } = self else {
            return None;
        };
        Some(
            Working::new(
                "effective_swath",
                "effective swath = wetted width × (1 − part of it that the next pass wets again)",
                "by geometry",
            )
            .figure("wetted width", Arg::Amount(Amount::new(wetted.value, Kind::Length)))
            .figure("part of it that the next pass wets again", Arg::Percent(self.part() * 100.0))
            .result(Arg::Amount(Amount::new(swath, Kind::Length))),
        )
    }
}

impl Boomless {
    /// Returns the rate: all that the cluster gives, over the ground of the effective swath.
    ///
    /// *Units*: any.
    ///
    /// *Assumptions*: the whole cluster was collected, all tips together. The swath judged by eye is 5 % off where
    /// nobody says better.
    ///
    /// *Errors*: [`RateError`]: something of nothing, below nothing or not a number; an overlap that leaves no swath.
    ///
    /// *Source*: LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer; Clemson Univ., Weeds programme,
    /// Sprayer/spreader calibration guide.
    ///
    /// *Example*: 140 fl oz over 141.8 ft with 24 ft (1/12.8 ac) are 14 gal/ac.
    pub fn rate(&self) -> Result<Rate, RateError> {
        let swath = self.swath.length()?;
        let known = self.collected.rate_over(Input::Swath, &swath)?;
        let mut working = self
            .collected
            .working(Method::Boomless.code(), "LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer")
            .figure("width", Arg::Amount(Amount::new(swath.value, Kind::Length)));
        if let Some(step) = self.swath.working(swath.value) {
            working = working.step(step);
        }
        let mut findings: Vec<Finding> = self.collected.doubtful().into_iter().collect();
        findings.extend(self.swath.findings(swath.value));
        findings.extend(doubtful_rate(known.value));
        Ok(Rate::new(known, Method::Boomless, WidthKind::EffectiveSwath, working, findings))
    }
}
