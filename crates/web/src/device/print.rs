//! Printing a sheet: it is opened in a frame that nobody sees, and that is printed.
//!
//! The page lets no style in but from its own files, and a frame inherits that. So the sheet's style, which stands in it, is
//! handed to the frame through the browser's objects, as scripts may; the letters are those the page has loaded already.

use core::time::Duration;

use js_sys::{Array, Function, Reflect};
use leptos::prelude::{document, set_timeout};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Document, Element, HtmlElement, HtmlIFrameElement, Window};
use yard::SheetKind;

use super::{js, sheets};
use crate::app::App;

/// The frame's id.
const FRAME: &str = "to-print";
/// Before it is printed, so that letters are there. Our own choice.
const SETTLES: Duration = Duration::from_millis(300);

/// Prints a sheet of the open visit.
pub fn print(app: App, kind: SheetKind) {
    let Some(page) = app.look(|state| sheets::framed(state, kind)) else { return app.say("yard-no_sheet") };
    if let Some(before) = document().get_element_by_id(FRAME) {
        before.remove();
    }
    let Some(frame) = frame() else { return };
    let opened = frame.clone();
    let loaded = Closure::once_into_js(move || {
        let Some(window) = opened.content_window() else { return };
        if let Some(document) = window.document() {
            dress(&document, &window);
        }
        set_timeout(
            move || {
                // Where the browser prints nothing there is nothing to be done.
                let _ = window.print();
            },
            SETTLES,
        );
    });
    frame.set_onload(Some(loaded.unchecked_ref()));
    frame.set_srcdoc(&page);
    if let Some(body) = document().body() {
        // A new element can stand in the body.
        let _ = body.append_child(&frame);
    }
}

fn frame() -> Option<HtmlIFrameElement> {
    let frame: HtmlIFrameElement = document().create_element("iframe").ok()?.dyn_into().ok()?;
    frame.set_id(FRAME);
    frame.set_class_name("to-print");
    // Nobody finds it by keyboard or by ear.
    frame.set_tab_index(-1);
    let _ = frame.set_attribute("aria-hidden", "true");
    Some(frame)
}

/// Gives a sheet in a frame the style that stands in it.
pub fn dress(sheet: &Document, window: &Window) {
    let mut style = fonts();
    for one in all(sheet, "style") {
        style.push_str(&one.text_content().unwrap_or_default());
    }
    // Made in the frame itself: a style sheet belongs to the document it is made in.
    let made = js::get(window, "CSSStyleSheet").and_then(|class| class.dyn_into::<Function>().ok());
    if let Some(made) = made.and_then(|class| Reflect::construct(&class, &Array::new()).ok()) {
        js::call(&made, "replaceSync", &[&style.into()]);
        let _ = Reflect::set(sheet, &"adoptedStyleSheets".into(), &Array::of1(&made));
    }
    for one in all(sheet, "[style]") {
        let Some(text) = one.get_attribute("style") else { continue };
        one.unchecked_ref::<HtmlElement>().style().set_css_text(&text);
    }
}

fn all(of: &Document, select: &str) -> Vec<Element> {
    let Ok(found) = of.query_selector_all(select) else { return Vec::new() };
    (0..found.length()).filter_map(|place| found.get(place)).map(JsCast::unchecked_into).collect()
}

/// The page's own letters, as its style names them.
fn fonts() -> String {
    let page: JsValue = document().into();
    let Some(sheets) = js::get(&page, "styleSheets") else { return String::new() };
    let mut fonts = String::new();
    for sheet in Array::from(&sheets) {
        let Some(rules) = js::get(&sheet, "cssRules") else { continue };
        for rule in Array::from(&rules) {
            let text = js::get(&rule, "cssText").and_then(|text| text.as_string()).unwrap_or_default();
            if text.starts_with("@font-face") {
                fonts.push_str(&text);
            }
        }
    }
    fonts
}
