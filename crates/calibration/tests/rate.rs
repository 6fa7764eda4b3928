//! Rates: ranges, widths that do not go together, what is said and what is refused, and laws that hold for any sprayer.

#![allow(clippy::expect_used)] // a test fails by panicking

use calibration::doubt::{Budget, DoubtOf, Known};
use calibration::drive::{Drive, drive_speed};
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, Directed, DistanceRefill, EffectiveSwath,
    FlowSpeedWidth, FromRow, HandPlot, HandWalking, KnownArea, Method, Overlap, Rate, RateError, WholeTank,
    WidthKind, area_covered_by, check_swath, per_small_area, swath_of_boom,
};
use proptest::prelude::*;
use units::{
    Area, Coded, Finding, Flow, Length, NORMAL_95, Ranged, Speed, Time, UnitSystem, Volume, VolumePerArea,
};

fn usual(width: BroadcastWidth) -> FlowSpeedWidth {
    FlowSpeedWidth {
        flow: Known::flow_as_given(Flow::gallons_per_minute(0.27)),
        speed: Known::speed_as_given(Speed::miles_per_hour(4.0)),
        width,
    }
}

fn spacing(inches: f64) -> BroadcastWidth {
    BroadcastWidth::TipSpacing(Known::tip_spacing(Length::inches(inches)))
}

fn codes(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(Coded::code).collect()
}

fn timed() -> Collected {
    Collected::Flow {
        flow: Known::flow_as_given(Flow::gallons_per_minute(0.27)),
        speed: Known::speed_as_given(Speed::miles_per_hour(4.0)),
    }
}

#[test]
fn the_range_is_that_of_the_doubts() {
    // By hand: flow 1.5 %, speed 1 %, spacing 0.2 %: √(1.5² + 1² + 0.2²) % = 1.814 %, ± 3.55 % at 95 %.
    let rate = usual(spacing(20.0)).rate().expect("usable");
    assert!((rate.doubt.relative() - 0.018_138).abs() < 1e-6, "{}", rate.doubt.relative());
    let either_way = rate.rate.either_way().ratio_to(rate.rate.value);
    assert!((either_way - 0.018_138 * NORMAL_95).abs() < 1e-5);
    assert_eq!(rate.doubt.largest().expect("doubt").of, DoubtOf::FlowAsGiven);
    assert_eq!((rate.method, rate.width), (Method::FlowSpeedWidth, WidthKind::TipSpacing));
    let lines = rate.working.lines(UnitSystem::Us).join("\n");
    for line in ["rate = flow ÷ (speed × width)", "flow = 0.27 gal/min", "width = 20 in", "the flow as given"]
    {
        assert!(lines.contains(line), "{line} is missing in\n{lines}");
    }
}

#[test]
fn one_watch_for_drive_and_catch_cancels() {
    // Two watches 1 % off are √2 % of the rate; one and the same watch nothing.
    let with = |tie: fn(Budget) -> Budget| {
        let flow: Known<Flow> = Known::exact(Volume::fluid_ounces(19.2))
            .over(Known::of(Time::seconds(30.0), tie(Budget::nothing())));
        let speed: Known<Speed> =
            Known::exact(Length::feet(200.0)).over(Known::of(Time::seconds(45.0), tie(Budget::nothing())));
        let width = BroadcastWidth::TipSpacing(Known::exact(Length::inches(20.0)));
        FlowSpeedWidth { flow, speed, width }.rate().expect("usable").doubt.relative()
    };
    assert!(with(|doubt| doubt.shared(DoubtOf::Watch, 0.01)) < 1e-12);
    assert!((with(|doubt| doubt.own(DoubtOf::Watch, 0.01)) - 0.01 * 2.0_f64.sqrt()).abs() < 1e-12);
}

