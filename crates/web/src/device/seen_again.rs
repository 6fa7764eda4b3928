//! The page is seen again after it was hidden: what passed meanwhile is told at once.

use leptos::ev;
use leptos::prelude::{document, window_event_listener, window_event_listener_untyped};
use web_sys::VisibilityState;
use yard::Event;

use crate::app::App;

/// Listens for as long as the page is there.
pub fn listen(app: App) {
    let seen = move || {
        if document().visibility_state() == VisibilityState::Visible {
            let device = app.device();
            device.awake.again();
            app.send(Event::SeenAgain);
            device.store.reread(app);
            device.exchange.soon(app);
        }
    };
    // The document tells it; it rises to the window.
    window_event_listener(ev::visibilitychange, move |_| seen());
    // A page that comes back out of the browser's memory, as after going back.
    window_event_listener(ev::pageshow, move |event| {
        if event.persisted() {
            seen();
        }
    });
    window_event_listener_untyped("online", move |_| app.device().exchange.soon(app));
}
