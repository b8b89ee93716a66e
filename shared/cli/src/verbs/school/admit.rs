//! `school admit`: admits a device, by the code that it shows (and prints the text to show back), or
//! one that waits at the server (and lets the server know).

use std::sync::Mutex;

use chrono::NaiveDate;
use witnessmark_app::views::ApplicantView;
use witnessmark_app::{App, Fault};
use witnessmark_core::record::Role;
use witnessmark_core::said::Said;
use witnessmark_host::{Net, net};

use super::{roles, sync_in_words};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;
use crate::voice::Voice;
use crate::{naming, reading};

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "CODE|@FILE", required_unless_present = "waiting")]
    code: Option<String>,
    #[arg(long, value_name = "NAME|CODE", conflicts_with = "code")]
    waiting: Option<String>,
    #[arg(long, value_parser = roles::parser())]
    role: Role,
    #[arg(long, value_name = "DATE")]
    until: Option<String>,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let until = args.until.as_deref().map(reading::day).transpose()?.map(|day: NaiveDate| day.to_string());
    let app = session.open()?;
    let who = match (&args.code, &args.waiting) {
        (Some(code), _) => app.school_applicant(reading::text(code)?)?,
        (None, waiting) => one_who_waits(app, waiting.as_deref().unwrap_or_default(), voice)?,
    };
    voice.note(&app.say(&Said::new("cli-applicant").text("name", &who.name).text("code", &who.code)));
    let pin = args.signing.pin(&pin, app)?;
    let answer = app.school_admit(who.text, Some(args.role), until, pin)?;
    if args.code.is_some() {
        voice.note(&app.say(&Said::new("cli-answer")));
        return Reply::done(answer.text.clone(), &answer);
    }
    // Admitted is admitted: where the server can't be told now, it is told by the next round.
    drop(net::sync(&Mutex::new(&mut *app), &Net::default()));
    let view = app.school()?;
    let text = format!("{}\n{}", app.say(&Said::new("cli-admitted")), sync_in_words(app, &view.sync));
    Reply::done(text, &view)
}

/// By a name alone anybody might wait: then the code is to be compared.
fn one_who_waits(app: &mut App, named: &str, voice: Voice) -> Result<ApplicantView, Fault> {
    let mut waiting = net::waiting(&Mutex::new(&mut *app), &Net::default())?;
    let known = waiting.iter().map(|who| (who.code.to_lowercase(), who.name.clone()));
    let code = naming::one(named, known.collect())?;
    waiting.retain(|who| who.code.to_lowercase() == code);
    let who = waiting.pop().ok_or_else(|| Fault::new("no-such-member"))?;
    if named.trim().to_lowercase() != code {
        let prompt = Said::new("cli-prompt-applicant").text("name", &who.name).text("code", &who.code);
        voice.agreed(&app.say(&prompt))?;
    }
    Ok(who)
}