#[test]
fn a_drive_and_a_catch_make_a_rate() {
    // 198 ft in 45 s is exactly 3 mph; 19.2 fl oz in 30 s is 0.3 gal/min; at 20 in that is 5940 × 0.3 ÷ 60 = 29.7 gal/ac.
    let drive = drive_speed(&Drive::new(Length::feet(198.0), &[Time::seconds(45.0), Time::seconds(45.0)]))
        .expect("usable");
    let flow: Known<Flow> = Known::in_cup(Volume::fluid_ounces(19.2), Some(Volume::fluid_ounces(1.0)))
        .over(Known::by_hand(Time::seconds(30.0), DoubtOf::TimingTheCatch));
    let rate = FlowSpeedWidth { flow, speed: drive.speed, width: spacing(20.0) }.rate().expect("usable");
    assert!((rate.rate.value.as_gallons_per_acre() - 29.7).abs() < 1e-9);
    // By hand, in percent: marks 1/√12 of 19.2 = 1.504; scale 1; handling 0.5; catch 0.943; drive 0.444; tape 0.2;
    // spacing 0.2; the watch cancels. √(2.261 + 1 + 0.25 + 0.889 + 0.197 + 0.04 + 0.04) = 2.163.
    assert!((rate.doubt.relative() - 0.021_63).abs() < 1e-5, "{}", rate.doubt.relative());
    assert_eq!(rate.doubt.largest().expect("doubt").of, DoubtOf::CupMarks);
}

#[test]
fn a_catch_over_a_course_counts_both_times() {
    // By hand, over 28 s: each time 0.2828 ÷ 28 = 1.01 %, two of them; scale 1, handling 0.5, tape and spacing 0.2.
    let caught = CatchOverCourse::by_hand(
        Known::in_cup(Volume::fluid_ounces(14.0), None),
        Known::taped_course(Length::feet(204.1875)),
        spacing(20.0),
        Some(Time::seconds(28.0)),
    );
    let rate = caught.rate().expect("usable");
    assert!((rate.doubt.relative() - 0.018_35).abs() < 2e-5, "{}", rate.doubt.relative());
    assert!((rate.rate.value.as_gallons_per_acre() - 14.0).abs() < 1e-9);
    assert_eq!(rate.method.code(), "catch_over_course");
}

#[test]
fn the_swath_is_tips_times_spacing_not_the_boom() {
    let swath = swath_of_boom(13, Length::inches(20.0)).expect("usable");
    assert!((swath.as_inches() - 260.0).abs() < 1e-9);
    let check = |feet: f64| {
        let finding = check_swath(Length::feet(feet), 13, Length::inches(20.0)).expect("usable");
        finding.map(|finding| finding.code())
    };
    assert_eq!(check(21.7), None);
    assert_eq!(check(20.0), Some("rate_boom_length_for_swath"));
    assert_eq!(check(30.0), Some("rate_swath_not_tips_times_spacing"));
    let finding = check_swath(Length::feet(20.0), 13, Length::inches(20.0)).expect("usable").expect("said");
    assert_eq!(
        finding.text(UnitSystem::Us),
        "20 ft is the boom from the first tip to the last. The swath is 13 tips times 20 in: 21.7 ft."
    );
    assert!(check_swath(Length::inches(20.0), 1, Length::inches(20.0)).expect("usable").is_none());
    assert_eq!(swath_of_boom(0, Length::inches(20.0)).expect_err("refused").code(), "rate_tips");
}

