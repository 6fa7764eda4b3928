//! Rounds of cups that make everything be told that cups can tell.

use calibration::catch::{
    Catch, CatchError, Cup, Doubtful, Limit, LimitProfile, NewTip, Outlet, Risk, Round, RoundKind,
    TipCatches, Uncertainties, profiles, summarise, tell,
};
use calibration::verdict::{CatchVerdicts, Model, NextCatch, Settles, judge_catches};
use sprayer::{GroupId, RatedFlow, WATER_AT_20_C};
use units::{Caught, Coded, Dimension, Finding, Flow, Marks, Pressure, Time, Unit, Verdict, Volume, Working};

/// A round of readings in fluid ounces, "-" where a tip was not caught.
fn round(readings: &[&str], step: &str, seconds: f64) -> Round {
    let step = units::quantity(step, Dimension::Volume).expect("a step");
    let catch = |reading: &str| {
        let caught = Caught::parse(reading, step.unit()).expect("a reading");
        let marks = Some(Marks::every(step.clone()).expect("marks"));
        Catch::new(caught, marks, Time::seconds(seconds), None).expect("a catch")
    };
    let tips = (1..).zip(readings).map(|(number, reading)| TipCatches {
        number,
        group: GroupId(0),
        section: 0,
        catches: if *reading == "-" { Vec::new() } else { vec![catch(reading)] },
    });
    Round {
        kind: RoundKind::AsFound,
        tips: tips.collect(),
        density: WATER_AT_20_C,
        time: Time::seconds(seconds),
        unit: Unit::named("fl oz"),
    }
}

/// The usual limit, or another of the list.
fn limit(name: &str) -> Limit {
    LimitProfile::named(name).expect("known").limit(None)
}

/// What a tip rated at so many fluid ounces in 30 s gives new.
fn new_tip(ounces: f64) -> NewTip {
    let flow = Volume::fluid_ounces(ounces) / Time::seconds(30.0);
    let pressure = Pressure::psi(40.0);
    NewTip::Rated {
        rated: RatedFlow::new(flow, pressure).expect("rated"),
        pressure,
        pressure_doubt: Pressure::psi(0.5),
    }
}

fn judged(round: &Round, limit: &Limit, new: Option<f64>) -> CatchVerdicts {
    let over_new = limit_over_new();
    let tip = new.map(new_tip);
    let new = tip.as_ref().map(|tip| (tip, &over_new));
    judge_catches(round, limit, new, &Model::default(), &Settles::default()).expect("judged")
}

fn limit_over_new() -> Limit {
    limit("new-10")
}

/// Rounds with what a new tip gives in 30 s, where that is known: fine marks, so that nothing is open but by intent.
const FINE: &[(&[&str], Option<f64>)] = &[
    (&["16", "16", "16", "16", "20", "16", "16", "16"], None),
    (&["16", "16", "16", "16", "12", "16", "16", "16"], None),
    (&["16", "0", "16", "16", "16", "16", "16", "16"], None),
    (&["16", "0", "16", "0", "16", "16", "16", "16"], None),
    (&["16", "-", "16", "16", "16", "16", "16", "16"], None),
    (&["16", "-", "16", "-", "16", "16", "16", "16"], None),
    (&["16", "16"], None),
    (&["16", "16", "16"], None),
    // So many off that the set goes: several, one or none in order.
    (&["16", "20", "12", "20", "16", "12", "20", "16"], None),
    (&["12", "20", "12", "20", "16", "12", "20"], None),
    (&["12", "20", "12", "20", "12", "20"], None),
    // Worn together: all, all but one, all but two, one, two.
    (&["16", "16", "16", "16", "16", "16"], Some(12.0)),
    (&["15.2", "15.2", "15.2", "15.2", "15.2", "13.8"], Some(13.3)),
    (&["15.2", "15.2", "15.2", "15.2", "15.2", "13.8", "13.8"], Some(13.3)),
    (&["15", "15", "15", "15", "15", "15", "15", "16.3"], Some(14.2)),
    (&["15", "15", "15", "15", "15", "15", "15", "15", "16.3", "16.2"], Some(14.2)),
    // Less than new: the boom, one tip by itself, one of several, two of several.
    (&["16", "16", "16", "16", "16", "16"], Some(20.0)),
    (&["16"], Some(20.0)),
    (&["16", "16", "16", "16", "16", "14.6"], Some(17.0)),
    (&["16", "16", "16", "16", "16", "16", "16", "14.8", "14.8"], Some(17.1)),
    // One and two tips out of the mean beside an odd one.
    (&["16", "16", "16", "16", "32", "16", "16", "13"], None),
    (&["16", "16", "16", "16", "40", "16", "16", "13", "12.5", "16", "16", "16", "16"], None),
    (&["16", "20"], None),
];

/// The same with marks as coarse as people's cups: tips may stay open.
const COARSE: &[&[&str]] = &[
    &["14", "15", "14", "14", "13", "14", "14", "14", "12", "14", "15", "14"],
    &["16", "16", "16", "18", "16", "16", "16", "16"],
    &["16", "16", "16", "18", "16", "14", "16", "16"],
    &["6", "6", "6", "7", "6", "5", "6", "6"],
    &["16", "16", "16", "17.5", "16", "16"],
    &["16", "17"],
    &["16", "16", "17"],
    &["16", "16", "17", "24"],
];

/// A next cup as it may come out of the boom.
fn next(tips: &[u32], finer: bool, minutes: f64) -> NextCatch {
    let step = if finer { Volume::millilitres(10.0) } else { Volume::fluid_ounces(1.0) };
    let open = u32::try_from(tips.len()).expect("few");
    NextCatch { tips: tips.to_vec(), time: Time::seconds(60.0), step, finer, open, settles: 0.1, minutes }
}

