//! Visits made for tests, in our invented scenario.
#![allow(dead_code, reason = "each test takes what it needs")]
#![allow(clippy::expect_used, clippy::panic, reason = "a test fails by panicking")]

use report::Sheet;
use report::make::{self, Maker, PaperFor, Readers};
use visit::Visit;
use visit::findings::{Outcome, findings};
use words::{Language, Paper, Reader, Words};

/// A visit out of its file's text, worked out.
pub fn worked_out(text: &str) -> (Visit, Outcome) {
    let visit = visit::file::read(text.as_bytes()).unwrap_or_else(|errors| panic!("{errors}\n{text}"));
    let outcome = findings(&visit, units::UnitSystem::Us).unwrap_or_else(|error| panic!("{error}\n{text}"));
    (visit, outcome)
}

/// The demo of this repository.
pub const DEMO: &str = include_str!("../../../../demo/willow-bend.toml");

/// A boom with these sections whose cups say what `reading` says for each tip.
pub fn boom(name: &str, sections: &[u32], reading: impl Fn(u32) -> String) -> String {
    let tips: u32 = sections.iter().sum();
    let readings: Vec<String> = (1..=tips).map(reading).collect();
    format!(
        r#"
[visit]
sprayer = "{name}"
farm = "Willow Bend Farm"
date = "2027-04-14"
operator = "T. Marsh"
[sprayer]
kind = "boom"
sections = {sections:?}
spacing = "20 in"
tip_size = "03"
tank = "600 gal"
held_by = "constant_pressure"
[setting]
gear = "3rd low"
engine_speed = "1700 rpm"
pressure = "28 psi"
pressure_read_at = "boom"
[drive]
course = "204 ft"
runs = [{{ time = "27.6 s" }}, {{ time = "28.3 s" }}]
[catch]
time = "28 s"
cup_marks = "1/2 fl oz"
limit = "10 %"
[[catch.round]]
after = "as found"
readings = [{}]
[target]
rate = "15 gal/ac"
[[product]]
name = "Product A"
rate = "2 pt/ac"
[job]
area = "400 ac"
"#,
        readings.join(", ")
    )
}

/// A boom whose tips are as often faulty as `every` says: too much, too little, plugged, not caught by turns.
pub fn faulty(name: &str, sections: &[u32], every: u32) -> String {
    boom(name, sections, |tip| {
        if !tip.is_multiple_of(every) {
            return ["14.5", "14", "15"][(tip % 3) as usize].to_string();
        }
        ["17", "12", "0", "\"-\"", "13"][((tip / every) % 5) as usize].to_string()
    })
}

/// Readers of both languages on both papers.
pub fn readers() -> Vec<Words> {
    let mut all = Vec::new();
    for language in Language::ALL {
        for paper in [Paper::Letter, Paper::A4] {
            all.push(Words::new(Reader { language, paper, ..Reader::default() }));
        }
    }
    all
}

/// Every sheet of a visit.
pub fn sheets(readers: &Readers<'_>, visit: &Visit, outcome: &Outcome) -> Vec<(&'static str, Sheet)> {
    let maker = Maker::default();
    let tips = visit.machine.as_ref().map_or(12, visit::record::Machine::tips);
    let of = PaperFor { tips, sections: Vec::new(), sprayer: String::new(), farm: String::new() };
    let mut sheets = vec![
        ("visit", make::visit(readers, visit, outcome, maker)),
        ("cab", make::cab(readers, visit, outcome, maker)),
        ("paper", make::paper(readers, &of, maker)),
        ("before", make::before(readers, maker)),
    ];
    sheets.extend(make::cups(readers, visit, outcome, maker).map(|sheet| ("cups", sheet)));
    sheets.extend(make::tags(readers, visit, outcome, maker).map(|sheet| ("tags", sheet)));
    sheets
}

/// The page of a sheet without its fonts, which are the same in all and large.
pub fn page_without_fonts(sheet: &Sheet) -> String {
    report::html::page(sheet)
        .lines()
        .filter(|line| !line.starts_with("@font-face"))
        .map(|line| format!("{line}\n"))
        .collect()
}
