//! The sheet to fill in: a place for every tip, and an example whose sums are right by the handbooks.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use report::make::{self, Maker, PaperFor, Readers};
use report::sheet::{Block, Sheet, Use};
use report::texts;
use units::UnitSystem;
use words::{Language, NumberFormat, Reader, Words};

fn paper(words: &Words, tips: u32, sections: &[u32]) -> Sheet {
    let of = PaperFor {
        tips,
        sections: sections.to_vec(),
        sprayer: "Blue mounted boom".into(),
        farm: "Willow Bend Farm".into(),
    };
    make::paper(&Readers::one(words), &of, Maker::default())
}

#[test]
fn every_tip_has_one_row() {
    for language in Language::ALL {
        for tips in [1, 5, 9, 10, 20, 25, 72, 216] {
            let sheet = paper(&Words::of(language), tips, &[]);
            let cells = sheet
                .pages
                .iter()
                .flat_map(|page| &page.columns[0].blocks)
                .filter_map(|block| match block {
                    Block::Table(table) if table.use_ == Use::Write && table.heads.len() >= 5 => Some(table),
                    _ => None,
                })
                .flat_map(|table| table.rows.iter().flat_map(|row| row.iter().step_by(5)))
                .filter_map(|cell| cell.parse::<u32>().ok());
            let mut numbers: Vec<u32> = cells.collect();
            numbers.sort_unstable();
            assert_eq!(numbers, (1..=tips).collect::<Vec<_>>(), "{language:?}");
        }
    }
}

#[test]
fn the_first_tip_of_each_section_says_so() {
    let sheet = texts(&paper(&Words::of(Language::English), 12, &[4, 4, 4])).join("\n");
    for said in ["1 (section 1)", "5 (section 2)", "9 (section 3)"] {
        assert!(sheet.contains(said), "{said}");
    }
}

/// The numbers of a line in order.
fn numbers(line: &str) -> Vec<f64> {
    line.split(|sign: char| !(sign.is_ascii_digit() || sign == '.'))
        .filter_map(|word| word.trim_end_matches('.').parse().ok())
        .collect()
}

fn line(sheet: &Sheet, holding: &str) -> String {
    texts(sheet)
        .into_iter()
        .find(|text| text.contains(holding) && text.contains('=') && !text.chars().any(|sign| sign == 'ñ'))
        .unwrap_or_else(|| panic!("no line with {holding}"))
}

#[test]
fn the_example_follows_the_handbook_formulas() {
    let sheet = paper(&Words::of(Language::English), 12, &[]);
    let all = texts(&sheet);
    // 5,940: Univ. of Illinois Extension, "60 Ways Farmers Can Protect Surface Water", no. 55.
    let rate =
        all.iter().find(|text| text.contains("× 5940 ÷") && text.contains("0.469 ÷ 28")).expect("the rate");
    let [mean, _, time, flow, again, constant, speed, spacing, shown] = numbers(rate)[..] else {
        panic!("{rate}");
    };
    assert!((mean * 60.0 / 128.0 / time - flow).abs() < 0.0006, "{rate}");
    assert!((again - flow).abs() < 1e-9 && (constant - 5940.0).abs() < 1e-9);
    // As precise as three digits of flow and speed let it be.
    assert!((5940.0 * flow / speed / spacing - shown).abs() < 0.06, "{rate}");
    // 4,084 (340 ft for 12 in, 204 ft for 20 in): Ohio State Univ. Extension, FABE-520 (2016), its table of courses.
    let course = line(&sheet, "4084 ÷ 20");
    assert!((numbers(&course)[2] - 204.0).abs() < 0.5, "{course}");
    // 88 ft a minute is 1 mph (common practice, from 5,280 ft and 60 min): 204 ft in 28 s.
    let speed_line = line(&sheet, "× 0.682 ÷ 28");
    assert!((numbers(&speed_line)[3] - 204.0 / 28.0 * 60.0 / 88.0).abs() < 0.006, "{speed_line}");
}

#[test]
fn the_metric_example_is_right_too() {
    let words = Words::new(Reader { units: UnitSystem::Metric, ..Reader::default() });
    let sheet = paper(&words, 12, &[]);
    // 600 × L/min ÷ (km/h × m): the customary metric form, from the definitions of the units.
    let all = texts(&sheet);
    let rate =
        all.iter().find(|text| text.contains("× 60000 ÷") && text.contains("0.06 ÷ 45")).expect("the rate");
    let [mean, _, time, flow, _, _, speed, spacing, shown] = numbers(rate)[..] else { panic!("{rate}") };
    assert!((mean / 1000.0 / (time / 60.0) - flow).abs() < 0.006, "{rate}");
    assert!((600.0 * flow / (speed * spacing / 100.0) - shown).abs() < 0.6, "{rate}");
}

#[test]
fn a_comma_stands_in_the_sums_where_the_reader_writes_one() {
    let words = Words::new(Reader { numbers: NumberFormat::Comma, ..Reader::default() });
    let sheet = texts(&paper(&words, 12, &[])).join("\n");
    assert!(sheet.contains("× 0,682 ÷") && sheet.contains("14,6"));
    assert!(!sheet.contains("0.682"));
}
