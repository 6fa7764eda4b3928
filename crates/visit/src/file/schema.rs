//! The JSON Schema of a visit file, for editors that help while it is filled in.

use super::fields::{Field, SECTIONS, Section, Several, Shape};

/// Returns the JSON Schema (draft 2020-12) of the visit file as text.
///
/// *Source*: JSON Schema draft 2020-12, json-schema.org.
#[must_use]
pub fn schema() -> String {
    let tops: Vec<String> = SECTIONS
        .iter()
        .filter(|section| !section.name.contains('.'))
        .map(|section| format!("    {}: {}", quoted(section.name), section_schema(section)))
        .collect();
    format!(
        "{{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n  \"title\": \"A visit: one sprayer on one day\",\n  \
         \"type\": \"object\",\n  \"additionalProperties\": false,\n  \"properties\": {{\n{}\n  }}\n}}\n",
        tops.join(",\n")
    )
}

fn section_schema(section: &Section) -> String {
    if section.fields.is_empty() {
        return format!(
            "{{\"description\": {}, \"type\": \"object\", \"additionalProperties\": {}}}",
            quoted(section.english),
            COUNTS
        );
    }
    let inner = format!("{}.", section.name);
    let mut properties: Vec<String> = section.fields.iter().map(field_schema).collect();
    properties.extend(SECTIONS.iter().filter_map(|below| {
        let name = below.name.strip_prefix(inner.as_str())?;
        Some(format!("{}: {}", quoted(name), section_schema(below)))
    }));
    let object = format!(
        "{{\"description\": {}, \"type\": \"object\", \"additionalProperties\": false, \"properties\": {{{}}}}}",
        quoted(section.english),
        properties.join(", ")
    );
    match section.several {
        Several::No => object,
        Several::Yes => format!("{{\"type\": \"array\", \"items\": {object}}}"),
    }
}

fn field_schema(field: &Field) -> String {
    let kind = match field.shape {
        Shape::Count => COUNT.to_string(),
        Shape::Counts => COUNTS.to_string(),
        Shape::Word(words) => {
            let words: Vec<String> = words.iter().map(|word| quoted(word)).collect();
            format!("{{\"enum\": [{}]}}", words.join(", "))
        }
        Shape::Words(words) => {
            let words: Vec<String> = words.iter().map(|word| quoted(word)).collect();
            format!("{{\"type\": \"array\", \"items\": {{\"enum\": [{}]}}}}", words.join(", "))
        }
        Shape::Quantities(dimension) => {
            format!(
                "{{\"type\": \"array\", \"items\": {{\"type\": \"string\", \"description\": {}}}}}",
                quoted(dimension.would_do())
            )
        }
        Shape::Runs => format!(
            "{{\"type\": \"array\", \"items\": {{\"anyOf\": [{TEXT}, {{\"type\": \"object\", \"required\": [\"time\"], \
             \"additionalProperties\": false, \"properties\": {{\"time\": {TEXT}, \"way\": {{\"enum\": [\"there\", \"back\"]}}}}}}]}}}}"
        ),
        Shape::Readings => {
            let one = format!(
                "{TEXT}, {{\"type\": \"number\"}}, {{\"type\": \"object\", \"required\": [\"reading\"], \"additionalProperties\": false, \
                 \"properties\": {{\"reading\": {{\"type\": [\"string\", \"number\"]}}, \"time\": {TEXT}, \"marks\": {TEXT}, \"run\": {COUNT}}}}}"
            );
            format!(
                "{{\"type\": \"array\", \"items\": {{\"anyOf\": [{one}, {{\"type\": \"array\", \"items\": {{\"anyOf\": [{one}]}}}}]}}}}"
            )
        }
        Shape::Text | Shape::Day => "{\"type\": [\"string\", \"number\"]}".to_string(),
        Shape::Quantity(_)
        | Shape::Percent
        | Shape::FlowAtPressure
        | Shape::ProductRate
        | Shape::Price
        | Shape::CatchTime
        | Shape::Marks
        | Shape::Limit => TEXT.to_string(),
    };
    let described = kind.replacen('{', &format!("{{\"description\": {}, ", quoted(field.english)), 1);
    format!("{}: {described}", quoted(field.name))
}

const TEXT: &str = "{\"type\": \"string\"}";
const COUNT: &str = "{\"type\": \"integer\", \"minimum\": 1}";
const COUNTS: &str = "{\"type\": \"array\", \"items\": {\"type\": \"integer\", \"minimum\": 1}}";

/// A JSON string. Source: RFC 8259, section 7; our texts hold no control signs.
fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}
