//! How long it takes from a tap on "next" to what is shown, at 60 tips: folded, worked out, ready to be read. Beside it what
//! must be done at least: the findings of the same visit, read once from its file.
// A bench tells what its own watch says, and fails by panicking.
#![allow(
    clippy::print_stdout,
    clippy::expect_used,
    clippy::panic,
    clippy::disallowed_types,
    clippy::disallowed_macros
)]
#![allow(clippy::disallowed_methods)]

#[path = "../tests/common/mod.rs"]
mod common;

use std::time::{Duration, Instant};

use common::Phone;
use units::UnitSystem;
use yard::{Event, Key, shown};

fn fastest(times: u32, mut work: impl FnMut()) -> Duration {
    (0..times)
        .map(|_| {
            let begun = Instant::now();
            work();
            begun.elapsed()
        })
        .min()
        .unwrap_or_default()
}

fn main() {
    let mut phone = Phone::new();
    phone.boom("12, 12, 12, 12, 12");
    phone.say("drive.course", "204 ft");
    phone.send(Event::RunTyped("28".to_string()));
    phone.cups(&["14.5", "14", "15", "14.5", "14.75"].repeat(12));
    let file = phone.visit().folded.file();
    let visit = visit::file::read(file.as_bytes()).expect("it reads");
    let least = fastest(20, || {
        std::hint::black_box(visit::findings::findings(&visit, UnitSystem::Us).expect("it checks"));
    });
    phone.send(Event::Go(yard::Screen::Cup));
    let key = fastest(20, || {
        phone.send(Event::Key(Key::Digit(1)));
        std::hint::black_box((shown::cup_screen(&phone.state), shown::small_row(&phone.state)));
        phone.send(Event::Key(Key::Rub));
    });
    let next = fastest(20, || {
        phone.send(Event::ToTip(30));
        phone.press("14.5");
        phone.send(Event::Next);
        std::hint::black_box((shown::cup_screen(&phone.state), shown::small_row(&phone.state)));
        phone.send(Event::Go(yard::Screen::Cup));
    });
    let told = |name: &str, took: Duration| println!("{name}\t{}", took.as_nanos());
    told("app_60_tips_findings_alone", least);
    told("app_60_tips_key_shown", key);
    told("app_60_tips_cup_kept_and_shown", next);
    let ratio = |one: Duration| one.as_secs_f64() / least.as_secs_f64();
    println!("beside the findings alone: a key {:.2}, a cup {:.2}", ratio(key), ratio(next));
}
