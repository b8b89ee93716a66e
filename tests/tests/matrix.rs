//! Who may do what in a school: every role against every action, as a table, held against core's fold,
//! against what the app refuses to sign, and against the server's router. The table is written down from
//! the design's words, not from the code:
//!
//! - viewer sees everything; pilot looks at machines before flight, and looks after their own; mechanic
//!   works on any machine and gives the second look; instructor all of that, and decides what may wait
//!   and which lists are used.
//! - the root alone admits, ends members and keys, and hands over; a machine is put under the school by
//!   its owner, and taken out by its owner or the root.
//! - what is found wrong may be said by anybody, and so may that work was begun: both make a verdict only
//!   more careful. A key that was ended says nothing at all.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../../shared/core/tests/common/mod.rs"]
mod common;
#[allow(dead_code)]
#[path = "simulation/phone.rs"]
mod phone;
#[allow(dead_code)]
#[path = "simulation/reference.rs"]
mod reference;
#[path = "../../shared/core/tests/common/schooling.rs"]
mod schooling;
#[allow(dead_code)]
#[path = "simulation/shipped.rs"]
mod shipped;

use std::collections::BTreeMap;

use argon2::{Algorithm, Argon2, Params, Version};
use base64ct::{Base64, Encoding};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use common::{
    Body, Digest, History, Trust, Uuid, correction, described, finding, limit, look, machine, rectified,
    revoked,
};
use phone::{Phone, Time, person};
use reference::Serves;
use schooling::{begun, component, deferred, due_item, enrolled, flown, listed, released, second};
use shipped::Shipped;
use witnessmark_app::Fault;
use witnessmark_app::views::PublishFile;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    CataloguePublished, Machine, MemberAdmitted, MemberEnded, Record, Right, Role, RootHanded, SchoolFounded,
    write_bundle,
};

const PIN: &str = "271828";
const MORNING: i64 = 1_777_701_600_000;

/// Who.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Who {
    Outsider,
    Viewer,
    PilotOwn,
    PilotOther,
    Mechanic,
    Instructor,
    Root,
    /// Was a mechanic until the root ended that.
    Ended,
    /// Was a mechanic whose key the root ended.
    Revoked,
    /// Was a mechanic until some days ago.
    Expired,
}

const EVERYBODY: [Who; 10] = [
    Who::Outsider,
    Who::Viewer,
    Who::PilotOwn,
    Who::PilotOther,
    Who::Mechanic,
    Who::Instructor,
    Who::Root,
    Who::Ended,
    Who::Revoked,
    Who::Expired,
];

/// What, with who may: one letter each in the order of [`EVERYBODY`], y or -.
const TABLE: [(&str, &str); 22] = [
    //                     OVpPMIREKX   outsider, viewer, pilot (own machine, another's), mechanic,
    //                                  instructor, root, ended member, ended key, expired
    ("look", "--yyyyy---"),
    ("find wrong", "yyyyyyyy-y"),
    ("correct to worse", "yyyyyyyy-y"),
    ("rectify", "--y-yyy---"),
    ("begin a job", "yyyyyyyy-y"),
    ("sign its list", "--y-yyy---"),
    ("second look", "----yyy---"),
    ("find wanting", "yyyyyyyy-y"),
    ("release", "--y-yyy---"),
    ("defer", "-----yy---"),
    ("describe", "--y-yyy---"),
    ("confirm a limit", "--y-yyy---"),
    ("log time", "--yyyyy---"),
    ("fit a component", "--y-yyy---"),
    ("keep a due item", "--y-yyy---"),
    ("enrol", "--y-------"),
    ("withdraw", "--y---y---"),
    ("publish", "-----yy---"),
    ("admit", "------y---"),
    ("end a member", "------y---"),
    ("end a key", "------y---"),
    ("hand over", "------y---"),
];

/// A school with a machine of the pilot's, something wrong with it, and a job on it that another did.
struct School {
    phones: Vec<Phone>,
    school: Digest,
    defect: Digest,
    job: Digest,
    server: Shipped,
}

fn place(who: Who) -> usize {
    EVERYBODY.iter().position(|one| *one == who).unwrap()
}

