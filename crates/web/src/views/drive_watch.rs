//! The watch of the timed drive.

use leptos::prelude::*;

/// The watch of the timed drive.
#[component]
pub fn DriveWatchFace() -> impl IntoView {
    view! { <h1>"Evenswath"</h1> }
}
