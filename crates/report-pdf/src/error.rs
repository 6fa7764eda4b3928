//! Why there is no PDF.

use units::{Arg, Args, Coded};

/// Why there is no PDF.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PdfError {
    /// The program was built without the engine that sets the pages.
    #[error("this program was built without the part that makes PDF files")]
    NotBuilt,
    /// The engine could not set the sheet.
    #[error("the sheet could not be set as PDF: {why}")]
    Failed {
        /// What the engine says, in English.
        why: String,
    },
}

impl Coded for PdfError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotBuilt => "pdf_not_built",
            Self::Failed { .. } => "pdf_failed",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::NotBuilt => Args::new(),
            Self::Failed { why } => Args::new().with("why", Arg::Text(why.clone())),
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NotBuilt => "build it with `cargo xtask dist`, or make the HTML page and print that",
            Self::Failed { .. } => "make the HTML page and print that",
        };
        Some(hint.to_owned())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_says_what_would_do_instead() {
        let failed = PdfError::Failed { why: "no font".to_owned() };
        assert_eq!(failed.to_string(), "the sheet could not be set as PDF: no font");
        assert_eq!(failed.args().fill("{why}", units::UnitSystem::Us), "no font");
        for (error, code) in [(PdfError::NotBuilt, "pdf_not_built"), (failed, "pdf_failed")] {
            assert_eq!(error.code(), code);
            assert!(error.hint().is_some_and(|hint| hint.contains("HTML")));
        }
    }
}
