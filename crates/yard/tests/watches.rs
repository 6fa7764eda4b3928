//! The watches read the clocks: busy pages, sleep, and clocks that are set back.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::Phone;
use proptest::prelude::*;
use yard::{Effect, Event, Pace, Phase, READY, RUNS, Screen, Sound, Waits};

fn runs(phone: &Phone) -> Vec<String> {
    let rows = phone.visit().folded.rows.get(RUNS).cloned().unwrap_or_default();
    rows.iter().map(|(_, held)| format!("{:?}", held.value)).collect()
}

#[test]
fn the_drive_is_timed_by_the_clock_and_not_by_ticks() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.send(Event::Go(Screen::DriveWatch));
    phone.send(Event::DriveTap);
    // Not a single tick comes in between.
    phone.wait(27.64);
    phone.send(Event::DriveTap);
    assert!(runs(&phone)[0].contains("27.6 s"), "{:?}", runs(&phone));
    assert!(runs(&phone)[0].contains("there"));
}

#[test]
fn a_wall_clock_set_back_while_it_runs_changes_nothing() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.send(Event::DriveTap);
    phone.wait(20.0);
    phone.now.wall -= 3_600_000;
    phone.wait(8.0);
    phone.send(Event::DriveTap);
    assert!(runs(&phone)[0].contains("28.0 s"), "{:?}", runs(&phone));
}

#[test]
fn a_steady_clock_that_slept_is_put_right_by_the_wall_clock() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.send(Event::DriveTap);
    phone.wait(5.0);
    // Twenty seconds of sleep: only the wall clock goes on.
    phone.now.wall += 20_000;
    phone.wait(3.0);
    phone.send(Event::DriveTap);
    assert!(runs(&phone)[0].contains("28.0 s"), "{:?}", runs(&phone));
}

#[test]
fn a_run_that_was_no_good_is_struck_and_stays_readable() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.send(Event::DriveTap);
    phone.wait(12.0);
    phone.send(Event::DriveTap);
    phone.send(Event::DriveAgain);
    assert!(runs(&phone).is_empty());
    let text = notebook::write_file(&phone.book);
    assert!(text.contains("12.0 s") && text.contains("taken back"));
    // A double tap is no run.
    phone.send(Event::DriveTap);
    phone.wait(0.2);
    phone.send(Event::DriveTap);
    assert!(runs(&phone).is_empty());
}

fn started(sections: &str, pace: Pace) -> Phone {
    let mut phone = Phone::new();
    phone.boom(sections);
    phone.send(Event::Go(Screen::HandsFree));
    phone.send(Event::SetPace(pace));
    phone.send(Event::HandsFreeStart);
    phone
}

fn phase(phone: &Phone) -> Phase {
    phone.state.hands_free.as_ref().expect("it runs").phase
}

const PACE: Pace = Pace { seconds: 30.0, at_once: 1, pause: 10.0, enter: Waits::No };

#[test]
fn every_tip_is_called_held_and_ended_in_turn() {
    let mut phone = started("3", PACE);
    let mut last = Vec::new();
    while phase(&phone) != Phase::Done {
        phone.wait(0.1);
        phone.send(Event::Tick);
        if last.last() != Some(&phase(&phone)) {
            last.push(phase(&phone));
        }
    }
    let once = [Phase::Ready, Phase::Catching, Phase::Between];
    let expected: Vec<Phase> = once.iter().copied().cycle().take(8).chain([Phase::Done]).collect();
    assert_eq!(last, expected);
    let count = |sound: Sound| phone.done.iter().filter(|effect| **effect == Effect::Sound(sound)).count();
    assert_eq!((count(Sound::Go), count(Sound::Stop)), (3, 3));
    let spoken = phone.done.iter().filter(|effect| matches!(effect, Effect::Speak { .. })).count();
    assert_eq!(spoken, 9);
}

#[test]
fn it_ended_while_the_phone_slept_and_says_so() {
    let mut phone = started("3", PACE);
    phone.wait(READY + 0.05);
    phone.send(Event::Tick);
    assert_eq!(phase(&phone), Phase::Catching);
    phone.wait(10.0);
    phone.now.wall += 60_000;
    phone.send(Event::SeenAgain);
    match phase(&phone) {
        // Held for 70 s instead of 30 s.
        Phase::EndedAway { over } => assert!((over - 40.0).abs() < 0.1, "{over}"),
        other => panic!("{other:?}"),
    }
    // The same tip is called once more.
    phone.send(Event::HandsFreeAgain);
    assert_eq!(phone.state.hands_free.as_ref().expect("it runs").now(), [1]);
    assert_eq!(phase(&phone), Phase::Ready);
}

#[test]
fn each_cup_may_be_entered_before_the_next_tip_is_called() {
    let mut phone = started("2", Pace { enter: Waits::Yes, ..PACE });
    phone.wait(READY + 0.05);
    phone.send(Event::Tick);
    phone.wait(30.05);
    phone.send(Event::Tick);
    assert_eq!(phone.state.screen, Screen::Cup);
    phone.press("14");
    phone.send(Event::Next);
    assert_eq!((phone.state.screen.clone(), phase(&phone)), (Screen::HandsFree, Phase::Ready));
    assert_eq!(phone.state.hands_free.as_ref().expect("it runs").now(), [2]);
}

#[test]
fn several_cups_are_held_at_once() {
    let phone = started("5", Pace { at_once: 2, ..PACE });
    assert_eq!(phone.state.hands_free.as_ref().expect("it runs").now(), [1, 2]);
}

#[test]
fn the_time_that_is_called_is_the_time_of_the_readings() {
    // The visit says 28 s; the voice holds for 30.
    let mut phone = started("3", PACE);
    assert_eq!(phone.visit().text("catch.time"), "30 s");
    phone.send(Event::HandsFreeStop);
    phone.cups(&["14"]);
    // One cup stands already: those held longer now say so themselves.
    phone.send(Event::Go(Screen::HandsFree));
    phone.send(Event::SetPace(Pace { seconds: 60.0, ..PACE }));
    phone.send(Event::HandsFreeStart);
    phone.send(Event::HandsFreeStop);
    assert_eq!(
        phone.state.catching.as_ref().and_then(|catching| catching.seconds.clone()),
        Some("60 s".to_string())
    );
    assert_eq!(phone.visit().text("catch.time"), "30 s");
}

proptest! {
    /// However rarely the clock is read, cups are held for the time that was set: the change is told within one reading of the
    /// clock, and lateness does not add up.
    #[test]
    fn lateness_does_not_add_up(steps in prop::collection::vec(0.02_f64..1.4, 400)) {
        let mut phone = started("3", PACE);
        let began = phone.now.steady;
        for step in steps {
            phone.wait(step);
            phone.send(Event::Tick);
            if phase(&phone) == Phase::Done {
                break;
            }
            let hands_free = phone.state.hands_free.as_ref().expect("it runs");
            let elapsed = (phone.now.steady - began) / 1000.0;
            let round = READY + 30.0 + 10.0;
            let place = hands_free.place as f64;
            let into = match hands_free.phase {
                Phase::Ready => 0.0,
                Phase::Catching => READY,
                _ => READY + 30.0,
            };
            let since = place * round + into;
            prop_assert!(elapsed >= since - 1e-6 && elapsed - since <= 30.0 + 1.4, "{} {}", elapsed, since);
        }
    }
}
