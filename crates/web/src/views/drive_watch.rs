//! The watch of the timed drive: the whole screen is one button, for a thumb that does not look.

use leptos::prelude::*;
use notebook::Value;
use units::{Amount, Kind, Ranged, Speed};
use yard::{Event, RUNS, State, Waits, Watch, typed_text};

use crate::app::app;

/// The screen.
#[component]
pub fn DriveWatchFace() -> impl IntoView {
    let app = app();
    let runs_now = app.memo(|state| matches!(state.drive.is, Watch::Running { .. }));
    let stopped = app.memo(|state| matches!(state.drive.is, Watch::Stopped { .. }));
    let time = app.memo(|state| {
        let seconds = match state.drive.is {
            Watch::Idle => 0.0,
            Watch::Running { shown, .. } => shown,
            Watch::Stopped { seconds } => seconds,
        };
        state.words.fixed(seconds, 1)
    });
    let word = app.memo(|state| {
        state.words.label(match state.drive.is {
            Watch::Running { .. } => "yard-watch_stop",
            Watch::Idle => "yard-watch_start",
            Watch::Stopped { .. } => "yard-watch_next",
        })
    });
    let runs = app.memo(runs);
    view! {
        <h1 class="heard">{app.label("step-drive").said()}</h1>
        <button class="watch" class:goes=move || runs_now.get() on:click=move |_| app.send(Event::DriveTap)>
            <span class="time" aria-hidden="true">{time.said()} <small>" s"</small></span>
            <span class="word" aria-live="assertive">{word.said()}</span>
            <span class="how">{app.label("yard-watch_how").said()}</span>
        </button>
        <Show when=move || !runs_now.get()>
            <div class="watch-foot">
                {move || {
                    let runs = runs.get();
                    (!runs.is_empty()).then(|| view! {
                        <ol class="runs" aria-label=app.label("yard-runs").said()>
                            {runs.into_iter().map(|run| view! { <li>{run}</li> }).collect_view()}
                        </ol>
                    })
                }}
                <Sensed/>
                <div class="two">
                    <button on:click=move |_| app.send(Event::Back)>{app.label("yard-to_sheet").said()}</button>
                    <Show when=move || stopped.get()>
                        <button on:click=move |_| app.send(Event::DriveAgain)>{app.label("yard-watch_no_good").said()}</button>
                    </Show>
                </div>
            </div>
        </Show>
    }
}

/// The runs so far, each in a few words.
fn runs(state: &State) -> Vec<String> {
    let rows = state
        .visit
        .as_ref()
        .and_then(|visit| visit.folded.rows.get(RUNS))
        .map(Vec::as_slice)
        .unwrap_or_default();
    let said = |(place, value): (usize, &Value)| {
        let of = |name: &str| match value {
            Value::Table(fields) => {
                fields.iter().find(|(known, _)| known == name).map(|(_, value)| typed_text(value))
            }
            _ => None,
        };
        let time = of("time").map(|time| state.words.numbers_in(&time)).unwrap_or_default();
        let number = i64::try_from(place + 1).unwrap_or(i64::MAX);
        let way = of("way").unwrap_or_else(|| "none".to_string());
        state.words.say("yard-run", &[("number", number.into()), ("way", way.into()), ("time", time.into())])
    };
    rows.iter().map(|(_, held)| &held.value).enumerate().map(said).collect()
}

/// The speed by the position sensor, where it is asked for: a look across, never a fact of the visit.
#[component]
fn Sensed() -> impl IntoView {
    let app = app();
    let asked = app.memo(|state| state.drive.sensing.is_yes());
    let says = app.memo(|state| match state.drive.sensed {
        None => state.words.label("yard-sensor_waits"),
        Some((speed, doubt)) => {
            let shown = Amount::ranged(&ranged(speed, doubt), Kind::Speed);
            let speed = state.words.amount(&shown);
            match state.words.range(&shown) {
                Some(range) => {
                    state.words.say("yard-sensor_range", &[("speed", speed.into()), ("range", range.into())])
                }
                None => state.words.say("yard-sensor", &[("speed", speed.into())]),
            }
        }
    });
    let ask = move |_| app.send(Event::SenseSpeed(Waits::when(!asked.get_untracked())));
    view! {
        <button class="switch" role="switch" aria-checked=move || asked.get().to_string() on:click=ask>
            {app.label("yard-sensor_ask").said()}
        </button>
        <Show when=move || asked.get()>
            <p aria-live="off">{says.said()}</p>
        </Show>
    }
}

/// The speed with how far it may be off; without, where the device does not say.
fn ranged(metres_a_second: f64, doubt: Option<f64>) -> Ranged<Speed> {
    let value = Speed::metres_per_second(metres_a_second);
    match doubt {
        Some(doubt) => Ranged {
            value,
            low: Speed::metres_per_second((metres_a_second - doubt).max(0.0)),
            high: Speed::metres_per_second(metres_a_second + doubt),
        },
        None => Ranged::exact(value),
    }
}
