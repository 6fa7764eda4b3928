//! The address of the page says which visit is open, and the browser's own "back" leads to the screen above.
//!
//! While anything but the first screen shows, there is one entry more in the browser's history than before. "Back" takes that
//! entry away; we go to the screen above and, where that is not the first one, put an entry there again.

use std::cell::{Cell, RefCell};

use leptos::ev;
use leptos::prelude::{Effect, window, window_event_listener};
use notebook::ThingId;
use wasm_bindgen::JsValue;
use yard::{Event, Screen};

use super::{ask, remember};
use crate::app::App;

/// What stands before a visit in the address.
const VISIT: &str = "#visit/";
/// What stands before a pairing secret in the address.
const PAIR: &str = "#pair/";

/// Where the page stands in the browser's history.
#[derive(Default)]
pub struct Address {
    hash: RefCell<String>,
    /// Whether our own entry is there.
    entry: Cell<bool>,
    /// How many steps back are our own doing.
    ours: Cell<u32>,
}

impl Address {
    /// Another visit is open, or none.
    pub fn visit(&self, visit: Option<ThingId>) {
        self.hash.replace(visit.map(|id| format!("{VISIT}{id}")).unwrap_or_default());
        if self.entry.get() {
            self.write();
        }
    }

    /// The first screen shows, or another.
    fn shows(&self, first: bool) {
        match (first, self.entry.get()) {
            (true, true) => {
                self.entry.set(false);
                if let Ok(history) = window().history()
                    && history.back().is_ok()
                {
                    self.ours.set(self.ours.get() + 1);
                }
            }
            (false, false) => {
                self.entry.set(true);
                if let Ok(history) = window().history() {
                    // What lies below is the first screen, whatever the address was. Refused in odd frames only; then the
                    // browser's back leaves the page.
                    let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&first_screen()));
                    let _ = history.push_state_with_url(&JsValue::NULL, "", Some(&self.page()));
                }
            }
            _ => {}
        }
    }

    fn write(&self) {
        if let Ok(history) = window().history() {
            let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&self.page()));
        }
    }

    /// The address of the page with the visit that is open.
    fn page(&self) -> String {
        format!("{}{}", first_screen(), self.hash.borrow())
    }
}

/// The address of the page with no visit open.
fn first_screen() -> String {
    let place = window().location();
    format!("{}{}", place.pathname().unwrap_or_default(), place.search().unwrap_or_default())
}

/// The visit that the address named when the page was opened.
pub fn visit_at_start() -> Option<String> {
    let hash = window().location().hash().ok()?;
    hash.strip_prefix(VISIT).map(str::to_string)
}

/// A pairing secret in the address, as a server's picture to scan may carry it, is remembered and taken out of sight.
pub fn take_secret() {
    let hash = window().location().hash().unwrap_or_default();
    let Some(secret) = hash.strip_prefix(PAIR) else { return };
    remember::remember(ask::PAIRING, secret);
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&first_screen()));
    }
}

/// Listens for as long as the page is there.
pub fn listen(app: App) {
    let first = app.memo(|state| state.screen == Screen::Gate);
    Effect::new(move |before: Option<()>| {
        let first = first.get();
        // Before the notebook is open the address is left as it was found.
        if before.is_some() {
            app.device().address.shows(first);
        }
    });
    window_event_listener(ev::popstate, move |_| {
        let device = app.device();
        let address = &device.address;
        if address.ours.get() > 0 {
            address.ours.set(address.ours.get() - 1);
            return;
        }
        if !address.entry.replace(false) {
            return;
        }
        app.send(Event::Back);
        address.shows(app.look(|state| state.screen == Screen::Gate));
    });
}
