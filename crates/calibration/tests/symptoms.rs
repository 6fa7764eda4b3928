//! The laws of the table of symptoms and of what is made of it.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use calibration::symptoms::{
    AirChamber, Before, Check, CheckRow, Control, Costs, Drive, Grade, IN_PLAY, Likely, NextStep, Outcome,
    Pumping, Ranked, Risk, SETTLED, Seen, Signs, Symptom, TELLS_FROM, Trouble, all_brings, brings, check_row,
    in_play, inseparable, limits, ranked, says_yes, tells, trouble_row,
};
use proptest::prelude::*;
use units::Pressure;

/// Every kind of sprayer that can be told apart, and the one of which nothing is known.
fn kinds() -> Vec<Pumping> {
    let mut kinds = Vec::new();
    for drive in [None, Some(Drive::Shaft), Some(Drive::TwelveVolt)] {
        for control in [None, Some(Control::ByHand), Some(Control::Controller)] {
            for air_chamber in [None, Some(AirChamber::Fitted), Some(AirChamber::Without)] {
                kinds.push(Pumping { drive, control, air_chamber });
            }
        }
    }
    kinds
}

fn chance(found: &Ranked, trouble: Trouble) -> f64 {
    found.causes.iter().find(|one| one.trouble == trouble).map_or(0.0, |one| one.chance)
}

fn pairs(found: &Ranked) -> Vec<(Trouble, f64)> {
    found.causes.iter().map(|Likely { trouble, chance }| (*trouble, *chance)).collect()
}

fn any_signs() -> impl Strategy<Value = Signs> {
    let seen = proptest::collection::vec(0_u8..6, Symptom::ALL.len());
    let checked = proptest::collection::vec(0_u8..9, Check::ALL.len());
    (seen, checked, 0..kinds().len(), 0..Symptom::ALL.len()).prop_map(|(seen, checked, kind, sure)| {
        let pumping = kinds()[kind];
        let mut all: Vec<(Symptom, Seen)> = Symptom::ALL
            .iter()
            .zip(seen)
            .filter(|(symptom, _)| symptom.fits().on(&pumping))
            .filter_map(|(symptom, say)| match say {
                0 => Some((*symptom, Seen::Present)),
                1 => Some((*symptom, Seen::Absent)),
                _ => None,
            })
            .collect();
        let sure = Symptom::ALL[sure];
        let sure = if sure.fits().on(&pumping) { sure } else { Symptom::NoPressure };
        all.retain(|(symptom, _)| *symptom != sure);
        all.push((sure, Seen::Present));
        let checked = Check::ALL
            .iter()
            .zip(checked)
            .filter(|(check, _)| check_row(**check).fits.on(&pumping))
            .filter_map(|(check, say)| match say {
                0 => Some((*check, Outcome::Yes)),
                1 => Some((*check, Outcome::No)),
                2 => Some((*check, Outcome::Skipped)),
                _ => None,
            })
            .collect();
        Signs { seen: all, pumping, checked }
    })
}

