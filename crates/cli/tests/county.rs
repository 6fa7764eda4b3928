//! The visits of the invented county in `demo`: each can be checked, and together they are a notebook.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{folder, root, run};

fn visits() -> Vec<String> {
    let entries = std::fs::read_dir(root().join("demo/county")).expect("a folder");
    let mut visits: Vec<String> = entries
        .flatten()
        .map(|entry| format!("demo/county/{}", entry.file_name().to_string_lossy()))
        .collect();
    visits.sort();
    visits
}

#[test]
fn each_visit_gives_a_rate_or_says_what_would() {
    for visit in visits() {
        let ran = run(&["visit", "check", &visit, "--json"]);
        assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{visit}: {ran:?}");
        let rate = &ran.json()["rate"];
        assert!(rate["rate"]["value"].as_f64().is_some_and(|rate| rate > 0.0), "{visit}: {rate}");
    }
}

#[test]
fn together_they_are_a_notebook_of_two_visits_to_one_sprayer_and_more() {
    let book = folder("county").join("book");
    let book = book.to_str().expect("UTF-8");
    let mut visits = visits();
    visits.insert(0, "demo/willow-bend.toml".to_string());
    let import: Vec<&str> =
        ["notebook", "import", book].into_iter().chain(visits.iter().map(String::as_str)).collect();
    assert_eq!(run(&import).status, 0);
    let told = run(&["notebook", "verify", book, "--json"]).json();
    assert_eq!((told["whole"].as_bool(), told["visits"].as_u64()), (Some(true), Some(9)), "{told}");
}