#[test]
fn a_boomless_swath_is_less_than_what_is_wetted() {
    let swath = |overlap| {
        let wetted = Known::swath_by_sight(Length::feet(30.0));
        EffectiveSwath::Wetted { wetted, overlap }
    };
    // 30 ft wetted, 6 ft of it wetted again by the next pass: 24 ft, said either way.
    for overlap in [Overlap::Strip(Length::feet(6.0)), Overlap::PartOfWetted(0.2)] {
        let effective = swath(overlap).length().expect("usable");
        assert!((effective.value.as_feet() - 24.0).abs() < 1e-9);
        assert!((effective.doubt.relative() - 0.05).abs() < 1e-12);
    }
    let rate = |swath| {
        let collected = Collected::over_course(
            Known::in_cup(Volume::fluid_ounces(140.0), None),
            Known::taped_course(Area::acres(1.0 / 12.8) / Length::feet(24.0)),
            None,
        );
        Boomless { collected, swath }.rate()
    };
    let right = rate(swath(Overlap::PartOfWetted(0.2))).expect("usable");
    assert!((right.rate.value.as_gallons_per_acre() - 14.0).abs() < 1e-9);
    assert_eq!(right.doubt.largest().expect("doubt").of, DoubtOf::SwathBySight);
    assert_eq!(codes(&right.findings), ["rate_effective_swath"]);
    assert!(right.working.lines(UnitSystem::Us).join("\n").contains("next pass wets again = 20 %"));
    assert_eq!(
        codes(&rate(swath(Overlap::PartOfWetted(0.0))).expect("usable").findings),
        ["rate_overlap_none"]
    );
    assert_eq!(
        codes(&rate(swath(Overlap::PartOfWetted(0.6))).expect("usable").findings),
        ["rate_overlap_large"]
    );
    for part in [1.0, -0.1, f64::NAN] {
        let error = rate(swath(Overlap::PartOfWetted(part))).expect_err("refused");
        assert_eq!(error.code(), "rate_overlap", "{part}");
    }
    let given = EffectiveSwath::Given(Known::swath_by_sight(Length::feet(24.0)));
    assert!(codes(&rate(given).expect("usable").findings).is_empty());
}

#[test]
fn a_band_badly_judged_leaves_the_crop_acre_alone() {
    let band = |inches, from| Band {
        collected: timed(),
        from,
        band: Known::band(Length::inches(inches)),
        rows: Known::rows(Length::inches(30.0)),
    };
    let rate = band(10.0, FromRow::AllTips).rate().expect("usable");
    let (treated, crop) = (rate.treated.rate.value, rate.crop.rate.value);
    assert!((treated.as_gallons_per_acre() - 5940.0 * 0.27 / 40.0).abs() < 1e-9);
    assert!((crop.ratio_to(treated) - 10.0 / 30.0).abs() < 1e-12);
    assert!((rate.treated_percent - 100.0 / 3.0).abs() < 1e-9);
    assert!(rate.crop.doubt.relative() < rate.treated.doubt.relative());
    assert_eq!((rate.treated.width, rate.crop.width), (WidthKind::Band, WidthKind::Rows));
    // One of two tips of the band does half of it.
    let half = band(10.0, FromRow::OneOf(2)).rate().expect("usable");
    assert!((half.treated.rate.value.ratio_to(treated) - 2.0).abs() < 1e-12);
    assert!(
        codes(&band(40.0, FromRow::AllTips).rate().expect("usable").treated.findings)
            .contains(&"rate_band_wider_than_rows")
    );
}

#[test]
fn what_was_left_in_the_tank_makes_it_more_doubtful() {
    let tank = |left| WholeTank {
        tank: Known::by_tank_marks(Volume::gallons(300.0)),
        left: Volume::gallons(left),
        area: Known::exact(Area::acres(15.0)),
    };
    let (dry, half) = (tank(0.0).rate().expect("usable"), tank(150.0).rate().expect("usable"));
    assert!((dry.rate.value.as_gallons_per_acre() - 20.0).abs() < 1e-9);
    assert!((half.rate.value.as_gallons_per_acre() - 10.0).abs() < 1e-9);
    assert!((half.doubt.relative() / dry.doubt.relative() - 2.0).abs() < 1e-9);
    assert_eq!(tank(300.0).rate().expect_err("refused").code(), "rate_nothing_used");
    assert_eq!(tank(-1.0).rate().expect_err("refused").code(), "rate_not_positive");
}

