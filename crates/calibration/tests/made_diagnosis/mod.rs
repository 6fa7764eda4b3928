//! Booms for tests of the diagnosis: readings as a line of a batch would have them.

#![allow(clippy::expect_used, dead_code)] // a test fails by panicking; not every test uses all of it

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use calibration::diagnosis::{Diagnosis, DiagnosisModel, Rated, diagnose};
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use units::{Caught, Dimension, Flow, Marks, Pressure, Time};

/// A boom whose tips were caught for half a minute.
#[derive(Clone)]
pub struct Boom {
    /// Sections of tips of readings.
    pub sections: Vec<Vec<Vec<f64>>>,
    /// The unit of the readings.
    pub unit: &'static str,
    /// The marks.
    pub step: f64,
    /// Whether the tip's size is told: 0.30 gal/min at 40 psi, read at 40 psi.
    pub rated: bool,
    /// How it is taken.
    pub model: DiagnosisModel,
}

/// Each tip caught once, in ounces.
pub fn boom(sections: &[&[f64]]) -> Boom {
    let sections = sections.iter().map(|tips| tips.iter().map(|reading| vec![*reading]).collect()).collect();
    Boom { sections, unit: "fl oz", step: 1.0, rated: true, model: DiagnosisModel::default() }
}

impl Boom {
    /// The round of its cups.
    pub fn round(&self) -> Round {
        let step =
            units::quantity(&format!("{} {}", self.step, self.unit), Dimension::Volume).expect("a step");
        let marks = Marks::every(step).expect("marks");
        let catch = |reading: &f64| {
            let caught = Caught::parse(&format!("{reading} {}", self.unit), None).expect("a reading");
            Catch::new(caught, Some(marks.clone()), Time::seconds(30.0), None).expect("a catch")
        };
        let mut tips = Vec::new();
        for (section, readings) in (0_u16..).zip(&self.sections) {
            for cups in readings {
                let number = u32::try_from(tips.len()).expect("few") + 1;
                let catches = cups.iter().map(catch).collect();
                tips.push(TipCatches { number, group: GroupId(0), section, catches });
            }
        }
        Round {
            kind: RoundKind::AsFound,
            tips,
            density: WATER_AT_20_C,
            time: Time::seconds(30.0),
            unit: None,
        }
    }

    /// What is most likely wrong with it.
    pub fn diagnose(&self) -> Diagnosis {
        diagnose(&self.round(), self.rated.then(rated), &self.model).expect("worked out")
    }
}

/// 0.30 gal/min at 40 psi, read at 40 psi.
pub fn rated() -> Rated {
    Rated {
        rated: RatedFlow::new(Flow::gallons_per_minute(0.3), Pressure::psi(40.0)).expect("rated"),
        pressure: Pressure::psi(40.0),
    }
}

/// One cup of so many millilitres in half a minute, read to such marks.
pub fn cup(millilitres: f64, marks: f64) -> Catch {
    cup_over(millilitres, marks, 30.0, None)
}

/// The same over another time, or under a run that others share.
pub fn cup_over(millilitres: f64, marks: f64, seconds: f64, run: Option<u32>) -> Catch {
    let step = units::quantity(&format!("{marks} mL"), Dimension::Volume).expect("a step");
    let caught = Caught::parse(&format!("{millilitres} mL"), None).expect("a reading");
    Catch::new(caught, Some(Marks::every(step).expect("marks")), Time::seconds(seconds), run)
        .expect("a catch")
}
