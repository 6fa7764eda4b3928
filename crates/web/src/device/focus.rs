//! What is brought into view and to the keyboard, and the language that the page says it speaks.

use leptos::prelude::{document, request_animation_frame, window};
use wasm_bindgen::JsCast;
use web_sys::{FocusOptions, HtmlElement};
use words::Language;

/// The name of the top of the screen.
const TOP: &str = "top";

/// Brings a part of the screen into view and to the keyboard, once it is drawn.
pub fn focus(id: String) {
    // What is asked for may only come with the drawing that follows; that is done before the second frame.
    request_animation_frame(move || {
        request_animation_frame(move || {
            if id == TOP {
                window().scroll_to_with_x_and_y(0.0, 0.0);
            }
            let found =
                document().get_element_by_id(&id).and_then(|found| found.dyn_into::<HtmlElement>().ok());
            let Some(found) = found else { return };
            if id != TOP {
                found.scroll_into_view();
            }
            let options = FocusOptions::new();
            options.set_prevent_scroll(true);
            // An element that takes no focus stays without it.
            let _ = found.focus_with_options(&options);
        });
    });
}

/// The page speaks a language.
pub fn language(language: Language) {
    if let Some(root) = document().document_element() {
        // The name is a valid one; nothing else can fail.
        let _ = root.set_attribute("lang", language.tag());
    }
}
