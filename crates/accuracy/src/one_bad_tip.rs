//! Twenty tips of 0.2 gal/min, sound ones spread by 2 %, one of them off by a known share: the rounding trap.

use simulator::{CupKind, Fault, KitWorld, Order, Part, Random, TestPlan, TrueBoom, TrueTip, Yard};
use sprayer::{BoomLayout, Mounting};
use units::{Flow, Length, Pressure, Time};

use crate::draw::{Draw, DrawError};
use crate::world::Told;

/// Which of the tips is the bad one.
pub const BAD_TIP: u32 = 8;

/// How far the bad tip is off, over which mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Off {
    /// By this share over what a sound tip gives on average.
    TheOthers(f64),
    /// By this share over the mean of all, itself included: what the limit is held against.
    TheMean(f64),
}

/// Returns the draw of a seed.
///
/// *Assumptions*: 20 tips of 0.2 gal/min, sound ones with a normal spread of 2 %; each cup timed alone.
///
/// *Errors*: none in practice.
pub fn one_bad_tip(off: Off, test: &OneTest, seed: u64) -> Result<Draw, DrawError> {
    let layout = BoomLayout::new(&[TIPS], Length::inches(20.0), Mounting::Rear)?;
    let mut random = Random::new(seed, Part::Boom);
    let mut shares: Vec<f64> = (0..TIPS).map(|_| 1.0 + SPREAD * random.normal()).collect();
    let bad = usize::try_from(BAD_TIP - 1).unwrap_or(0);
    shares[bad] = match off {
        Off::TheOthers(off) => 1.0 + off,
        Off::TheMean(off) => {
            // x = (1 + off)·(others + x) ÷ 20, solved for x.
            let others: f64 = shares.iter().sum::<f64>() - shares[bad];
            (1.0 + off) * others / (f64::from(TIPS) - 1.0 - off)
        }
    };
    let tips = (1..).zip(shares).map(|(number, share)| TrueTip {
        number,
        section: 0,
        fault: if number == BAD_TIP { Fault::Off } else { Fault::Sound },
        flow: Flow::gallons_per_minute(0.2) * share,
    });
    let boom = TrueBoom::new(layout, tips.collect(), Pressure::psi(40.0), 0.0);
    let plan = TestPlan {
        cup: test.cup,
        time: test.time,
        repeats: test.repeats,
        cups_at_once: 1,
        order: Order::LeftToRight,
    };
    Draw::tested(&mut Yard::new(boom, test.kit.kit(seed), seed), &plan, Told::Readings)
}

/// How the twenty tips are tested.
#[derive(Clone, Debug, PartialEq)]
pub struct OneTest {
    /// Which cup.
    pub cup: CupKind,
    /// How long each catch is meant to last.
    pub time: Time,
    /// How often the boom is caught.
    pub repeats: u32,
    /// Cups, watches, hands.
    pub kit: KitWorld,
}

impl OneTest {
    /// Read in ounces after 30 s, once, with the announced errors.
    #[must_use]
    pub const fn in_ounces() -> Self {
        Self { cup: CupKind::OUNCES, time: Time::seconds(30.0), repeats: 1, kit: KitWorld::careful() }
    }
}

const TIPS: u32 = 20;
const SPREAD: f64 = 0.02;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_bad_tip_is_off_by_what_was_asked() {
        let off = |off| one_bad_tip(off, &OneTest::in_ounces(), 3).map(|draw| draw.deviations[7]);
        let mean = off(Off::TheMean(0.12)).unwrap_or(0.0);
        assert!((mean - 0.12).abs() < 1e-12, "{mean}");
        // 12 % over the others is 1.12 ÷ (1 + 0.12 ÷ 20) − 1 = 11.3 % over the mean, but for their own spread.
        let others = off(Off::TheOthers(0.12)).unwrap_or(0.0);
        assert!((others - 0.1133).abs() < 0.015, "{others}");
    }
}
