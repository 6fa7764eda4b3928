//! What a fact is worth, as it was written: letters stay letters, and no number is ever a converted one.

use serde_json::{Map, Value as Json};

/// A value as a visit file has it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Value {
    /// Letters as written: "204 ft", "14.50", "yes".
    Text(String),
    /// A whole number: tips of a section.
    Count(i64),
    /// Several.
    List(Vec<Value>),
    /// Several by name, in the order written.
    Table(Vec<(String, Value)>),
}

impl Value {
    /// Letters.
    #[must_use]
    pub fn text(text: &str) -> Self {
        Self::Text(text.to_string())
    }

    pub(crate) fn to_json(&self) -> Json {
        match self {
            Self::Text(text) => Json::from(text.as_str()),
            Self::Count(count) => Json::from(*count),
            Self::List(list) => Json::Array(list.iter().map(Self::to_json).collect()),
            Self::Table(table) => {
                let fields = table.iter().map(|(name, value)| (name.clone(), value.to_json()));
                Json::Object(fields.collect::<Map<String, Json>>())
            }
        }
    }

    /// `None` for what no version 1 entry holds: a fraction as a number, true, false, nothing.
    pub(crate) fn of_json(json: &Json) -> Option<Self> {
        match json {
            Json::String(text) => Some(Self::Text(text.clone())),
            Json::Number(number) => number.as_i64().map(Self::Count),
            Json::Array(list) => list.iter().map(Self::of_json).collect::<Option<_>>().map(Self::List),
            Json::Object(table) => {
                let fields = table.iter().map(|(name, value)| Some((name.clone(), Self::of_json(value)?)));
                fields.collect::<Option<_>>().map(Self::Table)
            }
            Json::Null | Json::Bool(_) => None,
        }
    }

    /// As a visit file has it on the right of the equals sign.
    pub(crate) fn to_toml(&self) -> String {
        match self {
            Self::Text(text) => quoted(text),
            Self::Count(count) => count.to_string(),
            Self::List(list) => {
                format!("[{}]", list.iter().map(Self::to_toml).collect::<Vec<_>>().join(", "))
            }
            Self::Table(table) => {
                let fields = table.iter().map(|(name, value)| format!("{} = {}", key(name), value.to_toml()));
                format!("{{ {} }}", fields.collect::<Vec<_>>().join(", "))
            }
        }
    }
}

/// A text in quotes, whatever signs it has.
///
/// *Source*: TOML 1.0, basic strings.
fn quoted(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 2);
    out.push('"');
    for sign in text.chars() {
        match sign {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            '\n' => out.push_str("\\n"),
            '\r' => out.push_str("\\r"),
            '\t' => out.push_str("\\t"),
            sign if sign.is_control() => out.push_str(&format!("\\u{:04X}", u32::from(sign))),
            sign => out.push(sign),
        }
    }
    out.push('"');
    out
}

/// A name on the left of the equals sign, in quotes where it has other signs than a bare key may have.
pub(crate) fn key(name: &str) -> String {
    let bare = |sign: char| sign.is_ascii_alphanumeric() || sign == '_' || sign == '-';
    if !name.is_empty() && name.chars().all(bare) { name.to_string() } else { quoted(name) }
}
