//! The working of a number: the formula, the figures put in, the source; an agent teaches from it.

use crate::amount::{Arg, Args};
use crate::kind::UnitSystem;

/// One figure that went into a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// Its name in the formula.
    pub name: &'static str,
    /// Its value.
    pub value: Arg,
}

/// How a number was reached.
#[derive(Clone, Debug, PartialEq)]
pub struct Working {
    /// The stable code of the calculation.
    pub code: &'static str,
    /// The formula in the names of the figures, with no constant that depends on units.
    pub formula: &'static str,
    /// The figures put in, in the order of the formula.
    pub figures: Vec<Figure>,
    /// The outcome.
    pub result: Option<Arg>,
    /// Who says that this is the formula.
    pub source: &'static str,
    /// The workings of figures that were themselves worked out.
    pub steps: Vec<Working>,
}

impl Working {
    /// Starts a working; figures and result are added to it.
    #[must_use]
    pub const fn new(code: &'static str, formula: &'static str, source: &'static str) -> Self {
        Self { code, formula, figures: Vec::new(), result: None, source, steps: Vec::new() }
    }

    /// Adds a figure that was put in.
    #[must_use]
    pub fn figure(mut self, name: &'static str, value: Arg) -> Self {
        self.figures.push(Figure { name, value });
        self
    }

    /// Sets the outcome.
    #[must_use]
    pub fn result(mut self, value: Arg) -> Self {
        self.result = Some(value);
        self
    }

    /// Adds the working of one of the figures.
    #[must_use]
    pub fn step(mut self, step: Self) -> Self {
        self.steps.push(step);
        self
    }

    /// The lines an agent would write on the board, in English.
    #[must_use]
    pub fn lines(&self, system: UnitSystem) -> Vec<String> {
        let mut lines = vec![self.formula.to_string()];
        for figure in &self.figures {
            lines.push(format!("  {} = {}", figure.name, figure.value.text(system)));
        }
        if let Some(result) = &self.result {
            lines.push(format!("  gives {}", result.text(system)));
        }
        lines.push(format!("  source: {}", self.source));
        for step in &self.steps {
            lines.extend(step.lines(system).into_iter().map(|line| format!("  {line}")));
        }
        lines
    }

    /// The figures as named arguments, for sentences.
    #[must_use]
    pub fn args(&self) -> Args {
        self.figures.iter().fold(Args::new(), |args, figure| args.with(figure.name, figure.value.clone()))
    }
}
