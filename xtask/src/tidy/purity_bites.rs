//! Shows that every line of the purity list bites.
//!
//! Clippy passes over a misspelt method in its list without a word. So a small crate that does everything the list
//! forbids, once, is held against the list, and clippy must name each entry.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use serde_json::Value;

use crate::process;

const LIST: &str = include_str!("../../pure-clippy.toml");
const IMPURE: &str = include_str!("../../fixtures/impure.rs");
const MANIFEST: &str = "[package]\nname = \"impure\"\nedition = \"2024\"\n\n[workspace]\n";

#[test]
fn clippy_names_every_entry_of_the_purity_list() {
    let folder = std::env::temp_dir().join(format!("xtask-impure-{}", std::process::id()));
    if !process::works(process::cargo(&std::env::temp_dir()).args(["clippy", "--version"])) {
        println!("not shown: there is no clippy here; `rustup component add clippy` brings it");
        return;
    }
    let named = named_by_clippy(&folder);
    fs::remove_dir_all(&folder).unwrap();

    let listed = entries(LIST);
    assert!(listed.len() > 100, "the list was not read: {listed:?}");
    let silent: Vec<_> = listed.difference(&named).collect();
    assert!(
        silent.is_empty(),
        "clippy says nothing about these; mend the path, or do it in xtask/fixtures/impure.rs: {silent:?}"
    );
}

fn entries(list: &str) -> BTreeSet<String> {
    let paths = list.lines().filter_map(|line| line.split_once("path = \"")?.1.split_once('"'));
    paths.map(|(path, _)| path.to_owned()).collect()
}

fn named_by_clippy(folder: &Path) -> BTreeSet<String> {
    fs::create_dir_all(folder.join("src")).unwrap();
    fs::write(folder.join("Cargo.toml"), MANIFEST).unwrap();
    fs::write(folder.join("clippy.toml"), LIST).unwrap();
    fs::write(folder.join("src/lib.rs"), IMPURE).unwrap();
    let mut clippy = process::cargo(folder);
    clippy.args(["clippy", "--quiet", "--message-format=json", "--target-dir"]).arg(folder.join("target"));
    let (text, well) = process::output_and_end(&mut clippy).unwrap();
    assert!(well, "xtask/fixtures/impure.rs does not compile:\n{text}");

    let messages = text.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    let words = messages.filter_map(|entry| entry["message"]["message"].as_str().map(str::to_owned));
    words
        .filter_map(|words| Some(words.strip_prefix("use of a disallowed ")?.split('`').nth(1)?.to_owned()))
        .collect()
}
