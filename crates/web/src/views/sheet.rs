//! A sheet to hand over.

use leptos::prelude::*;
use yard::SheetKind;

/// A sheet to hand over.
#[component]
pub fn SheetScreen(kind: SheetKind) -> impl IntoView {
    let _ = kind;
    view! { <h1>"Evenswath"</h1> }
}
