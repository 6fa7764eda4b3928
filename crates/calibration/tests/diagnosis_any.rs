//! Whatever was read, timed, swapped and seen: chances are chances, ranges are ranges, and nothing panics.

#![allow(clippy::expect_used)] // a test fails by panicking

mod made_diagnosis;

use calibration::catch::{Catch, Round, RoundKind, TipCatches};
use calibration::diagnosis::{
    Checking, Diagnosis, DiagnosisModel, Gauge, Looked, OtherPressure, Rated, Seen, Swap, TipPressure,
    diagnose, next_checks, tell_diagnosis, why_stop,
};
use made_diagnosis::{cup_over, rated};
use proptest::prelude::*;
use sprayer::{GroupId, WATER_AT_20_C};
use units::{Pressure, Time};

fn any_cup() -> impl Strategy<Value = Catch> {
    let read = prop_oneof![6 => 500_u32..640, 2 => 0_u32..3000, 1 => Just(0), 1 => Just(100_000)];
    let marks = prop_oneof![Just(1.0), Just(10.0), Just(250.0)];
    (read, marks, prop_oneof![4 => Just(30.0), 1 => 0.5_f64..600.0], prop::option::weighted(0.3, 0_u32..3))
        .prop_map(|(read, marks, seconds, run)| cup_over(f64::from(read), marks, seconds, run))
}

fn any_tips() -> impl Strategy<Value = Vec<TipCatches>> {
    let tip =
        (0_u16..3, prop_oneof![4 => Just(0_u16), 1 => 1_u16..3], prop::collection::vec(any_cup(), 0..3));
    prop::collection::vec(tip, 1..10).prop_map(|tips| {
        let of = |(number, (section, group, catches))| TipCatches {
            number,
            section,
            group: GroupId(group),
            catches,
        };
        (1..).zip(tips).map(of).collect()
    })
}

fn any_pressure() -> impl Strategy<Value = Pressure> {
    prop_oneof![4 => 15.0_f64..90.0, 1 => 0.01_f64..5000.0, 1 => Just(40.0)].prop_map(Pressure::psi)
}

fn any_seen() -> impl Strategy<Value = Seen> {
    let words = prop::sample::select(vec!["right_size", "wrong_size", "streaky_fan", "even_fan", "drips"]);
    (1_u32..12, words).prop_map(|(tip, word)| Seen::from_word(tip, word).expect("one of ours"))
}

fn any_model() -> impl Strategy<Value = DiagnosisModel> {
    let looked = prop::sample::select(vec![
        Looked::TipsMixed,
        Looked::TipsAlike,
        Looked::StrainersDirty,
        Looked::StrainersClean,
        Looked::GaugeOff,
        Looked::Drips,
        Looked::Foam,
    ]);
    let tip_pressure = (1_u32..12, any_pressure()).prop_map(|(tip, pressure)| TipPressure {
        tip,
        pressure,
        doubt: Pressure::psi(0.5),
    });
    let cups = || prop::collection::vec(any_cup(), 0..2);
    let swap = (1_u32..12, 1_u32..12, cups(), cups())
        .prop_map(|(one, other, first, second)| Swap { tips: (one, other), after: [first, second] });
    let other = (any_pressure(), any_tips()).prop_map(|(pressure, tips)| OtherPressure { pressure, tips });
    (
        prop::collection::vec(any_seen(), 0..3),
        prop::collection::vec(looked, 0..3),
        prop::collection::vec(tip_pressure, 0..3),
        prop::collection::vec(swap, 0..2),
        prop::collection::vec(other, 0..3),
        cups(),
        prop::option::of(-10.0_f64..60.0),
        prop::collection::vec(1_u32..12, 0..12),
    )
        .prop_map(|(seen, looked, tip_pressures, swaps, others, new_tip, rests, order)| DiagnosisModel {
            seen,
            looked,
            tip_pressures,
            swaps,
            others,
            new_tip,
            gauge: Gauge { rests_at: rests.map(Pressure::psi), ..Gauge::default() },
            order: if order.len() > 6 { order } else { Vec::new() },
            ..DiagnosisModel::default()
        })
}

fn sound(found: &Diagnosis) -> Result<(), TestCaseError> {
    let chance = |chance: f64| (-1e-9..=1.0 + 1e-9).contains(&chance);
    for tip in &found.tips {
        prop_assert!((tip.causes.iter().sum::<f64>() - 1.0).abs() < 1e-6, "{:?}", tip.causes);
        prop_assert!(
            tip.causes.iter().chain(&tip.misread).chain(&tip.misread_beside).all(|one| chance(*one)),
            "{:?}",
            tip
        );
        prop_assert!(tip.at_place.is_none_or(chance) && chance(tip.in_order), "{:?}", tip);
    }
    for section in &found.sections {
        prop_assert!(section.low <= section.loss && section.loss <= section.high, "{:?}", section);
        prop_assert!(chance(section.probability_restricted) && chance(section.probability_shut));
    }
    let boom = &found.boom;
    prop_assert!(
        boom.low <= boom.offset && boom.offset <= boom.high && chance(boom.probability_off),
        "{:?}",
        boom
    );
    if let Some(parts) = &boom.parts {
        let ordered = |low: f64, middle: f64, high: f64| {
            low <= middle && middle <= high && low.is_finite() && high.is_finite()
        };
        prop_assert!(ordered(parts.set.low, parts.set.middle, parts.set.high), "{:?}", parts);
        prop_assert!(parts.pressure.is_none_or(|of| ordered(of.low, of.middle, of.high)), "{:?}", parts);
        let bar = |pressure: Pressure| pressure.as_bar();
        prop_assert!(
            parts.zero.is_none_or(|of| ordered(bar(of.low), bar(of.middle), bar(of.high))),
            "{:?}",
            parts
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn nothing_that_was_read_or_seen_breaks_it(
        tips in any_tips(),
        model in any_model(),
        pressure in prop::option::of(any_pressure()),
    ) {
        let round = Round { kind: RoundKind::AsFound, tips, density: WATER_AT_20_C, time: Time::seconds(30.0), unit: None };
        let rated = pressure.map(|pressure| Rated { pressure, ..rated() });
        let caught = round.tips.iter().any(|tip| !tip.catches.is_empty());
        let found = diagnose(&round, rated, &model);
        prop_assert_eq!(found.is_ok(), caught, "{:?}", found);
        if let Ok(found) = found {
            sound(&found)?;
            let told: Vec<String> = tell_diagnosis(&found).iter().map(ToString::to_string).collect();
            prop_assert!(told.iter().all(|text| !text.contains("NaN") && !text.contains('{')), "{:?}", told);
            let costs = Checking::default();
            let next = next_checks(&round, &found, &model, &costs);
            prop_assert!(next.iter().all(|next| next.settles > 0.0 && next.minutes > 0.0), "{:?}", next);
            prop_assert!(next.windows(2).all(|pair| pair[0].settles / pair[0].minutes >= pair[1].settles / pair[1].minutes));
            prop_assert_eq!(next.is_empty(), why_stop(&round, &found, &model, &costs).is_some());
        }
    }
}
