//! `evenswath visit check`: everything that a visit's file has readings for, and what follows from it.

use std::path::Path;

use report::make::Maker;
use units::{Arg, Args, Coded};
use visit::Visit;
use visit::file::FileErrors;
use visit::findings::{CheckError, Outcome};
use words::{Said, Words};

use super::sheet::{SecondReader, with_picture, write, written_as};
use crate::args::SheetArgs;
use crate::error::{CliError, INPUT, Place, Problem};
use crate::out::{Answer, visit_json, visit_text};

/// The most bytes read of a visit file; the reader refuses more with a word of its own.
const MOST_BYTES: u64 = 1_000_001;

/// Reads the file and works it out; writes its sheet where one is asked for.
pub fn run(file: &Path, sheet: &SheetArgs, words: &Words) -> Result<Answer, CliError> {
    // A name that nothing can be written to is told before anything is worked out.
    written_as(sheet)?;
    let visit = read(file)?;
    let outcome = work_out(file, &visit, words)?;
    let mut answer = Answer::of(visit_json::object(&visit, &outcome, words));
    visit_text::lines(&mut answer, &visit, &outcome, words);
    answer.outside = outcome.is_outside();
    if let Some(path) = &sheet.to {
        let second = SecondReader::of(sheet, words);
        let made = report::make::visit(&second.readers(words), &visit, &outcome, Maker::default());
        write(&with_picture(made, sheet.picture.as_deref(), words)?, path)?;
        answer.notes.push(words.say("print-written", &[("file", path.display().to_string().into())]));
    }
    Ok(answer)
}

/// Reads a visit file, or says what is wrong with it.
pub fn read(file: &Path) -> Result<Visit, CliError> {
    read_bytes(file, &bytes(file)?)
}

/// The bytes of a visit file.
pub fn bytes(file: &Path) -> Result<Vec<u8>, CliError> {
    super::input::bytes(file, MOST_BYTES)
}

/// Reads the bytes of a visit file, or says what is wrong with them.
pub fn read_bytes(file: &Path, bytes: &[u8]) -> Result<Visit, CliError> {
    visit::file::read(bytes).map_err(|errors| mistakes(file, &errors))
}

/// Works a visit out, or says which of its facts cannot be.
pub fn work_out(file: &Path, visit: &Visit, words: &Words) -> Result<Outcome, CliError> {
    visit::findings::findings(visit, words.reader().units).map_err(|error| cannot_be(file, &error))
}

/// The mistakes of a file, each with its place; more than a screen of them are counted.
pub fn mistakes(file: &Path, errors: &FileErrors) -> CliError {
    let list = errors.list();
    let mut problems: Vec<Problem> = Vec::new();
    for error in list.iter().take(MOST_MISTAKES) {
        let mut at = vec![super::input::place(file)];
        at.extend(error.place.map(|(line, column)| Place::LineAndColumn(line, column)));
        at.extend(error.field.clone().map(Place::Named));
        // The place is said by ourselves, so only the message is taken as the last resort.
        let said = Said { english: error.message.clone(), ..Said::by(error) };
        problems.push(Problem::new(at, said));
    }
    if list.len() > MOST_MISTAKES {
        let more = Arg::Text((list.len() - MOST_MISTAKES).to_string());
        problems.extend(CliError::usage("more_mistakes", Args::new().with("more", more)).problems);
    }
    CliError { status: INPUT, code: list.first().map_or("file", |error| error.code), problems }
}

/// A fact of the visit that cannot be, with the part it stands in.
pub fn cannot_be(file: &Path, error: &CheckError) -> CliError {
    let said = Said { english: error.message().to_string(), ..Said::by(error) };
    let at = vec![super::input::place(file), Place::Named(error.part.to_string())];
    let problems = vec![Problem::new(at, said)];
    let whole = CliError { status: INPUT, code: error.code(), problems };
    whole.unless_kept("keep_doubtful-field")
}

/// More mistakes than these are counted, not shown. Our own choice: a screen's worth.
const MOST_MISTAKES: usize = 12;
