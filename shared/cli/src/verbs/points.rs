//! `points`: the list as it would be asked now.

use serde::Serialize;
use witnessmark_app::views::{AskView, PointView};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "LIST", default_value = "before-flight")]
    occasion: String,
}

/// The list for programs.
#[derive(Serialize)]
struct Listed {
    machine: String,
    occasion: String,
    points: Vec<Point>,
}

/// A point with the station at which it is looked at.
#[derive(Serialize)]
struct Point {
    station: String,
    station_words: String,
    #[serde(flatten)]
    point: PointView,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let stations = app.points(&machine, &args.occasion)?;
    let mut text = String::new();
    let mut points = Vec::new();
    for station in stations {
        text.push_str(&format!("{}  {}\n\n", station.words, station.stand));
        for point in station.points {
            text.push_str(&in_words(app, &point));
            points.push(Point { station: station.id.clone(), station_words: station.words.clone(), point });
        }
    }
    let count = Said::new("cli-points").number("points", points.len() as f64);
    text.push_str(&app.say(&count));
    Reply::done(text, &Listed { machine, occasion: args.occasion, points })
}

fn in_words(app: &App, point: &PointView) -> String {
    let mut text = format!("  {}  {}\n", point.id, point.title);
    let mut line = |words: &str| text.push_str(&format!("      {words}\n"));
    line(&point.good);
    if !point.must {
        line(&app.say(&Said::new("cli-may-be-left")));
    }
    match &point.ask {
        AskView::Words { answers } => {
            for answer in answers {
                let means = app.say(&Said::new(super::means(answer.means)));
                line(&format!("- {}: {} ({means})", answer.id, answer.words));
            }
        }
        AskView::Value(ask) => {
            let unit = ask.units.first().map(|unit| unit.code.code()).unwrap_or_default();
            line(&format!(
                "- {}",
                app.say(&Said::new("cli-measured").text("unit", unit).text("band", &ask.words))
            ));
            line(&format!("  {}", ask.source));
        }
        AskView::Torque(ask) => {
            let said = Said::new("cli-tightened").text("joint", &ask.joint).text("band", &ask.words);
            line(&format!("- {}", app.say(&said.number("nuts", ask.nuts))));
            line(&format!("  {}", ask.source));
        }
    }
    text.push('\n');
    text
}
