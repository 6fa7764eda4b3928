//! Starting other programs: saying what is run, and turning a bad end into a message.

use std::ffi::OsStr;
use std::path::Path;
use std::process::{Command, Stdio};

/// The cargo that started this program, to be run in `folder`.
pub fn cargo(folder: &Path) -> Command {
    let program = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(program);
    command.current_dir(folder);
    command
}

/// Says what is run on standard error, runs it, and fails unless it ends well.
pub fn run(command: &mut Command) -> Result<(), String> {
    announce(command);
    let status =
        command.status().map_err(|error| format!("could not start {}: {error}", in_words(command)))?;
    if status.success() { Ok(()) } else { Err(format!("`{}` failed ({status})", in_words(command))) }
}

/// Runs quietly and gives back what was written to standard output; standard error goes through to the reader.
pub fn output_of(command: &mut Command) -> Result<String, String> {
    let (text, well) = output_and_end(command)?;
    if well { Ok(text) } else { Err(format!("`{}` failed", in_words(command))) }
}

/// As [`output_of`], but an ending with an error is an answer too: it is given back beside the output.
pub fn output_and_end(command: &mut Command) -> Result<(String, bool), String> {
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .map_err(|error| format!("could not start {}: {error}", in_words(command)))?;
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    Ok((text, output.status.success()))
}

/// Whether the program is there and ends well; whatever it says is thrown away.
pub fn works(command: &mut Command) -> bool {
    command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// Prints the command on standard error, as one could type it.
pub fn announce(command: &Command) {
    eprintln!("$ {}", in_words(command));
}

fn in_words(command: &Command) -> String {
    let program = Path::new(command.get_program());
    let mut words = vec![program.file_stem().unwrap_or(command.get_program()).to_string_lossy().into_owned()];
    words.extend(command.get_args().map(quoted));
    words.join(" ")
}

fn quoted(word: &OsStr) -> String {
    let word = word.to_string_lossy();
    if word.is_empty() || word.contains([' ', '*', '"', '\'', '$']) {
        format!("'{word}'")
    } else {
        word.into_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_command_is_shown_as_it_would_be_typed() {
        let mut command = Command::new("/usr/bin/cargo");
        command.args(["bench", "--bench", "*"]);
        assert_eq!(in_words(&command), "cargo bench --bench '*'");
    }

    #[test]
    fn a_bad_end_is_an_error_that_names_the_command() {
        let here = std::env::temp_dir();
        let message = run(cargo(&here).arg("no-such-command").stderr(Stdio::null())).unwrap_err();
        assert!(message.contains("cargo no-such-command"), "{message}");
    }

    #[test]
    fn a_missing_program_does_not_work() {
        assert!(!works(&mut Command::new("a-program-nobody-has")));
    }
}
