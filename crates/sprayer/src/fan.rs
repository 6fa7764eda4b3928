//! The geometry of a fan: how wide it lies on the target, and the height for an overlap.

use units::{Amount, Angle, Arg, Args, Coded, Kind, Length, Quantity, UnitSystem};

/// Returns how wide a fan lies on the target: 2·height·tan(angle ÷ 2).
///
/// *Assumptions*: straight edges from the tip. Real fans are narrower than their nominal angle, more so at low
/// pressure; this is geometry, not a measured pattern.
///
/// *Errors*: no height; an angle outside 10 to 170 degrees.
///
/// *Source*: plane geometry.
///
/// *Example*: 110 degrees at 0.5 m: 2·0.5·tan 55° = 1.428 m.
pub fn footprint(angle: Angle, height: Length) -> Result<Length, FanError> {
    if !height.is_positive() {
        return Err(FanError::NoLength { length: height });
    }
    Ok(height * (2.0 * half_tangent(angle)?))
}

/// Returns the height at which fans this far apart overlap by a share of the spacing.
///
/// *Units*: `overlap` is a share: 0.3 means each fan is 1.3 spacings wide ("30 %"), 1.0 means 2 spacings
/// ("100 %", half of each fan laid over by each neighbour). The word is used both ways in print, so say which.
///
/// *Assumptions*: as [`footprint`].
///
/// *Errors*: no spacing; an overlap below 0 or above 3; an angle outside 10 to 170 degrees.
///
/// *Source*: plane geometry, height = spacing·(1 + overlap) ÷ (2·tan(angle ÷ 2)).
///
/// *Example*: 110 degrees, 20 in apart, overlap 1.0: 40 ÷ (2·tan 55°) = 14.0 in.
pub fn height_for_overlap(angle: Angle, spacing: Length, overlap: f64) -> Result<Length, FanError> {
    if !spacing.is_positive() {
        return Err(FanError::NoLength { length: spacing });
    }
    if !(0.0..=3.0).contains(&overlap) {
        return Err(FanError::Overlap { percent: overlap * 100.0 });
    }
    Ok(spacing * (1.0 + overlap) / (2.0 * half_tangent(angle)?))
}

fn half_tangent(angle: Angle) -> Result<f64, FanError> {
    if (10.0..=170.0).contains(&angle.as_degrees()) {
        Ok(libm::tan(angle.as_radians() / 2.0))
    } else {
        Err(FanError::Angle { angle })
    }
}

/// Why a fan cannot be worked out.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FanError {
    /// No height or spacing.
    #[error("a height or spacing of {} cannot be; it must be more than nothing", shown(*.length, Kind::Width))]
    NoLength {
        /// The length as given.
        length: Length,
    },
    /// An angle no fan has.
    #[error("no fan is {} wide; 10 to 170 deg would do", shown(*.angle, Kind::Angle))]
    Angle {
        /// The angle as given.
        angle: Angle,
    },
    /// An overlap that cannot be.
    #[error("an overlap of {} % cannot be; 0 to 300 % of the spacing would do", units::sensible(*.percent))]
    Overlap {
        /// The overlap as given.
        percent: f64,
    },
}

fn shown(quantity: impl Quantity, kind: Kind) -> String {
    Amount::new(quantity, kind).text(UnitSystem::Us)
}

impl Coded for FanError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoLength { .. } => "fan_no_length",
            Self::Angle { .. } => "fan_angle",
            Self::Overlap { .. } => "fan_overlap",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NoLength { length } => {
                Args::new().with("length", Arg::Amount(Amount::new(*length, Kind::Width)))
            }
            Self::Angle { angle } => Args::new().with("angle", Arg::Amount(Amount::new(*angle, Kind::Angle))),
            Self::Overlap { percent } => Args::new().with("overlap", Arg::Percent(*percent)),
        }
    }
}
