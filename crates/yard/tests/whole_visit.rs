//! A whole visit by taps comes to what the visit file of the same readings comes to.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::Phone;
use notebook::Notebook;
use proptest::prelude::*;
use units::UnitSystem;
use visit::findings::{Outcome, findings};
use yard::shown::{self, Mark};
use yard::{Event, Keep, Screen, Step};

trait Named {
    fn told(&self) -> Vec<String>;
}

impl Named for Outcome {
    fn told(&self) -> Vec<String> {
        self.all().map(|(place, finding)| format!("{place:?} {}", finding.text(UnitSystem::Us))).collect()
    }
}

const DEMO: &str = include_str!("../../../demo/willow-bend.toml");

fn demo_by_taps(phone: &mut Phone) {
    phone.boom("4, 4, 4");
    for (field, text) in [
        ("visit.date", "2027-04-14"),
        ("visit.operator", "T. Marsh"),
        ("visit.with", "R. Alder, county office"),
        ("setting.gear", "3rd low"),
        ("setting.engine_speed", "1700 rpm"),
        ("setting.pto_speed", "540 rpm"),
        ("setting.pressure", "28 psi"),
        ("setting.pressure_read_at", "boom"),
        ("setting.gauge_marks", "2 psi"),
        ("setting.agitation", "on"),
        ("setting.sections_on", "all"),
        ("setting.water_in_tank", "half full"),
        ("setting.boom_height", "20 in"),
        ("sprayer.fan_angle", "110 deg"),
        ("look.tips_alike", "yes"),
        ("look.all_spraying", "yes"),
        ("look.fans_straight", "yes"),
        ("look.no_leaks", "yes"),
        ("look.no_drip_after_5_s", "no"),
        ("look.gauge_back_to_zero", "yes"),
        ("look.strainers_clean", "yes"),
        ("look.boom_level", "yes"),
        (
            "spacing.marks",
            "0 in, 20 in, 40 1/4 in, 60 in, 80 in, 100 in, 120 in, 140 in, 161 1/2 in, 180 in, 200 in, 220 in",
        ),
        ("spacing.tape_marks", "1/4 in"),
        ("spacing.cannot_move", "4, 5, 8"),
        ("drive.course", "204 ft"),
        ("drive.dash", "5.4 mph"),
        ("catch.cup_holds", "32 fl oz"),
        ("catch.limit", "10 %"),
    ] {
        phone.say(field, text);
    }
    for seconds in [27.6, 28.3, 27.8, 28.5] {
        phone.send(Event::DriveTap);
        phone.wait(seconds);
        phone.send(Event::DriveTap);
    }
    phone.cups(&["14.5", "14.5", "15", "13", "14.5", "14.5", "17", "14.5", "14", "14.5", "14.5", "15"]);
    phone.send(Event::NewRound("new tips".to_string()));
    phone.send(Event::ToTip(7));
    phone.press("14.5");
    phone.send(Event::Next);
    phone.say("target.rate", "15 gal/ac");
    phone.send(Event::AddProduct);
    let row = phone.visit().folded.rows["product"][0].0;
    for (name, text) in [
        ("name", "Product A"),
        ("rate", "2 pt/ac"),
        ("label_least", "1 pt/ac"),
        ("label_most", "2 pt/ac"),
        ("label_least_carrier", "10 gal/ac"),
        ("price", "$40/gal"),
    ] {
        phone.say(&format!("product.{row}.{name}"), text);
    }
    phone.say("job.area", "40 ac");
    phone.say("job.area_a_year", "120 ac");
}

#[test]
fn taps_come_to_the_same_as_the_visit_file() {
    let mut phone = Phone::new();
    demo_by_taps(&mut phone);
    let visit = visit::file::read(DEMO.as_bytes()).expect("the demo reads");
    let by_file = findings(&visit, UnitSystem::Us).expect("the demo checks");
    let by_taps = &phone.visit().outcome;
    assert_eq!(phone.visit().faults, []);
    assert_eq!(phone.visit().stuck, []);
    // The pad writes 14 1/2 where the file has 14.5; every figure and sentence is the same.
    assert_eq!(by_taps.told(), by_file.told());
    let rate = |outcome: &Outcome| outcome.rate.as_ref().map(visit::findings::RateOutcome::of_mix);
    assert_eq!(rate(by_taps), rate(&by_file));
    // And the file that is handed over says the same again.
    let again = visit::file::read(phone.visit().folded.file().as_bytes()).expect("it reads back");
    assert_eq!(findings(&again, UnitSystem::Us).expect("it checks").told(), by_file.told());
}

