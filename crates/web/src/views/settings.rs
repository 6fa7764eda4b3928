//! Who reads.

use leptos::prelude::*;

/// Who reads.
#[component]
pub fn Settings() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
