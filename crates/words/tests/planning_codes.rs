//! Every finding, error and working of planning has its sentence in both languages, and a new one without it fails.

#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

#[path = "planning/errors.rs"]
mod errors;
#[path = "planning/findings.rs"]
mod findings;

use std::collections::BTreeSet;
use std::path::Path;

use planning::{IngredientKind, ProductError, RateError, TipRange, WrittenRate, loads};
use units::{Arg, Coded, Pressure, QuantityError, UnitSystem};
use words::{Language, Reader, Words};

use errors::all_errors;
use findings::{all_findings, all_workings, job, products};

/// Where the catalogue is meant to say it otherwise than the code: there "a volume on an area cannot be".
const SAID_OTHERWISE: &[&str] = &["quantity_negative"];

/// English that must not stand in a Spanish sentence.
const ENGLISH: &[&str] = &[" the ", " of ", " is ", " and ", " or ", " must ", " tank", " rate", " tip"];

/// Arguments that hold letters as a person wrote them, or money.
const WRITTEN: &[&str] = &[
    "name", "rate", "limit", "least", "most", "given", "liquid", "weight", "price", "money", "low", "high",
    "one", "other",
];

fn check_args(words: &Words, coded: &dyn Coded) {
    // What a number carries is its own affair; here it is only handed on.
    if coded.code().starts_with("quantity_") {
        return;
    }
    for (name, arg) in coded.args().iter() {
        match arg {
            Arg::Text(text) => {
                assert!(WRITTEN.contains(name), "{}: {name} holds \"{text}\"", coded.code());
            }
            Arg::Word { code, .. } => {
                assert!(words.has(&format!("word-{code}")), "word-{code}");
            }
            _ => {}
        }
    }
}

/// English and Spanish, each in US units and in metric ones.
fn readers() -> Vec<Words> {
    let of = |language, units| Words::new(Reader { language, units, ..Reader::default() });
    let both = |language| [of(language, UnitSystem::Us), of(language, UnitSystem::Metric)];
    Language::ALL.into_iter().flat_map(both).collect()
}

fn check(coded: &dyn Coded, words: &Words) -> String {
    let Reader { language, units, .. } = words.reader();
    let key = format!("{language:?} {} {:?}", coded.code(), coded.case());
    let sentence = words.coded(coded).unwrap_or_else(|| panic!("no {key}"));
    let action = words.coded_action(coded);
    assert_eq!(action.is_some(), coded.hint().is_some(), "{key}: {action:?}");
    let whole = format!("{sentence} {}", action.clone().unwrap_or_default());
    // A brace may only be one that was given; what is left unfilled shows as one.
    let braces = |text: &str| text.matches('{').count();
    assert_eq!(braces(&whole), braces(&coded.to_string()), "{key}: {whole}");
    assert!(!whole.contains(coded.code()), "{key}: {whole}");
    check_args(words, coded);
    match (language, units) {
        (Language::English, UnitSystem::Us) if !SAID_OTHERWISE.contains(&coded.code()) => {
            assert_eq!(sentence, coded.to_string(), "{key}");
            assert_eq!(action, coded.hint(), "{key}");
        }
        (Language::English, _) => {}
        (Language::Spanish, _) => {
            for english in ENGLISH {
                assert!(!whole.contains(english), "{key}: {whole}");
            }
        }
    }
    sentence
}

fn check_in_all(coded: &dyn Coded, readers: &[Words]) {
    let said: Vec<String> = readers.iter().map(|words| check(coded, words)).collect();
    assert_ne!(said.first(), said.last(), "{} is not translated", coded.code());
}

#[test]
fn findings_are_said_in_both_languages() {
    let readers = readers();
    for finding in all_findings() {
        check_in_all(&finding, &readers);
    }
}

#[test]
fn errors_are_said_in_both_languages() {
    let readers = readers();
    for error in all_errors() {
        check_in_all(error.as_ref(), &readers);
    }
}

/// The name under which the catalogue keeps a text; the same rule as the crate's own.
fn key(text: &str) -> String {
    let mut key = String::new();
    for sign in text.chars() {
        if sign.is_ascii_alphanumeric() {
            key.push(sign.to_ascii_lowercase());
        } else if !key.ends_with('_') && !key.is_empty() {
            key.push('_');
        }
        if key.len() >= 60 {
            break;
        }
    }
    key.trim_end_matches('_').to_string()
}

#[test]
fn workings_are_written_in_both_languages() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    for working in all_workings() {
        assert!(english.has(&format!("working-{}", working.code)), "{}", working.code);
        assert_ne!(english.working_title(&working), spanish.working_title(&working));
        assert_eq!(english.formula(&working), working.formula);
        assert_ne!(spanish.formula(&working), working.formula);
        for figure in &working.figures {
            assert!(
                english.has(&format!("figure-{}", key(figure.name))),
                "{}: {}",
                working.code,
                figure.name
            );
            assert_eq!(english.figure_name(figure), figure.name);
            if let Arg::Word { code, .. } = figure.value {
                assert!(english.has(&format!("word-{code}")), "{code}");
            }
        }
        assert_eq!(english.working(&working), working.lines(UnitSystem::Us));
        assert_ne!(english.working(&working), spanish.working(&working));
    }
}

