//! The row above the large cup, as the map; a tap on it opens the tips, to go to one.

use leptos::prelude::*;
use yard::shown::value_said;
use yard::{Event, Screen, reading_text};

use crate::app::app;
use crate::told::Told;

/// A tip to go to.
#[derive(Clone, PartialEq)]
struct TipShown {
    tip: u32,
    /// What was read there, as the reader writes it; empty where nothing was.
    read: String,
}

/// The row as a button.
#[component]
pub fn Map(open: RwSignal<bool>) -> impl IntoView {
    let app = app();
    // Letters on the pad change nothing in the row: it is drawn again for another tip, line or reader alone.
    let what = app.memo(|state| {
        let tip = state.catching.as_ref().map(|catching| catching.tip);
        let lines = state.visit.as_ref().map(|visit| (visit.id.bits(), visit.folded.lines));
        (tip, lines, state.reader)
    });
    let drawing = Told::of(move || {
        let tip = what.get().0.unwrap_or(0);
        let drawing =
            app.look(yard::shown::small_row).map(|drawing| figures::svg(&drawing)).unwrap_or_default();
        // The cup that is up is told from the others.
        let drawing = drawing.replace(&format!("id=\"map-map-{tip}\""), "class=\"here\"");
        // The map fills its place whatever shape that has.
        drawing.replacen("<svg ", "<svg preserveAspectRatio=\"none\" ", 1)
    });
    let label = app.label("yard-go_to_tip");
    view! {
        <button class="map" aria-expanded=move || open.get().to_string() on:click=move |_| open.update(|open| *open = !*open)>
            <span class="heard">{label.said()}</span>
            <span class="map-drawing" aria-hidden="true" inner_html=drawing.said()></span>
        </button>
    }
}

/// All tips, each a button; and the other ways to enter cups.
#[component]
pub fn Tips(open: RwSignal<bool>) -> impl IntoView {
    let app = app();
    let tips = app.memo(|state| {
        let (Some(visit), Some(catching)) = (&state.visit, &state.catching) else { return Vec::new() };
        let read = |tip: &u32| {
            let last = visit.cups(catching.round, *tip).last();
            last.map(|held| value_said(&state.words, &reading_text(&held.value))).unwrap_or_default()
        };
        catching.tips.iter().map(|tip| TipShown { tip: *tip, read: read(tip) }).collect::<Vec<_>>()
    });
    let now = app.memo(|state| state.catching.as_ref().map_or(0, |catching| catching.tip));
    let go = move |tip: u32| {
        open.set(false);
        app.send(Event::ToTip(tip));
    };
    let to = move |screen: Screen| move |_| app.send(Event::Go(screen.clone()));
    view! {
        <div class="tips">
            <div class="tip-keys">
                {move || {
                    tips.get()
                        .into_iter()
                        .map(|TipShown { tip, read }| {
                            let here = move || (now.get() == tip).then_some("true");
                            view! {
                                <button class:caught=!read.is_empty() aria-current=here on:click=move |_| go(tip)>
                                    <b>{tip}</b>
                                    <span>{read.clone()}</span>
                                </button>
                            }
                        })
                        .collect_view()
                }}
            </div>
            <div class="other-ways">
                <button on:click=to(Screen::CupRow)>{app.label("yard-catch_row").said()}</button>
                <button on:click=to(Screen::HandsFree)>{app.label("yard-catch_voice").said()}</button>
            </div>
        </div>
    }
}
