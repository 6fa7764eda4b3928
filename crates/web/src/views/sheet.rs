//! A sheet to hand over, as it will be printed; and the parts of sheets that stand on other screens too.

use leptos::html::Iframe;
use leptos::prelude::*;
use report::sheet::{AnswerBox, Block, Step, Table};
use yard::{Event, SheetKind};

use super::found::{class_of, sign};
use crate::app::{App, app};
use crate::device::{print, sheets};

/// A sheet to hand over.
#[component]
pub fn SheetScreen(
    /// Which.
    kind: SheetKind,
) -> impl IntoView {
    let app = app();
    app.device().letters.fetch(app);
    let page = app.memo(move |state| sheets::framed(state, kind));
    let (print_says, share) = (app.label("yard-print"), app.label("yard-share"));
    let none = app.label("yard-no_sheet");
    let title = app.label(title(kind));
    let frame = NodeRef::<Iframe>::new();
    let dressed = move |_| {
        let window = frame.get_untracked().and_then(|frame| frame.content_window());
        if let Some((window, document)) = window.and_then(|window| Some((window.clone(), window.document()?)))
        {
            print::dress(&document, &window);
        }
    };
    view! {
        {head(app, "yard-sheets")}
        {move || match page.get() {
            None => view! { <p>{none.get()}</p> }.into_any(),
            Some(page) => view! {
                <div class="stack">
                    <div class="buttons">
                        <button type="button" class="go" on:click=move |_| app.send(Event::Print(kind))>{print_says.get()}</button>
                        <button type="button" on:click=move |_| app.send(Event::Share(kind))>{share.get()}</button>
                    </div>
                    <iframe class="framed" node_ref=frame title=title.get() srcdoc=page on:load=dressed></iframe>
                </div>
            }.into_any(),
        }}
    }
}

/// The key of what a sheet is called.
pub const fn title(kind: SheetKind) -> &'static str {
    match kind {
        SheetKind::Visit => "yard-sheet_visit",
        SheetKind::Cab => "yard-sheet_cab",
        SheetKind::Cups => "yard-sheet_cups",
        SheetKind::Tags => "yard-sheet_tags",
        SheetKind::Paper => "yard-sheet_paper",
        SheetKind::Before => "yard-sheet_before",
    }
}

/// The head of a quiet screen, with the way back.
pub fn head(app: App, title: &'static str) -> impl IntoView {
    let (title, back) = (app.label(title), app.label("yard-back"));
    view! {
        <header class="head">
            <div class="row">
                <h1>{title.said()}</h1>
                <button type="button" on:click=move |_| app.send(Event::Back)>{back.said()}</button>
            </div>
        </header>
    }
}

/// A part of a sheet on a screen.
pub fn block(block: Block) -> AnyView {
    match block {
        Block::Stop(lines) => view! { <div class="stop">{paragraphs(lines)}</div> }.into_any(),
        Block::Answers(boxes) => {
            view! { <div class="answers">{boxes.into_iter().map(answer).collect_view()}</div> }.into_any()
        }
        Block::Drawing(drawing) => {
            view! { <div class="drawing" inner_html=figures::svg(&drawing)></div> }.into_any()
        }
        Block::Heading(heading) => view! { <h3>{heading}</h3> }.into_any(),
        Block::Steps { steps, .. } => step_list(steps).into_any(),
        Block::Facts { pairs, .. } | Block::LargeFacts { pairs, .. } => facts(pairs).into_any(),
        Block::Table(one) => table(one).into_any(),
        Block::Text(text) => view! { <p>{text}</p> }.into_any(),
        Block::Small(text) => view! { <p class="small">{text}</p> }.into_any(),
        Block::Notes(lines) => view! { <div class="stack">{paragraphs(lines)}</div> }.into_any(),
        Block::Lines(lines) => view! { <div class="working">{paragraphs(lines)}</div> }.into_any(),
        Block::Care { lead, text } => view! { <p><strong>{lead}</strong>" "{text}</p> }.into_any(),
        // These stand on paper alone.
        Block::Title { .. }
        | Block::Picture { .. }
        | Block::Ticks { .. }
        | Block::Blanks { .. }
        | Block::Cut(_)
        | Block::Tags(_) => ().into_any(),
    }
}

fn paragraphs(lines: Vec<String>) -> impl IntoView {
    lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view()
}

/// A number of more signs than these is a sentence and is set smaller. Our own choice.
const LONG: usize = 14;

fn answer(one: AnswerBox) -> impl IntoView {
    let class = if one.number.chars().count() > LONG { "number long" } else { "number" };
    view! {
        <div>
            <p class="above">{one.above}</p>
            <p class=class>{one.number}" "<span class="unit">{one.unit}</span></p>
            <div class="below">{paragraphs(one.below)}</div>
        </div>
    }
}

/// What to do, in order.
pub fn step_list(steps: Vec<Step>) -> impl IntoView {
    let one = |step: Step| {
        view! {
            <li class=class_of(step.sign)>
                <span class="sign">{sign(step.sign)}</span>
                <p class="lead">{step.lead}</p>
                {(!step.rest.is_empty()).then(|| view! { <p class="rest">{step.rest}</p> })}
            </li>
        }
    };
    (!steps.is_empty()).then(|| view! { <ol class="found">{steps.into_iter().map(one).collect_view()}</ol> })
}

/// Names and values.
pub fn facts(pairs: Vec<(String, String)>) -> impl IntoView {
    let one = |(name, value): (String, String)| view! { <div><dt>{name}</dt><dd>{value}</dd></div> };
    view! { <dl class="pairs">{pairs.into_iter().map(one).collect_view()}</dl> }
}

fn table(table: Table) -> impl IntoView {
    let row = |cells: Vec<String>| {
        let cell = |cell: String| view! { <td>{cell}</td> };
        view! { <tr>{cells.into_iter().map(cell).collect_view()}</tr> }
    };
    let name = |head: String| view! { <th scope="col">{head}</th> };
    let label = table.caption.clone();
    view! {
        <div class="wide" tabindex="0" role="group" aria-label=label>
            <table>
                <caption class="heard">{table.caption}</caption>
                <thead><tr>{table.heads.into_iter().map(name).collect_view()}</tr></thead>
                <tbody>{table.rows.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}