/// What an open round tells, whatever cup is worth catching next.
fn told_with_any_next(round: &Round, verdicts: &CatchVerdicts) -> Vec<Finding> {
    let open: Vec<u32> = verdicts
        .summary
        .tips
        .iter()
        .filter(|tip| tip.verdict == Some(Verdict::CannotTell))
        .map(|tip| tip.number)
        .collect();
    let all: Vec<u32> = round.tips.iter().map(|tip| tip.number).collect();
    let mut ways: Vec<Vec<NextCatch>> = vec![Vec::new()];
    for finer in [true, false] {
        if let Some(first) = open.first() {
            ways.push(vec![next(&open, finer, 50.0 / 60.0)]);
            ways.push(vec![next(&[*first], finer, 2.44)]);
        }
        ways.push(vec![next(&all, finer, 12.34)]);
        ways.push(open.iter().map(|tip| next(&[*tip], finer, 2.44)).collect());
        ways.push(vec![next(&all[..1], finer, 1.0)]);
        ways.push(vec![next(&all[..2], finer, 1.0)]);
    }
    ways.iter()
        .flat_map(|next| {
            tell(round, &verdicts.summary, &verdicts.new, &verdicts.advice, &verdicts.limit, next)
        })
        .collect()
}

/// Everything that rounds of cups tell, and how it was reached.
pub fn told() -> (Vec<Finding>, Vec<Working>) {
    let (mut findings, mut workings) = (Vec::new(), Vec::new());
    let mut take = |verdicts: CatchVerdicts| {
        findings.extend(verdicts.findings);
        workings.extend(verdicts.working);
    };
    for (readings, new) in FINE {
        take(judged(&round(readings, "0.1 fl oz", 60.0), &limit("mean-10"), new.map(|ounces| 2.0 * ounces)));
        take(judged(&round(readings, "0.05 fl oz", 30.0), &limit("mean-10"), *new));
    }
    // Two tips whose range reaches a little past the limit that they are within; where that is depends on the watch.
    for hundredths in (1860..1920).step_by(5) {
        let other = format!("{}", f64::from(hundredths) / 100.0);
        take(judged(&round(&["16", &other], "0.05 fl oz", 30.0), &limit("mean-10"), None));
    }
    for profile in profiles() {
        let limit = profile.limit(Some(Flow::gallons_per_minute(0.2)));
        take(judged(&round(FINE[0].0, "0.1 fl oz", 60.0), &limit, None));
    }
    take(judged(&round(FINE[0].0, "0.1 fl oz", 60.0), &Limit::own(0.1).expect("a limit"), None));
    let mut more = Vec::new();
    for readings in COARSE {
        for step in ["1 fl oz", "0.5 fl oz"] {
            let round = round(readings, step, 20.0);
            for name in ["mean-5", "mean-10"] {
                let verdicts = judged(&round, &limit(name), None);
                more.extend(told_with_any_next(&round, &verdicts));
            }
        }
    }
    findings.extend(more);
    findings.extend(doubtful());
    (findings, workings)
}

/// The three ways in which a reading cannot be, under each kind of outlet; kept, and read on marks too coarse.
fn doubtful() -> Vec<Finding> {
    let cup = Cup { marks: None, holds: None };
    let small = Cup { marks: None, holds: Some(Volume::fluid_ounces(10.0)) };
    let rated = Some(Flow::gallons_per_minute(0.2));
    let mut findings = Vec::new();
    let mut keep = |readings: &[&str], step, outlet, cup: &Cup, rated| {
        let round = round(readings, step, 1.0);
        findings.extend(round.look_for_absurd_from(outlet, cup, rated, Doubtful::Keep).expect("kept"));
    };
    for outlet in [Outlet::BoomTip, Outlet::Cluster, Outlet::HandGun] {
        keep(&["300"], "1 fl oz", outlet, &cup, None);
    }
    keep(&["16"], "1 fl oz", Outlet::BoomTip, &small, None);
    keep(&["16"], "1 fl oz", Outlet::BoomTip, &cup, rated);
    keep(&["0.5"], "1 fl oz", Outlet::BoomTip, &cup, None);
    findings
}

/// Everything that can be wrong with cups, with the sprayer's own mistakes left to it.
pub fn errors() -> Vec<CatchError> {
    let refused = |readings: &[&str], holds: Option<f64>, rated: Option<f64>| {
        let cup = Cup { marks: None, holds: holds.map(Volume::fluid_ounces) };
        let rated = rated.map(Flow::gallons_per_minute);
        round(readings, "1 fl oz", 1.0).look_for_absurd(&cup, rated, Doubtful::Refuse).expect_err("refused")
    };
    let caught = || Caught::parse("16 fl oz", None).expect("a reading");
    let wrong = |readings: &[&str]| {
        let round = round(readings, "1 fl oz", 30.0);
        summarise(&round, &limit("mean-10"), &Uncertainties::default(), Risk::default()).expect_err("wrong")
    };
    let errors = vec![
        Catch::new(caught(), None, Time::seconds(0.0), None).expect_err("no time"),
        wrong(&["-", "-"]),
        wrong(&["16"; 1001]),
        refused(&["300"], None, None),
        refused(&["16"], Some(10.0), None),
        refused(&["16"], None, Some(0.2)),
        Limit::own(0.0).expect_err("no limit"),
        Limit::own(1.255).expect_err("too much"),
        Risk::new(0.5).expect_err("too much"),
    ];
    let codes: Vec<&str> = errors.iter().map(Coded::code).collect();
    assert_eq!(codes.iter().filter(|code| **code == "catch_absurd").count(), 3, "{codes:?}");
    errors
}
