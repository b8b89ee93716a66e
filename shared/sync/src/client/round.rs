//! One round, step by step.

use std::collections::BTreeSet;

use witnessmark_core::record::Digest;

use super::{Following, Local};
use crate::checkpoint::{Checkpoint, CheckpointFault};
use crate::merkle::{Frontier, consistent};
use crate::note::{NoteFault, Verifier};
use crate::wire::{Proof, WireFault};

/// Kinds of faults that say so.
const NOT_IN: [&str; 2] = ["unknown-key", "not-a-member"];

/// A request to be made. Whoever makes it signs it with the device's courier key, unless it is open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ask {
    /// `GET`, `HEAD`, `POST` or `PUT`.
    pub method: &'static str,
    /// Path with query, from the server's address on.
    pub path: String,
    /// `Content-Type`, with a body.
    pub media: Option<String>,
    /// `Range`, for a part of a picture.
    pub range: Option<String>,
    /// `Content-Range`, for a part of a picture.
    pub content_range: Option<String>,
    /// The body.
    pub body: Vec<u8>,
    /// Whether it must be signed.
    pub signed: bool,
}

impl Ask {
    pub(super) fn get(path: impl Into<String>) -> Self {
        Self {
            method: "GET",
            path: path.into(),
            media: None,
            range: None,
            content_range: None,
            body: Vec::new(),
            signed: true,
        }
    }
}

/// What came back.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Answer {
    /// The HTTP status.
    pub status: u16,
    /// `Content-Type`.
    pub media: Option<String>,
    /// `Content-Length` of a `HEAD`, or the total in `Content-Range`.
    pub length: Option<u64>,
    /// The body, as far as it came.
    pub body: Vec<u8>,
    /// Whether the connection broke before the body's end.
    pub broken: bool,
}

/// What to do next.
#[derive(Clone, Debug, PartialEq)]
pub enum Next {
    /// Ask this, and give the answer to the next step.
    Ask(Ask),
    /// The round is over.
    Done(Outcome),
}

/// What a round did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// Records that came.
    pub came: u64,
    /// Records that went.
    pub sent: u64,
    /// Records that the server wouldn't take.
    pub refused: u64,
    /// Pictures that came.
    pub photos_came: u64,
    /// Pictures that went.
    pub photos_sent: u64,
    /// The school hasn't admitted this device (yet).
    pub waits: bool,
}

/// What a server can't say and be honest.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Lie {
    /// Its log is shorter than it was.
    #[error("the log had {before} records and has {now}")]
    Shrunk {
        /// As it was.
        before: u64,
        /// As it is said to be now.
        now: u64,
    },
    /// Same length, other content.
    #[error("the log of {size} records is another than it was")]
    Rewritten {
        /// How long.
        size: u64,
    },
    /// What is there now doesn't go on from what was there.
    #[error("the log of {now} records does not go on from that of {before}")]
    Inconsistent {
        /// As it was.
        before: u64,
        /// As it is said to be now.
        now: u64,
    },
    /// The records given aren't those of its own checkpoint.
    #[error("the records from number {first} on are not those that the server signed for")]
    OtherRecords {
        /// The first of them.
        first: u64,
    },
    /// A record acknowledged isn't in the log.
    #[error("the server acknowledged a record and left it out of its log")]
    Swallowed {
        /// The record.
        digest: Digest,
    },
    /// The checkpoint isn't signed by the server's key.
    #[error("the checkpoint is not signed by this school's server")]
    OtherKey,
}

/// Why a round can't go on.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum RoundFault<F> {
    /// The device's own storage.
    #[error("the storage failed")]
    Local(F),
    /// The server lies: what it said and what it had said, as signed notes where there are any.
    #[error("{lie}")]
    Lies {
        /// How.
        lie: Lie,
        /// What it says now.
        says: String,
        /// What it had said.
        said: Option<String>,
    },
    /// The server won't answer now: later.
    #[error("the server is busy ({status})")]
    Busy {
        /// The HTTP status.
        status: u16,
    },
    /// The server refuses, in its own words.
    #[error("{}", .0.message)]
    Refused(WireFault),
    /// What came isn't what this protocol says.
    #[error("the answer can't be understood: {0}")]
    Answer(&'static str),
}

/// Where a round stands.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) enum Stage {
    /// Ask for the checkpoint.
    #[default]
    Begin,
    /// The checkpoint is asked for.
    Checkpoint,
    /// A proof is asked for that the log goes on from where we stand.
    GoesOn(Target),
    /// A page is asked for.
    Page(Target, bool),
    /// A proof is asked for that a page's leaves lie in the log.
    PageProof(Target, super::Page, Frontier),
    /// Send what waits.
    Push,
    /// Records are sent.
    Pushed(Vec<Digest>),
    /// Asked to be let in.
    Introduced,
    /// Pictures.
    Photos,
    /// How much of a picture the server has is asked for.
    PhotoHead(Digest),
    /// A part of a picture is sent.
    PhotoPut(Digest, u64),
    /// A part of a picture is asked for.
    PhotoGet(Digest),
    /// Over.
    Over,
}

