//! A figure with "less" and "more" beside it: for gloves, where nothing has to be typed.

use leptos::prelude::*;

use crate::app::app;

/// The figure with its name.
#[component]
pub fn Stepper(
    /// What it is.
    name: Memo<String>,
    /// The figure, with its unit.
    value: Memo<String>,
    /// Less of it.
    less: impl Fn() + 'static,
    /// More of it.
    more: impl Fn() + 'static,
) -> impl IntoView {
    let app = app();
    let (fewer, greater) = (app.label("yard-less"), app.label("yard-more"));
    let heard = move |word: Memo<String>| move || format!("{}: {}", name.get(), word.get());
    view! {
        <div class="stepper" role="group" aria-label=name>
            <p>{name}</p>
            <button aria-label=heard(fewer) on:click=move |_| less()>{fewer}</button>
            <p class="value" aria-live="polite">{value}</p>
            <button aria-label=heard(greater) on:click=move |_| more()>{greater}</button>
        </div>
    }
}
