//! `POST /api/1/copy`: brings the second copy up to date while the server runs; on the machine itself only.

use std::sync::Arc;

use axum::Json;
use axum::extract::{Request, State};
use serde::Serialize;
use utoipa::ToSchema;

use crate::document::ProblemDocument;
use crate::guard::{Place, made_here};
use crate::kept::{Copied, off_thread};
use crate::problem::Problem;
use crate::service::Inside;

/// That the copy was made
#[derive(Debug, Serialize, ToSchema)]
pub struct CopyMade {
    /// `made`
    copy: &'static str,
}

/// Brings the second copy up to date, on the machine itself only
#[utoipa::path(
    post,
    path = "/api/1/copy",
    responses(
        (status = 200, description = "It is up to date", body = CopyMade),
        (status = "default", description = "A problem", body = ProblemDocument, content_type = "application/problem+json"),
    )
)]
pub async fn copy(State(inside): State<Arc<Inside>>, request: Request) -> Result<Json<CopyMade>, Problem> {
    if made_here(&request) == Place::Network {
        return Err(Problem::OnlyHere);
    }
    match off_thread(&inside.kept, |kept| kept.copy()).await? {
        Copied::Yes => Ok(Json(CopyMade { copy: "made" })),
        Copied::NoneKept => Err(Problem::NoCopy),
    }
}
