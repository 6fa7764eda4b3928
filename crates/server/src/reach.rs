//! Who may ask: this machine alone, whoever comes through a proxy, or the network. Beyond this machine a pairing secret
//! is a must, and the types leave no way around it.

use crate::secret::Secret;

/// Who may ask.
#[derive(Clone, Debug)]
pub enum Reach {
    /// This machine alone.
    ThisMachine,
    /// This machine, and whoever a proxy on it lets through.
    BehindProxy {
        /// The names the proxy goes by, without a port.
        names: Vec<String>,
        /// What they must know.
        secret: Secret,
    },
    /// The network this machine is in.
    Network {
        /// Names beside its numbers, without a port.
        names: Vec<String>,
        /// What they must know.
        secret: Secret,
    },
}

impl Reach {
    /// What askers must know, where they must.
    #[must_use]
    pub const fn secret(&self) -> Option<&Secret> {
        match self {
            Self::ThisMachine => None,
            Self::BehindProxy { secret, .. } | Self::Network { secret, .. } => Some(secret),
        }
    }

    /// The names that were given.
    #[must_use]
    pub fn names(&self) -> &[String] {
        match self {
            Self::ThisMachine => &[],
            Self::BehindProxy { names, .. } | Self::Network { names, .. } => names,
        }
    }
}
