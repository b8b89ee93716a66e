//! Who gets in, and how long.

use chrono::TimeDelta;
use serde_json::json;
use witnessmark_core::record::Role;

use crate::device::PIN;
use crate::world::{ADDRESS, Page, World, device};

#[test]
fn nothing_is_shown_to_a_page_that_is_not_signed_in() {
    let world = World::new();
    let mut page = Page::of(&world);
    let nought = "0".repeat(64);
    for path in ["board", "events", "drafts", "machine/x", "second-look/x"] {
        assert_eq!(page.get(&format!("/desk/{path}")).fault(), (401, "signed-out".into()), "{path}");
    }
    for path in [format!("/desk/record/{nought}"), format!("/desk/photo/{nought}")] {
        assert_eq!(page.get(&path).fault(), (401, "signed-out".into()), "{path}");
    }
    for path in ["prepare/deferral", "prepare/publication", "drafts/drop", "sign-out"] {
        assert_eq!(page.post(&format!("/desk/{path}"), &json!({})).fault().0, 401, "{path}");
    }
    let place = page.get("/desk/session").json();
    assert_eq!(place["school"], "Invented school");
    assert_eq!(place["signed_in"], json!(null));
    assert!(place["cautions"].as_array().is_some_and(|cautions| !cautions.is_empty()));
    page.cookies.push(("__Host-witnessmark-desk".into(), "a guess".into()));
    assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
}

#[test]
fn a_member_signs_in_with_their_device_for_half_a_day() {
    let mut world = World::new();
    let mut mechanic = world.member("Invented mechanic", Role::Mechanic);
    let mut page = world.sign_in(&mut mechanic);
    let signed_in = page.get("/desk/session").json()["signed_in"].clone();
    assert_eq!(signed_in["name"], "Invented mechanic");
    assert_eq!(signed_in["role"], "mechanic");
    assert_eq!(signed_in["may_prepare"], false);
    assert!(page.get("/desk/board").status.is_success());
    world.clock.forward(TimeDelta::hours(12) - TimeDelta::seconds(1));
    assert!(page.get("/desk/board").status.is_success());
    world.clock.forward(TimeDelta::seconds(1));
    assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
}

/// RFC 6265bis (draft-ietf-httpbis-rfc6265bis) § 4.1.3.2 and § 5.7, from memory: a `__Host-` cookie is
/// Secure, with Path=/ and no Domain; SameSite=Strict isn't sent with requests of other sites.
#[test]
fn the_cookie_is_out_of_reach() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut page = Page::of(&world);
    let begun = page.post("/desk/sign-in", &json!({})).json();
    let text = begun["code"]["text"].as_str().unwrap();
    assert!(begun["code"]["svg"].as_str().unwrap().contains("<svg"));
    assert_eq!(world.carry(&pilot.desk_confirm(text, PIN).unwrap()).status, 204);
    let answer = page.get(&format!("/desk/sign-in/{}", begun["id"].as_str().unwrap()));
    let sets: Vec<&str> =
        answer.headers.get_all("set-cookie").iter().map(|set| set.to_str().unwrap()).collect();
    let session = sets.iter().find(|set| set.starts_with("__Host-witnessmark-desk=")).unwrap();
    for part in ["HttpOnly", "Secure", "SameSite=Strict", "Path=/", "Max-Age=43200"] {
        assert!(session.split("; ").any(|has| has == part), "{part} in {session}");
    }
    assert!(!session.contains("Domain"));
    // The shelf keeps no token that could be shown.
    let token = &page.cookies.iter().find(|(name, _)| name == "__Host-witnessmark-desk").unwrap().1;
    for suffix in ["", "-wal"] {
        let file = std::fs::read(format!("{}{suffix}", world.place.address)).unwrap_or_default();
        assert!(!file.windows(token.len()).any(|part| part == token.as_bytes()), "shelf.db{suffix}");
    }
}

#[test]
fn only_the_page_that_shows_the_code_gets_in() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let (mut page, mut other) = (Page::of(&world), Page::of(&world));
    let begun = page.post("/desk/sign-in", &json!({})).json();
    let path = format!("/desk/sign-in/{}", begun["id"].as_str().unwrap());
    assert_eq!(page.get(&path).json(), json!({ "signed_in": false }));
    let text = begun["code"]["text"].as_str().unwrap();
    assert_eq!(world.carry(&pilot.desk_confirm(text, PIN).unwrap()).status, 204);
    // A page that saw the code over a shoulder, with no cookie and with one of its own.
    assert_eq!(other.get(&path).fault(), (410, "code-gone".into()));
    other.post("/desk/sign-in", &json!({})).json();
    assert_eq!(other.get(&path).json(), json!({ "signed_in": false }));
    assert_eq!(page.get(&path).json(), json!({ "signed_in": true }));
    // Once.
    assert_eq!(page.get(&path).fault(), (410, "code-gone".into()));
}

#[test]
fn a_code_is_good_for_five_minutes_and_for_one_device() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut viewer = world.member("Invented viewer", Role::Viewer);
    let mut page = Page::of(&world);
    let begun = page.post("/desk/sign-in", &json!({})).json();
    let text = begun["code"]["text"].as_str().unwrap().to_owned();
    assert_eq!(world.carry(&pilot.desk_confirm(&text, PIN).unwrap()).status, 204);
    assert_eq!(world.carry(&viewer.desk_confirm(&text, PIN).unwrap()).status, 409);
    world.clock.forward(TimeDelta::minutes(5));
    let path = format!("/desk/sign-in/{}", begun["id"].as_str().unwrap());
    assert_eq!(page.get(&path).fault(), (410, "code-gone".into()));
    assert_eq!(world.carry(&pilot.desk_confirm(&text, PIN).unwrap()).status, 404);
}

