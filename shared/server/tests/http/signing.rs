//! Whose requests are answered. What a signature must cover: RFC 9421, in witnessmark-sync's own tests.

use axum::http::StatusCode;
use chrono::NaiveDate;
use witnessmark_core::record::*;

use crate::common::Place;
use crate::device::{Ask, Device};
use crate::world::World;

crate::on_both!(a_request_is_answered_once, an_ended_key_is_refused);

#[test]
fn unsigned_requests_are_refused_everywhere_but_at_the_open_door() {
    let world = World::new(&Place::sqlite());
    let digest = "0".repeat(64);
    for (method, path) in [
        ("GET", "/v1/log?from=0".to_owned()),
        ("POST", "/v1/records".into()),
        ("GET", "/v1/proof/consistency?from=0&to=1".into()),
        ("GET", format!("/v1/proof/inclusion?digest={digest}&size=1")),
        ("GET", "/v1/waiting".into()),
        ("GET", "/v1/draft/some".into()),
        ("POST", "/v1/desk/some".into()),
        ("GET", format!("/v1/photo/{digest}")),
        ("PUT", format!("/v1/photo/{digest}")),
        ("GET", "/v1/photo/%ff".into()),
        ("GET", "/v1/log?from=much".into()),
    ] {
        let answer = world.ask(Ask::new(method, &path, world.now()).unsigned());
        assert_eq!(answer.fault(), (401, "unsigned".into()), "{method} {path}");
        assert!(answer.headers.contains_key("www-authenticate"), "RFC 9110 § 15.5.2 (from memory)");
    }
    for path in ["/v1/school", "/v1/checkpoint", "/v1/openapi.json", "/health"] {
        assert_eq!(world.open(path).status, StatusCode::OK, "{path}");
    }
}

#[test]
fn a_key_that_nobody_knows_is_refused() {
    let world = World::new(&Place::sqlite());
    let stranger = Device::new(9);
    assert_eq!(world.get(&stranger.seed, "/v1/log?from=0").fault(), (401, "unknown-key".into()));
    assert_eq!(world.get(&stranger.courier, "/v1/log?from=0").fault(), (401, "unknown-key".into()));
}

#[test]
fn device_and_courier_both_carry() {
    let world = World::new(&Place::sqlite());
    assert_eq!(world.get(&world.root.seed, "/v1/log?from=0").status, StatusCode::OK);
    assert_eq!(world.get(&world.root.courier, "/v1/log?from=0").status, StatusCode::OK);
}

fn a_request_is_answered_once(place: &Place) {
    let world = World::new(place);
    let ask = Ask::new("GET", "/v1/log?from=0", world.now());
    assert_eq!(world.ask(ask.signed(&world.root.courier)).status, StatusCode::OK);
    assert_eq!(world.ask(ask.signed(&world.root.courier)).fault(), (401, "replayed".into()));
    // Another server process over the same database knows the nonce too.
    let again = witnessmark_server::school::School::open(place.open()).unwrap();
    let nonce =
        again.shelf().nonce_take(again.on_shelf(), &world.root.courier.device().0, &ask.nonce, ask.created);
    assert_eq!(nonce, Ok(false));
    // The same nonce by another key is another request.
    assert_eq!(world.ask(ask.signed(&world.root.seed)).status, StatusCode::OK);
}

#[test]
fn a_forged_request_spends_no_nonce() {
    let world = World::new(&Place::sqlite());
    let ask = Ask::new("GET", "/v1/log?from=0", world.now());
    let mut forged = ask.signed(&world.root.courier);
    *forged.uri_mut() = "/v1/log?from=1".parse().unwrap();
    assert_eq!(world.ask(forged).fault(), (401, "forged".into()));
    assert_eq!(world.ask(ask.signed(&world.root.courier)).status, StatusCode::OK);
}

#[test]
fn old_and_future_requests_are_refused_whichever_clock_is_wrong() {
    let world = World::new(&Place::sqlite());
    let at = |created: i64| world.ask(Ask::new("GET", "/v1/log?from=0", created).signed(&world.root.courier));
    let now = world.now();
    assert_eq!(at(now - 300).status, StatusCode::OK);
    assert_eq!(at(now + 300).status, StatusCode::OK);
    assert_eq!(at(now - 301).fault(), (401, "clock".into()));
    assert_eq!(at(now + 301).fault(), (401, "clock".into()));
    assert_eq!(at(i64::from(i32::MIN)).fault(), (401, "clock".into()));
    world.turn(3600);
    assert_eq!(at(now).fault(), (401, "clock".into()));
    world.turn(-3600);
    assert_eq!(at(now).status, StatusCode::OK);
}

