//! Both languages say the same things: no English is left in Spanish, and no figure, code or key of the JSON follows the
//! language or the decimal mark.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod both;
mod common;

use both::{BOOMS_AT_FAULT, MISTYPED, STEPS, VISITS, VISITS_AT_FAULT, file_of};
use common::{Ran, run, run_with};
use serde_json::Value;
use words::{Language, Words};

/// Words of English that no Spanish sentence has. Names of options and fields, and what was typed, are left out before.
const ENGLISH: &[&str] = &[
    "the", "of", "and", "is", "are", "was", "were", "with", "must", "but", "for", "from", "it", "its",
    "that", "this", "which", "not", "be", "or", "than", "more", "less", "needed", "given", "give", "write",
    "tip", "mean", "boom", "spread", "gap", "gaps", "width", "plugged", "worn", "again", "likely", "limit",
    "outside", "within", "cannot", "catch", "cup", "cups", "off", "about", "driven", "speed", "rate",
    "units", "there", "here", "nothing", "when", "they", "them", "would", "has", "have", "less", "runs",
    "clean", "watch", "by", "at", "each", "every", "unknown", "flow", "pressure", "rated", "density", "time",
    "length", "spacing", "marks", "hand", "water", "course", "tank", "sum",
];

/// What a person reads of a run, without what is the same in every language: options, fields, files, quoted text,
/// and the sources of a working, which keep their names.
fn sentences(text: &str) -> String {
    let mut plain = String::new();
    let mut quoted = false;
    for line in text.lines().filter(|line| !line.trim_start().starts_with("fuente: ")) {
        // What another program says of a mistake is its own.
        let line = line.split("(detalle ").next().unwrap_or_default();
        // What is quoted may go on in the next line, but not in the next paragraph.
        quoted &= !line.trim().is_empty();
        let mut bracketed = 0_u32;
        for sign in line.chars() {
            match sign {
                '"' | '`' => quoted = !quoted,
                '“' => quoted = true,
                '”' => quoted = false,
                '[' | '<' => bracketed += 1,
                ']' | '>' => bracketed = bracketed.saturating_sub(1),
                _ if !quoted && bracketed == 0 => plain.push(sign),
                _ => {}
            }
        }
        plain.push('\n');
    }
    plain
}

/// The words of a text that are words of a sentence: not an option, not a name with its meaning in brackets behind it.
fn words_of(text: &str) -> Vec<String> {
    let tokens: Vec<&str> = text.split_whitespace().collect();
    let mut words = Vec::new();
    for (place, token) in tokens.iter().enumerate() {
        let explained = tokens.get(place + 1).is_some_and(|next| next.starts_with('('));
        let bare = token.trim_matches(|sign: char| !sign.is_alphanumeric());
        let file = bare.contains('.') && bare.contains(char::is_alphabetic);
        let named = token.starts_with("--") || bare.contains('-') || file;
        let assigned = tokens.get(place + 1) == Some(&"=");
        if explained || named || assigned {
            continue;
        }
        words.extend(
            token
                .split(|sign: char| !(sign.is_alphanumeric() || sign == '_'))
                .filter(|word| !word.is_empty())
                .map(str::to_lowercase),
        );
    }
    words
}

/// Names that a mistake or a help text may hold: commands, parts and fields of a visit, and what may be typed there.
fn names() -> Vec<String> {
    let commands = ["course", "speed", "rate", "flow", "spacing", "catch", "load", "visit"];
    // Kinds of sprayer, and the word in a rate of active ingredient: 1.5 lb ai/ac at 4 lb ai/gal.
    let typed = ["boom", "band", "hand", "at"];
    let mut names: Vec<String> = commands.into_iter().chain(typed).map(str::to_string).collect();
    for section in visit::file::SECTIONS {
        names.extend(section.name.split('.').map(str::to_string));
        names.extend(section.fields.iter().map(|field| field.name.to_string()));
    }
    for (part, fields) in visit::boom::BOOM_PARTS {
        names.extend(part.split('.').map(str::to_string));
        names.extend(fields.iter().map(|field| (*field).to_string()));
    }
    names
}

/// A text that a reader of Spanish gets; what is wrong with it is told.
fn wrong_with(text: &str, names: &[String]) -> Vec<String> {
    let (plain, known) = (sentences(text), self::names());
    let mut wrong = Vec::new();
    // A key that nobody wrote shows itself.
    let keys = ["line-", "page-", "at-", "why-", "help-", "value-", "frame-", "mistyped-", "keep_doubtful-"];
    wrong.extend(
        plain
            .split_whitespace()
            .filter(|token| keys.iter().any(|key| token.starts_with(key)))
            .map(|token| format!("the key {token}")),
    );
    for word in words_of(&plain) {
        if ENGLISH.contains(&word.as_str()) && !names.contains(&word) {
            wrong.push(format!("the English word {word}"));
        }
        if word.contains('_') && !known.contains(&word) {
            wrong.push(format!("the key {word}"));
        }
    }
    if plain.contains("{ $") || plain.contains("{$") || plain.contains('{') && !plain.contains("{ ") {
        wrong.push("an argument that was not put in".to_string());
    }
    wrong
}

