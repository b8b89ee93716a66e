//! A server that lies, each way it can: the app says so in plain words, loses nothing, and goes on with an
//! honest server as if nothing had been. What is expected follows from RFC 6962 § 2.1 (a log only grows,
//! and each signed root binds all leaves before it) and from our own words in the catalogue.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../../shared/core/tests/common/mod.rs"]
mod common;
#[allow(dead_code)]
#[path = "simulation/phone.rs"]
mod phone;
#[allow(dead_code)]
#[path = "simulation/reference.rs"]
mod reference;

use std::collections::BTreeSet;

use common::{Body, Digest, described, look};
use phone::{Phone, Time, person};
use reference::{Reference, Serves, ok};
use uuid::Uuid;
use witnessmark_app::views::SyncView;
use witnessmark_app::{Fault, Request};
use witnessmark_core::record::{
    Envelope, Machine, MachineEnrolled, MemberAdmitted, Record, Role, SchoolFounded, SigningSeed,
    write_bundle,
};
use witnessmark_sync::client::Answer;
use witnessmark_sync::wire::{LogLine, Pushed, Taken};

const MORNING: i64 = 1_777_701_600_000;
struct School {
    time: Time,
    school: Digest,
    root: Phone,
    pilot: Phone,
    server: Reference,
}

fn machine() -> Uuid {
    common::machine()
}

/// A school of two phones and a server that has been honest so far; both know all of its log.
fn school() -> School {
    let time = Time::default();
    time.set(MORNING);
    let (mut root, mut pilot) = (Phone::new(0, 0, &time), Phone::new(1, 1, &time));
    let founded = SchoolFounded { name: "Invented school".into(), invented: false };
    let school = root.writes(None, &Body::SchoolFounded(founded)).digest;
    let founding = root.records();
    let server = Reference::new(school, SigningSeed::from_bytes(&[250; 32]), &founding);
    root.joins(school, &server.verifier());
    pilot.app().import(write_bundle(&founding)).unwrap();
    pilot.joins(school, &server.verifier());
    let its_key = pilot.records();
    root.app().import(write_bundle(&its_key)).unwrap();
    let admitted = MemberAdmitted {
        school,
        device: pilot.id(),
        person: person(1),
        name: "Invented pilot".into(),
        role: Role::Pilot,
        from: "2026-05-01".parse().unwrap(),
        until: None,
    };
    root.writes(None, &Body::MemberAdmitted(admitted));
    pilot.writes(Some(machine()), &Body::Machine(Machine { invented: false, ..described() }));
    let enrolled = MachineEnrolled { school: Some(school) };
    pilot.writes(Some(machine()), &Body::MachineEnrolled(enrolled));
    let mut school = School { time, school, root, pilot, server };
    for _ in 0..2 {
        school.honest(true).unwrap();
        school.honest(false).unwrap();
    }
    school.pilot.writes(Some(machine()), &look(vec![]));
    school.honest(false).unwrap();
    school.honest(true).unwrap();
    school
}

impl School {
    /// A round of one phone, with whoever answers.
    fn round(
        &mut self,
        root: bool,
        mut answers: impl FnMut(&mut Reference, &Request, i64) -> Answer,
    ) -> Result<SyncView, Fault> {
        let now = self.time.ms() / 1000;
        let phone = if root { &mut self.root } else { &mut self.pilot };
        phone.round(|request| answers(&mut self.server, request, now))?;
        Ok(phone.app().school()?.sync)
    }

    fn honest(&mut self, root: bool) -> Result<SyncView, Fault> {
        self.round(root, |server, request, now| server.answer(request, now))
    }

    /// The root signs something, and the server takes it: the log grows.
    fn grows(&mut self) {
        self.root.writes(Some(machine()), &look(vec![]));
        self.honest(true).unwrap();
    }

    fn backup(&self) -> Vec<Envelope> {
        self.server.log.iter().map(|(envelope, _)| envelope.clone()).collect()
    }

