//! Every key that the app's state and its views say something by stands in both languages.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking
#![allow(clippy::disallowed_methods)] // a test reads the source

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use calibration::diagnosis::CheckKind;
use visit::file::{SECTIONS, Shape};
use words::{Language, Words};
use yard::Plan;
use yard::shown::choice_key;

fn rust_files(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("the folder reads") {
        let path = entry.expect("its entry reads").path();
        if path.is_dir() {
            rust_files(&path, found);
        } else if path.extension().is_some_and(|end| end == "rs") {
            found.push(path);
        }
    }
}

/// The keys that stand in the source as text: `"yard-…"`, `"safe-…"` and whatever else has the app's beginnings.
fn written_keys() -> BTreeSet<String> {
    let mut files = Vec::new();
    for folder in ["src", "../web/src"] {
        rust_files(&Path::new(env!("CARGO_MANIFEST_DIR")).join(folder), &mut files);
    }
    let mut keys = BTreeSet::new();
    for file in files {
        let text = std::fs::read_to_string(&file).expect("the file reads");
        for quoted in text.split('"') {
            let is_key = ["yard-", "likely-", "safe-", "step-", "field-", "choice-", "word-", "sheet-"]
                .iter()
                .any(|begin| quoted.starts_with(begin) && quoted.len() > begin.len())
                && quoted.bytes().all(|sign| sign.is_ascii_alphanumeric() || sign == b'-' || sign == b'_');
            // A beginning that another part is put behind is held to below.
            if is_key && !quoted.ends_with('-') {
                keys.insert(quoted.to_string());
            }
        }
    }
    keys
}

/// The keys that are put together: of steps, fields and choices.
fn made_keys() -> BTreeSet<String> {
    let mut keys = BTreeSet::new();
    for (step, _) in Plan::default().steps("boom") {
        keys.insert(format!("step-{}", step.word()));
        keys.insert(format!("step-{}-purpose", step.word()));
    }
    for section in SECTIONS.iter().filter(|section| !section.name.ends_with(".setting")) {
        for field in section.fields {
            let name = format!("{}.{}", section.name, field.name);
            keys.insert(format!("field-{}", name.replace('.', "_")));
            if let Shape::Word(list) = field.shape {
                keys.extend(list.iter().map(|word| choice_key(&name, word)));
            }
        }
    }
    for kind in CheckKind::ALL {
        keys.insert(format!("likely-how_{}", kind.word()));
        keys.insert(format!("check-{}", kind.word()));
    }
    for is in report::make::TIP_IS {
        keys.insert(format!("tip_likely-{is}"));
    }
    keys
}

#[test]
fn every_key_is_there_in_both_languages() {
    let written = written_keys();
    assert!(written.len() > 40, "{written:?}");
    let made = made_keys();
    assert!(made.len() > 100, "{made:?}");
    let mut lacking = Vec::new();
    for language in Language::ALL {
        let words = Words::of(language);
        lacking.extend(
            written
                .union(&made)
                .filter(|key| !words.has(key))
                .map(|key| format!("{} lacks {key}", language.tag())),
        );
    }
    assert!(lacking.is_empty(), "{}", lacking.join("\n"));
}

#[test]
fn nothing_in_the_apps_words_is_said_by_nobody() {
    let written = written_keys();
    let made = made_keys();
    let (_, text) = words::sources(Language::English)
        .iter()
        .find(|(name, _)| *name == "yard")
        .expect("the app's words are there");
    let unsaid: Vec<&str> = text
        .lines()
        .filter_map(|line| line.split_once(" = ").map(|(key, _)| key))
        .filter(|key| key.contains('-') && !key.starts_with([' ', '#']))
        .filter(|key| !written.contains(*key) && !made.contains(*key))
        .collect();
    assert!(unsaid.is_empty(), "{}", unsaid.join("\n"));
}
