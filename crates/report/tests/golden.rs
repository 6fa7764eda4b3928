//! The pages as they are handed out. `cargo xtask bless` renews them; read the difference before it is committed.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use report::make::Readers;
use words::{Language, Words};

use common::{DEMO, faulty, page_without_fonts, sheets, worked_out};

/// The most a page may hold without its fonts and cups, in bytes. Our own choice: drawings, tables, style.
const MOST_BYTES: usize = 66_000;
/// The most each tip may add: its cup, its row, its place to write. Our own choice.
const MOST_BYTES_A_TIP: usize = 900;

fn pages(of: &str, text: &str, only: &[&str]) {
    let (visit, outcome) = worked_out(text);
    for language in Language::ALL {
        let words = Words::of(language);
        for (name, sheet) in sheets(&Readers::one(&words), &visit, &outcome) {
            let page = page_without_fonts(&sheet);
            let tips = visit.machine.as_ref().map_or(0, visit::record::Machine::tips) as usize;
            assert!(page.len() < MOST_BYTES + tips * MOST_BYTES_A_TIP, "{of}, {name}: {} bytes", page.len());
            if only.contains(&name) {
                // The style is the same in all and stands in one golden file; the words and drawings in each.
                let body = page.split_once("<body>").map_or(page.as_str(), |(_, body)| body);
                insta::assert_snapshot!(format!("{of}-{name}-{}", language.tag()), body);
            }
        }
    }
}

#[test]
fn the_demo() {
    pages("demo", DEMO, &["visit", "cab", "paper", "before", "tags"]);
}

#[test]
fn a_long_boom() {
    pages("long", &faulty("Three bodies", &[72, 72, 72], 31), &["tags"]);
}

#[test]
fn only_the_spacing() {
    let text = "[visit]\nsprayer = \"Only the tape\"\n[sprayer]\nkind = \"boom\"\nsections = [4]\nspacing = \"20 in\"\n\
                [spacing]\ngaps = [\"20 in\", \"21.5 in\", \"18.5 in\"]\ntape_marks = \"1/4 in\"\n";
    pages("spacing", text, &["visit"]);
}

#[test]
fn an_empty_visit() {
    pages("empty", "", &["visit", "cab"]);
}

#[test]
fn the_style() {
    let words = Words::of(Language::English);
    let (visit, outcome) = worked_out("");
    let (_, sheet) = sheets(&Readers::one(&words), &visit, &outcome).remove(0);
    let page = page_without_fonts(&sheet);
    let style = page.split("<style>").nth(1).and_then(|rest| rest.split("</style>").next()).expect("a style");
    insta::assert_snapshot!("style", style);
}
