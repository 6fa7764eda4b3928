//! Reading a body: of the right type, no larger and no slower than it may be, and few at once.

use std::sync::Arc;
use std::time::Duration;

use axum::body::HttpBody;
use axum::body::{Body, Bytes};
use axum::extract::Request;
use axum::http::header;
use http_body_util::{BodyExt, LengthLimitError, Limited};
use tokio::sync::OwnedSemaphorePermit;

use crate::problem::Problem;
use crate::service::Inside;

/// How long a request waits for others to be done. Our own choice: what a person takes for slow and not for broken.
const PATIENCE: Duration = Duration::from_secs(5);
/// After so long it is worth another try. Our own choice: a sync takes about that long.
const TRY_AGAIN_SECONDS: u32 = 5;

/// A body, and the leave to have one that large in memory.
pub struct Held {
    /// The body.
    pub bytes: Bytes,
    _leave: OwnedSemaphorePermit,
}

/// Reads the body of a request.
///
/// *Errors*: of another type, too large, too slow, broken off; too many others at once.
pub async fn read(
    inside: &Inside,
    request: Request,
    wanted: &'static str,
    most: usize,
) -> Result<Held, Problem> {
    let mut types = request.headers().get_all(header::CONTENT_TYPE).iter();
    let first = types.next().and_then(|kind| kind.to_str().ok()).unwrap_or_default();
    let named = first.split(';').next().unwrap_or_default().trim();
    if !named.eq_ignore_ascii_case(wanted) || types.next().is_some() {
        return Err(Problem::ContentType { wanted });
    }
    // Told before it is read, where its length is told.
    if request.body().size_hint().lower() > most as u64 {
        return Err(Problem::TooLarge { most });
    }
    let leave = tokio::time::timeout(PATIENCE, Arc::clone(&inside.bodies).acquire_owned()).await;
    let Ok(Ok(leave)) = leave else { return Err(Problem::Busy { seconds: TRY_AGAIN_SECONDS }) };
    let time = inside.limits.body_time;
    let bytes = tokio::time::timeout(time, collect(request.into_body(), most))
        .await
        .map_err(|_| Problem::TooSlow { seconds: time.as_secs() })??;
    Ok(Held { bytes, _leave: leave })
}

async fn collect(body: Body, most: usize) -> Result<Bytes, Problem> {
    match Limited::new(body, most).collect().await {
        Ok(body) => Ok(body.to_bytes()),
        Err(error) if error.downcast_ref::<LengthLimitError>().is_some() => Err(Problem::TooLarge { most }),
        Err(_) => Err(Problem::BrokenOff),
    }
}
