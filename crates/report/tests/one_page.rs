//! What must stay on one sheet of paper does, by our own reckoning; a browser and the PDF engine measure it besides.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use proptest::prelude::*;
use report::layout::fits;
use report::make::Readers;
use report::sheet::{Block, Run};
use report::style::SMALLEST_SCALE;

use common::{DEMO, faulty, readers, sheets, worked_out};

fn check(text: &str) {
    let (visit, outcome) = worked_out(text);
    let all = readers();
    let pairs = [(0, None), (2, None), (3, None), (0, Some(2))];
    for (first, beside) in pairs {
        let readers = Readers { first: &all[first], beside: beside.map(|beside: usize| &all[beside]) };
        for (name, sheet) in sheets(&readers, &visit, &outcome) {
            for (number, page) in sheet.pages.iter().enumerate() {
                assert!(page.scale >= SMALLEST_SCALE - 1e-9, "{name}, page {number}: {}", page.scale);
                if page.run == Run::OnePage {
                    assert!(
                        fits(sheet.paper, page, page.scale),
                        "{name}, page {number} does not fit at {}",
                        page.scale
                    );
                }
            }
        }
    }
}

#[test]
fn the_demo_fits() {
    check(DEMO);
}

#[test]
fn booms_of_any_length_fit() {
    for tips in [1, 2, 5, 7, 12, 20, 24, 25, 36, 48, 72, 73, 144, 145, 216] {
        check(&faulty("Blue mounted boom", &[tips], 4));
    }
    check(&faulty("Three bodies", &[72, 72, 72], 3));
    check(&faulty("All is wrong", &[20], 1));
}

#[test]
fn what_does_not_fit_the_first_page_stands_on_the_next() {
    let many = faulty(&"a very long name ".repeat(12), &[20], 2);
    let (visit, outcome) = worked_out(&many);
    let all = readers();
    let sheet = report::make::visit(
        &Readers { first: &all[0], beside: Some(&all[2]) },
        &visit,
        &outcome,
        Default::default(),
    );
    let numbers: Vec<usize> = sheet
        .pages
        .iter()
        .flat_map(|page| &page.columns[0].blocks)
        .filter_map(|block| match block {
            Block::Steps { from, steps } => Some(*from..from + steps.len()),
            _ => None,
        })
        .flatten()
        .collect();
    // English in front, the rest behind it, then the rest in Spanish: each language tells every step once.
    assert!(numbers.contains(&1) && numbers.len() > 3, "{numbers:?}");
    let last = numbers.iter().max().copied().unwrap_or(0);
    for number in 1..=last {
        assert!(numbers.contains(&number), "step {number} is told nowhere: {numbers:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 12, ..ProptestConfig::default() })]

    #[test]
    fn names_of_any_kind_fit(name in "\\PC{0,160}", tips in 1_u32..40, every in 1_u32..9) {
        check(&faulty(&name.replace(['"', '\\'], "'"), &[tips], every));
    }
}
