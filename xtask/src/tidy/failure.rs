//! One thing that is wrong, where, and what to do about it.

use std::fmt;

/// Sorts by place, so that failures of one file stand together.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Failure {
    pub path: String,
    /// From 1.
    pub line: usize,
    pub what: String,
    pub advice: String,
}

impl Failure {
    pub fn new(
        path: impl Into<String>,
        line: usize,
        what: impl Into<String>,
        advice: impl Into<String>,
    ) -> Failure {
        Failure { path: path.into(), line, what: what.into(), advice: advice.into() }
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}:{}: {}", self.path, self.line, self.what)?;
        if !self.advice.is_empty() {
            write!(out, "; {}", self.advice)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn is_printed_so_that_an_editor_can_jump_to_it() {
        let failure = Failure::new("crates/units/src/lib.rs", 7, "too long", "split it");
        assert_eq!(failure.to_string(), "crates/units/src/lib.rs:7: too long; split it");
    }
}