/// A checkpoint whose signature is good, not yet joined to what is known.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Target {
    pub(super) note: String,
    pub(super) checkpoint: Checkpoint,
}

/// A round with the server.
#[derive(Clone, Debug, Default)]
pub struct Round {
    pub(super) stage: Stage,
    pub(super) outcome: Outcome,
    /// The number of the last record sent in this round, as it arrived here.
    pub(super) sent_upto: u64,
    /// Acknowledged in this round, to be found in the log.
    pub(super) acknowledged: BTreeSet<Digest>,
    /// Whether everything that waited has been sent.
    pub(super) all_sent: bool,
    /// Pictures that couldn't be had or sent in this round.
    pub(super) skipped: BTreeSet<Digest>,
    /// What was known of the server when it was asked last.
    upon: Option<Upon>,
}

/// How far a log was followed: the leaves taken, and the latest checkpoint found right.
type Upon = (u64, Option<String>);

fn upon(following: &Following) -> Upon {
    (following.frontier.size(), following.checkpoint.clone())
}

impl Round {
    /// The next step, given the answer to what was asked last.
    ///
    /// # Errors
    /// [`RoundFault`]. The round is over then.
    pub fn next<L: Local>(
        &mut self,
        local: &mut L,
        answer: Option<Answer>,
    ) -> Result<Next, RoundFault<L::Fault>> {
        let mut answer = answer;
        loop {
            let stage = std::mem::replace(&mut self.stage, Stage::Over);
            // A stage either asks, or goes on to the next one with nothing asked.
            if let Some(next) = self.step(local, stage, answer.take())? {
                return Ok(next);
            }
        }
    }

    fn step<L: Local>(
        &mut self,
        local: &mut L,
        stage: Stage,
        answer: Option<Answer>,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        // Another round has gone on meanwhile: what was said to this one is old, and no lie.
        let of_log =
            matches!(stage, Stage::Checkpoint | Stage::GoesOn(_) | Stage::Page(..) | Stage::PageProof(..));
        if of_log && self.upon != Some(upon(&local.following().map_err(RoundFault::Local)?)) {
            return self.go(Stage::Begin);
        }
        match (stage, answer) {
            (Stage::Begin, _) => {
                self.upon = Some(upon(&local.following().map_err(RoundFault::Local)?));
                self.ask(Stage::Checkpoint, Ask { signed: false, ..Ask::get("/v1/checkpoint") })
            }
            (Stage::Checkpoint, Some(answer)) => self.take_checkpoint(local, &answer),
            (Stage::GoesOn(target), Some(answer)) => self.take_goes_on(local, target, &answer),
            (Stage::Page(target, whole), Some(answer)) => self.take_page(local, target, whole, &answer),
            (Stage::PageProof(target, page, frontier), Some(answer)) => {
                self.take_page_proof(local, target, page, frontier, &answer)
            }
            (Stage::Push, _) => self.push(local),
            (Stage::Pushed(digests), Some(answer)) => self.take_pushed(local, digests, &answer),
            (Stage::Introduced, Some(answer)) => self.take_introduced(&answer),
            (Stage::Photos, _) => self.photos(local),
            (Stage::PhotoHead(digest), Some(answer)) => self.take_photo_head(local, digest, &answer),
            (Stage::PhotoPut(digest, upto), Some(answer)) => {
                self.take_photo_put(local, digest, upto, &answer)
            }
            (Stage::PhotoGet(digest), Some(answer)) => self.take_photo(local, digest, &answer),
            (Stage::Over, _) => Ok(Some(Next::Done(self.outcome.clone()))),
            (_, None) => Err(RoundFault::Answer("nothing came back")),
        }
    }

    pub(super) fn ask<F>(&mut self, stage: Stage, ask: Ask) -> Result<Option<Next>, RoundFault<F>> {
        self.stage = stage;
        Ok(Some(Next::Ask(ask)))
    }

    pub(super) fn go<F>(&mut self, stage: Stage) -> Result<Option<Next>, RoundFault<F>> {
        self.stage = stage;
        Ok(None)
    }

