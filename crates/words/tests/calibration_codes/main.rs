//! Everything that courses, drives, rates and their doubts tell is said in both languages, out of the real functions.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod quantities;
mod said;

use calibration::course::{Course, CourseKind};
use calibration::doubt::{Budget, DoubtOf, Known};
use calibration::drive::{
    Direction, Drive, DriveError, DriveSpeed, Run, Timing, drive_speed, time_for_course,
};
use calibration::rate::{
    Band, Boomless, BroadcastWidth, CatchOverCourse, Collected, CourseTiming, Directed, DistanceRefill,
    EffectiveSwath, FlowSpeedWidth, FromRow, HandPlot, HandTimed, HandWalking, Input, KnownArea, Overlap,
    Rate, RateError, WholeTank, WidthKind, check_swath, swath_of_boom,
};
use said::Said;
use units::{Amount, Area, Coded, Finding, Flow, Kind, Length, Speed, Time, Volume};
use words::{Language, Words};

/// Sources that are the name of a publication and nothing else.
const PUBLICATIONS: &[&str] = &[
    "JCGM 100:2008 (GUM) 5.1.6",
    "Ohio State Univ. Extension, FABE-520, Boom Sprayer Calibration (2016)",
    "Utah State Univ. Cooperative Extension, Horticulture/Vegetables/2014-03 (2014)",
    "Clemson Univ., Weeds programme, Sprayer/spreader calibration guide",
    "LSU AgCenter, Calibrating a cluster nozzle/Boomless sprayer",
    "Univ. of Missouri Extension, G1270a",
    "Good Fruit Grower, Calibration steps",
    "Montana State Univ. Extension, Calibration using the Test Strip Method",
    "NC State Extension, Christmas Trees, Backpack Sprayer Calibration Worksheet",
];

fn is_publication(source: &str) -> bool {
    PUBLICATIONS.contains(&source)
}

fn courses() -> Vec<Course> {
    let (feet, inches) = (Length::feet, Length::inches);
    [
        (CourseKind::OneTip, inches(20.0)),
        (CourseKind::WholeBoom, feet(15.0)),
        (CourseKind::Boomless, feet(60.0)),
        (CourseKind::Pints, feet(40.0)),
        (CourseKind::Metric, Length::centimetres(50.0)),
        // Too long, and too short for any other course to help.
        (CourseKind::OneTip, inches(3.0)),
        (CourseKind::Pints, feet(150.0)),
    ]
    .map(|(kind, width)| Course::new(kind, width).expect("a course"))
    .to_vec()
}

fn seconds(times: &[f64]) -> Vec<Time> {
    times.iter().map(|time| Time::seconds(*time)).collect()
}

fn driven(feet: f64, times: &[f64]) -> Drive {
    Drive::new(Length::feet(feet), &seconds(times))
}

fn ways(times: &[(f64, Direction)]) -> Drive {
    let runs =
        times.iter().map(|(time, direction)| Run { time: Time::seconds(*time), direction: *direction });
    Drive { runs: runs.collect(), ..driven(204.0, &[]) }
}

fn drives() -> Vec<DriveSpeed> {
    use Direction::{Back, There};
    let steady = || driven(204.0, &[27.8, 27.9]);
    // 204 ft in 27.85 s are 4.99 mph: too much, too little, perhaps, right, another unit.
    let mut drives: Vec<Drive> = [5.5, 4.5, 5.25, 5.0, 20.0]
        .into_iter()
        .map(|shown| Drive { dash: Some(Speed::miles_per_hour(shown)), ..steady() })
        .collect();
    drives.extend([
        driven(204.0, &[27.8]),
        driven(204.0, &[27.8, 27.9, 40.0]),
        driven(204.0, &[27.0, 31.0]),
        ways(&[(27.8, There), (27.9, There)]),
        ways(&[(25.0, There), (31.0, Back), (25.1, There), (31.1, Back)]),
        driven(10.0, &[60.0, 60.0]),
        // Over too soon: ten courses in one go would do; no number of them would.
        driven(204.0, &[2.0, 2.1]),
        driven(204.0, &[0.9, 0.9]),
    ]);
    let course = Known::either_way(Length::feet(204.0), Length::feet(100.0), DoubtOf::Given);
    drives.push(Drive { course, ..steady() });
    drives.iter().map(|drive| drive_speed(drive).expect("a speed")).collect()
}