    fn serves(&mut self, log: Vec<Envelope>) {
        self.server = Reference::new(self.school, SigningSeed::from_bytes(&[250; 32]), &[]);
        log.into_iter().for_each(|envelope| self.server.append(envelope));
    }

    /// The pilot's phone has been told a lie: what it says, what it keeps, and that it comes to itself.
    fn is_told(
        &mut self,
        done: Result<SyncView, Fault>,
        words: &str,
        honest: Vec<Envelope>,
        before: &BTreeSet<Digest>,
    ) {
        let fault = done.expect_err(words);
        assert_eq!(fault.kind, "server-lies", "{fault:?}");
        assert_eq!(self.pilot.app().show(&fault).message, words);
        let view = self.pilot.app().school().unwrap().sync;
        assert_eq!((view.state.as_str(), view.words.as_str()), ("distrusted", words));
        assert!(view.hint.contains("school"), "{}", view.hint);
        // Nothing more is exchanged, and nothing here is lost; one can go on signing.
        assert_eq!(self.honest(false).unwrap_err().kind, "server-distrusted");
        assert!(digests(&mut self.pilot).is_superset(before));
        let signed = self.pilot.writes(Some(machine()), &look(vec![])).digest;
        // An honest server again: all that anybody signed is there, and the phone believes it.
        self.serves(honest);
        self.pilot.app().server_anew().unwrap();
        assert_eq!(self.honest(false).unwrap().state, "done");
        assert!(self.pilot.app().receipts().unwrap().good);
        let log: BTreeSet<Digest> = self.server.digests().into_iter().collect();
        assert!(log.contains(&signed) && log.is_superset(before));
        assert_eq!(digests(&mut self.pilot), log);
    }
}

fn digests(phone: &mut Phone) -> BTreeSet<Digest> {
    phone.records().iter().map(|record| record.digest).collect()
}

const SHRUNK: &str = "The server has dropped records that it had signed for.";
const REWRITTEN: &str =
    "The server now shows another history of the same length than the one it had signed for.";
const INCONSISTENT: &str = "What the server shows now does not go on from what it had signed for.";
const OTHER_RECORDS: &str = "The server hands out other records than those it has signed for.";
const SWALLOWED: &str = "The server said that it had taken a record, and left it out.";
const OTHER_KEY: &str = "The server's word is not signed with the key it had when you joined.";
const TWO_FACED: &str = "The server tells the two of you different things.";

/// What the lying server makes of its log; it signs whatever comes of it, in its own hand.
fn lie_of_log(words: &str, lie: impl FnOnce(&mut School)) {
    let mut school = school();
    let (honest, before) = (school.backup(), digests(&mut school.pilot));
    lie(&mut school);
    let done = school.honest(false);
    school.is_told(done, words, honest, &before);
}

#[test]
fn a_log_cut_short() {
    lie_of_log(SHRUNK, |school| drop(school.server.log.pop()));
}

#[test]
fn a_record_dropped_from_the_middle_while_the_log_grows() {
    lie_of_log(INCONSISTENT, |school| {
        school.server.log.remove(3);
        (0..3).for_each(|n| appended(school, n));
    });
}

#[test]
fn another_history_of_the_same_length() {
    lie_of_log(REWRITTEN, |school| {
        school.server.log.pop();
        appended(school, 1);
    });
}

#[test]
fn two_records_in_each_others_place() {
    lie_of_log(REWRITTEN, |school| school.server.log.swap(2, 4));
    lie_of_log(INCONSISTENT, |school| {
        school.server.log.swap(2, 4);
        appended(school, 1);
    });
}

/// The server appends a record of the root that the phone hasn't seen.
fn appended(school: &mut School, n: i64) {
    school.time.set(MORNING + n * 1000);
    let record = school.root.writes(Some(machine()), &look(vec![]));
    school.server.append(record.envelope);
}