impl School {
    fn phone(&mut self, who: Who) -> &mut Phone {
        &mut self.phones[place(who)]
    }

    /// Everything that anybody has, to everybody.
    fn meets(&mut self) {
        let all: Vec<Record> = self.phones.iter_mut().flat_map(Phone::records).collect();
        for phone in &mut self.phones {
            phone
                .hand()
                .write(|tx| {
                    let (first, rest): (Vec<_>, Vec<_>) =
                        all.iter().partition(|r| r.payload.kind == "member");
                    first.iter().chain(&rest).try_for_each(|record| tx.append(record).map(drop))
                })
                .unwrap();
        }
    }

    fn admits(&mut self, who: Who, role: Role, until: Option<&str>) {
        let device = self.phone(who).id();
        let body = MemberAdmitted {
            school: self.school,
            device,
            person: person(place(who) as u8),
            name: format!("Invented {who:?}"),
            role,
            from: "2026-04-01".parse().unwrap(),
            until: until.map(|until| until.parse().unwrap()),
        };
        self.phone(Who::Root).writes(None, &Body::MemberAdmitted(body));
    }
}

fn school() -> School {
    let time = Time::default();
    time.set(MORNING);
    // Each is another person.
    let mut phones: Vec<Phone> = (0..EVERYBODY.len() as u8).map(|n| Phone::new(n, n, &time)).collect();
    let founded = SchoolFounded { name: "Invented school".into(), invented: false };
    let root = &mut phones[place(Who::Root)];
    let school = root.writes(None, &Body::SchoolFounded(founded)).digest;
    let server = Shipped::new(&root.records());
    let verifier = server.verifier();
    let nothing = Digest::of(b"nothing yet");
    let mut school = School { phones, school, defect: nothing, job: nothing, server };
    school.meets();
    for who in EVERYBODY {
        let id = school.school;
        school.phone(who).joins(id, &verifier);
    }
    school.meets();
    school.admits(Who::Viewer, Role::Viewer, None);
    school.admits(Who::PilotOwn, Role::Pilot, None);
    school.admits(Who::PilotOther, Role::Pilot, None);
    school.admits(Who::Mechanic, Role::Mechanic, None);
    school.admits(Who::Instructor, Role::Instructor, None);
    school.admits(Who::Ended, Role::Mechanic, None);
    school.admits(Who::Revoked, Role::Mechanic, None);
    school.admits(Who::Expired, Role::Mechanic, Some("2026-04-30"));
    school.meets();
    let (about, id) = (Some(machine()), school.school);
    let owner = school.phone(Who::PilotOwn);
    owner.writes(about, &Body::Machine(Machine { invented: false, ..described() }));
    owner.writes(about, &enrolled(Some(id)));
    school.meets();
    school.defect = school
        .phone(Who::Mechanic)
        .writes(about, &look(vec![finding("base", Meaning::Unserviceable)]))
        .digest;
    school.meets();
    school.job = school.phone(Who::PilotOwn).writes(about, &begun()).digest;
    school.meets();
    let root = school.phone(Who::Root);
    let body = MemberEnded { school: id, person: person(place(Who::Ended) as u8), reason: "left".into() };
    root.writes(None, &Body::MemberEnded(body));
    let lost = school.phone(Who::Revoked).id();
    school.phone(Who::Root).writes(None, &revoked(lost));
    school.meets();
    school
}