proptest! {
    #[test]
    fn chances_add_to_one_and_stand_in_order(signs in any_signs()) {
        let found = ranked(&signs).expect("signs that can be");
        let sum: f64 = found.causes.iter().map(|one| one.chance).sum();
        prop_assert!((sum - 1.0).abs() < 1e-12, "{}", sum);
        prop_assert!(found.causes.windows(2).all(|two| two[0].chance >= two[1].chance));
        prop_assert!(found.causes.iter().all(|one| trouble_row(one.trouble).fits.on(&signs.pumping)));
    }

    #[test]
    fn the_order_of_answers_does_not_matter(signs in any_signs(), turn in 0_usize..40) {
        let mut turned = signs.clone();
        turned.seen.reverse();
        if !turned.checked.is_empty() {
            let by = turn % turned.checked.len();
            turned.checked.rotate_left(by);
        }
        prop_assert_eq!(ranked(&signs), ranked(&turned));
    }

    #[test]
    fn evidence_for_a_cause_never_lowers_it(signs in any_signs()) {
        let before = ranked(&signs).expect("signs that can be");
        for check in Check::ALL {
            let open = signs.of_check(*check).is_none() && check_row(*check).fits.on(&signs.pumping);
            if !open {
                continue;
            }
            for (outcome, share) in [(Outcome::Yes, 1.0), (Outcome::No, -1.0)] {
                let mut more = signs.clone();
                more.checked.push((*check, outcome));
                let after = ranked(&more).expect("signs that can be");
                // Those that make this answer the likeliest of all that can be here.
                let how = |trouble: Trouble| share * says_yes(*check, trouble).share();
                let most = before.causes.iter().map(|one| how(one.trouble)).fold(f64::MIN, f64::max);
                for one in before.causes.iter().filter(|one| how(one.trouble) >= most) {
                    prop_assert!(chance(&after, one.trouble) >= one.chance - 1e-12, "{:?} {:?}", check, one);
                }
            }
        }
    }

    #[test]
    fn the_next_check_is_the_safest_that_tells(signs in any_signs()) {
        let found = ranked(&signs).expect("signs that can be");
        let chances = in_play(&pairs(&found));
        let said = |check: Check| check.said_by().is_some_and(|symptom| signs.of_symptom(symptom).is_some());
        let open = Check::ALL.iter().copied().filter(|check| {
            let row = check_row(*check);
            let asked = row.only_with.is_none_or(|with| signs.of_symptom(with) == Some(Seen::Present));
            signs.of_check(*check).is_none() && row.fits.on(&signs.pumping) && asked && !said(*check)
        });
        // The sums here are taken in another order.
        let telling: Vec<Check> = open.filter(|check| tells(&chances, *check) >= TELLS_FROM + 1e-9).collect();
        match found.next {
            NextStep::Check(next) => {
                prop_assert!(found.causes[0].chance < SETTLED);
                let row = check_row(next);
                prop_assert!(tells(&chances, next) >= TELLS_FROM - 1e-9);
                for other in telling {
                    let other = check_row(other);
                    prop_assert!((row.risk, row.costs) <= (other.risk, other.costs), "{:?} {:?}", row, other);
                    if (row.risk, row.costs) == (other.risk, other.costs) {
                        let worth = |row: &CheckRow| tells(&chances, row.check) / row.minutes;
                        prop_assert!(worth(row) >= worth(other) - 1e-9, "{:?} {:?}", row, other);
                    }
                }
            }
            NextStep::Settled => {
                prop_assert!(found.causes[0].chance >= SETTLED || found.causes[1].chance < IN_PLAY);
            }
            NextStep::NothingMore => prop_assert!(telling.is_empty(), "{:?}", telling),
        }
    }
}

#[test]
fn every_symptom_has_two_causes_at_least() {
    for pumping in kinds() {
        for symptom in Symptom::ALL.iter().filter(|symptom| symptom.fits().on(&pumping)) {
            let causes = all_brings().iter().filter(|row| {
                row.symptom == *symptom
                    && trouble_row(row.trouble).fits.on(&pumping)
                    && row.how >= Grade::Sometimes
            });
            assert!(causes.count() >= 2, "{symptom:?} on {pumping:?}");
        }
    }
}

/// One answer moves the odds of a pair by this much at least.
const PARTS: f64 = 2.5;

#[test]
fn a_check_parts_each_pair_of_causes_or_the_pair_is_named() {
    let mut never_parted = Vec::new();
    for pumping in kinds() {
        for symptom in Symptom::ALL.iter().filter(|symptom| symptom.fits().on(&pumping)) {
            let causes: Vec<Trouble> = Trouble::ALL
                .iter()
                .copied()
                .filter(|trouble| *trouble != Trouble::Other && trouble_row(*trouble).fits.on(&pumping))
                .filter(|trouble| brings(*trouble, *symptom) >= Grade::Sometimes)
                .collect();
            for (place, one) in causes.iter().enumerate() {
                for other in &causes[place + 1..] {
                    let parted = Check::ALL.iter().any(|check| {
                        let (yes, other_yes) =
                            (says_yes(*check, *one).share(), says_yes(*check, *other).share());
                        let by = |first: f64, second: f64| (first / second).max(second / first);
                        check_row(*check).fits.on(&pumping)
                            && check_row(*check).only_with.is_none_or(|with| with == *symptom)
                            && check.said_by() != Some(*symptom)
                            && (by(yes, other_yes) >= PARTS || by(1.0 - yes, 1.0 - other_yes) >= PARTS)
                    });
                    let named =
                        inseparable().iter().any(|(a, b)| [(*a, *b), (*b, *a)].contains(&(*one, *other)));
                    if !parted && !named {
                        never_parted.push((*symptom, *one, *other, pumping));
                    }
                    assert!(!(parted && named), "{one:?} and {other:?} can be parted");
                }
            }
        }
    }
    assert!(never_parted.is_empty(), "{never_parted:?}");
}

