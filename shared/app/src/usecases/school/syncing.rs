//! A round with the school's server, step by step: the face carries the requests.

use base64ct::{Base64UrlUnpadded, Encoding};
use witnessmark_core::record::SigningSeed;
use witnessmark_core::said::Said;
use witnessmark_store::Tx;
use witnessmark_sync::client::{Answer, Ask, Lie, Next, Round, RoundFault};
use witnessmark_sync::message::{Unsigned, sign};

use super::local::LocalTx;
use super::place::{Distrust, LastRound, Place, courier, keep_place, own, placed};
use crate::house::House;
use crate::views::{SchoolView, SyncView};
use crate::{App, Fault};

/// A request, signed and ready.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Request {
    /// The method.
    pub method: &'static str,
    /// The whole address.
    pub url: String,
    /// Headers to be set.
    pub headers: Vec<(String, String)>,
    /// The body.
    pub body: Vec<u8>,
}

/// What a round's step asks for.
#[derive(Clone, Debug, PartialEq)]
pub enum SyncStep {
    /// Make this request, and give the answer to the next step.
    Ask(Request),
    /// The round is over.
    Done(SyncView),
}

impl App {
    /// One step of a round (begun with [`Round::default`]), given the answer to what was asked last.
    /// However it ends, the screen can tell afterwards.
    ///
    /// # Errors
    /// [`Fault`]: no server, a server that refuses, is busy or lies.
    pub fn sync_step(&mut self, round: &mut Round, answer: Option<Answer>) -> Result<SyncStep, Fault> {
        let house = &self.house;
        self.store.write(|tx| {
            let place = trusted(tx)?;
            let mut local = LocalTx { tx, house };
            // What was kept is kept, whatever follows: a lie found in a page undoes no earlier page.
            match round.next(&mut local, answer) {
                Ok(Next::Ask(ask)) => Ok(Ok(SyncStep::Ask(house.request(tx, &place, ask)?))),
                Ok(Next::Done(outcome)) => {
                    let end = if outcome.waits { "waits" } else { "done" };
                    house.ended(tx, end, String::new())?;
                    Ok(Ok(SyncStep::Done(house.sync_view(tx)?)))
                }
                Err(RoundFault::Local(fault)) => Err(fault),
                Err(fault) => Ok(Err(house.round_fault(tx, fault)?)),
            }
        })?
    }

    /// Tells that the server couldn't be reached.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn sync_unreachable(&mut self, why: &str) -> Result<Fault, Fault> {
        let fault = Fault::new("server-unreachable").text("why", why);
        self.store.write(|tx| {
            let words = self.house.say(&fault.said);
            self.house.ended(tx, fault.kind, words)
        })?;
        Ok(fault)
    }

    /// Lets records that the server wouldn't take be sent again.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn sync_retry(&mut self) -> Result<SchoolView, Fault> {
        self.store.write(|tx| {
            tx.stuck_retry()?;
            self.house.school_view(tx)
        })
    }

    /// A signed question to the school's server; for what isn't part of a round.
    ///
    /// # Errors
    /// [`Fault`]: no server.
    pub fn server_ask(&mut self, path: &str) -> Result<Request, Fault> {
        let house = &self.house;
        self.store.read(|tx| {
            let place = trusted(tx)?;
            house.request(tx, &place, question(path))
        })
    }
}

pub(super) fn question(path: &str) -> Ask {
    Ask {
        method: "GET",
        path: path.to_owned(),
        media: None,
        range: None,
        content_range: None,
        body: Vec::new(),
        signed: true,
    }
}

/// The place, where it has a server that hasn't been found lying.
fn trusted(tx: &Tx<'_>) -> Result<Place, Fault> {
    let place = placed(tx)?;
    if place.address.is_none() || place.following.is_none() {
        return Err(Fault::new("no-server"));
    }
    if place.distrust.is_some() {
        return Err(Fault::new("server-distrusted"));
    }
    Ok(place)
}

