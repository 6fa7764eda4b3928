//! What is written in a line, version 1. What this program does not know it keeps as it is and reads past.
//!
//! An entry is one JSON object; `kind` says which. The names of fields and lists are those of the visit file, so that a
//! file and a notebook say the same in the same words. `docs/NOTEBOOK.md` lists them.

use serde_json::{Map, Value as Json, json};

use crate::ids::{DeviceId, LineId, RowId, ThingId};
use crate::line::Line;
use crate::value::Value;

/// The version of the entries that this program writes.
pub const VERSION: u32 = 1;

/// An earlier line that does not hold any more, and why. It stays readable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Strike {
    /// The line.
    pub line: LineId,
    /// Why.
    pub reason: String,
}

/// What is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Entry {
    /// A fact that there is one of: `drive.course` is `204 ft`.
    Fact {
        /// The section and field of the visit file.
        field: String,
        /// What it is worth, as written.
        value: Value,
    },
    /// A row of a list that there may be several of: a round of catches, a run of the drive, a product.
    Row {
        /// The section of the visit file, or the field of a list.
        list: String,
        /// The row's own name.
        row: RowId,
        /// What stands in it.
        value: Value,
    },
    /// What was read off the cup of one tip in one round; the same tip again is caught again.
    Reading {
        /// The round.
        round: RowId,
        /// The tip from the left as the driver sits.
        tip: u32,
        /// The reading as written; "-" where no cup was held.
        value: Value,
    },
    /// The kept sprayer that this visit is of.
    Of {
        /// The sprayer.
        sprayer: ThingId,
    },
    /// An earlier line does not hold any more, and nothing stands in its place.
    Nothing,
    /// The owner wants everything about this thing taken out. The envelopes stay.
    Withdraw {
        /// Why, where the owner says so.
        reason: String,
    },
    /// A device says what it is.
    Device {
        /// What people call it.
        name: String,
        /// The device whose lines it was restored or copied from, and up to which number.
        continues: Option<(DeviceId, u64)>,
    },
}

/// An entry with the line it strikes, where it is a correction.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// What is written.
    pub entry: Entry,
    /// The line it strikes.
    pub strikes: Option<Strike>,
}

impl From<Entry> for Told {
    fn from(entry: Entry) -> Self {
        Self { entry, strikes: None }
    }
}

impl Told {
    /// The same, in place of an earlier line.
    #[must_use]
    pub fn instead_of(self, line: LineId, reason: &str) -> Self {
        Self { strikes: Some(Strike { line, reason: reason.to_string() }), ..self }
    }

    /// Its text, one line of JSON.
    #[must_use]
    pub fn text(&self) -> String {
        let mut object = Map::new();
        let mut put = |name: &str, value: Json| {
            object.insert(name.to_string(), value);
        };
        match &self.entry {
            Entry::Fact { field, value } => {
                put("kind", json!("fact"));
                put("field", json!(field));
                put("value", value.to_json());
            }
            Entry::Row { list, row, value } => {
                put("kind", json!("row"));
                put("list", json!(list));
                put("row", json!(row.to_string()));
                put("value", value.to_json());
            }
            Entry::Reading { round, tip, value } => {
                put("kind", json!("reading"));
                put("round", json!(round.to_string()));
                put("tip", json!(tip));
                put("value", value.to_json());
            }
            Entry::Of { sprayer } => {
                put("kind", json!("of"));
                put("sprayer", json!(sprayer.to_string()));
            }
            Entry::Nothing => put("kind", json!("nothing")),
            Entry::Withdraw { reason } => {
                put("kind", json!("withdraw"));
                put("reason", json!(reason));
            }
            Entry::Device { name, continues } => {
                put("kind", json!("device"));
                put("name", json!(name));
                if let Some((device, number)) = continues {
                    put("continues", json!({ "device": device.to_string(), "up_to": number }));
                }
            }
        }
        if let Some(strike) = &self.strikes {
            put("strikes", json!({ "line": strike.line.to_string(), "reason": strike.reason }));
        }
        Json::Object(object).to_string()
    }

    /// Reads what a line says; `None` where it was withdrawn, or is of a version or kind this program does not know.
    #[must_use]
    pub fn of(line: &Line) -> Option<Self> {
        if line.version() != VERSION {
            return None;
        }
        Self::read(line.written()?.text())
    }

    /// Reads an entry of version 1.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let Json::Object(object) = serde_json::from_str(text).ok()? else { return None };
        let word = |name: &str| object.get(name).and_then(Json::as_str);
        let value = || object.get("value").and_then(Value::of_json);
        let entry = match word("kind")? {
            "fact" => Entry::Fact { field: word("field")?.to_string(), value: value()? },
            "row" => Entry::Row {
                list: word("list")?.to_string(),
                row: RowId::parse(word("row")?)?,
                value: value()?,
            },
            "reading" => Entry::Reading {
                round: RowId::parse(word("round")?)?,
                tip: object.get("tip").and_then(Json::as_u64).and_then(|tip| u32::try_from(tip).ok())?,
                value: value()?,
            },
            "of" => Entry::Of { sprayer: ThingId::parse(word("sprayer")?)? },
            "nothing" => Entry::Nothing,
            "withdraw" => Entry::Withdraw { reason: word("reason")?.to_string() },
            "device" => Entry::Device { name: word("name")?.to_string(), continues: continues(&object)? },
            _ => return None,
        };
        Some(Self { entry, strikes: strikes(&object)? })
    }
}

/// The device continued; `None` where it is written in a way this program does not know.
fn continues(object: &Map<String, Json>) -> Option<Option<(DeviceId, u64)>> {
    let Some(continues) = object.get("continues") else { return Some(None) };
    let device = continues.get("device").and_then(Json::as_str).and_then(DeviceId::parse)?;
    Some(Some((device, continues.get("up_to").and_then(Json::as_u64)?)))
}

/// The line struck; `None` where it is written in a way this program does not know.
fn strikes(object: &Map<String, Json>) -> Option<Option<Strike>> {
    let Some(strikes) = object.get("strikes") else { return Some(None) };
    let line = strikes.get("line").and_then(Json::as_str).and_then(LineId::parse)?;
    Some(Some(Strike { line, reason: strikes.get("reason").and_then(Json::as_str)?.to_string() }))
}
