//! What is taken into the log, and what isn't.

use witnessmark_core::record::*;
use witnessmark_server::ShelfFault;
use witnessmark_server::school::{LONGEST, School};
use witnessmark_sync::wire::{Pushed, Refusal};

use crate::common::Place;
use crate::device::{Ask, Device};
use crate::world::World;

crate::on_both!(
    records_lie_in_the_order_sent_and_keep_their_place,
    two_processes_append_and_see_each_other,
    what_lies_in_the_log_is_acknowledged_whatever_became_of_its_key,
);

fn refusals(pushed: &Pushed) -> Vec<(u32, Refusal)> {
    pushed.refused.iter().map(|refused| (refused.line, refused.kind)).collect()
}

fn records_lie_in_the_order_sent_and_keep_their_place(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    let first = world.size();
    let records: Vec<Record> = (0..5).map(|n| pilot.says(&n.to_string())).collect();
    assert_eq!(world.push(&pilot, &records), (first..first + 5).collect::<Vec<_>>());
    // Again, in another order, with one that is new, and twice the same.
    let more = pilot.says("more");
    let mixed = [&records[3], &more, &records[0], &more];
    assert_eq!(world.push(&pilot, mixed), [first + 3, first + 5, first, first + 5]);
    assert_eq!(world.size(), first + 6);
}

#[test]
fn a_member_carries_the_records_of_others() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    let mut stranger = Device::new(9);
    stranger.says("something about my machine");
    assert_eq!(world.push(&pilot, &stranger.records).len(), 2);
    // That makes nobody a member.
    assert_eq!(world.get(&stranger.seed, "/v1/log?from=0").fault(), (403, "not-a-member".into()));
}

#[test]
fn each_bad_line_is_told_and_keeps_nothing_else_back() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let good = pilot.says("good");
    let mut altered = pilot.says("as signed").envelope;
    altered.payload = altered.payload.replace("as signed", "as altered");
    let mut malformed = good.payload.clone();
    malformed.kind = "member-ended".into();
    let malformed = Record::sign(&malformed, &pilot.seed).unwrap();
    let mut newer = good.payload.clone();
    newer.v = 2;
    let newer = serde_json_canonicalizer::to_string(&newer).unwrap();
    let newer = Envelope { payload: newer, ..good.envelope.clone() };
    let mut stranger = Device::new(9);
    let unknown = stranger.says("who am I?");
    let long = pilot.says(&"x".repeat(LONGEST));
    let line = |envelope: &Envelope| serde_json::to_string(envelope).unwrap();
    let lines = [
        line(&good.envelope),
        "not JSON".into(),
        line(&altered),
        line(&unknown.envelope),
        String::new(),
        line(&malformed.envelope),
        line(&newer),
        line(&long.envelope),
        "{}".into(),
        line(&stranger.records[0].envelope),
        line(&unknown.envelope),
    ];
    let body = [lines.join("\n").into_bytes(), b"\n\xff\xfe".to_vec()].concat();
    let pushed: Pushed = world.post(&pilot.courier, "/v1/records", body).json();
    use Refusal::*;
    assert_eq!(
        refusals(&pushed),
        [
            (2, Unreadable),
            (3, BadSignature),
            // Its first record stands in a later line: by then it is known.
            (4, UnknownKey),
            (6, Malformed),
            (7, Unreadable),
            (8, TooLarge),
            (9, Unreadable),
            (12, Unreadable),
        ]
    );
    let taken: Vec<Digest> = pushed.taken.iter().map(|taken| taken.digest).collect();
    assert_eq!(taken, [good.digest, stranger.records[0].digest, unknown.digest]);
    // Whoever sent a line knows which record it was, where it was one.
    let digests: Vec<bool> = pushed.refused.iter().map(|refused| refused.digest.is_some()).collect();
    assert_eq!(digests, [false, true, true, true, true, true, false, false]);
    assert!(pushed.refused.iter().all(|refused| !refused.message.is_empty() && !refused.hint.is_empty()));
}

#[test]
fn kinds_of_newer_versions_are_taken() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let body = Body::Unknown { kind: "of-the-future".into(), body: serde_json::json!({ "any": [1, 2] }) };
    let record = pilot.write(body);
    assert_eq!(world.push(&pilot, [&record]).len(), 1);
}

#[test]
fn a_forged_first_record_makes_no_key_known() {
    let world = World::new(&Place::sqlite());
    let mut stranger = Device::new(9);
    let said = stranger.says("mine");
    let mut forged = stranger.records[0].envelope.clone();
    forged.signature = said.envelope.signature.clone();
    let lines = [forged, said.envelope].map(|envelope| serde_json::to_string(&envelope).unwrap()).join("\n");
    let pushed: Pushed = world.post(&world.root.courier, "/v1/records", lines).json();
    assert_eq!(refusals(&pushed), [(1, Refusal::BadSignature), (2, Refusal::UnknownKey)]);
}

