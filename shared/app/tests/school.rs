//! A school without a network: founding, admitting by codes, roles, ends, hand-over, lists.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use chrono::TimeDelta;
use common::*;
use witnessmark_app::App;
use witnessmark_app::views::{PublishFile, SchoolView};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Role;
use witnessmark_core::verdict::{Rule, State};
use witnessmark_store::Store;

/// A device of its own, its first start done.
fn device(clock: &Clock, salt: u64, name: &str) -> App {
    let mut app = App::new(Store::open(":memory:").unwrap(), platform(clock, salt << 32, None)).unwrap();
    app.begin(name.into(), PIN.into()).unwrap();
    app
}

/// Both ways by code: one shows who it is, the root answers.
fn admit(root: &mut App, other: &mut App, role: Role) -> SchoolView {
    let shown = other.school_code().unwrap();
    let who = root.school_applicant(shown.text.clone()).unwrap();
    assert!(!who.member);
    let answer = root.school_admit(shown.text, Some(role), None, PIN.into()).unwrap();
    other.school_join(answer.text, PIN.into()).unwrap()
}

/// Carries everything from one device to another, as a memory stick does.
fn carry(from: &mut App, to: &mut App) {
    let all = from.export_all().unwrap();
    let brought = to.import(all.text).unwrap();
    assert_eq!(brought.refused, Vec::<String>::new());
}

fn meet(one: &mut App, two: &mut App) {
    carry(one, two);
    carry(two, one);
}

fn signed_look(app: &mut App, machine: &str, wrong: &[&str]) {
    let walk = app.walk(machine.into(), "before-flight".into()).unwrap();
    for point in walk.stations.iter().flat_map(|s| &s.points) {
        let means =
            if wrong.contains(&point.id.as_str()) { Meaning::Unserviceable } else { Meaning::Serviceable };
        let given = answer(&walk, &point.id, means);
        app.answer(walk.id.clone(), point.id.clone(), Some(given), 8.0).unwrap();
    }
    app.sign(walk.id, PIN.into()).unwrap();
}

/// A point where wear is found, which no later look clears.
const WORN: &str = "cylinder-base";

#[test]
fn members_are_admitted_by_codes_and_their_roles_decide() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut pilot, mut other) = (
        device(&clock, 1, "Invented root"),
        device(&clock, 2, "Invented pilot"),
        device(&clock, 3, "Invented mechanic"),
    );
    let school = root.school_found("Invented school".into(), PIN.into()).unwrap();
    assert!(school.root);
    assert_eq!(school.role, Some(Role::Instructor));
    let machine = register(&mut pilot, bramble());
    let joined = admit(&mut root, &mut pilot, Role::Pilot);
    assert_eq!(joined.role, Some(Role::Pilot));
    assert_eq!(joined.school.unwrap().name, "Invented school");
    assert!(joined.machines.iter().all(|m| m.enrolled && m.own));
    admit(&mut root, &mut other, Role::Mechanic);
    meet(&mut root, &mut pilot);
    meet(&mut root, &mut other);
    meet(&mut root, &mut pilot);

    // A pilot finds a defect; under a school only an instructor lets it wait.
    let point = WORN.to_owned();
    signed_look(&mut pilot, &machine, &[&point]);
    let defer = |app: &mut App| {
        let until = Some("2026-05-20".to_owned());
        app.defer(
            machine.clone(),
            point.clone(),
            None,
            None,
            until,
            "on the ground".into(),
            "parts come".into(),
            PIN.into(),
        )
    };
    assert_eq!(defer(&mut pilot).unwrap_err().kind, "not-entitled");
    meet(&mut pilot, &mut root);
    meet(&mut root, &mut other);
    assert_eq!(defer(&mut other).unwrap_err().kind, "not-entitled");
    let page = defer(&mut root).unwrap();
    assert!(
        page.card.verdict.reasons.iter().any(|r| r.rule == Rule::DefectDeferred && r.state == State::Limited)
    );
    meet(&mut root, &mut pilot);
    assert_eq!(
        pilot.machine(machine.clone()).unwrap().card.verdict,
        root.machine(machine.clone()).unwrap().card.verdict
    );

    // A mechanic works on anybody's machine; the board knows it all.
    let fixed = other.rectify(machine.clone(), point.clone(), "renewed".into(), PIN.into()).unwrap();
    assert!(fixed.open.is_empty());
    meet(&mut other, &mut root);
    let board = root.board().unwrap();
    assert_eq!(board.rows.len(), 1);
    assert_eq!(board.rows[0].owner, "Invented pilot");
    assert_eq!(board.people.len(), 3);
    assert!(board.rows[0].defects.is_empty());
}

