//! What a value says of itself, where it is not a cup.

use crate::drawing::{Node, Role};
use crate::row_of_cups::{CupMark, sign};

/// What a value says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mark {
    /// Nothing that asks for anything.
    Quiet,
    /// Too much, too wide: act.
    High,
    /// Too little, too narrow: act.
    Low,
    /// Not to be told from what was read.
    CannotTell,
}

impl Mark {
    /// The sign that stands beside the value, as under a cup.
    pub(crate) fn sign(self, x: f64, y: f64) -> Vec<Node> {
        sign(
            match self {
                Mark::Quiet => CupMark::Quiet,
                Mark::High => CupMark::High,
                Mark::Low => CupMark::Low,
                Mark::CannotTell => CupMark::CannotTell,
            },
            x,
            y,
        )
    }

    /// The ink of its text.
    pub(crate) fn text(self) -> Role {
        match self {
            Mark::High | Mark::Low => Role::TextAct,
            Mark::Quiet | Mark::CannotTell => Role::Text,
        }
    }

    /// The ink of its point.
    pub(crate) fn value(self) -> Role {
        match self {
            Mark::High | Mark::Low => Role::MarkAct,
            Mark::Quiet | Mark::CannotTell => Role::Value,
        }
    }
}
