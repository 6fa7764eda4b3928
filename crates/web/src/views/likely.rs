//! What is most likely wrong, beside the verdict, and the next best check with a tap to do it.

use leptos::prelude::*;
use yard::shown::{self, CheckShown, DiagnosisShown, LikelyShown, RepairShown};
use yard::{Event, State};

use super::field::FieldView;
use super::found::{class_of, sign};
use crate::app::app;
use crate::device::measure;

/// What the time it takes is noted under, for whoever measures.
const MEASURED: &str = "evenswath-diagnosis";

/// What is most likely wrong, and what to look at next.
#[component]
pub fn Likely() -> impl IntoView {
    let app = app();
    let found = app.memo(worked_out);
    let (head, next, or) = (app.label("likely-head"), app.label("likely-next"), app.label("likely-or"));
    let shown = move || {
        found.get().map(|found| {
            let DiagnosisShown { likely, checks, stop } = found;
            let mut checks = checks.into_iter();
            let best = checks.next().map(check);
            let others: Vec<_> = checks.map(check).collect();
            let any = !others.is_empty();
            view! {
                <section class="part likely" aria-labelledby="likely-head" aria-live="polite">
                    <h3 id="likely-head">{head.get()}</h3>
                    <ul class="found">{likely.into_iter().map(one).collect_view()}</ul>
                    <h3 id="likely-next">{next.get()}</h3>
                    {stop.map(|stop| view! { <p>{stop}</p> })}
                    {best.map(|best| view! { <ul class="found best">{best}</ul> })}
                    {any.then(|| view! { <p class="quiet">{or.get()}</p><ul class="found">{others}</ul> })}
                </section>
            }
        })
    };
    view! { {shown}<Beside/> }
}

/// Worked out, where it was not yet, with the time that takes noted.
pub fn worked_out(state: &State) -> Option<DiagnosisShown> {
    let new =
        state.visit.as_ref().is_some_and(|visit| visit.outcome.catch.is_some() && !visit.is_diagnosed());
    if new {
        measure::measured(MEASURED, || {
            state.visit.as_ref().map(yard::Opened::diagnosed);
        });
    }
    shown::diagnosis(state)
}

/// What was read or seen beside the cups, to be filled in.
#[component]
fn Beside() -> impl IntoView {
    let app = app();
    let fields = app.memo(shown::beside);
    let head = app.label("likely-beside");
    view! {
        <div class="part">
            {move || fields.with(|fields| !fields.is_empty()).then(|| view! { <h3>{head.get()}</h3> })}
            <For each=move || fields.get() key=|name| name.clone() let:name><FieldView name/></For>
        </div>
    }
}

fn one(likely: LikelyShown) -> impl IntoView {
    let repairs: Vec<_> = likely.repairs.into_iter().map(repair).collect();
    let any = !repairs.is_empty();
    view! {
        <li class=class_of(likely.sign)>
            <span class="sign">{sign(likely.sign)}</span>
            <p class="lead">{likely.lead}</p>
            {(!likely.rest.is_empty()).then(|| view! { <p class="rest">{likely.rest}</p> })}
            {any.then(|| view! { <div class="more">{repairs}</div> })}
        </li>
    }
}

fn check(check: CheckShown) -> AnyView {
    let app = app();
    let again = check.again.map(|again| {
        let (tips, seconds) = (again.tips, again.seconds);
        let tap = move |_| app.send(Event::CatchAgain { tips: tips.clone(), seconds: seconds.clone() });
        view! { <button type="button" on:click=tap>{again.label}</button> }
    });
    let repair = check.repair.map(repair);
    let pressure = check.pressure_at.map(|(tip, label)| {
        view! { <button type="button" on:click=move |_| app.send(Event::AddTipPressure(tip))>{label}</button> }
    });
    let any = again.is_some() || repair.is_some() || pressure.is_some();
    view! {
        <li class="plain check">
            <p class="lead">{check.lead}</p>
            <p class="rest">{check.rest}</p>
            {any.then(|| view! { <div class="more">{again}{repair}{pressure}</div> })}
        </li>
    }
    .into_any()
}

fn repair(repair: RepairShown) -> AnyView {
    let app = app();
    let (after, tips) = (repair.after, repair.tips);
    let tap = move |_| app.send(Event::Repaired { after: after.to_string(), tips: tips.clone() });
    view! { <button type="button" on:click=tap>{repair.label}</button> }.into_any()
}
