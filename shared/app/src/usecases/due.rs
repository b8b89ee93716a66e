//! What falls due: recurring items kept by the owner, and what jobs made due.

use uuid::Uuid;
use witnessmark_core::due::{Moment, Remaining, Standing, counts_from, forecast, rate, remaining, standing};
use witnessmark_core::history::History;
use witnessmark_core::record::{Body, DueKept, Interval, Service};
use witnessmark_core::said::Said;
use witnessmark_core::verdict::left_said;

use crate::house::{House, id};
use crate::views::{DueForm, DueView, MachinePage};
use crate::{App, Fault, identity};

impl App {
    /// Keeps something that falls due again and again, changes it, or signs that it was done (by a
    /// later `done_on`, hours and flights).
    ///
    /// # Errors
    /// [`Fault`]: no title, no interval, a doing that lies ahead, a wrong PIN.
    pub fn due_save(
        &mut self,
        machine: String,
        form: Option<DueForm>,
        ended: bool,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let form = form.ok_or_else(|| Fault::new("due-title"))?;
        let item = if form.id.is_empty() { self.house.uuid()? } else { id(&form.id)? };
        let history = self.store.read(|tx| self.house.known(tx, machine))?;
        let body = Body::DueKept(self.house.due_checked(&history, item, form, ended)?);
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body)?;
            self.house.page(tx, machine)
        })
    }
}

/// Whether an interval counts anything, and nothing below nothing.
fn counts(every: &Interval) -> bool {
    let whole = [every.flights, every.tanks, every.days];
    let some = every.hours.is_some() || whole.iter().any(Option::is_some);
    some && every.hours.is_none_or(|hours| hours.is_finite() && hours > 0.0)
        && whole.iter().flatten().all(|count| *count > 0)
}

/// Tanks used up when it was last done. The form doesn't tell: where the same doing is described
/// anew, those of then; else those of now.
fn tanks_done(history: &History, item: Uuid, form: &DueForm, title: &str) -> u32 {
    let kept = history.work.due.get(&item).map(|kept| &kept.body).filter(|kept| {
        let same = kept.done.hours == form.done_hours && kept.done.flights == form.done_flights;
        same && kept.done_on == form.done_on
    });
    // The same in all else too, it is no change but another doing on the same day.
    let changed = |kept: &&DueKept| {
        let same = kept.title == title && kept.every == form.every && kept.from_due == form.from_due;
        !same || kept.tolerance_percent != form.tolerance_percent
    };
    kept.filter(changed).map_or(history.tanks, |kept| kept.done.tanks)
}

impl House {
    fn due_checked(
        &self,
        history: &History,
        item: Uuid,
        form: DueForm,
        ended: bool,
    ) -> Result<DueKept, Fault> {
        let title = form.title.trim().to_owned();
        if title.is_empty() || title.chars().count() > 120 {
            return Err(Fault::new("due-title"));
        }
        if !counts(&form.every) {
            return Err(Fault::new("due-interval"));
        }
        if !(0.0..=100.0).contains(&form.tolerance_percent) {
            return Err(Fault::new("due-tolerance"));
        }
        let today = self.now().date_naive();
        let ahead = !form.done_hours.is_finite()
            || form.done_hours > history.hours
            || form.done_flights > history.flights
            || form.done_on > today;
        if ahead || form.done_hours < 0.0 {
            return Err(Fault::new("due-done-ahead").figures("hours", format!("{:.1}", history.hours)));
        }
        let tanks = tanks_done(history, item, &form, &title);
        let done = Service { hours: form.done_hours, flights: form.done_flights, tanks };
        Ok(DueKept {
            item,
            title,
            every: form.every,
            tolerance_percent: form.tolerance_percent,
            from_due: form.from_due,
            done,
            done_on: form.done_on,
            ended,
        })
    }

    /// What falls due on a machine, worst and nearest first.
    pub(crate) fn due_views(&self, history: &History) -> Vec<DueView> {
        let now = Moment { service: history.service(), day: self.now().date_naive() };
        let items = history.work.due.iter().map(|(id, item)| {
            let from = counts_from(&item.body, item.before.as_ref());
            let left = remaining(&item.body.every, &from, &now);
            let stands = standing(&left, &item.body.every, item.body.tolerance_percent);
            let kept = DueForm {
                id: id.to_string(),
                title: item.body.title.clone(),
                every: item.body.every,
                tolerance_percent: item.body.tolerance_percent,
                from_due: item.body.from_due,
                done_hours: item.body.done.hours,
                done_flights: item.body.done.flights,
                done_on: item.body.done_on,
            };
            self.due_view(history, &now, &item.body.title, left, stands, item.record.to_string(), Some(kept))
        });
        let follow_ups = history.work.follow_ups.iter().map(|due| {
            let left = remaining(&due.planned.after, &due.from, &now);
            let stands = standing(&left, &due.planned.after, 0.0);
            self.due_view(history, &now, &due.planned.title, left, stands, due.record.to_string(), None)
        });
        let mut views: Vec<DueView> = follow_ups.chain(items).collect();
        views.sort_by_key(|view| std::cmp::Reverse(view.standing));
        views
    }

    #[allow(clippy::too_many_arguments)]
    fn due_view(
        &self,
        history: &History,
        now: &Moment,
        title: &str,
        left: Remaining,
        stands: Standing,
        record: String,
        kept: Option<DueForm>,
    ) -> DueView {
        let over = stands >= Standing::Tolerated;
        let said = left_said(Said::new(if over { "due-over" } else { "due-left" }), &left);
        DueView {
            id: kept.as_ref().map(|kept| kept.id.clone()).unwrap_or_default(),
            title: title.to_owned(),
            standing: stands,
            left: self.say(&said),
            forecast: self.forecast_words(history, now, &left),
            record,
            kept,
        }
    }

    fn forecast_words(&self, history: &History, now: &Moment, left: &Remaining) -> Option<String> {
        let hours = left.hours.filter(|hours| *hours > 0.0)?;
        let rate = rate(&history.work.logs, now.day)?;
        let forecast = forecast(hours, &rate, now.day)?;
        Some(
            self.say(
                &Said::new("due-forecast")
                    .date("at", forecast.at)
                    .date("low", forecast.low)
                    .date("high", forecast.high),
            ),
        )
    }
}
