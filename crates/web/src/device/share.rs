//! Handing over: by what the phone offers, where it does; else as a file in the downloads, or a text on the clipboard.

use core::time::Duration;

use js_sys::Array;
use leptos::prelude::{document, set_timeout, window};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, DomException, File, FilePropertyBag, HtmlAnchorElement, Url};
use yard::SheetKind;

use super::{js, letters, sheets};
use crate::app::App;

/// How long a file that is being downloaded is held. Our own choice: a slow phone has written it long before.
const HELD: Duration = Duration::from_secs(60);

/// Hands a sheet of the open visit over as a file.
pub fn sheet(app: App, kind: SheetKind) {
    // At once where it can be: a browser lets a page hand over only right after a tap.
    match app.device().letters.here() {
        Some(letters) => sheet_in(app, kind, &letters),
        None => spawn_local(async move {
            let letters = letters::ready(app).await;
            sheet_in(app, kind, &letters);
        }),
    }
}

fn sheet_in(app: App, kind: SheetKind, letters: &[(u16, Vec<u8>)]) {
    let letters: Vec<_> = letters.iter().map(|(weight, bytes)| (*weight, bytes.as_slice())).collect();
    let made = app.look(|state| {
        let page = sheets::page(state, kind, &letters)?;
        Some((sheets::file_name(state, sheets::word(kind), "html"), page))
    });
    match made {
        Some((name, page)) => file(&name, "text/html", &page, || {}),
        None => app.say("yard-no_sheet"),
    }
}

/// Hands a file over, and says when it is done. Waved off by the person, it is not done.
pub fn file(name: &str, kind: &str, content: &str, done: impl FnOnce() + 'static) {
    let (Some(file), true) = (file_of(name, kind, content), is_phone()) else {
        download(name, kind, content);
        return done();
    };
    let offer = js::object(&[("files", &Array::of1(&file).into()), ("title", &name.into())]);
    let can = js::call(&js::navigator(), "canShare", &[&offer]).is_some_and(|can| can.is_truthy());
    let Some(shared) = can.then(|| js::call(&js::navigator(), "share", &[&offer])).flatten() else {
        download(name, kind, content);
        return done();
    };
    let (name, kind, content) = (name.to_string(), kind.to_string(), content.to_string());
    spawn_local(async move {
        match JsFuture::from(shared.unchecked_into::<js_sys::Promise>()).await {
            Ok(_) => done(),
            Err(error) if is_waved_off(&error) => {}
            Err(_) => {
                download(&name, &kind, &content);
                done();
            }
        }
    });
}

/// Hands a text over.
pub fn text(app: App, text: String) {
    let offer = js::object(&[("text", &text.as_str().into())]);
    let shared = is_phone().then(|| js::call(&js::navigator(), "share", &[&offer])).flatten();
    spawn_local(async move {
        if let Some(shared) = shared {
            match JsFuture::from(shared.unchecked_into::<js_sys::Promise>()).await {
                Ok(_) => return,
                Err(error) if is_waved_off(&error) => return,
                Err(_) => {}
            }
        }
        let clipboard = js::get(&js::navigator(), "clipboard").unwrap_or(JsValue::UNDEFINED);
        match js::ask(&clipboard, "writeText", &[&text.as_str().into()]).await {
            Some(_) => app.say("yard-copied_text"),
            None => {
                download("evenswath.txt", "text/plain", &text);
                app.say("yard-text_as_file");
            }
        }
    });
}

/// Whether the device is held in a hand: there, its own way of handing over is known; on a laptop a file is expected.
fn is_phone() -> bool {
    let coarse = window().match_media("(pointer: coarse)").ok().flatten();
    coarse.is_some_and(|coarse| coarse.matches())
}

fn is_waved_off(error: &JsValue) -> bool {
    error.dyn_ref::<DomException>().is_some_and(|error| error.name() == "AbortError")
}

fn file_of(name: &str, kind: &str, content: &str) -> Option<File> {
    let of = FilePropertyBag::new();
    of.set_type(kind);
    File::new_with_str_sequence_and_options(&Array::of1(&content.into()), name, &of).ok()
}

/// Puts a file into the downloads.
fn download(name: &str, kind: &str, content: &str) {
    let of = BlobPropertyBag::new();
    of.set_type(kind);
    let Ok(blob) = Blob::new_with_str_sequence_and_options(&Array::of1(&content.into()), &of) else { return };
    let Ok(url) = Url::create_object_url_with_blob(&blob) else { return };
    let link = document().create_element("a").ok().and_then(|link| link.dyn_into::<HtmlAnchorElement>().ok());
    if let Some(link) = link {
        link.set_href(&url);
        link.set_download(name);
        link.click();
    }
    set_timeout(
        move || {
            // A name that was given is always known.
            let _ = Url::revoke_object_url(&url);
        },
        HELD,
    );
}
