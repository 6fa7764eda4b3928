//! "Why?": how a number came about.

use leptos::prelude::*;
use yard::shown::Worked;
use yard::{WhyOf, shown};

use super::sheet::{block, head};
use crate::app::app;

/// How a number came about.
#[component]
pub fn WhyScreen(
    /// Which number.
    of: WhyOf,
) -> impl IntoView {
    let app = app();
    let shown = app.memo(move |state| shown::why(state, &of));
    let gone = app.label("yard-why_gone");
    let one = |worked: Worked| {
        view! {
            <section class="part">
                <h2>{worked.title}</h2>
                {(!worked.says.is_empty()).then(|| view! { <p>{worked.says}</p> })}
                <div class="working">{worked.lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}</div>
            </section>
        }
    };
    view! {
        {head(app, "yard-why_title")}
        {move || {
            let (worked, blocks) = shown.get();
            if worked.is_empty() && blocks.is_empty() {
                return view! { <p>{gone.get()}</p> }.into_any();
            }
            view! {
                <div class="blocks">
                    {worked.into_iter().map(one).collect_view()}
                    {blocks.into_iter().map(block).collect_view()}
                </div>
            }
            .into_any()
        }}
    }
}
