//! A line as one line of JSON, for files and for sending; the same letters for the same line everywhere.

use serde_json::{Map, Value as Json, json};

use crate::hash::{Hash, hex, unhex};
use crate::ids::{DeviceId, LineId, NotebookId, ThingId};
use crate::line::{About, At, Kind, Line, MOST_ENTRY_BYTES, Written};

/// The version of the envelope.
const ENVELOPE: u64 = 1;

/// Why a text is no line.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LineError {
    /// No JSON object.
    #[error("this is no line of a notebook: {why}")]
    NotALine {
        /// What the JSON reader says.
        why: String,
    },
    /// An envelope of a later version.
    #[error(
        "this line was written by a newer program (envelope {version}); this one knows envelope {ENVELOPE}"
    )]
    Newer {
        /// Its version.
        version: u64,
    },
    /// A field is missing or is not what it should be.
    #[error("the field `{field}` of this line is missing or is not what it should be")]
    Field {
        /// The field.
        field: &'static str,
    },
    /// More written than a line takes.
    #[error("this line holds {bytes} bytes; a line takes {MOST_ENTRY_BYTES}")]
    TooLong {
        /// How many bytes.
        bytes: usize,
    },
}

impl units::Coded for LineError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotALine { .. } => "line_not_a_line",
            Self::Newer { .. } => "line_newer",
            Self::Field { .. } => "line_field",
            Self::TooLong { .. } => "line_too_long",
        }
    }

    fn args(&self) -> units::Args {
        let text = |text: String| units::Arg::Text(text);
        let args = units::Args::new();
        match self {
            Self::NotALine { why } => args.with("why", text(why.clone())),
            Self::Newer { version } => args.with("version", text(version.to_string())),
            Self::Field { field } => args.with("field", text((*field).to_string())),
            Self::TooLong { bytes } => args.with("bytes", text(bytes.to_string())),
        }
    }
}

/// A line as one line of JSON, without the end of the line.
#[must_use]
pub fn line_text(line: &Line) -> String {
    let mut object = Map::new();
    let mut put = |name: &str, value: Json| {
        object.insert(name.to_string(), value);
    };
    put("line", json!(ENVELOPE));
    put("id", json!(line.id.to_string()));
    put("notebook", json!(line.notebook.to_string()));
    put("about", json!({ "kind": line.about.kind.word(), "id": line.about.id.to_string() }));
    put("device", json!(line.device.to_string()));
    put("number", json!(line.number));
    put("order", json!(line.order));
    put("at", json!(line.at.utc_milliseconds));
    put("offset", json!(line.at.offset_minutes));
    put("version", json!(line.version));
    if let Some(written) = &line.written {
        // As a text in the text: a version that nobody here knows yet stays byte for byte what it was.
        put("entry", json!(written.text()));
        put("salt", json!(hex(written.salt())));
    }
    put("entry_hash", json!(line.written_hash.to_string()));
    put("previous", json!(line.previous.to_string()));
    put("hash", json!(line.hash.to_string()));
    Json::Object(object).to_string()
}

/// Reads a line. Whether it is whole is another question: [`Line::is_whole`].
pub fn read_line(text: &str) -> Result<Line, LineError> {
    let json: Json =
        serde_json::from_str(text).map_err(|error| LineError::NotALine { why: error.to_string() })?;
    let Json::Object(object) = json else {
        return Err(LineError::NotALine { why: "not a JSON object".to_string() });
    };
    let version = object.get("line").and_then(Json::as_u64).ok_or(LineError::Field { field: "line" })?;
    if version != ENVELOPE {
        return Err(LineError::Newer { version });
    }
    let fields = Fields(&object);
    let about = object.get("about").and_then(Json::as_object).ok_or(LineError::Field { field: "about" })?;
    let about_fields = Fields(about);
    let kind = Kind::from_word(about_fields.text("kind")?).ok_or(LineError::Field { field: "about" })?;
    let line = Line {
        id: fields.read("id", LineId::parse)?,
        notebook: fields.read("notebook", NotebookId::parse)?,
        about: About { kind, id: about_fields.read("id", ThingId::parse)? },
        device: fields.read("device", DeviceId::parse)?,
        number: fields.number("number")?,
        order: fields.number("order")?,
        at: At {
            utc_milliseconds: object
                .get("at")
                .and_then(Json::as_i64)
                .ok_or(LineError::Field { field: "at" })?,
            offset_minutes: object
                .get("offset")
                .and_then(Json::as_i64)
                .and_then(|minutes| i16::try_from(minutes).ok())
                .ok_or(LineError::Field { field: "offset" })?,
        },
        version: u32::try_from(fields.number("version")?)
            .map_err(|_| LineError::Field { field: "version" })?,
        written: written(&fields, &object)?,
        written_hash: fields.read("entry_hash", Hash::parse)?,
        previous: fields.read("previous", Hash::parse)?,
        hash: fields.read("hash", Hash::parse)?,
    };
    // A device numbers its lines from 1.
    if line.number == 0 { Err(LineError::Field { field: "number" }) } else { Ok(line) }
}

fn written(fields: &Fields<'_>, object: &Map<String, Json>) -> Result<Option<Written>, LineError> {
    if !object.contains_key("entry") {
        return Ok(None);
    }
    let text = fields.text("entry")?;
    if text.len() > MOST_ENTRY_BYTES {
        return Err(LineError::TooLong { bytes: text.len() });
    }
    Ok(Some(Written::new(text.to_string(), fields.read("salt", unhex)?)))
}

struct Fields<'a>(&'a Map<String, Json>);

impl<'a> Fields<'a> {
    fn text(&self, field: &'static str) -> Result<&'a str, LineError> {
        self.0.get(field).and_then(Json::as_str).ok_or(LineError::Field { field })
    }

    fn read<T>(&self, field: &'static str, read: impl Fn(&str) -> Option<T>) -> Result<T, LineError> {
        read(self.text(field)?).ok_or(LineError::Field { field })
    }

    fn number(&self, field: &'static str) -> Result<u64, LineError> {
        self.0.get(field).and_then(Json::as_u64).ok_or(LineError::Field { field })
    }
}
