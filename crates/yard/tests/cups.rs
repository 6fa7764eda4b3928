//! The cups: what is asked about, corrected, caught again, pasted; what the store refuses; what two devices say.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{DEVICE, Phone};
use notebook::{DeviceId, Notebook, Value};
use proptest::prelude::*;
use yard::{Effect, Event, Key, Screen, Waits, reading_text, shown};

fn readings(phone: &Phone) -> Vec<Vec<String>> {
    let visit = phone.visit();
    let round = visit.last_round().expect("a round");
    let tips = &visit.folded.readings[&round];
    tips.values()
        .map(|cups| cups.iter().map(|held| reading_text(&held.value).to_string()).collect())
        .collect()
}

#[test]
fn what_cannot_well_be_is_asked_about_at_once_and_kept_if_insisted_on() {
    let mut phone = Phone::new();
    phone.boom("4");
    phone.say("catch.cup_holds", "32 fl oz");
    phone.cups(&["14.5"]);
    let before = phone.book.len();
    phone.press("600");
    phone.send(Event::Next);
    let catching = phone.state.catching.as_ref().expect("a cup");
    let ask = catching.ask.as_ref().expect("it is asked about");
    assert_eq!((catching.tip, ask.reading.as_str()), (2, "600 fl oz"));
    assert_eq!(phone.book.len(), before, "nothing is kept before it is answered");
    // It was a slip: the letters stay, to be put right.
    phone.send(Event::NotSo);
    assert_eq!(phone.state.catching.as_ref().expect("a cup").pad.number(), "600");
    phone.send(Event::Key(Key::Rub));
    phone.send(Event::Key(Key::Rub));
    phone.send(Event::Next);
    assert_eq!(phone.state.catching.as_ref().expect("a cup").tip, 3);
    // It was right: it is kept, and the visit says that doubtful readings are kept.
    phone.press("600");
    phone.send(Event::Next);
    phone.send(Event::Insist);
    assert_eq!(readings(&phone)[2], ["600 fl oz"]);
    assert_eq!(phone.visit().text("catch.doubtful"), "keep");
    assert!(phone.visit().stuck.is_empty());
    // The next absurd one is asked about all the same.
    phone.press("700");
    phone.send(Event::Next);
    assert!(phone.state.catching.as_ref().expect("a cup").ask.is_some());
}

#[test]
fn a_cup_typed_again_corrects_and_the_first_stays_readable() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.cups(&["14", "41"]);
    phone.send(Event::BackATip);
    phone.press("14");
    phone.send(Event::Next);
    assert_eq!(readings(&phone), [["14 fl oz"], ["14 fl oz"]]);
    let folded = notebook::folded(&phone.book);
    assert!(folded.struck.values().any(|reason| reason == "corrected"));
    assert!(
        phone.book.lines().any(|line| line.written().is_some_and(|text| text.text().contains("41 fl oz")))
    );
}

#[test]
fn a_tip_caught_again_stands_beside_what_it_gave_before() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.cups(&["14", "13", "14"]);
    assert_eq!(phone.state.screen, Screen::Visit);
    phone.send(Event::CatchAgain { tips: vec![2], seconds: "60 s".to_string() });
    phone.press("27");
    phone.send(Event::Next);
    assert_eq!(readings(&phone)[1], ["13 fl oz", "27 fl oz"]);
    assert_eq!(phone.state.screen, Screen::Visit);
    // Twice the time, twice the water: both cups count as one tip's.
    let catch = phone.visit().outcome.catch.as_ref().expect("a catch");
    let tip = &catch.now().verdicts.summary.tips[1];
    // 13 fl oz in 28 s and 27 fl oz in 60 s are 0.464 and 0.450 fl oz/s; by hand.
    let flow = units::Quantity::si(tip.flow.expect("a flow")) / 29.573_529_562_5e-6;
    assert!((0.450..0.465).contains(&flow), "{flow}");
}

