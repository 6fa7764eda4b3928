//! The problem document: what is wrong, for programs by its code and for people in their language.

use std::collections::BTreeMap;

use axum::http::HeaderValue;
use serde::Serialize;
use serde_json::Value;
use units::{Arg, Args, Coded, UnitSystem};
use utoipa::ToSchema;
use words::{Language, Words};

use crate::problem::Problem;

/// What is wrong, as RFC 9457 writes it.
#[derive(Debug, Serialize, ToSchema)]
pub struct ProblemDocument {
    /// The kind of problem, as an address of its own that never changes: `/problems/` and the code
    #[serde(rename = "type")]
    pub kind: String,
    /// What kind of problem it is, in the reader's language
    pub title: String,
    /// The status of the answer
    pub status: u16,
    /// What is wrong, and what would do, in the reader's language
    pub detail: String,
    /// The stable code
    pub code: &'static str,
    /// The figures and names in it
    #[schema(value_type = Object)]
    pub args: BTreeMap<&'static str, Value>,
}

/// The document of a problem.
pub fn document(problem: &Problem, words: &Words) -> ProblemDocument {
    let code = problem.code();
    let said = words.error(problem);
    ProblemDocument {
        kind: format!("/problems/{code}"),
        title: words.label(&format!("title-{code}")),
        status: problem.status().as_u16(),
        detail: match words.hint(problem) {
            Some(hint) => format!("{said}; {hint}"),
            None => said,
        },
        code,
        args: json_of(&problem.args()),
    }
}

/// Arguments for programs.
pub fn json_of(args: &Args) -> BTreeMap<&'static str, Value> {
    let value = |arg: &Arg| match arg {
        Arg::Count(count) => Value::from(*count),
        other => Value::from(other.text(UnitSystem::Us)),
    };
    args.iter().map(|(name, arg)| (*name, value(arg))).collect()
}

/// The words of both languages, read once.
pub struct BothWords {
    english: Words,
    spanish: Words,
}

impl BothWords {
    /// Reads them.
    pub fn new() -> Self {
        Self { english: Words::of(Language::English), spanish: Words::of(Language::Spanish) }
    }

    /// The words for whoever asks for these languages (RFC 9110, 12.5.4): the first of ours that is wanted most.
    pub fn for_reader(&self, asked: Option<&HeaderValue>) -> &Words {
        let asked = asked.and_then(|asked| asked.to_str().ok()).unwrap_or_default();
        let mut best: Option<(f32, &Words)> = None;
        for range in asked.split(',') {
            let (tag, wanted) = crate::quality::split(range);
            let primary = tag.split('-').next().unwrap_or_default();
            let words = match primary.to_ascii_lowercase().as_str() {
                "en" => &self.english,
                "es" => &self.spanish,
                _ => continue,
            };
            if wanted > best.map_or(0.0, |(most, _)| most) {
                best = Some((wanted, words));
            }
        }
        best.map_or(&self.english, |(_, words)| words)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_that_is_wanted_most_is_taken() {
        let both = BothWords::new();
        for (asked, tag) in [
            ("es", "es"),
            ("es-MX,es;q=0.9,en;q=0.8", "es"),
            ("en-US,es;q=0.5", "en"),
            ("en;q=0.3, es;q=0.7", "es"),
            ("de, fr", "en"),
            ("es;q=0", "en"),
            ("", "en"),
            ("es;q=many", "en"),
        ] {
            let asked = HeaderValue::from_static(asked);
            assert_eq!(both.for_reader(Some(&asked)).reader().language.tag(), tag, "{asked:?}");
        }
        assert_eq!(both.for_reader(None).reader().language.tag(), "en");
    }
}
