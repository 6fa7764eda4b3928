//! The hands and the eye: how a caught volume becomes the marks that are read.

use units::{Time, Volume};

use crate::cup::{Cup, MarkUnit};
use crate::random::Random;
use crate::slip::{Slip, SlipChances};

/// How one person catches and reads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hands {
    /// The standard deviation, as a share of the volume, of tilting, splashing and foam at one cup.
    pub handling: f64,
    /// What may stay in the cup when it is poured out: the standard deviation of a half-normal law.
    pub film: Volume,
    /// By what share foam makes a cup read high, half-normal: its standard deviation.
    pub foam: f64,
    /// The standard deviation of the eye at a mark, as a share of the step.
    pub eye: f64,
    /// How far this person looks up or down at every mark, as a share of the step: parallax.
    pub lean: f64,
    /// How often they slip.
    pub slips: SlipChances,
    /// What goes by from one timed run to the next: pouring out, walking on.
    pub between_runs: Time,
}

impl Hands {
    /// Careful hands: handling 0.5 %, an eye good to a tenth of a step, no film, no foam, no parallax, no slips.
    ///
    /// *Source*: planning values of this house (handling 0.5 %, eye a tenth of a step), our assumption; 20 s
    /// between runs is our assumption too.
    #[must_use]
    pub const fn careful() -> Self {
        Self {
            handling: 0.005,
            film: Volume::ZERO,
            foam: 0.0,
            eye: 0.1,
            lean: 0.0,
            slips: SlipChances::none(),
            between_runs: Time::seconds(20.0),
        }
    }

    /// Hurried hands: film of 2 mL, foam of half a percent, twice the scatter in handling, parallax and slips.
    ///
    /// *Source*: our assumption, chosen to be worse than [`Hands::careful`] in every respect.
    #[must_use]
    pub const fn hurried() -> Self {
        Self {
            handling: 0.01,
            film: Volume::millilitres(2.0),
            foam: 0.005,
            eye: 0.2,
            lean: 0.15,
            slips: SlipChances::now_and_then(),
            between_runs: Time::seconds(20.0),
        }
    }

    /// The volume that stands in the cup when it is read.
    pub(crate) fn handled(&self, caught: Volume, random: &mut Random) -> Volume {
        let left = self.film * random.normal().abs();
        let handled = caught * (1.0 + self.handling * random.normal()) + left;
        handled.max(Volume::ZERO)
    }

    /// The marks that are written for a volume in a cup, and the slip that was made.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "not below nothing; saturates"
    )]
    pub(crate) fn read(&self, cup: &Cup, volume: Volume, random: &mut Random) -> (u32, Slip) {
        let foam = 1.0 + self.foam * random.normal().abs();
        let shown = cup.kind.marks_reached(cup.shows(volume));
        let level = if cup.kind.unit() == MarkUnit::Grams {
            // A display rounds by itself; foam weighs nothing and nobody looks along it.
            shown
        } else {
            shown * foam + self.lean + self.eye * random.normal()
        };
        let slip = self.slips.of_reading(random);
        let marks = slip.change(level.round(), random).round().max(0.0);
        (marks as u32, slip)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cup::CupKind;
    use crate::random::Part;

    fn readings(hands: &Hands, volume: Volume, kind: CupKind) -> Vec<u32> {
        let mut random = Random::new(4, Part::Catching);
        let cup = Cup { kind, scale_error: 0.0 };
        (0..20_000).map(|_| hands.read(&cup, volume, &mut random).0).collect()
    }

    #[test]
    fn the_nearest_mark_is_read() {
        let all = readings(&Hands::careful(), Volume::fluid_ounces(13.2), CupKind::OUNCES);
        // 0.3 of a step from the edge is three standard deviations of the eye: 0.13 % read 14.
        let off = all.iter().filter(|marks| **marks != 13).count();
        assert!((5..60).contains(&off), "{off}");
        let scale = readings(&Hands::careful(), Volume::millilitres(413.0), CupKind::SCALE);
        assert!(scale.iter().all(|marks| *marks == 206)); // 413 mL weigh 412.26 g
    }

    #[test]
    fn slips_come_as_often_as_they_should() {
        let hands = Hands { slips: SlipChances::now_and_then(), ..Hands::careful() };
        let all = readings(&hands, Volume::fluid_ounces(20.0), CupKind::OUNCES);
        let one_off = all.iter().filter(|marks| marks.abs_diff(20) == 1).count();
        let far = all.iter().filter(|marks| marks.abs_diff(20) > 1).count();
        // 2 % and 0.8 % of 20,000; standard errors 20 and 13.
        assert!((320..480).contains(&one_off) && (100..220).contains(&far), "{one_off} {far}");
    }
}
