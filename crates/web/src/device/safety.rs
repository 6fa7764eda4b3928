//! How safe is what this browser keeps: what it promised, whether the app stands on the home screen, what kind it is.

use std::cell::RefCell;

use leptos::prelude::{window, window_event_listener_untyped};
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;
use yard::{Event, Promise, Waits};

use super::js;
use crate::app::App;

/// Where `page/boot.js` lays the browser's offer down: it comes before the app is there to hear it.
const OFFER: &str = "evenswathOffer";

/// The offer to install the app, as the browser made it.
#[derive(Default)]
pub struct Offers(RefCell<Option<JsValue>>);

impl Offers {
    /// Takes the browser's offer up.
    pub fn install(&self) {
        if let Some(offer) = self.0.take() {
            js::call(&offer, "prompt", &[]);
        }
    }
}

/// Tells how safe it is now, and listens for as long as the page is there.
pub fn listen(app: App) {
    let offered = move || {
        if let Some(offer) = js::get(&window(), OFFER) {
            app.device().safety.0.replace(Some(offer));
            app.send(Event::CanInstall);
        }
    };
    window_event_listener_untyped("evenswath-offer", move |_| offered());
    offered();
    window_event_listener_untyped("appinstalled", move |_| tell(app));
    tell(app);
}

/// Tells how safe it is now.
fn tell(app: App) {
    spawn_local(async move {
        let promised = match storage("persisted").await {
            Some(true) => Promise::Keeps,
            Some(false) => Promise::MayClear,
            None => Promise::Unknown,
        };
        told(app, promised);
    });
}

/// Asks the browser to promise to keep it. Some ask the person, some decide by themselves.
pub fn ask_to_keep(app: App) {
    spawn_local(async move {
        let promised = match storage("persist").await {
            Some(true) => Promise::Keeps,
            Some(false) => Promise::MayClear,
            None => Promise::Unknown,
        };
        told(app, promised);
    });
}

/// What the browser's storage answers; none where it has no word for it.
async fn storage(question: &str) -> Option<bool> {
    let storage = js::get(&js::navigator(), "storage")?;
    js::ask(&storage, question, &[]).await?.as_bool()
}

fn told(app: App, promised: Promise) {
    app.send(Event::SafetyTold {
        promised,
        installed: Waits::when(is_installed()),
        clears_after_a_week: Waits::when(clears_after_a_week()),
    });
}

/// Whether the app stands on the home screen and was opened from there.
fn is_installed() -> bool {
    let alone = window().match_media("(display-mode: standalone)").ok().flatten();
    let by_name = js::get(&js::navigator(), "standalone").is_some_and(|alone| alone.is_truthy());
    by_name || alone.is_some_and(|alone| alone.matches())
}

/// Whether this browser clears what a page keeps when it was not visited for seven days of use.
///
/// *Source*: WebKit, "Full Third-Party Cookie Blocking and More" (24 March 2020): a seven-day cap on all script-writable
/// storage. Every browser on a phone of that maker is built on it; others with its name in theirs also name Chrome.
fn clears_after_a_week() -> bool {
    let name = window().navigator().user_agent().unwrap_or_default();
    name.contains("AppleWebKit") && !name.contains("Chrome") && !name.contains("Chromium")
}
