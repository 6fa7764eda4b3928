//! Sixty tips in five sections diagnosed, each read differently: the most work a boom of that size makes.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use calibration::diagnosis::{Checking, DiagnosisModel, Rated, diagnose, next_checks};
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use timing::case;
use units::{Caught, Dimension, Flow, Marks, Pressure, Time, quantity};

fn main() -> Result<(), Box<dyn Error>> {
    let round = sixty_tips()?;
    let rated = Rated {
        rated: RatedFlow::new(Flow::gallons_per_minute(0.3), Pressure::psi(40.0))?,
        pressure: Pressure::psi(40.0),
    };
    let model = DiagnosisModel::default();
    let found = diagnose(&round, Some(rated), &model)?;
    case("diagnose_60_tips", 1, || diagnose(black_box(&round), Some(rated), &model));
    case("diagnose_60_tips_next", 1, || next_checks(black_box(&round), &found, &model, &Checking::default()));
    Ok(())
}

/// Sixty cups around 568 mL, no two of a section alike, one of them a third low and one a fifth high.
fn sixty_tips() -> Result<Round, Box<dyn Error>> {
    let time = Time::seconds(30.0);
    let marks = Marks::every(quantity("1 mL", Dimension::Volume)?)?;
    let mut tips = Vec::new();
    for (number, section) in (1_u32..=60).zip((0_u16..5).flat_map(|section| [section; 12])) {
        let millilitres = match number {
            17 => 380,
            40 => 690,
            _ => 556 + (number * 7) % 25,
        };
        let caught = Caught::parse(&format!("{millilitres} mL"), None)?;
        let catches = vec![Catch::new(caught, Some(marks.clone()), time, None)?];
        tips.push(TipCatches { number, group: GroupId(0), section, catches });
    }
    Ok(Round { kind: RoundKind::AsFound, tips, density: WATER_AT_20_C, time, unit: None })
}
