//! The sheets of real visits: what was reckoned to fit a page fits it, at the size that was reckoned.

#[path = "../../../../report/tests/common/mod.rs"]
mod common;

use report::layout::fitted;
use report::make::Readers;
use report::sheet::{Block, Run};
use report::style::SMALL;

use super::{file, laid, set};
use common::{DEMO, boom, faulty, readers, sheets, worked_out};

/// Sheets of a visit, set and read back.
fn check(text: &str) {
    let (visit, outcome) = worked_out(text);
    let all = readers();
    for (first, beside) in [(0, None), (3, None), (0, Some(2))] {
        let readers = Readers { first: &all[first], beside: beside.map(|beside: usize| &all[beside]) };
        for (name, sheet) in sheets(&readers, &visit, &outcome) {
            let document = set(&sheet);
            let sheet = fitted(sheet);
            if sheet.pages.iter().all(|page| page.run == Run::OnePage) {
                assert_eq!(document.pages().len(), sheet.pages.len(), "{name}");
                for (page, on_it) in sheet.pages.iter().zip(laid::laid(&document)) {
                    // Tags have scales of their own.
                    if page
                        .columns
                        .iter()
                        .flat_map(|one| &one.blocks)
                        .any(|block| matches!(block, Block::Tags(_)))
                    {
                        continue;
                    }
                    let smallest =
                        on_it.iter().map(|one| one.size).filter(|size| *size > 0.0).fold(f64::MAX, f64::min);
                    assert!(smallest >= SMALL * page.scale - 0.01, "{name}: {smallest} at {}", page.scale);
                }
            }
            file(&sheet);
        }
    }
}

#[test]
fn the_demo() {
    check(DEMO);
}

#[test]
fn booms_of_any_length() {
    check(&boom("Cluster", &[1], |_| "14".to_owned()));
    check(&faulty("Blue mounted boom", &[20], 1));
    check(&faulty("Three bodies", &[24, 24, 24], 4));
    check(&faulty(&"a very long name ".repeat(8), &[36], 3));
}
