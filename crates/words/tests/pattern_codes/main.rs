//! Everything that the pattern across the boom tells is said in both languages, out of the real functions.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

#[allow(dead_code)] // not every test has workings
#[path = "../calibration_codes/said.rs"]
mod said;

use said::Said;
use sprayer::pattern::{Fan, Grooves, MeasuredFan, PatternError, SprayBoom, SprayTip, pattern};
use units::{Angle, Length};

/// A boom as most are, with tip 5 changed.
fn with(change: fn(&mut SprayTip)) -> Result<SprayBoom, PatternError> {
    let boom = alike(13, 20.0)?;
    let mut tips = boom.tips().to_vec();
    change(&mut tips[4]);
    SprayBoom::new(tips, boom.spacing())
}

fn alike(tips: u32, height: f64) -> Result<SprayBoom, PatternError> {
    SprayBoom::alike(tips, Length::inches(20.0), Length::inches(height), Angle::degrees(110.0))
}

fn errors() -> Vec<PatternError> {
    let plugged =
        alike(4, 20.0).expect("a boom").tips().iter().map(|tip| SprayTip { flow: 0.0, ..*tip }).collect();
    let of = |tips, height, groove| {
        let grooves = Grooves { width: Length::metres(groove), ..Grooves::default() };
        pattern(&alike(tips, height).expect("a boom"), &Fan::tapered(), &grooves).expect_err("refused")
    };
    let caught = |collected: &[f64]| {
        MeasuredFan::new(collected, Length::metres(0.05), Length::metres(0.5), None).expect_err("refused")
    };
    let mut errors =
        vec![of(3, 40.0, 0.1), of(3, 20.0, 2.0), of(3, 20.0, 0.0), caught(&[0.0, 0.0]), caught(&[1.0, -1.0])];
    let refused = [
        alike(1, 20.0),
        alike(13, 0.0),
        SprayBoom::new(alike(4, 20.0).expect("a boom").tips().to_vec(), Length::ZERO),
        SprayBoom::new(plugged, Length::inches(20.0)),
        with(|tip| tip.angle = Angle::degrees(175.0)),
        with(|tip| tip.place = Length::ZERO),
        with(|tip| tip.flow = -0.1),
        with(|tip| tip.tilt = Angle::degrees(40.0)),
        with(|tip| tip.twist = Angle::degrees(80.0)),
    ];
    errors.extend(refused.into_iter().map(|boom| boom.expect_err("refused")));
    errors
}

#[test]
fn what_cannot_be_is_said_in_both_languages() {
    let mut said = Said::new();
    errors().iter().for_each(|error| said.coded(error));
    // One of each that the boom and its fans refuse.
    assert_eq!(said.codes.len(), 14, "{:?}", said.codes);
}
