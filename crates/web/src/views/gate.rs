//! The first screen.

use leptos::prelude::*;

/// The first screen.
#[component]
pub fn Gate() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
