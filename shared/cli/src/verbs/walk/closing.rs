//! The end of a walk: said back, and signed or kept unsigned.

use witnessmark_app::views::{Summary, Walk};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::verbs::verdict;

/// The inspection said back.
pub fn said_back(app: &App, summary: &Summary) -> String {
    let mut text = summary.sentences.join("\n") + "\n";
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    let means = |means| app.say(&Said::new(crate::verbs::means(means)));
    let found = summary.found.iter().map(|f| format!("{}: {} ({})", f.title, f.words, means(f.means)));
    part("cli-found", found.collect());
    part("cli-hurried", summary.hurried.iter().map(|point| point.words.clone()).collect());
    let must = |must| if must { app.say(&Said::new("cli-left-grounds")) } else { String::new() };
    part("cli-left", summary.left.iter().map(|l| format!("{}{}", l.words, must(l.must))).collect());
    text
}

/// Kept, not signed.
pub fn unsigned(app: &App, walk: &Walk, summary: &Summary) -> Result<Reply, Fault> {
    let kept = Said::new("cli-unsigned").number("done", walk_done(summary)).text("machine", &walk.machine_name);
    Reply::done(format!("\n{}\n{}", said_back(app, summary), app.say(&kept)), summary)
}

fn walk_done(summary: &Summary) -> u32 {
    summary.done
}

/// Signs, and gives the verdict.
pub fn sign(app: &mut App, walk: String, pin: String, summary: &Summary) -> Result<Reply, Fault> {
    let signed = app.sign(walk, pin)?;
    let text = format!(
        "\n{}\n{}\n{}",
        said_back(app, summary),
        app.say(&Said::new("cli-signed").text("record", &signed.record)),
        verdict::in_words(app, &signed.verdict)
    );
    Reply::answer(verdict::may_fly(&signed.verdict), text, &signed)
}
