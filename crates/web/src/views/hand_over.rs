//! What is handed over at the end: sheets, four lines to send, the visit file; and withdrawing the visit.

use leptos::prelude::*;
use yard::{Event, Screen, SheetKind};

use super::body::to;
use super::sheet::title;
use crate::app::app;

/// What is handed over.
#[component]
pub fn HandOver() -> impl IntoView {
    let app = app();
    let kinds = [
        SheetKind::Visit,
        SheetKind::Cab,
        SheetKind::Cups,
        SheetKind::Tags,
        SheetKind::Paper,
        SheetKind::Before,
    ];
    let four = app.memo(yard::State::four_lines);
    let (sheets, lines, send) =
        (app.label("yard-sheets"), app.label("yard-four_lines"), app.label("yard-send"));
    let (file, how) = (app.label("yard-visit_file"), app.label("yard-visit_file_how"));
    view! {
        <section class="part">
            <h3>{sheets.said()}</h3>
            <div class="stack">{kinds.into_iter().map(|kind| to(app, title(kind), "line", Screen::Sheet(kind))).collect_view()}</div>
        </section>
        <section class="part">
            <h3>{lines.said()}</h3>
            <p class="four">{four.said()}</p>
            <button type="button" on:click=move |_| app.send(Event::SendLines)>{send.said()}</button>
        </section>
        <section class="part">
            <button type="button" on:click=move |_| app.send(Event::HandOverVisitFile)>{file.said()}</button>
            <p class="small">{how.said()}</p>
        </section>
        {to(app, "yard-last_time", "", Screen::LastTime)}
        <Withdraw/>
    }
}

/// Withdrawing the visit asks once.
#[component]
fn Withdraw() -> impl IntoView {
    let app = app();
    let asked = RwSignal::new(false);
    let reason = RwSignal::new(String::new());
    let label = |key| app.label(key);
    let (withdraw, ask, why) =
        (label("yard-withdraw"), label("yard-withdraw_ask"), label("yard-withdraw_reason"));
    let (yes, no) = (label("yard-withdraw_yes"), label("yard-withdraw_no"));
    move || {
        if !asked.get() {
            return view! {
                <button type="button" class="aside" on:click=move |_| asked.set(true)>{withdraw.said()}</button>
            }
            .into_any();
        }
        view! {
            <section class="part" role="group" aria-label=move || withdraw.get()>
                <p role="alert">{ask.said()}</p>
                <div class="field">
                    <label class="label" for="withdraw-why">{why.said()}</label>
                    <input id="withdraw-why" type="text" autocomplete="off" on:input:target=move |event| reason.set(event.target().value())/>
                </div>
                <div class="buttons">
                    <button type="button" on:click=move |_| asked.set(false)>{no.said()}</button>
                    <button type="button" on:click=move |_| app.send(Event::Withdraw { reason: reason.get_untracked() })>{yes.said()}</button>
                </div>
            </section>
        }
        .into_any()
    }
}
