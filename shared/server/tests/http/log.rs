//! Reading the log: pages, checkpoints, proofs.

use axum::http::StatusCode;
use witnessmark_core::record::*;
use witnessmark_sync::checkpoint::Checkpoint;
use witnessmark_sync::merkle::{Frontier, consistent, included};
use witnessmark_sync::note::Verifier;
use witnessmark_sync::wire::{LogLine, Proof, SchoolCard};

use crate::common::Place;
use crate::device::Ask;
use crate::world::{Answer, World};

crate::on_both!(pages_follow_each_other_to_the_end, proofs_hold_for_every_length);

fn lines(answer: &Answer) -> Vec<LogLine> {
    assert_eq!(answer.status, StatusCode::OK);
    answer.text().lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

fn digest(line: &LogLine) -> Digest {
    match line {
        LogLine::Have { have } => *have,
        LogLine::Whole(envelope) => Digest::of(envelope.payload.as_bytes()),
    }
}

fn checkpoint(world: &World) -> Checkpoint {
    let card: SchoolCard = world.open("/v1/school").json();
    let log: Verifier = card.server.parse().unwrap();
    Checkpoint::open(&world.open("/v1/checkpoint").text(), &log).unwrap()
}

fn pages_follow_each_other_to_the_end(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    let words = "As long as a note may get. ".repeat(400);
    let records: Vec<Record> = (0..150).map(|n| pilot.says(&format!("{n} {words}"))).collect();
    records.chunks(50).for_each(|part| drop(world.push(&pilot, part)));
    let mut frontier = Frontier::default();
    let mut pages = 0;
    loop {
        let answer = world.get(&world.root.courier, &format!("/v1/log?from={}", frontier.size()));
        let page = lines(&answer);
        if page.is_empty() {
            break;
        }
        assert!(answer.body.len() <= 1_200_000, "{}", answer.body.len());
        pages += 1;
        page.iter().for_each(|line| frontier.push(&digest(line).0));
    }
    assert_eq!(pages, 2, "1.6 MB in pages of 1 MiB");
    let checkpoint = checkpoint(&world);
    assert_eq!((frontier.size(), frontier.root()), (checkpoint.size, checkpoint.root));
    assert_eq!(checkpoint.origin, format!("witnessmark.org/school/{}", world.school));
}

#[test]
fn a_device_is_not_sent_what_it_signed_itself_unless_it_asks() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let said = pilot.says("mine");
    world.push(&pilot, [&said]);
    let named = lines(&world.get(&pilot.courier, "/v1/log?from=0"));
    let have: Vec<Digest> =
        named.iter().filter(|line| matches!(line, LogLine::Have { .. })).map(digest).collect();
    assert_eq!(have, pilot.records.iter().map(|record| record.digest).collect::<Vec<_>>());
    let whole = lines(&world.get(&pilot.courier, "/v1/log?from=0&own=whole"));
    assert!(whole.iter().all(|line| matches!(line, LogLine::Whole(_))));
    assert_eq!(named.iter().map(digest).collect::<Vec<_>>(), whole.iter().map(digest).collect::<Vec<_>>());
    // As signed, byte for byte.
    assert_eq!(whole.last(), Some(&LogLine::Whole(said.envelope)));
}

#[test]
fn what_cannot_be_asked_is_told() {
    let world = World::new(&Place::sqlite());
    let zeros = "0".repeat(64);
    for path in [
        "/v1/log",
        "/v1/log?from=-1",
        "/v1/log?from=x",
        // Past what every reader of JSON counts exactly: the document says so too.
        "/v1/log?from=9007199254740992",
        "/v1/log?from=0&own=half",
        "/v1/log?from=0&more=1",
        "/v1/proof/consistency?from=1",
        "/v1/proof/inclusion?digest=abc&size=1",
    ] {
        assert_eq!(world.get(&world.root.courier, path).fault(), (400, "malformed".into()), "{path}");
    }
    for path in [
        "/v1/proof/consistency?from=2&to=1",
        "/v1/proof/consistency?from=0&to=99",
        &format!("/v1/proof/inclusion?digest={zeros}&size=1"),
    ] {
        assert_eq!(world.get(&world.root.courier, path).fault(), (404, "not-found".into()), "{path}");
    }
    let past = world.get(&world.root.courier, "/v1/log?from=9007199254740991");
    assert!(lines(&past).is_empty());
    assert_eq!(past.header("cache-control"), "no-store");
}

