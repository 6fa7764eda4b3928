//! The catch test of a made-up boom of twenty tips.

use std::error::Error;

use calibration::catch::{
    Catch, DeviationRange, LimitProfile, NewTip, ReadingErrors, Risk, Round, RoundKind, RoundSummary,
    TipCatches, Uncertainties, against_new, probability_within, summarise, total_flow, total_flow_with,
    without_the_odd_one,
};
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use units::{Caught, Dimension, Flow, Marks, Pressure, Time};

use crate::List;

pub(super) fn put(list: &mut List) -> Result<(), Box<dyn Error>> {
    let round = made_up_round()?;
    let doubts = Uncertainties::default();
    for profile in ["mean-5", "mean-10"] {
        let limit = LimitProfile::named(profile)?.limit(None);
        let summary = summarise(&round, &limit, &doubts, Risk::default())?;
        for tip in &summary.tips {
            if let Some(range) = tip.measured {
                list.put(format!("{profile}, tip {}, within", tip.number), range.probability_within(&limit));
            }
        }
        if profile == "mean-10" {
            put_summary(list, &summary);
            for group in &summary.groups {
                if let Some(agreement) = without_the_odd_one(&summary, group, &limit) {
                    list.quantity(format!("without tip {}", agreement.without), agreement.mean_without);
                }
            }
            put_totals(list, &round, &summary, &doubts)?;
        }
    }
    put_against_new(list, &round, &doubts)
}

fn put_summary(list: &mut List, summary: &RoundSummary) {
    for group in &summary.groups {
        let name = group.group.0;
        list.quantity(format!("group {name}, mean"), group.mean.unwrap_or(Flow::ZERO));
        list.put(format!("group {name}, CV"), group.cv_percent.unwrap_or(0.0));
    }
    for tip in &summary.tips {
        list.quantity(format!("tip {}", tip.number), tip.flow.unwrap_or(Flow::ZERO));
        if let Some(range) = tip.measured {
            put_range(list, &format!("tip {}", tip.number), &range);
        }
    }
}

fn put_range(list: &mut List, name: &str, range: &DeviationRange) {
    list.put(format!("{name}, off"), range.deviation);
    list.put(format!("{name}, off, standard"), range.standard);
    list.put(format!("{name}, off, low"), range.low);
    list.put(format!("{name}, off, high"), range.high);
}

fn put_totals(
    list: &mut List,
    round: &Round,
    summary: &RoundSummary,
    doubts: &Uncertainties,
) -> Result<(), Box<dyn Error>> {
    let as_told = total_flow(round, summary, doubts).ok_or("some flow")?;
    list.ranged("all tips", &as_told.ranged());
    for (name, errors) in [("own", ReadingErrors::Own), ("shared", ReadingErrors::Shared)] {
        let total = total_flow_with(round, summary, doubts, errors).ok_or("some flow")?;
        for share in total.doubt.shares() {
            list.put(format!("all tips, reading errors {name}: {}", share.of.code()), share.relative);
        }
    }
    Ok(())
}

fn put_against_new(list: &mut List, round: &Round, doubts: &Uncertainties) -> Result<(), Box<dyn Error>> {
    let rated = NewTip::Rated {
        rated: RatedFlow::new(Flow::gallons_per_minute(0.3), Pressure::psi(40.0))?,
        pressure: Pressure::psi(29.3),
        pressure_doubt: Pressure::psi(0.7),
    };
    let caught = NewTip::from_catch(&tip(0, &["14.1 fl oz", "14.4 fl oz"])?, round.density, doubts)?;
    let limit = LimitProfile::named("new-10")?.limit(None);
    for (name, new) in [("rated", rated), ("caught", caught)] {
        for tip in against_new(round, &new, &limit, doubts, Risk::default())? {
            put_range(list, &format!("tip {} against new, {name}", tip.number), &tip.measured);
        }
    }
    Ok(())
}

/// Probabilities from nearly one to nearly nothing, tails included: what `libm::erfc` decides.
pub(super) fn probabilities(list: &mut List) {
    for step in 0..=30_u32 {
        let value = f64::from(step) * 0.0137 - 0.2;
        for standard in [0.0037, 0.0173, 0.11] {
            let name = format!("within 10 %: {value} give or take {standard}");
            list.put(name, probability_within(value, standard, -0.1, 0.1));
        }
    }
}

/// Twenty tips: a worn one, a plugged one, one not caught, one weighed, one caught twice, a few under one timed run, and
/// two of another group.
fn made_up_round() -> Result<Round, Box<dyn Error>> {
    let readings = [
        "14.3 fl oz",
        "14.7 fl oz",
        "13.9 fl oz",
        "14.5 fl oz",
        "17.1 fl oz",
        "14.1 fl oz",
        "0.3 fl oz",
        "14.6 fl oz",
        "423 mL",
        "14.2 fl oz",
        "417 g",
        "14.4 fl oz",
        "12.7 fl oz",
        "14.5 fl oz",
        "14.3 fl oz",
        "14.9 fl oz",
        "13.8 fl oz",
        "14.4 fl oz",
        "19.3 fl oz",
        "19.8 fl oz",
    ];
    let mut tips = Vec::new();
    for (number, reading) in (1..).zip(readings) {
        let once = [reading];
        let one = tip(number, if number == 3 { &["13.9 fl oz", "14.2 fl oz"] } else { &once })?;
        let group = if number > 18 { GroupId(1) } else { GroupId(0) };
        tips.push(TipCatches { group, ..one });
    }
    tips[9].catches.clear();
    let density = WATER_AT_20_C;
    Ok(Round { kind: RoundKind::AsFound, tips, density, time: Time::seconds(27.9), unit: None })
}

fn tip(number: u32, readings: &[&str]) -> Result<TipCatches, Box<dyn Error>> {
    let mut catches = Vec::new();
    for reading in readings {
        let caught = Caught::parse(reading, None)?;
        let (step, dimension) = if caught.written().dimension() == Dimension::Mass {
            ("3 g", Dimension::Mass)
        } else {
            ("0.7 fl oz", Dimension::Volume)
        };
        let marks = Marks::every(units::quantity(step, dimension)?)?;
        let run = (number % 5 == 4).then_some(number / 10);
        catches.push(Catch::new(caught, Some(marks), Time::seconds(27.9), run)?);
    }
    Ok(TipCatches { number, group: GroupId(0), section: 0, catches })
}
