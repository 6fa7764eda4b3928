//! What is to be said at the top of the screen.

use leptos::prelude::*;

/// What is to be said at the top of the screen.
#[component]
pub fn Notices() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
