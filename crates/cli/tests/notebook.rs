//! `evenswath notebook`: visits in and out, a whole notebook in one file and back, what is damaged named, what is whole
//! saved, in both languages.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::path::Path;

use common::{folder, run};
use serde_json::Value;

const DEMO: &str = "demo/willow-bend.toml";

fn told(args: &[&str]) -> Value {
    let ran = run(&[args, &["--json"]].concat());
    assert_eq!(ran.status, 0, "{args:?}: {ran:?}");
    ran.json()
}

fn name(path: &Path) -> &str {
    path.to_str().expect("UTF-8")
}

/// A notebook with the demo in it, and its folder.
fn with_demo(of: &str) -> (std::path::PathBuf, Value) {
    let place = folder(&format!("notebook-{of}")).join("book");
    let json = told(&["notebook", "import", name(&place), DEMO]);
    (place, json)
}

#[test]
fn a_visit_goes_in_and_comes_out_saying_the_same() {
    let (place, json) = with_demo("visit");
    assert!(json["files"][0]["new"].as_u64().is_some_and(|lines| lines > 40), "{json}");
    let file = told(&["notebook", "visit", name(&place)])["file"].as_str().expect("a file").to_string();
    let back = place.with_file_name("back.toml");
    std::fs::write(&back, file).expect("written");
    let (before, after) = (told(&["visit", "check", DEMO]), told(&["visit", "check", name(&back)]));
    assert_eq!(before, after);
}

#[test]
fn a_notebook_goes_into_one_file_and_back_exactly() {
    let (place, _) = with_demo("file");
    let file = place.with_file_name("book.jsonl");
    let json = told(&["notebook", "export", name(&place), "--to", name(&file)]);
    let lines = json["lines"].as_u64().expect("lines");
    assert!(told(&["notebook", "verify", name(&file)])["whole"].as_bool().expect("yes or no"));
    let copy = place.with_file_name("copy");
    let taken = told(&["notebook", "import", name(&copy), name(&file)]);
    assert_eq!(taken["files"][0]["new"], lines);
    let again = told(&["notebook", "import", name(&copy), name(&file)]);
    assert_eq!(
        (again["files"][0]["new"].as_u64(), again["files"][0]["known"].as_u64()),
        (Some(0), Some(lines))
    );
    // The copy goes on as a new device and says whose lines it goes on from.
    let log = told(&["notebook", "log", name(&copy)]);
    let last = log["lines"].as_array().and_then(|lines| lines.last()).expect("a last line").clone();
    assert!(last["entry"].as_str().is_some_and(|entry| entry.contains("continues")), "{last}");
    assert_eq!(last["number"], 1);
    // And back into the first, which then holds one line more.
    let from_copy = place.with_file_name("from-copy.jsonl");
    told(&["notebook", "export", name(&copy), "--to", name(&from_copy)]);
    let merged = told(&["notebook", "import", name(&place), name(&from_copy)]);
    assert_eq!(
        (merged["files"][0]["new"].as_u64(), merged["files"][0]["known"].as_u64()),
        (Some(1), Some(lines))
    );
    assert_eq!(told(&["notebook", "verify", name(&place)])["lines"], lines + 1);
}

#[test]
fn a_damaged_file_is_named_and_what_is_whole_is_saved() {
    let (place, _) = with_demo("damage");
    let text = told(&["notebook", "export", name(&place)])["notebook"].as_str().expect("a file").to_string();
    let file = place.with_file_name("damaged.jsonl");
    let changed = text.replacen("204 ft", "240 ft", 1);
    let cut = &changed[..changed.len() * 3 / 4];
    std::fs::write(&file, cut).expect("written");
    let verify = run(&["notebook", "verify", name(&file), "--strict"]);
    assert_eq!(verify.status, 1, "{verify:?}");
    for says in ["was changed after it was written", "the file breaks off", "are not here"] {
        assert!(verify.out.contains(says), "{says}: {}", verify.out);
    }
    let spanish = run(&["notebook", "verify", name(&file), "--lang", "es"]);
    assert!(
        spanish.out.contains("el archivo se corta") && spanish.out.contains("se cambió después"),
        "{}",
        spanish.out
    );
    let saved = place.with_file_name("saved");
    let import = run(&["notebook", "import", name(&saved), name(&file)]);
    assert_eq!(import.status, 2, "the file is at fault: {import:?}");
    assert!(import.out.contains("new lines"), "{import:?}");
    let log = told(&["notebook", "log", name(&saved)]);
    assert!(log["lines"].as_array().is_some_and(|lines| lines.len() > 20));
}

