//! Rounds made up for tests.

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use sprayer::{GroupId, WATER_AT_20_C};
use units::{Caught, Dimension, Marks, Time};

/// What a round is made of.
pub struct Made {
    /// Each tip's readings.
    pub readings: Vec<Vec<f64>>,
    /// The marks.
    pub step: f64,
    /// The time.
    pub seconds: f64,
    /// The unit of readings and marks.
    pub unit: &'static str,
    /// How many cups are caught under one timed run.
    pub cups_in_a_run: Option<u32>,
}

impl Default for Made {
    fn default() -> Self {
        Self { readings: Vec::new(), step: 1.0, seconds: 30.0, unit: "fl oz", cups_in_a_run: None }
    }
}

/// Makes the round.
pub fn made(of: &Made) -> Round {
    let catch = |number: u32, reading: &f64| {
        let step = units::quantity(&format!("{} {}", of.step, of.unit), Dimension::Volume).expect("a step");
        let caught = Caught::parse(&format!("{reading} {}", of.unit), None).expect("a reading");
        let run = of.cups_in_a_run.map(|cups| (number - 1) / cups);
        Catch::new(caught, Some(Marks::every(step).expect("a step")), Time::seconds(of.seconds), run)
            .expect("a catch")
    };
    let tip = |(number, readings): (u32, &Vec<f64>)| TipCatches {
        number,
        group: GroupId(0),
        section: 0,
        catches: readings.iter().map(|reading| catch(number, reading)).collect(),
    };
    Round {
        kind: RoundKind::AsFound,
        tips: (1..).zip(&of.readings).map(tip).collect(),
        density: WATER_AT_20_C,
        time: Time::seconds(of.seconds),
        unit: units::Unit::named(of.unit),
    }
}
