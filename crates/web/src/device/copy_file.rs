//! A second copy that keeps itself in a file, where a browser can write to one. `page/boot.js` holds the file; it says what
//! became of it on the page's root, and hears what to write.

use core::time::Duration;
use std::cell::Cell;

use leptos::prelude::{document, set_timeout, window, window_event_listener_untyped};
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit};
use yard::{CopyFile, Event};

use super::copy;
use crate::app::App;

/// How long after a line the copy is written: a row of cups is one copy. Our own choice.
const SOON: Duration = Duration::from_secs(2);

thread_local! {
    /// Whether a copy is to be written soon already.
    static WAITS: Cell<bool> = const { Cell::new(false) };
}

/// Tells what there is, and listens for as long as the page is there.
pub fn listen(app: App) {
    let told = move || {
        let noted = document().document_element().and_then(|root| root.get_attribute("data-copy"));
        app.send(Event::CopyFileTold(match noted.as_deref() {
            Some("kept") => CopyFile::Kept,
            Some("asks") => CopyFile::Asks,
            Some("none") => CopyFile::NotChosen,
            _ => CopyFile::CannotBe,
        }));
    };
    window_event_listener_untyped("evenswath-copy", move |_| told());
    window_event_listener_untyped("evenswath-copy-written", move |_| app.send(Event::CopyHanded));
    told();
}

/// Lets the person choose the file, or gives the browser leave again.
pub fn choose() {
    say("evenswath-copy-choose", &JsValue::NULL);
}

/// Writes the copy in a moment, with all that is kept by then.
pub fn write_soon(app: App) {
    if WAITS.replace(true) {
        return;
    }
    set_timeout(
        move || {
            WAITS.set(false);
            if let Some(text) = copy::written(app) {
                say("evenswath-copy-write", &text.into());
            }
        },
        SOON,
    );
}

fn say(event: &str, detail: &JsValue) {
    let with = CustomEventInit::new();
    with.set_detail(detail);
    if let Ok(event) = CustomEvent::new_with_event_init_dict(event, &with) {
        // Nobody may refuse this event, so whether somebody did says nothing.
        let _ = window().dispatch_event(&event);
    }
}
