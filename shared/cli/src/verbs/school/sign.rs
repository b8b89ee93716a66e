//! `school sign`: shows what somebody prepared at the board, asks, signs it and sends it. Exit 1
//! where a program has only read it.

use std::sync::Mutex;

use witnessmark_app::views::DeskView;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;
use witnessmark_host::{Net, net};

use super::sync_in_words;
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::verdict;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "board-code", value_name = "CODE|@FILE")]
    code: String,
    #[arg(long)]
    agreed: bool,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let code = reading::text(&args.code)?;
    let app = session.open()?;
    let net = Net::default();
    let draft = net::draft(&Mutex::new(&mut *app), &net, &code)?;
    voice.progress(&in_words(app, &draft))?;
    if !args.agreed && voice.for_programs() {
        // A program reads it first, and agrees in another run.
        return Reply::answer(false, String::new(), &draft);
    }
    if !args.agreed {
        voice.agreed(&app.say(&Said::new("cli-prompt-sign")))?;
    }
    let pin = args.signing.pin(&pin, app)?;
    let view = net::sign(&Mutex::new(&mut *app), &net, &code, &pin)?;
    Reply::done(format!("{}\n{}", app.say(&Said::new("cli-draft-signed")), sync_in_words(app, &view)), &view)
}

fn in_words(app: &mut App, draft: &DeskView) -> String {
    let machine = draft.machine.clone().and_then(|id| app.machine(id).ok()).map(|page| page.card.name);
    let mut text =
        format!("{}{}\n", machine.map(|name| format!("{name}: ")).unwrap_or_default(), draft.words);
    draft.body.lines().for_each(|line| text.push_str(&format!("  {line}\n")));
    if let Some(preview) = &draft.preview {
        let would = Said::new("cli-would-be").text("verdict", &preview.headline);
        text.push_str(&format!("{}\n{}", app.say(&would), verdict::in_words(app, preview)));
    }
    text
}