#[test]
fn an_old_word_said_again() {
    let mut school = school();
    let old = school.server.checkpoint();
    school.grows();
    school.honest(false).unwrap();
    let (honest, before) = (school.backup(), digests(&mut school.pilot));
    let done = school.round(false, |server, request, now| {
        if request.url.ends_with("/v1/checkpoint") {
            return ok(200, old.clone().into_bytes());
        }
        server.answer(request, now)
    });
    school.is_told(done, SHRUNK, honest, &before);
}

#[test]
fn a_word_in_another_hand() {
    let mut school = school();
    let (honest, before) = (school.backup(), digests(&mut school.pilot));
    school.server.seed = SigningSeed::from_bytes(&[251; 32]);
    let done = school.honest(false);
    school.is_told(done, OTHER_KEY, honest, &before);
}

#[test]
fn other_records_than_were_signed_for() {
    for grown in [1, 40] {
        let mut school = school();
        let before = digests(&mut school.pilot);
        (0..grown).for_each(|n| appended(&mut school, n));
        let honest = school.backup();
        // Signed by a member, every bit of it good, and not what lies in the log.
        let other = school.root.writes(Some(machine()), &look(vec![]));
        let line = serde_json::to_string(&LogLine::Whole(other.envelope)).unwrap() + "\n";
        let done = school.round(false, |server, request, now| {
            let answer = server.answer(request, now);
            if !request.url.contains("/v1/log") {
                return answer;
            }
            let text = String::from_utf8(answer.body.clone()).unwrap();
            let rest: String = text.split_inclusive('\n').skip(1).collect();
            Answer { body: (line.clone() + &rest).into_bytes(), ..answer }
        });
        // None of such a page is kept.
        assert_eq!(digests(&mut school.pilot), before);
        school.is_told(done, OTHER_RECORDS, honest, &before);
    }
}

#[test]
fn a_record_acknowledged_and_left_out() {
    let mut school = school();
    let honest = school.backup();
    let mine = school.pilot.writes(Some(machine()), &look(vec![]));
    let before = digests(&mut school.pilot);
    let done = school.round(false, |server, request, now| {
        if request.url.ends_with("/v1/records") {
            let taken = vec![Taken { digest: mine.digest, index: server.log.len() as u64 }];
            return ok(200, serde_json::to_vec(&Pushed { taken, refused: Vec::new() }).unwrap());
        }
        server.answer(request, now)
    });
    school.is_told(done, SWALLOWED, honest, &before);
}

#[test]
fn two_phones_told_different_things() {
    let mut school = school();
    let honest = school.backup();
    // To the root it says one thing, to the pilot another, and each story holds in itself.
    let (one, other) = (
        school.root.writes(Some(machine()), &look(vec![])),
        school.root.writes(Some(machine()), &Body::Machine(Machine { invented: false, ..described() })),
    );
    school.server.append(one.envelope);
    assert_eq!(school.honest(false).unwrap().state, "done");
    school.serves(honest.clone());
    school.server.append(other.envelope);
    assert_eq!(school.honest(true).unwrap().state, "done");
    let before = digests(&mut school.pilot);
    school.honest(false).unwrap_err();
    // Found out at once where both speak with it; and, without any network, by the phones themselves.
    school.pilot.app().server_anew().unwrap();
    let told_to_root = school.root.app().checkpoint_code().unwrap().text;
    school.serves(honest.clone());
    let mut behind = school.root.records();
    behind.retain(|record| record.payload.kind == "inspection");
    school.server.append(behind.pop().unwrap().envelope);
    while school.server.log.len() < honest.len() + 4 {
        appended(&mut school, 7);
    }
    school.honest(false).unwrap();
    let done = school.pilot.app().checkpoint_compare(told_to_root).map(|_| unreachable!("they differ"));
    school.is_told(done, TWO_FACED, honest, &before);
}

