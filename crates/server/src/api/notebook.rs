//! `GET /api/1/notebook`: which notebook this is, and what is held of it.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::ranges::RangesHeld;
use crate::document::ProblemDocument;
use crate::kept::off_thread;
use crate::problem::Problem;
use crate::service::Inside;

/// Which notebook this is, and what is held of it
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
pub struct NotebookHeld {
    /// The notebook's name
    pub notebook: String,
    /// What is held of it
    pub held: RangesHeld,
    /// The program's version
    pub program: String,
}

/// Which notebook this is, and what is held of it
#[utoipa::path(
    get,
    path = "/api/1/notebook",
    responses(
        (status = 200, description = "The notebook", body = NotebookHeld),
        (status = "default", description = "A problem", body = ProblemDocument, content_type = "application/problem+json"),
    )
)]
pub async fn notebook(State(inside): State<Arc<Inside>>) -> Result<Json<NotebookHeld>, Problem> {
    let held = off_thread(&inside.kept, |kept| kept.held()).await?;
    Ok(Json(NotebookHeld {
        notebook: inside.kept.notebook().to_string(),
        held: RangesHeld::of(&held),
        program: env!("CARGO_PKG_VERSION").to_string(),
    }))
}
