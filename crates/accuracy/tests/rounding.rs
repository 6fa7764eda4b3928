//! The rounding trap as first worked out by other code: a check of this generator against an outside calculation.
#![allow(clippy::unwrap_used)] // a test fails by panicking

use accuracy::one_bad_tip::{BAD_TIP, Off, OneTest, one_bad_tip};
use accuracy::split::{Cores, in_order};
use accuracy::{Way, judge};
use simulator::{CupKind, Hands, KitWorld};
use units::{Time, Verdict};

/// Source: Monte Carlo with real rounding, derived for this house's collection of standards, section 10.4: 20 tips of
/// 0.2 gal/min, background spread 2 %, one over the others; the chance that the 10 % rule flags it, in percent.
const EXPECTED: &[(f64, CupKind, f64, u32, f64)] = &[
    (0.08, CupKind::OUNCES, 30.0, 1, 1.0),
    (0.10, CupKind::OUNCES, 30.0, 1, 1.0),
    (0.12, CupKind::OUNCES, 30.0, 1, 12.0),
    (0.15, CupKind::OUNCES, 30.0, 1, 95.0),
    (0.20, CupKind::OUNCES, 30.0, 1, 100.0),
    (0.12, CupKind::OUNCES, 30.0, 3, 28.0),
    (0.15, CupKind::OUNCES, 30.0, 3, 100.0),
    (0.10, CupKind::OUNCES, 60.0, 1, 3.0),
    (0.12, CupKind::OUNCES, 60.0, 1, 90.0),
    (0.08, CupKind::TEN_MILLILITRES, 30.0, 1, 4.0),
    (0.10, CupKind::TEN_MILLILITRES, 30.0, 1, 47.0),
    (0.12, CupKind::TEN_MILLILITRES, 30.0, 1, 82.0),
];

#[test]
fn expected_from_section_10_4() {
    let hands = Hands { handling: 0.0, eye: 0.0, ..Hands::careful() };
    let kit = KitWorld { cup_scale: 0.0, hands, ..KitWorld::careful() };
    for (fault, cup, seconds, repeats, expected) in EXPECTED {
        let test = OneTest { cup: *cup, time: Time::seconds(*seconds), repeats: *repeats, kit: kit.clone() };
        let flagged = in_order(1_500, Cores::all(), |place| {
            let draw = one_bad_tip(Off::TheOthers(*fault), &test, u64::from(place)).unwrap();
            let calls = judge(&draw, Way::Plain).unwrap();
            calls.iter().any(|call| call.tip == BAD_TIP && call.verdict == Verdict::Outside)
        });
        let percent = flagged.iter().filter(|flagged| **flagged).count() as f64 / 15.0;
        // Both are Monte Carlo: at most 1.3 points of standard error here, some there, and rounded to a point.
        assert!((percent - expected).abs() <= 4.0, "+{fault} {} {seconds} s: {percent}", cup.step_text());
    }
}
