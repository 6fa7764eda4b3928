//! A newer version of the app is on this device, as the page says.

use leptos::prelude::{Effect, Get};
use yard::Event;

use crate::app::App;
use crate::shell::{self, Update};

/// Listens for as long as the page is there.
pub fn listen(app: App) {
    let update = shell::update();
    Effect::new(move |_| {
        if update.get() == Update::Ready {
            app.send(Event::NewerVersion);
        }
    });
}
