//! One tip of the boom as its fan meets the ground.

use units::{Angle, Length, Quantity};

use super::error::PatternError;

/// A tip with its fan: where it stands, how much it gives, how it is aimed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SprayTip {
    /// Where it stands along the boom, from any point, growing to the right.
    pub place: Length,
    /// How far its spray is set off to the right of its place, as by a bent body.
    pub offset: Length,
    /// Its flow as a share of a sound tip's: 1.1 gives a tenth more, 0 is plugged.
    pub flow: f64,
    /// Its height over what is sprayed.
    pub height: Length,
    /// The fan's angle at the pressure it runs at. It falls with the pressure; that is not worked out here.
    pub angle: Angle,
    /// How far it leans to the right (below nothing: to the left), so that it sprays more to that side.
    pub tilt: Angle,
    /// How far the fan is turned out of the boom's line, which makes it narrower.
    pub twist: Angle,
}

/// The most a fan may be turned. Our own bound: at 60 degrees it is half as wide, and no fan is meant to stand so.
const MOST_TWIST: f64 = 60.0;
/// How near to level a fan's edge may spray. Our own bound: at 85 degrees from straight down it lands eleven heights away.
const NEAREST_TO_LEVEL: f64 = 85.0;
/// Heights taken. Our own bound: no boom is carried higher over what it sprays.
const HIGHEST: Length = Length::metres(5.0);

impl SprayTip {
    /// A sound tip that points straight down with its fan in the boom's line.
    #[must_use]
    pub const fn new(place: Length, height: Length, angle: Angle) -> Self {
        Self { place, offset: Length::ZERO, flow: 1.0, height, angle, tilt: Angle::ZERO, twist: Angle::ZERO }
    }

    /// Where its spray comes from.
    #[must_use]
    pub fn axis(&self) -> Length {
        self.place + self.offset
    }

    /// From where to where a fan of its angle lies on the ground.
    #[must_use]
    pub fn lies(&self) -> (Length, Length) {
        let half = self.half_tangent();
        let at = |tangent| self.axis() + Length::from_si(self.lands(tangent));
        (at(-half), at(half))
    }

    /// The tangent of half the fan's angle.
    pub(super) fn half_tangent(&self) -> f64 {
        libm::tan(self.angle.as_radians() / 2.0)
    }

    /// The tangent, within the fan, of the line on which spray lands this far right of the axis. The line's share of the
    /// flow goes with it, so that what tilting does to the dose (its Jacobian) needs no factor of its own.
    pub(super) fn tangent_to(&self, right: f64) -> f64 {
        let out = right / (self.height.si() * libm::cos(self.twist.as_radians()));
        let tilt = libm::tan(self.tilt.as_radians());
        // tan(φ − tilt); below nothing the line lies more than a right angle from the fan's own middle.
        let below = 1.0 + out * tilt;
        if below <= 0.0 { f64::INFINITY * out.signum() } else { (out - tilt) / below }
    }

    /// How far right of the axis a line of the fan lands.
    pub(super) fn lands(&self, tangent: f64) -> f64 {
        let leaning = libm::atan(tangent) + self.tilt.as_radians();
        // A measured fan may reach wider than the angle that its tilt was checked with.
        let most = Angle::degrees(NEAREST_TO_LEVEL).as_radians();
        libm::tan(leaning.clamp(-most, most)) * self.height.si() * libm::cos(self.twist.as_radians())
    }

    /// Whether it can be; `number` is from the left from 1.
    pub(super) fn check(&self, number: u32) -> Result<(), PatternError> {
        let tip = Some(number);
        if !self.height.is_positive() || self.height > HIGHEST {
            return Err(PatternError::NoHeight { tip, height: self.height });
        }
        if !(10.0..=170.0).contains(&self.angle.as_degrees()) {
            return Err(PatternError::Angle { tip: number, angle: self.angle });
        }
        if !self.flow.is_finite() || self.flow < 0.0 {
            return Err(PatternError::Flow { tip: number, flow: self.flow });
        }
        if !self.twist.as_degrees().is_finite() || self.twist.as_degrees().abs() > MOST_TWIST {
            return Err(PatternError::Twist { tip: number, twist: self.twist });
        }
        let edge = self.angle.as_degrees() / 2.0 + self.tilt.as_degrees().abs();
        // An untilted fan of any angle that is taken comes down.
        if !edge.is_finite() || (self.tilt.as_degrees().abs() > 0.0 && edge > NEAREST_TO_LEVEL) {
            return Err(PatternError::Tilt { tip: number, tilt: self.tilt, angle: self.angle });
        }
        if !self.axis().si().is_finite() {
            return Err(PatternError::Order { tip: number, place: self.place, before: self.place });
        }
        Ok(())
    }
}
