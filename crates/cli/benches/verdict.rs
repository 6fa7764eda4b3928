//! Verdicts: sixty tips with three cups each, and how the time grows with the number of tips.
//!
//! `judge_60_tips` is beside the same model in numpy (`tools/bench/verdict_numpy.py`). The growth is told as the time
//! per tip from 15 to 240 tips: near the same all along is near linear.
#![allow(clippy::print_stdout, reason = "a bench prints its figures")]

mod timing;

use std::error::Error;
use std::hint::black_box;

use calibration::catch::{Catch, LimitProfile, Round, RoundKind, TipCatches, summarise};
use calibration::verdict::{Model, judge_round};
use sprayer::{GroupId, WATER_AT_20_C};
use timing::case;
use units::{Caught, Dimension, Marks, Time};

fn main() -> Result<(), Box<dyn Error>> {
    let limit = LimitProfile::named("mean-10")?.limit(None);
    let model = Model::default();
    for tips in [15, 30, 60, 120, 240] {
        let round = made_up(tips)?;
        let summary = summarise(&round, &limit, &model.doubts, model.risk)?;
        let name = if tips == 60 { "judge_60_tips".to_string() } else { format!("judge_{tips}_tips_growth") };
        case(&name, 1, || judge_round(black_box(&round), &summary, &limit, &model));
    }
    Ok(())
}

/// Tips of 430 mL in 30 s, spread by 2 %, read to 10 mL, each caught three times.
fn made_up(tips: u32) -> Result<Round, Box<dyn Error>> {
    let mut state = 88_172_645_463_325_252_u64;
    let mut chance = || {
        // Marsaglia's xorshift (2003): enough to make readings differ.
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        f64::from(u32::try_from(state >> 40).unwrap_or(0)) / f64::from(1_u32 << 24) - 0.5
    };
    let mut all = Vec::new();
    for number in 1..=tips {
        let flow = 430.0 * (1.0 + 0.04 * (chance() + chance()));
        let mut catches = Vec::new();
        for _ in 0..3 {
            let read = (flow * (1.0 + 0.02 * (chance() + chance())) / 10.0).round() * 10.0;
            let marks = Marks::every(units::quantity("10 mL", Dimension::Volume)?)?;
            catches.push(Catch::new(
                Caught::parse(&format!("{read} mL"), None)?,
                Some(marks),
                Time::seconds(30.0),
                None,
            )?);
        }
        all.push(TipCatches { number, group: GroupId(0), section: 0, catches });
    }
    Ok(Round {
        kind: RoundKind::AsFound,
        tips: all,
        density: WATER_AT_20_C,
        time: Time::seconds(30.0),
        unit: None,
    })
}
