//! The server as a process: told what to do by a [`Config`], until it is told to stop.

mod config;
mod fault;
mod tasks;
mod tls;

use std::fs;
use std::future::Future;
use std::net::{SocketAddr, TcpListener};
use std::time::Duration;

use axum::Router;
use axum_server::Handle;
use axum_server::tls_rustls::{RustlsAcceptor, RustlsConfig};
use tokio::runtime::{Builder, Runtime};

use crate::http::PATIENCE;
use crate::school::{School, adopt};
use crate::shelf::Shelf;
use crate::{Clock, Server, router};

pub use config::{Config, LogForm, TlsFiles};
pub use fault::ServerFault;

/// How long requests may take to end once the server was told to stop.
const GRACE: Duration = Duration::from_secs(10);

/// Serves until the system's word to end (Ctrl-C, SIGTERM). `board` makes the board's routes; `ready`
/// is told the address once requests are answered there.
///
/// # Errors
/// [`ServerFault`].
pub fn run(
    config: &Config,
    board: impl FnOnce(&Server) -> Router,
    ready: impl FnOnce(SocketAddr),
) -> Result<(), ServerFault> {
    run_until(config, board, ready, told_to_stop())
}

/// Serves until `stop` ends.
///
/// # Errors
/// [`ServerFault`].
pub fn run_until(
    config: &Config,
    board: impl FnOnce(&Server) -> Router,
    ready: impl FnOnce(SocketAddr),
    stop: impl Future<Output = ()> + Send,
) -> Result<(), ServerFault> {
    write_log(config.log);
    if config.tls.is_none() && !config.plain && !config.listen.ip().is_loopback() {
        return Err(ServerFault::Plain(config.listen));
    }
    let tls = config.tls.as_ref().map(tls::read).transpose()?;
    let school = school(config)?;
    let server =
        Server::new(school, Clock::system(), &config.limits).known_as(config.names.clone(), config.proxied);
    let routes = router(&server, board(&server));
    let (listener, address) = listen(config.listen)?;
    let runtime = runtime()?;
    let served = runtime.block_on(async {
        let handle = Handle::new();
        let serving = tokio::spawn(serve(listener, tls, handle.clone(), routes));
        let tending = tokio::spawn(tasks::tend(server.clone()));
        if handle.listening().await.is_some() {
            tracing::info!(%address, school = %server.school().id(), "listening");
            ready(address);
            stop.await;
        }
        tracing::info!("stopping");
        tending.abort();
        server.stop();
        handle.graceful_shutdown(Some(GRACE));
        serving.await
    });
    // A request still at work is one transaction: it is whole or it isn't there.
    runtime.shutdown_timeout(GRACE);
    let system = |why: String| ServerFault::System(why);
    served.map_err(|why| system(why.to_string()))?.map_err(|why| system(why.to_string()))
}

fn school(config: &Config) -> Result<School, ServerFault> {
    let shelf = Shelf::open(&config.database)?;
    let Some(file) = &config.school else { return School::open(shelf) };
    let unread = |why: std::io::Error| ServerFault::File { file: file.clone(), why: why.to_string() };
    adopt(shelf, &fs::read_to_string(file).map_err(unread)?)
}

fn listen(address: SocketAddr) -> Result<(TcpListener, SocketAddr), ServerFault> {
    let unusable = |why: std::io::Error| ServerFault::Address { address, why: why.to_string() };
    let listener = TcpListener::bind(address).map_err(unusable)?;
    listener.set_nonblocking(true).map_err(unusable)?;
    let bound = listener.local_addr().map_err(unusable)?;
    Ok((listener, bound))
}

fn runtime() -> Result<Runtime, ServerFault> {
    let built = Builder::new_multi_thread().enable_all().thread_name("witnessmark").build();
    built.map_err(|why| ServerFault::System(why.to_string()))
}

async fn serve(
    listener: TcpListener,
    tls: Option<RustlsConfig>,
    handle: Handle<SocketAddr>,
    routes: Router,
) -> std::io::Result<()> {
    let server = axum_server::from_tcp(listener)?.handle(handle).first_request_timeout(PATIENCE);
    let routes = routes.into_make_service_with_connect_info::<SocketAddr>();
    match tls {
        Some(tls) => server.acceptor(RustlsAcceptor::new(tls)).serve(routes).await,
        None => server.serve(routes).await,
    }
}

/// Ctrl-C, or the system's polite word to end. Where no signal can be heard the server runs until it is
/// killed; nothing is lost by that.
async fn told_to_stop() {
    #[cfg(unix)]
    if let Ok(mut terminate) = tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate()) {
        tokio::select! {
            _ = tokio::signal::ctrl_c() => {}
            _ = terminate.recv() => {}
        }
        return;
    }
    if tokio::signal::ctrl_c().await.is_err() {
        std::future::pending::<()>().await;
    }
}

/// Where somebody else has set up a log already, that one is used.
fn write_log(form: LogForm) {
    let lines = || {
        tracing_subscriber::fmt()
            .with_max_level(tracing::Level::INFO)
            .with_writer(std::io::stderr)
            .with_ansi(false)
            .with_target(false)
    };
    let _ = match form {
        LogForm::Plain => lines().try_init(),
        LogForm::Json => lines().json().flatten_event(true).try_init(),
        LogForm::Silent => return,
    };
}
