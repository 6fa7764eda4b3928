//! An answer: the JSON object, the lines for a person, the notes, and whether a verdict is outside.

use std::io::Write;

use anstyle::{AnsiColor, Style};
use serde_json::Value;
use units::{Amount, Finding, Weight, Working};
use words::Words;

use crate::args::Cli;
use crate::error::{INPUT, OUTSIDE, READ};

/// Bold, where the terminal shows it.
pub const BOLD: Style = Style::new().bold();
/// The one strong colour, for what is to be acted on.
const ACT: Style = Style::new().bold().fg_color(Some(anstyle::Color::Ansi(AnsiColor::Red)));

/// One line for a person.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Line {
    /// The answer itself, shown bold.
    Main(String),
    /// A heading.
    Head(String),
    /// Something to act on.
    Act(String),
    /// Anything else.
    Plain(String),
    /// A line that must stand as it is: a file, a script, a table.
    Verbatim(String),
}

/// How wide text is set. Our own choice: what an eye follows on a terminal, and the same into a file.
const WIDE: usize = 96;

/// A long line broken at words, what follows set in under the first word.
fn wrapped(text: &str) -> String {
    let under = " ".repeat(hanging(text));
    let kept = with_units_kept(text);
    textwrap::fill(&kept, textwrap::Options::new(WIDE).subsequent_indent(&under)).replace(KEPT, " ")
}

/// The blank that no line is broken at.
const KEPT: char = '\u{a0}';

/// Holds each number together with the unit behind it: nobody looks for the cm of 3.81 on the next line.
fn with_units_kept(text: &str) -> String {
    let mut kept = String::with_capacity(text.len() + 16);
    for word in text.split_inclusive(' ') {
        let bare = word.trim_end_matches([' ', '.', ',', ';', ':', ')']);
        // Units are short or stand over one another, as gal/ac.
        let unit = bare.chars().count() <= 3 || bare.contains('/');
        if unit && kept.ends_with(' ') && kept.trim_end().ends_with(|sign: char| sign.is_ascii_digit()) {
            kept.pop();
            kept.push(KEPT);
        }
        kept.push_str(word);
    }
    kept
}

/// Where the words of a line begin: behind its blanks and a list's dash, or its number and sign.
fn hanging(text: &str) -> usize {
    let rest = text.trim_start();
    let blanks = text.len() - rest.len();
    if rest.starts_with("- ") {
        return blanks + 2;
    }
    match rest.split_once(". ") {
        Some((number, after)) if !number.is_empty() && number.bytes().all(|sign| sign.is_ascii_digit()) => {
            let sign = if after.starts_with("! ") || after.starts_with("? ") { 2 } else { 0 };
            blanks + number.len() + 2 + sign
        }
        _ => blanks,
    }
}

/// What a command answers.
#[derive(Debug, Default)]
pub struct Answer {
    /// The object for `--json`; several for a batch.
    pub objects: Vec<Value>,
    /// The lines for a person.
    pub lines: Vec<Line>,
    /// How the numbers were reached, shown to a person who asks why.
    pub working: Vec<Working>,
    /// Notes for standard error, with and without `--json`.
    pub notes: Vec<String>,
    /// Whether some verdict is *outside*.
    pub outside: bool,
    /// Whether some line of a batch was at fault.
    pub faulty: bool,
}

impl Answer {
    /// An answer with its JSON object.
    pub fn of(object: Value) -> Self {
        Self { objects: vec![object], ..Self::default() }
    }

    /// Adds the answer itself.
    pub fn main(&mut self, text: impl Into<String>) {
        self.lines.push(Line::Main(text.into()));
    }

    /// Adds a heading with an empty line above it.
    pub fn head(&mut self, text: impl Into<String>) {
        if !self.lines.is_empty() {
            self.plain("");
        }
        self.lines.push(Line::Head(text.into()));
    }

    /// Adds a line to act on.
    pub fn act(&mut self, text: impl Into<String>) {
        self.lines.push(Line::Act(text.into()));
    }

    /// Adds any other line.
    pub fn plain(&mut self, text: impl Into<String>) {
        self.lines.push(Line::Plain(text.into()));
    }

    /// Adds how a number was reached, for those who ask why.
    pub fn why(&mut self, working: Working) {
        self.working.push(working);
    }

    /// Adds findings as lines, each with what to do about it.
    pub fn findings(&mut self, findings: &[Finding], words: &Words) {
        for finding in findings {
            let text = words.finding_and_action(finding);
            match finding.weight {
                Weight::Stop | Weight::Act => self.act(text),
                _ => self.plain(text),
            }
            self.working.extend(finding.working.clone());
        }
    }

    /// Adds a line that must stand as it is.
    pub fn verbatim(&mut self, text: impl Into<String>) {
        self.lines.push(Line::Verbatim(text.into()));
    }

    /// Prints it and gives the exit status.
    pub fn print(&self, cli: &Cli, words: &Words) -> u8 {
        let mut notes = anstream::stderr().lock();
        for note in &self.notes {
            // Notes are a courtesy; where they cannot be written the answer still stands.
            let _ = writeln!(notes, "{} {note}", words.label("line-note"));
        }
        let written = if cli.json { self.print_objects() } else { self.print_lines(words) };
        match written {
            // A reader that has seen enough (a pager, `head`) closes the pipe; that is no fault.
            Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => READ,
            _ if self.faulty => INPUT,
            _ if self.outside && cli.strict => OUTSIDE,
            _ => 0,
        }
    }

    fn print_objects(&self) -> std::io::Result<()> {
        let mut out = std::io::BufWriter::new(std::io::stdout().lock());
        for object in &self.objects {
            writeln!(out, "{object}")?;
        }
        out.flush()
    }

    fn print_lines(&self, words: &Words) -> std::io::Result<()> {
        let mut out = anstream::stdout().lock();
        for line in &self.lines {
            match line {
                Line::Main(text) | Line::Head(text) => writeln!(out, "{BOLD}{text}{BOLD:#}")?,
                Line::Act(text) => writeln!(out, "{ACT}{}{ACT:#}", wrapped(text))?,
                Line::Plain(text) => writeln!(out, "{}", wrapped(text))?,
                Line::Verbatim(text) => writeln!(out, "{text}")?,
            }
        }
        for working in &self.working {
            writeln!(out)?;
            if self.working.len() > 1 {
                writeln!(out, "{BOLD}{}{BOLD:#}", words.working_title(working))?;
            }
            for text in words.working(working) {
                writeln!(out, "{text}")?;
            }
        }
        out.flush()
    }
}

/// An amount and, where it has one, the range it most likely lies in.
pub fn with_range(words: &Words, amount: &Amount) -> String {
    let shown = words.amount(amount);
    match words.range(amount) {
        Some(range) => {
            words.say("line-amount_and_range", &[("amount", shown.into()), ("range", range.into())])
        }
        None => shown,
    }
}
