//! The row of cups on a narrow screen: each tip with its cup, as many beside one another as there is room for.

use leptos::prelude::*;
use report::sheet::Sign;
use yard::shown::{self, CupCell};

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

/// The row of cups.
#[component]
pub fn CupCells() -> impl IntoView {
    let app = app();
    let cells = app.memo(shown::cup_cells);
    move || {
        let cells = cells.get();
        (!cells.is_empty())
            .then(|| view! { <ol class="cells">{cells.into_iter().map(one).collect_view()}</ol> })
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
            <span class="reading">{cell.reading}</span>
            {sign(cell.state)}
            <span class=if quiet { "heard" } else { "how" }>{cell.word}</span>
        </li>
    }
}
