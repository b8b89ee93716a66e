//! `server`: a school's server, until it is told to stop; its backups; its board's passphrase.

mod at;
pub mod backup;
mod faults;
mod kept;
pub mod passphrase;
pub mod restore;

use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::Arc;

use serde_json::json;
use witnessmark_app::{Fault, Platform};
use witnessmark_core::said::Said;
use witnessmark_host::{System, address};
use witnessmark_server::board::{self, Board};
use witnessmark_server::run::{Config, LogForm, TlsFiles};

use super::serve_ui::screen;
use crate::reply::{self, Reply};
use crate::session::Session;
use at::At;
use faults::told;

#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: At,
    #[arg(long, value_name = "ADDRESS", default_value = "127.0.0.1:7430")]
    listen: SocketAddr,
    #[arg(id = "founding-file", long = "school", value_name = "FILE")]
    school: Option<PathBuf>,
    #[arg(id = "public-address", long = "address", value_name = "ADDRESS")]
    address: Option<String>,
    #[arg(long, value_name = "FILE", requires = "tls_key")]
    tls_cert: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "tls_cert")]
    tls_key: Option<PathBuf>,
    #[arg(long)]
    plain_http: bool,
    #[arg(long)]
    behind_proxy: bool,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let json = session.json;
    let folder = session.server_folder()?;
    let database = args.at.database(session)?;
    let public = args.address.as_deref().map(address::read).transpose()?;
    let tls = args.tls_cert.zip(args.tls_key).map(|(cert, key)| TlsFiles { cert, key });
    let scheme = if tls.is_some() { "https" } else { "http" };
    let pages = board::Config {
        folder,
        address: public.clone(),
        tls: tls.is_some(),
        pages: screen,
        // Nobody signs at a board: there is no secret that a keychain would guard.
        platforms: Arc::new(|| Box::new(System::bare()) as Box<dyn Platform>),
    };
    let config = Config {
        school: args.school,
        tls,
        plain: args.plain_http,
        names: public
            .iter()
            .filter_map(|public| public.split_once("://"))
            .map(|(_, name)| name.into())
            .collect(),
        proxied: args.behind_proxy,
        log: if json { LogForm::Json } else { LogForm::Plain },
        ..Config::on(args.listen, database)
    };
    let listens = session.unkept()?.say(&Said::new("cli-server-listens"));
    let ready = |at: SocketAddr| {
        let address = public.clone().unwrap_or_else(|| format!("{scheme}://{at}"));
        let line = if json {
            json!({ "address": address, "listens": at.to_string() }).to_string()
        } else {
            format!("{listens} {address}")
        };
        // Devices are answered whether anybody reads this or not.
        drop(reply::print(&line));
    };
    let routes = |server: &witnessmark_server::Server| Board::start(server.clone(), pages).router();
    witnessmark_server::run(&config, routes, ready).map_err(told)?;
    Ok(Reply::silent())
}
