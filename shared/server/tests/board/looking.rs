//! What is shown is what a phone shows, and pages are told when there is more.

use axum::body::Body;
use futures_util::StreamExt;
use serde_json::{Value, json};
use witnessmark_app::App;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Digest, Role};

use crate::device::{PIN, bramble, register, walk_and_sign};
use crate::world::{Page, World};

#[test]
fn the_board_says_what_a_phone_says() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let machine = register(&mut pilot, bramble());
    walk_and_sign(
        &mut pilot,
        &world.clock,
        &machine,
        "before-flight",
        &[("cylinder-base", Meaning::Unserviceable)],
    );
    world.sync(&mut pilot);
    world.sync_root();
    let theirs = serde_json::to_value(world.root.board().unwrap()).unwrap();
    let page_of_theirs = serde_json::to_value(world.root.machine(machine.clone()).unwrap()).unwrap();
    let mut page = world.sign_in(&mut pilot);
    let told = page.get("/desk/board").json();
    for part in ["rows", "people", "second"] {
        assert_eq!(told[part], theirs[part], "{part}");
    }
    assert_eq!(told["size"].as_f64(), Some(world.server.school().follow().unwrap() as f64));
    assert_eq!(told["rows"][0]["defects"][0]["point"], "cylinder-base");
    let shown = page.get(&format!("/desk/machine/{machine}")).json();
    assert_eq!(shown, page_of_theirs);
    let record = shown["timeline"][0]["record"].as_str().unwrap().to_owned();
    assert_eq!(page.get(&format!("/desk/record/{record}")).json()["good"], true);
    assert_eq!(page.get("/desk/machine/nonsense").fault(), (404, "no-such".into()));
    assert_eq!(page.get(&format!("/desk/record/{}", "0".repeat(64))).fault(), (404, "no-such".into()));
}

/// Each page in its own language, whoever asked before; what a phone says in that language is the truth.
#[test]
fn each_page_is_answered_in_its_language() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let machine = register(&mut pilot, bramble());
    world.sync(&mut pilot);
    let headline = |app: &mut App, language: &str| {
        app.settings(language.into(), 5, false, None).unwrap();
        app.board().unwrap().rows[0].card.verdict.headline.clone()
    };
    let truth = ["en", "de", "es"].map(|language| headline(&mut pilot, language));
    assert!(truth[0] != truth[1] && truth[1] != truth[2], "{truth:?}");
    let mut page = world.sign_in(&mut pilot);
    let mut asked = |wish: &str| {
        page.headers.retain(|(name, _)| *name != "accept-language");
        page.headers.push(("accept-language", wish.into()));
        let board = page.get("/desk/board").json();
        let shown = page.get(&format!("/desk/machine/{machine}")).json();
        let language = page.get("/desk/session").json()["language"].as_str().unwrap().to_owned();
        let fault: serde_json::Value =
            serde_json::from_slice(&page.get("/desk/machine/nonsense").body).unwrap();
        let of = |card: &Value| card["verdict"]["headline"].as_str().unwrap().to_owned();
        assert_eq!(of(&board["rows"][0]["card"]), of(&shown["card"]));
        (language, of(&shown["card"]), fault["message"].as_str().unwrap().to_owned())
    };
    let [english, german, spanish] = ["tlh, en;q=0.1", "de-AT,de;q=0.9,en;q=0.5", "es"].map(&mut asked);
    assert_eq!((english.0.as_str(), &english.1), ("en", &truth[0]));
    assert_eq!((german.0.as_str(), &german.1), ("de", &truth[1]));
    assert_eq!((spanish.0.as_str(), &spanish.1), ("es", &truth[2]));
    assert!(english.2 != german.2 && german.2 != spanish.2, "{} / {}", english.2, german.2);
    assert_eq!(asked("tlh").0, "en", "the fallback, and not what was asked before");
}

#[test]
fn a_photo_is_shown_once_it_is_whole() {
    let mut world = World::new();
    let mut viewer = world.member("Invented viewer", Role::Viewer);
    let mut page = world.sign_in(&mut viewer);
    let bytes = b"invented picture";
    let digest = Digest::of(bytes);
    let path = format!("/desk/photo/{digest}");
    assert_eq!(page.get(&path).fault(), (404, "not-found".into()));
    let put = |from: usize, upto: usize| {
        let part = &bytes[from..upto];
        let school = world.server.school();
        school.photo_put(digest, "image/png", from as u64, bytes.len() as u64, part).unwrap();
    };
    put(0, 4);
    assert_eq!(page.get(&path).fault(), (404, "not-found".into()));
    put(4, bytes.len());
    let answer = page.get(&path);
    assert_eq!(answer.body, bytes);
    assert_eq!(answer.headers["content-type"], "image/png");
    assert_eq!(answer.headers["x-content-type-options"], "nosniff");
}

