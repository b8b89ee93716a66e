//! An inspection with long notes and large pictures, until there is no more room.

use std::collections::BTreeMap;

use base64ct::{Base64, Encoding};
use image::ImageFormat;
use serde_json::{Value, json};
use witnessmark_app::App;
use witnessmark_core::record::Digest;

use super::chance::Chance;
use super::pictures::{noise, written};
use super::server::{Server, Unanswered};

/// Something that takes the screens' calls.
pub trait Phone {
    fn call(&mut self, name: &str, args: Value) -> Result<Value, Unanswered>;
}

impl Phone for Server {
    fn call(&mut self, name: &str, args: Value) -> Result<Value, Unanswered> {
        Server::call(self, name, args)
    }
}

impl Phone for App {
    fn call(&mut self, name: &str, args: Value) -> Result<Value, Unanswered> {
        let call = serde_json::from_value(json!({ "call": name, "args": args })).unwrap();
        App::call(self, call).map_err(|fault| Unanswered::Fault {
            kind: fault.kind,
            message: fault.message,
            hint: fault.hint,
        })
    }
}

/// What a phone acknowledged of one inspection.
#[derive(Default)]
pub struct Acknowledged {
    pub machine: String,
    pub walk: String,
    points: Vec<Value>,
    answers: BTreeMap<String, String>,
    notes: BTreeMap<String, String>,
    pictures: BTreeMap<String, Vec<String>>,
    /// The faults told, each with what to do.
    pub faults: Vec<String>,
}

/// The fault that a phone tells when it has no more room, whichever way the room ended.
fn no_room(fault: Unanswered, kinds: &[&str]) -> String {
    let Unanswered::Fault { kind, message, hint } = fault else { panic!("the program is gone") };
    assert!(kinds.contains(&kind.as_str()), "{kind}: {message}");
    assert!(message.len() > 20 && hint.len() > 20, "{kind} says too little: {message} / {hint}");
    kind
}

impl Acknowledged {
    /// Opens the list.
    pub fn begin(phone: &mut impl Phone, machine: &str) -> Self {
        let walk = phone.call("walk", json!({ "machine": machine, "occasion": "before-flight" })).unwrap();
        let stations = walk["stations"].as_array().unwrap();
        let points = stations.iter().flat_map(|s| s["points"].as_array().unwrap());
        Self {
            machine: machine.into(),
            walk: walk["id"].as_str().unwrap().into(),
            points: points.filter(|point| point["ask"]["by"] == "words").cloned().collect(),
            ..Self::default()
        }
    }

    /// Answers, notes and takes pictures until even an answer finds no room.
    pub fn fill(&mut self, phone: &mut impl Phone, chance: &mut Chance, kinds: &[&str]) {
        let mut refused_in_a_row = 0;
        for turn in 0..5000 {
            let point = self.points[turn % self.points.len()].clone();
            let told = match turn % 3 {
                0 if self.faults.is_empty() => self.picture(phone, &point, chance),
                1 if self.faults.is_empty() => self.note(phone, &point, chance),
                _ => self.answer(phone, &point, chance),
            };
            match told {
                Ok(()) => refused_in_a_row = 0,
                Err(fault) => {
                    self.faults.push(no_room(fault, kinds));
                    refused_in_a_row += 1;
                }
            }
            if refused_in_a_row == 20 {
                return;
            }
        }
        panic!("there is always more room");
    }

    /// So many pictures, with room enough.
    pub fn keep_pictures(&mut self, phone: &mut impl Phone, chance: &mut Chance, count: usize) {
        for point in self.points.clone().iter().take(count) {
            self.picture(phone, point, chance).unwrap();
        }
    }

    /// One answer at random.
    pub fn answer(
        &mut self,
        phone: &mut impl Phone,
        point: &Value,
        chance: &mut Chance,
    ) -> Result<(), Unanswered> {
        let id = point["id"].as_str().unwrap();
        let answer = chance.pick(point["ask"]["answers"].as_array().unwrap())["id"].as_str().unwrap();
        let args = json!({ "walk": self.walk, "point": id, "given": { "answer": answer }, "seconds": 4 });
        phone.call("answer", args)?;
        self.answers.insert(id.into(), answer.into());
        Ok(())
    }

    fn note(&mut self, phone: &mut impl Phone, point: &Value, chance: &mut Chance) -> Result<(), Unanswered> {
        let id = point["id"].as_str().unwrap();
        let note: String = (0..1900).map(|_| char::from(b'a' + chance.below(26) as u8)).collect();
        phone.call("note", json!({ "walk": self.walk, "point": id, "note": note }))?;
        self.notes.insert(id.into(), note);
        Ok(())
    }

    fn picture(
        &mut self,
        phone: &mut impl Phone,
        point: &Value,
        chance: &mut Chance,
    ) -> Result<(), Unanswered> {
        let id = point["id"].as_str().unwrap();
        let data = Base64::encode_string(&written(&noise(chance, 240, 180), ImageFormat::Png));
        let progress = phone.call("photo-add", json!({ "walk": self.walk, "point": id, "data": data }))?;
        let names = &progress["points"][id]["photos"];
        self.pictures.insert(id.into(), serde_json::from_value(names.clone()).unwrap());
        Ok(())
    }

    /// Looks whether all that was acknowledged is there, and the same walk goes on.
    pub fn is_kept(&self, phone: &mut impl Phone) {
        let walk =
            phone.call("walk", json!({ "machine": self.machine, "occasion": "before-flight" })).unwrap();
        assert_eq!(walk["id"], self.walk.as_str());
        let points = &walk["progress"]["points"];
        for (point, answer) in &self.answers {
            assert_eq!(points[point]["given"]["given"]["answer"], answer.as_str(), "{point}");
        }
        for (point, note) in &self.notes {
            assert_eq!(points[point]["note"], note.as_str(), "{point}");
        }
        for (point, pictures) in &self.pictures {
            assert_eq!(points[point]["photos"], json!(pictures), "{point}");
            for name in pictures {
                let picture = phone.call("photo", json!({ "digest": name })).unwrap();
                let bytes = Base64::decode_vec(picture["data"].as_str().unwrap()).unwrap();
                assert_eq!(Digest::of(&bytes).to_string(), *name);
            }
        }
    }

    /// Room again: every point is answered, the list signed, and the records verify.
    pub fn go_on(&mut self, phone: &mut impl Phone, chance: &mut Chance) {
        for point in self.points.clone() {
            self.answer(phone, &point, chance).unwrap();
        }
        self.is_kept(phone);
        let signed = phone.call("sign", json!({ "walk": self.walk, "pin": super::PIN })).unwrap();
        let record = phone.call("record", json!({ "digest": signed["record"] })).unwrap();
        assert_eq!(record["good"], true);
        let file = phone.call("export", json!({ "machine": self.machine })).unwrap();
        let verified = phone.call("verify", json!({ "text": file["text"] })).unwrap();
        assert_eq!(verified["good"], true, "{verified}");
    }

    pub fn counts(&self) -> String {
        let pictures: usize = self.pictures.values().map(Vec::len).sum();
        format!("{} answers, {} notes, {pictures} pictures kept", self.answers.len(), self.notes.len())
    }
}
