//! Sixty tips in five sections diagnosed, each read differently: the most work a boom of that size makes.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use calibration::diagnosis::{Checking, DiagnosisModel, OtherPressure, Rated, Swap, diagnose, next_checks};
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
    // What else may be known: all of them caught at another pressure too, two of them swapped.
    let second = DiagnosisModel { others: vec![at_80_psi(&round)?], ..DiagnosisModel::default() };
    case("diagnose_60_tips_second_pressure", 1, || diagnose(black_box(&round), Some(rated), &second));
    let after = [17, 18].map(|number: u32| {
        round.tips.iter().filter(|tip| tip.number == number).flat_map(|tip| tip.catches.clone()).collect()
    });
    let swapped = DiagnosisModel { swaps: vec![Swap { tips: (17, 18), after }], ..DiagnosisModel::default() };
    case("diagnose_60_tips_swapped", 1, || diagnose(black_box(&round), Some(rated), &swapped));
    Ok(())
}

/// The same tips at twice the pressure: √2 as much.
fn at_80_psi(round: &Round) -> Result<OtherPressure, Box<dyn Error>> {
    let marks = Marks::every(quantity("1 mL", Dimension::Volume)?)?;
    let mut tips = round.tips.clone();
    for tip in &mut tips {
        let before = tip.catches.first().map_or(0.0, |catch| catch.volume(round.density).as_millilitres());
        let caught = Caught::parse(&format!("{} mL", (before * std::f64::consts::SQRT_2).round()), None)?;
        tip.catches = vec![Catch::new(caught, Some(marks.clone()), round.time, None)?];
    }
    Ok(OtherPressure { pressure: Pressure::psi(80.0), tips })
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
