//! `evenswath visit schema`: the JSON Schema of the visit file.

use units::{Arg, Args};

use crate::error::CliError;
use crate::out::Answer;

/// Prints the schema, which is JSON with and without `--json`.
pub fn run() -> Result<Answer, CliError> {
    let schema = visit::file::schema();
    let object: serde_json::Value = serde_json::from_str(&schema).map_err(|error| {
        CliError::fault("schema", Args::new().with("detail", Arg::Text(error.to_string())))
    })?;
    let mut answer = Answer::default();
    for line in format!("{object:#}").lines() {
        answer.verbatim(line);
    }
    answer.objects.push(object);
    Ok(answer)
}
