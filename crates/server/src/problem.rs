//! What can be wrong with a request. Each goes out as a problem document (RFC 9457), in the reader's language.
//!
//! A problem never tells what the system said, a path or what stood in a body: only a code, and figures and names that
//! the asker sent or may know.

use axum::body::Body;
use axum::http::{Method, StatusCode};
use axum::response::{IntoResponse, Response};
use notebook::NotebookId;
use store::StoreError;
use units::{Arg, Args, Coded};

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Problem {
    /// No such address under `/api`.
    #[error("there is nothing at this address")]
    NoRoute,
    /// No such file of the app.
    #[error("there is no such file here")]
    NoFile,
    /// The address is right and the method is not.
    #[error("this address does not take {method}")]
    Method {
        /// The method.
        method: &'static str,
    },
    /// A name in `Host` that this server does not go by: perhaps another site's name was pointed at it.
    #[error("this server does not go by the name it was asked under")]
    Host,
    /// Asked by a page of another site.
    #[error("this was asked by a page of another site")]
    Origin,
    /// Asked through a proxy that this server was not told of.
    #[error("this came through a proxy that this server was not told of")]
    Proxy,
    /// No pairing secret.
    #[error("this needs the pairing secret")]
    SecretMissing,
    /// The wrong pairing secret.
    #[error("this is not the pairing secret")]
    SecretWrong,
    /// Too many requests.
    #[error("too many requests came from there; wait {seconds} s")]
    TooMany {
        /// After so long there is room again.
        seconds: u32,
    },
    /// Too much at once for this server.
    #[error("the server is busy with others; wait {seconds} s")]
    Busy {
        /// After so long it is worth another try.
        seconds: u32,
    },
    /// A body over the limit.
    #[error("this is more than {most} bytes")]
    TooLarge {
        /// The limit.
        most: usize,
    },
    /// More lines than go into one request.
    #[error("these are more than {most} lines")]
    TooManyLines {
        /// The limit.
        most: usize,
    },
    /// More ranges than go into one request.
    #[error("these are more than {most} ranges")]
    TooManyRanges {
        /// The limit.
        most: usize,
    },
    /// A body that takes too long.
    #[error("this took longer than {seconds} s to come")]
    TooSlow {
        /// The limit.
        seconds: u64,
    },
    /// A body that breaks off.
    #[error("the request broke off")]
    BrokenOff,
    /// A content type that is not taken.
    #[error("this address takes {wanted}")]
    ContentType {
        /// The one that is.
        wanted: &'static str,
    },
    /// No JSON, or not of this shape.
    #[error("this cannot be read as what the address takes, from line {line}, column {column} on")]
    Unreadable {
        /// The line.
        line: usize,
        /// The column.
        column: usize,
    },
    /// A field that is not what it should be.
    #[error("the field \"{field}\" is not what it should be")]
    Field {
        /// The field.
        field: &'static str,
    },
    /// Lines of another notebook.
    #[error("these lines belong to notebook {theirs}; here is notebook {ours}")]
    OtherNotebook {
        /// Theirs.
        theirs: NotebookId,
        /// Ours.
        ours: NotebookId,
    },
    /// The notebook has no second copy.
    #[error("this notebook is kept without a second copy")]
    NoCopy,
    /// For this machine only.
    #[error("this may be asked on the machine itself only")]
    OnlyHere,
    /// The store has no room left.
    #[error("there is no room left there to keep this; nothing of it was kept")]
    StoreFull,
    /// The store may not be written to.
    #[error("the notebook may be read there but not written to")]
    StoreReadOnly,
    /// Somebody else writes to the store.
    #[error("another program is writing to the notebook; wait a little")]
    StoreLocked,
    /// A fault of ours, or something that only we should know.
    #[error("something went wrong here; nothing of it was kept by halves")]
    Fault,
}

impl Problem {
    /// The status it goes out with.
    #[must_use]
    pub const fn status(&self) -> StatusCode {
        match self {
            Self::NoRoute | Self::NoFile | Self::NoCopy => StatusCode::NOT_FOUND,
            Self::Method { .. } => StatusCode::METHOD_NOT_ALLOWED,
            Self::Host | Self::Origin | Self::Proxy | Self::OnlyHere => StatusCode::FORBIDDEN,
            Self::SecretMissing | Self::SecretWrong => StatusCode::UNAUTHORIZED,
            Self::TooMany { .. } => StatusCode::TOO_MANY_REQUESTS,
            Self::Busy { .. } | Self::StoreLocked => StatusCode::SERVICE_UNAVAILABLE,
            Self::TooLarge { .. } | Self::TooManyLines { .. } | Self::TooManyRanges { .. } => {
                StatusCode::PAYLOAD_TOO_LARGE
            }
            Self::TooSlow { .. } => StatusCode::REQUEST_TIMEOUT,
            Self::BrokenOff | Self::Unreadable { .. } => StatusCode::BAD_REQUEST,
            Self::ContentType { .. } => StatusCode::UNSUPPORTED_MEDIA_TYPE,
            Self::Field { .. } => StatusCode::UNPROCESSABLE_ENTITY,
            Self::OtherNotebook { .. } => StatusCode::CONFLICT,
            Self::StoreFull => StatusCode::INSUFFICIENT_STORAGE,
            Self::StoreReadOnly | Self::Fault => StatusCode::INTERNAL_SERVER_ERROR,
        }
    }