fn proofs_hold_for_every_length(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    let records: Vec<Record> = (0..13).map(|n| pilot.says(&n.to_string())).collect();
    world.push(&pilot, &records);
    let leaves: Vec<Digest> =
        lines(&world.get(&pilot.courier, "/v1/log?from=0")).iter().map(digest).collect();
    let now = checkpoint(&world);
    assert_eq!(now.size, leaves.len() as u64);
    for size in 1..=leaves.len() {
        let older: Frontier = leaves[..size].iter().map(|leaf| leaf.0).collect();
        let path = format!("/v1/proof/consistency?from={size}&to={}", now.size);
        let proof: Proof = world.get(&pilot.courier, &path).json();
        assert_eq!(consistent(size as u64, &older.root(), now.size, &now.root, &proof.path), Ok(()));
        let leaf = leaves[size - 1];
        let path = format!("/v1/proof/inclusion?digest={leaf}&size={size}");
        let proof: Proof = world.get(&pilot.courier, &path).json();
        assert_eq!(proof.index, Some(size as u64 - 1));
        assert_eq!(included(&leaf.0, size as u64 - 1, size as u64, &older.root(), &proof.path), Ok(()));
        // In a log too short for it, it doesn't lie.
        let path = format!("/v1/proof/inclusion?digest={leaf}&size={}", size - 1);
        assert_eq!(world.get(&pilot.courier, &path).status, StatusCode::NOT_FOUND);
    }
}

#[test]
fn a_checkpoint_that_hasnt_changed_isnt_sent_again() {
    let mut world = World::new(&Place::sqlite());
    let first = world.open("/v1/checkpoint");
    assert_eq!(first.header("etag"), format!("\"{}\"", world.size()));
    let again = |tag: &str| {
        world
            .ask(Ask::new("GET", "/v1/checkpoint", world.now()).header("if-none-match", tag).unsigned())
            .status
    };
    assert_eq!(again(first.header("etag")), StatusCode::NOT_MODIFIED);
    assert_eq!(again(&format!("\"0\", W/{}", first.header("etag"))), StatusCode::NOT_MODIFIED);
    assert_eq!(again("\"1\""), StatusCode::OK);
    let said = world.root.says("more");
    world.push(&world.root, [&said]);
    let next = world.open("/v1/checkpoint");
    assert_ne!(next.header("etag"), first.header("etag"));
}

#[test]
fn a_restart_keeps_key_and_log() {
    let place = Place::sqlite();
    let mut world = World::new(&place);
    let said = world.root.says("before");
    world.push(&world.root, [&said]);
    let before = world.server.school().checkpoint().unwrap();
    drop(world);
    let again = witnessmark_server::school::School::open(place.open()).unwrap();
    assert_eq!(again.checkpoint().unwrap(), before, "Ed25519 signatures are deterministic (RFC 8032)");
}

#[test]
fn a_page_is_compressed_where_asked() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let records: Vec<Record> = (0..200).map(|n| pilot.says(&format!("like the others {n}"))).collect();
    world.push(&pilot, &records);
    let plain = world.get(&world.root.courier, "/v1/log?from=0").body;
    for coding in ["gzip", "zstd"] {
        let ask = Ask::new("GET", "/v1/log?from=0", world.now()).header("accept-encoding", coding);
        let answer = world.ask(ask.signed(&world.root.courier));
        assert_eq!(answer.header("content-encoding"), coding);
        assert!(answer.body.len() * 2 < plain.len(), "{coding}: {} of {}", answer.body.len(), plain.len());
    }
}