#[test]
fn widths_that_look_mixed_up_are_doubted() {
    let said = |width| codes(&usual(width).rate().expect("usable").findings);
    let swath = |feet| BroadcastWidth::Swath(Known::swath(Length::feet(feet)));
    assert!(said(spacing(20.0)).is_empty());
    assert!(said(spacing(30.0 * 12.0)).contains(&"rate_spacing_like_swath"));
    assert!(said(swath(20.0 / 12.0)).contains(&"rate_swath_like_spacing"));
    assert!(!said(swath(30.0)).contains(&"rate_swath_like_spacing"));
    // The whole boom's 8 gal/min over one tip's spacing.
    let boom =
        FlowSpeedWidth { flow: Known::flow_as_given(Flow::gallons_per_minute(8.0)), ..usual(spacing(20.0)) };
    assert_eq!(codes(&boom.rate().expect("usable").findings), ["rate_doubtful_high"]);
    let fast =
        FlowSpeedWidth { speed: Known::speed_as_given(Speed::miles_per_hour(400.0)), ..usual(spacing(20.0)) };
    assert_eq!(codes(&fast.rate().expect("usable").findings), ["speed_doubtful_fast", "rate_doubtful_low"]);
}

#[test]
fn widths_that_nothing_sprays_are_refused_or_doubted() {
    let as_given =
        |inches: f64| usual(BroadcastWidth::AsGiven(Known::tip_spacing(Length::inches(inches)))).rate();
    for (inches, text) in [
        (1e-6, "the width must be 1/4 in to 500 ft, got 0.000001 in"),
        (0.24, "the width must be 1/4 in to 500 ft, got 0.24 in"),
        (12_000.0, "the width must be 1/4 in to 500 ft, got 1000 ft"),
    ] {
        let error = as_given(inches).expect_err("refused");
        assert_eq!((error.code(), error.to_string().as_str()), ("rate_width", text));
        assert!(error.hint().expect("a hint").contains("20 in"));
    }
    let said = |inches| codes(&as_given(inches).expect("usable").findings);
    assert!(said(1.0).contains(&"rate_width_doubtful"));
    assert!(said(300.0 * 12.0).contains(&"rate_width_doubtful"));
    assert!(said(20.0).is_empty());
}

#[test]
fn a_rate_too_doubtful_to_use_says_so() {
    let with = |percent: f64| {
        let speed = Known::either_way(
            Speed::miles_per_hour(5.0),
            Speed::miles_per_hour(5.0 * percent / 100.0),
            DoubtOf::Given,
        );
        FlowSpeedWidth { speed, ..usual(spacing(20.0)) }.rate().expect("usable")
    };
    assert!(!codes(&with(25.0).findings).contains(&"rate_doubt_large"));
    let large = with(90.0);
    let told = large.findings.iter().find(|one| one.code() == "rate_doubt_large").expect("told");
    let text = told.text(UnitSystem::Us);
    assert!(text.starts_with("The rate may be 90 % off either way"), "{text}");
    assert!(text.ends_with("this says next to nothing."), "{text}");
    assert!(told.action(UnitSystem::Us).is_some());
    // Twice such a doubt would reach below nothing; the range begins there.
    let flow =
        Known::either_way(Flow::gallons_per_minute(0.3), Flow::gallons_per_minute(0.3), DoubtOf::Given);
    let speed =
        Known::either_way(Speed::miles_per_hour(5.0), Speed::miles_per_hour(5.0), DoubtOf::SpeedAsGiven);
    let rate = FlowSpeedWidth { flow, speed, width: spacing(20.0) }.rate().expect("usable").rate;
    assert_eq!(rate.low, VolumePerArea::ZERO);
}

#[test]
fn every_width_says_why() {
    let rates: [Rate; 3] = [
        usual(spacing(20.0)).rate().expect("usable"),
        Directed { collected: timed(), from: FromRow::OneOf(3), rows: Known::rows(Length::inches(30.0)) }
            .rate()
            .expect("usable"),
        KnownArea { used: Known::refilled(Volume::gallons(20.0)), area: Known::field(Area::acres(1.0)) }
            .rate()
            .expect("usable"),
    ];
    for (rate, code) in rates.iter().zip(["tip_spacing", "row_share", "ground"]) {
        assert_eq!(rate.width.code(), code);
        let lines = rate.working.lines(UnitSystem::Us).join("\n");
        assert!(lines.contains(rate.width.why()), "{lines}");
    }
}

