//! Words that have no business in the repository: one machine's paths, the hosts packages come from, halves of a merge.

use super::failure::Failure;
use super::tree::Tree;

/// A word, and why it is not wanted. Written in halves, so that this file does not hold them itself.
const WORDS: &[(&str, &str)] = &[
    (concat!("/wo", "rk/"), MACHINE),
    (concat!("/tm", "p/"), MACHINE),
    (concat!("/ro", "ot/"), MACHINE),
    (concat!("/ho", "me/"), MACHINE),
    (concat!("/Use", "rs/"), MACHINE),
    (concat!("crates", ".io"), HOST),
    (concat!("py", "pi.org"), HOST),
    (concat!("pythonho", "sted.org"), HOST),
    (concat!("npm", "js.org"), HOST),
    (concat!("<<<<", "<<< "), MERGE),
    (concat!(">>>>", ">>> "), MERGE),
];

const MACHINE: &str =
    "a path of one machine; use a path from the repository's top, or a temporary folder asked of the system";
const HOST: &str = "a package registry's host; leave the address to cargo, pip or npm";
const MERGE: &str = "left over from a merge; settle it";

/// Lines that hold one of the words. Lock files are the package managers' own.
pub fn failures(tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    for file in tree.files.iter().filter(|file| !is_lock_file(&file.path)) {
        for (index, line) in file.text.lines().enumerate() {
            for (word, why) in WORDS.iter().filter(|(word, _)| holds(line, word)) {
                failures.push(Failure::new(&file.path, index + 1, format!("`{}`", word.trim()), *why));
            }
        }
    }
    failures
}

fn is_lock_file(path: &str) -> bool {
    path.ends_with(".lock") || path.ends_with("package-lock.json")
}

/// Whether the word stands in the line by itself: `see/home/page` and `example.org/home/` do not hold a home folder.
fn holds(line: &str, word: &str) -> bool {
    line.match_indices(word).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        !before.is_some_and(|letter| letter.is_alphanumeric() || matches!(letter, '_' | '.' | '-'))
            || !word.starts_with('/')
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_word_is_found() {
        for (word, _) in WORDS {
            let text = format!("fine\nbegins \"{word}\" ends\n");
            let found = failures(&Tree::of(&[("README.md", &text)]));
            assert_eq!(found.len(), 1, "{word}");
            assert_eq!(found[0].line, 2);
        }
    }

    #[test]
    fn a_path_inside_an_address_is_not_a_machines_path() {
        assert!(!holds("see https://example.org/home/page", WORDS[3].0));
    }

    #[test]
    fn lock_files_may_name_hosts() {
        let text = format!("source = \"registry+https://github.com/rust-lang/{}-index\"", WORDS[5].0);
        assert!(failures(&Tree::of(&[("Cargo.lock", &text)])).is_empty());
        assert!(!failures(&Tree::of(&[("Cargo.toml", &text)])).is_empty());
    }
}
