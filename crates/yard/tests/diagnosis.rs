//! What is most likely wrong, beside the verdict; and what becomes of it when something was done.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::Phone;
use units::Weight;
use words::{Language, Reader};
use yard::shown::{self, CupCell, beside, cup_sections, diagnosis, found};
use yard::{Event, Key, Screen, Step};

/// Twelve cups, the seventh a third short; the last section gives 1 fl oz less than the others.
const CUPS: [&str; 12] =
    ["14.5", "14.5", "14", "14.5", "14.5", "14", "10", "14.5", "13.5", "13.5", "13", "13.5"];

fn caught() -> Phone {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.cups(&CUPS);
    phone
}

fn cells(phone: &Phone) -> Vec<CupCell> {
    cup_sections(&phone.state).into_iter().flat_map(|section| section.cells).collect()
}

#[test]
fn what_is_most_likely_wrong_stands_beside_the_verdict() {
    let phone = caught();
    let shown = diagnosis(&phone.state).expect("cups were caught");
    let told: Vec<&str> = shown.likely.iter().map(|likely| likely.lead.as_str()).collect();
    assert!(told.iter().any(|lead| lead.starts_with("Section 3 (tips 9 to 12)")), "{told:?}");
    let tip = shown.likely.iter().find(|likely| likely.lead.starts_with("Tip 7")).expect("tip 7 is told");
    assert!(tip.lead.contains("most likely a partly plugged tip ("), "{}", tip.lead);
    assert_eq!(tip.repairs[0].label, "cleaned: catch tip 7 again");
    let best = shown.checks.first().expect("something is worth checking");
    assert!(best.rest.contains(" min."), "{}", best.rest);
    let again = shown.checks.iter().find_map(|check| check.again.as_ref()).expect("cups are worth catching");
    assert!(again.tips.contains(&7), "{again:?}");
    let sections = cup_sections(&phone.state);
    assert_eq!(sections.iter().map(|section| section.loses).collect::<Vec<_>>(), [false, false, true]);
    assert_eq!(sections[0].head, "Section 1");
    assert!(sections[2].head.contains("less"), "{}", sections[2].head);
    let is: Vec<&str> = cells(&phone).iter().map(|cell| cell.likely.as_ref().expect("caught").is).collect();
    assert_eq!(is[6], "partly_plugged");
    assert_eq!(is.iter().filter(|is| **is == "sound").count(), 11, "{is:?}");
}

#[test]
fn it_is_worked_out_when_it_is_asked_for_and_kept_until_the_facts_change() {
    let mut phone = caught();
    assert!(!phone.visit().is_diagnosed());
    let before = diagnosis(&phone.state);
    assert!(phone.visit().is_diagnosed());
    phone.send(Event::Go(Screen::Cup));
    phone.send(Event::Key(Key::Digit(1)));
    assert!(phone.visit().is_diagnosed(), "a key of the pad changes no fact");
    phone.send(Event::Key(Key::Rub));
    phone.send(Event::ToTip(7));
    phone.press("14.5");
    phone.send(Event::Next);
    assert!(!phone.visit().is_diagnosed());
    assert_ne!(diagnosis(&phone.state), before);
}

#[test]
fn after_a_repair_the_old_reading_stays_and_the_new_one_counts() {
    let mut phone = caught();
    phone.send(Event::Repaired { after: "after cleaning".to_string(), tips: vec![7] });
    assert_eq!(phone.state.screen, Screen::Cup);
    let catching = phone.state.catching.as_ref().expect("the cup is up");
    assert_eq!((catching.tips.as_slice(), catching.tip), (&[7][..], 7));
    phone.press("14.5");
    phone.send(Event::Next);
    assert_eq!(phone.state.screen, Screen::Visit);
    assert_eq!(phone.visit().rounds().len(), 2);
    let cell = cells(&phone).into_iter().find(|cell| cell.number == 7).expect("tip 7");
    assert_eq!((cell.before.as_deref(), cell.reading.as_str(), cell.state), (Some("10"), "14½", "in_order"));
    assert_eq!(cell.likely, None, "what it was no longer holds");
    let shown = diagnosis(&phone.state).expect("cups were caught");
    assert!(shown.likely.iter().all(|likely| !likely.lead.starts_with("Tip 7")), "{:?}", shown.likely);
    let told: Vec<String> = found(&phone.state, Step::Catch).into_iter().map(|found| found.lead).collect();
    assert!(
        told.iter().any(|lead| lead.contains("Tip 7, after cleaning: 14") && lead.contains("Before")),
        "{told:?}"
    );
    // Other cups once more belong beside those of the round they were first caught in: nothing was done at them.
    phone.send(Event::CatchAgain { tips: vec![9, 7], seconds: String::new() });
    let first = phone.visit().rounds()[0].0;
    assert_eq!(phone.state.catching.as_ref().expect("the cup is up").round, first);
    // Read again in Spanish, and from the lines alone, it is the same.
    phone.send(Event::Read(Reader { language: Language::Spanish, ..Reader::default() }));
    let again = cells(&phone).into_iter().find(|cell| cell.number == 7).expect("tip 7");
    assert_eq!((again.before.as_deref(), again.reading.as_str()), (Some("10"), "14½"));
}

