//! `POST /api/1/lines/wanted`: the lines that the asker, who says what it holds, lacks.

use std::sync::Arc;

use axum::extract::{Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use notebook::{Line, Ranges, line_text};
use serde::{Deserialize, Serialize};
use store::StoreError;
use utoipa::ToSchema;

use super::ranges::{RangesHeld, RangesWrong};
use super::{JSON, LINES};
use crate::body;
use crate::document::ProblemDocument;
use crate::front::LineCount;
use crate::kept::{Kept, off_thread};
use crate::problem::Problem;
use crate::service::Inside;

/// So many lines are asked of the store first, to see how long they are. Our own choice: 32 MB at the very worst.
const FIRST: usize = 500;
/// So many lines are asked of the store at once at most. Our own choice: lines that get far longer all of a sudden still
/// fit into a small machine.
const AT_ONCE: usize = 4_000;

/// What the asker holds, and how many lines it wants at most
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LinesWanted {
    /// What it holds
    pub held: RangesHeld,
    /// How many lines it wants at most; as many as fit where it does not say
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schema(minimum = 1)]
    pub most: Option<u32>,
}

/// The lines that the asker lacks, one a line, in the order of the notebook
///
/// An answer ends when it is long enough. Who has taken it in asks again with what it holds then; an empty answer says
/// that nothing is lacking.
#[utoipa::path(
    post,
    path = "/api/1/lines/wanted",
    request_body(content = LinesWanted, content_type = "application/json"),
    responses(
        (status = 200, description = "Lines, one a line", body = String, content_type = "application/x-ndjson"),
        (status = "default", description = "A problem", body = ProblemDocument, content_type = "application/problem+json"),
    )
)]
pub async fn wanted(State(inside): State<Arc<Inside>>, request: Request) -> Result<Response, Problem> {
    let limits = inside.limits;
    let body = body::read(&inside, request, JSON, limits.asking_bytes).await?;
    let wanted: LinesWanted = serde_json::from_slice(&body.bytes)
        .map_err(|error| Problem::Unreadable { line: error.line(), column: error.column() })?;
    let held = wanted.held.read(limits.ranges).map_err(|wrong| match wrong {
        RangesWrong::TooMany => Problem::TooManyRanges { most: limits.ranges },
        RangesWrong::NotOne => Problem::Field { field: "held" },
    })?;
    let most = match wanted.most {
        None => limits.lines_given,
        Some(0) => return Err(Problem::Field { field: "most" }),
        Some(most) => usize::try_from(most).unwrap_or(usize::MAX).min(limits.lines_given),
    };
    let given = off_thread(&inside.kept, move |kept| give(kept, held, most, limits.answer_bytes)).await?;
    let mut response = ([(header::CONTENT_TYPE, LINES)], given.text).into_response();
    response.extensions_mut().insert(LineCount(given.lines));
    Ok(response)
}

struct Given {
    text: String,
    lines: usize,
}

/// Writes lines until there are enough of them, or bytes.
fn give(kept: &dyn Kept, mut held: Ranges, most: usize, bytes: usize) -> Result<Given, StoreError> {
    let mut given = Given { text: String::new(), lines: 0 };
    while given.lines < most {
        let at_once = at_once(&given, bytes).min(most - given.lines);
        let lines = kept.lines_beyond(&held, at_once)?;
        for line in &lines {
            if given.text.len() >= bytes {
                return Ok(given);
            }
            put(&mut given, line);
            held.add(line.device(), line.number());
        }
        if lines.len() < at_once {
            break;
        }
    }
    Ok(given)
}

/// How many lines are likely to fill what is left of the answer: each time the store is asked it goes through all it has.
fn at_once(given: &Given, bytes: usize) -> usize {
    if given.lines == 0 {
        return FIRST;
    }
    let each = given.text.len() / given.lines + 1;
    (bytes.saturating_sub(given.text.len()) / each + 1).min(AT_ONCE)
}

fn put(given: &mut Given, line: &Line) {
    given.text.push_str(&line_text(line));
    given.text.push('\n');
    given.lines += 1;
}
