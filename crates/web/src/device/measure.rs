//! How long something took, noted where browsers keep such notes, for tests and whoever looks.

use leptos::prelude::window;

use super::js;

/// Does something and notes how long it took, under a name.
pub fn measured(name: &str, work: impl FnOnce()) {
    let Some(performance) = window().performance() else { return work() };
    let begun = performance.now();
    work();
    let options = js::object(&[("start", &begun.into()), ("end", &performance.now().into())]);
    // A browser too old for this keeps no note.
    js::call(&performance.into(), "measure", &[&name.into(), &options]);
}