#[test]
fn a_forged_a_strange_and_a_courier_s_word_sign_nobody_in() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut stranger = device(&world.clock, 50, "Invented stranger");
    world.follow(&mut stranger);
    let mut page = Page::of(&world);
    let begun = page.post("/desk/sign-in", &json!({})).json();
    let again = page.post("/desk/sign-in", &json!({})).json();
    let (id, other) = (begun["id"].as_str().unwrap(), again["id"].as_str().unwrap());
    let text = begun["code"]["text"].as_str().unwrap();
    // Signed for one challenge, sent for another.
    let mut forged = pilot.desk_confirm(text, PIN).unwrap();
    forged.url = forged.url.replace(id, other);
    assert_eq!(world.carry(&forged).status, 401);
    // Nobody's key.
    assert_eq!(world.carry(&stranger.desk_confirm(text, PIN).unwrap()).status, 401);
    // The courier's key, which opens without a PIN.
    let mut courier = pilot.server_ask(&format!("/v1/desk/{other}")).unwrap();
    courier.method = "POST";
    assert_eq!(world.carry(&courier).status, 401, "signed for another method");
    assert_eq!(page.get(&format!("/desk/sign-in/{other}")).json(), json!({ "signed_in": false }));
    // A device of no school, or of another, doesn't even try.
    let mut loner = device(&world.clock, 51, "Invented loner");
    assert_eq!(loner.desk_open(text.to_owned()).unwrap_err().kind, "no-school");
    loner.school_found("Another invented school".into(), PIN.into()).unwrap();
    assert_eq!(loner.desk_open(text.to_owned()).unwrap_err().kind, "desk-of-other");
}

#[test]
fn whoever_is_ended_is_out_at_once() {
    let mut world = World::new();
    let mut one = world.member("Invented pilot", Role::Pilot);
    let mut two = world.member("Invented mechanic", Role::Mechanic);
    let cookies = |page: Page<'_>| page.cookies;
    let (first, second) = (cookies(world.sign_in(&mut one)), cookies(world.sign_in(&mut two)));
    let members = world.root.school().unwrap().members;
    let of = |name: &str| members.iter().find(|member| member.name == name).unwrap().clone();
    let lost = of("Invented pilot").devices[0].device.clone();
    world.root.key_end(lost, "lost".into(), PIN.into()).unwrap();
    world.root.school_end(of("Invented mechanic").person, "left".into(), PIN.into()).unwrap();
    world.sync_root();
    for cookies in [first, second] {
        let mut page = Page { cookies, ..Page::of(&world) };
        assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
    }
    // Nor do they get in anew.
    let mut page = Page::of(&world);
    let begun = page.post("/desk/sign-in", &json!({})).json();
    let text = begun["code"]["text"].as_str().unwrap();
    assert_eq!(world.carry(&one.desk_confirm(text, PIN).unwrap()).status, 403);
    assert_eq!(world.carry(&two.desk_confirm(text, PIN).unwrap()).status, 403);
}

#[test]
fn signing_out_ends_the_session_itself() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut page = world.sign_in(&mut pilot);
    let kept = page.cookies.clone();
    assert_eq!(page.post("/desk/sign-out", &json!({})).status, 204);
    assert!(page.cookies.is_empty());
    page.cookies = kept;
    assert_eq!(page.get("/desk/board").fault(), (401, "signed-out".into()));
}

#[test]
fn another_site_s_page_does_nothing_here() {
    let mut world = World::new();
    let mut root = std::mem::replace(&mut world.root, device(&world.clock, 98, "nobody"));
    let page = world.sign_in(&mut root);
    let send = |headers: &[(&'static str, &str)], media: Option<&str>| {
        let headers = headers.iter().map(|(name, value)| (*name, (*value).to_owned())).collect();
        let page = Page { cookies: page.cookies.clone(), headers, ..Page::of(&world) };
        let mut request = page.request("POST", "/desk/sign-out");
        if let Some(media) = media {
            request = request.header("content-type", media);
        }
        world.send(request.body("{}".into()).unwrap())
    };
    let json = Some("application/json");
    assert_eq!(send(&[], json).fault(), (403, "other-page".into()));
    for origin in ["https://evil.test", "http://school.test:8443", "https://school.test", "null"] {
        assert_eq!(send(&[("origin", origin)], json).fault(), (403, "other-page".into()), "{origin}");
    }
    let twice = [("origin", ADDRESS), ("origin", "https://evil.test")];
    assert_eq!(send(&twice, json).fault(), (403, "other-page".into()));
    let crossed = [("origin", ADDRESS), ("sec-fetch-site", "cross-site")];
    assert_eq!(send(&crossed, json).fault(), (403, "other-page".into()));
    // What a form can send without being asked (the Fetch standard, "CORS-safelisted request-header").
    for media in [None, Some("text/plain"), Some("application/x-www-form-urlencoded")] {
        assert_eq!(send(&[("origin", ADDRESS)], media).fault(), (415, "media".into()), "{media:?}");
    }
    assert_eq!(send(&[("origin", ADDRESS), ("sec-fetch-site", "same-origin")], json).status, 204);
}
