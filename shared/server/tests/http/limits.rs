//! What is too large, too often, or not there.

use std::num::NonZeroU32;
use std::sync::Arc;

use axum::Router;
use axum::http::StatusCode;
use axum::routing::get;
use tokio::sync::Notify;
use tower::ServiceExt;
use witnessmark_core::record::*;
use witnessmark_server::Limits;

use crate::common::Place;
use crate::device::{Ask, Device};
use crate::world::World;

fn few() -> Limits {
    let some = |n| NonZeroU32::new(n).unwrap();
    Limits { key_rate: some(1), key_burst: some(5), open_rate: some(1), open_burst: some(25), at_once: 8 }
}

#[test]
fn a_key_that_asks_too_often_waits_and_others_do_not() {
    let mut world = World::with(&Place::sqlite(), &few());
    // The seed and the courier have a bucket each; the world's making drew from both.
    world.turn(60);
    let pilot = world.member(2, Role::Pilot);
    for _ in 0..5 {
        assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").status, StatusCode::OK);
    }
    let refused = world.get(&pilot.courier, "/v1/log?from=0");
    assert_eq!(refused.fault(), (429, "too-often".into()));
    let wait: i64 = refused.header("retry-after").parse().unwrap();
    assert_eq!(world.get(&world.root.courier, "/v1/log?from=0").status, StatusCode::OK);
    world.turn(wait);
    assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").status, StatusCode::OK);
}

#[test]
fn nobody_spends_anothers_bucket_by_forging() {
    let world = World::with(&Place::sqlite(), &few());
    world.turn(60);
    for _ in 0..10 {
        let mut forged = Ask::new("GET", "/v1/log?from=0", world.now()).signed(&world.root.courier);
        *forged.uri_mut() = "/v1/log?from=1".parse().unwrap();
        assert_eq!(world.ask(forged).status, StatusCode::UNAUTHORIZED);
    }
    assert_eq!(world.get(&world.root.courier, "/v1/log?from=0").status, StatusCode::OK);
}

#[test]
fn an_address_that_signs_nothing_waits_and_others_do_not() {
    let world = World::with(&Place::sqlite(), &few());
    world.turn(60);
    let from = |peer: &str| world.ask_from(peer, Ask::new("GET", "/v1/checkpoint", world.now()).unsigned());
    for _ in 0..25 {
        assert_eq!(from("[2001:db8::1]:1").status, StatusCode::OK);
    }
    // Another address of the same network, whose holder has them all (RFC 6177, from memory).
    assert_eq!(from("[2001:db8::2]:1").fault(), (429, "too-often".into()));
    assert_eq!(from("[2001:db8:0:1::1]:1").status, StatusCode::OK);
    assert_eq!(from("192.0.2.8:1").status, StatusCode::OK);
    // Guessing is slowed down too, and a member there still comes in.
    let stranger = Device::new(9).seed;
    let guess = Ask::new("GET", "/v1/log?from=0", world.now()).signed(&stranger);
    assert_eq!(world.ask_from("[2001:db8::1]:1", guess).status, StatusCode::TOO_MANY_REQUESTS);
    let member = Ask::new("GET", "/v1/log?from=0", world.now()).signed(&world.root.courier);
    assert_eq!(world.ask_from("[2001:db8::1]:1", member).status, StatusCode::OK);
}

#[test]
fn introductions_are_rarer_than_other_questions() {
    let world = World::with(&Place::sqlite(), &few());
    world.turn(60);
    let mut device = Device::new(5);
    device.joins(world.school);
    assert_eq!(world.introduce(&device).status, StatusCode::ACCEPTED);
    assert_eq!(world.introduce(&device).status, StatusCode::TOO_MANY_REQUESTS);
}