#[test]
fn a_viewer_makes_a_verdict_only_more_careful() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut viewer) = (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented viewer"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let machine = register(&mut root, bramble());
    admit(&mut root, &mut viewer, Role::Viewer);
    meet(&mut root, &mut viewer);
    let point = WORN.to_owned();
    signed_look(&mut viewer, &machine, &[&point]);
    meet(&mut viewer, &mut root);
    let verdict = root.machine(machine.clone()).unwrap().card.verdict;
    assert!(verdict.reasons.iter().any(|r| r.rule == Rule::OpenDefect), "what was found wrong stands");
    assert!(verdict.reasons.iter().any(|r| r.rule == Rule::NeverLooked), "a viewer's look is none");
    assert_eq!(
        viewer.rectify(machine, point, "renewed".into(), PIN.into()).unwrap_err().kind,
        "not-entitled"
    );
}

#[test]
fn an_ended_member_and_an_ended_key_count_no_more() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut pilot) = (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented pilot"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let machine = register(&mut root, bramble());
    let pilots_view = admit(&mut root, &mut pilot, Role::Pilot);
    let person = pilots_view.members.iter().find(|m| m.you).unwrap().person.clone();
    let device_id = pilots_view.members.iter().find(|m| m.you).unwrap().devices[0].device.clone();
    meet(&mut root, &mut pilot);
    signed_look(&mut pilot, &machine, &[]);
    meet(&mut pilot, &mut root);
    let looked = |app: &mut App| {
        let reasons = app.machine(machine.clone()).unwrap().card.verdict.reasons;
        !reasons.iter().any(|r| matches!(r.rule, Rule::NeverLooked | Rule::NotToday))
    };
    assert!(looked(&mut root));
    // The next day the membership ends; the look before stands, the one after is none.
    root.school_end(person, "the course is over".into(), PIN.into()).unwrap();
    assert!(looked(&mut root), "what the root had seen stands");
    clock.forward(TimeDelta::days(1));
    signed_look(&mut pilot, &machine, &[]);
    carry(&mut pilot, &mut root);
    assert!(!looked(&mut root), "a look signed after the end is none");
    carry(&mut root, &mut pilot);
    assert_eq!(pilot.school().unwrap().role, None);
    // Then the phone is lost: its key ends.
    root.key_end(device_id, "lost".into(), PIN.into()).unwrap();
    let view = root.school().unwrap();
    assert!(view.members.iter().any(|m| m.devices.iter().any(|d| d.ended)));
    carry(&mut root, &mut pilot);
    assert_eq!(
        root.machine(machine.clone()).unwrap().card.verdict,
        pilot.machine(machine.clone()).unwrap().card.verdict
    );
}

#[test]
fn a_second_device_of_a_person_follows_the_first() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut phone) =
        (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented instructor"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let first = admit(&mut root, &mut phone, Role::Instructor);
    let mut tablet = App::new(Store::open(":memory:").unwrap(), platform(&clock, 9 << 32, None)).unwrap();
    tablet.begin_as(phone.school_code().unwrap().text, PIN.into()).unwrap();
    let answer = phone.school_vouch(tablet.school_code().unwrap().text, PIN.into()).unwrap();
    let view = tablet.school_join(answer.text, PIN.into()).unwrap();
    assert_eq!(view.role, Some(Role::Instructor));
    let me = view.members.iter().find(|m| m.you).unwrap();
    assert_eq!(me.person, first.members.iter().find(|m| m.you).unwrap().person);
    // Either ends the other's key, should it be lost: each has vouched for the other.
    carry(&mut tablet, &mut phone);
    let lost = me.devices.iter().find(|d| d.code == phone.school().unwrap().code).unwrap().device.clone();
    let view = tablet.key_end(lost, "lost".into(), PIN.into()).unwrap();
    assert_eq!(view.members.iter().find(|m| m.you).unwrap().devices.iter().filter(|d| d.ended).count(), 1);
    // Somebody else's device is not vouched for.
    let mut stranger = device(&clock, 5, "Invented stranger");
    let refused = phone.school_vouch(stranger.school_code().unwrap().text, PIN.into());
    assert_eq!(refused.unwrap_err().kind, "not-your-device");
}

#[test]
fn the_root_is_handed_over_and_the_old_one_admits_nobody_more() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut next, mut third) = (
        device(&clock, 1, "Invented root"),
        device(&clock, 2, "Invented successor"),
        device(&clock, 3, "Invented pilot"),
    );
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let view = admit(&mut root, &mut next, Role::Instructor);
    let to = view.members.iter().find(|m| m.you).unwrap().devices[0].device.clone();
    meet(&mut root, &mut next);
    let handed = root.school_hand(to, PIN.into()).unwrap();
    assert!(!handed.root);
    meet(&mut root, &mut next);
    assert!(next.school().unwrap().root);
    let refused = root.school_admit(third.school_code().unwrap().text, Some(Role::Pilot), None, PIN.into());
    assert_eq!(refused.unwrap_err().kind, "not-root");
    let joined = admit(&mut next, &mut third, Role::Pilot);
    assert_eq!(joined.role, Some(Role::Pilot), "the answer brings all that makes the new root known");
}

