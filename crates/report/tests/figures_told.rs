//! The figures on a sheet are those of the visit's outcome, in both languages and as the reader writes them.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use report::make::{self, Maker, Readers};
use report::texts;
use units::{Amount, Kind, UnitSystem};
use words::{Language, NumberFormat, Reader, Words};

use common::{DEMO, worked_out};

fn said(words: &Words) -> String {
    let visit = visit::file::read(DEMO.as_bytes()).expect("the demo reads");
    let outcome = visit::findings::findings(&visit, words.reader().units).expect("the demo works out");
    texts(&make::visit(&Readers::one(words), &visit, &outcome, Maker::default())).join("\n")
}

#[test]
fn rate_tank_and_speed_stand_on_the_sheet() {
    let (_, outcome) = worked_out(DEMO);
    let rate = Amount::ranged(&outcome.rate.as_ref().expect("a rate").of_mix(), Kind::Rate);
    let tank = Amount::ranged(&outcome.tank.as_ref().expect("a tank").full.area, Kind::Area);
    let speed = Amount::ranged(&outcome.speed.as_ref().expect("a speed").speed.ranged(), Kind::Speed);
    for language in Language::ALL {
        for numbers in [NumberFormat::Point, NumberFormat::Comma] {
            let words = Words::new(Reader { language, numbers, ..Reader::default() });
            let sheet = said(&words);
            for amount in [&rate, &tank] {
                assert!(sheet.contains(&words.amount_number(amount)), "{language:?}: {amount:?}");
                let (low, high) = words.range_ends(amount).expect("a range");
                assert!(sheet.contains(&low) && sheet.contains(&high), "{language:?}: {amount:?}");
            }
            assert!(sheet.contains(&words.amount(&speed)));
        }
    }
}

#[test]
fn metric_sheets_have_metric_figures_and_no_others() {
    for language in Language::ALL {
        let words = Words::new(Reader { language, units: UnitSystem::Metric, ..Reader::default() });
        let sheet = said(&words);
        assert!(sheet.contains("L/ha") && sheet.contains("km/h"));
        // What a person wrote stays as it was written; what we worked out is metric.
        for never in ["gal/min", "acres"] {
            assert!(!sheet.contains(never), "{language:?} holds {never}");
        }
    }
}

#[test]
fn a_decimal_comma_leaves_no_decimal_point_in_what_we_worked_out() {
    let words = Words::new(Reader { numbers: NumberFormat::Comma, ..Reader::default() });
    let sheet = said(&words);
    assert!(sheet.contains("14,7"), "the rate");
    assert!(!sheet.contains("14.7") && !sheet.contains("13.6"), "rate or acres with a point");
}

#[test]
fn both_languages_tell_the_same_number_of_things() {
    let (visit, outcome) = worked_out(DEMO);
    let blocks = |language| {
        let words = Words::of(language);
        let sheet = make::visit(&Readers::one(&words), &visit, &outcome, Maker::default());
        sheet.pages.iter().map(|page| page.columns[0].blocks.len()).collect::<Vec<_>>()
    };
    assert_eq!(blocks(Language::English), blocks(Language::Spanish));
}
