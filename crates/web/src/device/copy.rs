//! The whole notebook as a file, handed over.

use notebook::Notebook;
use yard::Event;

use super::share;
use crate::app::App;

/// The media type of a notebook's file: lines of JSON.
const KIND: &str = "application/x-ndjson";

/// Writes every line to a file and hands it over.
///
/// The lines are those that the page holds, all of which the store has answered for: a phone lets a page hand something over
/// only while a tap is worked on, and the store would have to be waited for.
pub fn copy(app: App) {
    let Some(content) = written(app) else { return };
    let (at, _) = super::clock::now();
    let name = format!("evenswath-notebook-{}.jsonl", day(at.wall, at.offset_minutes));
    share::file(&name, KIND, &content, move || app.send(Event::CopyHanded));
}

/// The notebook's file, of every line that the page holds; none before the store is open.
pub fn written(app: App) -> Option<String> {
    app.look(|state| {
        let mut book = Notebook::new(state.holder()?.notebook);
        for line in state.lines.values().flatten() {
            book.take(line.clone());
        }
        Some(notebook::write_file(&book))
    })
}

/// The day on the wall, as year-month-day.
fn day(wall: i64, offset_minutes: i16) -> String {
    // A minute has 60,000 milliseconds.
    #[allow(clippy::cast_precision_loss, reason = "milliseconds since 1970 are far below 2^53")]
    let local = (wall + i64::from(offset_minutes) * 60_000) as f64;
    let written = js_sys::Date::new(&local.into()).to_iso_string();
    // The first ten letters of ISO 8601 are the day.
    String::from(written).chars().take(10).collect()
}
