//! `due keep`: keeps something that falls due again and again, or changes it; signed.

use witnessmark_app::views::{DueForm, MachinePage};
use witnessmark_app::{App, Fault};
use witnessmark_core::record::Interval;
use witnessmark_core::said::Said;

use super::{in_words, item};
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(value_name = "TITLE")]
    title: String,
    #[arg(long, value_name = "H")]
    every_hours: Option<f64>,
    #[arg(long, value_name = "N")]
    every_flights: Option<u32>,
    #[arg(long, value_name = "N")]
    every_tanks: Option<u32>,
    #[arg(long, value_name = "DAYS")]
    every_days: Option<u32>,
    #[arg(long, value_name = "PERCENT")]
    tolerance: Option<f64>,
    #[arg(long)]
    from_due: bool,
    #[command(flatten)]
    done: Done,
    #[command(flatten)]
    signing: Signing,
}

/// When it was last done; what isn't said stays as it was.
#[derive(clap::Args)]
pub struct Done {
    #[arg(long, value_name = "H")]
    done_hours: Option<f64>,
    #[arg(long, value_name = "N")]
    done_flights: Option<u32>,
    #[arg(long, value_name = "DATE")]
    done_on: Option<String>,
}

impl Done {
    /// Puts what was said into the form.
    pub fn put_into(&self, form: &mut DueForm) -> Result<(), Fault> {
        form.done_hours = self.done_hours.unwrap_or(form.done_hours);
        form.done_flights = self.done_flights.unwrap_or(form.done_flights);
        if let Some(day) = &self.done_on {
            form.done_on = reading::day(day)?;
        }
        Ok(())
    }
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let form = form(&args, &app.machine(machine.clone())?)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.due_save(machine, Some(form), false, pin)?;
    Reply::done(kept(app, "cli-due-kept", &page), &page)
}

/// Said of what was signed.
pub fn kept(app: &App, id: &str, page: &MachinePage) -> String {
    format!("{}\n\n{}", app.say(&Said::new(id)), in_words(app, &page.due).join("\n"))
}

/// The item of exactly this title (or id) changed, or a new one.
fn form(args: &Args, page: &MachinePage) -> Result<DueForm, Fault> {
    let given = Interval {
        hours: args.every_hours,
        flights: args.every_flights,
        tanks: args.every_tanks,
        days: args.every_days,
    };
    let whole = |form: &DueForm| form.id == args.title || form.title == args.title;
    let mut form = match item(page, &args.title).ok().filter(whole) {
        Some(before) => before,
        None => new(&args.title, page),
    };
    // An interval is one thing: a new one takes the old one's place as a whole.
    if given != Interval::default() {
        form.every = given;
    }
    form.tolerance_percent = args.tolerance.unwrap_or(form.tolerance_percent);
    form.from_due |= args.from_due;
    args.done.put_into(&mut form)?;
    Ok(form)
}

/// Counted from now, unless it is said when it was last done.
fn new(title: &str, page: &MachinePage) -> DueForm {
    DueForm {
        id: String::new(),
        title: title.to_owned(),
        every: Interval::default(),
        tolerance_percent: 0.0,
        from_due: false,
        done_hours: page.card.hours,
        done_flights: page.card.flights,
        done_on: Session::today(),
    }
}
