//! Whole rounds of witnessmark-sync's client against the router.

use witnessmark_core::record::*;
use witnessmark_sync::client::{Answer as Came, Lie, RoundFault};
use witnessmark_sync::wire::Refusal;

use crate::common::Place;
use crate::device::Device;
use crate::phone::Phone;
use crate::world::World;

crate::on_both!(two_phones_come_to_the_same, a_stranger_waits_and_comes_in_with_its_history);

fn two_phones_come_to_the_same(place: &Place) {
    let mut world = World::new(place);
    let (one, two) = (world.member(2, Role::Pilot), world.member(3, Role::Mechanic));
    let (mut one, mut two) = (Phone::new(&world, one), Phone::new(&world, two));
    (0..30).for_each(|n| one.says(&format!("one {n}")));
    (0..900).for_each(|n| two.says(&format!("two {n}")));
    let (sent_one, sent_two) = (one.sync(&world), two.sync(&world));
    assert_eq!((sent_one.sent, sent_two.sent), (30, 900));
    assert_eq!((sent_one.refused, sent_two.refused), (0, 0));
    assert_eq!(one.sync(&world).came, 900);
    assert_eq!(one.digests(), two.digests());
    assert_eq!(one.following.frontier.size(), world.size());
    // Nothing is left to do.
    let nothing = one.sync(&world);
    assert_eq!((nothing.came, nothing.sent), (0, 0));
    assert_eq!(one.following.frontier, Phone::frontier_of(&world));
}

impl Phone {
    fn frontier_of(world: &World) -> witnessmark_sync::merkle::Frontier {
        let school = world.server.school();
        let digests = school.shelf().digests(school.on_shelf(), 0, usize::MAX).unwrap();
        digests.into_iter().map(|digest| digest.0).collect()
    }
}

#[test]
fn a_page_that_breaks_off_is_kept_up_to_its_last_whole_line() {
    let mut world = World::new(&Place::sqlite());
    let writer = world.member(2, Role::Pilot);
    let mut writer = Phone::new(&world, writer);
    let words = "As long as a note may get. ".repeat(400);
    (0..150).for_each(|n| writer.says(&format!("{n} {words}")));
    writer.sync(&world);
    let reader = world.member(3, Role::Pilot);
    let mut reader = Phone::new(&world, reader);
    // Each page comes by half, in the middle of a line, and each seventh answer not at all.
    let mut rounds = 0;
    loop {
        rounds += 1;
        let mut n = 0;
        let done = reader.round(&world, |ask, came| {
            n += 1;
            if n % 7 == 0 {
                return None;
            }
            let half = came.body[..came.body.len() / 2].to_vec();
            if !ask.path.starts_with("/v1/log") || !half.contains(&b'\n') {
                return Some(came);
            }
            Some(Came { body: half, broken: true, ..came })
        });
        match done {
            Ok(_) => break,
            Err(None) => assert!(rounds < 100, "no round gets further"),
            Err(Some(fault)) => panic!("{fault}"),
        }
    }
    assert!(rounds > 1 && reader.pages > 4, "{rounds} rounds, {} pages", reader.pages);
    reader.sync(&world);
    writer.sync(&world);
    assert_eq!(reader.digests(), writer.digests());
}

fn a_stranger_waits_and_comes_in_with_its_history(place: &Place) {
    let mut world = World::new(place);
    let mut device = Device::new(5);
    device.says("before I knew any school");
    device.joins(world.school);
    let mut phone = Phone::new(&world, device);
    let before = world.size();
    assert!(phone.sync(&world).waits);
    assert!(phone.sync(&world).waits);
    assert_eq!(world.size(), before);
    let admitted = world.root.admits(world.school, &phone.device, Role::Pilot);
    world.push(&world.root, [&admitted]);
    let outcome = phone.sync(&world);
    assert!(!outcome.waits);
    assert_eq!(world.size(), before + 4, "its admission, its two records, its history");
    assert!(phone.digests().contains(&admitted.digest));
    assert!(phone.stuck.is_empty());
}

#[test]
fn photos_go_and_come_by_parts_even_where_parts_are_lost() {
    let mut world = World::new(&Place::sqlite());
    let (one, two) = (world.member(2, Role::Pilot), world.member(3, Role::Viewer));
    let (mut one, mut two) = (Phone::new(&world, one), Phone::new(&world, two));
    let large: Vec<u8> = (0..900_000_u32).map(|n| (n % 253) as u8).collect();
    let photo = one.pictures(large.clone());
    let small = one.pictures(vec![1, 2, 3]);
    two.photos_named.extend([photo, small]);
    // It has two answers to its parts lost: the server has the parts all the same.
    let mut lost = 0;
    while one.photos_sent.len() < 2 {
        let done = one.round(&world, |ask, came| {
            let lose = ask.method == "PUT" && lost < 2;
            lost += usize::from(lose);
            (!lose).then_some(came)
        });
        assert!(done.is_ok() || lost <= 2);
    }
    let outcome = two.sync(&world);
    assert_eq!(outcome.photos_came, 2);
    assert_eq!(two.photos[&photo].bytes, large);
    assert_eq!(two.photos[&photo].media, "image/jpeg");
    assert_eq!(lost, 2);
}

#[test]
fn what_is_refused_is_stuck_with_its_reason_and_all_else_goes() {
    let mut world = World::new(&Place::sqlite());
    let viewer = world.member(2, Role::Viewer);
    let mut phone = Phone::new(&world, viewer);
    phone.says("it looks fine to me");
    let outcome = phone.sync(&world);
    assert_eq!((outcome.sent, outcome.refused), (0, 1));
    assert_eq!(phone.stuck.values().next().unwrap().kind, Refusal::Viewer);
    let again = phone.sync(&world);
    assert_eq!((again.refused, again.waits), (0, false));
}

#[test]
fn a_log_that_was_cut_short_is_found_out() {
    let mut world = World::new(&Place::sqlite());
    let pilot = world.member(2, Role::Pilot);
    let mut phone = Phone::new(&world, pilot);
    let early = phone.round(&world, |_, came| Some(came)).unwrap();
    assert_eq!(early.refused, 0);
    let old = world.open("/v1/checkpoint").text();
    phone.says("more");
    phone.sync(&world);
    // The same server, in its own hand, with what it said before.
    let lied = phone.round(&world, |ask, came| {
        let old = Came { body: old.clone().into_bytes(), ..came.clone() };
        Some(if ask.path == "/v1/checkpoint" { old } else { came })
    });
    assert!(matches!(lied, Err(Some(RoundFault::Lies { lie: Lie::Shrunk { .. }, .. }))), "{lied:?}");
}
