//! Running the built program as a script or a person would, with nothing of the tester's own terminal or language.
#![allow(dead_code, clippy::expect_used, clippy::panic)] // a test fails by panicking, and not every test needs all

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use serde_json::Value;

/// What a run of the program left behind.
#[derive(Debug)]
pub struct Ran {
    /// Its exit status.
    pub status: i32,
    /// Standard output.
    pub out: String,
    /// Standard error.
    pub err: String,
}

impl Ran {
    /// Standard output as the one JSON object that it must be.
    pub fn json(&self) -> Value {
        assert_eq!(self.out.matches('\n').count(), 1, "one line, one object: {self:?}");
        let value: Value =
            serde_json::from_str(&self.out).unwrap_or_else(|error| panic!("{error}: {self:?}"));
        assert!(value.is_object(), "{self:?}");
        value
    }

    /// Both outputs, for what must stand in neither.
    pub fn all(&self) -> String {
        format!("{}{}", self.out, self.err)
    }
}

/// The program, away from the tester's terminal, language and folder's settings.
pub fn command() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_evenswath"));
    command.current_dir(root()).env_clear().stdin(Stdio::null());
    command
}

/// Runs the program.
pub fn run(args: &[&str]) -> Ran {
    finish(command().args(args), b"")
}

/// Runs the program with something on its standard input.
pub fn run_with(args: &[&str], input: &[u8]) -> Ran {
    finish(command().args(args), input)
}

/// Runs a prepared command.
pub fn finish(command: &mut Command, input: &[u8]) -> Ran {
    let piped = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = piped.spawn().expect("the program starts");
    let mut stdin = child.stdin.take().expect("an input");
    let input = input.to_vec();
    // Written from the side: a long answer would otherwise fill its pipe while we still write.
    let writer = std::thread::spawn(move || {
        // A program that has seen enough closes its input; that is no fault of the test.
        let _ = stdin.write_all(&input);
    });
    let output = child.wait_with_output().expect("the program ends");
    writer.join().expect("the input is written");
    Ran {
        status: output.status.code().expect("it ends by itself, not by a signal"),
        out: String::from_utf8(output.stdout).expect("UTF-8 on standard output"),
        err: String::from_utf8(output.stderr).expect("UTF-8 on standard error"),
    }
}

/// The JSON answer of a run that must come out.
pub fn answer(args: &[&str]) -> Value {
    let ran = run(&[args, &["--json"]].concat());
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{args:?}: {ran:?}");
    ran.json()
}

/// The text answer of a run that must come out.
pub fn text(args: &[&str]) -> String {
    let ran = run(args);
    assert_eq!((ran.status, ran.err.as_str()), (0, ""), "{args:?}: {ran:?}");
    ran.out
}

/// A number in a JSON answer, by its pointer.
pub fn number(answer: &Value, pointer: &str) -> f64 {
    let found = answer.pointer(pointer).and_then(Value::as_f64);
    found.unwrap_or_else(|| panic!("no number at {pointer} in {answer}"))
}

/// A word in a JSON answer, by its pointer.
pub fn word<'a>(answer: &'a Value, pointer: &str) -> &'a str {
    let found = answer.pointer(pointer).and_then(Value::as_str);
    found.unwrap_or_else(|| panic!("no word at {pointer} in {answer}"))
}

/// Whether a number lies as near as a share of the expected one.
pub fn near(found: f64, expected: f64, share: f64) {
    assert!((found / expected - 1.0).abs() <= share, "{found} is not {expected} to within {share}");
}

/// The workspace's folder.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// A visit file of these tests.
pub fn visit(name: &str) -> String {
    format!("{}/tests/visits/{name}.toml", env!("CARGO_MANIFEST_DIR"))
}

/// A folder of this test's own, empty.
pub fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder");
    folder
}

/// Words as a shell splits them; backslashes are not needed in our examples.
pub fn shell_split(line: &str) -> Vec<String> {
    let (mut words, mut word, mut quoted, mut open) = (Vec::new(), String::new(), false, false);
    for letter in line.chars() {
        match letter {
            '"' => (quoted, open) = (!quoted, true),
            ' ' if !quoted => {
                if open {
                    words.push(std::mem::take(&mut word));
                }
                open = false;
            }
            _ => {
                word.push(letter);
                open = true;
            }
        }
    }
    if open {
        words.push(word);
    }
    words
}