/// What is signed for an action, and about what.
fn body(action: &str, school: &mut School, who: Who) -> (Option<Uuid>, Body) {
    let (job, about, id) = (school.job, Some(machine()), school.school);
    let other = school.phone(Who::PilotOther).id();
    // Everybody may end their own.
    let lost = if who == Who::Mechanic { Who::Viewer } else { Who::Mechanic };
    let lost = school.phone(lost).id();
    match action {
        "look" => (about, look(vec![finding("spring", Meaning::Serviceable)])),
        "find wrong" => (about, look(vec![finding("strap", Meaning::Unserviceable)])),
        "correct to worse" => (about, correction(school.defect, "strap", Meaning::Watch)),
        "rectify" => (about, rectified("base", school.defect)),
        "begin a job" => (about, begun()),
        "sign its list" => (about, listed(job, Meaning::Serviceable)),
        "second look" => (about, second(job, Meaning::Serviceable)),
        "find wanting" => (about, second(job, Meaning::Unserviceable)),
        "release" => (about, released(job)),
        "defer" => (about, deferred("base", school.defect)),
        "describe" => {
            (about, Body::Machine(Machine { note: format!("{who:?}"), invented: false, ..described() }))
        }
        "confirm a limit" => (about, limit(Some(14.0), Some(15.0))),
        "log time" => (about, flown(0.5)),
        "fit a component" => (about, component(true)),
        "keep a due item" => (about, due_item()),
        "enrol" => (about, enrolled(Some(id))),
        "withdraw" => (about, enrolled(None)),
        "publish" => {
            let files = [("texts/en/points.ftl".to_owned(), "invented = Invented\n".to_owned())].into();
            let (title, note) = ("Invented words".into(), String::new());
            (
                None,
                Body::CataloguePublished(CataloguePublished { school: id, title, version: 1, files, note }),
            )
        }
        "admit" => {
            let body = MemberAdmitted {
                school: id,
                device: other,
                person: person(place(Who::PilotOther) as u8),
                name: "Invented".into(),
                role: Role::Instructor,
                from: "2026-05-01".parse().unwrap(),
                until: None,
            };
            (None, Body::MemberAdmitted(body))
        }
        "end a member" => {
            let person = person(place(Who::PilotOther) as u8);
            (None, Body::MemberEnded(MemberEnded { school: id, person, reason: "left".into() }))
        }
        "end a key" => (None, revoked(lost)),
        "hand over" => (None, Body::RootHanded(RootHanded { school: id, to: other })),
        _ => unreachable!("{action}"),
    }
}

/// Whatever a record may move.
#[derive(PartialEq)]
struct State {
    history: History,
    trust: String,
    published: usize,
}

fn state(records: &[Record]) -> State {
    let trust = Trust::from_checked(records);
    let history = History::of(machine(), records, &trust);
    let school = trust.schools().next().unwrap();
    let published = records.iter().filter(|record| {
        let may = school.role(record).is_some_and(|role| role.gives(Right::Publish, false));
        record.payload.kind == "catalogue-published" && may && trust.counts(record)
    });
    // That a record has come, and at what time, is told of every one that counts.
    let history = History { upto: None, latest: None, ..history };
    let ended: Vec<_> = trust.devices().map(|(_, standing)| standing.last_good).collect();
    State { history, published: published.count(), trust: format!("{school:?} {ended:?}") }
}

fn may(row: &str, who: Who) -> bool {
    row.as_bytes()[place(who)] == b'y'
}

/// What must have been done before, as a name for it.
fn needs(action: &str) -> &str {
    match action {
        "second look" | "find wanting" => "list",
        "enrol" | "release" => action,
        _ => "",
    }
}

/// A school where it has been: a list to be looked at again, both to be released, a machine to be put in.
fn prepared(action: &str) -> School {
    let mut school = school();
    let (about, job) = (Some(machine()), school.job);
    if action == "enrol" {
        school.phone(Who::PilotOwn).writes(about, &enrolled(None));
    }
    if ["second look", "find wanting", "release"].contains(&action) {
        school.phone(Who::Instructor).writes(about, &listed(job, Meaning::Serviceable));
        school.meets();
    }
    if action == "release" {
        school.phone(Who::Root).writes(about, &second(job, Meaning::Serviceable));
    }
    school.meets();
    school
}

