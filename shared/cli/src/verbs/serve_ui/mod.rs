//! `serve-ui`: the screens in a browser of this machine, and of no other.

mod files;
mod gate;
mod refusal;
mod routes;

use std::net::Ipv4Addr;
use std::time::Duration;

use serde_json::json;
use tokio::net::TcpListener;
use witnessmark_app::{App, Fault};

use crate::reply::{self, Reply};
use crate::session::Session;
pub use files::bytes as screen;
use gate::Gate;

/// How long open requests may take to end once the server was told to stop.
const GRACE: Duration = Duration::from_secs(5);

/// The same port at every start where it is free: a page left open from before a restart goes on
/// once the new address was opened beside it, and nothing typed in it is lost.
const USUAL_PORT: u16 = 7420;

#[derive(clap::Args)]
pub struct Args {
    #[arg(long)]
    port: Option<u16>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let runtime =
        tokio::runtime::Builder::new_current_thread().enable_all().build().map_err(Fault::internal)?;
    let app = session.take_for_server()?;
    let served = runtime.block_on(serve(args.port, app, session.json));
    // A call still at work is one transaction: it is whole or it isn't there.
    runtime.shutdown_timeout(GRACE);
    served?;
    Ok(Reply::silent())
}

async fn serve(port: Option<u16>, app: App, json: bool) -> Result<(), Fault> {
    let address = format!("{}:{}", Ipv4Addr::LOCALHOST, port.unwrap_or(USUAL_PORT));
    let unusable = |why: std::io::Error| Fault::new("address").text("address", &address).text("why", why);
    let listener = match port {
        Some(port) => TcpListener::bind((Ipv4Addr::LOCALHOST, port)).await,
        None => match TcpListener::bind((Ipv4Addr::LOCALHOST, USUAL_PORT)).await {
            Ok(listener) => Ok(listener),
            Err(_) => TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await,
        },
    };
    let listener = listener.map_err(unusable)?;
    let port = listener.local_addr().map_err(unusable)?.port();
    let (gate, token) = Gate::new(port)?;
    let address = format!("http://{}:{port}/?token={token}", Ipv4Addr::LOCALHOST);
    if json {
        reply::print(&json!({ "address": address }).to_string())?;
    } else {
        reply::print(&address)?;
    }
    let (stopping, mut stopped) = tokio::sync::watch::channel(false);
    let server = axum::serve(listener, routes::all(gate, app)).with_graceful_shutdown(async move {
        told_to_stop().await;
        // The receiver is gone only when the server is.
        let _ = stopping.send(true);
    });
    tokio::select! {
        ended = server => ended.map_err(Fault::internal),
        () = async {
            let _ = stopped.wait_for(|stop| *stop).await;
            tokio::time::sleep(GRACE).await;
        } => Ok(()),
    }
}

/// Ctrl-C, or the system's polite word to end.
async fn told_to_stop() {
    #[cfg(unix)]
    {
        use tokio::signal::unix::{SignalKind, signal};
        if let Ok(mut terminate) = signal(SignalKind::terminate()) {
            tokio::select! {
                _ = tokio::signal::ctrl_c() => {}
                _ = terminate.recv() => {}
            }
            return;
        }
    }
    // Where no signal can be heard the server runs until it is killed; nothing is lost by that.
    if tokio::signal::ctrl_c().await.is_err() {
        std::future::pending::<()>().await;
    }
}
