//! Both languages say the same things: the same files, keys, attributes and arguments, and every line can be read.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser::parse;
use units::Args;
use words::{Language, Words, sources};

/// Message or attribute, and the arguments it takes.
type Messages = BTreeMap<String, BTreeSet<String>>;

fn arguments(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            match expression {
                Expression::Inline(inline) => inline_arguments(inline, found),
                Expression::Select { selector, variants } => {
                    inline_arguments(selector, found);
                    for variant in variants {
                        arguments(&variant.value, found);
                    }
                }
            }
        }
    }
}

fn inline_arguments(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_string());
        }
        InlineExpression::Placeable { expression } => match expression.as_ref() {
            Expression::Inline(inline) => inline_arguments(inline, found),
            Expression::Select { selector, .. } => inline_arguments(selector, found),
        },
        _ => {}
    }
}

fn messages(language: Language) -> Messages {
    let mut messages = Messages::new();
    for (file, text) in sources(language) {
        let resource = parse(*text)
            .unwrap_or_else(|(_, errors)| panic!("{}/{file}.ftl cannot be read: {errors:?}", language.tag()));
        for entry in resource.body {
            match entry {
                Entry::Message(message) => {
                    let mut names: Vec<(String, &Pattern<&str>)> = Vec::new();
                    names.extend(message.value.as_ref().map(|value| (message.id.name.to_string(), value)));
                    for attribute in &message.attributes {
                        names.push((format!("{}.{}", message.id.name, attribute.id.name), &attribute.value));
                    }
                    for (name, pattern) in names {
                        let mut found = BTreeSet::new();
                        arguments(pattern, &mut found);
                        assert!(
                            messages.insert(name.clone(), found).is_none(),
                            "{}: {name} stands twice",
                            language.tag()
                        );
                    }
                }
                Entry::Junk { content } => panic!("{}/{file}.ftl: {content}", language.tag()),
                _ => {}
            }
        }
    }
    messages
}

#[test]
fn both_languages_have_the_same_keys_and_arguments() {
    let (english, spanish) = (messages(Language::English), messages(Language::Spanish));
    let mut wrong = Vec::new();
    for (key, arguments) in &english {
        match spanish.get(key) {
            None => wrong.push(format!("es lacks {key}")),
            // A language may choose its form by a count or code that the other does not need.
            Some(other) => {
                let shown = |all: &BTreeSet<String>| -> BTreeSet<String> {
                    all.iter()
                        .filter(|name| !name.ends_with("-count") && !name.ends_with("-code"))
                        .cloned()
                        .collect()
                };
                if shown(arguments) != shown(other) {
                    wrong.push(format!("{key}: en takes {arguments:?}, es {other:?}"));
                }
            }
        }
    }
    wrong.extend(
        spanish.keys().filter(|key| !english.contains_key(*key)).map(|key| format!("en lacks {key}")),
    );
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(english.len() > 20);
}

#[test]
fn files_are_the_same_in_both() {
    let names = |language| sources(language).iter().map(|(name, _)| *name).collect::<Vec<_>>();
    assert_eq!(names(Language::English), names(Language::Spanish));
}

#[test]
fn a_key_that_nobody_wrote_shows_itself() {
    let words = Words::of(Language::Spanish);
    assert_eq!(words.label("no_such_key"), "no_such_key");
    assert_eq!(words.say_with("no_such_key", &Args::new()), "no_such_key");
}