#[test]
fn lists_are_published_by_instructors_checked_and_versioned() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut pilot) = (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented pilot"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    admit(&mut root, &mut pilot, Role::Pilot);
    let embedded =
        witnessmark_app::EMBEDDED.get_file("engines/bramble-125.toml").unwrap().contents_utf8().unwrap();
    let sheet = embedded.replace("bramble-125", "sloe-130").replace("Bramble", "Sloe");
    let graph = witnessmark_app::EMBEDDED.get_dir("assembly").unwrap();
    assert!(graph.files().count() > 0);
    let file = |text: String| vec![PublishFile { path: "engines/sloe-130.toml".into(), text }];
    let odd = root.publish_preview("Sloe".into(), file("id = 5".into())).unwrap();
    assert!(!odd.faults.is_empty());
    assert!(odd.faults.iter().all(|fault| fault.file == "engines/sloe-130.toml" && !fault.hint.is_empty()));
    let fine = root.publish_preview("Sloe".into(), file(sheet.clone())).unwrap();
    assert_eq!((fine.faults, fine.version), (vec![], 1));
    let by_pilot = pilot.publish("Sloe".into(), file(sheet.clone()), String::new(), PIN.into());
    assert_eq!(by_pilot.unwrap_err().kind, "publish-role");
    root.publish("Sloe".into(), file(sheet.clone()), "our new engine".into(), PIN.into()).unwrap();
    carry(&mut root, &mut pilot);
    assert!(pilot.choices().unwrap().engines.iter().any(|engine| engine.id == "sloe-130"));
    let again = root.publish("Sloe".into(), file(sheet), "second".into(), PIN.into()).unwrap();
    let versions: Vec<_> = again.published.iter().map(|p| (p.version, p.used)).collect();
    assert_eq!(versions, [(2, true), (1, false)]);
}

#[test]
fn an_odd_bundle_is_told_line_by_line_and_the_rest_is_taken() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut one, mut two) = (device(&clock, 1, "Invented pilot"), device(&clock, 2, "Invented other"));
    let machine = register(&mut one, bramble());
    let all = one.export_all().unwrap().text;
    let (first, rest) = all.split_once('\n').unwrap();
    let altered = rest.replacen("Thistle", "Thorn", 1);
    let brought = two.import(format!("{first}\nno record\n{altered}")).unwrap();
    assert_eq!(brought.taken, 1, "the person is known now");
    assert_eq!(brought.refused.len(), 2, "{:?}", brought.refused);
    assert!(two.machine(machine.clone()).is_err());
    let brought = two.import(all).unwrap();
    assert_eq!((brought.taken, brought.known), (1, 1));
    assert_eq!(two.machine(machine).unwrap().description.name, "Thistle");
}

#[test]
fn codes_that_were_altered_or_are_for_others_are_refused() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let (mut root, mut pilot, mut other) = (
        device(&clock, 1, "Invented root"),
        device(&clock, 2, "Invented pilot"),
        device(&clock, 3, "Invented other"),
    );
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let shown = pilot.school_code().unwrap().text;
    let answer = root.school_admit(shown.clone(), Some(Role::Pilot), None, PIN.into()).unwrap().text;
    assert_eq!(other.school_join(answer.clone(), PIN.into()).unwrap_err().kind, "letter-of-other");
    assert_eq!(pilot.school_join(shown.clone(), PIN.into()).unwrap_err().kind, "code-unreadable");
    assert_eq!(pilot.school_join(answer.clone(), "000001".into()).unwrap_err().kind, "pin-wrong");
    assert_eq!(root.school_admit(shown.clone(), None, None, PIN.into()).unwrap_err().kind, "role-missing");
    let past = root.school_admit(shown, Some(Role::Pilot), Some("2026-05-01".into()), PIN.into());
    assert_eq!(past.unwrap_err().kind, "until-passed");
    pilot.school_join(answer, PIN.into()).unwrap();
    assert_eq!(pilot.school_found("Another".into(), PIN.into()).unwrap_err().kind, "school-already");
    assert_eq!(root.school_leave(PIN.into()).unwrap_err().kind, "root-stays");
    assert!(pilot.school_leave(PIN.into()).unwrap().school.is_none());
}

#[test]
fn the_demonstrations_school_shows_every_state_of_a_machine() {
    let clock = Clock::at("2026-09-12T09:41:07+02:00");
    let mut app = device(&clock, 1, "Invented visitor");
    let school = app.demo_school(PIN.into()).unwrap();
    assert!(school.root && school.school.unwrap().invented);
    assert_eq!(school.members.len(), 7);
    let board = app.board().unwrap();
    assert_eq!(board.rows.len(), 12);
    let of = |state| board.rows.iter().filter(|row| row.card.verdict.state == state).count();
    assert!(of(State::Fit) >= 2 && of(State::Limited) >= 2 && of(State::Grounded) >= 3);
    assert_eq!(board.second.len(), 1, "one job waits for another person's eyes");
    assert_eq!(board.rows.iter().map(|row| row.deferred.len()).sum::<usize>(), 1);
    assert!(
        board
            .rows
            .iter()
            .all(|row| row.looked_at.is_some() && !row.first.is_empty()
                || row.card.verdict.state == State::Fit)
    );
}
