//! Earlier visits beside today's.

use leptos::prelude::*;

/// Earlier visits beside today's.
#[component]
pub fn LastTime() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
