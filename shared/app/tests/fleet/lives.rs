use witnessmark_app::App;
use witnessmark_app::views::LifeView;
use witnessmark_core::list::Meaning::{Serviceable, Unserviceable, Watch};
use witnessmark_core::record::Role;

use crate::common::*;
use crate::pen::{PART, POINT, Pen, cracking};
use crate::{admit, clock, device, meet, walked};

const CRACKED: [f64; 8] = [22.0, 31.0, 38.0, 47.0, 55.0, 56.0, 71.0, 88.0];
const WHOLE: [f64; 5] = [20.0, 35.0, 60.0, 80.0, 100.0];

fn with(write: impl FnOnce(&mut Pen)) -> App {
    let mut app = device(&clock(), 1, "Invented instructor");
    let mut pen = Pen::new(9, "Invented mechanic");
    write(&mut pen);
    let brought = app.import(pen.bundle()).unwrap();
    assert_eq!(brought.refused, Vec::<String>::new());
    app
}

fn cracked() -> App {
    with(|pen| cracking(pen, &CRACKED, &WHOLE))
}

fn life(app: &mut App) -> LifeView {
    app.life(PART.into(), None, None).unwrap()
}

fn says(view: &LifeView, words: &str) -> bool {
    view.sentences.iter().any(|sentence| sentence.contains(words))
}

#[test]
fn a_fleets_exhausts_are_told_with_what_it_rests_on() {
    let mut app = cracked();
    let view = life(&mut app);
    assert_eq!((view.part.machines, view.part.lives, view.part.failed), (13, 13, 8));
    assert_eq!(
        view.rests_on,
        "This rests on 13 machines and 13 lives: 8 were found unserviceable, 5 were in order when they were last seen."
    );
    // The first cracked between the look at 20 h and the one at 25 h.
    assert_eq!((view.findings[0].after, view.findings[0].by), (20.0, Some(25.0)));
    assert_eq!((view.survival[0].hours, view.survival[0].share), (0.0, 1.0));
    assert!(view.survival[0].low > 0.6 && view.survival[0].low < 1.0, "{:?}", view.survival[0]);
    assert!(view.survival.windows(2).all(|two| two[1].share < two[0].share));
    assert_eq!(view.fitted.len(), 61);
    assert!(view.fitted.iter().all(|at| at.low <= at.share && at.share <= at.high));
    assert_eq!(view.intervals.len(), 2);
    assert!(says(&view, "It rests on 8 failures only."));
    assert!(says(&view, "Put right counts as new"));
    assert!(says(&view, "counts as old as its machine"));
    assert!(view.sentences.last().unwrap().contains("The maker's manual comes first"));
    assert!(!view.part.invented && !says(&view, "demonstration"));
}

#[test]
fn a_suggestion_only_ever_shortens() {
    let mut app = cracked();
    let view = life(&mut app);
    // Nothing is in force: a suggestion, and said to be one.
    assert_eq!((view.in_force, view.shortens, view.chance), (None, false, 0.02));
    assert!(says(&view, "this can only suggest") && says(&view, "2 % is our choice"));
    let ask = |app: &mut App, chance: f64, in_force: f64| {
        app.life(PART.into(), Some(chance), Some(in_force)).unwrap()
    };
    let free = app.life(PART.into(), Some(0.5), None).unwrap().every.unwrap();
    let shorter = ask(&mut app, 0.5, free + 20.0);
    assert_eq!((shorter.every, shorter.shortens), (Some(free), true));
    assert!(says(&shorter, &format!("Look at least every {free} h")));
    let longer = ask(&mut app, 0.5, free - 1.0);
    assert_eq!((longer.every, longer.shortens), (Some(free - 1.0), false));
    assert!(says(&longer, "nothing from here ever lengthens it") && !says(&longer, "our choice"));
    // Less than an hour is no interval, but every flight.
    let every_flight = ask(&mut app, 0.001, 25.0);
    assert_eq!((every_flight.every, every_flight.shortens), (None, true));
    assert!(
        every_flight.sentences[0].starts_with("Look before every flight"),
        "{:?}",
        every_flight.sentences
    );
}

#[test]
fn too_few_failures_are_too_little_to_say() {
    let mut app = with(|pen| cracking(pen, &CRACKED[..2], &WHOLE));
    let view = app.life(PART.into(), None, Some(25.0)).unwrap();
    assert_eq!((view.part.failed, view.every, view.shortens), (2, None, false));
    assert_eq!((view.survival.len(), view.fitted.len(), view.intervals.len()), (0, 0, 0));
    assert!(view.sentences[0].contains("2 were found unserviceable, and it takes 3: one more."));
    assert_eq!(view.sentences[1], "The 25 h in force stay as they are.");
    assert!(view.rests_on.contains("7 lives"), "{}", view.rests_on);
    let mut app = with(|pen| cracking(pen, &[], &WHOLE));
    assert!(life(&mut app).sentences[0].contains("none of the 5 seen was found unserviceable yet"));
}

