//! Where an input stands that is at fault: an option, a tip, a line of a file.

use words::Words;

/// Where an input stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// Nowhere in particular.
    Nowhere,
    /// An option, a field or a file by its name, which is the same in every language.
    Named(String),
    /// What was caught under a tip.
    Tip(u32),
    /// A gap between two tips.
    Gap(u32),
    /// What the tape showed at a tip.
    Mark(u32),
    /// Standard input, where a file could stand.
    StandardInput,
    /// A line and a column of a file.
    LineAndColumn(usize, usize),
}

impl From<&str> for Place {
    fn from(name: &str) -> Self {
        if name.is_empty() { Self::Nowhere } else { Self::Named(name.to_string()) }
    }
}

impl Place {
    /// The place as the reader names it; `None` for no place in particular.
    pub fn said(&self, words: &Words) -> Option<String> {
        let numbered = |key: &str, number: u32| words.say(key, &[("number", number.into())]);
        match self {
            Self::Nowhere => None,
            Self::Named(name) => Some(name.clone()),
            Self::Tip(number) => Some(numbered("at-tip", *number)),
            Self::Gap(number) => Some(numbered("at-gap", *number)),
            Self::Mark(number) => Some(numbered("at-mark", *number)),
            Self::StandardInput => Some(words.label("at-standard_input")),
            Self::LineAndColumn(line, column) => {
                let args = [("line", line.to_string().into()), ("column", column.to_string().into())];
                Some(words.say("at-line_and_column", &args))
            }
        }
    }
}
