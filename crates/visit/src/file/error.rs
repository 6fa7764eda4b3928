//! A mistake in a visit file: where it stands, what was given, what would do.

use core::fmt;

use units::{Args, Coded};

use super::mistake::Mistake;

/// One mistake.
#[derive(Clone, Debug, PartialEq)]
pub struct FileError {
    /// Line and column from 1, where it can be pointed at.
    pub place: Option<(usize, usize)>,
    /// The field, as `drive.course`, where it belongs to one.
    pub field: Option<String>,
    /// The stable code.
    pub code: &'static str,
    /// Which of the sentences of the code.
    pub case: Option<&'static str>,
    /// What is wrong in English, with what was given.
    pub message: String,
    /// What would do, in English.
    pub hint: Option<String>,
    /// What was given and what is known, by name.
    pub args: Args,
}

/// Every mistake in a file, in the order they stand.
#[derive(Clone, Debug, PartialEq)]
pub struct FileErrors(Vec<FileError>);

impl FileErrors {
    pub(super) fn one(error: FileError) -> Self {
        Self(vec![error])
    }

    /// Mistakes with the place in the text where each begins. Lines and columns are counted on from one mistake to
    /// the next, so that a file full of them is refused as fast as it is read.
    pub(super) fn new(mut found: Vec<(usize, FileError)>, text: &str) -> Self {
        found.sort_by_key(|(start, _)| *start);
        // A field that two parts of the reader look at is wrong once.
        found.dedup();
        let (mut line, mut column, mut counted) = (1, 1, 0);
        for (start, error) in &mut found {
            let start = letter_at(text, *start);
            for letter in text[counted..start].chars() {
                (line, column) = if letter == '\n' { (line + 1, 1) } else { (line, column + 1) };
            }
            counted = start;
            error.place = Some((line, column));
        }
        Self(found.into_iter().map(|(_, error)| error).collect())
    }

    /// The mistakes.
    #[must_use]
    pub fn list(&self) -> &[FileError] {
        &self.0
    }
}

impl FileError {
    pub(super) fn too_large(largest: usize) -> Self {
        let says = "the file has more than {largest} bytes, which is more than a visit can need";
        Mistake::new("file_too_large", says)
            .would_do("is this the right file? `evenswath visit new` writes one to fill in")
            .count("largest", largest)
            .at(None)
    }

    pub(super) fn not_text(bytes: &[u8], error: &core::str::Utf8Error) -> Self {
        let before = &bytes[..error.valid_up_to()];
        let line = before.iter().filter(|byte| **byte == b'\n').count() + 1;
        let start = before.iter().rposition(|byte| *byte == b'\n').map_or(0, |place| place + 1);
        let told = Mistake::new("file_not_text", "the file is not UTF-8 text")
            .would_do("save it as plain text in UTF-8; a spreadsheet or word processor file will not do")
            .at(None);
        Self { place: Some((line, before.len() - start + 1)), ..told }
    }

    pub(super) fn not_toml(text: &str, error: &toml::de::Error) -> Self {
        let message = error.message().lines().collect::<Vec<_>>().join("; ");
        // A part that was copied and filled in again is the commonest slip, and the only one told in our own words; what
        // the TOML reader says of the others is its own, in English.
        let told = match message.as_str() {
            "duplicate key" => Mistake::new("file_not_toml", "this name stands a second time")
                .case("twice")
                .would_do("write each field and each [part] once; rounds and products begin with [[ ]]"),
            _ => Mistake::new("file_not_toml", "this cannot be read as TOML: {detail}")
                .would_do("a line is name = \"value\"; put quantities in quotes, as spacing = \"20 in\"")
                .text("detail", &message),
        };
        Self { place: error.span().map(|span| line_and_column(text, span.start)), ..told.at(None) }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some((line, column)) = self.place {
            write!(out, "line {line}, column {column}: ")?;
        }
        if let Some(field) = &self.field {
            write!(out, "{field}: ")?;
        }
        out.write_str(&self.message)
    }
}

impl fmt::Display for FileErrors {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (place, error) in self.0.iter().enumerate() {
            if place > 0 {
                out.write_str("\n")?;
            }
            write!(out, "{error}")?;
        }
        Ok(())
    }
}

impl core::error::Error for FileErrors {}

impl Coded for FileError {
    fn code(&self) -> &'static str {
        self.code
    }

    fn case(&self) -> Option<&'static str> {
        self.case
    }

    fn args(&self) -> Args {
        self.args.clone()
    }

    fn hint(&self) -> Option<String> {
        self.hint.clone()
    }
}

/// The line and column of a place in a text, both from 1, columns in letters.
fn line_and_column(text: &str, place: usize) -> (usize, usize) {
    let place = letter_at(text, place);
    let before = &text[..place];
    let line = before.matches('\n').count() + 1;
    let start = before.rfind('\n').map_or(0, |newline| newline + 1);
    (line, before[start..].chars().count() + 1)
}

/// The place where the letter at or around a place begins.
fn letter_at(text: &str, place: usize) -> usize {
    let mut place = place.min(text.len());
    while !text.is_char_boundary(place) {
        place -= 1;
    }
    place
}
