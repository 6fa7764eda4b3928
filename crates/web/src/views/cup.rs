//! One large cup at a time: what is read is typed, looked at beside the others, and kept with one key.

use leptos::prelude::*;
use yard::shown::{CupScreen, SideOfMean, SoFar, cup_screen, value_said};
use yard::{Event, Waits};

use super::go_to_tip::{Map, Tips};
use super::large_cup::drawn;
use super::pad::{self, Pad};
use crate::app::app;
use crate::told::Told;

/// The screen of one large cup.
#[component]
pub fn Cup() -> impl IntoView {
    let app = app();
    let shown = app.memo(cup_screen);
    let open = RwSignal::new(false);
    let asks = app.memo(|state| state.catching.as_ref().is_some_and(|catching| catching.ask.is_some()));
    pad::listen(app);
    let title = move || part(shown, |shown| shown.title.clone());
    let place = move || part(shown, |shown| shown.place.clone());
    view! {
        <div class="cup-head">
            <h1>{title}</h1>
            <p>{place}</p>
        </div>
        <div class="cup-map">
            <button class="to-sheet" on:click=move |_| app.send(Event::Back)>{app.label("yard-to_sheet").said()}</button>
            <Map open/>
        </div>
        <Show when=move || open.get()>
            <Tips open/>
        </Show>
        <Show when=move || !open.get()>
            <Show when=move || asks.get() fallback=move || view! { <CupAndReading shown/> }>
                <Asked/>
            </Show>
            <Pad shown/>
            <Ways shown/>
        </Show>
    }
}

/// A text out of what is shown; empty where nothing is.
fn part(shown: Told<Option<CupScreen>>, of: impl Fn(&CupScreen) -> String) -> String {
    shown.with(|shown| shown.as_ref().map(of).unwrap_or_default())
}

/// The cup, and beside it what was read, and how it stands to the others so far.
#[component]
fn CupAndReading(shown: Told<Option<CupScreen>>) -> impl IntoView {
    let app = app();
    let cup = Told::of(move || part(shown, drawn));
    let tip = app.label("yard-tip");
    let number =
        move || part(shown, |shown| if shown.number.is_empty() { "–".into() } else { shown.number.clone() });
    let so_far = Told::of(move || shown.with(|shown| shown.as_ref().and_then(|shown| shown.so_far.clone())));
    let before = Told::of(move || {
        shown.with(|shown| shown.as_ref().map(|shown| shown.before.clone()).unwrap_or_default())
    });
    view! {
        <div class="cup-and-reading">
            <div class="cup-drawing" inner_html=cup.said()></div>
            <div class="reading">
                <div aria-live="polite" aria-atomic="true">
                    <p class="tip">{tip.said()} " " <b>{move || shown.with(|shown| shown.as_ref().map(|shown| shown.tip))}</b></p>
                    <p class="number">
                        <b>{number}</b>
                        " "
                        <span>{move || part(shown, |shown| shown.unit.clone())}</span>
                    </p>
                    {move || so_far.get().map(|so_far| view! { <Standing so_far/> })}
                </div>
                <p class="how">{move || part(shown, |shown| shown.how.clone())}</p>
                {move || {
                    let before = before.get();
                    (!before.is_empty()).then(|| view! { <Before before/> })
                }}
            </div>
        </div>
    }
}

/// High, low or like the others so far: by a shape, a word and a sentence.
#[component]
fn Standing(so_far: SoFar) -> impl IntoView {
    let app = app();
    let (class, key) = match so_far.side {
        SideOfMean::High => ("so-far high", "yard-high_so_far"),
        SideOfMean::Low => ("so-far low", "yard-low_so_far"),
        SideOfMean::Alike => ("so-far alike", "yard-alike_so_far"),
    };
    view! {
        <div class=class>
            <p class="word"><span class="shape" aria-hidden="true"></span> {app.label(key).said()}</p>
            <p class="says">{so_far.says}</p>
        </div>
    }
}

/// What this cup gave before, and whether what is typed stands beside it or corrects it.
#[component]
fn Before(before: Vec<String>) -> impl IntoView {
    let app = app();
    let more = app.memo(|state| state.catching.as_ref().is_some_and(|catching| catching.one_more.is_yes()));
    let there = app.look(|state| state.words.say("yard-cup_before", &[("read", before.join(", ").into())]));
    view! {
        <div class="before">
            <p>{there}</p>
            <button
                class="switch"
                role="switch"
                aria-checked=move || more.get().to_string()
                on:click=move |_| app.send(Event::OneMoreCup(Waits::when(!more.get())))
            >
                {app.label("yard-one_more_cup").said()}
            </button>
        </div>
    }
}

/// A reading that cannot well be is asked about before it is kept.
#[component]
fn Asked() -> impl IntoView {
    let app = app();
    let why = app.memo(|state| {
        let ask = state.catching.as_ref().and_then(|catching| catching.ask.as_ref());
        ask.map(|ask| ask.why.clone()).unwrap_or_default()
    });
    let head = app.memo(|state| {
        let ask = state.catching.as_ref().and_then(|catching| catching.ask.as_ref());
        let tip = ask.map_or(0, |ask| ask.tip);
        let read = ask.map(|ask| value_said(&state.words, &ask.reading)).unwrap_or_default();
        state.words.say("yard-ask_head", &[("tip", tip.to_string().into()), ("read", read.into())])
    });
    view! {
        <div id="ask" class="ask" role="group" tabindex="-1" aria-labelledby="ask-says">
            <div id="ask-says" role="alert">
                <p class="word">{head.said()}</p>
                <p>{why.said()}</p>
            </div>
            <div class="two">
                <button on:click=move |_| app.send(Event::Insist)>{app.label("yard-keep_it").said()}</button>
                <button class="strong" on:click=move |_| {
                    app.send(Event::NotSo);
                    pad::let_go();
                }>{app.label("yard-put_it_right").said()}</button>
            </div>
        </div>
    }
}

/// Back a tip, and the one way forward.
#[component]
fn Ways(shown: Told<Option<CupScreen>>) -> impl IntoView {
    let app = app();
    let back = Told::of(move || shown.with(|shown| shown.as_ref().and_then(|shown| shown.back)));
    let behind = Told::of(move || shown.with(|shown| shown.as_ref().and_then(|shown| shown.next)));
    let next = app.memo(move |state| match behind.get() {
        Some(tip) => state.words.say("yard-next_tip", &[("tip", tip.to_string().into())]),
        None => state.words.label("yard-last_cup"),
    });
    view! {
        <div class="ways" on:mousedown=|event| event.prevent_default()>
            <button disabled=move || back.get().is_none() on:click=move |_| app.send(Event::BackATip)>
                {app.label("yard-back_a_tip").said()}
            </button>
            <button class="strong" on:click=move |_| app.send(Event::Next)>{next.said()}</button>
        </div>
    }
}
