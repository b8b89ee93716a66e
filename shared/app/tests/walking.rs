//! From a bare machine to a signed verdict, through the use cases alone.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use chrono::TimeDelta;
use common::*;
use witnessmark_app::views::Look;
use witnessmark_core::list::{Given, Meaning};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Rule, State};

fn rules(verdict: &witnessmark_app::views::VerdictView) -> Vec<Rule> {
    verdict.reasons.iter().map(|reason| reason.rule).collect()
}

#[test]
fn a_bare_machine_is_grounded_and_a_signed_look_makes_it_fit_with_its_unconfirmed_limit() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let page = app.machine(machine.clone()).unwrap();
    assert_eq!(page.card.verdict.state, State::Grounded);
    assert!(rules(&page.card.verdict).contains(&Rule::NeverLooked));

    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    assert_eq!(signed.verdict.state, State::Limited);
    assert_eq!(rules(&signed.verdict), [Rule::LimitUnconfirmed], "{:?}", signed.verdict);

    let torque = |value| Some(Quantity::new(value, Unit::PoundForceInch));
    let page = app
        .confirm_limit(
            machine.clone(),
            "head-nut-torque".into(),
            torque(126.0),
            torque(131.0),
            "Invented engine manual, issue 2".into(),
            "page 14".into(),
            PIN.into(),
        )
        .unwrap();
    assert_eq!(page.card.verdict.state, State::Fit);
    assert_eq!(page.card.verdict.headline, "Fit to fly");

    clock.forward(TimeDelta::days(1));
    let verdict = app.machine(machine).unwrap().card.verdict;
    assert_eq!(verdict.state, State::Limited, "yesterday's look is not today's");
    assert_eq!(rules(&verdict), [Rule::NotToday]);
}

#[test]
fn a_defect_grounds_until_it_is_put_right_and_a_later_clean_look_does_not_clear_it() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let wet = [("cylinder-base", Meaning::Unserviceable)];
    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &wet);
    assert_eq!(signed.verdict.state, State::Grounded);
    assert!(rules(&signed.verdict).contains(&Rule::OpenDefect));

    clock.forward(TimeDelta::hours(2));
    let again = walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    assert!(rules(&again.verdict).contains(&Rule::OpenDefect), "a look is no repair");

    let page = app
        .rectify(machine.clone(), "cylinder-base".into(), "Gasket and O-ring renewed.".into(), PIN.into())
        .unwrap();
    assert_eq!(page.card.verdict.state, State::Limited);
    assert!(page.open.is_empty());
    let nothing = app.rectify(machine, "cylinder-base".into(), "again".into(), PIN.into()).unwrap_err();
    assert_eq!(nothing.kind, "nothing-open");
}

#[test]
fn what_the_day_brings_is_cleared_by_a_later_look() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let storm = [("weather", Meaning::Unserviceable)];
    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &storm);
    assert_eq!(signed.verdict.state, State::Grounded);
    clock.forward(TimeDelta::hours(5));
    let later = walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    assert_eq!(rules(&later.verdict), [Rule::LimitUnconfirmed]);
}

#[test]
fn a_watch_item_comes_back_on_the_next_list_even_on_one_without_that_point() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let stain = [("cylinder-base", Meaning::Watch)];
    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &stain);
    assert!(rules(&signed.verdict).contains(&Rule::WatchItem));

    let second = app.walk(machine.clone(), "second-flight".into()).unwrap();
    let point = second.stations.iter().flat_map(|s| &s.points).find(|p| p.id == "cylinder-base").unwrap();
    let last = point.last_time.as_ref().unwrap();
    assert_eq!(last.words, "Last time: Old stain, dry to touch, at 12.5 h.");
    walk_on(&mut app, &clock, &second);
    let signed = app.sign(second.id, PIN.into()).unwrap();
    assert_eq!(rules(&signed.verdict), [Rule::LimitUnconfirmed], "dry again: cleared");
}

#[test]
fn a_list_resumes_where_it_was_and_steps_back_three_points_after_an_interruption() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
    let order: Vec<String> = walk.stations.iter().flat_map(|s| &s.points).map(|p| p.id.clone()).collect();
    for point in order.iter().take(10) {
        clock.forward(TimeDelta::seconds(8));
        let given = answer(&walk, point, Meaning::Serviceable);
        app.answer(walk.id.clone(), point.clone(), Some(given), 8.0).unwrap();
    }
    clock.forward(TimeDelta::minutes(4));
    let soon = app.walk(machine.clone(), "before-flight".into()).unwrap();
    assert_eq!(soon.id, walk.id);
    assert_eq!(soon.progress.current.as_deref(), Some(order[10].as_str()));
    assert_eq!(soon.progress.stepped_back, None);

    clock.forward(TimeDelta::minutes(6));
    let later = app.walk(machine, "before-flight".into()).unwrap();
    assert_eq!(later.progress.current.as_deref(), Some(order[7].as_str()));
    assert_eq!(
        later.progress.stepped_back.as_deref(),
        Some("You were away for 10 min, so the last 3 points are asked again.")
    );
    let state = &later.progress.points[&order[8]];
    assert_eq!(state.state, Look::Again);
    assert!(state.given.is_some(), "what was said before still shows");
    let refused = app.sign(walk.id.clone(), PIN.into()).unwrap_err();
    assert_eq!(refused.kind, "look-again-first");
}

