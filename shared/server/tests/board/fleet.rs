//! What all looks tell together, and who is told.

use serde_json::json;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Role;

use crate::device::{PIN, bramble, register, walk_and_sign};
use crate::world::{Page, World};

#[test]
fn lives_and_points_are_told_as_on_a_phone() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut page = world.sign_in(&mut pilot);
    assert_eq!(page.get("/desk/lives").json(), json!([]));
    assert_eq!(page.get("/desk/life/exhaust").fault(), (404, "life-no-looks".into()));
    let cookies = page.cookies;
    let machine = register(&mut pilot, bramble());
    let found = [("exhaust-body", Meaning::Unserviceable)];
    walk_and_sign(&mut pilot, &world.clock, &machine, "before-flight", &found);
    world.sync(&mut pilot);
    world.sync_root();
    let lives = serde_json::to_value(world.root.life_parts().unwrap()).unwrap();
    let life = world.root.life("exhaust".into(), Some(0.1), Some(25.0)).unwrap();
    assert_eq!((life.in_force, life.part.failed), (Some(25.0), 1));
    let life = serde_json::to_value(life).unwrap();
    let worth = serde_json::to_value(world.root.list_worth().unwrap()).unwrap();
    let mut page = Page { cookies, ..Page::of(&world) };
    assert_eq!(page.get("/desk/lives").json(), lives);
    assert_eq!(page.get("/desk/life/exhaust?chance=0.1&in_force=25").json(), life);
    assert_eq!(page.get("/desk/worth").json(), worth);
    assert!(worth["points"].as_array().unwrap().iter().any(|point| point["unserviceable"] == 1));
    assert_eq!(page.get("/desk/life/flux").fault(), (404, "life-no-such".into()));
    assert_eq!(page.get("/desk/life/exhaust?chance=2").fault(), (422, "life-chance".into()));
    assert_eq!(page.get("/desk/life/exhaust?chance=often").fault(), (400, "malformed".into()));
}

#[test]
fn how_people_look_is_for_instructors() {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let mut teacher = world.member("Invented instructor", Role::Instructor);
    let machine = register(&mut pilot, bramble());
    walk_and_sign(&mut pilot, &world.clock, &machine, "before-flight", &[]);
    world.sync(&mut pilot);
    let refused = (403, "looking-instructors".to_owned());
    assert_eq!(world.sign_in(&mut pilot).get("/desk/looking").fault(), refused);
    let told = world.sign_in(&mut teacher).get("/desk/looking").json();
    let people: Vec<&str> =
        told["people"].as_array().unwrap().iter().map(|one| one["name"].as_str().unwrap()).collect();
    assert_eq!(people, ["Invented pilot"]);
    assert!(told["caution"].as_str().unwrap().contains("no ranking"));
    // A pilot whom the school makes an instructor sees it from then on, on the same page.
    let mut page = world.sign_in(&mut pilot);
    assert_eq!(page.get("/desk/looking").fault(), refused);
    let cookies = page.cookies;
    let members = world.root.school().unwrap().members;
    let person = members.iter().find(|member| member.name == "Invented pilot").unwrap().person.clone();
    world.root.school_role(person, Some(Role::Instructor), None, PIN.into()).unwrap();
    world.sync_root();
    let mut page = Page { cookies, ..Page::of(&world) };
    assert_eq!(page.get("/desk/looking").json()["people"][0]["you"], true);
}

#[test]
fn nobody_signed_in_is_told_nothing() {
    let world = World::new();
    let mut page = Page::of(&world);
    for path in ["/desk/lives", "/desk/life/exhaust", "/desk/worth", "/desk/looking"] {
        assert_eq!(page.get(path).fault(), (401, "signed-out".into()), "{path}");
    }
}
