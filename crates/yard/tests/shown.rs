//! What the screens show: units parted from what is typed, findings with their tips, visits beside one another.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::Phone;
use proptest::prelude::*;
use report::sheet::Sign;
use words::{Language, Reader};
use yard::shown::{self, Choice, LastVisit};
use yard::{Event, Keep, Screen, Step};

fn units(words: &[&'static str]) -> Vec<Choice> {
    words.iter().map(|word| Choice { word, label: (*word).to_string() }).collect()
}

#[test]
fn a_unit_is_parted_from_its_number_and_put_back() {
    let units = units(&["fl oz", "mL", "oz"]);
    for (text, number, unit) in [
        ("14 1/2 fl oz", "14 1/2", Some("fl oz")),
        ("430 mL", "430", Some("mL")),
        ("430mL", "430", Some("mL")),
        ("40", "40", None),
        ("40 1/", "40 1/", None),
        ("2 pt", "2 pt", None),
        ("as driven", "as driven", None),
    ] {
        assert_eq!(shown::without_unit(text, &units), (number.to_string(), unit), "{text}");
    }
    assert_eq!(shown::with_unit("20", "in"), "20 in");
    assert_eq!(shown::with_unit("20 cm", "in"), "20 cm");
    assert_eq!(shown::with_unit("5 %", "%"), "5 %");
    assert_eq!(shown::with_unit(" ", "in"), " ");
}

#[test]
fn a_list_takes_its_unit_number_by_number() {
    let units = units(&["in", "cm"]);
    assert_eq!(shown::list_with_unit("0, 20 , 40 1/4", "in"), "0 in, 20 in, 40 1/4 in");
    assert_eq!(shown::list_with_unit("0 cm; 51 cm", "in"), "0 cm, 51 cm");
    assert_eq!(shown::list_without_unit("0 in, 20 in", &units), ("0, 20".to_string(), Some("in")));
    // Where they differ every number keeps its own.
    assert_eq!(shown::list_without_unit("0 in, 51 cm", &units), ("0 in, 51 cm".to_string(), None));
}

proptest! {
    #[test]
    fn what_is_parted_comes_back_as_it_was(number in "[0-9]{1,3}(\\.[0-9]{1,2}| 1/[248])?", place in 0_usize..3) {
        let units = units(&["in", "cm", "ft"]);
        let whole = shown::with_unit(&number, units[place].word);
        let (parted, unit) = shown::without_unit(&whole, &units);
        prop_assert_eq!(&parted, &number);
        prop_assert_eq!(unit, Some(units[place].word));
        prop_assert_eq!(shown::with_unit(&parted, unit.unwrap_or_default()), whole);
    }
}

#[test]
fn units_are_named_in_the_readers_language() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.send(Event::Read(Reader { language: Language::Spanish, ..Reader::default() }));
    let words = &phone.state.words;
    assert_eq!(shown::value_said(words, "1/2 fl oz"), "1/2 oz líq");
    assert_eq!(shown::value_said(words, "20 in"), "20 pulg");
    assert_eq!(shown::value_said(words, "as driven"), "lo que duró el recorrido");
    assert_eq!(shown::value_said(words, "3rd low"), "3rd low");
    let marks = shown::field(&phone.state, phone.visit(), "catch.cup_marks");
    let shown::Editor::Number { at_hand, .. } = marks.editor else { panic!("{marks:?}") };
    assert!(at_hand.iter().any(|one| one.word == "1/2 fl oz" && one.label == "1/2 oz líq"));
}

#[test]
fn counts_may_be_parted_by_the_point_of_a_phones_keys() {
    let mut phone = Phone::new();
    phone.boom("4.4.4");
    assert_eq!(phone.visit().visit.machine.as_ref().map(|machine| machine.tips()), Some(12));
}

#[test]
fn a_tip_that_cannot_be_told_offers_to_be_caught_again() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.cups(&["14.5", "14.5", "15", "13", "14.5", "14.5", "14.5", "14.5", "14", "14.5", "14.5", "15"]);
    let found = shown::found(&phone.state, Step::Catch);
    let again = found.iter().find_map(|one| one.again.clone()).unwrap_or_else(|| panic!("{found:?}"));
    assert!(again.tips.contains(&4), "{again:?}");
    assert!(again.seconds.ends_with(" s") && again.label.contains("again"), "{again:?}");
    assert!(found.iter().any(|one| one.sign == Sign::Settle), "{found:?}");
    phone.send(Event::CatchAgain { tips: again.tips, seconds: again.seconds });
    assert_eq!(phone.state.screen, Screen::Cup);
    let cells: Vec<shown::CupCell> =
        shown::cup_sections(&phone.state).into_iter().flat_map(|section| section.cells).collect();
    assert_eq!(cells.len(), 12);
    assert_eq!((cells[3].state, cells[0].state), ("cannot_tell", "in_order"));
    assert!(cells[3].level < cells[0].level);
}

/// A visit with its drive and cups, at a pressure.
fn visit(phone: &mut Phone, date: &str, pressure: &str, reading: &str) {
    for (field, text) in [
        ("visit.date", date),
        ("setting.pressure", pressure),
        ("drive.course", "204 ft"),
        ("catch.time", "28 s"),
    ] {
        if !text.is_empty() {
            phone.say(field, text);
        }
    }
    phone.send(Event::RunTyped("28".to_string()));
    phone.cups(&[reading; 12]);
    phone.send(Event::Go(Screen::Gate));
}

fn worn(visits: &[LastVisit], words: &words::Words) -> Vec<Option<String>> {
    let key = words.label("yard-last_wear");
    visits
        .iter()
        .map(|visit| visit.pairs.iter().find(|(name, _)| *name == key).map(|(_, value)| value.clone()))
        .collect()
}

#[test]
fn visits_stand_beside_one_another_and_wear_is_told_at_one_pressure_alone() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    visit(&mut phone, "2025-04-01", "30 psi", "14");
    let sprayer = phone.state.shelf.sprayers[0].id;
    for (date, pressure, reading) in
        [("2026-04-01", "40 psi", "16"), ("2026-10-01", "", "16"), ("2027-04-01", "30 psi", "15.5")]
    {
        phone.send(Event::Begin { of: Some(sprayer), keep: Keep::Kept });
        visit(&mut phone, date, pressure, reading);
    }
    let last = phone.state.shelf.visits[0].id;
    phone.send(Event::OpenVisit(last));
    let visits = shown::last_time(&phone.state);
    assert_eq!(visits.len(), 4);
    assert!(visits[0].day.contains("2027") && visits[0].day.contains("this one"), "{visits:?}");
    let words = phone.state.words.clone();
    // 15.5 against 14 is 10.7 % more, told in whole percents.
    let told = worn(&visits, &words);
    assert_eq!(told[0].as_deref(), Some("11 % more"));
    assert_eq!(told[1], Some(words.label("yard-last_pressure_unsaid")));
    assert_eq!(told[2], Some(words.label("yard-last_other_pressure")));
    assert_eq!(told[3], None);
}

#[test]
fn the_first_visit_has_none_beside_it() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    assert_eq!(shown::last_time(&phone.state).len(), 1);
}
