//! A school and how it stands with its server, in words.

use witnessmark_app::App;
use witnessmark_app::views::{MemberView, SchoolView, SyncView};
use witnessmark_core::said::Said;

/// The school as this device knows it: also said after something was signed about it.
pub fn in_words(app: &App, view: &SchoolView) -> String {
    let code = app.say(&Said::new("cli-own-code").text("code", &view.code));
    let Some(school) = &view.school else {
        return format!("{}\n{code}\n", app.say(&Said::new("cli-no-school")));
    };
    let invented = if school.invented { app.say(&Said::new("cli-invented")) } else { String::new() };
    let role = Said::new(if view.root { "cli-school-root" } else { "cli-school-role" });
    let mut text = format!(
        "{}{invented}\n  {}\n  {}\n  {code}\n",
        school.name,
        app.say(&Said::new("cli-school-code").text("code", &school.code)),
        app.say(&role.text("role", &view.role_words)),
    );
    if let Some(address) = &school.address {
        text.push_str(&format!("  {}\n", app.say(&Said::new("cli-school-address").text("address", address))));
    }
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    let members = members_in_words(app, &view.members);
    part("cli-members", members.lines().map(str::to_owned).collect());
    let enrolled = view.machines.iter().filter(|machine| machine.enrolled);
    part(
        "cli-enrolled-machines",
        enrolled.map(|machine| format!("{}  {}", machine.name, machine.id)).collect(),
    );
    let published = view.published.iter().map(|one| {
        let used = if one.used { String::new() } else { app.say(&Said::new("cli-superseded")) };
        let version =
            Said::new("cli-published-version").text("title", &one.title).number("version", one.version);
        format!("{}: {}{used}", app.say(&version), one.by)
    });
    part("cli-published", published.collect());
    format!("{text}\n{}", sync_in_words(app, &view.sync))
}

/// How it stands with the server.
pub fn sync_in_words(app: &App, view: &SyncView) -> String {
    let mut text = format!("{}\n", view.words);
    if !view.hint.is_empty() {
        text.push_str(&format!("  {}\n", view.hint));
    }
    if view.records > 0 || view.photos > 0 {
        let waits = Said::new("cli-to-send").number("records", view.records).number("photos", view.photos);
        text.push_str(&format!("  {}\n", app.say(&waits)));
    }
    for stuck in &view.stuck {
        let said = Said::new("cli-stuck").text("kind", &stuck.kind).text("words", &stuck.words);
        text.push_str(&format!("  {}\n", app.say(&said)));
    }
    text
}

/// Members, each with the devices that a word about them may name.
pub fn members_in_words(app: &App, members: &[MemberView]) -> String {
    let mut text = String::new();
    for member in members {
        text.push_str(&format!("{}: {}, {}\n", member.name, member.role_words, member.term));
        for device in &member.devices {
            let id = if device.ended {
                "cli-device-ended"
            } else if device.root {
                "cli-device-root"
            } else {
                "cli-device"
            };
            text.push_str(&format!("  {}\n", app.say(&Said::new(id).text("code", &device.code))));
        }
    }
    text
}
