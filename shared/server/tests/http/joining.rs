//! How a school comes to a server, and devices to the school.

use axum::http::StatusCode;
use witnessmark_core::record::*;
use witnessmark_server::ServerFault;
use witnessmark_server::school::{School, adopt};
use witnessmark_sync::wire::{SchoolCard, WaitingDevice};

use crate::common::Place;
use crate::device::{Ask, Device};
use crate::world::{World, founding};

crate::on_both!(a_server_takes_on_one_school, who_waits_is_told_to_the_root_until_admitted);

fn a_server_takes_on_one_school(place: &Place) {
    assert_eq!(School::open(place.open()).unwrap_err(), ServerFault::NoSchool);
    let (_, school, bundle) = founding();
    assert_eq!(adopt(place.open(), &bundle).unwrap().id(), school);
    // The same again changes nothing.
    assert_eq!(adopt(place.open(), &bundle).unwrap().follow().unwrap(), 2);
    let mut other = Device::new(7);
    let founded = other.write(Body::SchoolFounded(SchoolFounded { name: "Another".into(), invented: true }));
    let refused = adopt(place.open(), &write_bundle(&other.records)).unwrap_err();
    assert_eq!(refused, ServerFault::OtherSchool { here: school, given: founded.digest });
    assert_eq!(School::open(place.open()).unwrap().id(), school);
}

#[test]
fn a_bundle_that_founds_no_school_is_refused() {
    let (root, _, bundle) = founding();
    let mut two = Device::new(8);
    for name in ["One", "Two"] {
        two.write(Body::SchoolFounded(SchoolFounded { name: name.into(), invented: true }));
    }
    let altered = bundle.replace("Invented school", "Invented schoul");
    for bad in ["", "nothing", &write_bundle(&root.records[..1]), &write_bundle(&two.records), &altered] {
        let refused = adopt(Place::sqlite().open(), bad).unwrap_err();
        assert!(matches!(refused, ServerFault::NotASchool(_)), "{refused}");
    }
}

#[test]
fn the_card_lets_a_stranger_trust_the_root_and_names_nobody_else() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    let heir = world.member(3, Role::Instructor);
    let card = |world: &World| -> SchoolCard { world.open("/v1/school").json() };
    let trusted = |card: &SchoolCard| {
        let records: Vec<Record> =
            card.records.iter().map(|line| Record::parse(line.clone()).unwrap()).collect();
        let trust = Trust::from_records(&records);
        let devices: Vec<DeviceId> = trust.devices().map(|(device, _)| device.clone()).collect();
        (trust.school(&card.school).unwrap().root.clone(), devices)
    };
    let first = card(&world);
    assert_eq!((first.school, first.name.as_str()), (world.school, "Invented school"));
    assert_eq!(trusted(&first), (world.root.id(), vec![world.root.id()]));
    // Handed over.
    world.root.sees(&heir);
    let (school, to) = (world.school, heir.id());
    let handed = world.root.write(Body::RootHanded(RootHanded { school, to }));
    world.push(&world.root, [&handed]);
    let second = card(&world);
    let (root, mut devices) = trusted(&second);
    devices.sort();
    let mut both = vec![world.root.id(), heir.id()];
    both.sort();
    assert_eq!((root, devices), (heir.id(), both));
    assert!(!serde_json::to_string(&second).unwrap().contains(&pilot.name));
    assert_eq!(first.server, second.server);
}

