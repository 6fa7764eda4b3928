//! Help in the reader's language: what each command and option is, out of the catalogue.
//!
//! The key of a command is `help-<command>` (of one below another `help-<command>_<command>`), with `-after` for what stands below; of an option `help-<command>-<option>`,
//! of one of its values `help-<command>-<option>-<value>`; of what a value is called `value-<NAME>`.

use clap::builder::{PossibleValue, PossibleValuesParser, TypedValueParser, ValueParser};
use clap::{Arg, Command, ValueEnum};
use words::Words;

use super::steps::WidthKind;
use super::{Lang, Numbers, PaperSize, Units};

/// The command with all that is said of it in the reader's language.
pub fn in_words(command: Command, words: &Words) -> Command {
    let name = command.get_name().to_string();
    one(command, &name, words)
}

/// One command and those below it; `path` is its name with those above it.
fn one(command: Command, path: &str, words: &Words) -> Command {
    let below: Vec<String> = command.get_subcommands().map(|below| below.get_name().to_string()).collect();
    let mut told = command
        .about(words.label(&format!("help-{path}")))
        .after_help(words.label(&format!("help-{path}-after")))
        .mut_args(|arg| option(arg, path, words));
    for name in below {
        let path = below_path(path, &name);
        told = told.mut_subcommand(&name, |below| one(below, &path, words));
    }
    told
}

/// The path of a command below another; the program's own name is left out of it.
fn below_path(path: &str, name: &str) -> String {
    if path == "evenswath" { name.to_string() } else { format!("{path}_{name}") }
}

/// One option or argument.
fn option(arg: Arg, path: &str, words: &Words) -> Arg {
    let key = format!("help-{path}-{}", arg.get_id());
    let help = words.label(&key);
    let names: Option<Vec<String>> = arg
        .get_value_names()
        .filter(|_| arg.get_action().takes_values())
        .map(|names| names.iter().map(|name| words.label(&format!("value-{}", plain(name)))).collect());
    let values = match arg.get_id().as_str() {
        "units" => Some(one_of::<Units>(&key, words)),
        "lang" | "beside" => Some(one_of::<Lang>(&key, words)),
        "numbers" => Some(one_of::<Numbers>(&key, words)),
        "paper" => Some(one_of::<PaperSize>(&key, words)),
        "kind" => Some(one_of::<WidthKind>(&key, words)),
        _ => None,
    };
    let heading = arg.get_help_heading().map(|_| words.label("help-for_every_command"));
    let mut told = arg.help(help);
    if let Some(heading) = heading {
        told = told.help_heading(heading);
    }
    if let Some(names) = names {
        told = told.value_names(names);
    }
    match values {
        Some(values) => told.value_parser(values),
        None => told,
    }
}

/// One of a few words, each with what it means in the reader's language.
fn one_of<Word: ValueEnum + Clone + Send + Sync + 'static>(key: &str, words: &Words) -> ValueParser {
    let value = |word: &Word| {
        let name = word.to_possible_value()?.get_name().to_string();
        let help = words.label(&format!("{key}-{name}"));
        Some(PossibleValue::new(name).help(help))
    };
    let known: Vec<PossibleValue> = Word::value_variants().iter().filter_map(value).collect();
    // What is not among the words has been refused before it comes to this.
    ValueParser::new(PossibleValuesParser::new(known).try_map(|name| Word::from_str(&name, false)))
}

/// What a value is called, as a key: "FLOW @ PRESSURE" is FLOW_PRESSURE.
fn plain(name: &str) -> String {
    let parts: Vec<&str> =
        name.split(|sign: char| !sign.is_ascii_alphanumeric()).filter(|part| !part.is_empty()).collect();
    parts.join("_")
}

#[cfg(test)]
mod tests {
    use super::*;
    use clap::CommandFactory;
    use words::Language;

    /// Every key of the help, and the English that stands beside the code.
    fn keys(command: &Command, path: &str, found: &mut Vec<(String, String)>) {
        let said =
            |text: Option<&clap::builder::StyledStr>| text.map(ToString::to_string).unwrap_or_default();
        found.push((format!("help-{path}"), said(command.get_about())));
        found.push((format!("help-{path}-after"), said(command.get_after_help())));
        for arg in command.get_arguments() {
            let key = format!("help-{path}-{}", arg.get_id());
            found.push((key.clone(), said(arg.get_help())));
            for value in arg.get_possible_values().iter().filter(|value| value.get_help().is_some()) {
                found.push((format!("{key}-{}", value.get_name()), said(value.get_help())));
            }
            for name in arg.get_value_names().filter(|_| arg.get_action().takes_values()).unwrap_or_default()
            {
                found.push((format!("value-{}", plain(name)), name.to_string()));
            }
            if let Some(heading) = arg.get_help_heading() {
                found.push(("help-for_every_command".to_string(), heading.to_string()));
            }
        }
        for below in command.get_subcommands() {
            keys(below, &below_path(path, below.get_name()), found);
        }
    }

    #[test]
    fn the_catalogue_says_what_stands_beside_the_code_and_says_it_in_both_languages() {
        let mut found = Vec::new();
        keys(&super::super::Cli::command(), "evenswath", &mut found);
        found.sort();
        found.dedup();
        assert!(found.len() > 100);
        let [english, spanish] = Language::ALL.map(Words::of);
        for (key, text) in found {
            assert_eq!(english.label(&key), text, "{key}");
            assert!(spanish.has(&key), "{key}");
        }
    }
}
