//! A line: what was written, about what, by which device, and where it stands.
//!
//! The envelope stays for ever. What was written, the entry, can be taken out of a line at its owner's word and leaves no
//! trace but its check sum, which chance (the salt) keeps from being guessed.

use crate::hash::{Hash, hex};
use crate::ids::{DeviceId, LineId, NotebookId, ThingId};

/// The most bytes of an entry. Our own choice: far more than any reading or note, and little enough for a phone.
pub const MOST_ENTRY_BYTES: usize = 65_536;

/// What kind of thing a line is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// One sprayer on one day.
    Visit,
    /// A sprayer, from visit to visit.
    Sprayer,
    /// A calibration day.
    Day,
    /// A product.
    Product,
    /// The notebook itself and its devices.
    Notebook,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 5] = [Self::Visit, Self::Sprayer, Self::Day, Self::Product, Self::Notebook];

    /// The stable word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Visit => "visit",
            Self::Sprayer => "sprayer",
            Self::Day => "day",
            Self::Product => "product",
            Self::Notebook => "notebook",
        }
    }

    /// The kind of a word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.word() == word)
    }
}

/// What a line is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct About {
    /// What kind of thing.
    pub kind: Kind,
    /// Which one.
    pub id: ThingId,
}

/// When a line was written, by the device's own clock. For people only: phone clocks are wrong, so nothing goes by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct At {
    /// Milliseconds since 1970-01-01 UTC.
    pub utc_milliseconds: i64,
    /// Minutes that the clock on the wall was ahead of UTC.
    pub offset_minutes: i16,
}

/// What was written: text of a version that this program may or may not know, kept byte for byte.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Written {
    text: String,
    salt: [u8; 16],
}

impl Written {
    /// The text with chance that the caller hands in.
    #[must_use]
    pub const fn new(text: String, salt: [u8; 16]) -> Self {
        Self { text, salt }
    }

    /// The text.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The chance that keeps its check sum from being guessed.
    #[must_use]
    pub const fn salt(&self) -> &[u8; 16] {
        &self.salt
    }

    /// Its check sum.
    #[must_use]
    pub fn hash(&self) -> Hash {
        Hash::of(&[b"evenswath entry 1", &self.salt, self.text.as_bytes()])
    }
}

impl core::fmt::Debug for Written {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "Written({:?}, {})", self.text, hex(&self.salt))
    }
}

/// A line before the store has given it its place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// Its name.
    pub id: LineId,
    /// What it is about.
    pub about: About,
    /// When it was written.
    pub at: At,
    /// The version of what is written.
    pub version: u32,
    /// What is written.
    pub written: Written,
}

/// Where a line stands: given by the store inside its transaction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// The notebook.
    pub notebook: NotebookId,
    /// The device.
    pub device: DeviceId,
    /// Its number on this device, from 1 without gaps.
    pub number: u64,
    /// Lamport's counter: more than that of any line the device had seen.
    pub order: u64,
    /// The check sum of the device's line before.
    pub previous: Hash,
}

/// The parts of a line as a store kept them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// Its name.
    pub id: LineId,
    /// The notebook.
    pub notebook: NotebookId,
    /// What it is about.
    pub about: About,
    /// The device.
    pub device: DeviceId,
    /// Its number on the device.
    pub number: u64,
    /// Lamport's counter.
    pub order: u64,
    /// When it was written.
    pub at: At,
    /// The version of what is written.
    pub version: u32,
    /// What is written.
    pub written: Option<Written>,
    /// The check sum of what is or was written.
    pub written_hash: Hash,
    /// The check sum of the device's line before.
    pub previous: Hash,
    /// Its own check sum.
    pub hash: Hash,
}

/// A line.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Line {
    pub(crate) id: LineId,
    pub(crate) notebook: NotebookId,
    pub(crate) about: About,
    pub(crate) device: DeviceId,
    pub(crate) number: u64,
    pub(crate) order: u64,
    pub(crate) at: At,
    pub(crate) version: u32,
    pub(crate) written: Option<Written>,
    pub(crate) written_hash: Hash,
    pub(crate) previous: Hash,
    pub(crate) hash: Hash,
}

