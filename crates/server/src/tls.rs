//! A certificate and its key, out of files that the operator has: the only way from plain HTTP to HTTPS without a proxy.
//!
//! `tokio-rustls` alone does it, since connections are accepted in [`crate::listen`] anyway; a server crate on top of it
//! would bring an accept loop that this one does not need.

use std::path::Path;
use std::sync::Arc;

use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::ServerConfig;
use tokio_rustls::rustls::pki_types::pem::PemObject;
use tokio_rustls::rustls::pki_types::{CertificateDer, PrivateKeyDer};

/// A certificate that can be shown to those who connect.
#[derive(Clone)]
pub struct Certificate(Arc<ServerConfig>);

impl core::fmt::Debug for Certificate {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.write_str("Certificate(not shown)")
    }
}

/// Why a certificate cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum CertificateError {
    /// The certificate's file.
    #[error("this file holds no certificate in PEM form: {why}")]
    Certificate {
        /// What the reader says.
        why: String,
    },
    /// The key's file.
    #[error("this file holds no private key in PEM form: {why}")]
    Key {
        /// What the reader says.
        why: String,
    },
    /// The two do not belong together, or are of a kind that is not taken.
    #[error("certificate and key cannot be used together: {why}")]
    Pair {
        /// What the library says.
        why: String,
    },
}

impl Certificate {
    /// Reads the chain of certificates, the server's own first, and its key, both in PEM form (RFC 7468).
    ///
    /// *Errors*: a file that cannot be read or is none; a key of another certificate.
    pub fn of_files(certificate: &Path, key: &Path) -> Result<Self, CertificateError> {
        let chain: Vec<CertificateDer<'static>> = CertificateDer::pem_file_iter(certificate)
            .and_then(Iterator::collect)
            .map_err(|error| CertificateError::Certificate { why: error.to_string() })?;
        if chain.is_empty() {
            return Err(CertificateError::Certificate { why: "none in it".to_string() });
        }
        let key = PrivateKeyDer::from_pem_file(key)
            .map_err(|error| CertificateError::Key { why: error.to_string() })?;
        let pair = |error: tokio_rustls::rustls::Error| CertificateError::Pair { why: error.to_string() };
        let provider = Arc::new(tokio_rustls::rustls::crypto::ring::default_provider());
        let mut config = ServerConfig::builder_with_provider(provider)
            .with_safe_default_protocol_versions()
            .map_err(pair)?
            .with_no_client_auth()
            .with_single_cert(chain, key)
            .map_err(pair)?;
        config.alpn_protocols = vec![b"http/1.1".to_vec()];
        Ok(Self(Arc::new(config)))
    }

    pub(crate) fn acceptor(&self) -> TlsAcceptor {
        TlsAcceptor::from(Arc::clone(&self.0))
    }
}
