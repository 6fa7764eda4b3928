//! Writing a sheet into a file: as a page or, where the program was built with it, as PDF.

use std::path::{Path, PathBuf};

use report::make::Readers;
use report::{Picture, Sheet};
use units::{Arg, Args};
use words::Words;

use crate::args::SheetArgs;
use crate::error::CliError;

/// What a sheet is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WrittenAs {
    /// A page for a browser, which prints it.
    Html,
    /// A PDF.
    Pdf,
}

impl WrittenAs {
    /// By the ending of a file's name.
    pub fn of(path: &Path) -> Result<Self, CliError> {
        let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
        match ending.as_deref() {
            Some("html" | "htm") => Ok(Self::Html),
            Some("pdf") => Ok(Self::Pdf),
            _ => Err(CliError::usage("print_ending", Args::new().with("file", super::input::file(path)))),
        }
    }
}

/// What a sheet will be written as; nothing where it goes to standard output.
pub fn written_as(args: &SheetArgs) -> Result<Option<WrittenAs>, CliError> {
    args.to.as_deref().map(WrittenAs::of).transpose()
}

/// The reader in the second language, where there is one.
pub struct SecondReader(Option<Words>);

impl SecondReader {
    /// The one who was asked for, unless it is the same language again.
    pub fn of(args: &SheetArgs, words: &Words) -> Self {
        let language = args.beside.map(crate::args::Lang::language);
        Self(
            language
                .filter(|language| *language != words.reader().language)
                .map(|language| words.in_language(language)),
        )
    }

    /// Both readers, or the one.
    pub fn readers<'a>(&'a self, first: &'a Words) -> Readers<'a> {
        Readers { first, beside: self.0.as_ref() }
    }
}

/// The sheet with the sign that was asked for in its head.
pub fn with_picture(sheet: Sheet, file: Option<&Path>, words: &Words) -> Result<Sheet, CliError> {
    let Some(file) = file else { return Ok(sheet) };
    let most = u64::try_from(report::picture::MOST_BYTES).unwrap_or(u64::MAX);
    let bytes = super::input::bytes(file, most)?;
    let picture = Picture::new(bytes).map_err(|error| CliError::input(super::input::place(file), &error))?;
    Ok(sheet.with_picture(picture, words.label("picture-told")))
}

/// Writes a sheet: all of it, or nothing that could be taken for it.
pub fn write(sheet: &Sheet, path: &Path) -> Result<(), CliError> {
    let bytes = match WrittenAs::of(path)? {
        WrittenAs::Html => report::html::page(sheet).into_bytes(),
        WrittenAs::Pdf => report_pdf::pdf(sheet)
            .map_err(|error| CliError::not_made(&error).at(super::input::place(path)))?,
    };
    write_whole(path, &bytes)
}

/// Writes a file: all of it, or nothing that could be taken for it.
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), CliError> {
    let beside = beside(path);
    let done = std::fs::write(&beside, bytes).and_then(|()| std::fs::rename(&beside, path));
    done.map_err(|error| {
        // What was half written is no use to anybody.
        let _ = std::fs::remove_file(&beside);
        let args =
            Args::new().with("file", super::input::file(path)).with("detail", Arg::Text(error.to_string()));
        CliError::read("not_written", args)
    })
}

/// A name beside a file for what is not whole yet.
fn beside(path: &Path) -> PathBuf {
    let mut name = path.file_name().map(std::ffi::OsStr::to_os_string).unwrap_or_default();
    name.push(".part");
    path.with_file_name(name)
}