impl Line {
    /// A draft with its place, sealed by its check sum.
    #[must_use]
    pub fn seal(draft: Draft, standing: Standing) -> Self {
        let mut line = Self {
            id: draft.id,
            notebook: standing.notebook,
            about: draft.about,
            device: standing.device,
            number: standing.number,
            order: standing.order,
            at: draft.at,
            version: draft.version,
            written_hash: draft.written.hash(),
            written: Some(draft.written),
            previous: standing.previous,
            hash: Hash::NOTHING,
        };
        line.hash = line.hash_anew();
        line
    }

    /// A line as a store kept it; `None` where it was changed since.
    #[must_use]
    pub fn kept(kept: Kept) -> Option<Self> {
        let Kept {
            id,
            notebook,
            about,
            device,
            number,
            order,
            at,
            version,
            written,
            written_hash,
            previous,
            hash,
        } = kept;
        let line = Self {
            id,
            notebook,
            about,
            device,
            number,
            order,
            at,
            version,
            written,
            written_hash,
            previous,
            hash,
        };
        line.is_whole().then_some(line)
    }

    /// The check sum of the envelope as it is: of every field but what is written, for which its own check sum stands.
    pub(crate) fn hash_anew(&self) -> Hash {
        Hash::of(&[
            b"evenswath line 1",
            &self.id.bits().to_be_bytes(),
            &self.notebook.bits().to_be_bytes(),
            self.about.kind.word().as_bytes(),
            &self.about.id.bits().to_be_bytes(),
            &self.device.bits().to_be_bytes(),
            &self.number.to_be_bytes(),
            &self.order.to_be_bytes(),
            &self.at.utc_milliseconds.to_be_bytes(),
            &self.at.offset_minutes.to_be_bytes(),
            &self.version.to_be_bytes(),
            self.written_hash.bytes(),
            self.previous.bytes(),
        ])
    }

    /// Whether nothing of it was changed: its own check sum, and that of what is written, where it still is.
    #[must_use]
    pub fn is_whole(&self) -> bool {
        self.hash == self.hash_anew()
            && self.written.as_ref().is_none_or(|written| written.hash() == self.written_hash)
    }

    /// The same line without what was written.
    #[must_use]
    pub fn bare(mut self) -> Self {
        self.written = None;
        self
    }

    /// Its name.
    #[must_use]
    pub const fn id(&self) -> LineId {
        self.id
    }

    /// The notebook it belongs to.
    #[must_use]
    pub const fn notebook(&self) -> NotebookId {
        self.notebook
    }

    /// What it is about.
    #[must_use]
    pub const fn about(&self) -> About {
        self.about
    }

    /// The device that wrote it.
    #[must_use]
    pub const fn device(&self) -> DeviceId {
        self.device
    }

    /// Its number on that device.
    #[must_use]
    pub const fn number(&self) -> u64 {
        self.number
    }

    /// Lamport's counter.
    #[must_use]
    pub const fn order(&self) -> u64 {
        self.order
    }

    /// When it was written, by that device's clock.
    #[must_use]
    pub const fn at(&self) -> At {
        self.at
    }

    /// The version of what is written.
    #[must_use]
    pub const fn version(&self) -> u32 {
        self.version
    }

    /// What is written; `None` where it was withdrawn.
    #[must_use]
    pub const fn written(&self) -> Option<&Written> {
        self.written.as_ref()
    }

    /// The check sum of what is or was written.
    #[must_use]
    pub const fn written_hash(&self) -> Hash {
        self.written_hash
    }

    /// The check sum of the device's line before.
    #[must_use]
    pub const fn previous(&self) -> Hash {
        self.previous
    }

    /// Its own check sum.
    #[must_use]
    pub const fn hash(&self) -> Hash {
        self.hash
    }
}