#[test]
fn the_other_side_of_the_cup_brings_its_own_marks() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.send(Event::Go(Screen::Cup));
    phone.send(Event::Key(Key::OtherSide));
    phone.press("430");
    phone.send(Event::Next);
    let visit = phone.visit();
    let round = visit.last_round().expect("a round");
    let expected = Value::Table(vec![
        ("reading".to_string(), Value::text("430 mL")),
        ("marks".to_string(), Value::text("10 mL")),
    ]);
    assert_eq!(visit.cups(round, 1)[0].value, expected);
    assert!(visit.faults.is_empty());
    // The side stays for the next cup.
    assert_eq!(shown::cup_screen(&phone.state).expect("a screen").unit, "mL");
}

#[test]
fn a_row_from_paper_is_kept_whole_or_said_to_be_wrong_where_it_is() {
    let mut phone = Phone::new();
    phone.boom("4");
    phone.send(Event::Go(Screen::CupRow));
    let type_row = |phone: &mut Phone, row: &str| {
        phone.send(Event::RowTyping(row.to_string()));
        phone.send(Event::RowMeant);
        phone.state.catching.as_ref().and_then(|catching| catching.row_wrong.clone())
    };
    let before = phone.book.len();
    let wrong = type_row(&mut phone, "14, 15, 14").expect("three for four tips");
    assert_eq!(wrong.place, None);
    let wrong = type_row(&mut phone, "14, 15, l4, 14").expect("a letter");
    assert_eq!(wrong.place, Some(3));
    assert_eq!(phone.state.catching.as_ref().expect("a cup").row, "14, 15, l4, 14", "kept as typed");
    assert_eq!(phone.book.len(), before);
    assert_eq!(type_row(&mut phone, "14 1/2, 15, -, 14½"), None);
    assert_eq!(readings(&phone), [["14 1/2 fl oz"], ["15 fl oz"], ["-"], ["14½ fl oz"]]);
    assert_eq!(phone.visit().faults, []);
    assert_eq!(phone.state.screen, Screen::Visit);
}

#[test]
fn letters_that_are_no_quantity_stay_in_their_field() {
    let mut phone = Phone::new();
    phone.boom("4");
    let before = phone.book.len();
    phone.say("drive.course", "204");
    let typed = &phone.visit().typed["drive.course"];
    assert_eq!(typed.text, "204");
    assert!(typed.wrong.is_some());
    assert_eq!(phone.book.len(), before);
    phone.say("drive.course", "204 ft");
    assert!(phone.visit().typed.is_empty());
    assert_eq!(phone.visit().text("drive.course"), "204 ft");
    phone.say("drive.course", "");
    assert_eq!(phone.visit().text("drive.course"), "");
}

#[test]
fn what_the_store_refuses_is_shown_said_and_tried_again() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.keeps = false;
    phone.cups(&["14"]);
    assert_eq!(readings(&phone), [["14 fl oz"]], "it is shown all the same");
    assert!(!phone.state.on_the_way.is_empty() && phone.state.notices.len() == 1);
    phone.keeps = true;
    phone.send(Event::SeenAgain);
    assert!(phone.state.on_the_way.is_empty() && phone.state.notices.is_empty());
    let again = Phone::with(phone.book.clone());
    assert_eq!(again.state.shelf.visits.len(), 1);
}

#[test]
fn a_device_that_keeps_nothing_works_and_asks_for_nothing_to_be_kept() {
    let mut phone = Phone::new();
    phone.send(Event::StoreRefused { why: "private window".to_string() });
    phone.boom("3");
    phone.cups(&["14", "14", "14"]);
    assert!(phone.visit().outcome.catch.is_some());
    assert!(!phone.done.iter().any(|effect| matches!(effect, Effect::Append(_))));
}

