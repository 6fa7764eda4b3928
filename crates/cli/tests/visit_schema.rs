//! The JSON Schema that `visit schema` prints: what it is made of, and that it takes the visits that the reader takes.
//!
//! The keywords it uses are few; [`complaints`] reads them as JSON Schema draft 2020-12 (Core 10.3, Validation 6) has
//! them, and refuses to guess at any other.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking

mod common;

use common::{answer, root, run_with, text, visit};
use serde_json::{Map, Value, json};
use toml::de::{DeTable, DeValue};

/// What a schema has against a value: nothing where it is in order.
fn complaints(schema: &Value, value: &Value, at: &str) -> Vec<String> {
    let Some(rules) = schema.as_object() else { panic!("a schema is an object: {schema}") };
    let mut found = Vec::new();
    for (keyword, rule) in rules {
        let fine = match keyword.as_str() {
            "$schema" | "title" | "description" => rule.is_string(),
            "type" => types(rule).iter().any(|name| is(name, value)),
            "enum" => rule.as_array().expect("an enum is a list").contains(value),
            "minimum" => value.as_f64().is_none_or(|number| number >= rule.as_f64().expect("a number")),
            "required" => value.as_object().is_none_or(|object| {
                rule.as_array()
                    .expect("a list")
                    .iter()
                    .all(|name| object.contains_key(name.as_str().expect("a name")))
            }),
            "anyOf" => rule
                .as_array()
                .expect("anyOf is a list")
                .iter()
                .any(|one| complaints(one, value, at).is_empty()),
            "items" => {
                for (place, item) in value.as_array().into_iter().flatten().enumerate() {
                    found.extend(complaints(rule, item, &format!("{at}[{place}]")));
                }
                true
            }
            "properties" | "additionalProperties" => {
                if keyword == "additionalProperties" || !rules.contains_key("additionalProperties") {
                    found.extend(members(rules, value, at));
                }
                true
            }
            other => panic!("the keyword {other} is not known here"),
        };
        if !fine {
            found.push(format!("{at}: {keyword} {rule} does not hold for {value}"));
        }
    }
    found
}

fn members(rules: &Map<String, Value>, value: &Value, at: &str) -> Vec<String> {
    let Some(object) = value.as_object() else { return Vec::new() };
    let known = rules.get("properties").and_then(Value::as_object);
    object
        .iter()
        .flat_map(|(name, member)| {
            let at = format!("{at}.{name}");
            match (known.and_then(|known| known.get(name)), rules.get("additionalProperties")) {
                (Some(schema), _) => complaints(schema, member, &at),
                (None, Some(Value::Bool(false))) => vec![format!("{at} is not known")],
                (None, Some(schema)) => complaints(schema, member, &at),
                (None, None) => Vec::new(),
            }
        })
        .collect()
}

fn types(rule: &Value) -> Vec<&str> {
    match rule {
        Value::String(name) => vec![name],
        Value::Array(names) => names.iter().map(|name| name.as_str().expect("a type's name")).collect(),
        other => panic!("type {other}"),
    }
}

fn is(name: &str, value: &Value) -> bool {
    match name {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "number" => value.is_number(),
        "integer" => value.as_f64().is_some_and(|number| number.fract() == 0.0),
        other => panic!("the type {other} is not known here"),
    }
}

/// A TOML text as JSON.
fn json_of(text: &str) -> Value {
    let table = DeTable::parse(text).unwrap_or_else(|error| panic!("{error}"));
    table_of(table.get_ref())
}

fn table_of(table: &DeTable<'_>) -> Value {
    let members = table.iter().map(|(name, value)| (name.get_ref().to_string(), value_of(value.get_ref())));
    Value::Object(members.collect())
}

fn value_of(value: &DeValue<'_>) -> Value {
    let number = |text: &str| json!(text.replace('_', "").parse::<f64>().expect("a number"));
    match value {
        DeValue::String(text) => Value::from(text.as_ref()),
        DeValue::Integer(whole) => number(whole.as_str()),
        DeValue::Float(float) => number(float.as_str()),
        DeValue::Boolean(yes) => Value::from(*yes),
        DeValue::Datetime(day) => Value::from(day.to_string()),
        DeValue::Array(list) => Value::Array(list.iter().map(|value| value_of(value.get_ref())).collect()),
        DeValue::Table(table) => table_of(table),
    }
}

fn schema() -> Value {
    let schema: Value = serde_json::from_str(&text(&["visit", "schema"])).expect("the schema is JSON");
    assert_eq!(answer(&["visit", "schema"]), schema, "the same with --json");
    schema
}

#[test]
fn the_schema_takes_every_visit_that_the_reader_takes() {
    let schema = schema();
    assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
    let folder = std::fs::read_dir(visit("boom").replace("boom.toml", "")).expect("the visits");
    let mut files: Vec<_> = folder.map(|entry| entry.expect("a visit").path()).collect();
    files.push(root().join("demo/willow-bend.toml"));
    assert!(files.len() > 15);
    for file in files {
        let content = std::fs::read_to_string(&file).expect("a visit");
        assert_eq!(complaints(&schema, &json_of(&content), ""), Vec::<String>::new(), "{}", file.display());
    }
    assert!(complaints(&schema, &json!({}), "").is_empty(), "an empty visit");
}

#[test]
fn the_schema_and_the_reader_refuse_the_same() {
    let schema = schema();
    for wrong in [
        "farm = \"Willow Bend Farm\"",
        "[boom]\ntips = 3",
        "[visit]\nfram = \"Willow Bend Farm\"",
        "[sprayer]\nkind = \"airplane\"\ntips = 3\nspacing = \"20 in\"",
        "[sprayer]\ntips = 0\nspacing = \"20 in\"",
        "[sprayer]\ntips = 2.5\nspacing = \"20 in\"",
        "[sprayer]\nsections = 4\nspacing = \"20 in\"",
        "[look]\nno_leaks = \"maybe\"",
        "[look]\nno_leaks = true",
        "[drive]\ncourse = \"204 ft\"\nruns = \"27 s\"",
        "[drive]\ncourse = \"204 ft\"\nruns = [{ way = \"there\" }]",
        "[drive]\ncourse = \"204 ft\"\nruns = [{ time = \"27 s\", way = \"up\" }]",
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [{ time = \"30 s\" }]",
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [{ reading = 14, cup = 1 }]",
        "[catch]\ntime = \"30 s\"\ncup_marks = \"1 fl oz\"\n[[catch.round]]\nreadings = [true]",
        "[[product]]\nname = \"A\"\nrate = [\"2 pt/ac\"]",
        "product = 3",
    ] {
        assert!(!complaints(&schema, &json_of(wrong), "").is_empty(), "the schema takes {wrong}");
        let ran = run_with(&["visit", "check", "-"], wrong.as_bytes());
        assert_eq!(ran.status, 2, "the reader takes {wrong}");
    }
}
