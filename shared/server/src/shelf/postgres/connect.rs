//! Connections: how many, how long they are waited for, and their TLS.

use std::sync::Arc;
use std::time::Duration;

use deadpool_postgres::{Hook, HookError, Manager, ManagerConfig, Pool, RecyclingMethod, Runtime};
use rustls::{ClientConfig, RootCertStore};
use tokio_postgres::config::SslMode;
use tokio_postgres::{Config, NoTls};
use tokio_postgres_rustls::MakeRustlsConnect;

use crate::ShelfFault;

/// Enough for a process's work; PostgreSQL has a hundred for everybody unless told otherwise.
const CONNECTIONS: usize = 8;
/// How long a connection is waited for.
const PATIENCE: Duration = Duration::from_secs(10);

/// A writer that holds a lock for longer is told to be busy; one that hangs inside a transaction
/// is cut off, so that the others go on. Statements are planned each time: a plan made while the log
/// was short would read all of it once it is long (measured: twenty times slower).
const MANNERS: &str = "SET lock_timeout = '10s'; SET idle_in_transaction_session_timeout = '60s';
    SET plan_cache_mode = force_custom_plan";

pub(super) fn pool(mut config: Config) -> Result<Pool, ShelfFault> {
    if config.get_connect_timeout().is_none() {
        config.connect_timeout(PATIENCE);
    }
    if config.get_application_name().is_none() {
        config.application_name("witnessmark");
    }
    let manners = ManagerConfig { recycling_method: RecyclingMethod::Fast };
    let manager = if config.get_ssl_mode() == SslMode::Disable {
        Manager::from_config(config, NoTls, manners)
    } else {
        Manager::from_config(config, MakeRustlsConnect::new(tls()?), manners)
    };
    Pool::builder(manager)
        .max_size(CONNECTIONS)
        .runtime(Runtime::Tokio1)
        .wait_timeout(Some(PATIENCE))
        .create_timeout(Some(PATIENCE))
        .post_create(Hook::async_fn(|client, _| {
            Box::pin(async move { client.batch_execute(MANNERS).await.map_err(HookError::Backend) })
        }))
        .build()
        .map_err(|fault| ShelfFault::Other(fault.to_string()))
}

fn tls() -> Result<ClientConfig, ShelfFault> {
    let mut roots = RootCertStore::empty();
    let (taken, _) = roots.add_parsable_certificates(rustls_native_certs::load_native_certs().certs);
    if taken == 0 {
        return Err(ShelfFault::Unreachable(
            "this system has no certificates to check the database server by; install its CA \
             certificates, or name a file of them in SSL_CERT_FILE"
                .into(),
        ));
    }
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let config = ClientConfig::builder_with_provider(provider)
        .with_safe_default_protocol_versions()
        .map_err(|fault| ShelfFault::Other(fault.to_string()))?;
    Ok(config.with_root_certificates(roots).with_no_client_auth())
}
