//! ARCHITECTURE.md names exactly the crates there are.
//!
//! In the part under the heading that contains the words "Code map", each crate is one table row whose first cell is
//! its name in backticks: ``| `units` | … |``.

use super::failure::Failure;
use super::tree::Tree;
use crate::workspace::Package;

const DOCUMENT: &str = "ARCHITECTURE.md";
const RULE: &str =
    "under the heading \"Code map\" each crate is a table row whose first cell is its name in backticks";

/// Crates that the code map does not name, and names in it that are no crate.
pub fn failures(crates: &[Package], tree: &Tree) -> Vec<Failure> {
    let Some(document) = tree.file(DOCUMENT) else {
        return vec![Failure::new(DOCUMENT, 1, "not there", format!("write it; {RULE}"))];
    };
    let Some((heading, rows)) = code_map(&document.text) else {
        return vec![Failure::new(DOCUMENT, 1, "no heading \"Code map\"", format!("add it; {RULE}"))];
    };
    let mut failures = Vec::new();
    for package in crates {
        if !rows.iter().any(|(_, name)| *name == package.name) {
            let what = format!("the crate `{}` is not in the code map", package.name);
            failures.push(Failure::new(DOCUMENT, heading, what, format!("add it; {RULE}")));
        }
    }
    for (line, name) in rows {
        if !crates.iter().any(|package| package.name == name) {
            let what = format!("the code map names `{name}`, and no crate is called so");
            failures.push(Failure::new(DOCUMENT, line, what, format!("take it out; {RULE}")));
        }
    }
    failures
}

/// The line of the heading, and the names in first cells with their lines.
fn code_map(text: &str) -> Option<(usize, Vec<(usize, &str)>)> {
    let level = |line: &str| line.chars().take_while(|letter| *letter == '#').count();
    let lines: Vec<&str> = text.lines().collect();
    let heading =
        lines.iter().position(|line| level(line) > 0 && line.to_lowercase().contains("code map"))?;
    let depth = level(lines[heading]);
    let part = lines
        .iter()
        .enumerate()
        .skip(heading + 1)
        .take_while(|(_, line)| level(line) == 0 || level(line) > depth);
    let rows = part.filter_map(|(index, line)| {
        let cell = line.trim().strip_prefix('|')?.split('|').next()?.trim();
        let name = cell.strip_prefix('`')?.strip_suffix('`')?;
        Some((index + 1, name))
    });
    Some((heading + 1, rows.collect()))
}

#[cfg(test)]
mod tests {
    use super::*;

    const DOCUMENT_TEXT: &str = "# A\n\n## Code map\n\n| crate | it is |\n|---|---|\n| `units` | quantities |\n\n\
        ## Libraries\n\n| `libm` | digits |\n";

    fn found(text: &str, crates: &[&str]) -> Vec<(usize, String)> {
        let crates: Vec<Package> =
            crates.iter().map(|name| Package { name: (*name).to_owned(), ..Package::default() }).collect();
        let all = failures(&crates, &Tree::of(&[(DOCUMENT, text)]));
        all.into_iter().map(|failure| (failure.line, failure.what)).collect()
    }

    #[test]
    fn the_crates_there_are_pass() {
        assert_eq!(found(DOCUMENT_TEXT, &["units"]), []);
    }

    #[test]
    fn a_crate_left_out_fails() {
        let all = found(DOCUMENT_TEXT, &["units", "visit"]);
        assert_eq!(all, [(3, "the crate `visit` is not in the code map".to_owned())]);
    }

    #[test]
    fn a_crate_that_is_gone_fails() {
        let all = found(DOCUMENT_TEXT, &[]);
        assert_eq!(all, [(7, "the code map names `units`, and no crate is called so".to_owned())]);
    }

    #[test]
    fn no_document_and_no_code_map_fail() {
        assert_eq!(found("# A\n", &["units"])[0].1, "no heading \"Code map\"");
        assert_eq!(failures(&[], &Tree::of(&[])).len(), 1);
    }
}
