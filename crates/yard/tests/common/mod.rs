//! A device for tests: a store that keeps at once or refuses, clocks that are set by hand.
#![allow(dead_code, clippy::expect_used, clippy::panic, clippy::cast_possible_truncation)] // each test file uses a part; a test fails by panicking

use notebook::{DeviceId, Line, Notebook, NotebookId};
use words::{Language, Words};
use yard::{Chance, Effect, Event, Key, Moment, Screen, State, step};

/// The notebook of the tests.
pub const BOOK: NotebookId = NotebookId::from_bits(7);
/// Their device.
pub const DEVICE: DeviceId = DeviceId::from_bits(70);

/// A phone with a store.
pub struct Phone {
    pub state: State,
    pub book: Notebook,
    pub now: Moment,
    pub keeps: bool,
    pub done: Vec<Effect>,
    events: u64,
}

impl Phone {
    /// A phone whose store was just opened with these lines.
    pub fn with(book: Notebook) -> Self {
        let mut phone = Self {
            state: State::new(Words::of(Language::English)),
            book: book.clone(),
            // 2027-04-14 15:00 UTC, ten o'clock on the wall.
            now: Moment { wall: 1_807_714_800_000, offset_minutes: -300, steady: 1_000.0 },
            keeps: true,
            done: Vec::new(),
            events: 0,
        };
        let lines: Vec<Line> = book.lines().cloned().collect();
        phone.send(Event::StoreOpened { notebook: book.id(), device: DEVICE, lines });
        phone
    }

    /// A new phone.
    pub fn new() -> Self {
        Self::with(Notebook::new(BOOK))
    }

    /// Something happens, and the device does what it is asked to.
    pub fn send(&mut self, event: Event) -> Vec<Effect> {
        self.events += 1;
        let mut seed = [0; 32];
        seed[..8].copy_from_slice(&self.events.to_be_bytes());
        // Tests that open the same notebook again must not draw the same names.
        seed[8..16].copy_from_slice(&(self.book.len() as u64).to_be_bytes());
        let now = self.now;
        let effects = step(&mut self.state, event, &now, Chance::new(seed, &now));
        self.done.extend(effects.clone());
        for effect in &effects {
            if let Effect::FetchWords(reader) = effect {
                self.send(Event::WordsHere(Words::new(*reader).into()));
            }
            if let Effect::Append(drafts) = effect {
                if self.keeps {
                    let lines = drafts.iter().map(|draft| self.book.write(DEVICE, draft.clone())).collect();
                    self.send(Event::Kept(lines));
                } else {
                    self.send(Event::NotKept { why: "full".to_string() });
                }
            }
        }
        effects
    }

    /// Both clocks go on.
    pub fn wait(&mut self, seconds: f64) {
        self.now.steady += seconds * 1000.0;
        self.now.wall += (seconds * 1000.0) as i64;
    }

    pub fn say(&mut self, field: &str, text: &str) {
        self.send(Event::Say { field: field.to_string(), text: text.to_string() });
    }

    /// A reading by the pad: "14.5" as the digits 1 4 and a half.
    pub fn press(&mut self, reading: &str) {
        let (whole, part) = reading.split_once('.').unwrap_or((reading, ""));
        for digit in whole.bytes() {
            self.send(Event::Key(Key::Digit(digit - b'0')));
        }
        match part {
            "5" => self.send(Event::Key(Key::Quarters(2))),
            "25" => self.send(Event::Key(Key::Quarters(1))),
            "75" => self.send(Event::Key(Key::Quarters(3))),
            _ => Vec::new(),
        };
    }

    /// A new visit of a boom that is known well enough to catch.
    pub fn boom(&mut self, sections: &str) {
        self.send(Event::Begin { of: None, keep: yard::Keep::Kept });
        for (field, text) in [
            ("visit.sprayer", "Blue mounted boom"),
            ("visit.farm", "Willow Bend Farm"),
            ("sprayer.kind", "boom"),
            ("sprayer.sections", sections),
            ("sprayer.spacing", "20 in"),
            ("sprayer.tip_size", "03"),
            ("sprayer.tank", "200 gal"),
            ("sprayer.held_by", "constant_pressure"),
            ("catch.cup_marks", "1/2 fl oz"),
            ("catch.time", "28 s"),
        ] {
            self.say(field, text);
        }
    }

    pub fn cups(&mut self, readings: &[&str]) {
        self.send(Event::Go(Screen::Cup));
        for reading in readings {
            self.press(reading);
            self.send(Event::Next);
        }
    }

    /// The visit that is open.
    pub fn visit(&self) -> &yard::Opened {
        self.state.visit.as_ref().expect("a visit is open")
    }
}
