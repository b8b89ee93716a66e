//! `fleet looking`: how people look, each beside the others on the same points.

use witnessmark_app::views::{LookingPerson, LookingReport};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let report = app.looking()?;
    Reply::done(in_words(app, &report), &report)
}

fn in_words(app: &App, report: &LookingReport) -> String {
    if report.people.is_empty() {
        return app.say(&Said::new("cli-fleet-nobody"));
    }
    let people = report.people.iter().map(|person| person_in_words(app, person));
    format!("{}\n{}\n", people.collect::<String>(), report.caution)
}

fn person_in_words(app: &App, person: &LookingPerson) -> String {
    let head = Said::new("cli-fleet-person")
        .text("name", &person.name)
        .text("you", if person.you { "yes" } else { "no" })
        .number("inspections", person.inspections)
        .number("looks", person.looks);
    let mut lines = vec![app.say(&head)];
    let mut figure = |id: &str, own: f64, others: Option<f64>| {
        // Where nobody else looks there is nothing beside it.
        let said = Said::new(id).number("own", own).number("others", others.unwrap_or_default());
        lines.push(format!(
            "  {}",
            app.say(&said.text("beside", if others.is_some() { "yes" } else { "no" }))
        ));
    };
    figure("cli-fleet-seconds", person.seconds, person.fleet_seconds);
    figure("cli-fleet-hurried", person.hurried_percent, person.fleet_hurried_percent);
    figure("cli-fleet-found", person.found_percent, person.fleet_found_percent);
    lines.extend(person.sentences.iter().map(|sentence| format!("  {sentence}")));
    if !person.points.is_empty() {
        let said = Said::new("cli-fleet-hurried-points").text("points", person.points.join("; "));
        lines.push(format!("  {}", app.say(&said)));
    }
    lines.join("\n") + "\n"
}
