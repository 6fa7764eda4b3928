//! A notebook as one plain file: a head, a line of JSON for each line of the notebook, a foot with count and check sum.
//!
//! `docs/NOTEBOOK.md` describes the format for others. Reading saves what is whole of a damaged file and names the rest.

use serde_json::{Value as Json, json};
use units::{Arg, Args, Coded};

use crate::book::{Notebook, Taken};
use crate::codec::{LineError, line_text, read_line};
use crate::hash::Hash;
use crate::ids::NotebookId;

/// The version of the file.
const FILE: u64 = 1;

/// The file of a notebook.
#[must_use]
pub fn write_file(book: &Notebook) -> String {
    let head = json!({ "evenswath_notebook": FILE, "notebook": book.id().to_string() });
    let mut text = format!("{head}\n");
    for line in book.lines() {
        text.push_str(&line_text(line));
        text.push('\n');
    }
    let sum = Hash::of_bytes(text.as_bytes());
    text.push_str(&json!({ "lines": book.len(), "sha256": sum.to_string() }).to_string());
    text.push('\n');
    text
}

/// What a file holds.
#[derive(Clone, Debug)]
pub struct FileContent {
    /// Everything in it that is whole.
    pub book: Notebook,
    /// What is not as it should be, in the order of the file.
    pub damage: Vec<FileDamage>,
}

/// Something that is not as it should be in a file.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FileDamage {
    /// No head of a notebook file.
    #[error("this is no notebook file: its first line is not that of one")]
    NotANotebook,
    /// A file of a later version.
    #[error("this file was written by a newer program (version {version}); this one reads version {FILE}")]
    Newer {
        /// Its version.
        version: u64,
    },
    /// A line that is none.
    #[error("line {at} of the file: {error}")]
    Line {
        /// Its place in the file, from 1.
        at: usize,
        /// What is wrong.
        error: LineError,
    },
    /// A line that was changed after it was sealed.
    #[error("line {at} of the file was changed after it was written")]
    Changed {
        /// Its place in the file, from 1.
        at: usize,
    },
    /// A line of another notebook.
    #[error("line {at} of the file belongs to another notebook")]
    Foreign {
        /// Its place in the file, from 1.
        at: usize,
    },
    /// The foot is not there: the file was cut off.
    #[error("the file breaks off: its last line is missing")]
    CutOff,
    /// The check sum or the count at the foot does not fit what stands above it.
    #[error("the file does not fit its check sum")]
    Sum,
}

impl Coded for FileDamage {
    fn code(&self) -> &'static str {
        match self {
            Self::NotANotebook => "notebook_file_not_one",
            Self::Newer { .. } => "notebook_file_newer",
            Self::Line { error, .. } => error.code(),
            Self::Changed { .. } => "notebook_file_changed",
            Self::Foreign { .. } => "notebook_file_foreign",
            Self::CutOff => "notebook_file_cut_off",
            Self::Sum => "notebook_file_sum",
        }
    }

    fn args(&self) -> Args {
        let at = |at: &usize| Arg::Text(at.to_string());
        match self {
            Self::NotANotebook | Self::CutOff | Self::Sum => Args::new(),
            Self::Newer { version } => Args::new().with("version", Arg::Text(version.to_string())),
            Self::Line { at: place, error } => error.args().with("at", at(place)),
            Self::Changed { at: place } | Self::Foreign { at: place } => Args::new().with("at", at(place)),
        }
    }

    fn case(&self) -> Option<&'static str> {
        matches!(self, Self::Line { .. }).then_some("in_file")
    }
}

/// Reads a file of a notebook: all that is whole in it, and what is not.
///
/// *Errors*: no notebook file at all, or one of a later version: nothing of it can be taken.
pub fn read_file(text: &str) -> Result<FileContent, FileDamage> {
    let mut lines = text.split_inclusive('\n').enumerate().peekable();
    let head = lines.next().map_or("", |(_, head)| head);
    let mut book = Notebook::new(read_head(head)?);
    let mut damage = Vec::new();
    let mut before = head.len();
    let mut foot = None;
    for (index, line) in lines {
        let content = line.trim_end_matches(['\n', '\r']);
        if let Some((count, sum)) = read_foot(content) {
            foot = Some((count, sum, Hash::of_bytes(&text.as_bytes()[..before])));
        } else if !content.trim().is_empty() {
            let at = index + 1;
            match read_line(content) {
                Err(error) => damage.push(FileDamage::Line { at, error }),
                Ok(line) => match book.take(line) {
                    Taken::Changed => damage.push(FileDamage::Changed { at }),
                    Taken::Foreign => damage.push(FileDamage::Foreign { at }),
                    Taken::New | Taken::Known | Taken::FilledIn => {}
                },
            }
        }
        before += line.len();
    }
    match foot {
        None => damage.push(FileDamage::CutOff),
        Some((_, told, sum)) if told != sum => damage.push(FileDamage::Sum),
        Some(_) => {}
    }
    Ok(FileContent { book, damage })
}

fn read_head(head: &str) -> Result<NotebookId, FileDamage> {
    let json: Json = serde_json::from_str(head.trim()).map_err(|_| FileDamage::NotANotebook)?;
    let version = json.get("evenswath_notebook").and_then(Json::as_u64).ok_or(FileDamage::NotANotebook)?;
    if version != FILE {
        return Err(FileDamage::Newer { version });
    }
    json.get("notebook").and_then(Json::as_str).and_then(NotebookId::parse).ok_or(FileDamage::NotANotebook)
}

fn read_foot(line: &str) -> Option<(u64, Hash)> {
    let json: Json = serde_json::from_str(line).ok()?;
    let count = json.get("lines").and_then(Json::as_u64)?;
    Some((count, json.get("sha256").and_then(Json::as_str).and_then(Hash::parse)?))
}
