//! The end of a walk: said back, and signed or kept unsigned.

use witnessmark_app::views::{Summary, Walk};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use super::showing;
use crate::pin::{Pin, Signing};
use crate::reply::Reply;
use crate::told;
use crate::verbs::{means, verdict};

/// The inspection said back; points by their number in the list, so that one can be named again.
pub fn said_back(app: &App, walk: &Walk, summary: &Summary) -> String {
    let mut text = format!("\n{}\n", summary.sentences.join("\n"));
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    let means = |meaning| app.say(&Said::new(means(meaning)));
    let number = |id: &str| showing::number(walk, id);
    let found = summary.found.iter();
    let found = found.map(|f| format!("{}  {}: {} ({})", number(&f.id), f.title, f.words, means(f.means)));
    part("cli-found", found.collect());
    let must = |must| if must { app.say(&Said::new("cli-left-grounds")) } else { String::new() };
    let left = summary.left.iter().map(|l| format!("{}  {}{}", number(&l.id), l.words, must(l.must)));
    part("cli-left", left.collect());
    text.trim_end().to_owned()
}

/// What was looked at for a moment only.
pub fn hurried(app: &App, walk: &Walk, summary: &Summary) -> Option<String> {
    if summary.hurried.is_empty() {
        return None;
    }
    let lines = summary.hurried.iter().map(|p| format!("\n  {}  {}", showing::number(walk, &p.id), p.words));
    Some(format!("\n{}{}", app.say(&Said::new("cli-hurried")), lines.collect::<String>()))
}

/// Kept, not signed.
pub fn unsigned(app: &mut App, walk: String) -> Result<Reply, Fault> {
    let summary = app.summary(walk)?;
    Reply::done(app.say(&Said::new("cli-unsigned").number("done", summary.done)), &summary)
}

/// Signs, and gives the verdict. Asked in a terminal, a slip of the PIN is no reason to begin again.
pub fn sign(app: &mut App, walk: String, pin: &Pin, signing: &Signing) -> Result<Reply, Fault> {
    let signed = loop {
        let tried = signing.pin(pin, app).and_then(|pin| app.sign(walk.clone(), pin));
        match tried {
            Err(fault) if pin.may_be_asked_again(&fault) => told::tell(&app.show(&fault), false),
            other => break other?,
        }
    };
    let text = format!(
        "\n{}\n{}",
        app.say(&Said::new("cli-signed").text("record", &signed.record)),
        verdict::in_words(app, &signed.verdict)
    );
    Reply::answer(verdict::may_fly(&signed.verdict), text, &signed)
}
