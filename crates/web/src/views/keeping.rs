//! Where the notebook is kept, how safe it is there, copies out and in, and the way to another device.

use leptos::html::Input;
use leptos::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use yard::{CopyFile, Event, ServerState, shown};

use super::sheet::head;
use crate::app::{App, app};
use crate::shell::{self, Kept};

/// Where the notebook is kept.
#[component]
pub fn KeepingScreen() -> impl IntoView {
    let app = app();
    view! {
        {head(app, "yard-keeping_title")}
        <Safe/>
        <Copy/>
        <TakeIn/>
        <Server/>
        {told(app, "yard-move_title", "yard-move_how")}
    }
}

fn button(app: App, key: &'static str, event: fn() -> Event) -> impl IntoView {
    let label = app.label(key);
    view! { <button type="button" on:click=move |_| app.send(event())>{label.said()}</button> }
}

fn told(app: App, title: &'static str, how: &'static str) -> impl IntoView {
    let (title, how) = (app.label(title), app.label(how));
    view! { <section class="part"><h2>{title.said()}</h2><p>{how.said()}</p></section> }
}

/// What the browser promises, and what can be done for it.
#[component]
fn Safe() -> impl IntoView {
    let app = app();
    let kept = app.memo(shown::kept);
    let promise = app.memo(shown::promise);
    let safety = app.memo(|state| state.safety.clone());
    let label = |key| app.label(key);
    let (installed, not_installed) = (label("yard-installed"), label("yard-not_installed"));
    let week = label("yard-clears_after_a_week");
    let (offline, only_with_signal) = (label("yard-opens_offline"), label("yard-opens_with_signal"));
    let on_device = shell::kept();
    view! {
        <section class="part">
            <p><strong>{move || kept.get().says}</strong></p>
            <p>{promise.said()}</p>
            {move || (safety.get().promised != yard::Promise::Keeps)
                .then(|| button(app, "yard-ask_to_keep", || Event::AskToKeep))}
            {move || safety.get().clears_after_a_week.is_yes().then(|| view! { <p><strong>{week.get()}</strong></p> })}
            {move || match on_device.get() {
                Kept::NotYet => None,
                Kept::Here => Some(view! { <p>{offline.get()}</p> }.into_any()),
                Kept::Never => Some(view! { <p><strong>{only_with_signal.get()}</strong></p> }.into_any()),
            }}
            <p>{move || if safety.get().installed.is_yes() { installed.get() } else { not_installed.get() }}</p>
            {move || (safety.get().can_install.is_yes() && !safety.get().installed.is_yes())
                .then(|| button(app, "yard-install", || Event::Install))}
        </section>
    }
}

#[component]
fn Copy() -> impl IntoView {
    let app = app();
    let last = app.memo(shown::last_copy);
    view! {
        {told(app, "yard-copy_title", "yard-copy_how")}
        <div class="part"><p>{last.said()}</p>{button(app, "yard-copy", || Event::CopyNow)}</div>
        <SecondCopy/>
    }
}

/// A second copy that keeps itself, where the browser can write to a file.
#[component]
fn SecondCopy() -> impl IntoView {
    let app = app();
    let is = app.memo(|state| state.safety.copy_file);
    let (how, asks, kept) =
        (app.label("yard-copy_file_how"), app.label("yard-copy_file_asks"), app.label("yard-copy_file_kept"));
    move || {
        let (says, chooses) = match is.get() {
            CopyFile::CannotBe => return None,
            CopyFile::NotChosen => (how.get(), true),
            CopyFile::Asks => (asks.get(), true),
            CopyFile::Kept => (kept.get(), false),
        };
        Some(view! {
            <div class="part">
                <p>{says}</p>
                {chooses.then(|| button(app, "yard-copy_file_choose", || Event::ChooseCopyFile))}
            </div>
        })
    }
}

#[component]
fn TakeIn() -> impl IntoView {
    let app = app();
    let chosen = NodeRef::<Input>::new();
    let label = app.label("yard-take_in");
    let choose = move |_| {
        if let Some(input) = chosen.get_untracked() {
            input.click();
        }
    };
    let take = move |_| {
        let Some(input) = chosen.get_untracked() else { return };
        let file = input.files().and_then(|files| files.get(0));
        // The same file may be chosen once more.
        input.set_value("");
        let Some(file) = file else { return };
        spawn_local(async move {
            let name = file.name();
            // A file that went away between the choice and the reading has nothing to be taken in.
            let Ok(read) = JsFuture::from(file.array_buffer()).await else { return };
            let bytes = js_sys::Uint8Array::new(&read).to_vec();
            app.send(Event::FileChosen { name, bytes });
        });
    };
    view! {
        {told(app, "yard-take_in_title", "yard-take_in_how")}
        <input type="file" hidden node_ref=chosen on:change=take/>
        <button type="button" on:click=choose>{label.said()}</button>
    }
}

#[component]
fn Server() -> impl IntoView {
    let app = app();
    let title = app.label("yard-server_title");
    let state = app.memo(|state| state.safety.server.clone());
    let says = app.memo(|state| {
        state.words.label(match state.safety.server {
            ServerState::NotThere => "yard-server_none",
            ServerState::SameNotebook => "yard-server_same",
            ServerState::OtherNotebook => "yard-server_other",
        })
    });
    view! {
        <section class="part">
            <h2>{title.said()}</h2>
            <p>{says.said()}</p>
            {move || (state.get() == ServerState::SameNotebook)
                .then(|| button(app, "yard-exchange", || Event::Exchange))}
        </section>
    }
}