#[test]
fn every_check_says_what_must_be_off() {
    for check in Check::ALL {
        let row = check_row(*check);
        let has = |before: Before| row.before.contains(&before);
        // Either it runs with everybody away from the shaft, or it stands still.
        assert!(has(Before::Running) != has(Before::EngineOff), "{check:?}");
        assert!(row.before.windows(2).all(|two| two[0] < two[1]), "{check:?}: said in another order");
        match row.risk {
            Risk::Opening => {
                assert!(
                    has(Before::EngineOff) && has(Before::PressureOff) && has(Before::Gloves),
                    "{check:?}"
                );
            }
            Risk::HandsOn if has(Before::EngineOff) => assert!(has(Before::Gloves), "{check:?}"),
            // Hands near the pump while it runs only where nothing turns outside its housing.
            Risk::HandsOn => assert_eq!(*check, Check::VoltsLow),
            Risk::AtControls => assert!(has(Before::Running), "{check:?}"),
            Risk::Looking => {}
        }
        assert!(row.minutes >= 1.0 && row.minutes <= 20.0, "{check:?}");
    }
    // Strainers stand between tank and pump or boom: the tank would run out through them.
    for check in [Check::SuctionStrainerDirty, Check::SectionStrainerDirty, Check::PressureStrainerDirty] {
        assert!(check_row(check).before.contains(&Before::TankValveShut), "{check:?}");
    }
    assert!(Check::ALL.iter().any(|check| check_row(*check).costs == Costs::SmallPart));
}

/// The answer most people with this trouble would give.
fn answer(check: Check, trouble: Trouble) -> Outcome {
    if says_yes(check, trouble).share() > 0.5 { Outcome::Yes } else { Outcome::No }
}

#[test]
fn whoever_answers_truly_comes_to_the_cause() {
    let mut checks = Vec::new();
    for pumping in
        [Drive::Shaft, Drive::TwelveVolt].map(|drive| Pumping { drive: Some(drive), ..Pumping::default() })
    {
        for row in all_brings().iter().filter(|row| row.how >= Grade::Even) {
            if !trouble_row(row.trouble).fits.on(&pumping) || !row.symptom.fits().on(&pumping) {
                continue;
            }
            let mut signs = Signs { seen: vec![(row.symptom, Seen::Present)], pumping, ..Signs::default() };
            let mut found = ranked(&signs).expect("signs that can be");
            while let NextStep::Check(check) = found.next {
                signs.checked.push((check, answer(check, row.trouble)));
                found = ranked(&signs).expect("signs that can be");
            }
            checks.push(signs.checked.len());
            assert_eq!(
                found.causes[0].trouble,
                row.trouble,
                "{row:?}\n{:?}\n{:?}",
                signs.checked,
                &found.causes[..3]
            );
        }
    }
    checks.sort_unstable();
    let (middle, most) = (checks[checks.len() / 2], checks[checks.len() - 1]);
    // Safe checks are asked before those that open a line, even where these would tell more.
    assert!(middle <= 8 && most <= 20, "in the middle {middle}, at most {most}");
}

#[test]
fn what_cannot_be_is_refused() {
    let pumping = Pumping { drive: Some(Drive::Shaft), ..Pumping::default() };
    let of = |seen: &[(Symptom, Seen)], checked: &[(Check, Outcome)]| {
        ranked(&Signs { seen: seen.to_vec(), pumping, checked: checked.to_vec() }).map_err(|error| {
            use units::Coded;
            assert!(error.hint().is_some());
            error.code()
        })
    };
    let jumps = (Symptom::NeedleJumps, Seen::Present);
    assert_eq!(of(&[], &[]).err(), Some("symptom_none"));
    assert_eq!(of(&[(Symptom::Foam, Seen::Absent)], &[]).err(), Some("symptom_none"));
    assert_eq!(of(&[jumps, (Symptom::NeedleJumps, Seen::Absent)], &[]).err(), Some("symptom_two_answers"));
    let twice = [(Check::TankLow, Outcome::Yes), (Check::TankLow, Outcome::No)];
    assert_eq!(of(&[jumps], &twice).err(), Some("symptom_two_answers"));
    assert_eq!(of(&[(Symptom::WeakEngineOff, Seen::Present)], &[]).err(), Some("symptom_other_sprayer"));
    assert_eq!(of(&[jumps], &[(Check::VoltsLow, Outcome::Yes)]).err(), Some("symptom_other_sprayer"));
    assert!(of(&[jumps], &[(Check::TankLow, Outcome::Yes)]).is_ok());
}

/// French order of 18 December 2008, annex IV B, 3.2.1: 0.4 bar up to 6 bar, 1.0 bar to 16 bar, 4 bar above.
#[test]
fn expected_from_the_order_of_2008() {
    for (working, minor, major) in
        [(3.0, 0.2, 0.4), (6.0, 0.2, 0.4), (6.5, 0.5, 1.0), (16.0, 0.5, 1.0), (20.0, 2.0, 4.0)]
    {
        let found = limits::pulsation(Pressure::bar(working));
        assert!((found.minor.as_bar() - minor).abs() < 1e-12 && (found.major.as_bar() - major).abs() < 1e-12);
    }
    assert_eq!(limits::CHAMBER_CHARGE, (0.30, 0.70));
    assert!((limits::STABILITY - 0.10).abs() < 1e-12 && (limits::SHUT_OFF_SECONDS - 5.0).abs() < 1e-12);
}
