//! A passphrase lets look, and no more.

use chrono::TimeDelta;
use serde_json::json;
use witnessmark_server::board::passphrase;

use crate::world::{Page, World};

const WORDS: &str = "four plain invented words";

fn set(world: &World, words: Option<&str>) {
    passphrase::set(world.server.school(), words, world.server.now()).unwrap();
}

fn attempt(page: &mut Page<'_>, words: &str) -> (u16, String) {
    let answer = page.post("/desk/passphrase", &json!({ "passphrase": words }));
    if answer.status.is_success() { (200, String::new()) } else { answer.fault() }
}

#[test]
fn it_is_off_unless_set() {
    let world = World::new();
    let mut page = Page::of(&world);
    assert_eq!(page.get("/desk/session").json()["passphrase"], false);
    assert_eq!(attempt(&mut page, ""), (403, "passphrase-off".into()));
    assert!(passphrase::set(world.server.school(), Some("too short"), 0).is_err());
    assert_eq!(attempt(&mut page, "too short"), (403, "passphrase-off".into()));
}

#[test]
fn it_lets_look_and_prepares_nothing() {
    let world = World::new();
    set(&world, Some(WORDS));
    let mut page = Page::of(&world);
    assert_eq!(page.get("/desk/session").json()["passphrase"], true);
    assert_eq!(attempt(&mut page, "four plain invented word"), (403, "passphrase-wrong".into()));
    assert_eq!(attempt(&mut page, WORDS).0, 200);
    assert!(page.get("/desk/board").status.is_success());
    let signed_in = page.get("/desk/session").json()["signed_in"].clone();
    assert_eq!(signed_in["name"], json!(null));
    assert_eq!(signed_in["may_prepare"], false);
    let files = json!({ "title": "x", "files": [], "note": "", "only_preview": true });
    assert_eq!(page.post("/desk/prepare/publication", &files).fault(), (403, "no-device".into()));
    let deferral = json!({
        "machine": "x", "point": "x", "until_hours": 1.0, "until_flights": null, "until_date": null,
        "condition": "x", "reason": "x",
    });
    assert_eq!(page.post("/desk/prepare/deferral", &deferral).fault(), (403, "no-device".into()));
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
    assert!(world.server.school().shelf().drafts(world.server.school().on_shelf()).unwrap().is_empty());
}

#[test]
fn a_new_one_puts_out_whoever_came_in_by_the_old() {
    let world = World::new();
    set(&world, Some(WORDS));
    let mut page = Page::of(&world);
    assert_eq!(attempt(&mut page, WORDS).0, 200);
    world.clock.forward(TimeDelta::seconds(1));
    set(&world, Some("another invented passphrase"));
    assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
    assert_eq!(attempt(&mut page, "another invented passphrase").0, 200);
    set(&world, None);
    assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
}

#[test]
fn guessing_is_slow() {
    let world = World::new();
    set(&world, Some(WORDS));
    let mut page = Page::of(&world);
    for n in 0..10 {
        // Time passes, so that the limit met is the passphrase's and not that of requests.
        world.clock.forward(TimeDelta::seconds(10));
        assert_eq!(attempt(&mut page, &format!("guess {n}")), (403, "passphrase-wrong".into()));
    }
    world.clock.forward(TimeDelta::seconds(10));
    let answer = page.post("/desk/passphrase", &json!({ "passphrase": WORDS }));
    assert_eq!(answer.fault(), (429, "passphrase-too-often".into()), "the right one too");
    // RFC 9110 § 10.2.3 and § 15.6 of RFC 6585, from memory: seconds to wait.
    let wait: i64 = answer.headers["retry-after"].to_str().unwrap().parse().unwrap();
    assert_eq!(wait, 15 * 60 - 10);
    world.clock.forward(TimeDelta::seconds(wait));
    assert_eq!(attempt(&mut page, WORDS).0, 200);
}

#[test]
fn what_is_kept_does_not_tell_it() {
    let world = World::new();
    set(&world, Some(WORDS));
    let school = world.server.school();
    let kept = school.shelf().setting(school.on_shelf(), "passphrase").unwrap().unwrap();
    assert!(!kept.contains("invented"));
    set(&world, Some(WORDS));
    let again = school.shelf().setting(school.on_shelf(), "passphrase").unwrap().unwrap();
    assert_ne!(kept, again, "each has a salt of its own");
}
