//! How a number came about.

use leptos::prelude::*;
use yard::WhyOf;

/// How a number came about.
#[component]
pub fn WhyScreen(of: WhyOf) -> impl IntoView {
    let _ = of;
    view! { <h1>"Evenswath"</h1> }
}
