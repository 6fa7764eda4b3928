//! The words of a language for the app: its Fluent files in one, without what only their writers read.

use std::path::Path;

/// The folders of the languages.
pub const LANGUAGES: [&str; 2] = ["en", "es"];
/// Words of the command and the server, which the app never says: every one would have to come through the air first.
const NOT_THE_APPS: [&str; 3] = ["command.ftl", "pattern_command.ftl", "server.ftl"];

/// Beginnings of messages in other files that only the command says.
const HELP: [&str; 2] = ["help-", "value-"];

/// The words of the language whose files stand in a folder.
pub fn of(folder: &Path) -> Result<String, String> {
    let entries =
        std::fs::read_dir(folder).map_err(|error| format!("cannot read {}: {error}", folder.display()))?;
    let mut names: Vec<String> =
        entries.flatten().filter_map(|entry| entry.file_name().into_string().ok()).collect();
    names.retain(|name| name.ends_with(".ftl") && !NOT_THE_APPS.contains(&name.as_str()));
    names.sort();
    let texts: Result<Vec<String>, String> = names.iter().map(|name| crate::text(folder, name)).collect();
    Ok(texts?.iter().map(|text| without_remarks(text)).collect())
}

/// Without remarks, empty lines and the command's help. In Fluent a remark is a line that begins with `#`, and only one: the lines of a message
/// are set in (Fluent Syntax 1.0, "Comments" and "Patterns"). An empty line stays where a message goes on after it.
fn without_remarks(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut empty = 0;
    let mut of_the_command = false;
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if line.trim().is_empty() {
            empty += 1;
            continue;
        }
        let goes_on = line.starts_with([' ', '}']);
        if !goes_on {
            of_the_command = HELP.iter().any(|begin| line.starts_with(begin));
        }
        if of_the_command {
            empty = 0;
            continue;
        }
        if goes_on {
            kept.extend(std::iter::repeat_n('\n', empty));
        }
        empty = 0;
        kept.push_str(line);
        kept.push('\n');
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn remarks_go_and_what_is_said_stays() {
        let text = "### A file\n\n## A part\n\none = One\n# A remark\ntwo =\n    Two\n\n    # and more\n\n\nthree = 3\nhelp-one =\n    Help\n\n    and more\nfour = 4\n";
        assert_eq!(
            without_remarks(text),
            "one = One\ntwo =\n    Two\n\n    # and more\nthree = 3\nfour = 4\n"
        );
    }

    #[test]
    fn the_apps_words_are_there_and_the_commands_are_not() {
        let locales = Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates/words/locales");
        for language in LANGUAGES {
            let words = of(&locales.join(language)).unwrap();
            assert!(words.contains("\nyard-") && words.contains("\ntip_most_likely-low = "));
            assert!(!words.contains("\nhelp-") && !words.contains("\n#"));
        }
    }
}