#[test]
fn what_was_signed_must_be_what_came() {
    let world = World::new(&Place::sqlite());
    let ask = Ask::new("POST", "/v1/records", world.now()).body("a line\n");
    let signed = || Ask::new("POST", "/v1/records", world.now()).body("a line\n").signed(&world.root.courier);
    // Another host: signed for one server, sent to another.
    let mut elsewhere = signed();
    elsewhere.headers_mut().insert("host", "other.test".parse().unwrap());
    assert_eq!(world.ask(elsewhere).fault(), (401, "forged".into()));
    // Another body.
    let mut altered = signed();
    *altered.body_mut() = "b line\n".into();
    assert_eq!(world.ask(altered).fault(), (401, "altered".into()));
    // No body at all.
    let mut emptied = signed();
    *emptied.body_mut() = axum::body::Body::empty();
    assert_eq!(world.ask(emptied).fault(), (401, "altered".into()));
    // Another method.
    let mut put = signed();
    *put.method_mut() = axum::http::Method::GET;
    *put.uri_mut() = "/v1/log?from=0".parse().unwrap();
    assert_eq!(world.ask(put).fault(), (401, "forged".into()));
    // Two signatures.
    let mut twice = signed();
    twice.headers_mut().append("signature", "sig=:AAAA:".parse().unwrap());
    assert_eq!(world.ask(twice).fault(), (401, "signature".into()));
    assert_eq!(world.ask(ask.signed(&world.root.courier)).status, StatusCode::OK);
}

#[test]
fn a_server_with_a_name_answers_to_that_one_only() {
    let place = Place::sqlite();
    let root = World::new(&place).root;
    let school = witnessmark_server::school::School::open(place.open()).unwrap();
    let server =
        witnessmark_server::Server::new(school, witnessmark_server::Clock::system(), &Default::default())
            .known_as(vec!["School.test".into()], false);
    let router = witnessmark_server::router(&server, axum::Router::new());
    let runtime = tokio::runtime::Runtime::new().unwrap();
    let status = |host: &str| {
        let mut ask = Ask::new("GET", "/v1/log?from=0", server.now());
        ask.host = host.into();
        let request = ask.signed(&root.courier);
        runtime.block_on(tower::ServiceExt::oneshot(router.clone(), request)).unwrap().status()
    };
    assert_eq!(status("other.test"), StatusCode::UNAUTHORIZED);
    // 403, since by the real clock the founding was some time; the name is right.
    assert_ne!(status("school.test"), StatusCode::UNAUTHORIZED);
}

fn an_ended_key_is_refused(place: &Place) {
    let mut world = World::new(place);
    let mut pilot = world.member(2, Role::Pilot);
    assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").status, StatusCode::OK);
    let said = pilot.says("before");
    world.push(&pilot, [&said]);
    world.root.sees(&pilot);
    let ended = world.root.revokes(&pilot);
    world.push(&world.root, [&ended]);
    assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").fault(), (403, "not-a-member".into()));
    assert_eq!(world.get(&pilot.seed, "/v1/log?from=0").fault(), (403, "not-a-member".into()));
}

#[test]
fn who_was_ended_or_whose_time_is_over_is_refused() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    world.root.sees(&pilot);
    let (school, person) = (world.school, pilot.person);
    let ended = world.root.write(Body::MemberEnded(MemberEnded { school, person, reason: "left".into() }));
    world.push(&world.root, [&ended]);
    assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").fault(), (403, "not-a-member".into()));

    let guest = world.member(3, Role::Pilot);
    let until = NaiveDate::from_ymd_opt(2026, 5, 2);
    let admitted = world.root.admits_until(school, &guest, Role::Pilot, until);
    world.push(&world.root, [&admitted]);
    assert_eq!(world.get(&guest.courier, "/v1/log?from=0").status, StatusCode::OK);
    // Its last day is over everywhere on Earth half a day after it is over at Greenwich (UTC-12).
    world.turn(24 * 3600);
    assert_eq!(world.get(&guest.courier, "/v1/log?from=0").status, StatusCode::OK);
    world.turn(24 * 3600);
    assert_eq!(world.get(&guest.courier, "/v1/log?from=0").fault(), (403, "not-a-member".into()));
}

#[test]
fn nobody_carries_by_naming_anothers_key() {
    let mut world = World::new(&Place::sqlite());
    let mut thief = world.member(2, Role::Pilot);
    let pilot = world.member(3, Role::Pilot);
    // The thief names the pilot's courier, and then the pilot's own key, as its courier.
    for key in [pilot.courier.jwk(), pilot.seed.jwk()] {
        let named = thief.write(Body::SchoolJoined(SchoolJoined { school: world.school, courier: key }));
        let pushed = world.push_as(&thief.seed, [&named]);
        assert_eq!(pushed.taken.len(), 1);
        let body = world.get(&pilot.courier, "/v1/log?from=0").text();
        let have = format!(r#"{{"have":"{}"}}"#, pilot.records[0].digest);
        assert!(body.lines().any(|line| line == have), "the pilot is still taken for the pilot");
    }
}

#[test]
fn the_latest_courier_holds() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let before = std::mem::replace(&mut pilot.courier, SigningSeed::from_bytes(&[77; 32]));
    let joined = pilot.joins(world.school);
    assert_eq!(world.push_as(&before, [&joined]).taken.len(), 1);
    assert_eq!(world.get(&before, "/v1/log?from=0").fault(), (401, "unknown-key".into()));
    assert_eq!(world.get(&pilot.courier, "/v1/log?from=0").status, StatusCode::OK);
}
