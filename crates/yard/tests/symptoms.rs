//! What is seen beside the readings: chosen and answered by taps, kept as facts, without a cup.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use calibration::symptoms::{Check, Outcome, Symptom, Trouble};
use common::Phone;
use yard::shown::{self, IsSeen};
use yard::{Event, Keep, Screen};

fn begun(keep: Keep) -> Phone {
    let mut phone = Phone::new();
    phone.send(Event::Begin { of: None, keep });
    phone.send(Event::Go(Screen::Symptoms));
    phone
}

#[test]
fn taps_lead_to_a_check_and_its_answer_to_the_cause() {
    let mut phone = begun(Keep::Kept);
    assert_eq!(phone.state.screen, Screen::Symptoms);
    let first = shown::symptoms(&phone.state);
    assert_eq!(first.symptoms.len(), Symptom::ALL.len());
    assert!(first.next.is_none() && first.causes.is_empty() && first.end.is_empty());
    phone.send(Event::Symptom(Symptom::Drips));
    let seen = shown::symptoms(&phone.state);
    assert!(seen.symptoms.iter().all(|one| (one.seen == IsSeen::Yes) == (one.symptom == Symptom::Drips)));
    let check = seen.next.expect("a check");
    assert!(check.before.contains("nobody near a turning shaft"), "{check:?}");
    assert!(check.asks.ends_with('?') && !check.does.is_empty());
    // The likeliest stands first, with its chance in words and as a number.
    assert!(seen.causes[0].1.contains('%'), "{:?}", seen.causes);
    phone.send(Event::Checked(Check::SingleTipsDrip, Some(Outcome::Yes)));
    phone.send(Event::Checked(Check::DripStops, Some(Outcome::No)));
    let found = shown::symptoms(&phone.state);
    assert!(found.next.is_none() && found.end[0].contains("check valves"), "{found:?}");
    assert_eq!(found.answered.len(), 2);
    let outcome = phone.visit().outcome.symptoms.clone().expect("worked out");
    assert_eq!(outcome.ranked.causes[0].trouble, Trouble::CheckValves);
    // Kept: the same after the app was closed and opened again.
    let facts = phone.visit().visit.symptoms.clone();
    assert_eq!(
        (facts.seen, facts.yes, facts.no),
        (vec![Symptom::Drips], vec![Check::SingleTipsDrip], vec![Check::DripStops])
    );
}

#[test]
fn an_answer_can_be_changed_and_taken_back() {
    let mut phone = begun(Keep::JustLooking);
    phone.send(Event::Symptom(Symptom::NeedleJumps));
    phone.send(Event::Symptom(Symptom::Foam));
    phone.send(Event::Checked(Check::TankLow, Some(Outcome::No)));
    phone.send(Event::Checked(Check::TankLow, Some(Outcome::Yes)));
    let facts = phone.visit().visit.symptoms.clone();
    assert_eq!((facts.yes, facts.no), (vec![Check::TankLow], Vec::new()));
    phone.send(Event::Checked(Check::TankLow, None));
    let facts = phone.visit().visit.symptoms.clone();
    assert!(facts.yes.is_empty() && facts.no.is_empty() && facts.skipped.is_empty());
    phone.send(Event::Checked(Check::TankLow, Some(Outcome::Skipped)));
    let shown = shown::symptoms(&phone.state);
    assert!(shown.next.is_some_and(|next| next.check != Check::TankLow));
    phone.send(Event::Symptom(Symptom::Foam));
    phone.send(Event::Symptom(Symptom::NeedleJumps));
    let shown = shown::symptoms(&phone.state);
    assert!(shown.next.is_none() && shown.causes.is_empty(), "{shown:?} {:?}", phone.visit().visit.symptoms);
}

#[test]
fn the_kind_of_pump_decides_what_can_be_chosen() {
    let mut phone = begun(Keep::JustLooking);
    phone.say("symptoms.drive", "shaft");
    let can = |phone: &Phone, symptom| {
        shown::symptoms(&phone.state).symptoms.iter().any(|one| one.symptom == symptom)
    };
    assert!(!can(&phone, Symptom::WeakEngineOff) && can(&phone, Symptom::FallsFast));
    phone.say("symptoms.drive", "12_volt");
    assert!(can(&phone, Symptom::WeakEngineOff) && !can(&phone, Symptom::FallsFast));
    // What was chosen before stays to be seen, and is told as what does not go together.
    phone.send(Event::Symptom(Symptom::WeakEngineOff));
    phone.say("symptoms.drive", "shaft");
    assert!(can(&phone, Symptom::WeakEngineOff));
    assert!(shown::symptoms(&phone.state).wrong.is_some());
    phone.send(Event::Symptom(Symptom::WeakEngineOff));
    assert!(shown::symptoms(&phone.state).wrong.is_none());
}

/// A controller that is looked at: what it shows, and sections closed in turn; a row half filled in takes nothing away.
#[test]
fn a_controller_is_checked_by_taps() {
    let mut phone = begun(Keep::Kept);
    phone.boom("4, 4");
    phone.say("sprayer.held_by", "rate_controller");
    assert!(shown::has_controller(&phone.state).is_yes());
    phone.say("controller.widths", "80 in, 84 in");
    let codes = |phone: &Phone| -> Vec<String> {
        let found = phone.visit().outcome.controller.clone().map(|found| found.findings).unwrap_or_default();
        found.iter().map(|finding| units::Coded::code(finding).to_string()).collect()
    };
    assert!(codes(&phone).contains(&"controller_width_off".to_string()), "{:?}", codes(&phone));
    phone.send(Event::AddClosed);
    assert!(codes(&phone).contains(&"controller_width_off".to_string()), "{:?}", codes(&phone));
    let names = shown::closed_names(&phone.state);
    assert_eq!(names.len(), 1);
    phone.say(&names[0].2[0], "40 psi");
    assert!(!codes(&phone).contains(&"controller_closing_high".to_string()));
    phone.say(&names[0].2[1], "47 psi");
    assert!(codes(&phone).contains(&"controller_closing_high".to_string()), "{:?}", codes(&phone));
    // A flow has its unit at hand, so that nothing but a number is typed.
    let visit = phone.visit().clone();
    let field = shown::field(&phone.state, &visit, "controller.shown_flow");
    let shown::Editor::Number { units, .. } = field.editor else { panic!("{field:?}") };
    assert_eq!(units.first().map(|unit| unit.word), Some("gal/min"));
}
