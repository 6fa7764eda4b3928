//! Words: what one language has, the other has too: files, messages, attributes and the arguments in them.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};

use super::failure::Failure;
use super::tree::Tree;

/// Where the languages stand, one folder each.
const LOCALES: &str = "crates/words/locales";
/// The language that is written first.
const FIRST: &str = "en";
/// The languages that must say the same.
const OTHERS: &[&str] = &["es"];

/// A message or attribute: its line, and the arguments it takes.
#[derive(Debug)]
struct Said {
    line: usize,
    arguments: BTreeSet<String>,
}

/// What one file says, by message or `message.attribute`.
type File = BTreeMap<String, Said>;

/// Keys, attributes and arguments that a language lacks, and lines that cannot be read.
pub fn failures(tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    let first = languages_files(tree, FIRST, &mut failures);
    for other in OTHERS {
        let files = languages_files(tree, other, &mut failures);
        for (name, said) in &first {
            match files.get(name) {
                None => failures.push(Failure::new(
                    format!("{LOCALES}/{FIRST}/{name}"),
                    1,
                    format!("`{other}` has no file of this name"),
                    format!("write {LOCALES}/{other}/{name} beside it"),
                )),
                Some(others) => {
                    compare(said, others, &format!("{LOCALES}/{FIRST}/{name}"), other, &mut failures);
                    lacking(others, said, &format!("{LOCALES}/{other}/{name}"), FIRST, &mut failures);
                }
            }
        }
        for name in files.keys().filter(|name| !first.contains_key(*name)) {
            failures.push(Failure::new(
                format!("{LOCALES}/{other}/{name}"),
                1,
                format!("`{FIRST}` has no file of this name"),
                "rename it, or write the other beside it",
            ));
        }
    }
    failures
}

fn languages_files(tree: &Tree, language: &str, failures: &mut Vec<Failure>) -> BTreeMap<String, File> {
    let folder = format!("{LOCALES}/{language}/");
    let mut files = BTreeMap::new();
    for file in tree.files.iter().filter(|file| file.path.starts_with(&folder) && file.path.ends_with(".ftl"))
    {
        let said = read(&file.path, &file.text, failures);
        for (key, one) in
            said.iter().filter(|(key, _)| files.values().any(|file: &File| file.contains_key(*key)))
        {
            failures.push(Failure::new(
                file.path.as_str(),
                one.line,
                format!("`{key}` stands in another file of this language too"),
                "keep one of them",
            ));
        }
        files.insert(file.path[folder.len()..].to_owned(), said);
    }
    files
}

fn read(path: &str, text: &str, failures: &mut Vec<Failure>) -> File {
    let mut file = File::new();
    let (resource, errors) = match fluent_syntax::parser::parse(text) {
        Ok(resource) => (resource, Vec::new()),
        Err((resource, errors)) => (resource, errors),
    };
    for error in errors {
        failures.push(Failure::new(
            path,
            line_of(text, error.pos.start),
            format!("this cannot be read: {}", error.kind),
            "mend the message; Fluent leaves it out as it is",
        ));
    }
    for entry in resource.body {
        let Entry::Message(message) = entry else { continue };
        let line = line_of(text, message.id.name.as_ptr() as usize - text.as_ptr() as usize);
        let mut add = |name: String, pattern: &Pattern<&str>| {
            let mut arguments = BTreeSet::new();
            of_pattern(pattern, &mut arguments);
            if file.insert(name.clone(), Said { line, arguments }).is_some() {
                failures.push(Failure::new(path, line, format!("`{name}` stands twice"), "keep one of them"));
            }
        };
        if let Some(value) = &message.value {
            add(message.id.name.to_owned(), value);
        }
        for attribute in &message.attributes {
            add(format!("{}.{}", message.id.name, attribute.id.name), &attribute.value);
        }
    }
    file
}

/// What the second lacks of the first, and where the arguments differ.
fn compare(one: &File, other: &File, path: &str, language: &str, failures: &mut Vec<Failure>) {
    lacking(one, other, path, language, failures);
    // A language may choose its form by a count or a code that the other does not need.
    let shown = |said: &Said| -> BTreeSet<String> {
        let by_form = |name: &&String| name.ends_with("-count") || name.ends_with("-code");
        said.arguments.iter().filter(|name| !by_form(name)).cloned().collect()
    };
    for (key, said) in one {
        let Some(others) = other.get(key) else { continue };
        let (here, there) = (shown(said), shown(others));
        if here != there {
            let list = |names: &BTreeSet<String>| names.iter().cloned().collect::<Vec<_>>().join(", ");
            failures.push(Failure::new(
                path,
                said.line,
                format!("`{key}` takes {{{}}} here and {{{}}} in `{language}`", list(&here), list(&there)),
                "say the same in both",
            ));
        }
    }
}

fn lacking(one: &File, other: &File, path: &str, language: &str, failures: &mut Vec<Failure>) {
    for (key, said) in one.iter().filter(|(key, _)| !other.contains_key(*key)) {
        failures.push(Failure::new(
            path,
            said.line,
            format!("`{language}` lacks `{key}`"),
            "write it in the file of the same name",
        ));
    }
}

fn of_pattern(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, found);
        }
    }
}

fn of_expression(expression: &Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, found),
        Expression::Select { selector, variants } => {
            of_inline(selector, found);
            variants.iter().for_each(|variant| of_pattern(&variant.value, found));
        }
    }
}

fn of_inline(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, found),
        _ => {}
    }
}

/// The line, from 1, that a place in a text stands on.
fn line_of(text: &str, place: usize) -> usize {
    text.bytes().take(place).filter(|byte| *byte == b'\n').count() + 1
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(english: &str, spanish: &str) -> Vec<String> {
        let mut failures = Vec::new();
        let one = read("en.ftl", english, &mut failures);
        let other = read("es.ftl", spanish, &mut failures);
        compare(&one, &other, "en.ftl", "es", &mut failures);
        lacking(&other, &one, "es.ftl", "en", &mut failures);
        failures.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn the_same_in_both_passes() {
        assert_eq!(
            said("a = One { $tip }\n    .do = Clean it\n", "a = Una { $tip }\n    .do = Límpiela\n"),
            [""; 0]
        );
        let counted = "a = { $tips-count ->\n    [one] one { $tips }\n   *[other] more { $tips }\n    }\n";
        assert_eq!(said(counted, "a = unas { $tips }\n"), [""; 0]);
    }

    #[test]
    fn a_missing_key_attribute_or_argument_fails() {
        assert_eq!(said("a = One\nb = Two\n", "a = Una\n").len(), 1);
        assert_eq!(said("a = One\n", "a = Una\nb = Dos\n").len(), 1);
        assert_eq!(said("a = One\n    .do = Clean it\n", "a = Una\n").len(), 1);
        assert_eq!(said("a = One { $tip }\n", "a = Una { $boquilla }\n").len(), 1);
    }

    #[test]
    fn what_cannot_be_read_and_what_stands_twice_fails() {
        assert!(!said("a = One { $tip\n", "a = Una\n").is_empty());
        assert!(!said("a = One\na = Two\n", "a = Una\n").is_empty());
    }
}