#[test]
fn an_answer_taken_back_stays_in_the_record() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let walk = app.walk(machine, "before-flight".into()).unwrap();
    let first = walk.progress.current.clone().unwrap();
    let wrong = answer(&walk, &first, Meaning::Unserviceable);
    app.answer(walk.id.clone(), first.clone(), Some(wrong), 3.0).unwrap();
    let back = app.undo(walk.id.clone()).unwrap();
    assert_eq!(back.current.as_deref(), Some(first.as_str()));
    walk_on(&mut app, &clock, &walk);
    let signed = app.sign(walk.id.clone(), PIN.into()).unwrap();
    let record = app.record(signed.record).unwrap();
    assert!(record.good);
    let finding = record.findings.iter().find(|f| f.point == first).unwrap();
    assert_eq!(finding.means, Meaning::Serviceable);
    assert_eq!(finding.before.len(), 1);
    assert_eq!(app.undo(walk.id).unwrap_err().kind, "walk-closed", "nothing signed can change");
}

#[test]
fn a_missed_mandatory_point_grounds_and_is_said_back_before_signing() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let walk = app.walk(machine, "before-flight".into()).unwrap();
    app.leave(walk.id.clone(), "reserve-pin".into()).unwrap();
    let mut progress = app.leave(walk.id.clone(), "propeller-tracking".into()).unwrap();
    while let Some(point) = progress.current.clone() {
        if ["reserve-pin", "propeller-tracking"].contains(&point.as_str()) {
            break;
        }
        let given = answer(&walk, &point, Meaning::Serviceable);
        progress = app.answer(walk.id.clone(), point, Some(given), 1.0).unwrap();
    }
    let summary = app.summary(walk.id.clone()).unwrap();
    assert_eq!(
        summary.left.iter().map(|l| (l.id.as_str(), l.must)).collect::<Vec<_>>(),
        [("reserve-pin", true), ("propeller-tracking", false)]
    );
    assert_eq!(summary.hurried.len() as u32, summary.done, "one second is no look");
    assert_eq!(summary.preview.state, State::Grounded);
    let signed = app.sign(walk.id, PIN.into()).unwrap();
    let words = |verdict: &witnessmark_app::views::VerdictView| -> Vec<String> {
        verdict.reasons.iter().map(|reason| reason.words.clone()).collect()
    };
    assert_eq!(words(&signed.verdict), words(&summary.preview), "the preview is what signing gives");
    assert!(summary.preview.reasons.iter().all(|reason| reason.record.is_none()));
}

#[test]
fn a_measured_value_is_judged_in_the_units_it_was_typed_in() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let walk = app.walk(machine, "before-flight".into()).unwrap();
    let judge = |app: &mut App, value, unit| {
        app.judge_value(walk.id.clone(), "throttle-free-travel".into(), Some(Quantity::new(value, unit)))
    };
    use witnessmark_app::App;
    assert_eq!(judge(&mut app, 2.0, Unit::Millimetre).unwrap().means, Meaning::Serviceable);
    assert_eq!(judge(&mut app, 0.08, Unit::Inch).unwrap().means, Meaning::Serviceable);
    assert_eq!(judge(&mut app, 0.02, Unit::Inch).unwrap().means, Meaning::Unserviceable);
    assert_eq!(judge(&mut app, 2.0, Unit::Litre).unwrap_err().kind, "unit");
    let words = Given::Words { answer: "dry".into() };
    let fault = app.answer(walk.id, "throttle-free-travel".into(), Some(words), 1.0).unwrap_err();
    assert_eq!(fault.kind, "answer-kind");
}

#[test]
fn reserve_dates_ground_and_limit_on_their_day() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let mut machine = bramble();
    machine.reserve.as_mut().unwrap().every_days = 112;
    let id = register(&mut app, machine.clone());
    // Repacked on 10 January 2026, 112 days: due on 2 May, the very day.
    let verdict = app.machine(id.clone()).unwrap().card.verdict;
    assert!(rules(&verdict).contains(&Rule::ReserveSoon), "{verdict:?}");
    machine.reserve.as_mut().unwrap().every_days = 111;
    let verdict = app.machine_save(id.clone(), Some(machine.clone()), PIN.into()).unwrap().card.verdict;
    assert!(rules(&verdict).contains(&Rule::ReserveExpired));
    machine.reserve.as_mut().unwrap().repacked_on = None;
    let verdict = app.machine_save(id.clone(), Some(machine.clone()), PIN.into()).unwrap().card.verdict;
    assert!(rules(&verdict).contains(&Rule::ReserveUnknown));
    machine.fitted.clear();
    let verdict = app.machine_save(id, Some(machine), PIN.into()).unwrap().card.verdict;
    assert_eq!(rules(&verdict), [Rule::NeverLooked, Rule::LimitUnconfirmed], "no reserve, nothing to repack");
}

#[test]
fn a_correction_makes_the_verdict_more_careful_never_less() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    let signed = walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    let page = app
        .correct(
            signed.record.clone(),
            "cylinder-base".into(),
            "wet".into(),
            "I wiped it first.".into(),
            PIN.into(),
        )
        .unwrap();
    assert_eq!(page.card.verdict.state, State::Grounded);
    let page = app
        .correct(
            signed.record.clone(),
            "cylinder-base".into(),
            "old-stain".into(),
            "No, only old.".into(),
            PIN.into(),
        )
        .unwrap();
    assert_eq!(page.card.verdict.state, State::Grounded, "a second thought repairs nothing");
    let record = app.record(signed.record).unwrap();
    let finding = record.findings.iter().find(|f| f.point == "cylinder-base").unwrap();
    assert_eq!(finding.corrections.len(), 2);
}
