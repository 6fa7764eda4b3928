//! The sheet of the open visit.

use leptos::prelude::*;

/// The sheet of the open visit.
#[component]
pub fn VisitSheet() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