fn drive_errors() -> Vec<DriveError> {
    let steady = || driven(204.0, &[27.8, 27.9]);
    let hand = |seconds| Timing { start: Time::seconds(seconds), ..Timing::default() };
    let wrong = [
        driven(0.0, &[27.8]),
        driven(204.0, &[]),
        driven(204.0, &[27.8; 1001]),
        driven(204.0, &[27.8, 0.0]),
        Drive { dash: Some(Speed::ZERO), ..steady() },
        Drive { timing: hand(40.0), ..steady() },
        Drive { timing: Timing { watch: -0.05, ..Timing::default() }, ..steady() },
    ];
    let mut errors: Vec<DriveError> =
        wrong.iter().map(|drive| drive_speed(drive).expect_err("refused")).collect();
    errors.push(time_for_course(Length::feet(204.0), Speed::ZERO).expect_err("no speed"));
    errors.extend(DoubtOf::ALL.iter().map(|of| DriveError::Doubt { of: *of, given_percent: -3.25 }));
    errors
}

fn flow(gallons: f64) -> Known<Flow> {
    Known::flow_as_given(Flow::gallons_per_minute(gallons))
}

fn speed(mph: f64) -> Known<Speed> {
    Known::speed_as_given(Speed::miles_per_hour(mph))
}

fn cup(ounces: f64) -> Known<Volume> {
    Known::in_cup(Volume::fluid_ounces(ounces), None)
}

fn collected() -> Collected {
    Collected::over_course(cup(14.0), Known::taped_course(Length::feet(204.0)), None)
}

fn over(width: BroadcastWidth) -> FlowSpeedWidth {
    FlowSpeedWidth { flow: flow(0.3), speed: speed(5.0), width }
}

fn broadcast() -> Vec<Result<Rate, RateError>> {
    let tip = |inches| BroadcastWidth::TipSpacing(Known::tip_spacing(Length::inches(inches)));
    let swath = |inches| BroadcastWidth::Swath(Known::swath(Length::inches(inches)));
    let as_given = |inches| BroadcastWidth::AsGiven(Known::swath(Length::inches(inches)));
    let usual = || over(tip(20.0));
    let wide =
        Known::either_way(Flow::gallons_per_minute(0.3), Flow::gallons_per_minute(0.2), DoubtOf::Given);
    vec![
        usual().rate(),
        over(tip(360.0)).rate(),
        over(swath(20.0)).rate(),
        over(as_given(1.0)).rate(),
        over(as_given(3600.0)).rate(),
        FlowSpeedWidth { flow: flow(9.0), ..usual() }.rate(),
        FlowSpeedWidth { speed: speed(400.0), ..usual() }.rate(),
        FlowSpeedWidth { flow: wide, ..usual() }.rate(),
        CatchOverCourse::by_hand(cup(14.0), Known::taped_course(Length::feet(204.0)), tip(20.0), None).rate(),
        DistanceRefill {
            used: Known::refilled(Volume::gallons(4.0)),
            distance: Known::taped_course(Length::feet(435.6)),
            swath: Known::swath(Length::feet(10.0)),
        }
        .rate(),
        KnownArea { used: Known::refilled(Volume::gallons(6.5)), area: Known::field(Area::acres(0.329)) }
            .rate(),
        WholeTank {
            tank: Known::by_tank_marks(Volume::gallons(500.0)),
            left: Volume::gallons(20.0),
            area: Known::field(Area::acres(25.0)),
        }
        .rate(),
    ]
}

fn other_rates() -> Vec<Result<Rate, RateError>> {
    let boomless = |swath| Boomless { collected: collected(), swath }.rate();
    let wetted = |part| {
        let wetted = Known::swath_by_sight(Length::feet(30.0));
        boomless(EffectiveSwath::Wetted { wetted, overlap: Overlap::PartOfWetted(part) })
    };
    let mut rates = vec![
        boomless(EffectiveSwath::Given(Known::swath_by_sight(Length::feet(24.0)))),
        wetted(0.2),
        wetted(0.0),
        wetted(0.6),
    ];
    let rows = || Known::rows(Length::inches(30.0));
    for (from, inches) in [(FromRow::AllTips, 12.0), (FromRow::OneOf(3), 40.0)] {
        let band = Known::band(Length::inches(inches));
        let both = Band { collected: collected(), from, band, rows: rows() }.rate();
        rates.extend(both.map(|both| [both.treated, both.crop]).expect("bands").map(Ok));
        rates.push(Directed { collected: collected(), from, rows: rows() }.rate());
    }
    let plot = || Known::plot(Area::square_feet(342.25));
    let width = Known::swath_by_sight(Length::feet(2.5));
    rates.push(HandPlot { used: cup(40.0), plot: plot() }.rate());
    rates.push(HandWalking { flow: flow(0.16), speed: speed(1.5), width }.rate());
    rates.push(HandTimed { caught: cup(40.0), plot: plot(), timing: CourseTiming::by_hand(None) }.rate());
    rates
}

