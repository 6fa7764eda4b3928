//! `evenswath app export`: the app as a folder of files for any host.
//!
//! A list of what was written goes with it, so that the next export knows its own files: only those are ever replaced or
//! taken away. What pages are opened by comes last, so that a host that gives files meanwhile gives either version whole.

use std::collections::BTreeSet;
use std::io::ErrorKind;
use std::path::Path;

use serde_json::json;
use server::AppFiles;
use units::Args;
use words::Words;

use super::super::input::{bytes, cannot, place};
use super::super::sheet::write_whole;
use super::{built_in, of_folder};
use crate::error::{CliError, READ};
use crate::out::Answer;

/// The list of what was written.
const LIST: &str = "evenswath-files.txt";
/// Its first line.
const HEAD: &str = "Written by `evenswath app export`; the next export replaces these files and no others.";
/// The most bytes of the list. Our own choice: some thousand names.
const LIST_BYTES: u64 = 65_536;
/// What a visit begins with, and what says that there is a new version: written last, in this order.
const LAST: [&str; 2] = ["index.html", "sw.js"];

/// Writes it, and says what it wrote.
pub fn run(folder: &Path, app: Option<&Path>, words: &Words) -> Result<Answer, CliError> {
    let files = match app {
        Some(app) => of_folder(app)?,
        None => built_in().ok_or_else(not_in_this_program)?,
    };
    let before = written_before(folder)?;
    let forms = forms(&files);
    let now: BTreeSet<String> = forms.iter().map(|(path, _)| path.clone()).collect();
    std::fs::create_dir_all(folder).map_err(|error| cannot(folder, &error))?;
    // First of all, so that an export that breaks off is known for one.
    write_list(folder, before.union(&now))?;
    for (path, bytes) in &forms {
        let to = folder.join(path);
        if let Some(above) = to.parent() {
            std::fs::create_dir_all(above).map_err(|error| cannot(above, &error))?;
        }
        write_whole(&to, bytes)?;
    }
    let mut removed = 0_u32;
    for path in before.difference(&now) {
        match std::fs::remove_file(folder.join(path)) {
            Ok(()) => removed += 1,
            Err(error) if error.kind() == ErrorKind::NotFound => {}
            Err(error) => return Err(cannot(&folder.join(path), &error)),
        }
    }
    write_list(folder, now.iter())?;
    let size: usize = forms.iter().map(|(_, bytes)| bytes.len()).sum();
    let named = folder.display().to_string();
    let mut answer = Answer::of(
        json!({ "folder": named, "files": forms.len(), "bytes": size, "removed": removed, "list": LIST }),
    );
    answer.main(words.say("app-exported", &[("folder", named.into()), ("files", forms.len().into())]));
    if removed > 0 {
        answer.plain(words.say("app-export_removed", &[("files", removed.into())]));
    }
    answer.plain(words.label("app-export_next"));
    Ok(answer)
}

fn not_in_this_program() -> CliError {
    CliError { status: READ, ..CliError::usage("app_not_built_in", Args::new()) }
}

/// Every file with its compressed forms as files of their own, in the order in which they are written.
fn forms(files: &AppFiles) -> Vec<(String, &[u8])> {
    let mut forms = Vec::new();
    for file in files.files() {
        let pressed = [(".br", &file.br), (".gz", &file.gz)];
        for (ending, bytes) in pressed {
            forms.extend(bytes.as_ref().map(|bytes| (format!("{}{ending}", file.path), &bytes[..])));
        }
        forms.push((file.path.clone(), &file.bytes[..]));
    }
    forms.sort_by_key(|(path, _)| LAST.iter().position(|last| path.starts_with(last)).map_or(0, |at| at + 1));
    forms
}

/// What an export before wrote into the folder; nothing where there is none or it is empty. What begins with a dot, as a
/// version control's own folder, is no matter of ours.
fn written_before(folder: &Path) -> Result<BTreeSet<String>, CliError> {
    let entries = match std::fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(BTreeSet::new()),
        Err(error) => return Err(cannot(folder, &error)),
    };
    let list = folder.join(LIST);
    if list.is_file() {
        let text = String::from_utf8_lossy(&bytes(&list, LIST_BYTES)?).into_owned();
        let mut lines = text.lines();
        if lines.next() == Some(HEAD) {
            return Ok(lines.filter(|path| is_inside(path)).map(str::to_string).collect());
        }
    }
    let other = entries.flatten().any(|entry| !entry.file_name().to_string_lossy().starts_with('.'));
    if other {
        return Err(CliError::usage("app_export_not_empty", Args::new()).at(place(folder)));
    }
    Ok(BTreeSet::new())
}

/// Whether a line of the list names a file in the folder, and nothing above it: somebody may have changed the list.
fn is_inside(path: &str) -> bool {
    let plain = |part: &str| {
        !part.is_empty()
            && !part.starts_with('.')
            && part.bytes().all(|sign| sign.is_ascii_alphanumeric() || b"-_.".contains(&sign))
    };
    path.split('/').all(plain)
}

fn write_list<'a>(folder: &Path, paths: impl Iterator<Item = &'a String>) -> Result<(), CliError> {
    let lines: String = paths.map(|path| format!("{path}\n")).collect();
    write_whole(&folder.join(LIST), format!("{HEAD}\n{lines}").as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_outside_the_folder_is_in_the_list() {
        for path in ["index.html", "app-1f3c9a70.js.br", "deep/a.css"] {
            assert!(is_inside(path), "{path}");
        }
        for path in ["../a", "/etc/passwd", "a/../../b", "", "a//b", ".git/config", "c:\\a", "a\\b", "~a"] {
            assert!(!is_inside(path), "{path}");
        }
    }
}