fn who_waits_is_told_to_the_root_until_admitted(place: &Place) {
    let mut world = World::new(place);
    let mut device = Device::new(5);
    device.joins(world.school);
    assert_eq!(world.introduce(&device).status, StatusCode::ACCEPTED);
    // Asking again makes no second one.
    assert_eq!(world.introduce(&device).status, StatusCode::ACCEPTED);
    let waiting =
        |world: &World| -> Vec<WaitingDevice> { world.get(&world.root.courier, "/v1/waiting").json() };
    let [one] = waiting(&world).try_into().unwrap();
    assert_eq!((one.device, one.person, one.name), (device.id(), device.person, device.name.clone()));
    assert_eq!(one.since, "2026-05-02T10:00:00+00:00");
    let records: Vec<Envelope> = device.records.iter().map(|record| record.envelope.clone()).collect();
    assert_eq!(one.records, records);
    // Not in the log, and not let in.
    let before = world.size();
    assert_eq!(world.get(&device.courier, "/v1/log?from=0").fault(), (401, "unknown-key".into()));
    let admitted = world.root.admits(world.school, &device, Role::Pilot);
    world.push(&world.root, [&admitted]);
    assert!(waiting(&world).is_empty());
    assert_eq!(world.introduce(&device).status, StatusCode::OK);
    assert_eq!(world.size(), before + 3);
    assert_eq!(world.get(&device.courier, "/v1/log?from=0").status, StatusCode::OK);
    // Asking when one is in already does no harm.
    assert_eq!(world.introduce(&device).status, StatusCode::OK);
    assert_eq!(world.size(), before + 3);
    assert!(world.server.school().shelf().waiting(world.server.school().on_shelf()).unwrap().is_empty());
}

#[test]
fn who_asks_anew_after_its_last_day_waits_again() {
    let mut world = World::new(&Place::sqlite());
    let mut guest = Device::new(5);
    guest.joins(world.school);
    let until = chrono::NaiveDate::from_ymd_opt(2026, 5, 2);
    let admitted = world.root.admits_until(world.school, &guest, Role::Pilot, until);
    world.push(&world.root, [&admitted]);
    assert_eq!(world.introduce(&guest).status, StatusCode::OK);
    world.turn(3 * 24 * 3600);
    assert_eq!(world.introduce(&guest).status, StatusCode::ACCEPTED);
    let waiting: Vec<WaitingDevice> = world.get(&world.root.courier, "/v1/waiting").json();
    assert_eq!(waiting.len(), 1);
}

#[test]
fn only_the_root_sees_who_waits() {
    let mut world = World::new(&Place::sqlite());
    let instructor = world.member(2, Role::Instructor);
    assert_eq!(world.get(&instructor.courier, "/v1/waiting").fault(), (403, "not-the-root".into()));
    world.root.sees(&instructor);
    let (school, to) = (world.school, instructor.id());
    let handed = world.root.write(Body::RootHanded(RootHanded { school, to }));
    world.push(&world.root, [&handed]);
    assert_eq!(world.get(&instructor.courier, "/v1/waiting").status, StatusCode::OK);
    assert_eq!(world.get(&world.root.courier, "/v1/waiting").fault(), (403, "not-the-root".into()));
}

#[test]
fn an_introduction_is_two_records_of_one_device_for_this_school() {
    let world = World::new(&Place::sqlite());
    let introduce = |records: &[&Record]| {
        let body = write_bundle(records.iter().copied());
        world.ask(Ask::new("POST", "/v1/waiting", world.now()).body(body).unsigned()).status
    };
    let (mut one, mut two) = (Device::new(5), Device::new(6));
    let joined = one.joins(world.school);
    let member = &one.records[0];
    let elsewhere = two.joins(Digest::of(b"another school"));
    let mut forged = joined.clone();
    forged.envelope.payload = forged.envelope.payload.replace("school-joined", "school-joinet");
    assert_eq!(introduce(&[member, &joined]), StatusCode::ACCEPTED);
    assert_eq!(introduce(&[&joined, member]), StatusCode::BAD_REQUEST, "its key comes first");
    for bad in [
        vec![],
        vec![member],
        vec![&joined],
        vec![member, member],
        vec![&two.records[0], &elsewhere],
        vec![&two.records[0], &joined],
        vec![member, &forged],
        vec![member, &joined, &joined],
    ] {
        assert_eq!(introduce(&bad), StatusCode::BAD_REQUEST, "{bad:?}");
    }
}

#[test]
fn a_member_brings_a_second_phone_by_vouching() {
    let mut world = World::new(&Place::sqlite());
    let mut pilot = world.member(2, Role::Pilot);
    let mut second = Device::of_person(12, 2);
    second.joins(world.school);
    let vouched = pilot.write(Body::Vouched(Vouched { device: second.id() }));
    world.push(&pilot, [&vouched, &second.records[0]]);
    assert_eq!(world.introduce(&second).status, StatusCode::OK);
    assert_eq!(world.get(&second.courier, "/v1/log?from=0").status, StatusCode::OK);
}
