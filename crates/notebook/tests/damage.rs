//! Loss, change and forgery are named; what is whole is saved.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{
    Damage, FileDamage, Line, Notebook, Taken, line_text, read_file, read_line, verify, write_file,
};
use proptest::prelude::*;

use common::{BOOK, Pen, device, fact, of_file, visit};

const DEMO: &str = include_str!("../../../demo/willow-bend.toml");

#[test]
fn a_file_reads_back_exactly() {
    let (book, _) = of_file(DEMO);
    let text = write_file(&book);
    let content = read_file(&text).expect("a notebook file");
    assert_eq!((content.book, content.damage), (book.clone(), vec![]));
    assert_eq!(write_file(&read_file(&text).expect("again").book), text);
}

#[test]
fn later_versions_are_carried_byte_for_byte() {
    let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
    let odd = "{\"kind\" : \"fact\",  \"from\": \"the future\u{2028}\", \"n\": 1.50}\n\t ñ \\u00e9";
    let line = book.write(device(1), pen.later(visit(1), 9, odd));
    let content = read_file(&write_file(&book)).expect("a notebook file");
    let carried =
        content.book.line(line.id()).and_then(Line::written).map(|written| written.text().to_string());
    assert_eq!(carried.as_deref(), Some(odd));
    assert_eq!(notebook::folded(&content.book).unknown, vec![line.id()]);
}

#[test]
fn a_changed_line_is_named_and_not_taken() {
    let (book, _) = of_file(DEMO);
    let text = write_file(&book).replacen("204 ft", "240 ft", 1);
    let content = read_file(&text).expect("a notebook file");
    assert!(
        content.damage.iter().any(|damage| matches!(damage, FileDamage::Changed { .. })),
        "{:?}",
        content.damage
    );
    assert!(content.damage.contains(&FileDamage::Sum));
    assert_eq!(content.book.len(), book.len() - 1);
    assert!(matches!(verify(&content.book)[..], [Damage::Missing { .. }, ..]));
}

#[test]
fn a_line_sealed_anew_by_a_forger_breaks_the_chain() {
    let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
    let mut lines: Vec<Line> = Vec::new();
    for value in ["200 ft", "204 ft", "208 ft"] {
        lines.push(book.write(device(1), pen.draft(visit(1), fact("drive.course", value))));
    }
    // The forger writes a second line of his own with right check sums, but cannot change what the third goes on from.
    let mut forged = Notebook::new(BOOK);
    forged.take(lines[0].clone());
    let other = forged.write(device(1), pen.draft(visit(1), fact("drive.course", "400 ft")));
    forged.take(lines[2].clone());
    assert_eq!(verify(&forged), vec![Damage::BrokenChain { device: device(1), number: 3 }]);
    book.take(other);
    assert_eq!(verify(&book), vec![Damage::TwoInOnePlace { device: device(1), number: 2 }]);
}

#[test]
fn missing_lines_are_named() {
    let (book, _) = of_file(DEMO);
    let mut holed = Notebook::new(BOOK);
    for line in book.lines().filter(|line| !(5..=7).contains(&line.number()) && line.number() != 12) {
        holed.take(line.clone());
    }
    assert_eq!(
        verify(&holed),
        vec![
            Damage::Missing { device: device(1), first: 5, last: 7 },
            Damage::Missing { device: device(1), first: 12, last: 12 },
        ]
    );
}

#[test]
fn a_line_emptied_by_nobodys_word_is_named_and_filled_in_again() {
    let (book, _) = of_file(DEMO);
    let mut emptied = Notebook::new(BOOK);
    for line in book.lines() {
        emptied.take(if line.number() == 3 { line.clone().bare() } else { line.clone() });
    }
    assert_eq!(verify(&emptied), vec![Damage::Emptied { device: device(1), number: 3 }]);
    let whole = book.lines().find(|line| line.number() == 3).expect("line 3");
    assert_eq!(emptied.take(whole.clone()), Taken::FilledIn);
    assert_eq!(emptied, book);
}