#[test]
fn core_counts_what_the_table_allows_and_nothing_else() {
    let mut wrong = Vec::new();
    // One school for all actions that need the same before; what is tried there is kept nowhere.
    let mut schools = BTreeMap::new();
    for (action, row) in TABLE {
        let school = schools.entry(needs(action)).or_insert_with(|| prepared(action));
        let records = school.phone(Who::Root).records();
        let before = state(&records);
        for who in EVERYBODY {
            let (about, body) = body(action, school, who);
            let record = school.phone(who).would_write(about, &body);
            let after = state(&[records.as_slice(), &[record]].concat());
            let mut counts = before != after;
            // Whoever has no right to look still says what is wrong; only the look itself is none.
            if action == "look" {
                counts = before.history.looks.len() != after.history.looks.len();
            }
            if action == "sign its list" || action == "second look" {
                let of = |state: &State| {
                    let job = &state.history.work.jobs[0];
                    (job.inspections.len(), job.looks.iter().map(|look| look.good.len()).sum::<usize>())
                };
                counts = of(&before) != of(&after);
            }
            if counts != may(row, who) {
                wrong.push(format!("{who:?} {action}: {counts}"));
            }
        }
    }
    assert_eq!(wrong, Vec::<String>::new());
}

/// Withdrawn, a machine is its owner's alone, and everybody may look after it: only deferring is the owner's.
#[test]
fn outside_a_school_only_the_owner_lets_a_defect_wait() {
    for who in EVERYBODY.into_iter().filter(|who| *who != Who::Revoked) {
        let mut school = school();
        school.phone(Who::PilotOwn).writes(Some(machine()), &enrolled(None));
        school.meets();
        let (about, body) = body("defer", &mut school, who);
        school.phone(who).writes(about, &body);
        let deferrals = state(&school.phone(who).records()).history.work.deferrals.len();
        assert_eq!(deferrals, usize::from(who == Who::PilotOwn), "{who:?}");
    }
}

/// The phone's key under a PIN, sealed as the app seals it, but at no cost: this is about rights.
fn seals(phone: &mut Phone) {
    let (salt, nonce, mut key) = ([7; 16], [9; 24], [0; 32]);
    let params = Params::new(8, 1, 1, Some(32)).unwrap();
    Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
        .hash_password_into(PIN.as_bytes(), &salt, &mut key)
        .unwrap();
    let cipher = XChaCha20Poly1305::new_from_slice(&key).unwrap();
    let (device, secret) = (phone.id().0, phone.secret());
    let payload = Payload { msg: &secret, aad: device.as_bytes() };
    let sealed = Base64::encode_string(&cipher.encrypt(&XNonce::from(nonce), payload).unwrap());
    let sealed = serde_json::json!({
        "memory_kib": 8, "passes": 1, "lanes": 1, "keychain": false, "sealed": sealed,
        "salt": Base64::encode_string(&salt), "nonce": Base64::encode_string(&nonce),
    });
    phone.hand().write(|tx| tx.set("sealed-key", &sealed.to_string())).unwrap();
}

/// Faults that say that somebody may not.
const MAY_NOT: [&str; 6] =
    ["not-entitled", "not-entitled-owner", "not-root", "not-your-machine", "not-your-device", "publish-role"];

/// What a call came to.
fn through<T>(done: Result<T, Fault>) -> bool {
    match done {
        Ok(_) => true,
        Err(fault) if MAY_NOT.contains(&fault.kind) => false,
        Err(fault) => panic!("{fault:?}"),
    }
}