impl House {
    fn request(&self, tx: &Tx<'_>, place: &Place, ask: Ask) -> Result<Request, Fault> {
        let seed = courier(self, tx, &own(tx)?.device)?;
        self.signed_request(place.address.as_deref().unwrap_or_default(), ask, &seed)
    }

    /// A request as it goes out, signed with this key where it must be.
    pub(super) fn signed_request(
        &self,
        address: &str,
        ask: Ask,
        seed: &SigningSeed,
    ) -> Result<Request, Fault> {
        let mut headers = Vec::new();
        let named = [("content-type", ask.media), ("range", ask.range), ("content-range", ask.content_range)];
        for (name, value) in named {
            headers.extend(value.map(|value| (name.to_owned(), value)));
        }
        if ask.signed {
            let (path, query) = match ask.path.split_once('?') {
                Some((path, query)) => (path, Some(query)),
                None => (ask.path.as_str(), None),
            };
            let unsigned =
                Unsigned { method: ask.method, authority: authority(address), path, query, body: &ask.body };
            let mut nonce = [0u8; 16];
            self.platform.random(&mut nonce)?;
            let nonce = Base64UrlUnpadded::encode_string(&nonce);
            let signed = sign(&unsigned, self.now().timestamp(), &nonce, seed).map_err(Fault::internal)?;
            headers.extend(signed.each().map(|(name, value)| (name.to_owned(), value.to_owned())));
        }
        let url = format!("{}{}", address.trim_end_matches('/'), ask.path);
        Ok(Request { method: ask.method, url, headers, body: ask.body })
    }

    fn ended(&self, tx: &Tx<'_>, end: &str, words: String) -> Result<(), Fault> {
        let last = LastRound { at: self.now().to_rfc3339(), end: end.to_owned(), words };
        keep_place(tx, Some(&Place { last: Some(last), ..placed(tx)? }))
    }

    fn round_fault(&self, tx: &Tx<'_>, fault: RoundFault<Fault>) -> Result<Fault, Fault> {
        let fault = match fault {
            RoundFault::Local(fault) => fault,
            RoundFault::Busy { status } => Fault::new("server-busy").number("status", status),
            RoundFault::Refused(wire) => {
                Fault::new("server-refused").text("words", wire.message).text("hint", wire.hint)
            }
            RoundFault::Answer(why) => Fault::new("server-answer").text("why", why),
            RoundFault::Lies { lie, says, said } => {
                let lie = lie_id(&lie).to_owned();
                let at = self.now().to_rfc3339();
                let fault = Fault::new("server-lies").text("words", self.say(&Said::new(lie.clone())));
                let distrust = Some(Distrust { at, lie, says, said });
                keep_place(tx, Some(&Place { distrust, ..placed(tx)? }))?;
                fault
            }
        };
        let words = self.say(&fault.said);
        self.ended(tx, fault.kind, words)?;
        Ok(fault)
    }
}

/// The message that tells a lie in plain words.
fn lie_id(lie: &Lie) -> &'static str {
    match lie {
        Lie::Shrunk { .. } => "lie-shrunk",
        Lie::Rewritten { .. } => "lie-rewritten",
        Lie::Inconsistent { .. } => "lie-inconsistent",
        Lie::OtherRecords { .. } => "lie-other-records",
        Lie::Swallowed { .. } => "lie-swallowed",
        Lie::OtherKey => "lie-other-key",
    }
}

/// Host and port of an address, as the `Host` header has them: without the scheme's usual port.
fn authority(address: &str) -> &str {
    let (scheme, rest) = address.split_once("://").unwrap_or(("https", address));
    let authority = rest.split('/').next().unwrap_or(rest);
    let usual = if scheme == "http" { ":80" } else { ":443" };
    authority.strip_suffix(usual).unwrap_or(authority)
}