#[test]
fn a_repair_that_did_not_help_is_said() {
    let mut phone = caught();
    phone.send(Event::Repaired { after: "after cleaning".to_string(), tips: vec![7] });
    phone.press("10.5");
    phone.send(Event::Next);
    let cell = cells(&phone).into_iter().find(|cell| cell.number == 7).expect("tip 7");
    assert_eq!((cell.before.as_deref(), cell.state), (Some("10"), "low"));
    let told: Vec<String> = found(&phone.state, Step::Catch).into_iter().map(|found| found.lead).collect();
    assert!(told.iter().any(|lead| lead.contains("still")), "{told:?}");
}

#[test]
fn where_all_is_well_nothing_more_is_worth_checking() {
    let mut phone = Phone::new();
    phone.boom("12");
    phone.cups(&["14.5", "14.5", "14", "14.5", "14.5", "14", "14.5", "14.5", "14.5", "15", "14.5", "14.5"]);
    let shown = diagnosis(&phone.state).expect("cups were caught");
    assert_eq!(shown.checks, [], "{shown:?}");
    assert_eq!(shown.likely.len(), 1);
    assert!(shown.likely[0].lead.starts_with("These cups show nothing wrong"), "{shown:?}");
}

#[test]
fn before_cups_and_of_what_is_no_boom_nothing_is_told() {
    let mut phone = Phone::new();
    phone.boom("4");
    assert_eq!(diagnosis(&phone.state), None);
    assert!(cup_sections(&phone.state).is_empty());
    phone.say("sprayer.kind", "boomless");
    phone.say("sprayer.tips", "3");
    phone.cups(&["64", "66", "63"]);
    assert_eq!(diagnosis(&phone.state), None);
}

#[test]
fn a_swap_tells_the_tip_from_its_place() {
    for (at_seven, at_eight, says, again) in [
        ("10", "14.5", "Place 7 stays low with another tip in it", true),
        ("14.5", "10", "What was low went along with tip 7", false),
    ] {
        let mut phone = caught();
        phone.send(Event::Repaired { after: "swapped".to_string(), tips: vec![7, 8] });
        for reading in [at_seven, at_eight] {
            phone.press(reading);
            phone.send(Event::Next);
        }
        assert_eq!(phone.state.screen, Screen::Visit);
        assert_eq!(phone.visit().faults, []);
        let shown = diagnosis(&phone.state).expect("cups were caught");
        let told = shown.likely.iter().find(|likely| likely.lead.starts_with(says));
        let told = told.unwrap_or_else(|| panic!("{says}: {:?}", shown.likely));
        assert_eq!(!told.repairs.is_empty(), again);
        // A swap mends nothing: the verdict is that of the whole boom, and the cup that was read before stays.
        let cell = cells(&phone).into_iter().find(|cell| cell.number == 7).expect("tip 7");
        assert_eq!((cell.before.as_deref(), cell.state), (Some("10"), "low"));
    }
}

#[test]
fn what_is_read_beside_the_cups_has_its_fields() {
    let mut phone = caught();
    phone.send(Event::AddTipPressure(10));
    let fields = beside(&phone.state);
    let pressure = fields.iter().find(|field| field.ends_with(".pressure")).expect("a field").clone();
    assert_eq!(pressure.split('.').next(), Some("catch"));
    phone.say(&pressure, "38 psi");
    assert_eq!(phone.visit().faults, []);
    phone.send(Event::Repaired { after: "pressure changed".to_string(), tips: vec![1, 2] });
    phone.press("20");
    phone.send(Event::Next);
    let rounds: Vec<String> =
        beside(&phone.state).into_iter().filter(|field| field.starts_with("catch.round.")).collect();
    assert_eq!(rounds.len(), 1);
    phone.say(&rounds[0], "60 psi");
    assert_eq!(phone.visit().faults, []);
    // At another pressure every tip gives something else: nothing is held against the cups of before.
    assert!(cells(&phone).iter().all(|cell| cell.before.is_none()));
}

/// Every tip is within its limit, and yet a section is starved: what to do says so.
#[test]
fn a_starved_section_is_something_to_do() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.cups(&["14.5", "14.5", "14", "14.5", "14.5", "14", "14.5", "14.5", "13.5", "13.5", "13", "13.5"]);
    let acts = phone.visit().outcome.actions.iter().filter(|action| action.finding.weight == Weight::Act);
    assert_eq!(acts.count(), 0);
    let to_do = shown::to_do(&phone.state);
    let strainer = to_do.last().expect("something is to be done");
    assert!(strainer.lead.contains("Section 3") && strainer.rest.contains("tank valve shut"), "{strainer:?}");
    let steps = shown::steps(&phone.state);
    let change = steps.iter().find(|step| step.step == Step::Change).expect("a step");
    assert!(change.mark == shown::Mark::Act && change.line.contains("Section 3"), "{change:?}");
}