#[test]
fn our_own_words_about_a_source_are_translated() {
    let (english, spanish) = (Words::of(Language::English), Words::of(Language::Spanish));
    let mut sources: BTreeSet<&str> = all_workings().iter().map(|working| working.source).collect();
    sources.extend(all_findings().iter().filter_map(|finding| finding.limit_source));
    sources.insert(TipRange::flat_fan().source());
    sources
        .extend(TipRange::from_table(Pressure::psi(15.0), Pressure::psi(60.0)).map(|range| range.source()));
    let mut own = 0;
    for source in sources {
        assert_eq!(english.source(source), source);
        // A publication begins with its publisher's name; what is ours to say begins small.
        if source.starts_with(char::is_lowercase) {
            assert_ne!(spanish.source(source), source);
            own += 1;
        }
    }
    assert!(own >= 5, "{own}");
}

/// The string literals of a text, in order.
fn literals(text: &str) -> Vec<String> {
    text.split('"').skip(1).step_by(2).map(str::to_string).collect()
}

/// What follows each mark in the sources, up to an end, in all files of the crate but its tests.
#[expect(clippy::disallowed_methods, reason = "the test reads the sources it holds the catalogue against")]
fn behind(folder: &Path, mark: &str, end: &str, found: &mut Vec<String>) {
    for entry in std::fs::read_dir(folder).expect("the sources stand beside this crate") {
        let path = entry.expect("a file").path();
        if path.is_dir() {
            behind(&path, mark, end, found);
        } else {
            let text = std::fs::read_to_string(&path).expect("a source is text");
            found.extend(
                text.split(mark)
                    .skip(1)
                    .map(|part| part.split_once(end).map_or(part, |(before, _)| before).to_string()),
            );
        }
    }
}

fn in_sources(mark: &str, end: &str) -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../planning/src");
    let mut found = Vec::new();
    behind(&folder, mark, end, &mut found);
    found
}

#[test]
fn every_code_in_the_sources_is_covered() {
    let covered: BTreeSet<String> = all_findings().iter().map(|finding| finding.code().to_string()).collect();
    let written: BTreeSet<String> =
        in_sources("Finding::new(", ")").iter().filter_map(|text| literals(text).first().cloned()).collect();
    assert_eq!(covered, written);
    assert!(written.len() > 30);

    let covered: BTreeSet<String> = all_errors().iter().map(|error| error.code().to_string()).collect();
    let written: BTreeSet<String> =
        in_sources("fn code(&self)", "\n    }\n").iter().flat_map(|text| literals(text)).collect();
    let missing: Vec<&String> = written.difference(&covered).collect();
    assert!(missing.is_empty(), "{missing:?}");
    // Besides its own, planning hands on what is wrong with a number in a rate.
    assert!(covered.difference(&written).all(|code| code.starts_with("quantity_")));
    assert!(written.len() > 50);

    let covered: BTreeSet<String> = all_workings().iter().map(|working| working.code.to_string()).collect();
    let written: BTreeSet<String> =
        in_sources("Working::new(", ",").iter().filter_map(|text| literals(text).first().cloned()).collect();
    assert_eq!(covered, written);
}

#[test]
fn both_cases_of_a_code_are_covered() {
    let cases: BTreeSet<Option<&str>> = all_findings().iter().map(Coded::case).collect();
    assert_eq!(cases, [None, Some("by_ground"), Some("by_mix")].into());
    let cases: BTreeSet<Option<&str>> = all_errors().iter().map(|error| error.case()).collect();
    assert_eq!(cases, [None, Some("in_rate"), Some("named"), Some("named_one_reading")].into());
}

#[test]
fn a_measure_is_read_in_jugs_of_the_readers_words() {
    let spanish = Words::of(Language::Spanish);
    let plan = loads(&job(25.0, 20.0, 500.0), &products(&["A: 3 pt/ac", "B: 2 fl oz/ac"])).expect("loads");
    let load = plan.full.expect("a load");
    let said: Vec<String> = load
        .products
        .iter()
        .map(|product| spanish.arg(&Arg::Parts(product.measure.clone().expect("measured").parts)))
        .collect();
    assert_eq!(said, ["9 gal 3 pintas", "3 pintas 2 oz líq"]);
}

#[test]
fn a_rate_without_a_strength_asks_for_the_one_of_its_label() {
    let english = Words::of(Language::English);
    for (text, kind, strength) in [
        ("1.5 lb ai/ac", IngredientKind::Active, "4 lb ai/gal"),
        ("1.5 lb ae/ac", IngredientKind::Acid, "3.8 lb ae/gal"),
    ] {
        let error = WrittenRate::parse(text).expect_err(text);
        assert!(matches!(&error, RateError::StrengthNeeded { kind: found, .. } if *found == kind));
        assert!(english.hint(&error).expect("a hint").contains(strength));
        let named = ProductError::Rate { name: "NAME".to_string(), error };
        assert!(english.hint(&named).expect("a hint").contains(strength));
    }
    // What would do for a number alone is not what would do for a rate.
    let number = QuantityError::NotANumber { given: "x".to_string() };
    assert_ne!(RateError::Number(number.clone()).hint(), number.hint());
}
