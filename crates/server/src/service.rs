//! What is served: a notebook, the app's files, to whom and within which limits.

use std::sync::Arc;

use axum::Router;
use axum::extract::{Request, State};
use axum::http::Method;
use axum::middleware::from_fn_with_state;
use axum::response::{IntoResponse, Response};
use tokio::sync::Semaphore;
use tower_http::catch_panic::CatchPanicLayer;

use crate::document::BothWords;
use crate::files::{self, AppFiles};
use crate::guard::{self, Paces};
use crate::kept::Kept;
use crate::limits::{Clock, Limits, machine_clock};
use crate::problem::Problem;
use crate::reach::Reach;
use crate::{api, front};

/// What is served.
pub struct Service {
    kept: Arc<dyn Kept>,
    files: AppFiles,
    reach: Reach,
    limits: Limits,
    clock: Clock,
}

/// The same, as requests find it.
pub struct Inside {
    pub kept: Arc<dyn Kept>,
    pub files: AppFiles,
    pub reach: Reach,
    pub limits: Limits,
    pub clock: Clock,
    pub paces: Paces,
    pub bodies: Arc<Semaphore>,
    pub words: BothWords,
}

impl Service {
    /// A notebook for this machine alone, with the page that says that the app is not here, within the usual limits.
    #[must_use]
    pub fn new(kept: Arc<dyn Kept>) -> Self {
        Self {
            kept,
            files: AppFiles::placeholder(),
            reach: Reach::ThisMachine,
            limits: Limits::USUAL,
            clock: machine_clock(),
        }
    }

    /// The same with the files of the app.
    #[must_use]
    pub fn with_files(self, files: AppFiles) -> Self {
        Self { files, ..self }
    }

    /// The same for others.
    #[must_use]
    pub fn for_reach(self, reach: Reach) -> Self {
        Self { reach, ..self }
    }

    /// The same within other limits.
    #[must_use]
    pub fn within(self, limits: Limits) -> Self {
        Self { limits, ..self }
    }

    /// The same by another clock.
    #[must_use]
    pub fn by_clock(self, clock: Clock) -> Self {
        Self { clock, ..self }
    }

    /// Its limits.
    #[must_use]
    pub const fn limits(&self) -> &Limits {
        &self.limits
    }

    /// Everything that answers, ready to be asked. Whoever accepts connections puts a [`guard::Peer`] into each request.
    pub fn router(self) -> Router {
        let inside = Arc::new(Inside {
            paces: Paces::new(self.limits, Arc::clone(&self.clock)),
            bodies: Arc::new(Semaphore::new(self.limits.bodies_at_once)),
            words: BothWords::new(),
            kept: self.kept,
            files: self.files,
            reach: self.reach,
            limits: self.limits,
            clock: self.clock,
        });
        api::routes()
            .fallback(elsewhere)
            .method_not_allowed_fallback(other_method)
            .layer(from_fn_with_state(Arc::clone(&inside), guard::let_in))
            .layer(CatchPanicLayer::custom(|_| Problem::Fault.into_response()))
            .layer(from_fn_with_state(Arc::clone(&inside), front::around))
            .with_state(inside)
    }
}

/// Everything that is no address of the API: a file of the app, or nothing.
async fn elsewhere(State(inside): State<Arc<Inside>>, request: Request) -> Response {
    if guard::is_api(request.uri().path()) {
        return Problem::NoRoute.into_response();
    }
    files::give(&inside.files, request.method(), request.uri(), request.headers())
}

async fn other_method(method: Method) -> Problem {
    Problem::method(&method)
}
