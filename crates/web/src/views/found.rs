//! What was found, one below the other: what is so, what to do, why, and the tips that would settle it.

use leptos::prelude::*;
use report::sheet::Sign;
use yard::shown::FoundShown;
use yard::{Event, Screen, Step};

use crate::app::app;

/// What a step found.
#[component]
pub fn Found(
    /// The step.
    step: Step,
) -> impl IntoView {
    let app = app();
    let found = app.memo(move |state| yard::shown::found(state, step));
    move || {
        let found = found.get();
        (!found.is_empty())
            .then(|| view! { <ul class="found" aria-live="polite">{found.into_iter().map(one).collect_view()}</ul> })
    }
}

fn one(found: FoundShown) -> impl IntoView {
    let app = app();
    let says_why = app.label("yard-why");
    let why = found.why.map(|why| {
        let about = found.lead.clone();
        view! {
            <button type="button" class="aside" on:click=move |_| app.send(Event::Go(Screen::Why(why.clone())))>
                {says_why.said()}<span class="heard">" "{about}</span>
            </button>
        }
    });
    let again = found.again.map(|again| {
        let (tips, seconds) = (again.tips, again.seconds);
        let tap = move |_| app.send(Event::CatchAgain { tips: tips.clone(), seconds: seconds.clone() });
        view! { <button type="button" on:click=tap>{again.label}</button> }
    });
    let any = why.is_some() || again.is_some();
    view! {
        <li class=class_of(found.sign)>
            <span class="sign">{sign(found.sign)}</span>
            <p class="lead">{found.lead}</p>
            {(!found.rest.is_empty()).then(|| view! { <p class="rest">{found.rest}</p> })}
            {any.then(|| view! { <div class="more">{again}{why}</div> })}
        </li>
    }
}

/// The class of a sign.
pub const fn class_of(sign: Sign) -> &'static str {
    match sign {
        Sign::Act => "acts",
        Sign::Settle => "settles",
        Sign::Plain => "plain",
    }
}

/// The shape of a sign: a triangle to act on, a ringed question mark to settle, a short line for what is good to know.
pub fn sign(sign: Sign) -> AnyView {
    match sign {
        Sign::Act => view! {
            <svg viewBox="0 0 24 24" aria-hidden="true"><path class="shape-act" d="M12 2 23 22H1Z"/></svg>
        }
        .into_any(),
        Sign::Settle => view! {
            <svg viewBox="0 0 24 24" aria-hidden="true">
                <circle class="outline" cx="12" cy="12" r="10"/>
                <path class="outline" d="M8.7 9.6c.2-4.6 6.8-4.4 6.6-.6-.1 2.4-3.2 2.4-3.3 5.2"/>
                <circle class="shape-ink" cx="12" cy="17.6" r="1.6"/>
            </svg>
        }
        .into_any(),
        Sign::Plain => view! {
            <svg viewBox="0 0 24 24" aria-hidden="true"><path class="outline" d="M5 12H19"/></svg>
        }
        .into_any(),
    }
}
