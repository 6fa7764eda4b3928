//! A mistake in a visit file: where it stands, what was given, what would do.

use core::fmt;

use units::{Arg, Args, Coded};

/// One mistake.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileError {
    /// Line and column from 1, where it can be pointed at.
    pub place: Option<(usize, usize)>,
    /// The field, as `drive.course`, where it belongs to one.
    pub field: Option<String>,
    /// The stable code.
    pub code: &'static str,
    /// What is wrong, with what was given.
    pub message: String,
    /// What would do.
    pub hint: Option<String>,
}

/// Every mistake in a file, in the order they stand.
#[derive(Clone, Debug, PartialEq, Eq)]
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
        Self {
            place: None,
            field: None,
            code: "file_too_large",
            message: format!("the file has more than {largest} bytes, which is more than a visit can need"),
            hint: Some("is this the right file? `evenswath visit new` writes one to fill in".to_string()),
        }
    }

    pub(super) fn not_text(bytes: &[u8], error: &core::str::Utf8Error) -> Self {
        let before = &bytes[..error.valid_up_to()];
        let line = before.iter().filter(|byte| **byte == b'\n').count() + 1;
        let start = before.iter().rposition(|byte| *byte == b'\n').map_or(0, |place| place + 1);
        Self {
            place: Some((line, before.len() - start + 1)),
            field: None,
            code: "file_not_text",
            message: "the file is not UTF-8 text".to_string(),
            hint: Some(
                "save it as plain text in UTF-8; a spreadsheet or word processor file will not do"
                    .to_string(),
            ),
        }
    }

    pub(super) fn not_toml(text: &str, error: &toml::de::Error) -> Self {
        let message = error.message().lines().collect::<Vec<_>>().join("; ");
        Self {
            place: error.span().map(|span| line_and_column(text, span.start)),
            field: None,
            code: "file_not_toml",
            message: format!("this cannot be read as TOML: {message}"),
            hint: Some(
                "a line is name = \"value\"; put quantities in quotes, as spacing = \"20 in\"".to_string(),
            ),
        }
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

    fn args(&self) -> Args {
        let mut args = Args::new().with("message", Arg::Text(self.message.clone()));
        if let Some(field) = &self.field {
            args = args.with("field", Arg::Text(field.clone()));
        }
        args
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
