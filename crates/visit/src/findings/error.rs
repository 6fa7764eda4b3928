//! A fact of a visit that cannot be, with the part it stands in.

use units::{Arg, Args, Coded, UnitSystem};

/// What is wrong, and in which part of the visit.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckError {
    /// The part of the visit, as in its file.
    pub part: &'static str,
    code: &'static str,
    case: Option<&'static str>,
    message: String,
    args: Args,
    hint: Option<String>,
}

impl CheckError {
    /// The error of a calculation, in a part of the visit: its code, case and fields stay what they are.
    pub(super) fn of<E: Coded>(part: &'static str) -> impl Fn(E) -> Self {
        move |error| Self {
            part,
            code: error.code(),
            case: error.case(),
            message: error.to_string(),
            args: error.args(),
            hint: error.hint(),
        }
    }

    /// Something that is needed and not there.
    pub(super) fn needed(part: &'static str, code: &'static str, message: &str, hint: &str) -> Self {
        let (message, hint) = (message.to_string(), Some(hint.to_string()));
        Self { part, code, case: None, message, args: Args::new(), hint }
    }

    /// Puts an argument into the message, in which `{name}` stands for it.
    pub(super) fn with(mut self, name: &'static str, arg: Arg) -> Self {
        let one = Args::new().with(name, arg.clone());
        self.message = one.fill(&self.message, UnitSystem::Us);
        self.args = self.args.with(name, arg);
        self
    }

    /// What is wrong in English, without the part it stands in.
    #[must_use]
    pub fn message(&self) -> &str {
        &self.message
    }
}

impl core::fmt::Display for CheckError {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "{}: {}", self.part, self.message)
    }
}

impl core::error::Error for CheckError {}

impl Coded for CheckError {
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