#[test]
fn mistakes_leave_everything_as_it_was() {
    let (place, _) = with_demo("mistakes");
    let none = place.with_file_name("none");
    let ran = run(&["notebook", "log", name(&none)]);
    assert_eq!((ran.status, ran.out.as_str()), (2, ""));
    assert!(ran.err.contains("there is no notebook in") && !none.exists(), "{ran:?}");
    let bad = place.with_file_name("bad.toml");
    std::fs::write(&bad, "[drive]\ncourse = \"204\"\n").expect("written");
    let ran = run(&["notebook", "import", name(&none), name(&bad)]);
    assert_eq!(ran.status, 2, "{ran:?}");
    assert!(
        ran.err.contains("line 2") && !none.exists(),
        "nothing is begun for a file with mistakes: {ran:?}"
    );
    // The notebook of another is not mixed in.
    let (other, _) = with_demo("mistakes-other");
    let file = other.with_file_name("other.jsonl");
    told(&["notebook", "export", name(&other), "--to", name(&file)]);
    let ran = run(&["notebook", "import", name(&place), name(&file)]);
    assert_eq!(ran.status, 2);
    assert!(ran.err.contains("another notebook"), "{ran:?}");
    for file in ["demo/willow-bend.toml", "README.md"] {
        let ran = run(&["notebook", "verify", file]);
        assert_eq!(ran.status, 2, "{ran:?}");
        assert!(ran.err.contains("this is no notebook file"), "{}", ran.err);
    }
    let unknown = run(&["notebook", "visit", name(&place), "no-such-visit"]);
    assert!(unknown.status == 2 && unknown.err.contains("there is no visit no-such-visit"), "{unknown:?}");
}

#[test]
fn several_visits_are_asked_for_by_name() {
    let (place, _) = with_demo("several");
    told(&["notebook", "import", name(&place), DEMO]);
    let ran = run(&["notebook", "visit", name(&place)]);
    assert_eq!(ran.status, 2);
    assert!(ran.err.contains("there are 2 visits in this notebook"), "{}", ran.err);
    assert_eq!(told(&["notebook", "verify", name(&place)])["visits"], 2);
}

#[test]
fn a_destroyed_notebook_is_saved_from_its_copy() {
    let (place, json) = with_demo("destroyed");
    let lines = json["files"][0]["new"].as_u64().expect("lines");
    std::fs::write(place.join("notebook.sqlite"), vec![0x5a; 40_000]).expect("overwritten");
    let verify = run(&["notebook", "verify", name(&place)]);
    assert_eq!(verify.status, 3, "{verify:?}");
    assert!(verify.err.contains("damaged") && verify.err.contains("second copy"), "{}", verify.err);
    let to = place.with_file_name("saved");
    let saved = told(&["notebook", "save", name(&place), "--to", name(&to)]);
    assert_eq!((saved["lines"].as_u64(), saved["from_copies"].as_u64()), (Some(lines), Some(lines)));
    assert!(told(&["notebook", "verify", name(&to)])["whole"].as_bool().expect("yes or no"));
}

#[test]
fn a_line_says_what_the_clock_on_the_wall_showed() {
    let place = folder("notebook-wall-clock").join("book");
    let by = |args: &[&str]| {
        std::process::Command::new(env!("CARGO_BIN_EXE_evenswath"))
            // POSIX.1-2017, 8.3: a zone of our own, five and a half hours ahead of UTC all year.
            .env("TZ", "<+0530>-5:30")
            .current_dir(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
            .args(args)
            .output()
            .expect("it runs")
    };
    assert!(by(&["notebook", "import", name(&place), DEMO]).status.success());
    let log = told(&["notebook", "log", name(&place)]);
    assert_eq!(log["lines"][0]["offset"], 330, "{}", log["lines"][0]);
    let shown = by(&["notebook", "log", name(&place)]).stdout;
    assert!(String::from_utf8_lossy(&shown).contains("+05:30"));
}