#[test]
fn an_end_told_earlier_in_a_page_counts_for_what_follows() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let before = pilot.says("before");
    let own_end = Body::Revoked(Revoked { device: pilot.id(), reason: "sold".into() });
    let end = pilot.write(own_end);
    let after = pilot.says("after");
    let pushed = world.push_as(&world.root.courier, [&before, &end, &after]);
    assert_eq!(pushed.taken.len(), 2);
    assert_eq!(refusals(&pushed), [(3, Refusal::Revoked)]);
}

#[test]
fn what_the_root_had_seen_of_a_lost_phone_is_taken_and_no_more() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let seen = pilot.says("seen by the root, not sent yet");
    world.root.sees(&pilot);
    let unseen = pilot.says("written by whoever found the phone");
    let end = world.root.revokes(&pilot);
    world.push(&world.root, [&end]);
    let pushed = world.push_as(&world.root.courier, [&unseen, &seen]);
    assert_eq!(refusals(&pushed), [(1, Refusal::Revoked)]);
    assert_eq!(pushed.taken[0].digest, seen.digest);
}

fn what_lies_in_the_log_is_acknowledged_whatever_became_of_its_key(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    let said = pilot.says("in the log, unseen by the root");
    let place = world.push(&pilot, [&said]);
    let end = world.root.revokes(&pilot);
    world.push(&world.root, [&end]);
    assert_eq!(world.push(&world.root, [&said]), place);
}

#[test]
fn a_viewers_records_are_not_taken_but_those_about_its_own_keys() {
    let mut world = World::new(&Place::sqlite());
    let mut viewer = world.member(2, Role::Viewer);
    let mut other = Device::new(9);
    let said = viewer.says("it looks fine");
    viewer.courier = SigningSeed::from_bytes(&[66; 32]);
    let joined = viewer.joins(world.school);
    let others = other.joins(world.school);
    let pushed =
        world.push_as(&viewer.seed, [&viewer.records[0], &said, &joined, &other.records[0], &others]);
    assert_eq!(refusals(&pushed), [(2, Refusal::Viewer), (4, Refusal::Viewer), (5, Refusal::Viewer)]);
    assert_eq!(pushed.taken.len(), 2);
    assert_eq!(world.get(&viewer.courier, "/v1/log?from=0").status, 200);
}

fn two_processes_append_and_see_each_other(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    let other = School::open(place.open()).unwrap();
    let sender = witnessmark_server::school::Sender { device: pilot.id(), role: Role::Pilot };
    let take = |records: &[&Record]| -> Result<Pushed, ShelfFault> {
        other.take(write_bundle(records.iter().copied()).as_bytes(), &sender)
    };
    // Each in turn, so that either must read what the other wrote before its tree is whole.
    for n in 0..3 {
        let (here, there) = (pilot.says(&format!("here {n}")), pilot.says(&format!("there {n}")));
        world.push(&pilot, [&here]);
        assert_eq!(take(&[&there]).unwrap().taken.len(), 1);
    }
    let checkpoints = [&other, world.server.school()].map(|school| school.checkpoint().unwrap());
    assert_eq!(checkpoints[0], checkpoints[1], "one log, one key, one tree");
    assert_eq!(checkpoints[0].0, world.size());
    // A member admitted through one process is one at the other.
    let mut late = Device::new(3);
    late.joins(world.school);
    let admitted = world.root.admits(world.school, &late, Role::Pilot);
    let root = witnessmark_server::school::Sender { device: world.root.id(), role: Role::Instructor };
    let bundle = write_bundle(late.records.iter().chain([&admitted]));
    assert_eq!(other.take(bundle.as_bytes(), &root).unwrap().taken.len(), 3);
    assert_eq!(world.get(&late.courier, "/v1/log?from=0").status, 200);
}

#[test]
fn a_page_of_many_is_judged_as_one_by_one() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let records: Vec<Record> = (0..400).map(|n| pilot.says(&n.to_string())).collect();
    let mut lines: Vec<Envelope> = records.iter().map(|record| record.envelope.clone()).collect();
    for bad in [0, 131, 399] {
        lines[bad].signature = records[200].envelope.signature.clone();
    }
    let body = lines.iter().map(|line| serde_json::to_string(line).unwrap() + "\n").collect::<String>();
    let pushed: Pushed = world.post(&pilot.courier, "/v1/records", body).json();
    use Refusal::BadSignature;
    assert_eq!(refusals(&pushed), [(1, BadSignature), (132, BadSignature), (400, BadSignature)]);
    assert_eq!(pushed.taken.len(), 397);
    assert!(pushed.taken.windows(2).all(|pair| pair[0].index + 1 == pair[1].index));
}

#[test]
fn compressed_bodies_endless_pages_and_none_are_refused() {
    let world = World::new(&Place::sqlite());
    let none = world.post(&world.root.courier, "/v1/records", "");
    assert_eq!(none.fault(), (400, "malformed".into()));
    let ask = Ask::new("POST", "/v1/records", world.now()).body("x").header("content-encoding", "gzip");
    assert_eq!(world.ask(ask.signed(&world.root.courier)).fault(), (415, "media".into()));
    let lines = "{}\n".repeat(2001);
    assert_eq!(world.post(&world.root.courier, "/v1/records", lines).fault(), (413, "too-large".into()));
}
