//! The notebook and the app's files over HTTP.
//!
//! A [`Service`] gives and takes lines by ranges of numbers, so that sending the same again changes nothing, and gives the
//! app's files as they were built. By itself it serves the machine it runs on; beyond that ([`Reach`]) every request for
//! the notebook must know the pairing [`Secret`]. [`run`] accepts connections until it is told to stop. Nothing is computed
//! here: the app and the command do that.

mod api;
mod body;
mod document;
mod exchange;
mod files;
mod findings;
mod front;
mod guard;
mod kept;
mod limits;
mod listen;
mod log;
mod problem;
mod quality;
mod reach;
mod run;
mod secret;
mod service;
mod tls;

pub use api::{LineRefused, LinesTaken, LinesWanted, NotebookHeld, RangesHeld, RangesWrong, openapi};
pub use document::ProblemDocument;
pub use exchange::{Answered, ExchangeError, Exchanged, Other, PlainHttp, exchange};
pub use files::{AppFile, AppFiles, FilesError};
pub use findings::{how_to_get_https, what_plain_http_cannot_do};
pub use guard::{Carried, Peer, Place, plain_name};
pub use kept::{Copied, Kept, OneAtATime};
pub use limits::{Clock, Limits, Pace, machine_clock};
pub use listen::serve;
pub use log::{log_to, log_to_standard_error};
pub use problem::Problem;
pub use reach::Reach;
pub use run::{Listening, PORT, RunError, listen, own_address, run};
pub use secret::{Match, Secret, TooShort, chance};
pub use service::Service;
pub use tls::{Certificate, CertificateError};
