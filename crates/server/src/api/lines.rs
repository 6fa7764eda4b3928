//! `POST /api/1/lines`: takes lines in. What cannot be taken is named, line by line; the rest is kept.

use std::collections::BTreeMap;
use std::sync::Arc;

use axum::Json;
use axum::extract::{Request, State};
use axum::response::{IntoResponse, Response};
use notebook::{Line, NotebookId, read_line};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use units::{Arg, Args, Coded};
use utoipa::ToSchema;

use super::LINES;
use super::ranges::RangesHeld;
use crate::body;
use crate::document::{ProblemDocument, json_of};
use crate::front::LineCount;
use crate::kept::off_thread;
use crate::problem::Problem;
use crate::service::Inside;

/// So many lines that were not taken are named. Our own choice: more than anybody reads; all are counted.
const NAMED: usize = 100;

/// The highest number and order taken: the largest that every reader of JSON keeps exactly, 2^53 (RFC 8259, 6). Nobody
/// writes that many lines; a line that claims it would leave no room for the next.
const HIGHEST: u64 = 1 << 53;

/// What became of the lines
#[derive(Clone, Debug, Default, Serialize, Deserialize, ToSchema)]
pub struct LinesTaken {
    /// How many were new
    pub new: usize,
    /// How many were here already
    pub known: usize,
    /// How many were here without what is written and have it now
    pub filled_in: usize,
    /// How many were changed after they were sealed, and were not taken
    pub changed: usize,
    /// How many belong to another notebook, and were not taken
    pub foreign: usize,
    /// How many could not be read, and were not taken
    pub unreadable: usize,
    /// The first hundred that were not taken
    pub refused: Vec<LineRefused>,
    /// What is held now
    pub held: RangesHeld,
}

/// A line that was not taken
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineRefused {
    /// Its place in what was sent, from 1
    pub at: usize,
    /// Why, as a stable code
    pub code: String,
    /// The figures and names in it
    #[schema(value_type = Object)]
    pub args: BTreeMap<String, Value>,
}

/// Takes lines in; the same lines again change nothing
#[utoipa::path(
    post,
    path = "/api/1/lines",
    request_body(content = String, content_type = "application/x-ndjson", description = "Lines, one a line"),
    responses(
        (status = 200, description = "What became of them", body = LinesTaken),
        (status = "default", description = "A problem", body = ProblemDocument, content_type = "application/problem+json"),
    )
)]
pub async fn take(State(inside): State<Arc<Inside>>, request: Request) -> Result<Response, Problem> {
    let body = body::read(&inside, request, LINES, inside.limits.body_bytes).await?;
    let (ours, most) = (inside.kept.notebook(), inside.limits.lines_taken);
    // Reading and hashing many lines takes a while as well, so all of it is done where one may wait.
    let (sent, taken) = off_thread(&inside.kept, move |kept| {
        let read = match Read::of(&body.bytes, ours, most) {
            Ok(read) => read,
            Err(problem) => return Ok((0, Err(problem))),
        };
        let Read { lines, sent, mut answer } = read;
        if !lines.is_empty() {
            let taken = kept.take(lines)?;
            answer.new = taken.new;
            answer.known = taken.known;
            answer.filled_in = taken.filled_in;
            answer.changed += taken.changed;
            answer.foreign += taken.foreign;
            // As those that claim more than any reader keeps exactly.
            answer.unreadable += taken.beyond;
        }
        answer.held = RangesHeld::of(&kept.held()?);
        Ok((sent, Ok(answer)))
    })
    .await?;
    let mut response = Json(taken?).into_response();
    response.extensions_mut().insert(LineCount(sent));
    Ok(response)
}

/// Lines as they were read, with those that cannot be taken named already.
struct Read {
    lines: Vec<Line>,
    sent: usize,
    answer: LinesTaken,
}

impl Read {
    fn of(bytes: &[u8], ours: NotebookId, most: usize) -> Result<Self, Problem> {
        let mut read = Self { lines: Vec::new(), sent: 0, answer: LinesTaken::default() };
        let mut theirs = None;
        for (index, text) in bytes.split(|byte| *byte == b'\n').enumerate() {
            if text.trim_ascii().is_empty() {
                continue;
            }
            read.sent += 1;
            if read.sent > most {
                return Err(Problem::TooManyLines { most });
            }
            read.line(index + 1, text, ours, &mut theirs);
        }
        match theirs {
            // Nothing but another notebook's: not a slip in the lines but the wrong address.
            Some(theirs) if read.answer.foreign == read.sent => Err(Problem::OtherNotebook { theirs, ours }),
            _ => Ok(read),
        }
    }

    fn line(&mut self, at: usize, text: &[u8], ours: NotebookId, theirs: &mut Option<NotebookId>) {
        let Ok(text) = core::str::from_utf8(text) else {
            self.answer.unreadable += 1;
            return self.refuse(at, "line_not_text", &Args::new());
        };
        let line = match read_line(text) {
            Ok(line) => line,
            Err(error) => {
                self.answer.unreadable += 1;
                return self.refuse(at, error.code(), &error.args());
            }
        };
        if line.notebook() != ours {
            theirs.get_or_insert(line.notebook());
            self.answer.foreign += 1;
            let named = Args::new().with("notebook", Arg::Text(line.notebook().to_string()));
            self.refuse(at, "line_foreign", &named);
        } else if let Some(field) = beyond_reason(&line) {
            self.answer.unreadable += 1;
            self.refuse(at, "line_field", &Args::new().with("field", Arg::Text(field.to_string())));
        } else if line.is_whole() {
            self.lines.push(line);
        } else {
            self.answer.changed += 1;
            self.refuse(at, "line_changed", &Args::new());
        }
    }

    fn refuse(&mut self, at: usize, code: &str, args: &Args) {
        if self.answer.refused.len() < NAMED {
            let args = json_of(args).into_iter().map(|(name, value)| (name.to_string(), value)).collect();
            self.answer.refused.push(LineRefused { at, code: code.to_string(), args });
        }
    }
}

/// The field of a line that no device gets to by writing, and no store keeps.
fn beyond_reason(line: &Line) -> Option<&'static str> {
    let reasonable = 1..=HIGHEST;
    if !reasonable.contains(&line.number()) {
        Some("number")
    } else if !reasonable.contains(&line.order()) {
        Some("order")
    } else {
        None
    }
}
