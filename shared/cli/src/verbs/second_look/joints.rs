//! What the second person saw at each joint: told on the command line, or asked.

use witnessmark_app::views::Named;
use witnessmark_app::{App, Fault};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::JointSeen;
use witnessmark_core::said::Said;

use crate::naming;
use crate::voice::Voice;

/// The `--joint JOINT=good` and `--joint JOINT=wanting` of a verb.
#[derive(clap::Args)]
pub struct Joints {
    #[arg(long, value_name = "JOINT=good|wanting")]
    joint: Vec<String>,
}

impl Joints {
    /// What was seen at every joint. Where nothing was told of any, a person is asked.
    pub fn seen(&self, app: &App, asked: &[Named], voice: Voice) -> Result<Vec<JointSeen>, Fault> {
        let mut seen = Vec::new();
        for told in &self.joint {
            seen.push(read(told, asked)?);
        }
        let untold: Vec<&Named> =
            asked.iter().filter(|joint| seen.iter().all(|seen| seen.joint != joint.id)).collect();
        if seen.is_empty() && !voice.for_programs() {
            return untold.into_iter().map(|joint| ask(app, joint, voice)).collect();
        }
        if untold.is_empty() { Ok(seen) } else { Err(not_told(untold)) }
    }
}

fn not_told<'a>(joints: impl IntoIterator<Item = &'a Named>) -> Fault {
    let joints: Vec<String> =
        joints.into_iter().map(|joint| format!("{} ({})", joint.words, joint.id)).collect();
    Fault::new("joints-untold").text("joints", joints.join(", "))
}

fn read(told: &str, asked: &[Named]) -> Result<JointSeen, Fault> {
    let unreadable = || Fault::new("joint-unreadable").text("text", told);
    let (joint, word) = told.split_once('=').ok_or_else(unreadable)?;
    let known = asked.iter().map(|joint| (joint.id.clone(), joint.words.clone()));
    let joint = naming::one(joint, known.collect())?;
    Ok(JointSeen { joint, means: means(word).ok_or_else(unreadable)?, note: String::new() })
}

fn means(word: &str) -> Option<Meaning> {
    match word.trim() {
        "good" => Some(Meaning::Serviceable),
        "wanting" => Some(Meaning::Unserviceable),
        _ => None,
    }
}

/// Asks until it is one of the two.
fn ask(app: &App, joint: &Named, voice: Voice) -> Result<JointSeen, Fault> {
    let prompt = app.say(&Said::new("cli-prompt-joint").text("joint", &joint.words));
    loop {
        let Some(line) = voice.ask(&prompt)? else { return Err(not_told([joint])) };
        let (word, note) = line.split_once(' ').unwrap_or((&line, ""));
        let word = if word == "g" {
            "good"
        } else if word == "w" {
            "wanting"
        } else {
            word
        };
        if let Some(means) = means(word) {
            return Ok(JointSeen { joint: joint.id.clone(), means, note: note.trim().to_owned() });
        }
        voice.say(&app.say(&Said::new("cli-not-understood")))?;
    }
}