#[test]
fn garbage_is_no_server_and_is_told_as_that() {
    let garbage: [&[u8]; 3] =
        [b"<html>Sign in to the hotel's network</html>\n", &[0xff, 0xfe, 0x0a], b"{}\n"];
    for garbage in garbage {
        for path in ["/v1/checkpoint", "/v1/proof/consistency", "/v1/log", "/v1/records"] {
            let mut school = school();
            (0..20).for_each(|n| appended(&mut school, n));
            school.pilot.writes(Some(machine()), &look(vec![]));
            let before = digests(&mut school.pilot);
            let fault = school
                .round(false, |server, request, now| {
                    if request.url.contains(path) {
                        return ok(200, garbage.to_vec());
                    }
                    server.answer(request, now)
                })
                .expect_err(path);
            // Nobody signed that: no lie is proven, and the next answer may be the server's own.
            assert_eq!(fault.kind, "server-answer", "{path}");
            let view = school.pilot.app().school().unwrap().sync;
            assert_eq!(view.state, "failed", "{path}");
            assert!(view.words.contains("What answers there is not a school's server."), "{}", view.words);
            assert!(digests(&mut school.pilot).is_superset(&before), "{path}");
            assert_eq!(school.honest(false).unwrap().state, "done", "{path}");
        }
    }
}

#[test]
fn a_forged_record_rightly_in_its_tree_is_kept_aside_and_the_rest_is_taken() {
    let mut school = school();
    appended(&mut school, 1);
    // Somebody else's words under the root's name; and something that is no record at all.
    let mut forged = school.root.writes(Some(machine()), &look(vec![])).envelope;
    let good = school.root.writes(Some(machine()), &look(vec![])).envelope;
    forged.signature = good.signature.clone();
    let odd = Envelope { payload: "{\"v\":1}".into(), ..good.clone() };
    let before = digests(&mut school.pilot);
    for envelope in [forged, good.clone(), odd] {
        school.server.append(envelope);
    }
    appended(&mut school, 2);
    assert_eq!(school.honest(false).unwrap().state, "done");
    let here = digests(&mut school.pilot);
    assert_eq!(here.len(), before.len() + 3);
    assert!(here.contains(&Record::parse(good).unwrap().digest));
    let refused = school.pilot.app().refused().unwrap();
    assert_eq!(refused.len(), 2);
    assert!(refused.iter().any(|line| line.machine == Some(machine().to_string())), "{refused:?}");
    assert!(school.pilot.app().receipts().unwrap().good);
    assert_eq!(school.honest(false).unwrap().state, "done");
}

#[test]
fn pages_without_end_end() {
    // No page has anything in it.
    let mut school = school();
    appended(&mut school, 1);
    let empty = school.round(false, |server, request, now| {
        if request.url.contains("/v1/log") { ok(200, Vec::new()) } else { server.answer(request, now) }
    });
    assert_eq!(empty.unwrap_err().kind, "server-busy");
    assert_eq!(school.honest(false).unwrap().state, "done");
    // A page that goes on past the log's end, as signed for.
    let more = school.root.writes(Some(machine()), &look(vec![])).envelope;
    let line = serde_json::to_string(&LogLine::Whole(more)).unwrap() + "\n";
    appended(&mut school, 2);
    let past = school.round(false, |server, request, now| {
        let answer = server.answer(request, now);
        if !request.url.contains("/v1/log") {
            return answer;
        }
        let mut body = answer.body.clone();
        (0..500).for_each(|_| body.extend(line.as_bytes()));
        Answer { body, ..answer }
    });
    assert_eq!(past.unwrap().state, "done");
    assert!(school.pilot.app().receipts().unwrap().good);
    // A log that grows with every question.
    let spare: Vec<Envelope> = (0..300)
        .map(|n| {
            school.time.set(MORNING + 60_000 + n);
            school.root.writes(Some(machine()), &look(vec![])).envelope
        })
        .collect();
    let mut spare = spare.into_iter();
    school.pilot.writes(Some(machine()), &look(vec![]));
    let grown = school.round(false, |server, request, now| {
        (0..3).for_each(|_| server.append(spare.next().unwrap()));
        server.answer(request, now)
    });
    assert_eq!(grown.unwrap().state, "done");
}
