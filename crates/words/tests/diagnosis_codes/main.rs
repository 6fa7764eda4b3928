//! Everything that a diagnosis tells is said in both languages, out of the real functions.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

#[path = "../../../calibration/tests/made_diagnosis/mod.rs"]
mod made_diagnosis;
#[allow(dead_code)] // a diagnosis has no workings
#[path = "../calibration_codes/said.rs"]
mod said;

use calibration::catch::TipCatches;
use calibration::diagnosis::{
    CheckKind, Checking, DiagnosisModel, Gauge, Looked, OtherPressure, Rated, Seen, Swap, TipPressure,
    diagnose, tell_diagnosis, why_stop,
};
use made_diagnosis::{Boom, boom};
use said::Said;
use sprayer::GroupId;
use units::{Arg, Args, Finding, Pressure};
use words::{Language, Words};

fn millilitres(sections: &[&[f64]]) -> Boom {
    Boom { unit: "mL", step: 5.0, ..boom(sections) }
}

/// A boom of one section, its tips caught in order and the first once more at the end.
fn in_order(readings: &[f64], last: f64) -> Boom {
    let mut tips: Vec<Vec<f64>> = readings.iter().map(|reading| vec![*reading]).collect();
    tips[0].push(last);
    let count = u32::try_from(readings.len()).expect("few");
    let model = DiagnosisModel { order: (1..=count).chain([1]).collect(), ..DiagnosisModel::default() };
    Boom { sections: vec![tips], model, ..millilitres(&[]) }
}

/// Booms that between them show all there is to tell.
fn booms() -> Vec<Boom> {
    let falling: Vec<f64> = (0..12).map(|place| (570.0 - 2.0 * f64::from(place)).round()).collect();
    let rising: Vec<f64> = falling.iter().map(|reading| 1140.0 - reading).collect();
    let twice = |odd: f64| {
        let mut tips = vec![vec![570.0]; 8];
        tips[3] = vec![odd; 3];
        Boom { sections: vec![tips], ..millilitres(&[]) }
    };
    vec![
        millilitres(&[&[0.0; 4], &[0.0; 4]]),
        millilitres(&[&[570.0, 565.0, 570.0, 575.0], &[0.0; 4]]),
        millilitres(&[&[570.0, 565.0, 570.0, 575.0, 570.0], &[500.0, 505.0, 500.0, 495.0, 500.0]]),
        millilitres(&[&[620.0, 630.0, 625.0, 630.0, 625.0]]),
        millilitres(&[&[505.0, 500.0, 505.0, 510.0, 505.0]]),
        millilitres(&[&[570.0; 10]]),
        millilitres(&[&[570.0, 565.0, 570.0, 575.0, 570.0]]),
        // One half low, ends low: not a section's doing.
        millilitres(&[&[525.0, 525.0, 530.0, 525.0, 530.0, 565.0, 570.0, 570.0, 565.0, 570.0]]),
        millilitres(&[&[570.0, 565.0, 570.0, 570.0, 565.0, 530.0, 525.0, 530.0, 525.0, 525.0]]),
        millilitres(&[&[520.0, 525.0, 530.0, 568.0, 570.0, 572.0, 570.0, 568.0, 571.0, 530.0, 525.0, 520.0]]),
        in_order(&falling, 546.0),
        in_order(&rising, 594.0),
        // Single tips: plugged, low, high, odd; surely and not.
        millilitres(&[&[570.0, 565.0, 570.0, 0.0, 570.0]]),
        twice(0.0),
        twice(300.0),
        twice(660.0),
        millilitres(&[&[570.0, 565.0, 570.0, 450.0, 570.0]]),
        millilitres(&[&[450.0], &[570.0, 565.0, 570.0, 570.0, 570.0]]),
        millilitres(&[&[570.0, 565.0, 570.0, 630.0, 570.0]]),
        millilitres(&[&[570.0, 565.0, 570.0, 715.0, 570.0]]),
        Boom {
            sections: vec![vec![vec![570.0], vec![565.0], vec![450.0, 710.0], vec![570.0]]],
            ..millilitres(&[])
        },
    ]
}

/// What was read beside the cups, so that all there is to tell of it is told. Eight tips so much off, each in half a minute.
fn beside() -> Vec<Boom> {
    let all = |off: f64, model: DiagnosisModel| {
        let read = (5.68 * (100.0 + off)).round();
        Boom { model, step: 1.0, ..millilitres(&[&[read; 4], &[read + 1.0; 4]]) }
    };
    let gauge = Gauge { doubt: Pressure::psi(0.1), rests_at: None };
    let at = |psi: f64| {
        let read = TipPressure { tip: 2, pressure: Pressure::psi(psi), doubt: Pressure::psi(0.2) };
        DiagnosisModel { tip_pressures: vec![read], ..DiagnosisModel::default() }
    };
    let second = |psi: f64, millilitres: f64| {
        let one = |number| TipCatches {
            number,
            group: GroupId(0),
            section: 0,
            catches: vec![made_diagnosis::cup(millilitres, 1.0)],
        };
        let other = OtherPressure { pressure: Pressure::psi(psi), tips: (1..=8).map(one).collect() };
        DiagnosisModel { others: vec![other], gauge, ..DiagnosisModel::default() }
    };
    let mut unrated = all(0.0, second(80.0, 803.0));
    unrated.rated = false;
    let mut nowhere = all(0.0, at(40.0));
    nowhere.model.tip_pressures[0].tip = 99;
    vec![
        all(-10.0, at(32.4)),
        all(10.0, at(48.4)),
        all(10.0, at(40.0)),
        all(-10.0, at(40.0)),
        all(0.0, DiagnosisModel { new_tip: vec![made_diagnosis::cup(568.0, 1.0); 3], ..at(40.0) }),
        // 34 and 64 psi reach the tips where 40 and 70 are read; 46 and 86 where 40 and 80 are.
        all(-7.8, second(70.0, 718.0)),
        all(7.2, second(80.0, 833.0)),
        all(0.0, second(41.0, 575.0)),
        unrated,
        nowhere,
        swapped([450.0, 570.0]),
        millilitres(&[&[570.0]]),
        swapped([570.0, 450.0]),
        all(0.0, DiagnosisModel { seen: vec![Seen::Drips { tip: 3 }], ..DiagnosisModel::default() }),
        all(
            0.0,
            DiagnosisModel {
                seen: vec![Seen::Drips { tip: 3 }, Seen::Drips { tip: 5 }],
                ..DiagnosisModel::default()
            },
        ),
        all(0.0, DiagnosisModel { looked: vec![Looked::Drips, Looked::Foam], ..DiagnosisModel::default() }),
    ]
}

