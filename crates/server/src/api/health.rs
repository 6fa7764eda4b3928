//! `GET /api/1/health`: whether the notebook can be read.

use std::sync::Arc;

use axum::Json;
use axum::extract::State;
use serde::Serialize;
use utoipa::ToSchema;

use crate::document::ProblemDocument;
use crate::kept::off_thread;
use crate::problem::Problem;
use crate::service::Inside;

/// That all is well
#[derive(Debug, Serialize, ToSchema)]
pub struct Health {
    /// `ready`
    status: &'static str,
    /// The program's version
    program: &'static str,
}

/// Whether the notebook can be read
#[utoipa::path(
    get,
    path = "/api/1/health",
    responses(
        (status = 200, description = "It can", body = Health),
        (status = "default", description = "A problem", body = ProblemDocument, content_type = "application/problem+json"),
    )
)]
pub async fn health(State(inside): State<Arc<Inside>>) -> Result<Json<Health>, Problem> {
    off_thread(&inside.kept, |kept| kept.held().map(drop)).await?;
    Ok(Json(Health { status: "ready", program: env!("CARGO_PKG_VERSION") }))
}
