//! Syncing with a server: asks what it holds, sends it what it lacks, takes what is lacking here. Any step may break off
//! or come twice; the next exchange goes on from what is held then.

mod plain_http;

use std::io;

use notebook::{Line, NotebookId, Ranges, line_text, read_line};
use store::StoreError;

use crate::api::{JSON, LINES, LinesTaken, LinesWanted, NotebookHeld, RangesHeld};
use crate::kept::Kept;
use crate::limits::Limits;

pub use plain_http::PlainHttp;

/// So many lines are sent at once. Our own choice: a part that a weak radio link carries in seconds.
const AT_ONCE: usize = 2_000;

/// The other side of an exchange.
pub trait Other {
    /// Asks for a path; with a body of a type it is a `POST`, without a `GET`.
    fn ask(&mut self, path: &str, body: Option<(&'static str, String)>) -> io::Result<Answered>;
}

/// What the other side answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answered {
    /// The status.
    pub status: u16,
    /// The body.
    pub body: Vec<u8>,
}

/// What became of an exchange.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Exchanged {
    /// How many lines the other side did not have.
    pub sent: usize,
    /// How many lines were new here.
    pub taken: usize,
    /// How many lines one side would not take from the other.
    pub refused: usize,
}

/// Why an exchange broke off. What was exchanged up to then is kept.
#[derive(Debug, thiserror::Error)]
pub enum ExchangeError {
    /// The other side is not there, or went away.
    #[error("the server cannot be reached: {0}")]
    Unreachable(#[from] io::Error),
    /// It keeps another notebook.
    #[error("the server keeps another notebook ({theirs})")]
    OtherNotebook {
        /// Which.
        theirs: NotebookId,
    },
    /// It refuses, with its code where it gives one.
    #[error("the server refuses: {status} {code}")]
    Refused {
        /// The status.
        status: u16,
        /// The code of its problem document.
        code: String,
    },
    /// Its answer is none of a server of ours.
    #[error("the answer is not that of a server of ours")]
    Strange,
    /// Something cannot be kept here.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// Exchanges lines until both sides hold the same, as far as each takes what the other has.
///
/// *Errors*: the other side is away, refuses, or keeps another notebook; something cannot be kept here.
pub fn exchange(here: &dyn Kept, there: &mut impl Other) -> Result<Exchanged, ExchangeError> {
    let mut done = Exchanged::default();
    let first: NotebookHeld = json(&ask(there, "/api/1/notebook", None)?)?;
    let theirs = NotebookId::parse(&first.notebook).ok_or(ExchangeError::Strange)?;
    if theirs != here.notebook() {
        return Err(ExchangeError::OtherNotebook { theirs });
    }
    let held_there = send(here, there, read(first.held)?, &mut done)?;
    take(here, there, &held_there, &mut done)?;
    Ok(done)
}

/// Sends what the other side lacks.
fn send(
    here: &dyn Kept,
    there: &mut impl Other,
    mut held_there: Ranges,
    done: &mut Exchanged,
) -> Result<Ranges, ExchangeError> {
    loop {
        let lines = here.lines_beyond(&held_there, AT_ONCE)?;
        if lines.is_empty() {
            return Ok(held_there);
        }
        let mut text = String::new();
        for line in &lines {
            // What is sent is not sent again in this exchange, whether it is taken or not.
            held_there.add(line.device(), line.number());
            text.push_str(&line_text(line));
            text.push('\n');
            if text.len() >= Limits::USUAL.answer_bytes {
                break;
            }
        }
        let answer: LinesTaken = json(&ask(there, "/api/1/lines", Some((LINES, text)))?)?;
        done.sent += answer.new + answer.filled_in;
        done.refused += answer.changed + answer.foreign + answer.unreadable;
        held_there = held_there.with(&read(answer.held)?);
    }
}

/// Takes what is lacking here.
fn take(
    here: &dyn Kept,
    there: &mut impl Other,
    held_there: &Ranges,
    done: &mut Exchanged,
) -> Result<(), ExchangeError> {
    let mut asked_for = here.held()?;
    // Nothing is asked where nothing is lacking; what came to the other side meanwhile comes the next time.
    while held_there.without(&asked_for) != Ranges::none() {
        let wanted = LinesWanted { held: RangesHeld::of(&asked_for), most: None };
        let wanted = serde_json::to_string(&wanted).map_err(|_| ExchangeError::Strange)?;
        let body = ask(there, "/api/1/lines/wanted", Some((JSON, wanted)))?;
        let lines = lines_of(&body, &mut done.refused);
        if lines.is_empty() {
            return Ok(());
        }
        let before = asked_for.clone();
        lines.iter().for_each(|line| asked_for.add(line.device(), line.number()));
        let taken = here.take(lines)?;
        done.taken += taken.new + taken.filled_in;
        done.refused += taken.changed + taken.foreign + taken.beyond;
        // A side that sends the same for ever is not listened to for ever.
        if before == asked_for {
            return Err(ExchangeError::Strange);
        }
    }
    Ok(())
}

/// The lines of an answer that are lines; of one that broke off, those that came whole.
fn lines_of(body: &[u8], refused: &mut usize) -> Vec<Line> {
    let mut lines = Vec::new();
    for text in body.split(|byte| *byte == b'\n').filter(|text| !text.trim_ascii().is_empty()) {
        match core::str::from_utf8(text).ok().and_then(|text| read_line(text).ok()) {
            Some(line) => lines.push(line),
            None => *refused += 1,
        }
    }
    lines
}

fn ask(
    there: &mut impl Other,
    path: &str,
    body: Option<(&'static str, String)>,
) -> Result<Vec<u8>, ExchangeError> {
    let answered = there.ask(path, body)?;
    if answered.status == 200 {
        return Ok(answered.body);
    }
    let document: Option<serde_json::Value> = serde_json::from_slice(&answered.body).ok();
    let code = document.as_ref().and_then(|document| document.get("code")).and_then(|code| code.as_str());
    Err(ExchangeError::Refused { status: answered.status, code: code.unwrap_or_default().to_string() })
}

fn json<T: serde::de::DeserializeOwned>(body: &[u8]) -> Result<T, ExchangeError> {
    serde_json::from_slice(body).map_err(|_| ExchangeError::Strange)
}

fn read(held: RangesHeld) -> Result<Ranges, ExchangeError> {
    held.read(Limits::USUAL.ranges).map_err(|_| ExchangeError::Strange)
}
