//! Which screen is shown, and what stands around every one of them.

use leptos::prelude::*;
use yard::Screen;

use super::cup::Cup;
use super::drive_watch::DriveWatchFace;
use super::gate::Gate;
use super::hands_free::HandsFreeFace;
use super::keeping::KeepingScreen;
use super::last_time::LastTime;
use super::notices::Notices;
use super::row::CupRow;
use super::settings::Settings;
use super::sheet::SheetScreen;
use super::symptoms::SymptomsScreen;
use super::visit::VisitSheet;
use super::why::WhyScreen;
use crate::app::app;

/// The screen that is on, drawn anew when another one or another visit comes on.
#[component]
pub fn Screens() -> impl IntoView {
    let app = app();
    let on = app.memo(|state| (state.screen.clone(), state.visit.as_ref().map(|visit| visit.id.bits())));
    let said = move || app.said().map(|key| app.with(|state| state.words.label(key)));
    view! {
        <Notices/>
        {move || {
            let (screen, _) = on.get();
            let name = name(&screen);
            view! { <main id="top" tabindex="-1" class=format!("screen {name}")>{shown(screen)}</main> }
        }}
        <p class="said" role="status" aria-live="polite">{said}</p>
        <div class="flash" aria-hidden="true"></div>
    }
}

fn shown(screen: Screen) -> AnyView {
    match screen {
        Screen::Gate => view! { <Gate/> }.into_any(),
        Screen::Visit => view! { <VisitSheet/> }.into_any(),
        Screen::Cup => view! { <Cup/> }.into_any(),
        Screen::CupRow => view! { <CupRow/> }.into_any(),
        Screen::HandsFree => view! { <HandsFreeFace/> }.into_any(),
        Screen::DriveWatch => view! { <DriveWatchFace/> }.into_any(),
        Screen::Symptoms => view! { <SymptomsScreen/> }.into_any(),
        Screen::Why(of) => view! { <WhyScreen of/> }.into_any(),
        Screen::Sheet(kind) => view! { <SheetScreen kind/> }.into_any(),
        Screen::LastTime => view! { <LastTime/> }.into_any(),
        Screen::Settings => view! { <Settings/> }.into_any(),
        Screen::Keeping => view! { <KeepingScreen/> }.into_any(),
    }
}

/// The screen's name for the page's style.
const fn name(screen: &Screen) -> &'static str {
    match screen {
        Screen::Gate => "at-gate",
        Screen::Visit => "at-visit",
        Screen::Cup => "at-cup",
        Screen::CupRow => "at-row",
        Screen::HandsFree => "at-hands-free",
        Screen::DriveWatch => "at-drive",
        Screen::Symptoms => "at-symptoms",
        Screen::Why(_) => "at-why",
        Screen::Sheet(_) => "at-sheet",
        Screen::LastTime => "at-last-time",
        Screen::Settings => "at-settings",
        Screen::Keeping => "at-keeping",
    }
}
