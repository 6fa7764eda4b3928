//! Reading options and files, with messages that name the option.

use std::io::{BufRead, Read};
use std::path::Path;

use units::{Arg, Args, Coded, Dimension, Quantity};

use crate::error::{CliError, Place};

/// Takes a result, or says which option is at fault.
pub fn known<T, E: Coded>(at: impl Into<Place>, result: Result<T, E>) -> Result<T, CliError> {
    result.map_err(|error| CliError::input(at, &error))
}

/// A quantity from an option.
pub fn quantity<Q: Quantity>(at: impl Into<Place>, text: &str) -> Result<Q, CliError> {
    known(at, Q::parse(text))
}

/// A quantity above nothing from an option.
pub fn positive<Q: Quantity>(at: impl Into<Place>, text: &str) -> Result<Q, CliError> {
    let at = at.into();
    let value: Q = quantity(at.clone(), text)?;
    if value.is_positive() { Ok(value) } else { Err(not_positive(at, text, Q::DIMENSION)) }
}

/// A quantity above nothing from an option that may be left out.
pub fn maybe<Q: Quantity>(at: impl Into<Place>, text: Option<&String>) -> Result<Option<Q>, CliError> {
    text.map(|text| positive(at, text)).transpose()
}

/// A quantity that is nothing or less where that cannot be.
pub fn not_positive(at: impl Into<Place>, text: &str, kind: Dimension) -> CliError {
    let args = Args::new()
        .with("given", Arg::Text(text.trim().to_string()))
        .with("kind", kind.word())
        .with("would_do", kind.would_do_word());
    CliError::usage("not_positive", args).at(at)
}

/// A file, or standard input for `-`, to be read line by line however long it is.
pub fn lines(path: &Path) -> Result<Box<dyn BufRead>, CliError> {
    if path == Path::new("-") {
        return Ok(Box::new(std::io::stdin().lock()));
    }
    let file = std::fs::File::open(path).map_err(|error| cannot(path, &error))?;
    Ok(Box::new(std::io::BufReader::new(file)))
}

/// The bytes of a file, or of standard input for `-`, up to a limit.
pub fn bytes(path: &Path, limit: u64) -> Result<Vec<u8>, CliError> {
    let mut content = Vec::new();
    if path == Path::new("-") {
        std::io::stdin()
            .lock()
            .take(limit + 1)
            .read_to_end(&mut content)
            .map_err(|error| cannot(path, &error))?;
    } else {
        let file = std::fs::File::open(path).map_err(|error| cannot(path, &error))?;
        file.take(limit + 1).read_to_end(&mut content).map_err(|error| cannot(path, &error))?;
    }
    Ok(content)
}

/// A file as a place.
pub fn place(path: &Path) -> Place {
    if path == Path::new("-") { Place::StandardInput } else { Place::Named(path.display().to_string()) }
}

/// A file in a sentence.
pub fn file(path: &Path) -> Arg {
    if path == Path::new("-") {
        Arg::Word { code: "standard_input", english: "standard input" }
    } else {
        Arg::Text(path.display().to_string())
    }
}

pub fn cannot(path: &Path, error: &std::io::Error) -> CliError {
    let case = match error.kind() {
        std::io::ErrorKind::NotFound => "missing",
        std::io::ErrorKind::PermissionDenied => "forbidden",
        _ => "other",
    };
    let args = Args::new().with("file", file(path)).with("detail", Arg::Text(error.to_string()));
    CliError::read(case, args)
}
