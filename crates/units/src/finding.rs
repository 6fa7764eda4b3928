//! A finding: something worth telling, computed from facts and never stored.

use crate::amount::{Amount, Arg, Args};
use crate::coded::Coded;
use crate::kind::UnitSystem;
use crate::last_resort::last_resort;
use crate::verdict::Verdict;
use crate::working::Working;

/// How soon a finding must be read; the order is the order on the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// Over a label's limit or a danger: said first and differently.
    Stop,
    /// Something to put right.
    Act,
    /// Something the readings do not settle, with what would.
    Settle,
    /// Usable but doubtful input.
    Doubt,
    /// Good to know.
    Note,
}

/// Something worth telling, with what it rests on.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    code: &'static str,
    case: Option<&'static str>,
    /// How soon it must be read.
    pub weight: Weight,
    args: Args,
    english: &'static str,
    do_english: Option<&'static str>,
    /// The value with its range, where the finding is about one.
    pub value: Option<Amount>,
    /// The verdict, where there is a limit.
    pub verdict: Option<Verdict>,
    /// Who sets the limit.
    pub limit_source: Option<&'static str>,
    /// How it was reached.
    pub working: Option<Working>,
}

impl Finding {
    /// A finding with its code and its English sentence, in which `{name}` stands for an argument.
    #[must_use]
    pub const fn new(weight: Weight, code: &'static str, english: &'static str) -> Self {
        Self {
            code,
            case: None,
            weight,
            args: Args::new(),
            english: last_resort(english),
            do_english: None,
            value: None,
            verdict: None,
            limit_source: None,
            working: None,
        }
    }

    /// Says which of the sentences of its code is meant, where there are several ("one", "all", "finer").
    #[must_use]
    pub const fn case(mut self, case: &'static str) -> Self {
        self.case = Some(case);
        self
    }

    /// Adds an argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args = self.args.with(name, arg);
        self
    }

    /// Adds what to do about it, in English with the same arguments.
    #[must_use]
    pub const fn to_do(mut self, english: &'static str) -> Self {
        self.do_english = Some(last_resort(english));
        self
    }

    /// Adds the value the finding is about.
    #[must_use]
    pub fn about(mut self, value: Amount) -> Self {
        self.value = Some(value);
        self
    }

    /// Adds a verdict and who sets the limit.
    #[must_use]
    pub const fn judged(mut self, verdict: Verdict, limit_source: &'static str) -> Self {
        self.verdict = Some(verdict);
        self.limit_source = Some(limit_source);
        self
    }

    /// Adds the working.
    #[must_use]
    pub fn because(mut self, working: Working) -> Self {
        self.working = Some(working);
        self
    }

    /// The English sentence in a system of units.
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        self.args.fill(self.english, system)
    }

    /// What to do about it, in English.
    #[must_use]
    pub fn action(&self, system: UnitSystem) -> Option<String> {
        self.do_english.map(|english| self.args.fill(english, system))
    }
}

impl core::fmt::Display for Finding {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str(&self.text(UnitSystem::Us))
    }
}

impl Coded for Finding {
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
        self.action(UnitSystem::Us)
    }
}