#[test]
fn two_devices_that_differ_are_both_shown_until_one_is_chosen() {
    let mut phone = Phone::new();
    phone.boom("3");
    let id = phone.visit().id;
    // Another phone with the same lines says another spacing, and its line arrives here.
    let mut other = Notebook::new(phone.book.id());
    other.merge(&phone.book);
    let mut draft = phone.book.lines().find(|line| line.about().id == id).map(|line| notebook::Draft {
        id: notebook::LineId::from_bits(9),
        about: line.about(),
        at: line.at(),
        version: line.version(),
        written: notebook::Written::new(String::new(), [0; 16]),
    });
    let told = notebook::Told::from(notebook::Entry::Fact {
        field: "sprayer.spacing".to_string(),
        value: Value::text("19 in"),
    });
    let mut draft = draft.take().expect("a line");
    draft.written = notebook::Written::new(told.text(), [0; 16]);
    let line = other.write(DeviceId::from_bits(71), draft);
    phone.book.take(line.clone());
    phone.send(Event::Arrived(vec![line]));
    let shown = shown::field(&phone.state, phone.visit(), "sprayer.spacing");
    assert_eq!(shown.two_values, ["20 in", "19 in"]);
    phone.send(Event::Choose { field: "sprayer.spacing".to_string(), index: 0 });
    let shown = shown::field(&phone.state, phone.visit(), "sprayer.spacing");
    assert_eq!((shown.two_values.len(), shown.text.as_str()), (0, "20 in"));
    assert!(phone.book.lines().any(|line| line.device() == DEVICE));
}

#[test]
fn seventy_two_tips_go_section_by_section() {
    let mut phone = Phone::new();
    phone.boom("12, 12, 12, 12, 12, 12");
    phone.send(Event::Go(Screen::Cup));
    phone.send(Event::ToTip(40));
    let row = shown::small_row(&phone.state).expect("a row");
    let described = format!("{row:?}");
    assert!(described.contains("map-37") && described.contains("map-48"));
    assert!(!described.contains("\"map-36\"") && !described.contains("\"map-49\""));
}

#[test]
fn a_boomless_cluster_has_its_own_steps() {
    let mut phone = Phone::new();
    phone.send(Event::Begin { of: None, keep: yard::Keep::Kept });
    for (field, text) in [
        ("sprayer.kind", "boomless"),
        ("sprayer.tips", "3"),
        ("sprayer.effective_swath", "30 ft"),
        ("drive.course", "200 ft"),
        ("catch.cup_marks", "1 fl oz"),
        ("catch.time", "30 s"),
    ] {
        phone.say(field, text);
    }
    phone.send(Event::RunTyped("27.3".to_string()));
    phone.cups(&["64", "66", "63"]);
    let steps = shown::steps(&phone.state);
    assert!(steps.iter().all(|shown| shown.step != yard::Step::Spacing));
    let rate = phone.visit().outcome.rate.as_ref().expect("a rate").of_mix().value;
    // 193 fl oz in 30 s are 3.0156 gal/min; 200 ft in 27.3 s are 4.995 mph; 495 x 3.0156 / (4.995 x 30) = 9.96 gal/ac, by the
    // trade's formula for a swath in feet (common practice).
    let rate = rate.as_gallons_per_acre();
    assert!((rate - 9.96).abs() < 0.01, "{rate}");
}

#[test]
fn one_more_cup_is_said_before_it_is_typed() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.cups(&["14", "15"]);
    phone.send(Event::ToTip(1));
    phone.send(Event::OneMoreCup(Waits::Yes));
    phone.press("14.5");
    phone.send(Event::Next);
    assert_eq!(readings(&phone)[0], ["14 fl oz", "14 1/2 fl oz"]);
}

