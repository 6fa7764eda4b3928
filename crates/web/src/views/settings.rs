//! Who reads: language, numbers, units and paper, each by itself.

use leptos::prelude::*;
use units::UnitSystem;
use words::{Language, NumberFormat, Paper, Reader};
use yard::Event;

use super::sheet::head;
use crate::app::{App, app};
use crate::told::Told;

/// The four settings.
#[component]
pub fn Settings() -> impl IntoView {
    let app = app();
    let reader = app.memo(|state| state.reader);
    let how = app.label("yard-settings_how");
    let language = app.label("yard-language");
    let own = move |language: Language| {
        view! {
            <button
                type="button"
                lang=language.tag()
                aria-pressed=move || (reader.get().language == language).to_string()
                on:click=move |_| app.send(Event::Read(Reader { language, ..reader.get_untracked() }))
            >{language.own_name()}</button>
        }
    };
    let numbers = |numbers| move |reader| Reader { numbers, ..reader };
    let units = |units| move |reader| Reader { units, ..reader };
    let paper = |paper| move |reader| Reader { paper, ..reader };
    view! {
        {head(app, "yard-settings_title")}
        <p class="quiet">{how.said()}</p>
        <h2 id="set-language">{language.said()}</h2>
        <div class="buttons" role="group" aria-labelledby="set-language">
            {Language::ALL.into_iter().map(own).collect_view()}
        </div>
        {group(app, "yard-units", view! {
            {one(app, reader, "yard-units_us", units(UnitSystem::Us))}
            {one(app, reader, "yard-units_metric", units(UnitSystem::Metric))}
        })}
        {group(app, "yard-numbers", view! {
            {one(app, reader, "yard-numbers_point", numbers(NumberFormat::Point))}
            {one(app, reader, "yard-numbers_comma", numbers(NumberFormat::Comma))}
        })}
        {group(app, "yard-paper", view! {
            {one(app, reader, "yard-paper_letter", paper(Paper::Letter))}
            {one(app, reader, "yard-paper_a4", paper(Paper::A4))}
        })}
    }
}

fn group(app: App, key: &'static str, choices: impl IntoView + 'static) -> impl IntoView {
    let label = app.label(key);
    view! {
        <h2 id=key>{label.said()}</h2>
        <div class="buttons" role="group" aria-labelledby=key>{choices}</div>
    }
}

/// A choice: it is pressed where it would change nothing.
fn one(
    app: App,
    reader: Told<Reader>,
    key: &'static str,
    set: impl Fn(Reader) -> Reader + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let label = app.label(key);
    view! {
        <button
            type="button"
            aria-pressed=move || (set(reader.get()) == reader.get()).to_string()
            on:click=move |_| app.send(Event::Read(set(reader.get_untracked())))
        >{label.said()}</button>
    }
}
