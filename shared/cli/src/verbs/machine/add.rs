//! `machine add`: registers a machine, signed.

use std::collections::BTreeMap;

use witnessmark_app::Fault;
use witnessmark_core::record::Machine;
use witnessmark_core::said::Said;

use super::described::{Described, unknown_reserve};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(long, value_name = "NAME")]
    name: String,
    #[arg(long, value_name = "ID")]
    engine: String,
    #[command(flatten)]
    described: Described,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let mut machine = Machine {
        wing_load: None,
        weight: None,
        name: args.name,
        engine: args.engine,
        fitted: BTreeMap::from([("reserve".to_owned(), String::new())]),
        reserve: Some(unknown_reserve()),
        hours: 0.0,
        flights: 0,
        note: String::new(),
        invented: false,
    };
    args.described.put_into(&mut machine)?;
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.machine_save(String::new(), Some(machine), pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-added")), super::in_words(app, &page.card));
    Reply::done(text, &page)
}