/// What would count for nothing is not signed: by the same table, where the app has a call of its own.
#[test]
fn the_app_refuses_to_sign_what_would_count_for_nothing() {
    let mut wrong = Vec::new();
    for who in EVERYBODY.into_iter().filter(|who| *who != Who::Revoked) {
        let mut school = school();
        let other = school.phone(Who::PilotOther).id().0;
        let lost = if who == Who::Mechanic { Who::Viewer } else { Who::Mechanic };
        let lost = school.phone(lost).id().0;
        let viewer = person(place(Who::Viewer) as u8).to_string();
        let person = person(place(Who::PilotOther) as u8).to_string();
        let machine = machine().to_string();
        let until = || Some("2026-06-01".to_owned());
        let pin = || PIN.to_owned();
        let words = PublishFile { path: "texts/en/own.ftl".into(), text: "invented = Invented\n".into() };
        let described = Machine { engine: "bramble-125".into(), invented: false, ..described() };
        seals(school.phone(who));
        let app = school.phone(who).app();
        let calls: [(&str, bool); 10] = [
            ("describe", through(app.machine_save(machine.clone(), Some(described), pin()))),
            (
                "defer",
                through(app.defer(
                    machine.clone(),
                    "base".into(),
                    None,
                    None,
                    until(),
                    "on the ground".into(),
                    "parts come".into(),
                    pin(),
                )),
            ),
            ("rectify", through(app.rectify(machine.clone(), "base".into(), "renewed".into(), pin()))),
            ("publish", through(app.publish("Words".into(), vec![words], "new".into(), pin()))),
            ("enrol", through(app.machine_enrol(machine.clone(), true, pin()))),
            ("withdraw", through(app.machine_enrol(machine, false, pin()))),
            ("admit", through(app.school_role(person.clone(), Some(Role::Pilot), None, pin()))),
            ("end a key", through(app.key_end(lost, "lost".into(), pin()))),
            ("end a member", through(app.school_end(viewer, "left".into(), pin()))),
            // Last: whoever has handed over is no root any more.
            ("hand over", through(app.school_hand(other, pin()))),
        ];
        for (action, through) in calls {
            let row = TABLE.iter().find(|(name, _)| *name == action).unwrap().1;
            if through != may(row, who) {
                wrong.push(format!("{who:?} {action}: {through}"));
            }
        }
    }
    assert_eq!(wrong, Vec::<String>::new());
}

/// What the server answers to whom: y for an answer, - for 401 or 403.
const ASKED: [(&str, &str, &str); 7] = [
    //                                   OVpPMIREKX
    ("GET", "/v1/log?from=0", "-yyyyyy---"),
    ("GET", "/v1/proof/consistency?from=1&to=2", "-yyyyyy---"),
    ("POST", "/v1/records", "-yyyyyy---"),
    ("GET", "/v1/waiting", "------y---"),
    ("GET", "/v1/photo/0000000000000000000000000000000000000000000000000000000000000000", "-yyyyyy---"),
    ("GET", "/v1/draft/none", "-yyyyyy---"),
    // A courier signs nobody in.
    ("POST", "/v1/desk/none", "----------"),
];

#[test]
fn the_server_answers_members_and_the_root_as_the_table_says() {
    let mut school = school();
    let now = MORNING / 1000;
    // The root's phone tells the server who is who: by its own rounds.
    let (phone, server) = (&mut school.phones[place(Who::Root)], &mut school.server);
    phone.round(|request| server.answer(request, now)).unwrap();
    let mut wrong = Vec::new();
    for (method, path, row) in ASKED {
        for who in EVERYBODY {
            let mine = school.phone(who).records().pop().unwrap();
            let body = if path == "/v1/records" { write_bundle([&mine]) } else { String::new() };
            let request = school.phone(who).asks(method, path, body.into_bytes());
            let answer = school.server.answer(&request, now);
            let let_in = !matches!(answer.status, 401 | 403);
            if let_in != may(row, who) {
                wrong.push(format!("{who:?} {method} {path}: {}", answer.status));
            }
        }
    }
    assert_eq!(wrong, Vec::<String>::new());
}

/// A viewer's look stays where it is until that one is more; a root's own word on members goes in any case.
#[test]
fn a_root_that_is_a_viewer_still_manages_and_what_was_stuck_goes_when_it_is_more() {
    let mut school = school();
    let syncs = |school: &mut School| {
        let (phone, server) = (&mut school.phones[place(Who::Root)], &mut school.server);
        phone.round(|request| server.answer(request, MORNING / 1000)).unwrap();
        phone.app().school().unwrap().sync
    };
    syncs(&mut school);
    school.admits(Who::Root, Role::Viewer, None);
    syncs(&mut school);
    let said = school.phone(Who::Root).writes(Some(machine()), &look(vec![])).digest;
    assert_eq!(syncs(&mut school).stuck.len(), 1);
    assert!(!school.server.log().contains(&said));
    school.admits(Who::Root, Role::Instructor, None);
    syncs(&mut school);
    let view = syncs(&mut school);
    assert_eq!((view.stuck.len(), view.records), (0, 0));
    assert!(school.server.log().contains(&said));
}