fn both(args: &[&str], input: &[u8]) -> (Ran, Ran) {
    let run = |language: &str| run_with(&[args, &["--lang", language]].concat(), input);
    (run("en"), run("es"))
}

/// Everything wrong with a run in Spanish beside the same run in English.
fn compare(args: &[&str], input: &[u8], names: &[String], wrong: &mut Vec<String>) {
    let (english, spanish) = both(args, input);
    let mut tell = |what: String| wrong.push(format!("{args:?}: {what}\n{}", spanish.all()));
    if english.status != spanish.status {
        tell(format!("status {} and {}", english.status, spanish.status));
    }
    if english.all() == spanish.all() {
        tell("the same as in English".to_string());
    }
    let found = wrong_with(&spanish.all(), names);
    if !found.is_empty() {
        tell(found.join(", "));
    }
}

fn told(wrong: &[String]) {
    assert!(wrong.is_empty(), "{} at fault\n\n{}", wrong.len(), wrong.join("\n\n"));
}

#[test]
fn no_answer_holds_english() {
    let mut wrong = Vec::new();
    for args in STEPS {
        for more in [&[][..], &["--units", "metric", "--why"]] {
            compare(&[args, more].concat(), b"", &[], &mut wrong);
        }
    }
    told(&wrong);
}

#[test]
fn no_visit_holds_english() {
    let mut wrong = Vec::new();
    for name in VISITS {
        for more in [&[][..], &["--units", "metric", "--why"]] {
            compare(&[&["visit", "check", "-"], more].concat(), file_of(name).as_bytes(), &[], &mut wrong);
        }
    }
    told(&wrong);
}

#[test]
fn no_mistake_is_told_in_english() {
    let (names, mut wrong) = (names(), Vec::new());
    for args in MISTYPED {
        compare(args, b"", &names, &mut wrong);
        if run(args).status != 2 {
            wrong.push(format!("{args:?} is answered"));
        }
    }
    for file in VISITS_AT_FAULT {
        compare(&["visit", "check", "-"], file.as_bytes(), &names, &mut wrong);
    }
    for file in BOOMS_AT_FAULT {
        compare(&["boom", "-"], file.as_bytes(), &names, &mut wrong);
    }
    told(&wrong);
}

#[test]
fn no_help_holds_english() {
    let mut wrong = Vec::new();
    for of in [
        "",
        "course",
        "speed",
        "rate",
        "flow",
        "spacing",
        "catch",
        "load",
        "boom",
        "visit",
        "visit check",
        "visit new",
    ] {
        let of: Vec<&str> = of.split_whitespace().collect();
        for help in ["--help", "-h"] {
            let args = [&of[..], &[help]].concat();
            let (english, spanish) = both(&args, b"");
            assert_eq!((english.status, spanish.status), (0, 0));
            assert_ne!(english.out, spanish.out);
            // Examples are typed; what comes before them is read.
            let read = spanish.out.split("\nEjemplo").next().unwrap_or_default();
            let found = wrong_with(read, &names());
            if !found.is_empty() {
                wrong.push(format!("{args:?}: {found:?}\n{}", spanish.out));
            }
        }
    }
    told(&wrong);
}

/// What is read by people in an answer, by its key; all else is for programs.
const READ: &[&str] = &["text", "action", "message", "measure_text", "what", "of", "smaller"];

