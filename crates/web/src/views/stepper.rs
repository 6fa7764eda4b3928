//! A figure with "less" and "more" beside it: for gloves, where nothing has to be typed.

use leptos::prelude::*;

use crate::app::app;
use crate::told::Told;

/// The figure with its name.
#[component]
pub fn Stepper(
    /// What it is.
    name: Told<String>,
    /// The figure, with its unit.
    value: Told<String>,
    /// Less of it.
    less: impl Fn() + 'static,
    /// More of it.
    more: impl Fn() + 'static,
) -> impl IntoView {
    let app = app();
    let (fewer, greater) = (app.label("yard-less"), app.label("yard-more"));
    let heard = move |word: Told<String>| move || format!("{}: {}", name.get(), word.get());
    view! {
        <div class="stepper" role="group" aria-label=name.said()>
            <p>{name.said()}</p>
            <button aria-label=heard(fewer) on:click=move |_| less()>{fewer.said()}</button>
            <p class="value" aria-live="polite">{value.said()}</p>
            <button aria-label=heard(greater) on:click=move |_| more()>{greater.said()}</button>
        </div>
    }
}
