//! The words of another language: from this device, where the app is kept on it, else from where it came.

use wasm_bindgen_futures::spawn_local;
use words::Reader;
use yard::Event;

use crate::app::App;
use crate::shell;

/// Fetches the words for a reader.
pub fn fetch(app: App, reader: Reader) {
    spawn_local(async move {
        app.send(match shell::fetch_words(reader).await {
            Some(words) => Event::WordsHere(words.into()),
            None => Event::WordsNotHere,
        });
    });
}
