//! What is seen beside the readings: chosen with large buttons, then one check at a time.

use calibration::symptoms::Outcome;
use leptos::prelude::*;
use yard::shown::{AnsweredShown, IsSeen, SymptomCheckShown, SymptomShown, SymptomsShown};
use yard::{Event, Keep, shown};

use super::field::FieldView;
use super::sheet::head;
use crate::app::app;
use crate::told::Told;

/// The screen.
#[component]
pub fn SymptomsScreen() -> impl IntoView {
    let app = app();
    let shown = app.memo(shown::symptoms);
    let chosen = move || shown.with(|shown| shown.symptoms.iter().any(|one| one.seen == IsSeen::Yes));
    let open = RwSignal::new(!chosen());
    let looking = app.memo(|state| state.visit.as_ref().is_some_and(|visit| visit.keep == Keep::JustLooking));
    let (kept, not_kept) = (app.label("yard-symptoms_kept"), app.label("yard-looking_head"));
    let rests = app.label("yard-symptoms_rest");
    view! {
        {head(app, "yard-symptoms")}
        <p class="quiet">{move || if looking.get() { not_kept.get() } else { kept.get() }}</p>
        <div class="blocks">
            <Seen shown open/>
            <div class="blocks" aria-live="polite" id="symptom-next">
                {move || shown.with(|shown| shown.wrong.clone()).map(|wrong| view! { <p class="wrong">{wrong}</p> })}
                {move || (!open.get()).then(|| view! { <Next shown/> })}
            </div>
            {move || (!open.get() && chosen()).then(|| view! {
                <Causes shown/>
                <p class="small quiet">{rests.get()}</p>
                <Answered shown/>
            })}
        </div>
    }
}

/// What is seen: all there is to choose, or what was chosen.
#[component]
fn Seen(shown: Told<SymptomsShown>, open: RwSignal<bool>) -> impl IntoView {
    let app = app();
    let (what, done, change) =
        (app.label("yard-symptoms_what"), app.label("yard-symptoms_done"), app.label("yard-symptoms_change"));
    let symptoms = Told::of(move || shown.with(|shown| shown.symptoms.clone()));
    let any = move || symptoms.with(|all| all.iter().any(|one| one.seen == IsSeen::Yes));
    let button = move |one: SymptomShown| {
        let symptom = one.symptom;
        // The button stays while it is pressed, so that the keyboard stays on it.
        let pressed = move || {
            symptoms.with(|all| all.iter().any(|one| one.symptom == symptom && one.seen == IsSeen::Yes))
        };
        view! {
            <button type="button" aria-pressed=move || pressed().to_string() on:click=move |_| app.send(Event::Symptom(symptom))>
                <span class="box"><svg viewBox="0 0 24 24" aria-hidden="true"><path class="tick" d="M4 13 10 19 20 5"/></svg></span>
                <span>{one.says}</span>
            </button>
        }
    };
    let close = move |_| {
        open.set(false);
        app.send(Event::LookAt("symptom-next"));
    };
    view! {
        <section class="part">
            <h2>{what.said()}</h2>
            {move || if open.get() {
                view! {
                    <FieldView name="symptoms.drive"/>
                    <div class="cautions stack">
                        <For each=move || symptoms.get() key=|one| (one.symptom.word(), one.says.clone()) let:one>{button(one)}</For>
                    </div>
                    <button type="button" class="go" disabled=move || !any() on:click=close>{done.said()}</button>
                }
                .into_any()
            } else {
                let seen = symptoms.get().into_iter().filter(|one| one.seen == IsSeen::Yes);
                view! {
                    <ul>{seen.map(|one| view! { <li>{one.says}</li> }).collect_view()}</ul>
                    <button type="button" class="aside" on:click=move |_| open.set(true)>{change.said()}</button>
                }
                .into_any()
            }}
        </section>
    }
}

/// The next check, or what to do where none is left.
#[component]
fn Next(shown: Told<SymptomsShown>) -> impl IntoView {
    let app = app();
    let next = Told::of(move || shown.with(|shown| (shown.next.clone(), shown.end.clone())));
    let (check_this, end) = (app.label("yard-symptom_next"), app.label("yard-symptom_end"));
    let (yes, no, skip) = (app.label("choice-yes"), app.label("choice-no"), app.label("yard-symptom_skip"));
    let ask = move |one: SymptomCheckShown| {
        let check = one.check;
        let answer = move |outcome| move |_| app.send(Event::Checked(check, Some(outcome)));
        view! {
            <section class="part check">
                <h2>{check_this.get()}" "<span class="quiet">{one.takes}</span></h2>
                <p class="before-it">{one.before}</p>
                <p>{one.does}</p>
                <p class="asks"><strong>{one.asks}</strong></p>
                <div class="field"><div class="choices pair buttons">
                    <button type="button" on:click=answer(Outcome::Yes)>{yes.get()}</button>
                    <button type="button" on:click=answer(Outcome::No)>{no.get()}</button>
                </div></div>
                <button type="button" class="aside" on:click=answer(Outcome::Skipped)>{skip.get()}</button>
            </section>
        }
    };
    move || {
        let (next, ends) = next.get();
        match next {
            Some(check) => ask(check).into_any(),
            None if ends.is_empty() => ().into_any(),
            None => view! {
                <section class="part check">
                    <h2>{end.get()}</h2>
                    {ends.into_iter().map(|says| view! { <p>{says}</p> }).collect_view()}
                </section>
            }
            .into_any(),
        }
    }
}

/// The likely causes.
#[component]
fn Causes(shown: Told<SymptomsShown>) -> impl IntoView {
    let app = app();
    let head = app.label("yard-symptom_causes");
    let causes = Told::of(move || shown.with(|shown| shown.causes.clone()));
    view! {
        <section class="part">
            <h2>{head.said()}</h2>
            <dl class="pairs">
                {move || causes.get().into_iter().map(|(cause, chance)| view! {
                    <div><dt>{chance}</dt><dd>{cause}</dd></div>
                }).collect_view()}
            </dl>
        </section>
    }
}

/// The checks answered so far, each to be taken back.
#[component]
fn Answered(shown: Told<SymptomsShown>) -> impl IntoView {
    let app = app();
    let (head, back) = (app.label("yard-symptom_answered"), app.label("yard-symptom_take_back"));
    let answered = Told::of(move || shown.with(|shown| shown.answered.clone()));
    let one = move |one: AnsweredShown| {
        let check = one.check;
        let heard = format!(": {}", one.says);
        view! {
            <li class="struck">
                <span>{one.says}</span>
                <button type="button" on:click=move |_| app.send(Event::Checked(check, None))>
                    {back.get()}<span class="heard">{heard}</span>
                </button>
            </li>
        }
    };
    move || {
        let answered = answered.get();
        (!answered.is_empty()).then(|| {
            view! {
                <section class="part">
                    <h2>{head.get()}</h2>
                    <ul>{answered.into_iter().map(one).collect_view()}</ul>
                </section>
            }
        })
    }
}
