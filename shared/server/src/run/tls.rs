//! TLS, by rustls with ring.

use std::path::Path;
use std::sync::Arc;

use axum_server::tls_rustls::RustlsConfig;
use rustls::ServerConfig;
use rustls::pki_types::pem::PemObject;
use rustls::pki_types::{CertificateDer, PrivateKeyDer};

use super::{ServerFault, TlsFiles};

/// What these files say.
pub(super) fn read(files: &TlsFiles) -> Result<RustlsConfig, ServerFault> {
    let unread = |file: &Path, why: rustls::pki_types::pem::Error| ServerFault::File {
        file: file.into(),
        why: why.to_string(),
    };
    let chain: Vec<CertificateDer<'static>> = CertificateDer::pem_file_iter(&files.cert)
        .and_then(Iterator::collect)
        .map_err(|why| unread(&files.cert, why))?;
    let key = PrivateKeyDer::from_pem_file(&files.key).map_err(|why| unread(&files.key, why))?;
    let bad = |why: rustls::Error| ServerFault::Certificate(why.to_string());
    let mut config = ServerConfig::builder_with_provider(Arc::new(rustls::crypto::ring::default_provider()))
        .with_safe_default_protocol_versions()
        .map_err(bad)?
        .with_no_client_auth()
        .with_single_cert(chain, key)
        .map_err(bad)?;
    config.alpn_protocols = vec![b"h2".to_vec(), b"http/1.1".to_vec()];
    Ok(RustlsConfig::from_config(Arc::new(config)))
}
