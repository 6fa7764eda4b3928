//! The application rate by each method, and the flow that a rate asks for.

use calibration::course::{Course, CourseKind};
use calibration::doubt::Known;
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, Directed, DistanceRefill, EffectiveSwath,
    FlowSpeedWidth, FromRow, HandPlot, HandWalking, KnownArea, WholeTank, area_covered_by, per_small_area,
};
use planning::{Setup, change_to_hit};
use units::{Area, Flow, Length, Quantity, Ranged, Speed, UnitSystem, Volume, VolumePerArea};

use crate::givens::{Found, Givens};
use crate::{Calculation, Outcome};

pub const CALCULATIONS: &[(&str, Calculation)] = &[
    ("rate_flow_speed_width", rate_flow_speed_width),
    ("flow_for_rate", flow_for_rate),
    ("rate_catch_over_course", rate_catch_over_course),
    ("rate_used_over_distance", rate_used_over_distance),
    ("rate_used_over_area", rate_used_over_area),
    ("rate_per_1000_sqft", rate_per_1000_sqft),
    ("area_per_volume", area_per_volume),
];

/// Every method that takes a flow, a speed and a width says the same of them.
fn rate_flow_speed_width(given: &Givens) -> Outcome<Found> {
    let flow: Known<Flow> = Known::flow_as_given(given.get("flow")?);
    let speed: Known<Speed> = Known::speed_as_given(given.get("speed")?);
    let width: Length = given.get("width")?;
    let collected = || Collected::Flow { flow: flow.clone(), speed: speed.clone() };
    let boom = FlowSpeedWidth {
        flow: flow.clone(),
        speed: speed.clone(),
        width: BroadcastWidth::AsGiven(Known::tip_spacing(width)),
    };
    let band = Band {
        collected: collected(),
        from: FromRow::AllTips,
        band: Known::band(width),
        rows: Known::rows(width * 2.0),
    };
    let row = Directed { collected: collected(), from: FromRow::AllTips, rows: Known::rows(width) };
    let cluster =
        Boomless { collected: collected(), swath: EffectiveSwath::Given(Known::swath_by_sight(width)) };
    let hand = HandWalking { flow: flow.clone(), speed: speed.clone(), width: Known::swath_by_sight(width) };
    let rates = [boom.rate()?, band.rate()?.treated, row.rate()?, cluster.rate()?, hand.rate()?];
    Found::by_all(&rates.map(|rate| rate.rate.value))
}

/// The flow that the tip chosen to hit the rate must give.
fn flow_for_rate(given: &Givens) -> Outcome<Found> {
    let rate: VolumePerArea = given.get("rate")?;
    let setup =
        Setup { speed: Some(given.get("speed")?), tip_width: Some(given.get("width")?), ..Setup::new(rate) };
    let tip = change_to_hit(&setup, rate)?.tip.ok_or("no tip was named")?;
    Found::by_all(&[tip.flow, tip.water_flow])
}

fn rate_catch_over_course(given: &Givens) -> Outcome<Found> {
    let (caught, course): (Volume, Length) = (given.get("catch")?, given.get("course")?);
    let width: Length = given.get("width")?;
    let by_catch = CatchOverCourse::by_hand(
        Known::in_cup(caught, None),
        Known::taped_course(course),
        BroadcastWidth::TipSpacing(Known::tip_spacing(width)),
        None,
    );
    let own_course = Course::new(CourseKind::OneTip, width)?;
    if (own_course.length().ratio_to(course) - 1.0).abs() > 1e-9 {
        return Err("not on the course of that width".into());
    }
    Found::by_all(&[by_catch.rate()?.rate.value, own_course.rate(caught)])
}

fn rate_used_over_distance(given: &Givens) -> Outcome<Found> {
    let refill = DistanceRefill {
        used: Known::refilled(given.get("used")?),
        distance: Known::taped_course(given.get("distance")?),
        swath: Known::swath(given.get("swath")?),
    };
    Found::of(refill.rate()?.rate.value)
}

fn rate_used_over_area(given: &Givens) -> Outcome<Found> {
    let (used, area): (Volume, Area) = (given.get("used")?, given.get("area")?);
    let known = KnownArea { used: Known::refilled(used), area: Known::field(area) };
    let plot = HandPlot { used: Known::in_cup(used, None), plot: Known::plot(area) };
    let tank = WholeTank { tank: Known::by_tank_marks(used * 2.0), left: used, area: Known::field(area) };
    Found::by_all(&[known.rate()?, plot.rate()?, tank.rate()?].map(|rate| rate.rate.value))
}

fn rate_per_1000_sqft(given: &Givens) -> Outcome<Found> {
    let shown = per_small_area(&Ranged::exact(given.get("rate")?))?.rate;
    let unit = shown.unit(UnitSystem::Us);
    if unit.text() != "gal/1000 sq ft" {
        return Err(format!("shown in {}", unit.text()).into());
    }
    Found::of(VolumePerArea::from_si(shown.value(UnitSystem::Us) * unit.si_factor()))
}

fn area_per_volume(given: &Givens) -> Outcome<Found> {
    let rate = Ranged::exact(given.get::<VolumePerArea>("rate")?);
    Found::of(area_covered_by(given.get("volume")?, &rate)?.value)
}
