//! `job`: work on a machine, from what was done to the list that follows it.

mod begin;
mod choices;
mod plan;

use witnessmark_app::views::{JobPlan, JobView, PlanItem};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::naming;

super::group! {
    Choices choices;
    Plan plan;
    Begin begin;
}

/// The ids of the jobs that are meant.
fn ids(app: &mut App, machine: &str, named: &[String]) -> Result<Vec<String>, Fault> {
    let jobs = app.job_choices(machine.to_owned())?;
    let known = || jobs.iter().map(|job| (job.id.clone(), job.words.clone())).collect();
    named.iter().map(|job| naming::one(job, known())).collect()
}

/// What the jobs mean: the order of taking apart and refitting, and all that follows.
pub fn plan_in_words(app: &App, plan: &JobPlan) -> String {
    let mut text = String::new();
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    // Backwards the same things are said the other way round.
    let numbered = |items: &[PlanItem], part: &str, joint: &str| {
        let said = |(number, item): (usize, &PlanItem)| {
            let said = Said::new(if item.joint { joint } else { part }).text("words", &item.words);
            format!("{number}. {}", app.say(&said))
        };
        (1..).zip(items).map(said).collect()
    };
    part("cli-take-off", numbered(&plan.take_off, "cli-plan-part-off", "cli-plan-joint-undone"));
    part("cli-refit", numbered(&plan.refit, "cli-plan-part-on", "cli-plan-joint-done-up"));
    part("cli-renew", plan.renew.clone());
    part("cli-count-tools", plan.count_tools.clone());
    part("cli-independent", plan.independent.clone());
    part("cli-follow-ups", plan.follow_ups.clone());
    text + &app.say(&Said::new("cli-plan-points").number("points", plan.points))
}

/// The open job: what it is and what it still lacks.
pub fn in_words(app: &App, job: &JobView) -> String {
    let mut text = format!("{} ({})\n", job.title, job.since);
    for lack in &job.lacks {
        text.push_str(&format!("  {lack}\n"));
    }
    if job.ready {
        text.push_str(&format!("  {}\n", app.say(&Said::new("cli-job-ready"))));
    }
    for joint in &job.independent {
        let said = Said::new("cli-job-independent").text("joint", &joint.words).text("id", &joint.id);
        text.push_str(&format!("  {}\n", app.say(&said)));
    }
    text
}
