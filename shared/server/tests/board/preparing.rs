//! The board prepares; a device signs.

use serde_json::{Value, json};
use witnessmark_app::App;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Role;

use crate::device::{PIN, bramble, register, walk_and_sign};
use crate::world::{Page, World, device};

const POINT: &str = "cylinder-base";

/// A pilot's machine with a defect, known to the board.
fn with_defect(world: &mut World) -> String {
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let machine = register(&mut pilot, bramble());
    let found = [(POINT, Meaning::Unserviceable)];
    walk_and_sign(&mut pilot, &world.clock, &machine, "before-flight", &found);
    world.sync(&mut pilot);
    world.sync_root();
    machine
}

fn deferral(machine: &str) -> Value {
    json!({
        "machine": machine, "point": POINT, "until_hours": null, "until_flights": null,
        "until_date": "2026-05-20", "condition": "on the ground only", "reason": "the part comes on Monday",
    })
}

/// The root's app, lent out: a page borrows the world.
fn lend(world: &mut World) -> App {
    std::mem::replace(&mut world.root, device(&world.clock, 97, "nobody"))
}

#[test]
fn a_deferral_is_prepared_here_and_signed_there() {
    let mut world = World::new();
    let machine = with_defect(&mut world);
    let mut instructor = lend(&mut world);
    let mut page = world.sign_in(&mut instructor);
    assert_eq!(page.get("/desk/session").json()["signed_in"]["may_prepare"], true);
    let prepared = page.post("/desk/prepare/deferral", &deferral(&machine)).json();
    let code = prepared["code"]["text"].as_str().unwrap();
    assert!(prepared["code"]["svg"].as_str().unwrap().contains("<svg"));
    // Prepared is not signed: the board is as it was.
    assert_eq!(page.rows()[0]["deferred"], json!([]));
    let mine = page.get("/desk/drafts").json();
    assert_eq!(mine.as_array().unwrap().len(), 1);
    assert_eq!(mine[0]["id"], prepared["id"]);
    assert_eq!(mine[0]["machine"], json!(machine));
    assert_eq!(mine[0]["code"]["text"], json!(code));

    assert_eq!(instructor.desk_open(code.into()).unwrap().kind, "draft");
    let draft = world.draft(&mut instructor, code).unwrap();
    let seen = instructor.draft_view(&draft).unwrap();
    assert_eq!(seen.machine.as_deref(), Some(machine.as_str()));
    instructor.draft_sign(&draft, PIN).unwrap();
    world.sync(&mut instructor);

    let rows = page.rows();
    assert_eq!(rows[0]["deferred"].as_array().unwrap().len(), 1, "{rows:?}");
    assert_eq!(
        page.get("/desk/drafts").json().as_array().map(Vec::len),
        Some(0),
        "what is signed waits no more"
    );
}

#[test]
fn a_deferral_with_faults_is_refused_at_once() {
    let mut world = World::new();
    let machine = with_defect(&mut world);
    let mut instructor = lend(&mut world);
    let mut page = world.sign_in(&mut instructor);
    let mut with = |name: &str, value: Value| {
        let mut asked = deferral(&machine);
        asked[name] = value;
        page.post("/desk/prepare/deferral", &asked).fault()
    };
    assert_eq!(with("condition", json!("  ")), (422, "deferral-words-missing".into()));
    assert_eq!(with("until_date", json!(null)), (422, "deferral-limit-missing".into()));
    assert_eq!(with("until_date", json!("2026-05-01")), (422, "deferral-passed".into()));
    assert_eq!(with("until_date", json!("soon")), (422, "day".into()));
    assert_eq!(with("point", json!("reserve-handle")), (422, "nothing-open".into()));
    assert_eq!(with("machine", json!("nonsense")), (404, "no-such".into()));
    assert_eq!(with("signed", json!(true)), (400, "malformed".into()));
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
}

#[test]
fn who_is_no_instructor_prepares_nothing() {
    let mut world = World::new();
    let machine = with_defect(&mut world);
    for (name, role) in [
        ("Invented viewer", Role::Viewer),
        ("Invented pilot 2", Role::Pilot),
        ("Invented mechanic", Role::Mechanic),
    ] {
        let mut member = world.member(name, role);
        let mut page = world.sign_in(&mut member);
        let refused = (403, "not-instructor".to_owned());
        assert_eq!(page.post("/desk/prepare/deferral", &deferral(&machine)).fault(), refused, "{name}");
        let files = json!({ "title": "x", "files": [], "note": "", "only_preview": false });
        assert_eq!(page.post("/desk/prepare/publication", &files).fault(), refused, "{name}");
        assert_eq!(page.post("/desk/drafts/drop", &json!({ "id": "x" })).fault(), refused, "{name}");
    }
}