/// Tip 3 low, swapped with the next one and both caught again.
fn swapped(after: [f64; 2]) -> Boom {
    let after = after.map(|read| vec![made_diagnosis::cup(read, 5.0)]);
    let model = DiagnosisModel { swaps: vec![Swap { tips: (3, 4), after }], ..DiagnosisModel::default() };
    Boom { model, ..millilitres(&[&[570.0, 570.0, 450.0, 570.0, 570.0]]) }
}

#[test]
fn every_end_of_looking_is_said() {
    let mut said = Said::new();
    let costs = Checking::default();
    let dear = Checking { worth: 10.0, ..Checking::default() };
    let even = millilitres(&[&[570.0; 5]]);
    let odd = millilitres(&[&[570.0, 570.0, 450.0, 570.0, 570.0]]);
    let stop = |boom: &Boom, costs: &Checking| why_stop(&boom.round(), &boom.diagnose(), &boom.model, costs);
    assert!(stop(&odd, &costs).is_none());
    let off = millilitres(&[&[0.0; 4], &[0.0; 4]]);
    for stop in [stop(&even, &costs), stop(&odd, &dear), stop(&off, &costs)] {
        said.coded(&stop.expect("nothing is worth it"));
    }
    assert_eq!(said.codes.len(), 3, "{:?}", said.codes);
}

/// A pressure in bar taken for psi.
fn slipped() -> Vec<Finding> {
    let rated = Rated { pressure: Pressure::psi(2.8), ..made_diagnosis::rated() };
    let round = millilitres(&[&[570.0; 5]]).round();
    tell_diagnosis(&diagnose(&round, Some(rated), &DiagnosisModel::default()).expect("worked out"))
}

fn told() -> Vec<Finding> {
    let told =
        booms().iter().chain(&beside()).flat_map(|boom| tell_diagnosis(&boom.diagnose())).collect::<Vec<_>>();
    [told, slipped()].concat()
}

#[test]
fn all_of_it_is_said_in_both_languages() {
    let mut said = Said::new();
    let told = told();
    told.iter().for_each(|finding| said.coded(finding));
    let codes = [
        "boom_is_off",
        "section_shut",
        "section_restricted",
        "boom_all_high",
        "boom_all_low",
        "boom_one_side",
        "boom_tapers",
        "flow_drifts",
        "cups_all_alike",
        "nothing_found",
        "tip_most_likely",
        "boom_parts_in_order",
        "second_pressure_near",
        "pressures_without_rated",
        "tip_pressure_no_such_tip",
        "cups_foam",
        "few_tips",
        "pressure_far_from_rated",
    ];
    let missing: Vec<_> = codes.iter().filter(|code| !said.codes.contains(**code)).collect();
    assert!(missing.is_empty(), "nothing here tells {missing:?}; told: {:?}", said.keys);
    for key in [
        "boom_one_side-left",
        "boom_one_side-right",
        "flow_drifts-fell",
        "flow_drifts-rose",
        "tips_get_pressure-less",
        "tips_get_pressure-more",
        "pressure_zero-lost",
        "pressure_zero-shown",
        "set_is_off-high",
        "set_is_off-low",
        "tip_swapped-stayed",
        "tip_swapped-moved",
        "check_valves_leak",
        "check_valves_leak-tip",
        "check_valves_leak-tips",
    ] {
        assert!(said.keys.contains(key), "nothing here tells {key}");
    }
}

#[test]
fn no_chance_is_told_as_certain() {
    for finding in told() {
        let text = finding.to_string();
        assert!(!text.contains("(100 %)") && !text.contains("(0 %)"), "{text}");
    }
}

#[test]
fn every_check_is_said_in_both_languages() {
    for kind in CheckKind::ALL {
        let args = Args::new().with("tips", Arg::Tips(vec![3, 7])).with("section", Arg::Count(2));
        let key = format!("check-{}", kind.word());
        let [english, spanish] = Language::ALL.map(|language| Words::of(language).say_with(&key, &args));
        assert!(english != key && spanish != key && english != spanish, "{key}: {english}");
        // A new tip is fitted anywhere.
        let named = |text: &str| kind == CheckKind::NewTip || text.contains(['2', '7']);
        assert!(named(&english) && named(&spanish), "{key}: {english}, {spanish}");
    }
}
