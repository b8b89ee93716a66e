//! `sync`: a round with the school's server. Exit 1 while the school hasn't admitted this device.

use std::sync::Mutex;

use witnessmark_app::Fault;
use witnessmark_host::{Net, net};

use super::school;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let view = net::sync(&Mutex::new(&mut *app), &Net::default())?;
    Reply::answer(view.state != "waits", school::sync_in_words(app, &view), &view)
}
