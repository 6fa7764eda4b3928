//! Windows of one browser tell one another that there is something new in the notebook. What it is, each reads for itself.

use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

use super::js;
use crate::app::App;

/// The channel's name.
const CHANNEL: &str = "evenswath-notebook";

thread_local! {
    /// The channel, opened once; none in browsers that have none, where a window looks when it is seen again.
    static OPEN: Option<BroadcastChannel> = open();
}

fn open() -> Option<BroadcastChannel> {
    js::get(&window(), "BroadcastChannel")?;
    BroadcastChannel::new(CHANNEL).ok()
}

/// Something new is kept.
pub fn tell() {
    OPEN.with(|channel| {
        if let Some(channel) = channel {
            // A closed channel refuses; ours is never closed.
            let _ = channel.post_message(&JsValue::TRUE);
        }
    });
}

/// Listens for as long as the page is there.
pub fn listen(app: App) {
    OPEN.with(|channel| {
        let Some(channel) = channel else { return };
        let told = Closure::<dyn FnMut(MessageEvent)>::new(move |_| app.device().store.reread(app));
        channel.set_onmessage(Some(told.as_ref().unchecked_ref()));
        told.forget();
    });
}