fn any_event() -> impl Strategy<Value = Event> {
    prop_oneof![
        (0_u8..12).prop_map(|digit| Event::Key(Key::Digit(digit))),
        (0_u8..5).prop_map(|quarters| Event::Key(Key::Quarters(quarters))),
        Just(Event::Key(Key::Point)),
        Just(Event::Key(Key::Rub)),
        Just(Event::Key(Key::Skip)),
        Just(Event::Key(Key::OtherSide)),
        Just(Event::Key(Key::OtherMarks)),
        Just(Event::Next),
        Just(Event::Insist),
        Just(Event::NotSo),
        Just(Event::BackATip),
        (0_u32..99).prop_map(Event::ToTip),
        Just(Event::Go(Screen::Cup)),
        Just(Event::Go(Screen::CupRow)),
        Just(Event::Go(Screen::HandsFree)),
        Just(Event::Go(Screen::Gate)),
        Just(Event::Back),
        "[0-9 ,./½a-z-]{0,20}".prop_map(Event::RowTyping),
        Just(Event::RowMeant),
        Just(Event::HandsFreeStart),
        Just(Event::HandsFreeStop),
        Just(Event::Tick),
        Just(Event::SeenAgain),
        Just(Event::DriveTap),
        Just(Event::DriveAgain),
        Just(Event::AddProduct),
        Just(Event::NewRound("after cleaning".to_string())),
        Just(Event::Begin { of: None, keep: yard::Keep::Kept }),
        (
            prop::sample::select(vec![
                "sprayer.sections",
                "sprayer.kind",
                "sprayer.tips",
                "sprayer.spacing",
                "catch.time",
                "catch.cup_marks",
                "drive.course",
                "target.rate",
                "spacing.marks",
                "look.no_leaks",
                "job.area",
                "no.such",
                "",
            ]),
            "[0-9 ,./a-z%]{0,12}",
        )
            .prop_map(|(field, text)| Event::Say { field: field.to_string(), text }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Whatever is tapped in whatever order: no panic, every screen can be shown, and what is shown is what was kept.
    #[test]
    fn any_taps_in_any_order_leave_what_was_kept(events in prop::collection::vec((any_event(), 0_u16..4000), 0..60)) {
        let mut phone = Phone::new();
        phone.boom("3, 3");
        for (event, pause) in events {
            phone.wait(f64::from(pause) / 1000.0);
            phone.send(event);
            let _ = shown::steps(&phone.state);
            let _ = shown::cup_screen(&phone.state);
            let _ = shown::small_row(&phone.state);
        }
        prop_assert!(phone.state.on_the_way.is_empty());
        if let Some(visit) = &phone.state.visit {
            let mut again = Phone::with(phone.book.clone());
            again.send(Event::OpenVisit(visit.id));
            prop_assert_eq!(&again.visit().folded, &visit.folded);
        }
    }
}

#[test]
fn a_visit_file_taken_in_is_a_visit_of_a_sprayer_that_is_known_from_then_on() {
    let mut phone = Phone::new();
    let bytes = include_bytes!("../../../demo/willow-bend.toml").to_vec();
    phone.send(Event::FileChosen { name: "willow-bend.toml".to_string(), bytes });
    assert!(phone.visit().outcome.rate.is_some());
    phone.send(Event::Go(Screen::Gate));
    let known = phone.state.shelf.sprayers.clone();
    assert_eq!((known.len(), known[0].name.as_str()), (1, "Blue mounted boom"));
    phone.send(Event::Begin { of: Some(known[0].id), keep: yard::Keep::Kept });
    assert_eq!(phone.visit().text("visit.farm"), "Willow Bend Farm");
    phone.send(Event::Go(Screen::Gate));
    assert_eq!(phone.state.shelf.sprayers.len(), 1);
    assert_eq!(phone.state.shelf.sprayers[0].visits.len(), 2);
    // What is no visit file and no notebook changes nothing.
    let before = phone.book.len();
    phone.send(Event::FileChosen { name: "letter.txt".to_string(), bytes: b"Dear neighbour".to_vec() });
    assert_eq!(phone.book.len(), before);
}

#[test]
fn a_product_just_begun_is_in_nobodys_way() {
    let mut phone = Phone::new();
    phone.boom("3");
    phone.say("drive.course", "204 ft");
    phone.send(Event::RunTyped("28".to_string()));
    phone.cups(&["14", "14", "14"]);
    phone.send(Event::AddProduct);
    assert_eq!(phone.visit().faults, []);
    visit::file::read(phone.visit().folded.file().as_bytes()).expect("the file that is handed over reads");
    // A second one, left empty, takes nothing from the first.
    let row = phone.visit().folded.rows["product"][0].0;
    phone.say(&format!("product.{row}.name"), "Product A");
    phone.say(&format!("product.{row}.rate"), "2 pt/ac");
    phone.send(Event::AddProduct);
    assert_eq!(phone.visit().visit.products.len(), 1);
    assert!(phone.visit().outcome.tank.is_some());
}
