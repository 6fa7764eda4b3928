//! The pad under the large cup, and the same keys on a real keyboard.

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, KeyboardEvent};
use yard::shown::CupScreen;
use yard::{Event, Key};

use crate::app::{App, app};
use crate::told::Told;

/// The digits, as they stand on the pad.
const DIGITS: [[u8; 3]; 3] = [[7, 8, 9], [4, 5, 6], [1, 2, 3]];
/// The fractions a cup marked in ounces has: quarters, and how they are printed.
const QUARTERS: [(u8, &str); 3] = [(1, "+¼"), (2, "+½"), (3, "+¾")];

/// The pad: digits, what the cup's side has beside them, skip and rub out.
#[component]
pub fn Pad(shown: Told<Option<CupScreen>>) -> impl IntoView {
    let app = app();
    let quarters = Told::of(move || shown.with(|shown| shown.as_ref().is_some_and(|shown| shown.quarters)));
    let right = move |row: usize| match quarters.get() {
        true => {
            let (quarters, text) = QUARTERS[row];
            view! { <button class="more" on:click=move |_| app.send(Event::Key(Key::Quarters(quarters)))>{text}</button> }
                .into_any()
        }
        false => right_of_decimals(app, shown, row),
    };
    let (skip, rub) = (app.label("yard-skip_tip"), app.label("yard-rub_out"));
    view! {
        // A tap leaves the keyboard's place where it was, so that Enter on a real keyboard still means "next".
        <div class="pad" on:mousedown=|event| event.prevent_default()>
            {DIGITS
                .iter()
                .enumerate()
                .map(|(row, digits)| {
                    let [first, second, third] = *digits;
                    view! {
                        {digit_key(app, first, "digit first")}
                        {digit_key(app, second, "digit")}
                        {digit_key(app, third, "digit")}
                        {move || right(row)}
                    }
                })
                .collect_view()}
            <button class="word first" on:click=move |_| app.send(Event::Key(Key::Skip))>{skip.said()}</button>
            {digit_key(app, 0, "digit")}
            <button class="word" on:click=move |_| app.send(Event::Key(Key::Rub))>{rub.said()}</button>
            <OtherSide shown/>
        </div>
    }
}

fn digit_key(app: App, digit: u8, class: &'static str) -> impl IntoView {
    view! { <button class=class on:click=move |_| app.send(Event::Key(Key::Digit(digit)))>{digit}</button> }
}

/// Beside the digits of a side that has no quarters: the point, and the marks of that side where they can be changed.
fn right_of_decimals(app: App, shown: Told<Option<CupScreen>>, row: usize) -> AnyView {
    let marks = Told::of(move || shown.with(|shown| shown.as_ref().and_then(|shown| shown.other_marks)));
    match row {
        0 => {
            let point = app.memo(|state| state.words.digits("."));
            view! { <button class="digit" on:click=move |_| app.send(Event::Key(Key::Point))>{point.said()}</button> }
                .into_any()
        }
        1 => view! {
            {move || {
                marks
                    .get()
                    .map(|marks| {
                        let label = app.look(|state| state.words.say("yard-marks", &[("step", state.words.numbers_in(marks).into())]));
                        view! {
                            <button class="word tall" on:click=move |_| app.send(Event::Key(Key::OtherMarks))>{label}</button>
                        }
                    })
            }}
        }
        .into_any(),
        _ => ().into_any(),
    }
}

/// The key for the cup's other side, where it has one.
#[component]
fn OtherSide(shown: Told<Option<CupScreen>>) -> impl IntoView {
    let app = app();
    let other = Told::of(move || shown.with(|shown| shown.as_ref().and_then(|shown| shown.other_side)));
    move || {
        other.get().map(|unit| {
            let unit = app.look(|state| match units::Unit::named(unit) {
                Some(known) => state.words.unit(&known),
                None => unit.to_string(),
            });
            let says = app.label("yard-other_side");
            view! {
                <button class="word side" aria-label=move || format!("{}: {unit}", says.get()) on:click=move |_| app.send(Event::Key(Key::OtherSide))>
                    {unit.clone()}
                </button>
            }
        })
    }
}

/// A key of a real keyboard, as an event; none where it means nothing here, or belongs to what has the keyboard.
fn meant(event: &KeyboardEvent) -> Option<Event> {
    if event.ctrl_key() || event.alt_key() || event.meta_key() {
        return None;
    }
    let at = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    let kind = at.as_ref().map(Element::tag_name).unwrap_or_default();
    if matches!(kind.as_str(), "INPUT" | "TEXTAREA" | "SELECT") {
        return None;
    }
    let key = event.key();
    let event = match key.as_str() {
        // A button that was gone to by keyboard is pressed by it.
        "Enter" if kind == "BUTTON" => return None,
        "Enter" | "ArrowRight" | "ArrowDown" => Event::Next,
        "ArrowLeft" | "ArrowUp" => Event::BackATip,
        "Backspace" | "Delete" => Event::Key(Key::Rub),
        "." | "," => Event::Key(Key::Point),
        "-" => Event::Key(Key::Skip),
        "Escape" => Event::NotSo,
        _ => {
            let digit = key.parse::<u8>().ok().filter(|digit| *digit < 10 && key.len() == 1)?;
            Event::Key(Key::Digit(digit))
        }
    };
    Some(event)
}

/// Listens to a real keyboard for as long as the screen is on.
pub fn listen(app: App) {
    let listening = window_event_listener(ev::keydown, move |event| {
        if let Some(meant) = meant(&event) {
            event.prevent_default();
            app.send(meant);
        }
    });
    on_cleanup(move || listening.remove());
}

/// Lets go of the keyboard's place, so that the next key is the screen's.
pub fn let_go() {
    if let Some(at) = document().active_element().and_then(|at| at.dyn_into::<HtmlElement>().ok()) {
        // An element that has the keyboard can let it go.
        let _ = at.blur();
    }
}
