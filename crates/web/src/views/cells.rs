//! The row of cups on a narrow screen: each tip with its cup, as many beside one another as there is room for.

use leptos::prelude::*;
use report::sheet::Sign;
use yard::shown::{self, CupCell, CupSection, TipLikely};

use crate::app::app;

// Our own layout, in units of the drawing.
/// Height of the drawing of a cup.
const HIGH: f64 = 60.0;
/// Height of its bottom.
const BOTTOM: f64 = 57.0;
/// Height of a full cup's water.
const FULL: f64 = 52.0;

/// Height on the page of a height in the cup, 0 to 1.
fn down(height: f64) -> f64 {
    BOTTOM - FULL * height
}

/// The row of cups, section by section.
#[component]
pub fn CupCells() -> impl IntoView {
    let app = app();
    let sections = app.memo(|state| {
        // Asked for first, so that its time is noted apart.
        super::likely::worked_out(state);
        shown::cup_sections(state)
    });
    move || sections.get().into_iter().enumerate().map(section).collect_view()
}

fn section((place, section): (usize, CupSection)) -> impl IntoView {
    let id = format!("cells-{place}");
    let class = if section.loses { "cells-head loses" } else { "cells-head" };
    let headed = !section.head.is_empty();
    let label = headed.then(|| id.clone());
    view! {
        {headed.then(|| view! { <h4 class=class id=id>{section.head}</h4> })}
        <ol class="cells" aria-labelledby=label>{section.cells.into_iter().map(one).collect_view()}</ol>
    }
}

/// What a tip most likely is: the tip as seen from below, its hole as it should be, worn wide, half closed, closed; a square
/// one of another size; a cup that may have been misread asks.
fn likely(likely: TipLikely) -> impl IntoView {
    let ring = || view! { <circle class="outline" cx="12" cy="12" r="10"/> };
    let shape = match likely.is {
        "worn" => view! { {ring()}<circle class="shape-ink" cx="12" cy="12" r="7"/> }.into_any(),
        "partly_plugged" => {
            view! { {ring()}<path class="shape-ink" d="M12 2A10 10 0 0 0 12 22Z"/> }.into_any()
        }
        "plugged" => view! { {ring()}<path class="outline" d="M5 5 19 19M19 5 5 19"/> }.into_any(),
        "other_size" => view! {
            <path class="outline" d="M2 2H22V22H2Z"/><circle class="shape-ink" cx="12" cy="12" r="3"/>
        }
        .into_any(),
        "at_place" => view! {
            <path class="shape-ink" d="M5 1H19V14H5Z"/><path class="outline" d="M8 14H16L14 22H10Z"/>
        }
        .into_any(),
        "doubtful_cup" => view! {
            <path class="outline dashed" d="M4 2 7 22H17L20 2"/>
            <path class="outline" d="M9.6 9c.1-3.6 5-3.4 4.8-.4-.1 1.8-2.4 1.8-2.5 4"/>
            <circle class="shape-ink" cx="11.9" cy="16.6" r="1.4"/>
        }
        .into_any(),
        _ => view! { {ring()}<circle class="shape-ink" cx="12" cy="12" r="3"/> }.into_any(),
    };
    view! {
        <span class="is">
            <svg viewBox="0 0 24 24" aria-hidden="true">{shape}</svg>
            <span aria-hidden="true">{likely.word}</span><span class="heard">{likely.heard}</span>
        </span>
    }
}

/// The sign under a cup that says something: which way it is off, plugged, or not to be told.
fn sign(state: &str) -> Option<AnyView> {
    let path = match state {
        "high" | "worn" => "M12 2 23 22H1Z",
        "low" => "M12 22 23 2H1Z",
        "plugged" => "M1 6 6 1 12 7 18 1 23 6 17 12 23 18 18 23 12 17 6 23 1 18 7 12Z",
        "cannot_tell" => {
            return Some(view! { <span class="told">{super::found::sign(Sign::Settle)}</span> }.into_any());
        }
        _ => return None,
    };
    Some(
        view! {
            <span class="told"><svg viewBox="0 0 24 24" aria-hidden="true"><path class="shape-act" d=path/></svg></span>
        }
        .into_any(),
    )
}

fn one(cell: CupCell) -> impl IntoView {
    let was = app().look(|state| state.words.label("likely-was"));
    let class = match cell.state {
        "in_order" => "",
        "not_caught" => "none-yet",
        "cannot_tell" => "asks",
        _ => "asks to-act",
    };
    let quiet = cell.state == "in_order";
    let dashed = cell.state == "not_caught";
    let band = cell.band.map(|(low, high)| {
        let height = (down(low) - down(high)).to_string();
        view! { <rect class="band" x="0" width="48" y=down(high).to_string() height=height/> }
    });
    let water = cell.level.map(|level| {
        // The walls lean in by six units from the brim to the bottom.
        let (top, left) = (down(level), 11.0 - 6.0 * level);
        let right = 48.0 - left;
        view! {
            <path class="water" d=format!("M{left:.1} {top:.1}H{right:.1}L37 {BOTTOM}H11Z")/>
            <path class="water-line" d=format!("M{left:.1} {top:.1}H{right:.1}")/>
        }
    });
    view! {
        <li class=class>
            <span class="number">{cell.number}</span>
            <svg class="of-tip" viewBox=format!("0 0 48 {HIGH}") aria-hidden="true" preserveAspectRatio="xMidYMax meet">
                {band}
                {water}
                <path class="outline" class:dashed=dashed d=format!("M4.5 2 11 {BOTTOM}H37L43.5 2")/>
            </svg>
            <span class="reading">
                {cell.before.map(|before| view! { <span class="was"><span class="heard">{was.clone()}" "</span><s>{before}</s></span>" " })}
                {cell.reading}
            </span>
            {sign(cell.state)}
            <span class=if quiet { "heard" } else { "how" }>{cell.word}</span>
            {cell.likely.map(likely)}
        </li>
    }
}