#[test]
fn what_is_no_rate_is_refused() {
    fn refused<T: core::fmt::Debug>(rate: Result<T, RateError>, text: &str) {
        let error = rate.expect_err("refused");
        assert!(error.to_string().contains(text), "{error}");
        assert!(error.hint().is_some());
    }
    let usual = usual(spacing(20.0));
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let flow = Known::flow_as_given(Flow::gallons_per_minute(bad));
        refused(FlowSpeedWidth { flow, ..usual.clone() }.rate(), "the flow must be more than nothing");
        let speed = Known::speed_as_given(Speed::miles_per_hour(bad));
        refused(FlowSpeedWidth { speed, ..usual.clone() }.rate(), "the speed must be more than nothing");
        refused(FlowSpeedWidth { width: spacing(bad), ..usual.clone() }.rate(), "the tip spacing must be");
        let volume = Known::exact(Volume::gallons(bad));
        let plot = Known::plot(Area::square_feet(bad));
        refused(
            HandPlot { used: volume.clone(), plot: Known::plot(Area::acres(1.0)) }.rate(),
            "the volume used",
        );
        refused(HandPlot { used: Known::exact(Volume::gallons(1.0)), plot }.rate(), "the plot");
        let refill = DistanceRefill {
            used: Known::exact(Volume::gallons(1.0)),
            distance: Known::taped_course(Length::feet(bad)),
            swath: Known::swath(Length::feet(20.0)),
        };
        refused(refill.rate(), "the distance driven");
        let caught =
            CatchOverCourse::by_hand(volume, Known::taped_course(Length::feet(204.0)), spacing(20.0), None);
        refused(caught.rate(), "the catch must be more than nothing");
        let lasted = CatchOverCourse::by_hand(
            Known::exact(Volume::fluid_ounces(14.0)),
            Known::taped_course(Length::feet(204.0)),
            spacing(20.0),
            Some(Time::seconds(bad)),
        );
        refused(lasted.rate(), "the time of the catch");
    }
    let doubtful = Known::of(Speed::miles_per_hour(4.0), Budget::nothing().own(DoubtOf::Given, -0.1));
    refused(FlowSpeedWidth { speed: doubtful, ..usual }.rate(), "the doubt of the doubt given");
    let directed =
        Directed { collected: timed(), from: FromRow::OneOf(0), rows: Known::rows(Length::inches(30.0)) };
    refused(directed.rate(), "the number of tips must be 1 to 1000, got 0");
    let nothing = Ranged::exact(VolumePerArea::ZERO);
    refused(per_small_area(&nothing), "the rate must be more than nothing");
    refused(area_covered_by(Volume::gallons(1.0), &nothing), "the rate must be more than nothing");
}

#[test]
fn what_a_gallon_covers_has_its_range_too() {
    // 40 gal/ac, 36 to 44 in 95 of 100: a gallon covers 1/40 ac, at least 1/44 and at most 1/36.
    let gallons = VolumePerArea::gallons_per_acre;
    let rate = Ranged { value: gallons(40.0), low: gallons(36.0), high: gallons(44.0) };
    let covers = area_covered_by(Volume::gallons(1.0), &rate).expect("usable");
    assert!((covers.low.as_acres() - 1.0 / 44.0).abs() < 1e-12);
    assert!((covers.high.as_acres() - 1.0 / 36.0).abs() < 1e-12);
    let may_be_nothing = Ranged { low: VolumePerArea::ZERO, ..rate };
    assert!(
        area_covered_by(Volume::gallons(1.0), &may_be_nothing).expect("usable").high.as_acres().is_infinite()
    );
}

