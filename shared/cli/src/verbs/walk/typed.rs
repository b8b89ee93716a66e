//! What a person types at a point.

use witnessmark_app::Fault;
use witnessmark_app::views::{AskView, PointView};
use witnessmark_core::list::Given;

use crate::reading;

/// What was meant.
#[derive(Debug, PartialEq)]
pub enum Typed {
    /// An answer.
    Answer(Given),
    /// A tool to tighten with.
    Tool(String),
    /// Take the last answer back.
    Back,
    /// Leave this point for now.
    Leave,
    /// Write this beside it.
    Note(String),
    /// Stop here.
    Quit,
    /// Say what can be typed.
    Help,
    /// Nothing that this point takes.
    Unknown,
}

/// Reads a line. Letters are for the list, numbers (and answers' ids) for the point.
pub fn read(line: &str, point: &PointView) -> Result<Typed, Fault> {
    Ok(match line.split_once(' ').unwrap_or((line, "")) {
        ("b", "") => Typed::Back,
        ("l", "") => Typed::Leave,
        ("q", "") => Typed::Quit,
        ("?", "") => Typed::Help,
        ("n", note) if !note.trim().is_empty() => Typed::Note(note.trim().to_owned()),
        ("n" | "", _) => Typed::Unknown,
        _ => return answer(line, point),
    })
}

fn answer(line: &str, point: &PointView) -> Result<Typed, Fault> {
    match &point.ask {
        AskView::Words { answers } => {
            let number = line.parse::<usize>().ok().and_then(|number| number.checked_sub(1));
            let by_number = number.and_then(|index| answers.get(index));
            let chosen = by_number.or_else(|| answers.iter().find(|answer| answer.id == line));
            Ok(chosen.map_or(Typed::Unknown, |a| Typed::Answer(Given::Words { answer: a.id.clone() })))
        }
        AskView::Value(ask) => {
            let usual = ask.units.first().map(|unit| unit.code);
            Ok(Typed::Answer(Given::Value { value: reading::quantity(line, usual)? }))
        }
        AskView::Torque(_) => Ok(Typed::Tool(line.to_owned())),
    }
}
