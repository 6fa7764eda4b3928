//! The first screen: minutes and hands, the sprayers known here, visits to go on with, where it is kept.

use leptos::prelude::*;
use words::{Language, Reader};
use yard::shown::{self, GateLine};
use yard::{Event, Keep, Screen};

use super::body::to;
use crate::app::{App, app};
use crate::told::Told;

/// The first screen.
#[component]
pub fn Gate() -> impl IntoView {
    let app = app();
    view! {
        <header class="head"><div class="row"><h1>"Evenswath"</h1><OtherLanguage/></div></header>
        <Much/>
        <Begin/>
        <GoOn/>
        <Foot/>
        <div class="buttons">
            {to(app, "yard-settings", "aside", Screen::Settings)}
            {to(app, "yard-keeping", "aside", Screen::Keeping)}
        </div>
    }
}

/// One tap to the other language, in its own words.
#[component]
fn OtherLanguage() -> impl IntoView {
    let app = app();
    let reader = app.memo(|state| state.reader);
    let one = move |language: Language| {
        let tap = move |_| app.send(Event::Read(Reader { language, ..reader.get_untracked() }));
        view! { <button type="button" lang=language.tag() on:click=tap>{language.own_name()}</button> }
    };
    move || {
        let now = reader.get().language;
        Language::ALL.into_iter().filter(|language| *language != now).map(one).collect_view()
    }
}

/// How many minutes and hands there are.
#[component]
fn Much() -> impl IntoView {
    let app = app();
    let head = app.label("yard-how_much_today");
    let minutes = [(10, "yard-minutes_10"), (30, "yard-minutes_30"), (60, "yard-minutes_60")];
    let people = [(1, "yard-people_1"), (2, "yard-people_2"), (3, "yard-people_3")];
    let chosen_minutes = app.memo(|state| state.plan.minutes);
    let chosen_people = app.memo(|state| state.plan.people);
    let plan = app.memo(shown::plan_lines);
    view! {
        <section>
            <h2>{head.said()}</h2>
            <div class="much">
                {few(app, "yard-minutes", minutes, chosen_minutes, Event::Minutes)}
                {few(app, "yard-people", people, chosen_people, Event::People)}
            </div>
            <div class="plan" aria-live="polite">
                {move || plan.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            </div>
        </section>
    }
}

/// A few numbers, one of which is chosen.
fn few(
    app: App,
    label: &'static str,
    numbers: [(u32, &'static str); 3],
    chosen: Told<Option<u32>>,
    event: fn(u32) -> Event,
) -> impl IntoView {
    let label = app.label(label);
    let one = |(number, key): (u32, &'static str)| {
        let says = app.label(key);
        view! {
            <button
                type="button"
                aria-pressed=move || (chosen.get() == Some(number)).to_string()
                on:click=move |_| app.send(event(number))
            >{says.said()}</button>
        }
    };
    view! {
        <div>
            <span class="label" aria-hidden="true">{label.said()}</span>
            <div class="buttons" role="group" aria-label=move || label.get()>
                {numbers.into_iter().map(one).collect_view()}
            </div>
        </div>
    }
}

/// A visit of a known sprayer, of a new one, or one that is not kept.
#[component]
fn Begin() -> impl IntoView {
    let app = app();
    let head = app.label("yard-begin");
    let sprayers = app.memo(shown::known_sprayers);
    let opening = app.memo(|state| state.holder().is_none());
    let (new, looking) = (app.label("yard-new_sprayer"), app.label("yard-just_looking"));
    let keeps_nothing = app.label("yard-just_looking_keeps");
    let (symptoms, symptoms_how) = (app.label("yard-symptoms_to"), app.label("yard-symptoms_gate"));
    let begin = move |of, keep| app.send(Event::Begin { of, keep });
    view! {
        <section>
            <h2>{head.said()}</h2>
            <div class="lines">
                {move || sprayers.get().into_iter().map(|known| {
                    let id = known.id;
                    line(known, move || begin(Some(id), Keep::Kept))
                }).collect_view()}
                <button type="button" class="go" disabled=move || opening.get() on:click=move |_| begin(None, Keep::Kept)>
                    {new.said()}
                </button>
                <button type="button" class="line" disabled=move || opening.get() on:click=move |_| begin(None, Keep::JustLooking)>
                    <span class="name">{looking.said()}</span>
                    <span class="under">{keeps_nothing.said()}</span>
                </button>
                <button type="button" class="line" disabled=move || opening.get() on:click=move |_| {
                    begin(None, Keep::JustLooking);
                    app.send(Event::Go(Screen::Symptoms));
                }>
                    <span class="name">{symptoms.said()}</span>
                    <span class="under">{symptoms_how.said()}</span>
                </button>
            </div>
        </section>
    }
}

/// Visits that are here.
#[component]
fn GoOn() -> impl IntoView {
    let app = app();
    let head = app.label("yard-go_on");
    let visits = app.memo(shown::known_visits);
    move || {
        let visits = visits.get();
        (!visits.is_empty()).then(|| {
            let one = |known: GateLine| {
                let id = known.id;
                line(known, move || app.send(Event::OpenVisit(id)))
            };
            view! {
                <section>
                    <h2>{head.said()}</h2>
                    <div class="lines">{visits.into_iter().map(one).collect_view()}</div>
                </section>
            }
        })
    }
}

fn line(known: GateLine, tap: impl Fn() + 'static) -> impl IntoView {
    view! {
        <button type="button" class="line" on:click=move |_| tap()>
            <span class="name">{known.name}</span>
            <span class="under">{known.under}</span>
        </button>
    }
}

/// Where it is kept, and the one thing to do about it.
#[component]
fn Foot() -> impl IntoView {
    let app = app();
    let kept = app.memo(shown::kept);
    let copy = app.label("yard-copy");
    view! {
        <footer class="foot">
            {move || {
                let kept = kept.get();
                // Where nothing is kept at all, that stands at the top already.
                kept.refused.is_none().then(|| view! {
                    <p>{kept.says}</p>
                    {kept.wants_copy.then(|| view! {
                        <button type="button" on:click=move |_| app.send(Event::CopyNow)>{copy.get()}</button>
                    })}
                })
            }}
        </footer>
    }
}