    fn take_checkpoint<L: Local>(
        &mut self,
        local: &mut L,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let note = good(answer)?;
        let note = std::str::from_utf8(note).map_err(|_| RoundFault::Answer("a checkpoint is text"))?;
        let following = local.following().map_err(RoundFault::Local)?;
        let lies = |lie| Err(lies(lie, note, &following));
        let log: Verifier =
            following.server.parse().map_err(|_| RoundFault::Answer("the server's key can't be read"))?;
        let checkpoint = match Checkpoint::open(note, &log) {
            Ok(checkpoint) => checkpoint,
            // Somebody else answered: a network that wants a sign-in, another site. No lie of the server's.
            Err(CheckpointFault::Malformed(why) | CheckpointFault::Note(NoteFault::Malformed(why))) => {
                return Err(RoundFault::Answer(why));
            }
            Err(_) => return lies(Lie::OtherKey),
        };
        // What the server had signed for and what this device took of it: both must still be there.
        let before = match &following.checkpoint {
            Some(note) => Checkpoint::open(note, &log).ok(),
            None => None,
        };
        if let Some(before) = &before {
            if checkpoint.size < before.size {
                return lies(Lie::Shrunk { before: before.size, now: checkpoint.size });
            }
            if checkpoint.size == before.size && checkpoint.root != before.root {
                return lies(Lie::Rewritten { size: before.size });
            }
        }
        let here = following.frontier.size();
        if checkpoint.size < here {
            return lies(Lie::Shrunk { before: here, now: checkpoint.size });
        }
        let target = Target { note: note.to_owned(), checkpoint };
        if target.checkpoint.size == here {
            if target.checkpoint.root != following.frontier.root() {
                return lies(Lie::Rewritten { size: here });
            }
            return self.followed(local, following, target);
        }
        if here == 0 {
            return self.page(&target, 0, false);
        }
        let path = format!("/v1/proof/consistency?from={here}&to={}", target.checkpoint.size);
        self.ask(Stage::GoesOn(target), Ask::get(path))
    }

    fn take_goes_on<L: Local>(
        &mut self,
        local: &mut L,
        target: Target,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        if outside(answer) {
            return self.introduce(local);
        }
        let following = local.following().map_err(RoundFault::Local)?;
        let here = following.frontier.size();
        if !proven(answer, &following.frontier, &target)? {
            let lie = Lie::Inconsistent { before: here, now: target.checkpoint.size };
            return Err(lies(lie, &target.note, &following));
        }
        self.page(&target, here, false)
    }

    /// Keeps a page, and from there goes on.
    pub(super) fn kept<L: Local>(
        &mut self,
        local: &mut L,
        page: &super::Page,
        following: &Following,
    ) -> Result<(), RoundFault<L::Fault>> {
        local.keep(page, following).map_err(RoundFault::Local)?;
        self.upon = Some(upon(following));
        Ok(())
    }

    /// All of the log is here: what was acknowledged must be in it.
    pub(super) fn followed<L: Local>(
        &mut self,
        local: &mut L,
        following: Following,
        target: Target,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        for digest in &self.acknowledged {
            if !local.has_receipt(digest).map_err(RoundFault::Local)? {
                return Err(lies(Lie::Swallowed { digest: *digest }, &target.note, &following));
            }
        }
        self.acknowledged.clear();
        if following.checkpoint.as_ref() != Some(&target.note) {
            let page = super::Page { first: following.frontier.size(), leaves: Vec::new() };
            let following = Following { checkpoint: Some(target.note), ..following };
            self.kept(local, &page, &following)?;
        }
        self.go(if self.all_sent { Stage::Photos } else { Stage::Push })
    }
}

pub(super) fn lies<F>(lie: Lie, says: &str, following: &Following) -> RoundFault<F> {
    RoundFault::Lies { lie, says: says.to_owned(), said: following.checkpoint.clone() }
}

/// Whether the tree of these leaves is proven to be the beginning of the target's.
pub(super) fn proven<F>(
    answer: &Answer,
    frontier: &Frontier,
    target: &Target,
) -> Result<bool, RoundFault<F>> {
    let proof: Proof = serde_json::from_slice(good(answer)?).map_err(|_| RoundFault::Answer("no proof"))?;
    let (size, root) = (target.checkpoint.size, &target.checkpoint.root);
    Ok(consistent(frontier.size(), &frontier.root(), size, root, &proof.path).is_ok())
}

/// Whether the school hasn't let this device in; not, say, that its clock is off.
pub(super) fn outside(answer: &Answer) -> bool {
    let fault = || serde_json::from_slice::<WireFault>(&answer.body).ok();
    matches!(answer.status, 401 | 403) && fault().is_some_and(|fault| NOT_IN.contains(&fault.kind.as_str()))
}

/// The body of an answer that is one.
pub(super) fn good<F>(answer: &Answer) -> Result<&[u8], RoundFault<F>> {
    match answer.status {
        200..=299 if answer.broken => Err(RoundFault::Busy { status: answer.status }),
        200..=299 => Ok(&answer.body),
        429 | 500..=599 => Err(RoundFault::Busy { status: answer.status }),
        _ => Err(refusal(answer)),
    }
}

pub(super) fn refusal<F>(answer: &Answer) -> RoundFault<F> {
    match serde_json::from_slice(&answer.body) {
        Ok(fault) => RoundFault::Refused(fault),
        Err(_) => RoundFault::Answer("it is not from a school's server"),
    }
}