#[test]
fn repairs_components_and_two_replicas_make_no_failures_of_their_own() {
    let story = |pen: &mut Pen| {
        let machine = pen.machine(1);
        pen.look(machine, 30.0, &[(POINT, Serviceable)]);
        pen.look(machine, 40.0, &[(POINT, Unserviceable)]);
        pen.look(machine, 40.0, &[(POINT, Serviceable)]);
        pen.look(machine, 52.5, &[(POINT, Watch)]);
        pen.fit(machine, 70, 20.0, 55.0);
        pen.look(machine, 60.0, &[(POINT, Serviceable)]);
    };
    let mut app = with(story);
    let found = |app: &mut App| {
        let view = life(app);
        view.findings.iter().map(|one| (one.after, one.by)).collect::<Vec<_>>()
    };
    let told = [(30.0, Some(40.0)), (12.5, None), (25.0, None)];
    assert_eq!(found(&mut app), told);
    assert!(says(&life(&mut app), "first seen here after more than 10 h"));
    // The same records by another way.
    let mut other = device(&clock(), 2, "Invented other");
    meet(&mut app, &mut other);
    meet(&mut app, &mut other);
    assert_eq!(found(&mut other), told);
    app.rebuild().unwrap();
    assert_eq!(found(&mut app), told);
}

#[test]
fn the_demonstrations_machines_are_reckoned_only_by_themselves() {
    let mut app = with(|pen| {
        let machine = pen.invented_machine(5);
        pen.look(machine, 30.0, &[(POINT, Serviceable)]);
    });
    let view = life(&mut app);
    assert!(view.part.invented && says(&view, "demonstration"));
    let mut pen = Pen::new(8, "Invented pilot");
    let machine = pen.machine(6);
    pen.look(machine, 12.0, &[(POINT, Serviceable)]);
    app.import(pen.bundle()).unwrap();
    let view = life(&mut app);
    assert_eq!((view.part.machines, view.findings[0].after), (1, 12.0));
    assert!(!view.part.invented);
}

#[test]
fn who_may_not_look_at_a_schools_machine_makes_no_part_last_longer() {
    let clock = clock();
    let (mut root, mut viewer) = (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented viewer"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let machine = register(&mut root, bramble());
    admit(&mut root, &mut viewer, Role::Viewer);
    meet(&mut root, &mut viewer);
    walked(&mut viewer, &clock, &machine, 8.0, &[]);
    meet(&mut viewer, &mut root);
    assert_eq!(root.life_parts().unwrap(), [], "a viewer's clean look is none");
    walked(&mut viewer, &clock, &machine, 8.0, &[(POINT, Unserviceable)]);
    meet(&mut viewer, &mut root);
    let view = life(&mut root);
    assert_eq!((view.part.lives, view.part.failed), (1, 1), "what they found wrong stands");
    assert_eq!(view.findings[0].after, 0.0);
}

#[test]
fn parts_are_listed_and_what_is_no_part_is_told() {
    let mut app = device(&clock(), 1, "Invented pilot");
    assert_eq!(app.life_parts().unwrap(), []);
    assert_eq!(app.life("exhaust".into(), None, None).unwrap_err().kind, "life-no-looks");
    let mut app = cracked();
    let parts = app.life_parts().unwrap();
    assert_eq!(parts.iter().map(|part| (part.id.as_str(), part.failed)).collect::<Vec<_>>(), [(PART, 8)]);
    let fault = app.life("flux".into(), None, None).unwrap_err();
    let shown = app.show(&fault);
    assert_eq!(shown.kind, "life-no-such");
    assert!(shown.hint.contains("Exhaust (exhaust)"), "{shown:?}");
    for (chance, in_force, kind) in [
        (Some(0.0), None, "life-chance"),
        (Some(1.0), None, "life-chance"),
        (Some(f64::NAN), None, "life-chance"),
        (None, Some(0.0), "life-in-force"),
        (None, Some(f64::INFINITY), "life-in-force"),
    ] {
        assert_eq!(app.life(PART.into(), chance, in_force).unwrap_err().kind, kind);
    }
}

#[test]
fn a_whole_season_of_the_demonstration_tells_of_its_exhausts() {
    let clock = Clock::at("2026-09-12T09:41:07+02:00");
    let mut app = device(&clock, 1, "Invented visitor");
    app.demo_school(PIN.into()).unwrap();
    let parts = app.life_parts().unwrap();
    // Of the day and of the pilot no life is told.
    assert!(parts.len() > 8 && parts.iter().all(|part| part.id != "day" && part.id != "pilot"));
    let view = app.life("exhaust".into(), None, None).unwrap();
    assert!(view.part.invented && view.part.failed >= 3, "{:?}", view.part);
    assert!(!view.fitted.is_empty() && view.survival.len() > 2);
}
