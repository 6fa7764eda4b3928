//! Tips: flow against pressure, sizes, the mean of a catch and the limits about it.

use calibration::catch::{
    Catch, Limit, LimitProfile, Risk, Round, RoundKind, RoundSummary, TipCatches, Uncertainties, summarise,
};
use sprayer::{GroupId, RatedFlow, Scale, TipSize, WATER_AT_20_C};
use units::{Caught, Flow, Time, Verdict};

use crate::givens::{Found, Givens, turning_point};
use crate::table::row_of;
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("flow_at_pressure", flow_at_pressure),
    ("iso_size_flow", iso_size_flow),
    ("mean_limits", mean_limits),
    ("catch_mean", catch_mean),
];

fn flow_at_pressure(given: &Givens) -> Outcome<Found> {
    let (flow, pressure) = units::flow_at_pressure(given.text("rated")?)?;
    Found::of(RatedFlow::new(flow, pressure)?.flow_at(given.get("pressure")?)?)
}

fn iso_size_flow(given: &Givens) -> Outcome<Found> {
    let rated = TipSize::named(given.text("size")?)?.rated(Scale::MetricAt3Bar)?;
    Found::of(rated.flow_at(given.get("pressure")?)?)
}

/// The flow at which the verdict of a limit about the mean turns over.
fn mean_limits(given: &Givens) -> Outcome<Found> {
    let mean: Flow = given.get("mean")?;
    let limit = Limit::own(given.share("limit")?)?;
    let far = match given.text("side")? {
        "upper" => 2.0,
        "lower" => 0.0,
        other => return Err(format!("no side {other}").into()),
    };
    let within = |times: f64| Ok(limit.as_read(times - 1.0) == Verdict::Within);
    Found::of(mean * turning_point(1.0, far, within)?)
}

fn catch_mean(given: &Givens) -> Outcome<Found> {
    let limit = LimitProfile::named("mean-10")?.limit(None);
    let mean = summary(given.text("readings")?, &limit)?.groups[0].mean.ok_or("no tip runs")?;
    Found::of(mean * CATCH)
}

/// How long each cup is held here; the mean of the catches does not depend on it.
const CATCH: Time = Time::seconds(30.0);

/// Readings parted by commas, caught one after the other.
pub fn summary(readings: &str, limit: &Limit) -> Outcome<RoundSummary> {
    let mut tips = Vec::new();
    for (number, reading) in (1..).zip(readings.split(',')) {
        let catches = vec![Catch::new(Caught::parse(reading, None)?, None, CATCH, None)?];
        tips.push(TipCatches { number, group: GroupId(0), section: 0, catches });
    }
    let round = Round { kind: RoundKind::AsFound, tips, density: WATER_AT_20_C, time: CATCH, unit: None };
    Ok(summarise(&round, limit, &Uncertainties::default(), Risk::default())?)
}

/// The tips that are beyond the limit as their cups read.
pub fn beyond(summary: &RoundSummary) -> Vec<u32> {
    let outside = summary.tips.iter().filter(|tip| tip.as_read == Some(Verdict::Outside));
    outside.map(|tip| tip.number).collect()
}

#[test]
fn expected_from_own_vector_the_tips_named_beside_the_mean() -> Outcome<()> {
    // Row T06-09, ours: besides the mean its text names the tips beyond 5 % and beyond 10 %, and the spread.
    let row = row_of("T06-09")?;
    for words in ["flag nozzles 6 (+11.9%) and 9 (-12.5%)", "sample CV 5.9%"] {
        assert!(row.tolerance.contains(words), "{}: {} no longer says {words}", row.id, row.tolerance);
    }
    let readings = Givens::read(row.given)?.text("readings")?;
    for name in ["mean-5", "mean-10"] {
        let summary = summary(readings, &LimitProfile::named(name)?.limit(None))?;
        assert_eq!(beyond(&summary), [6, 9], "{name}");
        let off =
            |tip: usize| summary.tips[tip - 1].measured.map_or(f64::NAN, |range| 100.0 * range.deviation);
        assert!((off(6) - 11.9).abs() < 0.05 && (off(9) + 12.5).abs() < 0.05, "{} {}", off(6), off(9));
        let spread = summary.groups[0].cv_percent.unwrap_or(f64::NAN);
        assert!((spread - 5.9).abs() < 0.05, "{spread}");
    }
    Ok(())
}

#[test]
fn expected_from_alberta_the_lower_limit_too() -> Outcome<()> {
    // Row T06-01 holds the upper limit; its note has the lower one, 0.7125 L/min, printed 0.71.
    let lower = Givens::read("mean=0.75 L/min; limit=5 %; side=lower")?;
    let found = Flow::litres_per_minute(1.0);
    let lower = mean_limits(&lower)?.value / units::Quantity::si(found);
    assert!((lower - 0.7125).abs() < 1e-9, "{lower}");
    Ok(())
}
