//! `second-look look`: signs what this person saw at somebody else's joints, and prints the text
//! to hand back.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::joints::Joints;
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "TEXT|@FILE")]
    text: String,
    #[command(flatten)]
    joints: Joints,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice().beside();
    let text = reading::text(&args.text)?;
    let app = session.open()?;
    let asked = app.second_look_open(text.clone())?;
    if asked.own {
        return Err(Fault::new("second-same-person"));
    }
    let what = Said::new("cli-second-what").text("machine", &asked.machine).text("title", &asked.title);
    voice.progress(&app.say(&what))?;
    let joints = args.joints.seen(app, &asked.joints, voice)?;
    let pin = args.signing.pin(&pin, app)?;
    let reply = app.second_look_sign(text, joints, pin)?;
    voice.note(&app.say(&Said::new("cli-second-signed")));
    // Alone on standard output: it goes on as it stands.
    Reply::done(reply.text.clone(), &reply)
}
