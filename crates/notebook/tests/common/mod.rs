//! Notebooks made for tests: names and chance by counting, never by luck.
#![allow(clippy::expect_used, clippy::panic)] // a test fails by panicking
#![allow(dead_code, reason = "each test takes what it needs")]

use notebook::{
    About, At, DeviceId, Draft, Entry, Kind, LineId, Notebook, NotebookId, RowId, ThingId, Told, VERSION,
    Value, Written,
};

/// The notebook of the tests.
pub const BOOK: NotebookId = NotebookId::from_bits(1);

/// A device by its number.
pub const fn device(number: u128) -> DeviceId {
    DeviceId::from_bits(100 + number)
}

/// A visit by its number.
pub const fn visit(number: u128) -> About {
    About { kind: Kind::Visit, id: ThingId::from_bits(1_000 + number) }
}

/// A row by its number.
pub const fn row(number: u128) -> RowId {
    RowId::from_bits(5_000 + number)
}

/// Gives each draft a name of its own.
#[derive(Default)]
pub struct Pen {
    drafts: u128,
}

impl Pen {
    /// A draft of an entry.
    pub fn draft(&mut self, about: About, told: impl Into<Told>) -> Draft {
        self.drafts += 1;
        let salt = self.drafts.to_be_bytes();
        let milliseconds = 1_800_000_000_000 + i64::try_from(self.drafts).unwrap_or(0);
        Draft {
            id: LineId::from_bits(1_000_000 + self.drafts),
            about,
            at: At { utc_milliseconds: milliseconds, offset_minutes: -300 },
            version: VERSION,
            written: Written::new(told.into().text(), salt),
        }
    }

    /// A draft of a later version.
    pub fn later(&mut self, about: About, version: u32, text: &str) -> Draft {
        let draft = self.draft(about, Entry::Nothing);
        let salt = *draft.written.salt();
        Draft { version, written: Written::new(text.to_string(), salt), ..draft }
    }
}

/// A fact.
pub fn fact(field: &str, value: &str) -> Entry {
    Entry::Fact { field: field.to_string(), value: Value::text(value) }
}

/// A reading.
pub fn reading(round: RowId, tip: u32, value: &str) -> Entry {
    Entry::Reading { round, tip, value: Value::text(value) }
}

/// A notebook with the entries of a visit file, written by one device.
pub fn of_file(file: &str) -> (Notebook, Pen) {
    let (mut book, mut pen) = (Notebook::new(BOOK), Pen::default());
    let mut rows = 0;
    let entries = notebook::entries_of_file(file.as_bytes(), || {
        rows += 1;
        row(rows)
    });
    for entry in entries.expect("a file without mistakes") {
        let draft = pen.draft(visit(1), entry);
        book.write(device(1), draft);
    }
    (book, pen)
}
