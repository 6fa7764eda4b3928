//! What a step asks for and shows, unfolded.

use leptos::prelude::*;
use notebook::RowId;
use report::sheet::Block;
use yard::shown::CAUTIONS;
use yard::{CLOSED, Event, PRODUCTS, RUNS, Screen, State, Step, WhyOf, shown};

use super::cells::CupCells;
use super::field::FieldView;
use super::found::Found;
use super::hand_over::HandOver;
use super::likely::Likely;
use super::sheet::{block, step_list};
use crate::app::{App, app};

/// The body of a step.
pub fn body(step: Step) -> AnyView {
    match step {
        Step::Safe => view! { <Safe/> }.into_any(),
        Step::Drive => view! { <Drive/> }.into_any(),
        Step::Catch => view! { <Catch/> }.into_any(),
        Step::Tank => view! { <Tank/> }.into_any(),
        Step::Change => view! { <Change/> }.into_any(),
        Step::HandOver => view! { <Fields step/><HandOver/> }.into_any(),
        Step::Rate => {
            view! { <Fields step/><Found step/><Why says="yard-why_rate" of=WhyOf::Rate/> }.into_any()
        }
        Step::Look | Step::Repeat => {
            let on = to(app(), "yard-symptoms_to", "line", Screen::Symptoms);
            view! { <Fields step/>{when_wide(step)}{on}<Found step/> }.into_any()
        }
        Step::Spacing => view! { <Fields step/>{when_narrow(step)}{when_wide(step)}<Found step/> }.into_any(),
        Step::Machine => view! { <Fields step/>{when_wide(step)}<Found step/> }.into_any(),
    }
}

/// The fields of a step, in the order they are asked for.
#[component]
fn Fields(step: Step) -> impl IntoView {
    let app = app();
    let names = app.memo(move |state| shown::field_names(state, step));
    view! { <For each=move || names.get() key=|name| *name let:name><FieldView name/></For> }
}

/// The drawing of a step, where a sheet has one.
#[component]
fn Drawn(step: Step) -> impl IntoView {
    drawn(shown::drawings, step)
}

fn drawn(of: fn(&State, Step) -> Vec<Block>, step: Step) -> impl IntoView {
    let blocks = app().memo(move |state| of(state, step));
    move || blocks.get().into_iter().map(block).collect_view()
}

/// The drawing of a step where there is room for it; where there is none it is not made.
fn when_wide(step: Step) -> impl IntoView {
    let app = app();
    move || app.is_wide().then(|| view! { <div><Drawn step/></div> })
}

/// The drawing of a step that a phone has room for.
fn when_narrow(step: Step) -> impl IntoView {
    let app = app();
    move || {
        (!app.is_wide())
            .then(|| view! { <div class="narrow-drawing">{drawn(shown::narrow_drawings, step)}</div> })
    }
}

/// How a number of the whole visit came about.
#[component]
fn Why(says: &'static str, of: WhyOf) -> impl IntoView {
    let app = app();
    let asked = of.clone();
    let there = app.memo(move |state| {
        let (worked, blocks) = shown::why(state, &asked);
        !worked.is_empty() || !blocks.is_empty()
    });
    let says = app.label(says);
    move || {
        let of = of.clone();
        there.get().then(|| {
            view! {
                <button type="button" class="aside" on:click=move |_| app.send(Event::Go(Screen::Why(of.clone())))>
                    {says.said()}
                </button>
            }
        })
    }
}

/// A button that leads to a screen.
pub fn to(app: App, key: &'static str, class: &'static str, screen: Screen) -> impl IntoView {
    let says = app.label(key);
    view! {
        <button type="button" class=class on:click=move |_| app.send(Event::Go(screen.clone()))>{says.said()}</button>
    }
}

