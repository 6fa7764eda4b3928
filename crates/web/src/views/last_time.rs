//! Earlier visits of a sprayer beside the open one.

use leptos::prelude::*;
use yard::shown::{self, LastVisit};

use super::sheet::{facts, head};
use crate::app::app;

/// Earlier visits beside the open one.
#[component]
pub fn LastTime() -> impl IntoView {
    let app = app();
    let visits = app.memo(shown::last_time);
    let (none, how) = (app.label("yard-last_time_none"), app.label("yard-last_how"));
    let one =
        |visit: LastVisit| view! { <section class="part"><h2>{visit.day}</h2>{facts(visit.pairs)}</section> };
    view! {
        {head(app, "yard-last_time_title")}
        {move || (visits.with(Vec::len) < 2).then(|| view! { <p>{none.get()}</p> })}
        <div class="visits-beside">{move || visits.get().into_iter().map(one).collect_view()}</div>
        {move || (visits.with(Vec::len) > 1).then(|| view! { <p class="small">{how.get()}</p> })}
    }
}
