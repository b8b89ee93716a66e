//! Reasons that work brings: jobs not released, first flights, what falls due, deferrals.

use crate::due::{Moment, Remaining, Standing, remaining, standing};
use crate::history::{BEFORE_FLIGHT, Open};
use crate::record::{Deferred, Digest};
use crate::said::Said;
use crate::work::{Job, Lack, lacks};

use super::{Fact, Question, Reason, Rule, State, reason, today};

/// All reasons that work brings.
pub(super) fn reasons(q: Question<'_>) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = Vec::new();
    for job in &q.history.work.jobs {
        reasons.push(match &job.released {
            None => open_job(q, job),
            // Released, but by what is known of the people by now, not looked at by another one.
            Some(_) if !lacks(job, |device| q.persons.get(device)).is_empty() => open_job(q, job),
            Some(_) => match first_flight(q, job) {
                Some(reason) => reason,
                None => continue,
            },
        });
    }
    reasons.extend(follow_ups(q));
    reasons.extend(due_items(q));
    reasons
}

fn open_job(q: Question<'_>, job: &Job) -> Reason {
    let lacking = lacks(job, |device| q.persons.get(device).copied());
    let because = lacking.iter().map(|lack| Fact { say: lack_said(job, lack), record: None });
    let clears = if lacking.is_empty() { "clears-job-ready" } else { "clears-job-open" };
    Reason {
        record: Some(job.record),
        because: because.collect(),
        ..reason(
            State::Grounded,
            Rule::JobOpen,
            Said::new("reason-job-open").text("title", &job.body.title),
            clears,
        )
    }
}

/// What a job lacks, as a sentence.
pub fn lack_said(job: &Job, lack: &Lack) -> Said {
    let joint = |joint: &String| job.body.disturbed.get(joint).unwrap_or(joint).clone();
    match lack {
        Lack::Inspection => Said::new("lack-inspection"),
        Lack::Points { titles } if titles.is_empty() => Said::new("lack-points-other"),
        Lack::Points { titles } => Said::new("lack-points").text("titles", titles.join("; ")),
        Lack::Found => Said::new("lack-found"),
        Lack::SecondLook { joint: name } => Said::new("lack-second-look").text("joint", joint(name)),
        Lack::Wanting { joint: name } => Said::new("lack-wanting").text("joint", joint(name)),
    }
}

/// After a release the first flight is watched: until a flight was logged, and a full look signed after it.
fn first_flight(q: Question<'_>, job: &Job) -> Option<Reason> {
    let released = job.released.as_ref()?;
    let then = released.moment.service.flights;
    let looked = q.history.looks.iter().any(|look| look.occasion == BEFORE_FLIGHT && look.flights > then);
    (!looked).then(|| {
        let flown = q.history.flights > then;
        Reason {
            record: Some(released.record),
            ..reason(
                State::Limited,
                Rule::FirstFlight,
                Said::new(if flown { "reason-after-first-flight" } else { "reason-first-flight" })
                    .text("title", &job.body.title),
                "clears-first-flight",
            )
        }
    })
}

fn now(q: Question<'_>) -> Moment {
    Moment { service: q.history.service(), day: today(q) }
}

/// What is left, as a person reads it: the nearest first.
pub fn left_said(said: Said, left: &Remaining) -> Said {
    let mut said = said;
    if let Some(hours) = left.hours {
        said = said.figures("hours", format!("{:.1}", hours.abs()));
    }
    for (name, count) in [("flights", left.flights), ("tanks", left.tanks), ("days", left.days)] {
        if let Some(count) = count {
            said = said.number(name, count.unsigned_abs() as f64);
        }
    }
    let kind = [
        (left.hours, "hours"),
        (left.tanks.map(|n| n as f64), "tanks"),
        (left.flights.map(|n| n as f64), "flights"),
        (left.days.map(|n| n as f64 / 7.0), "days"),
    ]
    .into_iter()
    .filter_map(|(left, kind)| Some((left?, kind)))
    .min_by(|a, b| a.0.total_cmp(&b.0))
    .map_or("hours", |(_, kind)| kind);
    said.text("by", kind)
}

fn follow_ups(q: Question<'_>) -> impl Iterator<Item = Reason> {
    q.history.work.follow_ups.iter().map(move |due| {
        let left = remaining(&due.planned.after, &due.from, &now(q));
        let over = standing(&left, &due.planned.after, 0.0) == Standing::Over;
        let (state, rule, id) = if over {
            (State::Grounded, Rule::FollowUpOver, "reason-follow-up-over")
        } else {
            (State::Limited, Rule::FollowUpDue, "reason-follow-up-due")
        };
        Reason {
            record: Some(due.record),
            ..reason(
                state,
                rule,
                left_said(Said::new(id).text("title", &due.planned.title), &left),
                "clears-follow-up",
            )
        }
    })
}

fn due_items(q: Question<'_>) -> impl Iterator<Item = Reason> {
    q.history.work.due.values().filter_map(move |item| {
        let from = crate::due::counts_from(&item.body, item.before.as_ref());
        let left = remaining(&item.body.every, &from, &now(q));
        let (state, rule, id) = match standing(&left, &item.body.every, item.body.tolerance_percent) {
            Standing::Later => return None,
            Standing::Soon => (State::Limited, Rule::DueSoon, "reason-due-soon"),
            Standing::Tolerated => (State::Limited, Rule::DueSoon, "reason-due-tolerated"),
            Standing::Over => (State::Grounded, Rule::DueOver, "reason-due-over"),
        };
        Some(Reason {
            record: Some(item.record),
            ..reason(
                state,
                rule,
                left_said(Said::new(id).text("title", &item.body.title), &left),
                "clears-due",
            )
        })
    })
}

/// The deferral of a defect, if its author knew every sighting of it, and whether it still holds.
pub(super) fn deferral<'a>(q: Question<'a>, open: &Open) -> Option<(&'a Deferred, Digest, bool)> {
    let (record, _, body) = q.history.work.deferrals.get(&open.point)?;
    let knew = open.sightings.iter().any(|sighting| sighting.record == body.opened_by)
        && open.leading().is_some_and(|leading| leading.record == body.opened_by);
    if !knew {
        return None;
    }
    let service = q.history.service();
    let past = body.until_hours.is_some_and(|hours| service.hours >= hours)
        || body.until_flights.is_some_and(|flights| service.flights >= flights)
        || body.until_date.is_some_and(|date| today(q) > date);
    Some((body, *record, !past))
}