#[component]
fn Safe() -> impl IntoView {
    let app = app();
    let one = |key: &'static str| {
        let says = app.label(key);
        let seen = app.memo(move |state| {
            state.visit.as_ref().is_some_and(|visit| visit.made_safe.contains(key)).to_string()
        });
        view! {
            <button type="button" aria-pressed=move || seen.get() on:click=move |_| app.send(Event::MadeSafe(key))>
                <span class="box"><svg viewBox="0 0 24 24" aria-hidden="true"><path class="tick" d="M4 13 10 19 20 5"/></svg></span>
                <span>{says.said()}</span>
            </button>
        }
    };
    view! { <div class="cautions stack">{CAUTIONS.into_iter().map(one).collect_view()}</div> }
}

/// What stands struck at a tap: a run, a product.
fn strike(app: App, list: &'static str, row: RowId, what: String) -> impl IntoView {
    let says = app.label("yard-strike");
    let whole = app.with(|state| state.words.say("yard-strike_what", &[("what", what.into())]));
    view! {
        <button type="button" aria-label=whole on:click=move |_| app.send(Event::StrikeRow { list: list.to_string(), row })>
            {says.said()}
        </button>
    }
}

#[component]
fn Drive() -> impl IntoView {
    let app = app();
    let runs = app.memo(shown::runs);
    let head = app.label("yard-runs");
    let none = app.label("yard-no_runs");
    view! {
        <FieldView name="drive.course"/>
        {to(app, "yard-time_it", "go", Screen::DriveWatch)}
        <TypedRun/>
        <div class="part" aria-live="polite">
            <h3>{head.said()}</h3>
            {move || runs.with(Vec::is_empty).then(|| view! { <p class="quiet">{none.get()}</p> })}
            <ul>
                <For each=move || runs.get() key=|run| run.clone() let:run>
                    <li class="struck"><span>{run.1.clone()}</span>{strike(app, RUNS, run.0, run.1)}</li>
                </For>
            </ul>
        </div>
        <FieldView name="drive.dash"/>
        <Found step=Step::Drive/>
        <Why says="yard-why_speed" of=WhyOf::Speed/>
    }
}

/// A run that was timed with a watch of one's own.
#[component]
fn TypedRun() -> impl IntoView {
    let app = app();
    let typed = app.memo(|state| state.visit.as_ref().and_then(|visit| visit.typed.get(RUNS).cloned()));
    let text = move || typed.get().map(|typed| typed.text).unwrap_or_default();
    let wrong = move || typed.get().and_then(|typed| typed.wrong);
    let (label, add) = (app.label("yard-type_run"), app.label("yard-add_run"));
    let meant = move || app.send(Event::RunTyped(untrack(text)));
    view! {
        <div class="field">
            <label class="label" for="typed-run">{label.said()}</label>
            <div class="entry">
                <input
                    type="text" id="typed-run" inputmode="decimal" autocomplete="off" enterkeyhint="done"
                    aria-invalid=move || wrong().is_some().then_some("true")
                    prop:value=text
                    on:input:target=move |event| {
                        app.send(Event::Typing { field: RUNS.to_string(), text: event.target().value() });
                    }
                    on:keydown=move |event| if event.key() == "Enter" { meant() }
                />
                <button type="button" on:click=move |_| meant()>{add.said()}</button>
            </div>
            {move || wrong().map(|wrong| view! { <p class="wrong" role="alert">{wrong}</p> })}
        </div>
    }
}

