//! `record`: a record laid open.

use witnessmark_app::views::RecordView;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    record: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let digest = app.find_record(&args.record)?;
    let record = app.record(digest)?;
    Reply::answer(record.good, in_words(app, &record), &record)
}

fn in_words(app: &App, record: &RecordView) -> String {
    let said = Said::new("cli-record-by")
        .text("by", &record.by)
        .text("when", &record.when)
        .text("device", &record.device)
        .number("seq", record.seq);
    let mut text = format!(
        "{} {}\n{}\n{}\n{}\n",
        record.kind,
        record.digest,
        app.say(&said),
        record.signature,
        record.words
    );
    let mut line = |words: &str| text.push_str(&format!("{words}\n"));
    record.interruptions.iter().for_each(|words| line(words));
    let mut station = "";
    for finding in &record.findings {
        if station != finding.station {
            station = &finding.station;
            line(&format!("\n{station}"));
        }
        let means = app.say(&Said::new(super::means(finding.means)));
        let band = finding.band.as_ref().map(|band| format!(" [{band}]")).unwrap_or_default();
        line(&format!("  {}: {}: {}{band} ({means})", finding.point, finding.title, finding.words));
        if !finding.note.is_empty() {
            line(&format!("    {}", app.say(&Said::new("cli-noted").text("words", &finding.note))));
        }
        for before in &finding.before {
            line(&format!("    {}", app.say(&Said::new("cli-before").text("words", before))));
        }
        finding.corrections.iter().for_each(|words| line(&format!("    {words}")));
    }
    if !record.left.is_empty() {
        line(&format!("\n{}", app.say(&Said::new("cli-left"))));
        record.left.iter().for_each(|left| line(&format!("  {}: {}", left.id, left.words)));
    }
    text
}