#[test]
fn a_restored_copy_goes_on_as_a_new_device() {
    let (mut book, mut pen) = of_file(DEMO);
    let mut copy = read_file(&write_file(&book)).expect("a notebook file").book;
    let up_to = copy.held().last(device(1));
    let entry = notebook::Entry::Device {
        name: "the laptop, restored".to_string(),
        continues: Some((device(1), up_to)),
    };
    let about = notebook::About { kind: notebook::Kind::Notebook, id: notebook::ThingId::from_bits(1) };
    copy.write(device(2), pen.draft(about, entry));
    book.write(device(1), pen.draft(visit(1), fact("visit.notes", "written after the copy was made")));
    book.merge(&copy);
    assert_eq!(verify(&book), vec![]);
    assert_eq!(notebook::folded(&book).devices[&device(2)], "the laptop, restored");
}

#[test]
fn what_is_no_notebook_is_told_so() {
    assert_eq!(read_file("").err(), Some(FileDamage::NotANotebook));
    assert_eq!(read_file(DEMO).err(), Some(FileDamage::NotANotebook));
    let newer = "{\"evenswath_notebook\":2,\"notebook\":\"00000000-0000-0000-0000-000000000001\"}\n";
    assert_eq!(read_file(newer).err(), Some(FileDamage::Newer { version: 2 }));
    let (other, _) = of_file(DEMO);
    let mut foreign = Notebook::new(notebook::NotebookId::from_bits(2));
    assert_eq!(foreign.take(other.lines().next().expect("a line").clone()), Taken::Foreign);
}

/// The file as the first release wrote it. It is never made anew: every later program must read it.
#[test]
fn a_file_of_version_1_is_read_for_ever() {
    let content = read_file(include_str!("kept/version-1.jsonl")).expect("a notebook file");
    assert_eq!(content.damage, vec![]);
    assert_eq!(verify(&content.book), vec![]);
    let folded = notebook::folded(&content.book);
    assert_eq!(folded.unknown.len(), 1, "the line of version 9");
    let found = folded.visits.values().next().expect("its visit");
    assert_eq!(
        found.visit().expect("its file"),
        visit::file::read(DEMO_OF_VERSION_1.as_bytes()).expect("the file")
    );
    assert_eq!(folded.struck.len(), 1);
}

/// The visit file that the kept notebook was made of, as it was then.
const DEMO_OF_VERSION_1: &str = include_str!("kept/version-1.toml");

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn of_a_cut_file_everything_before_the_cut_is_saved(place in any::<prop::sample::Index>()) {
        let (book, _) = of_file(DEMO);
        let text = write_file(&book);
        let mut cut = place.index(text.len());
        while !text.is_char_boundary(cut) { cut -= 1; }
        let whole_lines = text[..cut].matches('\n').count();
        match read_file(&text[..cut]) {
            Ok(content) => {
                prop_assert!(content.book.len() + 1 >= whole_lines.min(book.len() + 1));
                prop_assert!(content.damage.contains(&FileDamage::CutOff));
            }
            Err(damage) => {
                prop_assert_eq!(damage, FileDamage::NotANotebook);
                prop_assert_eq!(whole_lines, 0);
            }
        }
    }

    #[test]
    fn any_bytes_are_read_or_refused_and_nothing_else(text in "\\PC{0,200}") {
        let _ = read_line(&text);
        let _ = read_file(&text);
    }

    #[test]
    fn one_changed_letter_is_always_noticed(at in any::<prop::sample::Index>(), letter in "[a-z0-9]") {
        let (book, _) = of_file(DEMO);
        let text = write_file(&book);
        let place = at.index(text.len());
        if text.is_char_boundary(place) && text.is_char_boundary(place + 1) && !text[place..].starts_with(&letter) {
            let changed = format!("{}{letter}{}", &text[..place], &text[place + 1..]);
            let noticed = match read_file(&changed) {
                Err(_) => true,
                Ok(content) => !content.damage.is_empty(),
            };
            prop_assert!(noticed, "at {place}");
        }
    }

    #[test]
    fn a_line_reads_back(field in "[a-z.]{1,20}", value in "\\PC{0,60}") {
        let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
        let line = book.write(device(3), pen.draft(visit(1), fact(&field, &value)));
        prop_assert_eq!(read_line(&line_text(&line)), Ok(line));
    }
}
