//! `school join`: joins by the code that the root shows back, or by the server's address.

use std::sync::Mutex;

use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;
use witnessmark_host::{Net, net};

use super::words::in_words;
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;
use crate::voice::Voice;

/// How a code that answers an introduction begins.
const ANSWER: &str = "WM1ADMIT:";

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "join", value_name = "CODE|@FILE|ADDRESS")]
    by: String,
    #[arg(long, value_name = "CODE")]
    school_code: Option<String>,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let by = reading::text(&args.by)?;
    let app = session.open()?;
    let view = if by.starts_with(ANSWER) {
        let pin = args.signing.pin(&pin, app)?;
        app.school_join(by, pin)?
    } else {
        let net = Net::default();
        // Joining makes a key where there is none yet, and the look wants to know who looks.
        let pin = args.signing.pin(&pin, app)?;
        meant(app, &net, &by, args.school_code.as_deref(), voice)?;
        net::follow(&Mutex::new(&mut *app), &net, &by, &pin)?
    };
    Reply::done(in_words(app, &view), &view)
}

/// Whether the school at that address is the one that is meant. Its own root's device knows.
fn meant(app: &mut App, net: &Net, address: &str, code: Option<&str>, voice: Voice) -> Result<(), Fault> {
    let card = net::look(&Mutex::new(&mut *app), net, address)?.school;
    if app.school()?.school.is_some_and(|own| own.id == card.id) {
        return Ok(());
    }
    match code {
        Some(code) if code.trim().eq_ignore_ascii_case(&card.code) => Ok(()),
        Some(code) => Err(Fault::new("school-other")
            .text("name", card.name)
            .text("code", card.code)
            .text("given", code)),
        None => {
            let prompt = Said::new("cli-prompt-school").text("name", &card.name).text("code", &card.code);
            voice.agreed(&app.say(&prompt))
        }
    }
}
