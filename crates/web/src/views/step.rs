//! A step of the visit: one folded line that says what it found, and under it, at a tap, what is asked for.

use leptos::prelude::*;
use yard::shown::{Mark, StepShown};
use yard::{Event, Step, shown};

use super::body::body;
use crate::app::app;
use crate::told::Told;

/// A step.
#[component]
pub fn StepView(
    /// Which.
    step: Step,
    /// Every step as it stands.
    steps: Told<Vec<StepShown>>,
) -> impl IntoView {
    let app = app();
    let own = Told::of(move || steps.with(|steps| steps.iter().find(|one| one.step == step).cloned()));
    let open = app.memo(move |state| state.visit.as_ref().is_some_and(|visit| visit.unfolded == Some(step)));
    let title = move || own.with(|own| own.as_ref().map(|own| own.title.clone()));
    let later = app.label("yard-with_more_time");
    let with_more_time =
        move || own.with(|own| own.as_ref().is_some_and(|own| own.today == yard::Today::WithMoreTime));
    let mark = Told::of(move || own.with(|own| own.as_ref().map_or(Mark::Open, |own| own.mark)));
    let word = move || {
        app.with(|state| match (mark.get(), with_more_time()) {
            (Mark::Open, true) => later.get(),
            (mark, _) => state.words.label(word_of(mark)),
        })
    };
    let in_the_way =
        Told::of(move || own.with(|own| own.as_ref().map(|own| own.in_the_way.clone()).unwrap_or_default()));
    view! {
        <li class:later=with_more_time>
            <h3>
                <button
                    type="button"
                    class="unfolds"
                    id=format!("step-{}", step.word())
                    aria-expanded=move || open.get().to_string()
                    aria-controls=format!("body-{}", step.word())
                    on:click=move |_| app.send(Event::Unfold(step))
                >
                    <span class="mark">{move || shape(mark.get())}</span>
                    <span class="name">
                        <span class="title">{title}</span>
                        <span class="state" class:act=move || mark.get() == Mark::Act>{word}</span>
                    </span>
                    <span class="says">{move || own.with(|own| own.as_ref().map(|own| own.line.clone()))}</span>
                </button>
            </h3>
            <div id=format!("body-{}", step.word()) role="group" aria-labelledby=format!("step-{}", step.word())>
                {move || open.get().then(|| view! {
                    <div class="unfolded">
                        <InTheWay lines=in_the_way/>
                        {body(step)}
                        <NextStep step/>
                    </div>
                })}
            </div>
        </li>
    }
}

/// What is still needed, or does not go together.
#[component]
fn InTheWay(lines: Told<Vec<String>>) -> impl IntoView {
    move || {
        let lines = lines.get();
        (!lines.is_empty()).then(|| view! {
            <ul class="still">{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
        })
    }
}

/// On to the step behind this one.
#[component]
fn NextStep(step: Step) -> impl IntoView {
    let app = app();
    let next = app.memo(move |state| shown::next_step(state, step));
    move || {
        next.get().map(|(next, says)| {
            view! { <button type="button" on:click=move |_| app.send(Event::Unfold(next))>{says}</button> }
        })
    }
}

/// The key of the word that goes with a mark.
const fn word_of(mark: Mark) -> &'static str {
    match mark {
        Mark::Open => "yard-mark_open",
        Mark::Begun => "yard-mark_begun",
        Mark::InOrder => "yard-mark_in_order",
        Mark::Act => "yard-mark_act",
        Mark::CannotTell => "yard-mark_cannot_tell",
    }
}

/// A cup for each step: empty, begun, filled to the mean; the triangle and the ringed question mark of the row of cups where
/// there is something to do or to settle.
fn shape(mark: Mark) -> AnyView {
    match mark {
        Mark::Open => view! {
            <svg viewBox="0 0 40 40" aria-hidden="true"><path class="outline dashed" d="M7 5 11 36H29L33 5"/></svg>
        }
        .into_any(),
        Mark::Begun => view! {
            <svg viewBox="0 0 40 40" aria-hidden="true">
                <path class="water" d="M9.7 26H30.3L29 36H11Z"/>
                <path class="water-line" d="M9.7 26H30.3"/>
                <path class="outline" d="M7 5 11 36H29L33 5"/>
            </svg>
        }
        .into_any(),
        Mark::InOrder => view! {
            <svg viewBox="0 0 40 40" aria-hidden="true">
                <path class="water" d="M8 12H32L29 36H11Z"/>
                <path class="water-line" d="M8 12H32"/>
                <path class="outline" d="M7 5 11 36H29L33 5"/>
            </svg>
        }
        .into_any(),
        Mark::Act => super::found::sign(report::sheet::Sign::Act),
        Mark::CannotTell => super::found::sign(report::sheet::Sign::Settle),
    }
}