    /// After how many seconds another try is worth it, where that is the matter.
    #[must_use]
    pub const fn retry_after(&self) -> Option<u32> {
        match self {
            Self::TooMany { seconds } | Self::Busy { seconds } => Some(*seconds),
            // Our own choice: another writer is done in less.
            Self::StoreLocked => Some(2),
            _ => None,
        }
    }

    /// The problem with a method.
    #[must_use]
    pub fn method(method: &Method) -> Self {
        // Named out of a list of our own, so that nothing the asker made up comes back.
        const NAMED: [&str; 9] =
            ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE", "CONNECT"];
        let method = NAMED.into_iter().find(|name| *name == method.as_str()).unwrap_or("this method");
        Self::Method { method }
    }

    /// The problem of an answer that has a status and nothing else.
    #[must_use]
    pub fn of_status(status: StatusCode, method: &Method) -> Self {
        match status {
            StatusCode::NOT_FOUND => Self::NoRoute,
            StatusCode::METHOD_NOT_ALLOWED => Self::method(method),
            status if status.is_client_error() => Self::BrokenOff,
            _ => Self::Fault,
        }
    }

    /// What may be told of what a store says: that there is no room, or that somebody else writes; the rest is ours.
    #[must_use]
    pub const fn of_store(error: &StoreError) -> Self {
        match error {
            StoreError::Full => Self::StoreFull,
            StoreError::ReadOnly => Self::StoreReadOnly,
            StoreError::Locked => Self::StoreLocked,
            StoreError::Damaged { .. }
            | StoreError::Newer { .. }
            | StoreError::Other
            | StoreError::Refused { .. }
            | StoreError::HeldOpen
            | StoreError::Closed
            | StoreError::System { .. } => Self::Fault,
        }
    }
}

impl Coded for Problem {
    fn code(&self) -> &'static str {
        match self {
            Self::NoRoute => "server_no_route",
            Self::NoFile => "server_no_file",
            Self::Method { .. } => "server_method",
            Self::Host => "server_host",
            Self::Origin => "server_origin",
            Self::Proxy => "server_proxy",
            Self::SecretMissing => "server_secret_missing",
            Self::SecretWrong => "server_secret_wrong",
            Self::TooMany { .. } => "server_too_many",
            Self::Busy { .. } => "server_busy",
            Self::TooLarge { .. } => "server_too_large",
            Self::TooManyLines { .. } => "server_too_many_lines",
            Self::TooManyRanges { .. } => "server_too_many_ranges",
            Self::TooSlow { .. } => "server_too_slow",
            Self::BrokenOff => "server_broken_off",
            Self::ContentType { .. } => "server_content_type",
            Self::Unreadable { .. } => "server_unreadable",
            Self::Field { .. } => "server_field",
            Self::OtherNotebook { .. } => "server_other_notebook",
            Self::NoCopy => "server_no_copy",
            Self::OnlyHere => "server_only_here",
            Self::StoreFull => "server_store_full",
            Self::StoreReadOnly => "server_store_read_only",
            Self::StoreLocked => "server_store_locked",
            Self::Fault => "server_fault",
        }
    }

    fn args(&self) -> Args {
        let count = |count: usize| Arg::Count(u32::try_from(count).unwrap_or(u32::MAX));
        let args = Args::new();
        match self {
            Self::Method { method } => args.with("method", Arg::Text((*method).to_string())),
            Self::TooMany { seconds } | Self::Busy { seconds } => args.with("seconds", Arg::Count(*seconds)),
            Self::TooLarge { most } | Self::TooManyLines { most } | Self::TooManyRanges { most } => {
                args.with("most", count(*most))
            }
            Self::TooSlow { seconds } => {
                args.with("seconds", Arg::Count(u32::try_from(*seconds).unwrap_or(u32::MAX)))
            }
            Self::ContentType { wanted } => args.with("wanted", Arg::Text((*wanted).to_string())),
            Self::Unreadable { line, column } => {
                args.with("line", count(*line)).with("column", count(*column))
            }
            Self::Field { field } => args.with("field", Arg::Text((*field).to_string())),
            Self::OtherNotebook { theirs, ours } => {
                args.with("theirs", Arg::Text(theirs.to_string())).with("ours", Arg::Text(ours.to_string()))
            }
            _ => args,
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::Host => "use the address that the server showed, or give the name when it is started",
            Self::Proxy => "start the server with the name that the proxy goes by and a pairing secret",
            Self::SecretMissing | Self::SecretWrong => "pair again with the secret that the server showed",
            Self::TooLarge { .. } => "send it in smaller parts",
            Self::TooManyLines { .. } => "send them in smaller parts",
            Self::TooSlow { .. } | Self::BrokenOff => "send it again; what came already is known",
            Self::OtherNotebook { .. } => "sync with the server of the same notebook",
            Self::StoreFull => "make room there; what was kept before is safe",
            _ => return None,
        };
        Some(hint.to_string())
    }
}

/// Leaves the wording to `front`, which knows who reads.
impl IntoResponse for Problem {
    fn into_response(self) -> Response {
        let mut response = Response::new(Body::empty());
        *response.status_mut() = self.status();
        response.extensions_mut().insert(self);
        response
    }
}
