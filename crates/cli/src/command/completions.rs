//! `evenswath completions`: what a shell needs to complete the command.

use clap_complete::Shell;
use words::Words;

use crate::args;
use crate::error::CliError;
use crate::out::Answer;

/// Prints the completions of a shell; they are text, with or without `--json`.
pub fn run(shell: Shell, words: &Words) -> Result<Answer, CliError> {
    let mut script = Vec::new();
    clap_complete::generate(shell, &mut args::command(words), "evenswath", &mut script);
    let script = String::from_utf8_lossy(&script).into_owned();
    let mut answer = Answer::of(serde_json::json!({ "shell": shell.to_string(), "script": script }));
    for line in script.lines() {
        answer.verbatim(line);
    }
    Ok(answer)
}