proptest! {
    #[test]
    fn the_rate_goes_with_the_flow_and_against_speed_and_width(
        flow in 0.05_f64..2.0, mph in 1.0_f64..20.0, inches in 10.0_f64..40.0, times in 1.1_f64..5.0,
    ) {
        let rate = |flow, mph, inches| {
            FlowSpeedWidth {
                flow: Known::flow_as_given(Flow::gallons_per_minute(flow)),
                speed: Known::speed_as_given(Speed::miles_per_hour(mph)),
                width: spacing(inches),
            }
            .rate()
            .expect("usable")
            .rate
            .value
        };
        let one = rate(flow, mph, inches);
        prop_assert!((rate(flow * times, mph, inches).ratio_to(one) - times).abs() < 1e-9);
        prop_assert!((rate(flow, mph * times, inches).ratio_to(one) * times - 1.0).abs() < 1e-9);
        prop_assert!((rate(flow, mph, inches * times).ratio_to(one) * times - 1.0).abs() < 1e-9);
        prop_assert!(rate(flow, mph, inches * times) < one);
    }

    #[test]
    fn every_method_agrees_on_the_same_ground(
        flow in 0.05_f64..2.0, mph in 1.0_f64..12.0, tips in 2_u32..60, inches in 10.0_f64..40.0,
        seconds in 10.0_f64..300.0,
    ) {
        // One sprayer, one drive: flow and speed, one tip's catch, the whole boom's catch, what was filled up again,
        // the area: all are the same water on the same ground.
        let (tip, speed) = (Flow::gallons_per_minute(flow), Speed::miles_per_hour(mph));
        let time = Time::seconds(seconds);
        let (course, swath) = (speed * time, swath_of_boom(tips, Length::inches(inches)).expect("usable"));
        let used = tip * time * f64::from(tips);
        let one = FlowSpeedWidth {
            flow: Known::exact(tip), speed: Known::exact(speed), width: spacing(inches),
        }.rate().expect("usable").rate.value;
        let caught = |volume, width| CatchOverCourse::by_hand(
            Known::exact(volume), Known::exact(course), width, Some(time),
        ).rate().expect("usable").rate.value;
        let refill = DistanceRefill {
            used: Known::exact(used), distance: Known::exact(course), swath: Known::exact(swath),
        }.rate().expect("usable").rate.value;
        let area = KnownArea { used: Known::exact(used), area: Known::exact(course * swath) }
            .rate().expect("usable").rate.value;
        let tank = WholeTank {
            tank: Known::exact(used * 2.0), left: used, area: Known::exact(course * swath),
        }.rate().expect("usable").rate.value;
        let walking = HandWalking {
            flow: Known::exact(tip), speed: Known::exact(speed), width: Known::exact(Length::inches(inches)),
        }.rate().expect("usable").rate.value;
        let boom = BroadcastWidth::Swath(Known::exact(swath));
        for (other, name) in [
            (caught(tip * time, spacing(inches)), "one tip's catch"),
            (caught(used, boom), "the boom's catch"),
            (refill, "refill"),
            (area, "area"),
            (tank, "tank"),
            (walking, "walking"),
        ] {
            prop_assert!((other.ratio_to(one) - 1.0).abs() < 1e-9, "{}: {:?} is not {:?}", name, other, one);
        }
    }

    #[test]
    fn a_rate_given_in_us_or_metric_is_the_same(
        litres in 0.2_f64..8.0, kmh in 2.0_f64..30.0, centimetres in 25.0_f64..100.0,
    ) {
        let us = FlowSpeedWidth {
            flow: Known::exact(Flow::gallons_per_minute(litres / 3.785_411_784)),
            speed: Known::exact(Speed::miles_per_hour(kmh / 1.609_344)),
            width: BroadcastWidth::TipSpacing(Known::exact(Length::inches(centimetres / 2.54))),
        }.rate().expect("usable").rate.value;
        // L/ha = 600 × L/min ÷ (km/h × m), the customary metric formula.
        let metric = 600.0 * litres / (kmh * centimetres / 100.0);
        prop_assert!((us.as_litres_per_hectare() / metric - 1.0).abs() < 1e-12);
    }

    #[test]
    fn more_doubt_never_narrows_a_rate(extra in 0.0_f64..0.2) {
        let one = usual(spacing(20.0)).rate().expect("usable");
        let speed = Known::of(
            Speed::miles_per_hour(4.0),
            Known::speed_as_given(Speed::miles_per_hour(4.0)).doubt.own(DoubtOf::Given, extra),
        );
        let more = FlowSpeedWidth { speed, ..usual(spacing(20.0)) }.rate().expect("usable");
        prop_assert!(more.doubt.relative() >= one.doubt.relative());
    }
}
