//! Drawn sprayers and tests: the same from the same seed, independent by part, and with the errors they are said to have.
#![allow(clippy::panic)] // a test fails by panicking

use proptest::prelude::*;
use simulator::{
    Between, BoomWorld, CaughtCup, CupKind, Fault, FaultMix, Hands, KitWorld, Order, Pattern, Slip,
    SlipChances, TestPlan, TrueBoom, WorldError, Yard,
};
use units::{Pressure, Quantity, Time, Volume};

fn world() -> BoomWorld {
    BoomWorld {
        tips: (7, 60),
        sections: (1, 5),
        sizes: vec!["02", "03", "04"],
        pressure: Between::new(Pressure::psi(20.0), Pressure::psi(50.0)),
        spread: Between::new(0.01, 0.03),
        faults: FaultMix::a_tenth_either_way(),
        patterns: vec![Pattern::Alike],
        drift_per_minute: Between::always(0.0),
    }
}

const PLAN: TestPlan = TestPlan {
    cup: CupKind::OUNCES,
    time: Time::seconds(30.0),
    repeats: 1,
    cups_at_once: 1,
    order: Order::LeftToRight,
};

fn boom(seed: u64) -> TrueBoom {
    world().boom(seed).unwrap_or_else(|why| panic!("{why}"))
}

fn test(seed: u64, kit: &KitWorld, plan: &TestPlan) -> Vec<CaughtCup> {
    Yard::new(boom(seed), kit.kit(seed), seed).test(plan)
}

proptest! {
    #[test]
    fn the_same_seed_is_the_same_draw(seed in any::<u64>()) {
        let hurried = KitWorld { hands: Hands::hurried(), ..KitWorld::careful() };
        prop_assert_eq!(boom(seed), boom(seed));
        prop_assert_eq!(test(seed, &hurried, &PLAN), test(seed, &hurried, &PLAN));
        prop_assert_ne!(boom(seed), boom(seed.wrapping_add(1)));
    }

    #[test]
    fn other_hands_do_not_change_the_boom_and_readings_are_quantities(seed in any::<u64>()) {
        let hurried = KitWorld { hands: Hands::hurried(), ..KitWorld::careful() };
        let careful = test(seed, &KitWorld::careful(), &PLAN);
        let hurried = test(seed, &hurried, &PLAN);
        prop_assert_eq!(careful.len(), hurried.len());
        for cup in careful.iter().chain(&hurried) {
            prop_assert!(Volume::parse(&cup.reading).is_ok(), "{}", cup.reading);
            prop_assert!(Volume::parse(&cup.marks).is_ok() && Time::parse(&cup.time).is_ok());
        }
    }

    #[test]
    fn booms_keep_to_their_world(seed in any::<u64>()) {
        let boom = boom(seed);
        prop_assert!((7..=60).contains(&boom.layout().tips()));
        prop_assert!(boom.layout().positions().iter().all(|position| position.section < 5));
        prop_assert!(boom.deviations().iter().all(|off| (-0.5..0.7).contains(off)));
        let running: f64 = boom.deviations().iter().sum();
        prop_assert!(running.abs() < 1e-9, "deviations from the mean add up to nothing");
    }
}

