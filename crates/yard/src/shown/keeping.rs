//! Where what is written is kept, how safe it is there, and the one thing to do about it.

use crate::moving::date_of_days;
use crate::state::{Keeping, Promise, State};

/// Where it is kept, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptLine {
    /// In a sentence.
    pub says: String,
    /// Why the device keeps nothing, where it does not.
    pub refused: Option<String>,
    /// Whether a copy is the thing to do now.
    pub wants_copy: bool,
}

/// Where it is kept.
#[must_use]
pub fn kept(state: &State) -> KeptLine {
    let words = &state.words;
    let says = |key: &str| KeptLine { says: words.label(key), refused: None, wants_copy: false };
    match &state.keeping {
        Keeping::Opening => says("yard-opening"),
        Keeping::Nowhere { why, .. } => KeptLine {
            refused: Some(words.say("yard-kept_nowhere_why", &[("why", why.clone().into())])),
            ..says("yard-kept_nowhere")
        },
        Keeping::Here { .. } if state.lines.is_empty() && state.on_the_way.is_empty() => {
            says("yard-kept_empty")
        }
        Keeping::Here { .. } => {
            let only_here = state.safety.only_here;
            let lines = i64::try_from(only_here).unwrap_or(i64::MAX);
            KeptLine {
                says: words.say("yard-only_here", &[("lines", lines.into())]),
                refused: None,
                wants_copy: only_here > 0,
            }
        }
    }
}

/// What the browser promised.
#[must_use]
pub fn promise(state: &State) -> String {
    state.words.label(match state.safety.promised {
        Promise::Unknown => "yard-promise_unknown",
        Promise::MayClear => "yard-promise_may_clear",
        Promise::Keeps => "yard-promise_keeps",
    })
}

/// Milliseconds of a day.
const DAY: i64 = 86_400_000;

/// When the last copy was made.
#[must_use]
pub fn last_copy(state: &State) -> String {
    let words = &state.words;
    match state.safety.last_copy {
        None => words.label("yard-no_copy"),
        Some(at) => {
            let date = words.date(&date_of_days(at.div_euclid(DAY)));
            words.say("yard-last_copy", &[("date", date.into())])
        }
    }
}
