//! A file of lines, each answered in its place and in order; a bad line does not stop the rest.

use std::io::{BufRead, Write};
use std::path::Path;

use serde_json::{Value, json};
use units::{Arg, Args};
use words::Words;

use crate::error::CliError;
use crate::out::Answer;

/// What a line comes to: whether it is outside, and its object.
pub type Answered = Result<(bool, Value), CliError>;

/// Works every line out and prints each answer as it comes, so that no file is too long. A batch answers in
/// JSON, with `--json` or without.
pub fn run(path: &Path, words: &Words, answered: impl Fn(&[u8]) -> Answered) -> Result<Answer, CliError> {
    let mut answer = Answer::default();
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    let mut notes = anstream::stderr().lock();
    for (place, line) in super::input::lines(path)?.split(b'\n').enumerate() {
        let line = line.map_err(|error| {
            let told = Args::new()
                .with("line", Arg::Text((place + 1).to_string()))
                .with("file", super::input::file(path))
                .with("detail", Arg::Text(error.to_string()));
            CliError::read(if place == 0 { "first_line" } else { "line" }, told)
        })?;
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        let object = match answered(&line) {
            Ok((outside, object)) => {
                answer.outside |= outside;
                object
            }
            Err(error) => {
                answer.faulty = true;
                // A note is a courtesy; where it cannot be written the answer still says what is wrong.
                let message = error.line(words);
                let number = (place + 1).to_string();
                let note = [("number", number.into()), ("message", message.clone().into())];
                let _ = writeln!(notes, "{}", words.say("line-of_batch", &note));
                json!({ "error": { "code": error.code, "message": message } })
            }
        };
        match writeln!(out, "{object}") {
            Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => return Ok(answer),
            Err(error) => return Err(unwritten(&error)),
            Ok(()) => {}
        }
    }
    out.flush().map_err(|error| unwritten(&error))?;
    Ok(answer)
}

fn unwritten(error: &std::io::Error) -> CliError {
    CliError::read("unwritten", Args::new().with("detail", Arg::Text(error.to_string())))
}
