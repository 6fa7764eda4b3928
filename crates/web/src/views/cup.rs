//! One large cup at a time.

use leptos::prelude::*;

/// One large cup at a time.
#[component]
pub fn Cup() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
