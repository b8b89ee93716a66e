//! How people look, and who may see it.

use chrono::TimeDelta;
use witnessmark_app::App;
use witnessmark_app::views::LookingPerson;
use witnessmark_core::list::Meaning::{Serviceable, Watch};
use witnessmark_core::record::Role;
use witnessmark_store::Store;

use crate::common::*;
use crate::{admit, clock, device, meet, walked, walked_some};

fn person(app: &mut App, name: &str) -> LookingPerson {
    app.looking().unwrap().people.into_iter().find(|one| one.name == name).unwrap()
}

fn names(app: &mut App) -> Vec<String> {
    app.looking().unwrap().people.into_iter().map(|one| one.name).collect()
}

/// A school whose root, a quick pilot and a patient one have looked at machines of theirs.
fn school(clock: &Clock) -> (App, App, App) {
    let (mut root, mut quick, mut patient) = (
        device(clock, 1, "Invented root"),
        device(clock, 2, "Invented quick"),
        device(clock, 3, "Invented patient"),
    );
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let machines = [register(&mut quick, bramble()), register(&mut patient, bramble())];
    admit(&mut root, &mut quick, Role::Pilot);
    admit(&mut root, &mut patient, Role::Pilot);
    for _ in 0..3 {
        walked(&mut quick, clock, &machines[0], 2.5, &[]);
        walked(&mut patient, clock, &machines[1], 9.0, &[("cylinder-base", Watch)]);
        clock.forward(TimeDelta::days(1));
    }
    for pilot in [&mut quick, &mut patient] {
        meet(&mut root, pilot);
    }
    for pilot in [&mut quick, &mut patient] {
        meet(&mut root, pilot);
    }
    (root, quick, patient)
}

#[test]
fn an_instructor_sees_where_to_help_and_no_ranking() {
    let clock = clock();
    let (mut root, mut quick, _) = school(&clock);
    assert_eq!(names(&mut root), ["Invented patient", "Invented quick"]);
    let told = person(&mut root, "Invented quick");
    assert_eq!((told.inspections, told.seconds, told.fleet_seconds), (3, 2.5, Some(9.0)));
    assert!(told.looks > 150 && !told.you);
    assert_eq!(told.sentences.len(), 1, "{:?}", told.sentences);
    assert!(told.sentences[0].contains("about 2.5 s a point against 9 s"), "{:?}", told.sentences);
    assert!(told.sentences[0].contains("it may be practice"));
    // Found once, though it was open at all three looks.
    let patient = person(&mut root, "Invented patient");
    assert!((patient.found_percent - 100.0 / f64::from(patient.looks)).abs() < 0.06, "{patient:?}");
    assert_eq!(patient.sentences, Vec::<String>::new());
    let caution = root.looking().unwrap().caution;
    assert!(caution.contains("quick isn't careless") && caution.contains("no ranking"));
    // A pilot sees themself, and nobody else.
    assert_eq!(names(&mut quick), ["Invented quick"]);
    assert!(person(&mut quick, "Invented quick").you);
}

#[test]
fn outside_a_school_what_is_on_the_device_is_seen() {
    let clock = clock();
    let (mut one, mut two) = (device(&clock, 1, "Invented one"), device(&clock, 2, "Invented two"));
    let machine = register(&mut one, bramble());
    walked_some(&mut one, &clock, &machine, 8.0, &[], 8);
    meet(&mut one, &mut two);
    walked_some(&mut two, &clock, &machine, 8.0, &[], 8);
    meet(&mut one, &mut two);
    assert_eq!(names(&mut one), ["Invented one", "Invented two"], "oneself first");
    assert_eq!(names(&mut two), ["Invented two", "Invented one"]);
    // One look each is too few to compare with.
    let told = person(&mut one, "Invented two");
    assert_eq!((told.fleet_seconds, told.looks, told.sentences), (None, 0, vec![]));
    assert_eq!(told.seconds, 8.0);
}

