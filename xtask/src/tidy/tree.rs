//! The repository's files, read once for all rules.

use std::fs;
use std::path::Path;

use crate::floors;

/// Folders that are not ours: built, installed, or git's own.
const SKIPPED: &[&str] = &[".git", "target", ".venv", "__pycache__", "node_modules"];

/// Every file of the repository.
#[derive(Default)]
pub struct Tree {
    pub files: Vec<File>,
}

/// A file.
pub struct File {
    /// From the repository's top, with forward slashes.
    pub path: String,
    /// Empty when the file is not text.
    pub text: String,
}

impl Tree {
    /// Reads every file below `root`.
    pub fn read(root: &Path) -> Result<Tree, String> {
        let mut tree = Tree::default();
        walk(root, "", &mut tree.files)
            .map_err(|error| format!("cannot read {}: {error}", root.display()))?;
        tree.files.sort_by(|a, b| a.path.cmp(&b.path));
        Ok(tree)
    }

    /// The file at exactly this path.
    pub fn file(&self, path: &str) -> Option<&File> {
        self.files.iter().find(|file| file.path == path)
    }

    /// The line, from 1, where a manifest names a dependency; 1 if it cannot be found.
    pub fn line_of_dependency(&self, manifest: &str, name: &str) -> usize {
        let names_it = |line: &str| {
            let rest = line.trim_start().strip_prefix(name);
            rest.is_some_and(|rest| rest.starts_with(['.', ' ', '=']))
        };
        let text = self.file(manifest).map_or("", |file| file.text.as_str());
        text.lines().position(names_it).map_or(1, |index| index + 1)
    }

    /// The Rust files.
    pub fn rust(&self) -> impl Iterator<Item = &File> {
        self.files.iter().filter(|file| file.path.ends_with(".rs"))
    }

    /// The Rust files in `src` of the pure crates.
    pub fn pure_sources(&self) -> impl Iterator<Item = &File> {
        self.rust().filter(|file| {
            let mut parts = file.path.split('/');
            parts.next() == Some("crates")
                && parts.next().is_some_and(floors::is_pure)
                && parts.next() == Some("src")
        })
    }

    #[cfg(test)]
    pub fn of(files: &[(&str, &str)]) -> Tree {
        let files =
            files.iter().map(|(path, text)| File { path: (*path).to_owned(), text: (*text).to_owned() });
        Tree { files: files.collect() }
    }
}

impl File {
    /// Whether the whole file is test or bench code.
    pub fn is_for_tests(&self) -> bool {
        let mut parts: Vec<&str> = self.path.split('/').collect();
        let name = parts.pop().unwrap_or_default();
        name == "tests.rs" || parts.iter().any(|part| matches!(*part, "tests" | "benches"))
    }

    /// The lines outside `#[cfg(test)]` modules and functions, each with its number from 1. None for a file of tests.
    pub fn production_lines(&self) -> Vec<(usize, &str)> {
        if self.is_for_tests() {
            return Vec::new();
        }
        let mut kept = Vec::new();
        // rustfmt puts the brace that closes a module at the indentation of the line that opened it.
        let mut closing: Option<String> = None;
        let lines: Vec<&str> = self.text.lines().collect();
        for (index, line) in lines.iter().enumerate() {
            if let Some(end) = &closing {
                if line == end {
                    closing = None;
                }
                continue;
            }
            if line.trim() == "#[cfg(test)]" {
                let opening = lines[index..].iter().find(|next| !next.trim().starts_with("#["));
                if let Some(opening) = opening.filter(|next| next.ends_with('{')) {
                    let indentation = opening.len() - opening.trim_start().len();
                    closing = Some(format!("{}}}", " ".repeat(indentation)));
                    continue;
                }
            }
            kept.push((index + 1, *line));
        }
        kept
    }
}

fn walk(folder: &Path, prefix: &str, files: &mut Vec<File>) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if SKIPPED.contains(&name.as_str()) {
            continue;
        }
        let path = format!("{prefix}{name}");
        let kind = entry.file_type()?;
        if kind.is_dir() {
            walk(&entry.path(), &format!("{path}/"), files)?;
        } else if kind.is_file() {
            let text = String::from_utf8(fs::read(entry.path())?).unwrap_or_default();
            files.push(File { path, text });
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kept(text: &str) -> Vec<usize> {
        let tree = Tree::of(&[("crates/units/src/a.rs", text)]);
        let lines = tree.files[0].production_lines();
        lines.iter().map(|(number, _)| *number).collect()
    }

    #[test]
    fn a_test_module_is_left_out_and_what_follows_it_is_not() {
        let text = "one\n#[cfg(test)]\nmod tests {\n    fn a() {\n    }\n}\nseven\n";
        assert_eq!(kept(text), [1, 7]);
    }

    #[test]
    fn a_test_module_in_its_own_file_hides_nothing_here() {
        assert_eq!(kept("#[cfg(test)]\nmod tests;\nthree\n"), [1, 2, 3]);
    }

    #[test]
    fn a_dependency_is_found_by_its_whole_name() {
        let tree = Tree::of(&[("a/Cargo.toml", "[dependencies]\nlibmath = \"1\"\nlibm.workspace = true\n")]);
        assert_eq!(tree.line_of_dependency("a/Cargo.toml", "libm"), 3);
        assert_eq!(tree.line_of_dependency("a/Cargo.toml", "rand"), 1);
    }

    #[test]
    fn files_of_tests_are_known_by_their_path() {
        let tree = Tree::of(&[
            ("crates/cli/tests/help.rs", ""),
            ("crates/units/src/parse/tests.rs", ""),
            ("crates/units/src/parse.rs", ""),
        ]);
        let found: Vec<bool> = tree.files.iter().map(File::is_for_tests).collect();
        assert_eq!(found, [true, true, false]);
    }

    #[test]
    fn only_sources_of_pure_crates_are_pure_sources() {
        let tree = Tree::of(&[
            ("crates/cli/src/main.rs", ""),
            ("crates/units/src/lib.rs", ""),
            ("crates/units/tests/a.rs", ""),
            ("xtask/src/main.rs", ""),
        ]);
        let found: Vec<&str> = tree.pure_sources().map(|file| file.path.as_str()).collect();
        assert_eq!(found, ["crates/units/src/lib.rs"]);
    }
}
