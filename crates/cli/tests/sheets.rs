//! `visit check --sheet` and `print`: the figures of the JSON stand on the sheet, in both languages; what cannot be
//! printed is told plainly and leaves nothing behind.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::path::Path;

use common::{Ran, answer, folder, run, run_with};
use serde_json::Value;

const DEMO: &str = "demo/willow-bend.toml";

/// The words and numbers of a page, without its style, markup and drawings' paths.
fn read(page: &str) -> String {
    let body = page.split_once("<body>").map_or(page, |(_, body)| body);
    let mut text = String::new();
    let mut inside = false;
    for sign in body.chars() {
        match sign {
            '<' => inside = true,
            '>' => {
                inside = false;
                text.push(' ');
            }
            sign if !inside => text.push(sign),
            _ => {}
        }
    }
    let text = text.replace("&quot;", "\"").replace("&#39;", "'").replace("&lt;", "<").replace("&gt;", ">");
    text.replace("&amp;", "&").split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether a text shows this number, rounded to the decimals it is shown with and to two digits at least.
fn shows(text: &str, number: f64) -> bool {
    text.split(|sign: char| !(sign.is_ascii_digit() || sign == '.')).any(|word| {
        let word = word.trim_end_matches('.');
        let decimals = word.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        let digits = word.bytes().filter(u8::is_ascii_digit).count();
        digits >= 2 && word == format!("{number:.decimals$}")
    })
}

fn number(json: &Value, pointer: &str) -> f64 {
    json.pointer(pointer).and_then(Value::as_f64).unwrap_or_else(|| panic!("no {pointer}"))
}

/// The words of the demo's sheet.
fn sheet(name: &str, options: &[&str]) -> String {
    let to = folder(&format!("sheets-{name}")).join("sheet.html");
    let to = to.to_str().expect("a name in UTF-8");
    let ran = run(&[&["visit", "check", DEMO, "--sheet", to], options].concat());
    assert_eq!(ran.status, 0, "{ran:?}");
    assert!(ran.err.contains("sheet.html"), "where it is written is said: {}", ran.err);
    let page = std::fs::read_to_string(to).expect("a page");
    read(&page)
}

#[test]
fn the_figures_of_the_json_stand_on_the_sheet_in_both_languages() {
    for options in [vec!["--lang", "en"], vec!["--lang", "es"], vec!["--lang", "es", "--units", "metric"]] {
        let page = sheet(&options.join("").replace("--", ""), &options);
        let json = answer(&[&["visit", "check", DEMO], &options[..]].concat());
        for pointer in [
            "/rate/rate/value",
            "/rate/rate/low",
            "/rate/rate/high",
            "/tank/area/value",
            "/tank/area/low",
            "/tank/area/high",
            "/tank/volume/value",
            "/speed/speed/value",
            "/target/against_intended/percent",
            "/catch/mean/value",
            "/catch/cv_percent",
        ] {
            let value = number(&json, pointer).abs();
            assert!(shows(&page, value), "{options:?}: {pointer} {value} is not on the sheet\n{page}");
        }
        let text = |pointer: &str| json.pointer(pointer).and_then(Value::as_str).expect("a text").to_string();
        assert!(page.contains(&text("/tank/products/0/measure_text")));
        // What to do stands there in the reader's words, all of it.
        let actions = json["actions"].as_array().expect("actions");
        assert!(actions.len() > 3);
        for action in actions {
            for part in ["why", "what"] {
                let said = action[part]
                    .as_str()
                    .expect("a sentence")
                    .split_whitespace()
                    .collect::<Vec<_>>()
                    .join(" ");
                assert!(page.contains(&said), "{options:?}: \"{said}\" is not on the sheet");
            }
        }
        // Each cup as it was read.
        for reading in ["14½", "15", "13", "17"] {
            assert!(page.contains(reading), "{reading}");
        }
    }
}

#[test]
fn both_languages_stand_side_by_side_when_asked() {
    let page = sheet("beside", &["--beside", "es"]);
    assert!(page.contains("What this sprayer puts out") && page.contains("Lo que echa esta aspersora"));
    let same = sheet("same", &["--beside", "en"]);
    assert_eq!(same.matches("What this sprayer puts out").count(), 1, "the same language is no second one");
}

#[test]
fn every_sheet_is_printed_in_both_languages() {
    for (name, of_visit, english, spanish) in [
        ("cups", true, "The row of cups", "La fila de vasos"),
        ("cab", true, "For the cab", "Para la cabina"),
        ("tags", true, "Tags for tips", "Etiquetas para boquillas"),
        ("paper", false, "Calibration sheet", "Hoja de calibración"),
        ("before", false, "Before the calibration day", "Antes del día de calibración"),
    ] {
        let mut args = vec!["print", name];
        args.extend(of_visit.then_some(DEMO));
        for (lang, title) in [("en", english), ("es", spanish)] {
            let page = common::text(&[&args[..], &["--lang", lang]].concat());
            assert!(page.starts_with("<!doctype html>") && page.contains(title), "{name} in {lang}");
            assert!(page.contains(&format!("<html lang=\"{lang}\">")));
        }
        let json = answer(&args);
        assert_eq!(json["sheet"], name);
        assert!(json["html"].as_str().is_some_and(|page| page.contains(english)));
    }
}

#[test]
fn the_paper_has_the_tips_it_was_asked_for() {
    let of_visit = read(&common::text(&["print", "paper", DEMO]));
    assert!(of_visit.contains("9 (section 3)") && of_visit.contains("Blue mounted boom"));
    let asked = read(&common::text(&["print", "paper", "--sections", "7,6,7"]));
    assert!(asked.contains("14 (section 3)") && asked.contains(" 20 "));
    let wrong = run(&["print", "paper", "--tips", "12", "--sections", "7,6,7"]);
    assert_eq!(wrong.status, 2);
    assert!(wrong.err.contains("12 tips were given, but the sections have 20"), "{}", wrong.err);
    for bad in [["--tips", "0"], ["--tips", "1001"], ["--tips", "many"], ["--sections", "7,,7"]] {
        assert_eq!(run(&[&["print", "paper"], &bad[..]].concat()).status, 2, "{bad:?}");
    }
}

/// A message on standard error, nothing on standard output, and nothing left in the folder.
fn refused(ran: &Ran, status: i32, says: &str, folder: &Path) {
    assert_eq!(ran.status, status, "{ran:?}");
    assert!(ran.err.contains(says), "{}", ran.err);
    assert_eq!(ran.out, "", "{ran:?}");
    let left: Vec<_> =
        std::fs::read_dir(folder).expect("a folder").flatten().map(|file| file.path()).collect();
    assert_eq!(left, Vec::<std::path::PathBuf>::new());
}

#[test]
fn what_cannot_be_written_is_told_before_anything_is_worked_out() {
    let folder = folder("sheets-refused");
    let to = |name: &str| folder.join(name).to_str().expect("UTF-8").to_string();
    let check = |to: &str| run(&["visit", "check", DEMO, "--sheet", to]);
    refused(&check(&to("sheet.docx")), 2, "does not say what to write", &folder);
    refused(&check(&to("sheet")), 2, ".html", &folder);
    refused(&check(&to("no-such-folder/sheet.html")), 3, "cannot be written", &folder);
    refused(
        &run(&["print", "cups", &common::visit("no-such-visit"), "--to", &to("a.html")]),
        3,
        "no-such-visit",
        &folder,
    );
}

#[test]
fn without_the_engine_a_pdf_is_told_how_to_get() {
    let folder = folder("sheets-pdf");
    let to = folder.join("sheet.pdf");
    let ran = run(&["visit", "check", DEMO, "--sheet", to.to_str().expect("UTF-8")]);
    if cfg!(feature = "pdf") {
        assert_eq!(ran.status, 0, "{ran:?}");
        assert!(std::fs::read(&to).expect("a PDF").starts_with(b"%PDF-"));
    } else {
        refused(&ran, 3, "cargo xtask dist", &folder);
        let spanish = run(&["visit", "check", DEMO, "--sheet", to.to_str().expect("UTF-8"), "--lang", "es"]);
        assert!(spanish.err.contains("se construyó sin la parte que hace archivos PDF"), "{}", spanish.err);
    }
}

#[test]
fn a_picture_that_is_no_picture_is_told_so() {
    let folder = folder("sheets-picture");
    let letter = format!("{}/tests/sheets.rs", env!("CARGO_MANIFEST_DIR"));
    let to = folder.join("cab.html");
    let ran = run(&["print", "cab", DEMO, "--picture", &letter, "--to", to.to_str().expect("UTF-8")]);
    refused(&ran, 2, "neither PNG nor JPEG", &folder);
    let missing =
        run(&["print", "cab", DEMO, "--picture", "no-such.png", "--to", to.to_str().expect("UTF-8")]);
    refused(&missing, 3, "no-such.png", &folder);
}

#[test]
fn an_empty_visit_prints_and_says_what_is_missing() {
    let page = |args: &[&str]| read(&run_with(args, b"").out);
    let sheet = page(&["print", "cab", "-"]);
    assert!(sheet.contains("Nothing to repeat is known yet"), "{sheet}");
    let tags = run_with(&["print", "tags", "-"], b"");
    assert_eq!(tags.status, 0);
    assert!(tags.out.contains("nothing to mend"), "{tags:?}");
    let cups = run_with(&["print", "cups", "-"], b"");
    assert_eq!(cups.status, 2);
    assert!(cups.err.contains("no cup was caught"), "{}", cups.err);
}

#[test]
fn a_name_that_is_markup_is_printed_as_a_name() {
    let visit = b"[visit]\nsprayer = '<script>alert(1)</script>'\nfarm = '\"Do\xc3\xb1a <b>' \n";
    let page = run_with(&["print", "cab", "-"], visit).out;
    assert!(!page.contains("<script"), "{page}");
    assert!(read(&page).contains("<script>alert(1)</script>"));
}
