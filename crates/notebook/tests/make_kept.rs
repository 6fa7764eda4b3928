//! Makes the kept file of a version, once, when the version is new: `cargo test -p notebook --test make_kept -- --ignored`.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use notebook::{Entry, Told, Value};

use common::{device, of_file, visit};

#[test]
#[ignore = "writes the kept file of a new version; the kept file of a released one is never made anew"]
fn make_version_1() {
    let (mut book, mut pen) = of_file(include_str!("kept/version-1.toml"));
    let wrong = book.write(
        device(2),
        pen.draft(visit(1), Entry::Fact { field: "drive.dash".into(), value: Value::text("4.5 mph") }),
    );
    let course = book.lines().next().expect("a line").id();
    assert_ne!(course, wrong.id());
    book.write(
        device(2),
        pen.draft(visit(1), Told::from(Entry::Nothing).instead_of(wrong.id(), "read upside down")),
    );
    book.write(device(2), pen.later(visit(1), 9, "{\"kind\":\"from the future\"}"));
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/kept/version-1.jsonl");
    assert!(!std::path::Path::new(path).exists(), "it is there already");
    std::fs::write(path, notebook::write_file(&book)).expect("written");
}
