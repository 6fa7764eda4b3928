//! `evenswath app export`: the app as files, whole, again over itself, and over nothing else.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use std::fs;
use std::path::Path;

use common::{folder, run};

/// A folder of files, as if it were the app's.
fn app(at: &Path, files: &[(&str, &str)]) -> String {
    let _ = fs::remove_dir_all(at);
    fs::create_dir_all(at).expect("a folder");
    for (name, text) in files {
        fs::write(at.join(name), text).expect("a file");
    }
    name(at)
}

fn name(path: &Path) -> String {
    path.to_str().expect("UTF-8").to_string()
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_default()
}

const FIRST: &[(&str, &str)] = &[
    ("index.html", "<p>one"),
    ("index.html.br", "B"),
    ("sw.js", "// one"),
    ("app-0123456789abcdef.js", "1"),
    ("app-0123456789abcdef.js.gz", "G"),
];
const SECOND: &[(&str, &str)] =
    &[("index.html", "<p>two"), ("sw.js", "// two"), ("app-fedcba9876543210.js", "2")];

#[test]
fn every_file_is_written_and_the_next_export_takes_its_place() {
    let place = folder("app-export");
    let (from, site) = (place.join("app"), place.join("site"));
    let app_files = app(&from, FIRST);
    let ran = run(&["app", "export", &name(&site), "--app", &app_files, "--json"]);
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
    let json = ran.json();
    assert_eq!((json["files"].as_u64(), json["removed"].as_u64()), (Some(5), Some(0)), "{json}");
    assert_eq!(json["folder"], name(&site));
    for (file, text) in FIRST {
        assert_eq!(read(&site.join(file)), *text, "{file}");
    }
    // What others put there stays.
    fs::create_dir_all(site.join(".git")).expect("a folder");
    fs::write(site.join("notice.html"), "theirs").expect("a file");
    app(&from, SECOND);
    let ran = run(&["app", "export", &name(&site), "--app", &app_files, "--json"]);
    let json = ran.json();
    assert_eq!((json["files"].as_u64(), json["removed"].as_u64()), (Some(3), Some(3)), "{json}");
    assert_eq!(read(&site.join("index.html")), "<p>two");
    assert_eq!(read(&site.join("notice.html")), "theirs");
    assert!(site.join(".git").is_dir() && !site.join("app-0123456789abcdef.js").exists());
    // Nothing half written is left behind.
    let mut names: Vec<String> = fs::read_dir(&site)
        .expect("a folder")
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    let all =
        [".git", "app-fedcba9876543210.js", "evenswath-files.txt", "index.html", "notice.html", "sw.js"];
    assert_eq!(names, all);
}

#[test]
fn a_folder_with_something_else_in_it_is_left_alone() {
    let place = folder("app-export-refused");
    let app_files = app(&place.join("app"), FIRST);
    let theirs = place.join("theirs");
    fs::create_dir_all(&theirs).expect("a folder");
    fs::write(theirs.join("letter.txt"), "dear").expect("a file");
    let ran = run(&["app", "export", &name(&theirs), "--app", &app_files]);
    assert_eq!((ran.status, ran.out.as_str()), (2, ""), "{ran:?}");
    assert!(ran.err.contains("theirs") && ran.err.contains("no export wrote"), "{ran:?}");
    assert_eq!(fs::read_dir(&theirs).expect("a folder").count(), 1);
    // A list that was tampered with takes nothing away elsewhere.
    let site = place.join("site");
    assert_eq!(run(&["app", "export", &name(&site), "--app", &app_files]).status, 0);
    let list = site.join("evenswath-files.txt");
    fs::write(&list, format!("{}../theirs/letter.txt\n", read(&list))).expect("a file");
    assert_eq!(run(&["app", "export", &name(&site), "--app", &app_files]).status, 0);
    assert_eq!(read(&theirs.join("letter.txt")), "dear");
    // A file is no folder.
    let ran = run(&["app", "export", &name(&theirs.join("letter.txt")), "--app", &app_files]);
    assert_eq!(ran.status, 3, "{ran:?}");
}

#[test]
fn without_the_app_it_says_so() {
    let place = folder("app-export-none");
    let site = place.join("site");
    let ran = run(&["app", "export", &name(&site)]);
    if cfg!(feature = "app") && ran.status == 0 {
        assert!(read(&site.join("sw.js")).contains("install"), "{ran:?}");
        return;
    }
    assert_eq!((ran.status, ran.out.as_str()), (3, ""), "{ran:?}");
    assert!(ran.err.contains("without the app") && ran.err.contains("--app") && !site.exists(), "{ran:?}");
    let ran = run(&["app", "export", &name(&site), "--lang", "es"]);
    assert!(ran.err.contains("sin la aplicación"), "{ran:?}");
}

#[test]
fn both_languages_say_where_it_stands_and_what_to_do_next() {
    let place = folder("app-export-said");
    let app_files = app(&place.join("app"), FIRST);
    for (language, said) in [("en", ["was written to", "HTTPS"]), ("es", ["se escribió en", "HTTPS"])] {
        let site = name(&place.join(language));
        let ran = run(&["app", "export", &site, "--app", &app_files, "--lang", language]);
        assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{ran:?}");
        assert!(said.iter().all(|said| ran.out.contains(said)) && ran.out.contains(&site), "{ran:?}");
    }
}
