//! Doing several things in a row, going on after a failure, and saying at the end how each one went.

use std::time::Instant;

/// How one step ended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    Passed,
    /// Not done on this machine: why, and how to get it.
    Skipped(String),
    Failed(String),
}

/// The steps done so far.
#[derive(Default)]
pub struct Steps {
    done: Vec<(&'static str, Outcome, u64)>,
}

impl From<Result<(), String>> for Outcome {
    fn from(result: Result<(), String>) -> Outcome {
        match result {
            Ok(()) => Outcome::Passed,
            Err(message) => Outcome::Failed(message),
        }
    }
}

impl Steps {
    /// Does a step and keeps its outcome. The next ones run even if it fails, so that one run tells everything.
    pub fn step(&mut self, name: &'static str, action: impl FnOnce() -> Outcome) {
        eprintln!("\n== {name}");
        let start = Instant::now();
        let outcome = action();
        self.done.push((name, outcome, start.elapsed().as_secs()));
    }

    /// Adds something that was left out of a step, so that it is said at the end too.
    pub fn left_out(&mut self, name: &'static str, why: String) {
        self.done.push((name, Outcome::Skipped(why), 0));
    }

    /// Prints the summary. An error if anything failed.
    pub fn finish(self) -> Result<(), String> {
        eprintln!("\n{}", self.summary());
        let failed: Vec<&str> = self
            .done
            .iter()
            .filter(|(_, outcome, _)| matches!(outcome, Outcome::Failed(_)))
            .map(|(name, _, _)| *name)
            .collect();
        if failed.is_empty() { Ok(()) } else { Err(format!("failed: {}", failed.join(", "))) }
    }

    fn summary(&self) -> String {
        let lines = self.done.iter().map(|(name, outcome, seconds)| match outcome {
            Outcome::Passed => format!("passed   {name} ({seconds} s)"),
            Outcome::Skipped(why) => format!("SKIPPED  {name}: {why}"),
            Outcome::Failed(message) => format!("FAILED   {name}: {message}"),
        });
        lines.collect::<Vec<_>>().join("\n")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failure_does_not_stop_the_rest_but_fails_the_whole() {
        let mut steps = Steps::default();
        steps.step("first", || Outcome::Failed("it broke".to_owned()));
        steps.step("second", || Outcome::Passed);
        assert_eq!(steps.done.len(), 2);
        assert_eq!(steps.finish(), Err("failed: first".to_owned()));
    }

    #[test]
    fn a_skipped_step_is_said_and_does_not_fail() {
        let mut steps = Steps::default();
        steps.left_out("wasm", "no wasm std".to_owned());
        assert!(steps.summary().contains("SKIPPED  wasm: no wasm std"));
        assert_eq!(steps.finish(), Ok(()));
    }
}