fn rate_errors() -> Vec<RateError> {
    let mut errors: Vec<RateError> = Input::ALL
        .iter()
        .map(|what| RateError::NotPositive { what: *what, given: Amount::new(Length::ZERO, Kind::Length) })
        .collect();
    errors.extend(DoubtOf::ALL.iter().map(|of| RateError::Doubt { of: *of, given_percent: f64::INFINITY }));
    let spacing = |inches| BroadcastWidth::TipSpacing(Known::tip_spacing(Length::inches(inches)));
    errors.push(over(spacing(0.1)).rate().expect_err("too narrow"));
    errors.push(swath_of_boom(0, Length::inches(20.0)).expect_err("no tips"));
    let wetted = Known::swath_by_sight(Length::feet(30.0));
    let overlap = Overlap::PartOfWetted(1.04);
    errors.push(EffectiveSwath::Wetted { wetted, overlap }.length().expect_err("no swath"));
    let tank = Known::by_tank_marks(Volume::gallons(50.0));
    let empty = WholeTank { tank, left: Volume::gallons(60.0), area: Known::field(Area::acres(2.0)) };
    errors.push(empty.rate().expect_err("nothing used"));
    errors
}

fn swath_findings() -> Vec<Finding> {
    [20.0, 40.0]
        .into_iter()
        .map(|feet| check_swath(Length::feet(feet), 13, Length::inches(20.0)).expect("usable").expect("told"))
        .collect()
}

/// Every cause of doubt at once.
fn every_doubt() -> Budget {
    DoubtOf::ALL.iter().fold(Budget::nothing(), |budget, of| budget.own(*of, 0.01))
}

#[test]
fn all_of_it_is_said_in_both_languages() {
    let mut said = Said::new();
    for course in courses() {
        course.findings().iter().for_each(|finding| said.coded(finding));
        said.working(&course.working(), &is_publication);
    }
    said.coded(&Course::new(CourseKind::OneTip, Length::ZERO).expect_err("no width"));
    for drive in drives() {
        drive.findings.iter().for_each(|finding| said.coded(finding));
        said.working(&drive.working, &is_publication);
    }
    drive_errors().iter().for_each(|error| said.coded(error));
    for rate in broadcast().into_iter().chain(other_rates()) {
        let rate = rate.expect("a rate");
        rate.findings.iter().for_each(|finding| said.coded(finding));
        said.working(&rate.working, &is_publication);
    }
    swath_findings().iter().for_each(|finding| said.coded(finding));
    rate_errors().iter().for_each(|error| said.coded(error));
    said.working(&every_doubt().working(), &is_publication);
    for of in DoubtOf::ALL {
        said.coded(&Budget::nothing().own(*of, 0.02).finding().expect("doubt"));
    }
    WidthKind::ALL.iter().for_each(|width| said.arg(&width.why_word()));
    let folders = ["course", "drive", "rate", "doubt"].map(|name| format!("calibration/src/{name}"));
    let folders = folders.each_ref().map(String::as_str);
    // A code begins with the name of what it is about; a bare name is an argument, and the causes are words.
    let is_code = |text: &str| {
        let snake = text.chars().all(|sign| sign.is_ascii_lowercase() || sign == '_');
        let about = ["course_", "drive_", "speed_", "rate_", "doubt_"];
        let cause = DoubtOf::ALL.iter().any(|of| of.code() == text);
        snake && !cause && !text.ends_with('_') && about.iter().any(|start| text.starts_with(start))
    };
    said.all_of(&folders, &is_code, "calibration", "## Courses");
}

/// The limit that a dash is held to has our own words behind the order's name.
#[test]
fn who_sets_the_limit_of_a_dash_is_said_in_both_languages() {
    let drives = drives();
    let finding = drives.iter().flat_map(|drive| &drive.findings).find(|one| one.limit_source.is_some());
    let source = finding.and_then(|one| one.limit_source).expect("a dash");
    assert_eq!(Words::of(Language::English).source(source), source);
    assert!(Words::of(Language::Spanish).source(source).starts_with("Orden francesa"));
    assert!(finding.is_some_and(|one| one.code().starts_with("drive_dash")));
}
