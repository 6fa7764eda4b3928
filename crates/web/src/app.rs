//! What stands on the page: for now the name, and the word that a new version is ready.

use leptos::prelude::*;

use crate::shell::{self, Update};

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    let update = shell::update();
    let ready = move || update.get() == Update::Ready;
    view! {
        <main>
            <h1>"Evenswath"</h1>
            <Show when=ready>
                <p role="status">
                    "A new version is ready. "
                    <button on:click=move |_| shell::take_update()>"Use it now"</button>
                </p>
            </Show>
        </main>
    }
}
