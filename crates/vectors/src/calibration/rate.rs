//! The rate by every method, with the range its doubts give.

use std::error::Error;

use calibration::doubt::{DoubtOf, Known};
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, CourseTiming, Directed, DistanceRefill,
    EffectiveSwath, FlowSpeedWidth, FromRow, HandPlot, HandTimed, HandWalking, KnownArea, Overlap, Rate,
    WholeTank, area_covered_by, per_small_area, swath_of_boom,
};
use planning::rate_at_speed;
use sprayer::PressureControl;
use units::{Area, Flow, Length, Speed, Time, UnitSystem, Volume};

use crate::List;

pub(super) fn put(list: &mut List) -> Result<(), Box<dyn Error>> {
    for (name, rate) in rates()? {
        list.ranged(format!("rate by {name}"), &rate.rate);
        for share in rate.doubt.shares() {
            list.put(format!("rate by {name}: {}", share.of.code()), share.relative);
        }
    }
    let rate = boom().rate()?.rate;
    for control in [PressureControl::Constant, PressureControl::GroundDriven, PressureControl::RateController]
    {
        let (then, now) = (Speed::miles_per_hour(5.3), Speed::miles_per_hour(3.7));
        let new = rate_at_speed(&rate, then, now, control)?;
        list.ranged(format!("rate at a new speed, {}", control.word()), &new.rate);
    }
    list.ranged("ground a litre covers", &area_covered_by(Volume::litres(1.0), &rate)?);
    let small = per_small_area(&rate)?.rate;
    list.put("rate on 1000 sq ft", small.value(UnitSystem::Us));
    list.put("rate on 100 sq m", small.value(UnitSystem::Metric));
    list.quantity("swath of 13 tips at 19.7 in", swath_of_boom(13, Length::inches(19.7))?);
    Ok(())
}

fn boom() -> FlowSpeedWidth {
    FlowSpeedWidth {
        flow: Known::flow_as_given(Flow::gallons_per_minute(0.253)),
        speed: Known::speed_as_given(Speed::miles_per_hour(5.3)),
        width: BroadcastWidth::TipSpacing(Known::tip_spacing(Length::inches(19.7))),
    }
}

fn collected() -> Collected {
    Collected::Flow {
        flow: Known::flow_as_given(Flow::gallons_per_minute(0.253)),
        speed: Known::speed_as_given(Speed::miles_per_hour(5.3)),
    }
}

fn rates() -> Result<Vec<(&'static str, Rate)>, Box<dyn Error>> {
    let course = Known::taped_course(Length::feet(203.7));
    let cup = Known::in_cup(Volume::fluid_ounces(14.3), Some(Volume::fluid_ounces(0.5)));
    let lasted = Some(Time::seconds(27.9));
    let swath = Length::feet(21.7);
    let band = Band {
        collected: Collected::over_course(cup.clone(), course.clone(), lasted),
        from: FromRow::OneOf(2),
        band: Known::band(Length::inches(11.7)),
        rows: Known::rows(Length::inches(37.3)),
    };
    let band = band.rate()?;
    let wetted = EffectiveSwath::Wetted {
        wetted: Known::swath_by_sight(Length::feet(29.3)),
        overlap: Overlap::Strip(Length::feet(5.9)),
    };
    let walking = Speed::kilometres_per_hour(2.43);
    let said = Known::either_way(Area::acres(7.3), Area::acres(0.31), DoubtOf::Given);
    Ok(vec![
        ("flow, speed and width", boom().rate()?),
        (
            "a catch over a course",
            CatchOverCourse::by_hand(
                cup.clone(),
                course.clone(),
                BroadcastWidth::TipSpacing(Known::tip_spacing(Length::inches(19.7))),
                lasted,
            )
            .rate()?,
        ),
        (
            "refill over a distance",
            DistanceRefill {
                used: Known::refilled(Volume::gallons(6.53)),
                distance: course,
                swath: Known::swath(swath),
            }
            .rate()?,
        ),
        ("an area", KnownArea { used: Known::refilled(Volume::gallons(97.3)), area: said.clone() }.rate()?),
        (
            "a whole tank",
            WholeTank {
                tank: Known::by_tank_marks(Volume::gallons(203.0)),
                left: Volume::gallons(17.3),
                area: said,
            }
            .rate()?,
        ),
        ("a boomless cluster", Boomless { collected: collected(), swath: wetted }.rate()?),
        ("bands, treated", band.treated),
        ("bands, crop", band.crop),
        (
            "tips directed at a row",
            Directed {
                collected: collected(),
                from: FromRow::OneOf(3),
                rows: Known::rows(Length::inches(29.7)),
            }
            .rate()?,
        ),
        (
            "a plot by hand",
            HandPlot { used: cup.clone(), plot: Known::plot(Area::square_feet(342.25)) }.rate()?,
        ),
        (
            "walking",
            HandWalking {
                flow: Known::flow_as_given(Flow::litres_per_minute(0.613)),
                speed: Known::speed_as_given(walking),
                width: Known::swath_by_sight(Length::metres(0.76)),
            }
            .rate()?,
        ),
        (
            "a timed plot by hand",
            HandTimed {
                caught: cup,
                plot: Known::plot(Area::square_feet(342.25)),
                timing: CourseTiming::by_hand(lasted),
            }
            .rate()?,
        ),
    ])
}
