//! How a number was reached, as an agent would write it on the board.

use units::{Figure, Working};

use crate::catalogue::Words;

impl Words {
    /// The title of a working.
    #[must_use]
    pub fn working_title(&self, working: &Working) -> String {
        self.find(&format!("working-{}", working.code), None).unwrap_or_else(|| plain_words(working.code))
    }

    /// The formula in the names of its figures.
    #[must_use]
    pub fn formula(&self, working: &Working) -> String {
        // In English the formula in the code is the sentence itself: one formula, one place.
        self.find(&format!("formula-{}", key(working.formula)), None)
            .unwrap_or_else(|| working.formula.to_string())
    }

    /// The name of a figure.
    #[must_use]
    pub fn figure_name(&self, figure: &Figure) -> String {
        self.find(&format!("figure-{}", key(figure.name)), None).unwrap_or_else(|| figure.name.to_string())
    }

    /// The lines of a working: formula, figures, outcome, source, and under it the workings it rests on.
    #[must_use]
    pub fn working(&self, working: &Working) -> Vec<String> {
        let mut lines = vec![self.formula(working)];
        for figure in &working.figures {
            lines.push(format!("  {} = {}", self.figure_name(figure), self.arg(&figure.value)));
        }
        if let Some(result) = &working.result {
            lines.push(format!("  {}", self.say("working_gives", &[("result", self.arg(result).into())])));
        }
        lines.push(format!(
            "  {}",
            self.say("working_source", &[("source", self.source(working.source).into())])
        ));
        for step in &working.steps {
            lines.extend(self.working(step).into_iter().map(|line| format!("  {line}")));
        }
        lines
    }

    /// Who says so. A publication keeps its own name in every language; our own words about a source are translated.
    #[must_use]
    pub fn source(&self, source: &str) -> String {
        self.find(&format!("source-{}", key(source)), None).unwrap_or_else(|| source.to_string())
    }
}

/// A name of the catalogue for a text: its letters and digits in small, `_` between them, the first 60 of it.
fn key(text: &str) -> String {
    let mut key = String::new();
    for sign in text.chars() {
        if sign.is_ascii_alphanumeric() {
            key.push(sign.to_ascii_lowercase());
        } else if !key.ends_with('_') && !key.is_empty() {
            key.push('_');
        }
        // Long enough to tell formulas and sources apart; our own choice.
        if key.len() >= 60 {
            break;
        }
    }
    key.trim_end_matches('_').to_string()
}

/// A code as a heading: "rate_deviation" reads "Rate deviation".
fn plain_words(code: &str) -> String {
    let words = code.replace('_', " ");
    let mut letters = words.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}
