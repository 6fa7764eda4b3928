//! Every library in Cargo.lock has a licence that lets us hand the program on under ours.

use super::failure::Failure;
use super::tree::Tree;
use crate::workspace::Package;

/// Licences that ask for no more than notice (MPL-2.0: for changes to the library's own files).
const ALLOWED: &[&str] = &[
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "MPL-2.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Packages with a licence not on the list, or with none.
pub fn failures(packages: &[Package], tree: &Tree) -> Vec<Failure> {
    packages
        .iter()
        .filter_map(|package| {
            let what = match package.license.as_deref() {
                None => "names no licence".to_owned(),
                Some(expression) => match allows(expression) {
                    Some(true) => return None,
                    Some(false) => format!("has the licence `{expression}`"),
                    None => format!("has a licence expression that cannot be read: `{expression}`"),
                },
            };
            Some(Failure::new(
                "Cargo.lock",
                line_in_lock(tree, package),
                format!("`{}` {} {what}", package.name, package.version),
                format!(
                    "use another library; if the licence may be handed on, add it to {}",
                    file!().replace('\\', "/")
                ),
            ))
        })
        .collect()
}

fn line_in_lock(tree: &Tree, package: &Package) -> usize {
    let lock = tree.file("Cargo.lock").map_or("", |file| file.text.as_str());
    let name = format!("name = \"{}\"", package.name);
    let version = format!("version = \"{}\"", package.version);
    let lines: Vec<&str> = lock.lines().collect();
    let found = lines.windows(2).position(|pair| pair[0] == name && pair[1] == version);
    found.map_or(1, |index| index + 1)
}

/// Whether an SPDX expression can be met with the list; none if it is not an expression.
fn allows(expression: &str) -> Option<bool> {
    // Before SPDX expressions, Cargo.toml wrote `MIT/Apache-2.0` for a choice.
    let spaced = expression.replace('(', " ( ").replace(')', " ) ").replace('/', " OR ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let mut rest = words.as_slice();
    let answer = choice(&mut rest)?;
    rest.is_empty().then_some(answer)
}

fn choice(words: &mut &[&str]) -> Option<bool> {
    let mut any = both(words)?;
    while take(words, "OR") {
        let next = both(words)?;
        any = any || next;
    }
    Some(any)
}

fn both(words: &mut &[&str]) -> Option<bool> {
    let mut all = one(words)?;
    while take(words, "AND") {
        let next = one(words)?;
        all = all && next;
    }
    Some(all)
}

fn one(words: &mut &[&str]) -> Option<bool> {
    if take(words, "(") {
        let inside = choice(words)?;
        return take(words, ")").then_some(inside);
    }
    let (name, rest) = words.split_first()?;
    if matches!(*name, ")" | "OR" | "AND" | "WITH") {
        return None;
    }
    *words = rest;
    let mut name = (*name).to_owned();
    if take(words, "WITH") {
        let (exception, rest) = words.split_first()?;
        *words = rest;
        name = format!("{name} WITH {exception}");
    }
    Some(ALLOWED.contains(&name.as_str()))
}

fn take(words: &mut &[&str], wanted: &str) -> bool {
    match words.split_first() {
        Some((first, rest)) if *first == wanted => {
            *words = rest;
            true
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn expressions_are_read_as_spdx_means_them() {
        let check = |expression: &str, expected: Option<bool>| {
            assert_eq!(allows(expression), expected, "{expression}");
        };
        check("MIT", Some(true));
        check("GPL-3.0-only", Some(false));
        check("MIT OR GPL-3.0-only", Some(true));
        check("MIT AND GPL-3.0-only", Some(false));
        check("MIT/Apache-2.0", Some(true));
        check("(MIT OR Apache-2.0) AND Unicode-3.0", Some(true));
        check("(MIT OR Apache-2.0) AND AGPL-3.0-only", Some(false));
        // AND binds tighter than OR (SPDX specification 2.3, annex D.4).
        check("GPL-3.0-only AND MIT OR ISC", Some(true));
        check("Apache-2.0 WITH LLVM-exception OR GPL-2.0-only", Some(true));
        check("MIT OR", None);
        check("(MIT", None);
        check("", None);
    }

    #[test]
    fn a_package_without_an_allowed_licence_fails_at_its_line_in_the_lock_file() {
        let package = |license: Option<&str>| Package {
            name: "b".to_owned(),
            version: "2.0.0".to_owned(),
            license: license.map(str::to_owned),
            ..Package::default()
        };
        let lock = "[[package]]\nname = \"b\"\nversion = \"1.0.0\"\n\n[[package]]\nname = \"b\"\nversion = \"2.0.0\"\n";
        let tree = Tree::of(&[("Cargo.lock", lock)]);
        assert_eq!(failures(&[package(None)], &tree)[0].line, 6);
        assert_eq!(failures(&[package(Some("AGPL-3.0-only"))], &tree).len(), 1);
        assert!(failures(&[package(Some("MIT"))], &tree).is_empty());
    }
}
