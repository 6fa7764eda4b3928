//! A flash of the whole screen, for where an engine drowns every tone.
//!
//! The page's style makes of it a dark screen, or a broad border for those who asked their device for less motion.

use core::time::Duration;

use leptos::prelude::{document, set_timeout};

/// The class of the page's root while it flashes.
const CLASS: &str = "flashes";
/// How long it lasts. Our own choice: long enough to be seen from the corner of an eye, and it comes once in many seconds,
/// far below three a second (Web Content Accessibility Guidelines 2.2, 2.3.1).
const LASTS: Duration = Duration::from_millis(200);

/// Flashes once.
pub fn flash() {
    let Some(root) = document().document_element() else { return };
    let classes = root.class_list();
    // One class with a valid name can be added and taken.
    let _ = classes.add_1(CLASS);
    set_timeout(
        move || {
            let _ = classes.remove_1(CLASS);
        },
        LASTS,
    );
}
