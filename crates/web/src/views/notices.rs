//! What is to be said at the top of the screen: that nothing is kept, that a newer version waits, what became of something.

use leptos::prelude::*;
use yard::{Event, shown};

use crate::app::app;

/// What is said at the top.
#[component]
pub fn Notices() -> impl IntoView {
    let app = app();
    let kept = app.memo(shown::kept);
    let newer = app.memo(|state| state.newer_version.is_yes());
    let notices = app.memo(|state| {
        let says = |notice: &yard::Notice| (state.words.label(notice.key), notice.detail.clone());
        state.notices.iter().map(says).collect::<Vec<_>>()
    });
    let (seen, says, take) =
        (app.label("yard-seen"), app.label("yard-newer_version"), app.label("yard-take_newer"));
    let refused = move || {
        let kept = kept.get();
        kept.refused.map(|why| view! { <div class="notice refused"><p>{kept.says}" "{why}</p></div> })
    };
    let version = move || {
        newer.get().then(|| view! {
            <div class="notice">
                <p>{says.get()}</p>
                <button type="button" on:click=move |_| app.send(Event::TakeNewerVersion)>{take.get()}</button>
            </div>
        })
    };
    let one = move |(index, (says, detail)): (usize, (String, Option<String>))| {
        view! {
            <div class="notice">
                <p>{says}{detail.map(|detail| view! { <br/><span class="small">{detail}</span> })}</p>
                <button type="button" on:click=move |_| app.send(Event::NoticeRead(index))>{seen.get()}</button>
            </div>
        }
    };
    view! {
        <div class="notices" role="status" aria-live="polite">
            {refused}
            {version}
            {move || notices.get().into_iter().enumerate().map(one).collect_view()}
        </div>
    }
}
