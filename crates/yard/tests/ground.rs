//! The pattern across the boom as the app shows it: asked where the tips are measured, drawn for page and phone, tried out by keys.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::Phone;
use report::sheet::Block;
use yard::Step;
use yard::shown::{self, Mark};

fn height(phone: &Phone) -> shown::FieldShown {
    let visit = phone.state.visit.as_ref().expect("a visit");
    shown::field(&phone.state, visit, "setting.boom_height")
}

fn drawn(blocks: &[Block]) -> Vec<String> {
    let drawings = blocks.iter().filter_map(|block| match block {
        Block::Drawing(drawing) => Some(format!("{} {}", drawing.id, drawing.width)),
        _ => None,
    });
    drawings.collect()
}

fn step(phone: &Phone) -> shown::StepShown {
    shown::steps(&phone.state).into_iter().find(|shown| shown.step == Step::Spacing).expect("the step")
}

#[test]
fn it_is_asked_drawn_and_told_where_the_tips_are_measured() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    let asked = shown::field_names(&phone.state, Step::Spacing);
    assert!(asked.contains(&"setting.boom_height") && asked.contains(&"sprayer.fan_angle"), "{asked:?}");
    assert!(shown::narrow_drawings(&phone.state, Step::Spacing).is_empty());
    assert_eq!(step(&phone).mark, Mark::Open);
    phone.say("sprayer.fan_angle", "110 deg");
    phone.say("setting.boom_height", "20 in");
    assert_eq!(drawn(&shown::narrow_drawings(&phone.state, Step::Spacing)), ["ground-narrow-en 400"]);
    assert_eq!(drawn(&shown::drawings(&phone.state, Step::Spacing)), ["ground-en 1000"]);
    assert_eq!(
        (step(&phone).mark, step(&phone).line.as_str()),
        (Mark::InOrder, "at 20 in the ground gets it evenly")
    );
    let found = shown::found(&phone.state, Step::Spacing);
    assert!(found[0].lead.starts_with("At 20 in and 110 deg"), "{found:?}");
    assert!(found.iter().any(|one| one.why.is_some()), "{found:?}");
}

#[test]
fn keys_try_out_a_height_and_the_ground_follows() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.say("sprayer.fan_angle", "80 deg");
    assert!(height(&phone).nudges.is_empty(), "nothing to make less");
    phone.say("setting.boom_height", "20 1/2 in");
    let keys: Vec<(String, String)> =
        height(&phone).nudges.into_iter().map(|key| (key.label, key.text)).collect();
    let key = |label: &str, text: &str| (label.to_string(), text.to_string());
    assert_eq!(keys, [key("1 in lower", "20 in"), key("1 in higher", "21 in")]);
    phone.say("setting.boom_height", "14 in");
    assert_eq!(
        (step(&phone).mark, step(&phone).line.as_str()),
        (Mark::Act, "at 14 in the ground gets it unevenly")
    );
    for _ in 0..16 {
        let higher = height(&phone).nudges[1].text.clone();
        phone.say("setting.boom_height", &higher);
    }
    assert_eq!(
        (step(&phone).line.as_str(), height(&phone).text.as_str()),
        ("at 30 in the ground gets it evenly", "30 in")
    );
    phone.say("setting.boom_height", "2 cm");
    assert_eq!(height(&phone).nudges.len(), 1, "no boom is carried at nothing");
    phone.say("setting.boom_height", "5 ft");
    assert!(height(&phone).nudges.is_empty());
}

#[test]
fn what_cannot_be_takes_nothing_else_with_it() {
    let mut phone = Phone::new();
    phone.boom("4, 4, 4");
    phone.say("sprayer.fan_angle", "175 deg");
    phone.say("setting.boom_height", "20 in");
    assert!(shown::narrow_drawings(&phone.state, Step::Spacing).is_empty());
    assert!(!step(&phone).in_the_way.is_empty(), "it is said there");
    phone.say("spacing.gaps", "20 in, 20 in, 20 in, 20 in, 20 in, 20 in, 20 in, 20 in, 20 in, 20 in, 20 in");
    assert!(
        phone.state.visit.as_ref().expect("a visit").outcome.spacing.is_some(),
        "the gaps are told all the same"
    );
}