#[test]
fn two_devices_of_a_person_are_one_and_a_claim_is_none() {
    let clock = clock();
    let mut phone = device(&clock, 1, "Invented instructor");
    phone.school_found("Invented school".into(), PIN.into()).unwrap();
    let machine = register(&mut phone, bramble());
    let mut tablet = App::new(Store::open(":memory:").unwrap(), platform(&clock, 9 << 32, None)).unwrap();
    tablet.begin_as(phone.school_code().unwrap().text, PIN.into()).unwrap();
    let mut claims = App::new(Store::open(":memory:").unwrap(), platform(&clock, 11 << 32, None)).unwrap();
    claims.begin_as(phone.school_code().unwrap().text, PIN.into()).unwrap();
    let answer = phone.school_vouch(tablet.school_code().unwrap().text, PIN.into()).unwrap();
    tablet.school_join(answer.text, PIN.into()).unwrap();
    meet(&mut tablet, &mut phone);
    meet(&mut claims, &mut phone);
    walked_some(&mut phone, &clock, &machine, 8.0, &[], 8);
    for other in [&mut tablet, &mut claims] {
        walked_some(other, &clock, &machine, 8.0, &[], 8);
        meet(other, &mut phone);
    }
    let people = phone.looking().unwrap().people;
    let told: Vec<(bool, u32)> = people.iter().map(|one| (one.you, one.inspections)).collect();
    assert_eq!(told, [(true, 2), (false, 1)], "{people:?}");
}

#[test]
fn a_list_in_nine_seconds_is_said_back_before_it_is_signed() {
    let clock = clock();
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let answered = |app: &mut App, seconds: f64, wrong: bool| {
        let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
        for (n, point) in walk.stations.iter().flat_map(|station| &station.points).enumerate() {
            let means = if wrong && point.id == "cylinder-base" { Watch } else { Serviceable };
            let given = answer(&walk, &point.id, means);
            let seconds = if n == 0 { seconds } else { 0.0 };
            app.answer(walk.id.clone(), point.id.clone(), Some(given), seconds).unwrap();
        }
        walk.id
    };
    let walk = answered(&mut app, 9.0, false);
    let sentences = app.summary(walk.clone()).unwrap().sentences;
    assert!(
        sentences[1].starts_with("All serviceable in 9 s:")
            && sentences[1].ends_with("less time than looking takes."),
        "{sentences:?}"
    );
    app.put_aside(walk).unwrap();
    let walk = answered(&mut app, 9.0, true);
    let sentences = app.summary(walk.clone()).unwrap().sentences;
    assert!(sentences[1].starts_with("Only 9 s for"), "{sentences:?}");
    app.put_aside(walk).unwrap();

    // Somebody who never looked here is held against what the others take.
    let mut other = device(&clock, 5, "Invented other");
    for _ in 0..3 {
        walked(&mut app, &clock, &machine, 10.0, &[]);
    }
    meet(&mut app, &mut other);
    let walk = other.walk(machine.clone(), "before-flight".into()).unwrap();
    let points: Vec<_> = walk.stations.iter().flat_map(|station| &station.points).collect();
    for point in &points {
        let given = answer(&walk, &point.id, Serviceable);
        other.answer(walk.id.clone(), point.id.clone(), Some(given), 3.0).unwrap();
    }
    let summary = other.summary(walk.id).unwrap();
    let usual = format!("Usually they take {} s.", 10 * points.len());
    assert!(summary.sentences[1].ends_with(&usual), "{:?} {usual}", summary.sentences);
    assert_eq!(summary.hurried.len(), points.len());
}

#[test]
fn a_walk_at_ones_own_pace_is_not_held_against_anybody() {
    let clock = clock();
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
    walk_on(&mut app, &clock, &walk);
    let summary = app.summary(walk.id).unwrap();
    assert!(!summary.sentences.iter().any(|sentence| sentence.contains("less time than looking")));
    assert_eq!(summary.hurried, []);
}
