//! `import readings`: an engine's log. Shows how its columns are read and what they tell; once that is
//! confirmed, or was for an earlier file with the same headings, signs the figures.

use std::borrow::Cow;
use std::path::{Path, PathBuf};

use serde_json::json;
use witnessmark_app::views::{LogPreview, LogView};
use witnessmark_app::{App, Fault};
use witnessmark_core::runlog::Mapping;
use witnessmark_core::said::Said;
use witnessmark_core::units::Unit;

use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::show;
use crate::voice::Voice;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "log", value_name = "FILE")]
    file: PathBuf,
    #[arg(long)]
    machine: String,
    #[arg(long, value_name = "JSON|FILE")]
    mapping: Option<String>,
    #[arg(id = "then-hours", long = "hours", value_name = "H")]
    hours: Option<f64>,
    #[arg(long, value_name = "DATE")]
    on: Option<String>,
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    outside: Option<String>,
    #[arg(long)]
    yes: bool,
    #[arg(long)]
    dry_run: bool,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = if args.dry_run { None } else { Some(args.signing.source(session)?) };
    let voice = session.voice();
    let outside =
        args.outside.as_deref().map(|text| reading::quantity(text, Some(Unit::Celsius))).transpose()?;
    let given = args.mapping.as_deref().map(mapping).transpose()?;
    let bytes = reading::bytes(&args.file)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let text = decoded(&bytes, app, voice);
    let name = name(&args.file);
    let view = app.log_open(machine.clone(), name.clone(), text.clone())?;
    let confirmed = view.remembered && given.as_ref().is_none_or(|given| *given == view.mapping);
    let mapping = given.unwrap_or_else(|| view.mapping.clone());
    let preview = app.log_preview(machine.clone(), text.clone(), Some(mapping.clone()))?;
    let shown = in_words(app, &view, &mapping, &preview);
    let Some(pin) = pin else {
        return Reply::done(shown, &json!({ "open": view, "mapping": mapping, "preview": preview }));
    };
    if !confirmed && !args.yes {
        if !voice.for_programs() {
            voice.say(shown.trim_end())?;
        }
        let prompt = app.say(&Said::new("cli-prompt-log"));
        // The words for what else may be agreed to don't fit here.
        voice.agreed(&prompt).map_err(|fault| match fault.kind {
            "not-agreed" => Fault::new("log-not-confirmed"),
            _ => fault,
        })?;
    }
    let pin = args.signing.pin(&pin, app)?;
    let page = app.log_take(machine, name, text, Some(mapping), args.hours, args.on, outside, pin)?;
    let figures: String = figures(&preview).map(|line| format!("  {line}\n")).collect();
    let text = format!("{}\n{figures}\n{}", app.say(&Said::new("cli-log-taken")), show::in_words(app, &page));
    Reply::done(text, &page)
}

/// A mapping as JSON, or the file that holds it.
fn mapping(given: &str) -> Result<Mapping, Fault> {
    let text = match given.trim_start().starts_with('{') {
        true => Cow::Borrowed(given),
        false => Cow::Owned(String::from_utf8_lossy(&reading::bytes(Path::new(given))?).into_owned()),
    };
    let reader = &mut serde_json::Deserializer::from_str(&text);
    serde_path_to_error::deserialize(reader).map_err(|why| Fault::new("log-mapping-unread").text("why", why))
}

/// The text of a file: by its byte order mark, else as UTF-8; what isn't that is read as
/// Windows-1252, in which German and French spreadsheets write, and that is said.
fn decoded(bytes: &[u8], app: &App, voice: Voice) -> String {
    if let Some((encoding, mark)) = encoding_rs::Encoding::for_bom(bytes) {
        let rest = bytes.get(mark..).unwrap_or_default();
        return encoding.decode_without_bom_handling(rest).0.into_owned();
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => {
            // What no text in any encoding holds is told by what opens it.
            if !bytes.contains(&0) {
                voice.note(&app.say(&Said::new("cli-log-windows-1252")));
            }
            encoding_rs::WINDOWS_1252.decode_without_bom_handling(bytes).0.into_owned()
        }
    }
}

/// What a file is called in the record; nothing for standard input.
fn name(file: &Path) -> String {
    match file.as_os_str() == "-" {
        true => String::new(),
        false => file.file_name().unwrap_or_default().to_string_lossy().into_owned(),
    }
}

/// How a file is read, and what it tells so.
fn in_words(app: &App, view: &LogView, mapping: &Mapping, preview: &LogPreview) -> String {
    let mut lines = vec![app.say(&Said::new("cli-log").text("name", &view.name))];
    let mark = |c: char| match c {
        '\t' => Said::new("cli-log-tab"),
        ';' => Said::new("cli-log-semicolon"),
        ',' => Said::new("cli-log-comma"),
        _ => Said::new("cli-log-point"),
    };
    let marks = Said::new("cli-log-marks")
        .text("separator", app.say(&mark(mapping.separator)))
        .text("decimal", app.say(&mark(mapping.decimal)));
    lines.push(format!("  {}", app.say(&marks)));
    let form = view.time_forms.iter().find(|form| form.id == mapping.time_form);
    let time = Said::new("cli-log-time")
        .text("column", &mapping.time)
        .text("form", form.map(|form| form.words.clone()).unwrap_or_default());
    lines.push(format!("  {}", app.say(&time)));
    for column in &mapping.columns {
        let id = serde_json::to_value(column.channel).ok();
        let channel =
            view.channels.iter().find(|one| id.as_ref().and_then(|id| id.as_str()) == Some(&one.id));
        let said = Said::new("cli-log-column")
            .text("column", &column.heading)
            .text("channel", channel.map(|one| one.words.clone()).unwrap_or_default())
            .text("unit", column.unit.sign());
        lines.push(format!("  {}", app.say(&said)));
    }
    let unused = view.columns.iter().map(|column| column.heading.clone()).filter(|heading| {
        *heading != mapping.time && mapping.columns.iter().all(|column| column.heading != *heading)
    });
    let unused: Vec<String> = unused.collect();
    if !unused.is_empty() {
        lines.push(format!("  {}", app.say(&Said::new("cli-log-unused").text("columns", unused.join(", ")))));
    }
    let same = *mapping == view.mapping;
    lines.extend(view.guesses.iter().filter(|_| same).cloned());
    if view.remembered && same {
        lines.push(app.say(&Said::new("cli-log-remembered")));
    }
    let rows = Said::new("cli-log-rows").number("rows", preview.rows).text("lasts", &preview.lasts);
    lines.push(app.say(&rows));
    if preview.unread > 0 {
        let unread = Said::new("cli-log-unread")
            .number("rows", preview.unread)
            .text("first", preview.first_unread.clone().unwrap_or_default());
        lines.push(app.say(&unread));
    }
    lines.extend(figures(preview).map(|line| format!("  {line}")));
    lines.extend(preview.notes.iter().cloned());
    lines.join("\n")
}

fn figures(preview: &LogPreview) -> impl Iterator<Item = String> {
    preview.readings.iter().map(|reading| match &reading.left_out {
        Some(left_out) => format!("{}: {}. {left_out}", reading.words, reading.value),
        None => format!("{}: {}", reading.words, reading.value),
    })
}