#[test]
fn who_is_an_instructor_no_more_prepares_nothing_with_the_old_cookie() {
    let mut world = World::new();
    let machine = with_defect(&mut world);
    let mut instructor = world.member("Invented instructor", Role::Instructor);
    let cookies = world.sign_in(&mut instructor).cookies;
    let person = |world: &mut World| {
        let members = world.root.school().unwrap().members;
        members.iter().find(|member| member.name == "Invented instructor").unwrap().person.clone()
    };
    let person = person(&mut world);
    world.root.school_end(person, "changes role".into(), PIN.into()).unwrap();
    let shown = instructor.school_code().unwrap();
    world.root.school_admit(shown.text, Some(Role::Pilot), None, PIN.into()).unwrap();
    world.sync_root();
    let mut page = Page { cookies, ..Page::of(&world) };
    assert!(page.get("/desk/board").status.is_success());
    let refused = (403, "not-instructor".to_owned());
    assert_eq!(page.post("/desk/prepare/deferral", &deferral(&machine)).fault(), refused);
}

#[test]
fn a_draft_is_its_maker_s() {
    let mut world = World::new();
    let machine = with_defect(&mut world);
    let mut other = world.member("Invented instructor", Role::Instructor);
    let mut root = lend(&mut world);
    let mut page = world.sign_in(&mut root);
    let mut theirs = world.sign_in(&mut other);
    let id = page.post("/desk/prepare/deferral", &deferral(&machine)).json()["id"].clone();
    assert_eq!(theirs.get("/desk/drafts").json(), json!([]));
    assert_eq!(theirs.post("/desk/drafts/drop", &json!({ "id": id })).fault(), (403, "not-yours".into()));
    assert_eq!(page.post("/desk/drafts/drop", &json!({ "id": id })).status, 204);
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
}

fn publication(text: &str, only_preview: bool) -> Value {
    json!({
        "title": "Invented words",
        "files": [{ "path": "texts/en/invented.ftl", "text": text }],
        "note": "A first try",
        "only_preview": only_preview,
    })
}

#[test]
fn files_are_looked_at_then_prepared_then_signed() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut instructor = lend(&mut world);
    let mut page = world.sign_in(&mut instructor);
    let good = "invented-word = An invented word\n";
    let looked = page.post("/desk/prepare/publication", &publication(good, true)).json();
    assert_eq!(looked["preview"]["faults"], json!([]));
    assert_eq!(looked["preview"]["version"], 1);
    assert_eq!(looked["preview"]["changes"].as_array().unwrap().len(), 1);
    assert_eq!(looked["prepared"], json!(null));
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
    let prepared =
        page.post("/desk/prepare/publication", &publication(good, false)).json()["prepared"].clone();
    let draft = world.draft(&mut instructor, prepared["code"]["text"].as_str().unwrap()).unwrap();
    instructor.draft_sign(&draft, PIN).unwrap();
    world.sync(&mut instructor);
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
    world.sync(&mut pilot);
    let there = pilot.school().unwrap().published;
    assert_eq!(there.len(), 1);
    assert_eq!((there[0].title.as_str(), there[0].version, there[0].used), ("Invented words", 1, true));
    let next = page.post("/desk/prepare/publication", &publication(good, true)).json();
    assert_eq!(next["preview"]["version"], 2);
}

#[test]
fn files_with_faults_are_refused_with_every_fault_by_file_and_line() {
    let mut world = World::new();
    let mut instructor = lend(&mut world);
    let mut page = world.sign_in(&mut instructor);
    let files = json!({
        "title": "Invented words",
        "files": [
            { "path": "texts/en/invented.ftl", "text": "good = A word\n}bad\n" },
            { "path": "engines/invented.toml", "text": "id = \"invented\"\nkind = \"steam\"\n[bands.x]\n" },
            { "path": "elsewhere/x.toml", "text": "" },
        ],
        "note": "",
        "only_preview": false,
    });
    let answer = page.post("/desk/prepare/publication", &files);
    assert_eq!(answer.status, 422);
    let told: Value = serde_json::from_slice(&answer.body).unwrap();
    assert_eq!(told["prepared"], json!(null));
    let faults = told["preview"]["faults"].as_array().unwrap();
    for (file, line) in [("texts/en/invented.ftl", 2), ("engines/invented.toml", 2), ("elsewhere/x.toml", 1)]
    {
        assert!(
            faults.iter().any(|fault| fault["file"] == file && fault["line"] == line),
            "{file}:{line} in {faults:?}"
        );
    }
    assert_eq!(page.get("/desk/drafts").json(), json!([]));
    let untitled = json!({ "title": " ", "files": publication("a = b\n", false)["files"], "note": "", "only_preview": false });
    assert_eq!(page.post("/desk/prepare/publication", &untitled).fault(), (422, "publish-title".into()));
}
