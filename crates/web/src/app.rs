//! The handle that every view holds: it reads what is known, and sends what happens.
//!
//! An event goes through [`yard::step`] alone; then what changed is drawn again, and the device does what it is asked to.

use core::time::Duration;
use std::rc::Rc;

use leptos::prelude::*;
use words::Reader;
use yard::{Event, State};

use crate::device::{self, Device};
use crate::shell;
use crate::told::Told;
use crate::views::screen::Screens;

/// What every view holds. It is copied freely; all copies are of the one state.
#[derive(Clone, Copy)]
pub struct App {
    state: RwSignal<State, LocalStorage>,
    device: StoredValue<Rc<Device>, LocalStorage>,
    said: RwSignal<Option<&'static str>>,
    reader: Told<Reader>,
    wide: ReadSignal<bool>,
}

/// How long a passing word stays. Our own choice: time to read a short sentence twice.
const SAID: Duration = Duration::from_secs(6);

/// The handle, in any view.
pub fn app() -> App {
    expect_context()
}

impl App {
    /// The state before anything is known but who reads, and the device before it is asked for anything.
    fn new() -> Self {
        let state = RwSignal::new_local(State::new(shell::words(device::remember::reader())));
        Self {
            state,
            device: StoredValue::new_local(Rc::new(Device::default())),
            said: RwSignal::new(None),
            reader: Told::of(move || state.with(|state| state.reader)),
            wide: shell::wide(),
        }
    }

    /// Something happened: the state goes on, what shows it is told once, and the device does what follows, in order.
    ///
    /// What the device answers at once waits until that is done.
    pub fn send(self, event: Event) {
        let device = self.device();
        device.waiting.borrow_mut().push_back(event);
        if device.goes_on.replace(true) {
            return;
        }
        loop {
            // Taken in a statement of its own, so that the list is free again while the event is worked on.
            let next = device.waiting.borrow_mut().pop_front();
            let Some(event) = next else { break };
            let (at, chance) = device::clock::now();
            let mut effects = Vec::new();
            self.state.update(|state| effects = yard::step(state, event, &at, chance));
            for effect in effects {
                device.perform(self, effect);
            }
        }
        device.goes_on.set(false);
    }

    /// Reads what is known. Where that is in a view or a memo, it is read again when anything changes.
    pub fn with<T>(self, read: impl FnOnce(&State) -> T) -> T {
        self.state.with(read)
    }

    /// Reads what is known now, once.
    pub fn look<T>(self, read: impl FnOnce(&State) -> T) -> T {
        self.state.with_untracked(read)
    }

    /// A part of what is known. Who shows it is told only when that part is another than before, so that what a person types
    /// into stays as it is.
    pub fn memo<T>(self, read: impl Fn(&State) -> T + Send + Sync + 'static) -> Told<T>
    where
        T: PartialEq + Send + Sync + 'static,
    {
        Told::of(move || self.with(|state| read(state)))
    }

    /// A label of the words, in the language of who reads.
    pub fn label(self, key: &'static str) -> Told<String> {
        Told::of(move || {
            // The words change with who reads and with nothing else, so that no other event asks for them again. It is read,
            // not tracked alone: what nobody reads is never worked out and hears of no change.
            self.reader.get();
            self.look(|state| state.words.label(key))
        })
    }

    /// Whether the window has room for a drawing across the page.
    pub fn is_wide(self) -> bool {
        self.wide.get()
    }

    /// Says a passing word, by its key; nothing has to be done about it.
    pub fn say(self, key: &'static str) {
        self.said.set(Some(key));
        set_timeout(move || self.said.set(None), SAID);
    }

    /// The passing word, by its key.
    pub fn said(self) -> Option<&'static str> {
        self.said.get()
    }

    /// What the device is asked through.
    pub(crate) fn device(self) -> Rc<Device> {
        self.device.get_value()
    }
}

/// The whole page.
#[component]
pub fn Yard() -> impl IntoView {
    let app = App::new();
    provide_context(app);
    device::start(app);
    view! { <Screens/> }
}