#[test]
fn more_at_once_than_may_be_are_sent_away_for_now() {
    let place = Place::sqlite();
    drop(World::new(&place));
    let school = witnessmark_server::school::School::open(place.open()).unwrap();
    let limits = Limits { at_once: 1, ..Limits::default() };
    let server = witnessmark_server::Server::new(school, witnessmark_server::Clock::system(), &limits);
    let (begun, end) = (Arc::new(Notify::new()), Arc::new(Notify::new()));
    let (tell, wait) = (begun.clone(), end.clone());
    let slow = get(async move || {
        tell.notify_one();
        wait.notified().await;
    });
    let router = witnessmark_server::router(&server, Router::new().route("/slow", slow));
    let ask = |path: &str| router.clone().oneshot(Ask::new("GET", path, 0).unsigned());
    tokio::runtime::Runtime::new().unwrap().block_on(async {
        let first = tokio::spawn(ask("/slow"));
        begun.notified().await;
        let second = ask("/health").await.unwrap();
        assert_eq!(second.status(), StatusCode::SERVICE_UNAVAILABLE);
        assert!(second.headers().contains_key("retry-after"));
        end.notify_one();
        assert_eq!(first.await.unwrap().unwrap().status(), StatusCode::OK);
        assert_eq!(ask("/health").await.unwrap().status(), StatusCode::OK);
    });
}

#[test]
fn bodies_have_a_largest_size() {
    let world = World::new(&Place::sqlite());
    let large = vec![b' '; 4 * 1024 * 1024];
    assert_eq!(world.post(&world.root.courier, "/v1/records", large.clone()).status, StatusCode::OK);
    let larger = [large, vec![b' ']].concat();
    assert_eq!(world.post(&world.root.courier, "/v1/records", larger).fault(), (413, "too-large".into()));
    let ask = Ask::new("POST", "/v1/waiting", world.now()).body(vec![b' '; 16 * 1024 + 1]);
    assert_eq!(world.ask(ask.unsigned()).fault(), (413, "too-large".into()));
}

#[test]
fn what_is_not_there_is_told_as_a_fault() {
    let world = World::new(&Place::sqlite());
    assert_eq!(world.open("/").fault(), (404, "not-found".into()));
    assert_eq!(world.open("/v1/nothing").fault(), (404, "not-found".into()));
    let wrong = world.ask(Ask::new("DELETE", "/v1/checkpoint", world.now()).unsigned());
    assert_eq!(wrong.fault(), (405, "method".into()));
    assert!(wrong.header("allow").contains("GET"), "RFC 9110 § 15.5.6 (from memory)");
}

#[test]
fn metrics_are_told_on_the_machine_itself_only() {
    let mut world = World::new(&Place::sqlite());
    let said = world.root.says("something");
    world.push(&world.root, [&said]);
    world.post(&world.root.courier, "/v1/records", "not a record");
    let ask = || Ask::new("GET", "/metrics", world.now());
    assert_eq!(world.ask(ask().unsigned()).fault(), (403, "not-here".into()));
    let proxied = ask().header("x-forwarded-for", "127.0.0.1").unsigned();
    assert_eq!(world.ask_from("127.0.0.1:5", proxied).fault(), (403, "not-here".into()));
    let text = world.ask_from("127.0.0.1:5", ask().unsigned()).text();
    // Prometheus' text format: NAME{labels} VALUE (from memory).
    for line in [
        "witnessmark_log_records 4",
        "witnessmark_records_taken_total 4",
        r#"witnessmark_records_refused_total{kind="unreadable"} 1"#,
        r#"witnessmark_requests_total{method="POST",route="/v1/records",status="200"} 3"#,
    ] {
        assert!(text.lines().any(|one| one == line), "{line} in\n{text}");
    }
}

/// RFC 9112 § 9.6: who will close says so. A body that nobody read ends the connection.
#[test]
fn an_answer_before_the_body_says_that_the_connection_ends() {
    let world = World::new(&Place::sqlite());
    let ask = |method, body: &str| Ask::new(method, "/v1/records", world.now()).body(body);
    let early = world.ask(ask("POST", "unread").unsigned());
    assert_eq!((early.status.as_u16(), early.header("connection")), (401, "close"));
    let nothing_unread = world.ask(ask("POST", "").unsigned());
    assert!(nothing_unread.status == 401 && !nothing_unread.headers.contains_key("connection"));
    let read = world.ask(ask("POST", "{}").signed(&world.root.courier));
    assert!(read.status == 200 && !read.headers.contains_key("connection"));
}
