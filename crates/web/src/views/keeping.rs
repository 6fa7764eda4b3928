//! Where the notebook is kept.

use leptos::prelude::*;

/// Where the notebook is kept.
#[component]
pub fn KeepingScreen() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
