//! The sheet of the open visit: whose it is, what it comes to, and the steps in yard order.

use leptos::prelude::*;
use yard::{Event, Screen, WhyOf, shown};

use super::sheet::block;
use super::step::StepView;
use crate::app::app;
use crate::told::Told;

/// The sheet of the open visit.
#[component]
pub fn VisitSheet() -> impl IntoView {
    let app = app();
    let head = app.label("yard-steps");
    let steps = app.memo(shown::steps);
    let order = Told::of(move || steps.with(|steps| steps.iter().map(|one| one.step).collect::<Vec<_>>()));
    view! {
        <Head/>
        <Answer/>
        <section>
            <h2>{head.said()}</h2>
            <ol class="steps">
                <For each=move || order.get() key=|step| step.word() let:step><StepView step steps/></For>
            </ol>
        </section>
    }
}

/// The sprayer, the farm, the day.
#[component]
fn Head() -> impl IntoView {
    let app = app();
    let back = app.label("yard-back");
    let looking = app.label("yard-looking_head");
    let name = app.memo(shown::visit_name);
    let under = app.memo(shown::visit_under);
    let just_looking =
        app.memo(|state| state.visit.as_ref().is_some_and(|visit| visit.keep == yard::Keep::JustLooking));
    view! {
        <header class="head">
            <div class="row">
                <h1>{name.said()}</h1>
                <button type="button" on:click=move |_| app.send(Event::Back)>{back.said()}</button>
            </div>
            <p class="quiet">{under.said()}</p>
            {move || just_looking.get().then(|| view! { <p><strong>{looking.get()}</strong></p> })}
        </header>
    }
}

/// What the label forbids, then what it puts out and what a tank does.
#[component]
fn Answer() -> impl IntoView {
    let app = app();
    let head = app.label("yard-answer");
    let why = app.label("yard-why");
    let blocks = app.memo(shown::answer);
    let told = app.memo(|state| state.visit.as_ref().is_some_and(|visit| visit.outcome.rate.is_some()));
    view! {
        <section aria-live="polite">
            <h2 class="heard">{head.said()}</h2>
            {move || blocks.get().into_iter().map(block).collect_view()}
            {move || told.get().then(|| view! {
                <button type="button" class="aside" on:click=move |_| app.send(Event::Go(Screen::Why(WhyOf::Rate)))>
                    {why.get()}
                </button>
            })}
        </section>
    }
}
