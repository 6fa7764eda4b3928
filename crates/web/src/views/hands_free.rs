//! Catching without touching: how it goes is chosen, then the whole screen says which tip, what to do, and how long yet.

use leptos::prelude::*;
use yard::{Event, HandsFree, Pace, Phase, Screen, Waits};

use super::stepper::Stepper;
use crate::app::{App, app};
use crate::told::Told;

/// How much a tap on "more" or "less" changes: seconds, cups. Our own choice.
const SECONDS: f64 = 5.0;

/// What the screen shows.
#[derive(Clone, Copy, PartialEq)]
enum Face {
    Choosing,
    Runs,
    EndedAway,
    Done,
}

/// The screen.
#[component]
pub fn HandsFreeFace() -> impl IntoView {
    let app = app();
    let face = app.memo(|state| match state.hands_free.as_ref().map(|hands_free| hands_free.phase) {
        None | Some(Phase::Choosing) => Face::Choosing,
        Some(Phase::EndedAway { .. }) => Face::EndedAway,
        Some(Phase::Done) => Face::Done,
        Some(_) => Face::Runs,
    });
    move || match face.get() {
        Face::Choosing => view! { <Choosing/> }.into_any(),
        Face::Runs => view! { <Runs/> }.into_any(),
        Face::EndedAway => view! { <EndedAway/> }.into_any(),
        Face::Done => view! { <Done/> }.into_any(),
    }
}

fn pace_of(app: App) -> Told<Pace> {
    app.memo(|state| state.hands_free.as_ref().map(|hands_free| hands_free.pace).unwrap_or_default())
}

/// How it goes: seconds, cups at once, the pause, and when readings are entered.
#[component]
fn Choosing() -> impl IntoView {
    let app = app();
    let pace = pace_of(app);
    let set = move |change: fn(&mut Pace, f64), by: f64| {
        let mut changed = pace.get_untracked();
        change(&mut changed, by);
        app.send(Event::SetPace(changed));
    };
    let seconds = |of: fn(&Pace) -> f64| {
        app.memo(move |state| {
            let seconds =
                of(&state.hands_free.as_ref().map(|hands_free| hands_free.pace).unwrap_or_default());
            state.words.amount(&units::Amount::new(units::Time::seconds(seconds), units::Kind::Time))
        })
    };
    let held = seconds(|pace| pace.seconds);
    let pause = seconds(|pace| pace.pause);
    let cups = app.memo(move |_| pace.get().at_once.to_string());
    let each = Told::of(move || pace.get().enter.is_yes());
    let enter =
        move |each: Waits| move |_| app.send(Event::SetPace(Pace { enter: each, ..pace.get_untracked() }));
    let tips = app.memo(|state| {
        let tips = state.hands_free.as_ref().map(|hands_free| hands_free.tips.as_slice()).unwrap_or_default();
        state.words.say("yard-voice_tips", &[("tips", state.words.tips(tips).into())])
    });
    view! {
        <div class="row-head">
            <button on:click=move |_| app.send(Event::Back)>{app.label("yard-to_sheet").said()}</button>
            <h1>{app.label("yard-voice_title").said()}</h1>
        </div>
        <p>{tips.said()}</p>
        <Stepper
            name=app.label("yard-voice_held")
            value=held
            less=move || set(|pace, by| pace.seconds -= by, SECONDS)
            more=move || set(|pace, by| pace.seconds += by, SECONDS)
        />
        <Stepper
            name=app.label("yard-voice_at_once")
            value=cups
            less=move || set(|pace, _| pace.at_once = pace.at_once.saturating_sub(1).max(1), 1.0)
            more=move || set(|pace, _| pace.at_once += 1, 1.0)
        />
        <Stepper
            name=app.label("yard-voice_pause")
            value=pause
            less=move || set(|pace, by| pace.pause -= by, SECONDS)
            more=move || set(|pace, by| pace.pause += by, SECONDS)
        />
        <fieldset>
            <legend>{app.label("yard-voice_enter").said()}</legend>
            <div class="two">
                <button class="choice" aria-pressed=move || (!each.get()).to_string() on:click=enter(Waits::No)>
                    {app.label("yard-voice_enter_after").said()}
                </button>
                <button class="choice" aria-pressed=move || each.get().to_string() on:click=enter(Waits::Yes)>
                    {app.label("yard-voice_enter_each").said()}
                </button>
            </div>
        </fieldset>
        <button class="strong" on:click=move |_| app.send(Event::HandsFreeStart)>{app.label("yard-voice_start").said()}</button>
    }
}

