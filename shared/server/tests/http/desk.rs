//! What a phone does for the board.

use axum::http::StatusCode;
use serde_json::json;
use witnessmark_core::record::*;
use witnessmark_sync::wire::Draft;

use crate::common::Place;
use crate::world::World;

crate::on_both!(a_draft_is_fetched_as_prepared, a_page_is_signed_in_once_by_the_devices_own_key);

fn a_draft_is_fetched_as_prepared(place: &Place) {
    let mut world = World::new(place);
    let pilot = world.member(2, Role::Pilot);
    let machine = Some(uuid::Uuid::from_bytes([4; 16]));
    let body = json!({ "point": "hose-clamp", "until": "2026-06-01" });
    let draft = Draft { id: "Ab-1_".into(), machine, kind: "defect-deferred".into(), body };
    world.server.school().prepare(draft.clone(), world.now()).unwrap();
    assert_eq!(world.get(&pilot.courier, "/v1/draft/Ab-1_").json::<Draft>(), draft);
    assert_eq!(world.get(&pilot.courier, "/v1/draft/other").fault(), (404, "not-found".into()));
}

fn a_page_is_signed_in_once_by_the_devices_own_key(place: &Place) {
    let mut world = World::new(place);
    let instructor = world.member(2, Role::Instructor);
    let (school, until) = (world.server.school().on_shelf(), world.now() + 120);
    world.server.school().shelf().challenge_put(school, "page", "cookie", until).unwrap();
    let confirm =
        |seed: &SigningSeed, challenge: &str| world.post(seed, &format!("/v1/desk/{challenge}"), "");
    assert_eq!(confirm(&instructor.courier, "page").fault(), (403, "courier".into()));
    assert_eq!(confirm(&instructor.seed, "other").fault(), (404, "not-found".into()));
    assert_eq!(confirm(&instructor.seed, "page").status, StatusCode::NO_CONTENT);
    assert_eq!(confirm(&instructor.seed, "page").fault(), (409, "used".into()));
    let claimed = world.server.school().shelf().challenge_claim(school, "page", "cookie", world.now());
    assert_eq!(claimed, Ok(Some(instructor.id())));
    // Too late.
    world.server.school().shelf().challenge_put(school, "late", "cookie", until).unwrap();
    world.turn(121);
    let late = world.post(&instructor.seed, "/v1/desk/late", "");
    assert_eq!(late.fault(), (404, "not-found".into()));
}
