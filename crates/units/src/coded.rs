//! The error model: a code that never changes, the fields as arguments, an English sentence, a hint.

use crate::amount::Args;

/// An error or finding that a program may tell apart and a person may read.
///
/// `Display` is English, for developers and as the command line's last resort; people read the sentence
/// made from [`Coded::code`] and [`Coded::args`] in their own language.
pub trait Coded: core::fmt::Display {
    /// The stable code, in `snake_case`; it never changes its meaning.
    fn code(&self) -> &'static str;

    /// Which of several sentences of one code is meant, where it has several: a code and its case name one sentence.
    fn case(&self) -> Option<&'static str> {
        None
    }

    /// The fields, by name.
    fn args(&self) -> Args;

    /// What would do, where there is something to say.
    fn hint(&self) -> Option<String> {
        None
    }
}