/// While it goes: tip, word, seconds left, and one button.
#[component]
fn Runs() -> impl IntoView {
    let app = app();
    let now = move |of: fn(&HandsFree) -> String| {
        app.memo(move |state| state.hands_free.as_ref().map(of).unwrap_or_default())
    };
    let tips = app.memo(|state| {
        let tips = state.hands_free.as_ref().map(HandsFree::now).unwrap_or_default();
        state.words.tips(tips)
    });
    let (word, class) = (
        app.memo(|state| {
            state.words.label(match state.hands_free.as_ref().map(|hands_free| hands_free.phase) {
                Some(Phase::Catching) => "yard-voice_catch",
                Some(Phase::Between) => "yard-voice_between",
                _ => "yard-voice_ready",
            })
        }),
        now(|hands_free| match hands_free.phase {
            Phase::Catching => "face catching".to_string(),
            Phase::Between => "face between".to_string(),
            _ => "face ready".to_string(),
        }),
    );
    // Whole seconds, counted down to nothing as people say them.
    let left =
        now(|hands_free| hands_free.left().map(|left| format!("{:.0}", left.ceil())).unwrap_or_default());
    view! {
        <div class=class.said()>
            <h1><span>{app.label("yard-tip").said()}</span> " " <b>{tips.said()}</b></h1>
            <p class="word" aria-live="assertive">{word.said()}</p>
            <p class="left" aria-hidden="true">{left.said()}</p>
            <button on:click=move |_| app.send(Event::HandsFreeStop)>{app.label("yard-voice_stop").said()}</button>
        </div>
    }
}

/// A cup that was held too long, as the device slept or was elsewhere.
#[component]
fn EndedAway() -> impl IntoView {
    let app = app();
    let tips = app.memo(|state| {
        let tips = state.hands_free.as_ref().map(HandsFree::now).unwrap_or_default();
        state.words.tips(tips)
    });
    let says = app.memo(|state| {
        let over = match state.hands_free.as_ref().map(|hands_free| hands_free.phase) {
            Some(Phase::EndedAway { over }) => over,
            _ => 0.0,
        };
        let over = units::Amount::new(units::Time::seconds(over), units::Kind::Time);
        state.words.say("yard-voice_ended_away", &[("over", state.words.amount(&over).into())])
    });
    view! {
        <div class="face ended" role="alert">
            <h1><span>{app.label("yard-tip").said()}</span> " " <b>{tips.said()}</b></h1>
            <p class="says">{says.said()}</p>
            <button class="strong" on:click=move |_| app.send(Event::HandsFreeAgain)>{app.label("yard-voice_again").said()}</button>
            <button on:click=move |_| app.send(Event::HandsFreeStop)>{app.label("yard-voice_stop").said()}</button>
        </div>
    }
}

/// All tips were called: the readings are entered.
#[component]
fn Done() -> impl IntoView {
    let app = app();
    let to = move |screen: Screen| move |_| app.send(Event::Go(screen.clone()));
    view! {
        <div class="face done">
            <h1>{app.label("yard-voice_done").said()}</h1>
            <button class="strong" on:click=to(Screen::Cup)>{app.label("yard-catch_cups").said()}</button>
            <button on:click=to(Screen::CupRow)>{app.label("yard-catch_row").said()}</button>
            <button on:click=move |_| app.send(Event::HandsFreeStop)>{app.label("yard-voice_once_more").said()}</button>
        </div>
    }
}
