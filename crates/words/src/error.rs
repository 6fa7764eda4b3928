//! An error in the reader's words: what is wrong, and what would do.

use units::{Args, Coded};

use crate::catalogue::Words;

/// Something that is wrong, taken out of the error that told it so that it can be said in any language later.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    /// The stable code.
    pub code: &'static str,
    /// Which of the sentences of the code.
    pub case: Option<&'static str>,
    /// The fields.
    pub args: Args,
    /// The English of it, as the last resort.
    pub english: String,
    /// What would do, in English, as the last resort.
    pub hint: Option<String>,
}

impl Said {
    /// What an error says.
    #[must_use]
    pub fn by(error: &dyn Coded) -> Self {
        Self {
            code: error.code(),
            case: error.case(),
            args: error.args(),
            english: error.to_string(),
            hint: error.hint(),
        }
    }
}

impl core::fmt::Display for Said {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str(&self.english)
    }
}

impl Coded for Said {
    fn code(&self) -> &'static str {
        self.code
    }

    fn case(&self) -> Option<&'static str> {
        self.case
    }

    fn args(&self) -> Args {
        self.args.clone()
    }

    fn hint(&self) -> Option<String> {
        self.hint.clone()
    }
}

impl Words {
    /// What is wrong.
    #[must_use]
    pub fn error(&self, error: &dyn Coded) -> String {
        self.coded(error).unwrap_or_else(|| error.to_string())
    }

    /// What would do, where there is something to say.
    #[must_use]
    pub fn hint(&self, error: &dyn Coded) -> Option<String> {
        self.coded_action(error).or_else(|| error.hint())
    }
}
