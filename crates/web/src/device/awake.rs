//! The screen kept awake while a watch runs.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;
use yard::Waits;

use super::js;

/// What keeps the screen awake.
#[derive(Clone, Default)]
pub struct Awake(Rc<Held>);

#[derive(Default)]
struct Held {
    wanted: Cell<bool>,
    lock: RefCell<Option<JsValue>>,
}

impl Awake {
    /// Keeps it awake, or lets it sleep again. Where the browser cannot, it sleeps; the watch reads the clock and is not late.
    pub fn keep(&self, wanted: Waits) {
        self.0.wanted.set(wanted.is_yes());
        if wanted.is_yes() {
            self.again();
        } else if let Some(lock) = self.0.lock.take() {
            js::call(&lock, "release", &[]);
        }
    }

    /// A page that was hidden has lost it; it is asked for again.
    pub fn again(&self) {
        if !self.0.wanted.get() {
            return;
        }
        let held = Rc::clone(&self.0);
        spawn_local(async move {
            let Some(keeper) = js::get(&js::navigator(), "wakeLock") else { return };
            let Some(lock) = js::ask(&keeper, "request", &[&"screen".into()]).await else { return };
            // Meanwhile it may be wanted no more; and of two that were asked for one is enough.
            let spare = if held.wanted.get() { held.lock.replace(Some(lock)) } else { Some(lock) };
            if let Some(spare) = spare {
                js::call(&spare, "release", &[]);
            }
        });
    }
}
