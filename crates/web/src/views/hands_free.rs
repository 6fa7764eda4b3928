//! Catching without touching.

use leptos::prelude::*;

/// Catching without touching.
#[component]
pub fn HandsFreeFace() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
