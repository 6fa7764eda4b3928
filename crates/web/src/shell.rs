//! What the app has to do with the page around it: where it is shown, whether it is on this device, new versions of it, the
//! files that it asks for while it runs.
//!
//! `page/boot.js` keeps the app on the device and looks for new versions. What it found it says by an event on the window,
//! and notes on the page's root for whoever was not listening yet. It changes nothing before it hears
//! `evenswath-update-now`.

use js_sys::Uint8Array;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{CustomEvent, HtmlElement};
use words::{Language, Reader, Words};

use crate::device::js;

/// The element that the app is shown in.
const YARD: &str = "yard";
/// Said to the page when the new version is to be used.
const UPDATE_NOW: &str = "evenswath-update-now";

/// What the page hands to the app.
const HANDED: &str = "evenswath";

/// The words that the page begins in, for a reader whose language is that of the words.
pub fn words(reader: Reader) -> Words {
    let handed = js::get(&window(), HANDED);
    let text =
        |name| handed.as_ref().and_then(|handed| js::get(handed, name)?.as_string()).unwrap_or_default();
    let tag = text("language");
    let language = Language::ALL.into_iter().find(|known| known.tag() == tag).unwrap_or_default();
    Words::out_of(Reader { language, ..reader }, [text("words").as_str()])
}

/// The words for a reader of another language; none where they are neither on this device nor to be had.
pub async fn fetch_words(reader: Reader) -> Option<Words> {
    let text = String::from_utf8(file(reader.language.tag()).await?).ok()?;
    Some(Words::out_of(reader, [text.as_str()]))
}

/// A file of the app, held to its check sum, by its name in `page/boot.js`; none where it is not to be had.
pub async fn file(name: &str) -> Option<Vec<u8>> {
    let handed = js::get(&window(), HANDED)?;
    Some(Uint8Array::new(&js::ask(&handed, "file", &[&name.into()]).await?).to_vec())
}

/// Whether a newer version than the one that runs is on this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Update {
    /// None that is known.
    None,
    /// One lies ready. It is used when the person says so, or when the app is next opened.
    Ready,
}

/// Whether the app opens with no signal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Not known yet.
    NotYet,
    /// It is on this device.
    Here,
    /// This browser does not keep it: over plain HTTP, or in a private window.
    Never,
}

/// Shows the app in the page's element, in place of what stood there.
pub fn mount<View>(app: impl FnOnce() -> View + 'static)
where
    View: IntoView + 'static,
{
    let Some(yard) = document().get_element_by_id(YARD) else { return };
    let Ok(yard) = yard.dyn_into::<HtmlElement>() else { return };
    yard.set_text_content(None);
    // The app is shown for as long as the page is there.
    leptos::mount::mount_to(yard, app).forget();
}

/// Whether a new version is ready, as it becomes so.
pub fn update() -> Signal<Update> {
    let told = told("evenswath-update", "data-update");
    Signal::derive(move || if told.get().is_some() { Update::Ready } else { Update::None })
}

/// Whether the app is on this device, as it comes there.
pub fn kept() -> Signal<Kept> {
    let told = told("evenswath-kept", "data-kept");
    Signal::derive(move || match told.get().as_deref() {
        None => Kept::NotYet,
        Some("yes") => Kept::Here,
        Some(_) => Kept::Never,
    })
}

/// Changes to the new version: the page is loaded again.
pub fn take_update() {
    if let Ok(event) = CustomEvent::new(UPDATE_NOW) {
        // Nobody may refuse this event, so whether somebody did says nothing.
        let _ = window().dispatch_event(&event);
    }
}

/// Windows of so much have room for a drawing across the page, as `page/yard.css` has it too.
const WIDE: &str = "(min-width: 62rem)";

/// Whether the window is so wide, as it becomes so.
pub fn wide() -> ReadSignal<bool> {
    let is = || window().match_media(WIDE).ok().flatten().is_some_and(|wide| wide.matches());
    let (told, set) = signal(is());
    let listening = window_event_listener_untyped("resize", move |_| {
        if told.get_untracked() != is() {
            set.set(is());
        }
    });
    on_cleanup(move || listening.remove());
    told
}

/// What the page notes on its root, read again whenever it says so.
fn told(event: &str, noted: &'static str) -> ReadSignal<Option<String>> {
    let read = move || document().document_element().and_then(|root| root.get_attribute(noted));
    let (told, set) = signal(read());
    let listening = window_event_listener_untyped(event, move |_| set.set(read()));
    on_cleanup(move || listening.remove());
    told
}