/// Holds two answers side by side: what programs read must be the same; a sentence that is the same is told.
fn side_by_side(place: &str, english: &Value, spanish: &Value, same: &mut Vec<String>) {
    match (english, spanish) {
        (Value::Object(one), Value::Object(other)) => {
            let keys = |object: &serde_json::Map<String, Value>| object.keys().cloned().collect::<Vec<_>>();
            assert_eq!(keys(one), keys(other), "{place}");
            for (key, value) in one {
                let here = format!("{place}/{key}");
                if key == "args" {
                    assert_eq!(value, &other[key], "{here}");
                    continue;
                }
                let read = READ.contains(&key.as_str()) || key == "why" && value.is_string();
                match (value.as_str(), other[key].as_str()) {
                    (Some(text), Some(told)) if read => {
                        // Amounts and numbers by themselves read alike in both.
                        if text == told && text.split_whitespace().count() > 3 {
                            same.push(format!("{here}: {text}"));
                        }
                        let found = wrong_with(told, &[]);
                        if !found.is_empty() {
                            same.push(format!("{here}: {}: {told}", found.join(", ")));
                        }
                    }
                    _ => side_by_side(&here, value, &other[key], same),
                }
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{place}");
            for (number, (one, other)) in one.iter().zip(other).enumerate() {
                side_by_side(&format!("{place}/{number}"), one, other, same);
            }
        }
        _ => assert_eq!(english, spanish, "{place}"),
    }
}

#[test]
fn only_what_people_read_of_an_answer_follows_the_language() {
    let mut same = Vec::new();
    let mut compared = 0;
    let visits = VISITS.iter().map(|name| (vec!["visit", "check", "-"], file_of(name)));
    let steps = STEPS.iter().map(|args| (args.to_vec(), String::new()));
    for (args, input) in steps.chain(visits) {
        let args = [&args[..], &["--json"]].concat();
        let (english, spanish) = both(&args, input.as_bytes());
        assert_eq!(english.status, spanish.status, "{args:?}");
        side_by_side(&args.join(" "), &english.json(), &spanish.json(), &mut same);
        // Nor does a decimal mark change anything but what people read.
        let comma =
            run_with(&[&args[..], &["--lang", "es", "--numbers", "comma"]].concat(), input.as_bytes());
        side_by_side(&args.join(" "), &english.json(), &comma.json(), &mut Vec::new());
        compared += 1;
    }
    same.sort();
    same.dedup();
    assert!(same.is_empty(), "{}", same.join("\n"));
    assert!(compared > 60, "{compared}");
}

/// Every text in quotes in the sources of the command line.
fn texts_in_the_sources() -> Vec<String> {
    let mut texts = Vec::new();
    let mut folders = vec![common::root().join("crates/cli/src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("the sources") {
            let path = entry.expect("a file").path();
            if path.is_dir() {
                folders.push(path);
            } else {
                let source = std::fs::read_to_string(path).expect("a source");
                texts.extend(source.split('"').skip(1).step_by(2).map(str::to_string));
                texts.extend(source.split('"').skip(2).step_by(2).map(str::to_string));
            }
        }
    }
    texts
}

#[test]
fn every_sentence_of_the_command_line_is_said_and_every_key_has_its_sentence() {
    let texts = texts_in_the_sources();
    let written = |language: Language| -> Vec<String> {
        let (_, file) =
            words::sources(language).iter().find(|(name, _)| *name == "command").expect("the file");
        let keys = file
            .lines()
            .filter(|line| !line.starts_with([' ', '#']))
            .filter_map(|line| line.split_once(" ="));
        keys.map(|(key, _)| key.to_string()).collect()
    };
    // Help is held to the command itself by a test beside it; words and workings are found by what they name.
    let elsewhere =
        ["help-", "value-", "word-", "working-", "formula-", "figure-", "source-", "mistyped_value-"];
    for language in Language::ALL {
        let words = Words::of(language);
        for key in
            written(language).iter().filter(|key| !elsewhere.iter().any(|start| key.starts_with(start)))
        {
            let code = key.split('-').next().unwrap_or_default().to_string();
            assert!(texts.contains(key) || texts.contains(&code), "nobody says {key}");
        }
        let starts = ["line-", "page-", "at-", "why-", "frame-", "mistyped-", "keep_doubtful-"];
        let said = texts.iter().filter(|text| starts.iter().any(|start| text.starts_with(start)));
        let said: Vec<&String> = said.filter(|text| !text.contains([' ', '{'])).collect();
        assert!(said.len() > 100, "{}", said.len());
        for key in said {
            assert!(words.has(key), "{key} has no sentence in {}", language.own_name());
        }
    }
}

#[test]
fn the_four_settings_do_not_follow_from_one_another() {
    let args = ["rate", "--flow", "0.3 gal/min", "--speed", "5 mph", "--width", "20 in"];
    let first = |more: &[&str]| {
        let ran = run(&[&args, more].concat());
        assert_eq!(ran.status, 0, "{ran:?}");
        ran.out.lines().next().unwrap_or_default().to_string()
    };
    let english = first(&[]);
    assert!(english.starts_with("17.8 gal/ac, most likely 17."), "{english}");
    assert_eq!(first(&["--paper", "a4"]), english);
    assert_eq!(first(&["--numbers", "comma"]), english.replace('.', ","));
    let spanish = first(&["--lang", "es"]);
    assert!(spanish.starts_with("17.8 gal/ac, lo más probable: 17."), "{spanish}");
    assert_eq!(first(&["--lang", "es", "--numbers", "comma"]), spanish.replace('.', ","));
    let metric = first(&["--lang", "es", "--units", "metric"]);
    assert!(metric.starts_with("167 L/ha, lo más probable: "), "{metric}");
    // The language of the machine decides nothing.
    let ran = common::finish(
        common::command().env("LANG", "es_MX.UTF-8").env("LC_ALL", "de_DE.UTF-8").args(args),
        b"",
    );
    assert_eq!(ran.out.lines().next(), Some(english.as_str()));
}
