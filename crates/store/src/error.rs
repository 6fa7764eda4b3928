//! Why something could not be kept or read. Nothing is ever half kept.

use units::{Arg, Args, Coded};

/// What went wrong, and what it means for the one who writes.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum StoreError {
    /// There is no room left.
    #[error("there is no room left to keep this; nothing of it was kept")]
    Full,
    /// It may be read but not written to.
    #[error("the notebook may be read here but not written to")]
    ReadOnly,
    /// Somebody else is writing and does not let go.
    #[error("another program is writing to this notebook and does not let go")]
    Locked,
    /// It is damaged.
    #[error("the notebook is damaged here: {what}")]
    Damaged {
        /// What was found.
        what: String,
    },
    /// A later program made it.
    #[error("this notebook was opened by a newer program (store version {version}); this one knows {known}")]
    Newer {
        /// Its version.
        version: u32,
        /// The newest that this program knows.
        known: u32,
    },
    /// It is another notebook than was expected, or none.
    #[error("this is not the notebook that was expected")]
    Other,
    /// A browser lets this page keep nothing.
    #[error("this browser lets this page keep nothing: {what}")]
    Refused {
        /// What it says.
        what: String,
    },
    /// Another window holds the notebook open as an older program knew it.
    #[error("another window holds the notebook open with an older program and does not let go")]
    HeldOpen,
    /// This window let go of the notebook.
    #[error(
        "this window has let go of the notebook, for a newer program or because what it kept was cleared"
    )]
    Closed,
    /// Anything else that the system says.
    #[error("this could not be kept or read: {what}")]
    System {
        /// What the system says.
        what: String,
    },
}

impl Coded for StoreError {
    fn code(&self) -> &'static str {
        match self {
            Self::Full => "store_full",
            Self::ReadOnly => "store_read_only",
            Self::Locked => "store_locked",
            Self::Damaged { .. } => "store_damaged",
            Self::Newer { .. } => "store_newer",
            Self::Other => "store_other",
            Self::Refused { .. } => "store_refused",
            Self::HeldOpen => "store_held_open",
            Self::Closed => "store_closed",
            Self::System { .. } => "store_system",
        }
    }

    fn args(&self) -> Args {
        match self {
            Self::Full | Self::ReadOnly | Self::Locked | Self::Other | Self::HeldOpen | Self::Closed => {
                Args::new()
            }
            Self::Damaged { what } | Self::Refused { what } | Self::System { what } => {
                Args::new().with("what", Arg::Text(what.clone()))
            }
            Self::Newer { version, known } => {
                Args::new().with("version", Arg::Count(*version)).with("known", Arg::Count(*known))
            }
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::Full => "make room and write it again; what was kept before is safe",
            Self::ReadOnly => "copy the notebook to where you may write, or ask who may",
            Self::Locked => "close the other program, or wait, and try again",
            Self::Damaged { .. } => "take the second copy beside it, or import the last exported file",
            Self::Newer { .. } => "update this program; the notebook was left as it is",
            Self::Other => "name the folder of the right notebook",
            Self::Refused { .. } => {
                "leave private browsing, or allow this site to keep data, and load the page again"
            }
            Self::HeldOpen => "close the other window and load this page again",
            Self::Closed => "load this page again; what was kept before is safe unless it was cleared",
            Self::System { .. } => "try again; what was kept before is safe",
        };
        Some(hint.to_string())
    }
}