#[component]
fn Catch() -> impl IntoView {
    let app = app();
    let any = app.memo(|state| state.visit.as_ref().is_some_and(|visit| visit.outcome.catch.is_some()));
    let new_round = app.label("yard-new_round");
    // As the visit file words them, and as people read them.
    let rounds = [
        ("after cleaning", "word-round_after_cleaning"),
        ("new tips", "word-round_new_tips"),
        ("pressure changed", "word-round_pressure_changed"),
    ];
    let round = move |(after, key): (&'static str, &'static str)| {
        let says = app.label(key);
        let tap = move |_| app.send(Event::NewRound(after.to_string()));
        view! { <button type="button" on:click=tap>{says.said()}</button> }
    };
    view! {
        <FieldView name="catch.cup_marks"/>
        <FieldView name="catch.time"/>
        {to(app, "yard-catch_cups", "go", Screen::Cup)}
        <div class="buttons">
            {to(app, "yard-catch_row", "", Screen::CupRow)}
            {to(app, "yard-catch_voice", "", Screen::HandsFree)}
        </div>
        {move || (!app.is_wide()).then(|| view! { <CupCells/> })}
        {when_wide(Step::Catch)}
        <Found step=Step::Catch/>
        <Likely/>
        <Why says="yard-why_cups" of=WhyOf::Cups/>
        {move || any.get().then(|| view! {
            <div class="part">
                <p>{new_round.get()}</p>
                <div class="buttons">{rounds.into_iter().map(round).collect_view()}</div>
            </div>
        })}
        <FieldView name="catch.cup_holds"/>
        <FieldView name="catch.limit"/>
        <Controller/>
    }
}

/// What a rate controller shows, and its sections closed in turn; only where there is one.
#[component]
fn Controller() -> impl IntoView {
    let app = app();
    let there = app.memo(|state| shown::has_controller(state).is_yes());
    let rows = app.memo(shown::closed_names);
    let (head, closing, add) =
        (app.label("yard-controller"), app.label("yard-controller_closing"), app.label("yard-add_closed"));
    move || {
        there.get().then(|| {
            view! {
                <section class="product">
                    <h3>{move || head.get()}</h3>
                    {["shown_flow", "valves_pulse", "duty", "widths", "shown_speed", "shown_rate"]
                        .map(|name| view! { <FieldView name=format!("controller.{name}")/> })
                        .collect_view()}
                    <p class="small">{move || closing.get()}</p>
                    <For each=move || rows.get() key=|row| row.clone() let:row>
                        <section class="product">
                            <div class="head-line"><h3>{row.1.clone()}</h3>{strike(app, CLOSED, row.0, row.1)}</div>
                            {row.2.into_iter().map(|name| view! { <FieldView name/> }).collect_view()}
                        </section>
                    </For>
                    <button type="button" on:click=move |_| app.send(Event::AddClosed)>{move || add.get()}</button>
                </section>
            }
        })
    }
}

#[component]
fn Tank() -> impl IntoView {
    let app = app();
    let products = app.memo(shown::product_names);
    let (add, law) = (app.label("yard-add_product"), app.label("yard-label_is_law"));
    view! {
        <For each=move || products.get() key=|product| product.clone() let:product>
            <section class="product">
                <div class="head-line"><h3>{product.1.clone()}</h3>{strike(app, PRODUCTS, product.0, product.1)}</div>
                {product.2.into_iter().map(|name| view! { <FieldView name/> }).collect_view()}
            </section>
        </For>
        <button type="button" on:click=move |_| app.send(Event::AddProduct)>{add.said()}</button>
        <Fields step=Step::Tank/>
        <Found step=Step::Tank/>
        <p class="small">{law.said()}</p>
        <Why says="yard-why_tank" of=WhyOf::Tank/>
    }
}

#[component]
fn Change() -> impl IntoView {
    let app = app();
    let steps = app.memo(shown::to_do);
    let none = app.label("yard-nothing_to_do");
    let told = app.memo(|state| {
        state
            .visit
            .as_ref()
            .is_some_and(|visit| visit.outcome.rate.is_some() || visit.outcome.catch.is_some())
    });
    view! {
        {move || steps.with(Vec::is_empty).then(|| told.get().then(|| view! { <p>{none.get()}</p> }))}
        {move || step_list(steps.get())}
        <Found step=Step::Change/>
        {to(app, "yard-last_time", "", Screen::LastTime)}
    }
}
