//! Answers from a file, for scripts: given in the list's order, each durable before the next.

use std::collections::BTreeMap;
use std::path::Path;

use serde_json::Value;
use witnessmark_app::views::{Look, PointView, Walk, WalkProgress};
use witnessmark_app::{App, Fault};
use witnessmark_core::list::Given;
use witnessmark_core::said::Said;

use super::tightened::Tightened;
use crate::voice::Voice;

/// What the file says of one point.
#[derive(Clone, Debug)]
pub struct Answer {
    said: Told,
    note: Option<String>,
}

#[derive(Clone, Debug)]
enum Told {
    Given(Given),
    Tightened(Tightened),
}

/// Reads the file: point id → answer id or quantity, with a note if need be.
pub fn read(file: &Path) -> Result<BTreeMap<String, Answer>, Fault> {
    let unreadable = |why: String| Fault::new("answers-file").text("file", file.display()).text("why", why);
    let text = std::fs::read_to_string(file).map_err(|why| unreadable(why.to_string()))?;
    let raw: BTreeMap<String, Value> =
        serde_json::from_str(&text).map_err(|why| unreadable(why.to_string()))?;
    raw.into_iter().map(|(point, value)| Ok((point.clone(), answer(&point, value)?))).collect()
}

fn answer(point: &str, value: Value) -> Result<Answer, Fault> {
    let unreadable = |why: String| Fault::new("answer-unreadable").text("point", point).text("why", why);
    let mut value = match value {
        Value::String(answer) => {
            return Ok(Answer { said: Told::Given(Given::Words { answer }), note: None });
        }
        Value::Object(members) => members,
        other => return Err(unreadable(other.to_string())),
    };
    let note = match value.remove("note") {
        None => None,
        Some(Value::String(note)) => Some(note),
        Some(other) => return Err(unreadable(other.to_string())),
    };
    let tightened = value.contains_key("tool") || value.contains_key("eighths");
    let said = match (value.remove("answer"), value.is_empty()) {
        (Some(Value::String(answer)), true) => Told::Given(Given::Words { answer }),
        (None, _) if tightened => {
            let told = serde_json::from_value(Value::Object(value));
            Told::Tightened(told.map_err(|why| unreadable(why.to_string()))?)
        }
        (None, _) => {
            let quantity = serde_json::from_value(Value::Object(value));
            Told::Given(Given::Value { value: quantity.map_err(|why| unreadable(why.to_string()))? })
        }
        (Some(other), _) => return Err(unreadable(other.to_string())),
    };
    Ok(Answer { said, note })
}

/// Answers every point of the list that the file answers, in the list's order.
pub fn give(
    app: &mut App,
    walk: &Walk,
    answers: &BTreeMap<String, Answer>,
    leave_missing: bool,
    voice: Voice,
) -> Result<(), Fault> {
    if let Some(back) = &walk.progress.stepped_back {
        voice.progress(back)?;
    }
    let points = || walk.stations.iter().flat_map(|station| &station.points);
    if let Some(unknown) = answers.keys().find(|id| points().all(|point| point.id != **id)) {
        return Err(Fault::new("no-such-point").text("point", unknown));
    }
    let done = |point: &PointView| state(&walk.progress, &point.id) == Look::Done;
    let missing: Vec<&str> = points()
        .filter(|point| point.must && !answers.contains_key(&point.id) && !done(point))
        .map(|point| point.id.as_str())
        .collect();
    if !missing.is_empty() && !leave_missing {
        return Err(Fault::new("answers-missing")
            .number("count", missing.len() as f64)
            .text("points", missing.join(", ")));
    }
    for point in points() {
        match answers.get(&point.id) {
            Some(answer) => {
                let progress = answer_one(app, walk, point, answer)?;
                voice.progress(&kept(app, point, &progress))?;
            }
            None if done(point) => {}
            None => {
                app.leave(walk.id.clone(), point.id.clone())?;
            }
        }
    }
    Ok(())
}

fn answer_one(app: &mut App, walk: &Walk, point: &PointView, answer: &Answer) -> Result<WalkProgress, Fault> {
    let mut progress = walk.progress.clone();
    if let Some(note) = &answer.note {
        progress = app.note(walk.id.clone(), point.id.clone(), note.clone())?;
    }
    let before = walk.progress.points.get(&point.id).and_then(|state| state.given.as_ref());
    let same = match (&answer.said, before) {
        (_, None) => false,
        (Told::Given(given), Some(before)) => before.given == *given,
        (Told::Tightened(told), Some(before)) => told.stands(app, &before.given)?,
    };
    // What stands already isn't said again: the record would show it as a change of mind.
    if same && state(&walk.progress, &point.id) == Look::Done {
        return Ok(progress);
    }
    progress = match &answer.said {
        Told::Given(given) => app.answer(walk.id.clone(), point.id.clone(), Some(given.clone()), 0.0)?,
        Told::Tightened(told) => told.tell(app, walk, &point.id, 0.0)?,
    };
    Ok(progress)
}

fn state(progress: &WalkProgress, point: &str) -> Look {
    progress.points.get(point).map_or(Look::Open, |state| state.state.clone())
}

/// One line a point, printed when the answer is durable.
fn kept(app: &App, point: &PointView, progress: &WalkProgress) -> String {
    let given = progress.points.get(&point.id).and_then(|state| state.given.as_ref());
    let means = given.map(|given| app.say(&Said::new(crate::verbs::means(given.means)))).unwrap_or_default();
    let words = given.map(|given| given.words.clone()).unwrap_or_default();
    app.say(
        &Said::new("cli-kept")
            .number("done", progress.done)
            .number("of", progress.of)
            .text("point", &point.id)
            .text("words", words)
            .text("means", means),
    )
}
