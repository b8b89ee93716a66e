//! The calls that need the network.

use std::sync::{Mutex, PoisonError};

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use witnessmark_app::views::{ApplicantView, DeskView, SchoolCardView, SchoolView, SyncView};
use witnessmark_app::{Fault, FaultView, NetCall, Request};
use witnessmark_sync::client::Answer;
use witnessmark_sync::wire::{Draft, SchoolCard, WaitingDevice, WireFault};

use super::address::normal;
use super::door::show;
use super::rounds::sync;
use super::{Door, Net, Unsent};

/// Does what the call asks for, and gives the reply as JSON.
///
/// # Errors
/// [`FaultView`], in the person's language.
pub fn net_call(door: &impl Door, net: &Net, call: NetCall) -> Result<Value, FaultView> {
    let done = match call {
        NetCall::Sync {} => sync(door, net).and_then(reply),
        NetCall::SchoolLook { address } => look(door, net, &address).and_then(reply),
        NetCall::SchoolFollow { address, pin } => follow(door, net, &address, &pin).and_then(reply),
        NetCall::SchoolWaiting {} => waiting(door, net).and_then(reply),
        NetCall::DeskConfirm { text, pin } => confirm(door, net, &text, &pin).and_then(reply),
        NetCall::DraftOpen { text } => draft(door, net, &text).and_then(reply),
        NetCall::DraftSign { text, pin } => sign(door, net, &text, &pin).and_then(reply),
    };
    done.map_err(|fault| show(door, &fault))
}

/// What the server at an address says of its school.
///
/// # Errors
/// [`Fault`]: no address, nobody there, no school's server.
pub fn look(door: &impl Door, net: &Net, address: &str) -> Result<SchoolCardView, Fault> {
    let address = normal(address)?;
    let card = card_at(door, net, &address)?;
    let view = door.app(|app| app.school_card(&card, &address))??;
    put(&net.looked, address, card);
    Ok(view)
}

/// Joins the school that was shown, or brings this device's own school its server; then goes a round, so
/// that the school hears of it.
///
/// # Errors
/// [`Fault`]: as for [`look`]; another school already, a wrong PIN.
pub fn follow(door: &impl Door, net: &Net, address: &str, pin: &str) -> Result<SchoolView, Fault> {
    let address = normal(address)?;
    let card = match got(&net.looked, &address) {
        Some(card) => card,
        None => card_at(door, net, &address)?,
    };
    door.app(|app| app.school_follow(&card, &address, pin))??;
    // What was shown was agreed to once: the server may be set up anew before it is looked at again.
    *net.looked.lock().unwrap_or_else(PoisonError::into_inner) = None;
    // Joined is joined: how the round went is told in the view.
    drop(sync(door, net));
    door.app(|app| app.school())?
}

/// Those who wait at the server to be admitted.
///
/// # Errors
/// [`Fault`]: not the root, no server.
pub fn waiting(door: &impl Door, net: &Net) -> Result<Vec<ApplicantView>, Fault> {
    let request = door.app(|app| app.server_ask("/v1/waiting"))??;
    let waiting: Vec<WaitingDevice> = read(&asked(door, net, &request)?)?;
    door.app(|app| app.school_applicants(&waiting))?
}

/// Confirms a sign-in at the board.
///
/// # Errors
/// [`Fault`]: no such code or too old a one, a wrong PIN.
pub fn confirm(door: &impl Door, net: &Net, text: &str, pin: &str) -> Result<DeskView, Fault> {
    let request = door.app(|app| app.desk_confirm(text, pin))??;
    asked(door, net, &request)?;
    door.app(|app| app.desk_open(text.to_owned()))?
}

/// Fetches what the board prepared, to be read before it is signed.
///
/// # Errors
/// [`Fault`]: no such code, nothing that may be signed so.
pub fn draft(door: &impl Door, net: &Net, text: &str) -> Result<DeskView, Fault> {
    let request = door.app(|app| app.draft_ask(text))??;
    let draft: Draft = read(&asked(door, net, &request)?)?;
    let view = door.app(|app| app.draft_view(&draft))??;
    put(&net.opened, text.to_owned(), draft);
    Ok(view)
}

/// Signs what the board prepared, exactly as it was shown, and sends it.
///
/// # Errors
/// [`Fault`]: not shown before, no right to it, a wrong PIN.
pub fn sign(door: &impl Door, net: &Net, text: &str, pin: &str) -> Result<SyncView, Fault> {
    let draft = got(&net.opened, text).ok_or_else(|| Fault::new("draft-not-shown"))?;
    door.app(|app| app.draft_sign(&draft, pin))??;
    // Signed is signed, and waits here if it can't be sent now.
    drop(sync(door, net));
    Ok(door.app(|app| app.school())??.sync)
}

fn card_at(door: &impl Door, net: &Net, address: &str) -> Result<SchoolCard, Fault> {
    let url = format!("{address}/v1/school");
    let open = Request { method: "GET", url, headers: Vec::new(), body: Vec::new() };
    read(&asked(door, net, &open)?)
}

/// The answer, where it is one.
fn asked(door: &impl Door, net: &Net, request: &Request) -> Result<Answer, Fault> {
    let answer = match net.send(request) {
        Ok(answer) => answer,
        Err(Unsent::Plain) => return Err(Fault::new("server-plain").text("address", &request.url)),
        Err(why) => {
            let why = door.app(|app| app.say(&why.said()))?;
            return Err(Fault::new("server-unreachable").text("why", why));
        }
    };
    match answer.status {
        200..=299 if !answer.broken => Ok(answer),
        200..=299 | 429 | 500..=599 => Err(Fault::new("server-busy").number("status", answer.status)),
        _ => Err(match serde_json::from_slice::<WireFault>(&answer.body) {
            Ok(wire) => Fault::new("server-refused").text("words", wire.message).text("hint", wire.hint),
            Err(_) => Fault::new("server-answer"),
        }),
    }
}

fn read<T: DeserializeOwned>(answer: &Answer) -> Result<T, Fault> {
    serde_json::from_slice(&answer.body).map_err(|_| Fault::new("server-answer"))
}

fn reply(view: impl Serialize) -> Result<Value, Fault> {
    serde_json::to_value(view).map_err(Fault::internal)
}

fn put<T>(shown: &Mutex<Option<(String, T)>>, name: String, what: T) {
    *shown.lock().unwrap_or_else(PoisonError::into_inner) = Some((name, what));
}

fn got<T: Clone>(shown: &Mutex<Option<(String, T)>>, name: &str) -> Option<T> {
    let shown = shown.lock().unwrap_or_else(PoisonError::into_inner);
    shown.as_ref().filter(|(known, _)| known == name).map(|(_, what)| what.clone())
}