#[test]
fn readings_scatter_as_the_stated_errors_do() {
    // JCGM 100:2008, 5.1.2 and 4.3.7: handling 0.5 %, cup scale 1 %, watch 0.1 % and 0.2 s twice, half a step
    // either way (s²/12) with edges soft by a tenth of a step. The standardised scatter has variance 1.
    let plan = TestPlan { cup: CupKind::TEN_MILLILITRES, ..PLAN };
    let (mut sum, mut squares, mut count) = (0.0, 0.0, 0.0);
    for seed in 0..4_000 {
        let boom = boom(seed);
        let flow = boom.tips()[0].flow;
        let cup = &Yard::new(boom, KitWorld::careful().kit(seed), seed).test(&plan)[0];
        let meant = (flow * Time::seconds(30.0)).as_millilitres();
        if meant > 900.0 {
            continue; // runs over
        }
        let read = Volume::parse(&cup.reading).unwrap().as_millilitres();
        let variance = 0.005 * 0.005
            + 0.01 * 0.01
            + 0.001 * 0.001
            + 0.08 / 900.0
            + 100.0 / (meant * meant) * (1.0 / 12.0 + 0.01);
        let score = (read / meant - 1.0) / variance.sqrt();
        sum += score;
        squares += score * score;
        count += 1.0;
    }
    // Standard errors of some 3,500 draws: 0.017 and 0.024.
    assert!(count > 2_000.0, "{count}");
    assert!(
        (sum / count).abs() < 0.07 && (squares / count - 1.0).abs() < 0.1,
        "{} {}",
        sum / count,
        squares / count
    );
}

#[test]
fn cups_of_one_run_share_its_time() {
    let cups = test(3, &KitWorld::careful(), &TestPlan { cups_at_once: 3, ..PLAN });
    for pair in cups.windows(2) {
        let same = pair[0].run == pair[1].run;
        assert_eq!(same, (pair[0].truth.time - pair[1].truth.time).si() == 0.0);
    }
    assert_eq!(cups.iter().filter(|cup| cup.run == 1).count(), 3);
}

#[test]
fn a_drifting_sprayer_gives_less_to_later_cups_and_the_first_tip_shows_it() {
    let drifting = BoomWorld { drift_per_minute: Between::always(-0.01), ..world() };
    let boom = drifting.boom(5).unwrap();
    let first = boom.tips()[0].flow;
    let mut yard = Yard::new(boom, KitWorld::careful().kit(5), 5);
    let cups = yard.test(&TestPlan { order: Order::FirstAgainAtTheEnd, ..PLAN });
    let last = cups.last().unwrap();
    assert_eq!(last.tip, 1);
    let gave = last.truth.volume / last.truth.time;
    let minutes = yard.clock().as_minutes() - (last.truth.time.as_minutes() / 2.0 + 20.0 / 60.0);
    // By the orifice law: √(1 − 0.01 × minutes).
    assert!((gave.ratio_to(first) - (1.0 - 0.01 * minutes).sqrt()).abs() < 1e-9);
}

#[test]
fn a_time_written_wrong_shows_as_half_or_double() {
    let slips = SlipChances { wrong_time: 1.0, ..SlipChances::none() };
    let kit = KitWorld { hands: Hands { slips, ..Hands::careful() }, ..KitWorld::careful() };
    for cup in test(9, &kit, &PLAN) {
        assert_eq!((cup.truth.slip, cup.time.as_str()), (Slip::WrongTime, "30 s"));
        let times = cup.truth.time.as_seconds() / 30.0;
        assert!((times - 0.5).abs() < 0.04 || (times - 2.0).abs() < 0.04, "{times}");
    }
}

#[test]
fn an_old_half_gives_more() {
    let old = BoomWorld {
        patterns: vec![Pattern::HalfOld(Between::always(0.10))],
        faults: FaultMix::none(),
        ..world()
    };
    let boom = old.boom(2).unwrap();
    let mean = |wanted: Fault| {
        let flows: Vec<f64> =
            boom.tips().iter().filter(|tip| tip.fault == wanted).map(|tip| tip.flow.si()).collect();
        flows.iter().sum::<f64>() / flows.len() as f64
    };
    assert!((mean(Fault::Old) / mean(Fault::Sound) - 1.10).abs() < 0.03);
}

#[test]
fn a_world_without_sizes_is_refused() {
    assert_eq!(BoomWorld { sizes: vec![], ..world() }.boom(1), Err(WorldError::NoSize));
    assert!(matches!(BoomWorld { sizes: vec!["7"], ..world() }.boom(1), Err(WorldError::Size(_))));
}