#[test]
fn the_page_runs_nothing_of_others() {
    let world = World::new();
    let mut page = Page::of(&world);
    let answer = page.get("/");
    assert!(answer.headers["content-type"].to_str().unwrap().starts_with("text/html"));
    // Content Security Policy Level 3 § 6: names and meaning of the directives.
    let policy = answer.headers["content-security-policy"].to_str().unwrap();
    for directive in ["default-src 'self'", "object-src 'none'", "frame-ancestors 'none'", "base-uri 'none'"]
    {
        assert!(policy.split("; ").any(|has| has == directive), "{directive} in {policy}");
    }
    assert!(!policy.contains("unsafe"));
    assert_eq!(page.get("/desk/session").headers["cache-control"], "no-store");
    assert_eq!(page.get("/assets/nothing.js").fault(), (404, "not-found".into()));
    assert_eq!(page.get("/desk/nothing").fault(), (404, "not-found".into()));
}

/// The next event of a stream, by the form that the HTML standard gives (§ 9.2.6).
async fn event(
    stream: &mut (impl StreamExt<Item = Result<axum::body::Bytes, axum::Error>> + Unpin),
) -> (String, String) {
    let text = String::from_utf8(stream.next().await.unwrap().unwrap().to_vec()).unwrap();
    let field = |name: &str| {
        let found = text.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(':'));
        found.map(|value| value.trim_start().to_owned()).unwrap_or_default()
    };
    (field("event"), field("data"))
}

#[test]
fn a_stream_tells_growth_and_its_own_end() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let request = |page: &Page<'_>| page.request("GET", "/desk/events").body(Body::empty()).unwrap();
    let page = world.sign_in(&mut pilot);
    let asked = request(&page);
    let router = world.router.clone();
    let answer = world.runtime.block_on(async { tower::ServiceExt::oneshot(router, asked).await.unwrap() });
    assert_eq!(answer.headers()["content-type"], "text/event-stream");
    assert!(!answer.headers().contains_key("content-encoding"));
    let mut stream = answer.into_body().into_data_stream();
    let size = |world: &World| world.server.school().follow().unwrap().to_string();
    let first = world.runtime.block_on(event(&mut stream));
    assert_eq!(first, ("board".into(), size(&world)));
    let machine = register(&mut pilot, bramble());
    world.sync(&mut pilot);
    let grown = world.runtime.block_on(event(&mut stream));
    assert_eq!(grown, ("board".into(), size(&world)));
    assert!(grown.1.parse::<u64>().unwrap() > first.1.parse().unwrap());
    assert!(pilot.machine(machine).is_ok());
    // A key that is ended ends the stream.
    let members = world.root.school().unwrap().members;
    let lost =
        members.iter().find(|member| member.name == "Invented pilot").unwrap().devices[0].device.clone();
    world.root.key_end(lost, "lost".into(), PIN.into()).unwrap();
    world.sync_root();
    let last = world.runtime.block_on(async {
        let mut last = event(&mut stream).await;
        while last.0 == "board" {
            last = event(&mut stream).await;
        }
        assert!(stream.next().await.is_none(), "and nothing after");
        last
    });
    assert_eq!(last.0, "signed-out");
}

#[test]
fn streams_end_when_the_server_stops() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let page = world.sign_in(&mut pilot);
    let asked = page.request("GET", "/desk/events").body(Body::empty()).unwrap();
    let router = world.router.clone();
    let mut stream = world
        .runtime
        .block_on(async { tower::ServiceExt::oneshot(router, asked).await.unwrap() })
        .into_body()
        .into_data_stream();
    world.runtime.block_on(event(&mut stream));
    world.server.stop();
    assert!(world.runtime.block_on(stream.next()).is_none());
}

#[test]
fn only_so_many_streams_are_open_at_once() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let page = world.sign_in(&mut pilot);
    let open = || {
        let asked = page.request("GET", "/desk/events").body(Body::empty()).unwrap();
        let router = world.router.clone();
        world.runtime.block_on(async { tower::ServiceExt::oneshot(router, asked).await.unwrap() })
    };
    let held: Vec<_> = (0..200).map(|_| open()).collect();
    assert!(held.iter().all(|answer| answer.status().is_success()));
    assert_eq!(open().status(), 503);
    drop(held);
    assert!(open().status().is_success(), "a place is free again once its page is gone");
}

#[test]
fn work_that_waits_for_second_eyes_is_shown_with_its_code() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let machine = register(&mut pilot, bramble());
    world.sync(&mut pilot);
    let mut page = world.sign_in(&mut pilot);
    let path = format!("/desk/second-look/{machine}");
    assert_eq!(page.get(&path).fault(), (422, "no-job-open".into()));
    let told: Value = page.get("/desk/board").json();
    assert_eq!(told["second"], json!([]));
}
