//! The device that the app runs on: what it reports becomes events, and what it is asked to do is done here.
//!
//! Each part is tried and let go where a browser has it not: no screen waits for any of it, and nothing that was entered
//! depends on it but where it is kept.

mod address;
mod ask;
mod awake;
pub mod clock;
mod copy;
mod copy_file;
mod exchange;
mod flash;
mod focus;
pub mod js;
mod letters;
pub mod measure;
mod newer;
mod opening;
mod other_windows;
pub mod print;
pub mod remember;
mod safety;
mod seen_again;
mod sense;
mod share;
pub mod sheets;
mod sound;
mod speak;
mod store;
mod ticks;
mod wording;

use std::cell::{Cell, RefCell};
use std::collections::VecDeque;

use yard::{Effect, Event};

use crate::app::App;
use crate::shell;

/// What the device is asked through: its parts, and what waits to be told.
#[derive(Default)]
pub struct Device {
    /// Events that came while another was worked on.
    pub waiting: RefCell<VecDeque<Event>>,
    /// Whether one is worked on.
    pub goes_on: Cell<bool>,
    address: address::Address,
    awake: awake::Awake,
    exchange: exchange::Turn,
    pub letters: letters::Letters,
    safety: safety::Offers,
    sense: sense::Sensor,
    sound: sound::Tones,
    store: store::Keeper,
    ticks: ticks::Clock,
}

impl Device {
    /// Does what was asked for.
    pub fn perform(&self, app: App, effect: Effect) {
        match effect {
            Effect::Append(drafts) => self.store.append(app, drafts),
            Effect::TakeIn(lines) => self.store.take_in(app, lines),
            Effect::Adopt { notebook, lines } => self.store.adopt(app, notebook, lines),
            Effect::Speak { text, language } => speak::speak(&text, language),
            Effect::Sound(sound) => self.sound.sound(sound),
            Effect::Flash => flash::flash(),
            Effect::KeepAwake(wanted) => self.awake.keep(wanted),
            Effect::Ticks(wanted) => self.ticks.run(app, wanted),
            Effect::SenseSpeed(wanted) => self.sense.run(app, wanted),
            Effect::Remember { name, text } => remember::remember(&name, &text),
            Effect::Print(kind) => print::print(app, kind),
            Effect::ShareSheet(kind) => share::sheet(app, kind),
            Effect::ShareText(text) => share::text(app, text),
            Effect::ShareFile { name, kind, content } => share::file(&name, kind, &content, || {}),
            Effect::CopyNotebook => copy::copy(app),
            Effect::ChooseCopyFile => copy_file::choose(),
            Effect::WriteCopyFile => copy_file::write_soon(app),
            Effect::AskToKeep => safety::ask_to_keep(app),
            Effect::Install => self.safety.install(),
            Effect::Exchange => self.exchange.now(app),
            Effect::TakeNewerVersion => shell::take_update(),
            Effect::FetchWords(reader) => wording::fetch(app, reader),
            Effect::Language(language) => focus::language(language),
            Effect::Focus(id) => focus::focus(id),
            Effect::Address(visit) => self.address.visit(visit),
        }
    }
}

/// Begins to listen to the device, and opens the notebook.
pub fn start(app: App) {
    let device = app.device();
    address::take_secret();
    focus::language(app.look(|state| state.reader.language));
    seen_again::listen(app);
    sound::listen(app);
    newer::listen(app);
    safety::listen(app);
    copy_file::listen(app);
    address::listen(app);
    other_windows::listen(app);
    device.store.open(app);
}
