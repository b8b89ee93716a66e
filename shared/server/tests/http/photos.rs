//! Photos by parts.

use axum::http::StatusCode;
use witnessmark_core::record::*;

use crate::common::Place;
use crate::device::{Ask, Device};
use crate::world::{Answer, World};

crate::on_both!(a_photo_comes_and_goes_by_parts);

fn picture(n: usize) -> (Vec<u8>, String) {
    let bytes: Vec<u8> = (0..n).map(|n| (n % 251) as u8).collect();
    let digest = Digest::of(&bytes).to_string();
    (bytes, format!("/v1/photo/{digest}"))
}

fn put(world: &World, by: &Device, path: &str, bytes: &[u8], first: usize, total: usize) -> Answer {
    let range = format!("bytes {first}-{}/{total}", first + bytes.len() - 1);
    let ask = Ask::new("PUT", path, world.now()).body(bytes);
    world.ask(ask.header("content-type", "image/png").header("content-range", range).signed(&by.courier))
}

fn get(world: &World, by: &Device, path: &str, range: &str) -> Answer {
    world.ask(Ask::new("GET", path, world.now()).header("range", range).signed(&by.courier))
}

fn head(world: &World, by: &Device, path: &str) -> (u16, Option<String>) {
    let answer = world.ask(Ask::new("HEAD", path, world.now()).signed(&by.courier));
    assert!(answer.body.is_empty());
    let length = answer.headers.get("content-length").map(|length| length.to_str().unwrap().to_owned());
    (answer.status.as_u16(), length)
}

fn a_photo_comes_and_goes_by_parts(place: &Place) {
    let mut world = World::new(place);
    let pilot = world.member(2, Role::Pilot);
    let viewer = world.member(3, Role::Viewer);
    let (bytes, path) = picture(10_000);
    assert_eq!(head(&world, &pilot, &path).0, 404);
    assert_eq!(put(&world, &pilot, &path, &bytes[..4000], 0, 10_000).status, StatusCode::ACCEPTED);
    assert_eq!(head(&world, &pilot, &path), (206, Some("4000".into())));
    assert_eq!(get(&world, &pilot, &path, "bytes=0-99").fault(), (404, "not-found".into()));
    // A part that came already, a part with a gap before it, the rest.
    assert_eq!(put(&world, &pilot, &path, &bytes[2000..4000], 2000, 10_000).status, StatusCode::ACCEPTED);
    assert_eq!(put(&world, &pilot, &path, &bytes[5000..], 5000, 10_000).fault(), (409, "refused".into()));
    assert_eq!(put(&world, &pilot, &path, &bytes[4000..], 4000, 10_000).status, StatusCode::CREATED);
    assert_eq!(head(&world, &viewer, &path), (200, Some("10000".into())));
    assert_eq!(put(&world, &pilot, &path, &bytes[4000..], 4000, 10_000).status, StatusCode::CREATED);
    // By parts, whoever looks.
    let part = get(&world, &viewer, &path, "bytes=9000-20000");
    assert_eq!((part.status, part.body.as_slice()), (StatusCode::PARTIAL_CONTENT, &bytes[9000..]));
    assert_eq!(part.header("content-range"), "bytes 9000-9999/10000");
    assert_eq!(part.header("content-type"), "image/png");
    assert_eq!(get(&world, &viewer, &path, "bytes=10000-").fault(), (416, "range".into()));
    assert_eq!(world.get(&viewer.courier, &path).body, bytes);
}

#[test]
fn a_photo_is_what_its_name_says_or_nothing() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    let (bytes, path) = picture(3000);
    let other = vec![7; 3000];
    assert_eq!(put(&world, &pilot, &path, &other, 0, 3000).fault(), (422, "refused".into()));
    assert_eq!(head(&world, &pilot, &path).0, 404);
    // What somebody began wrongly, or with another length, doesn't keep the right one out.
    assert_eq!(put(&world, &pilot, &path, &other[..1000], 0, 3000).status, StatusCode::ACCEPTED);
    assert_eq!(put(&world, &pilot, &path, &bytes[..2000], 0, 3000).status, StatusCode::ACCEPTED);
    assert_eq!(put(&world, &pilot, &path, &bytes[2000..], 2000, 3000).status, StatusCode::CREATED);
    let (bytes, path) = picture(500);
    assert_eq!(put(&world, &pilot, &path, &other[..100], 0, 9000).status, StatusCode::ACCEPTED);
    assert_eq!(put(&world, &pilot, &path, &bytes, 0, 500).status, StatusCode::CREATED);
}

#[test]
fn what_is_no_photo_is_refused() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    let viewer = world.member(3, Role::Viewer);
    let (bytes, path) = picture(100);
    assert_eq!(put(&world, &viewer, &path, &bytes, 0, 100).fault(), (403, "viewer".into()));
    let with = |media: &str, range: &str| {
        let ask = Ask::new("PUT", &path, world.now()).body(bytes.clone());
        let ask = ask.header("content-type", media).header("content-range", range);
        world.ask(ask.signed(&pilot.courier)).fault()
    };
    assert_eq!(with("text/html", "bytes 0-99/100"), (415, "media".into()));
    assert_eq!(with("image/svg+xml", "bytes 0-99/100"), (415, "media".into()));
    assert_eq!(with("image/png", "bytes 0-98/100"), (400, "malformed".into()));
    assert_eq!(with("image/png", "all of it"), (400, "malformed".into()));
    assert_eq!(with("image/png", "bytes 0-99/20971521"), (413, "too-large".into()));
    let empty = Ask::new("PUT", &path, world.now()).header("content-type", "image/png");
    assert_eq!(world.ask(empty.signed(&pilot.courier)).fault(), (400, "malformed".into()));
    for odd in ["/v1/photo/portrait", "/v1/photo/%ff", "/v1/draft/%ff"] {
        assert_eq!(world.get(&pilot.courier, odd).fault(), (400, "malformed".into()), "{odd}");
    }
    // Without a range, the body is the whole.
    let whole = Ask::new("PUT", &path, world.now()).body(bytes.clone()).header("content-type", "image/webp");
    assert_eq!(world.ask(whole.signed(&pilot.courier)).status, StatusCode::CREATED);
    assert_eq!(world.get(&pilot.courier, &path).header("content-type"), "image/webp");
}
