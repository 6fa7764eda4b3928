//! A whole row typed or pasted from paper.

use leptos::prelude::*;

/// A whole row typed or pasted from paper.
#[component]
pub fn CupRow() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