#[test]
fn every_step_says_what_it_found() {
    let mut phone = Phone::new();
    demo_by_taps(&mut phone);
    let steps = shown::steps(&phone.state);
    let mark = |step: Step| steps.iter().find(|shown| shown.step == step).map(|shown| shown.mark);
    assert_eq!(mark(Step::Machine), Some(Mark::InOrder));
    assert_eq!(mark(Step::Look), Some(Mark::Act));
    assert_eq!(mark(Step::Spacing), Some(Mark::Act));
    // Tip 7 was off, and is mended; tip 4 is still open.
    assert_eq!(mark(Step::Catch), Some(Mark::CannotTell));
    assert_eq!(mark(Step::Rate), Some(Mark::InOrder));
    assert!(steps.iter().all(|shown| shown.in_the_way.is_empty()), "{steps:?}");
    let rate = shown::rate_line(&phone.state.words, &phone.visit().outcome);
    assert!(rate.contains("14.7"), "{rate}");
    assert_eq!(phone.state.four_lines().lines().count(), 4);
}

#[test]
fn what_is_kept_is_found_again_by_a_page_opened_anew() {
    let mut phone = Phone::new();
    demo_by_taps(&mut phone);
    let id = phone.visit().id;
    let mut again = Phone::with(phone.book.clone());
    again.send(Event::Remembered(vec![("open".to_string(), id.to_string())]));
    assert_eq!(again.visit().folded, phone.visit().folded);
    assert_eq!(again.visit().outcome.told(), phone.visit().outcome.told());
    assert_eq!(again.state.shelf.sprayers.len(), 1);
}

#[test]
fn just_looking_keeps_nothing() {
    let mut phone = Phone::new();
    phone.send(Event::Begin { of: None, keep: Keep::JustLooking });
    for (field, text) in [("sprayer.tips", "3"), ("sprayer.spacing", "20 in"), ("catch.time", "30 s")] {
        phone.say(field, text);
    }
    phone.say("catch.cup_marks", "1 fl oz");
    phone.cups(&["14", "15", "14"]);
    assert!(phone.visit().outcome.catch.is_some());
    assert!(phone.book.is_empty());
    phone.send(Event::Back);
    assert!(phone.state.visit.is_none() && phone.state.shelf.visits.is_empty());
}

#[test]
fn the_next_visit_of_a_sprayer_asks_only_for_what_changed() {
    let mut phone = Phone::new();
    demo_by_taps(&mut phone);
    phone.send(Event::Go(Screen::Gate));
    let sprayer = phone.state.shelf.sprayers[0].id;
    phone.send(Event::Begin { of: Some(sprayer), keep: Keep::Kept });
    assert!(phone.visit().visit.machine.is_some());
    assert_eq!(phone.visit().text("drive.course"), "204 ft");
    // What was read off that day is not carried over.
    assert!(phone.visit().rounds().is_empty() && phone.visit().text("setting.pressure").is_empty());
}

#[test]
fn with_ten_minutes_one_tip_of_each_section_gives_a_rate() {
    let mut phone = Phone::new();
    phone.send(Event::Minutes(10));
    phone.send(Event::People(1));
    phone.boom("4, 4, 4");
    phone.say("drive.course", "204 ft");
    phone.send(Event::RunTyped("28".to_string()));
    phone.cups(&["14.5", "14.5", "14"]);
    let visit = phone.visit();
    let tips: Vec<u32> = visit.folded.readings.values().flat_map(|tips| tips.keys().copied()).collect();
    assert_eq!(tips, [2, 6, 10]);
    assert!(visit.outcome.rate.is_some());
    // The rest is said to be open.
    assert!(visit.outcome.told().iter().any(|told| told.contains("3 of 12 tips were caught")));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// The tab is killed after any event: what was acknowledged is all there.
    #[test]
    fn killed_at_any_moment_nothing_acknowledged_is_lost(kept in 0_usize..150) {
        let mut phone = Phone::new();
        demo_by_taps(&mut phone);
        let mut left = Notebook::new(phone.book.id());
        for line in phone.book.lines().take(kept) {
            left.take(line.clone());
        }
        let again = Phone::with(left.clone());
        prop_assert_eq!(again.book.len(), left.len());
        let mut again = again;
        if let Some(visit) = again.state.shelf.visits.first().map(|visit| visit.id) {
            again.send(Event::OpenVisit(visit));
            prop_assert_eq!(again.visit().folded.lines, kept.min(phone.book.len()));
        }
    }
}
