//! Reading options and files, with messages that name the option.

use std::io::{BufRead, Read};
use std::path::Path;

use units::{Coded, Quantity};

use crate::error::CliError;

/// Takes a result, or says which option is at fault.
pub fn known<T, E: Coded>(name: &str, result: Result<T, E>) -> Result<T, CliError> {
    result.map_err(|error| CliError::input(name, &error))
}

/// A quantity from an option.
pub fn quantity<Q: Quantity>(name: &str, text: &str) -> Result<Q, CliError> {
    known(name, Q::parse(text))
}

/// A quantity above nothing from an option.
pub fn positive<Q: Quantity>(name: &str, text: &str) -> Result<Q, CliError> {
    let value: Q = quantity(name, text)?;
    if value.is_positive() {
        return Ok(value);
    }
    Err(CliError::usage(
        "not_positive",
        format!("{name}: \"{}\" must be more than nothing", text.trim()),
        format!("{} above nothing is needed: {}", Q::DIMENSION.name(), Q::DIMENSION.would_do()),
    ))
}

/// A quantity above nothing from an option that may be left out.
pub fn maybe<Q: Quantity>(name: &str, text: Option<&String>) -> Result<Option<Q>, CliError> {
    text.map(|text| positive(name, text)).transpose()
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

/// A file's name in a message.
pub fn shown(path: &Path) -> String {
    if path == Path::new("-") { "standard input".to_string() } else { path.display().to_string() }
}

fn cannot(path: &Path, error: &std::io::Error) -> CliError {
    let hint = match error.kind() {
        std::io::ErrorKind::NotFound => "there is no such file; look at the name and the folder",
        std::io::ErrorKind::PermissionDenied => "this file may not be read by you",
        _ => "is it a file that can be read?",
    };
    CliError::read(format!("{} cannot be read: {error}", shown(path)), hint)
}
