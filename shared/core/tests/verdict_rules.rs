//! Each rule of the verdict by itself, at its boundary.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use chrono::Days;
use common::*;
use witnessmark_core::list::{Limits, Meaning};
use witnessmark_core::verdict::{Question, Rule, State, Verdict, judge};

fn rules(verdict: &Verdict) -> Vec<(State, Rule)> {
    verdict.reasons.iter().map(|reason| (reason.state, reason.rule)).collect()
}

fn later(world: &World, by: TimeDelta) -> Verdict {
    verdict_of(&world.history(), &confirmed_sheet(), world.now + by)
}

#[test]
fn a_described_machine_looked_over_today_is_fit() {
    let verdict = World::fit().verdict();
    assert_eq!((verdict.state, rules(&verdict)), (State::Fit, vec![]));
}

#[test]
fn a_machine_without_a_word_of_it_is_grounded() {
    let mut world = World::new(1);
    world.write(0, Some(machine()), look(vec![]));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::NoDescription)]);
    let mut world = World::new(1);
    world.write(0, Some(machine()), Body::Machine(described()));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::NeverLooked)]);
}

#[test]
fn an_engine_without_a_data_sheet_grounds() {
    let world = World::fit();
    let verdict = judge(Question {
        history: &world.history(),
        sheet: None,
        now: world.now,
        people: &BTreeMap::new(),
        persons: &BTreeMap::new(),
        split: &[],
        refused: 0,
        limits: &Limits::default(),
    });
    assert_eq!(rules(&verdict), [(State::Grounded, Rule::UnknownEngine)]);
}

#[test]
fn a_kind_of_a_newer_version_grounds() {
    let mut world = World::fit();
    let newer = world.write(0, Some(machine()), unknown());
    let verdict = world.verdict();
    assert_eq!(rules(&verdict), [(State::Grounded, Rule::NewerRecord)]);
    assert_eq!(verdict.reasons[0].record, Some(newer));
}

#[test]
fn a_known_kind_that_says_what_it_cannot_say_grounds() {
    let mut world = World::fit();
    let odd = Body::Unknown { kind: "inspection".into(), body: serde_json::json!({ "occasion": 7 }) };
    world.write(0, Some(machine()), odd);
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::NewerRecord)]);
}

#[test]
fn a_mandatory_point_missed_grounds_and_another_limits() {
    let mut world = World::new(1);
    world.write(0, Some(machine()), Body::Machine(described()));
    world.write(0, Some(machine()), inspection(BEFORE_FLIGHT, vec![], vec![left("base", true)]));
    let verdict = world.verdict();
    assert_eq!(rules(&verdict), [(State::Grounded, Rule::PointMissed)]);
    assert_eq!(verdict.reasons[0].point.as_deref(), Some("base"));

    // A second look that leaves nothing out clears it.
    world.write(0, Some(machine()), inspection(BEFORE_FLIGHT, vec![], vec![left("radio", false)]));
    assert_eq!(rules(&world.verdict()), [(State::Limited, Rule::PointMissed)]);
    world.write(0, Some(machine()), look(vec![]));
    assert_eq!(rules(&world.verdict()), []);

    // So does what is missed on the short list of a second flight.
    world.write(0, Some(machine()), inspection("second-flight", vec![], vec![left("fuel", true)]));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::PointMissed)]);
}

#[test]
fn a_short_list_alone_is_no_look_before_flight() {
    let mut world = World::new(1);
    world.write(0, Some(machine()), Body::Machine(described()));
    world.write(0, Some(machine()), inspection("second-flight", vec![], vec![]));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::NeverLooked)]);
}

#[test]
fn a_look_holds_for_its_day() {
    let world = World::fit();
    let midnight = at("2026-05-03T00:00:00+02:00") - world.now;
    assert_eq!(rules(&later(&world, midnight - TimeDelta::seconds(1))), []);
    assert_eq!(rules(&later(&world, midnight)), [(State::Limited, Rule::NotToday)]);
}

#[test]
fn findings_limit_and_ground() {
    let mut world = World::fit();
    let watch = world.write(0, Some(machine()), look(vec![finding("base", Meaning::Watch)]));
    let verdict = world.verdict();
    assert_eq!(rules(&verdict), [(State::Limited, Rule::WatchItem)]);
    assert_eq!(verdict.reasons[0].record, Some(watch));
    world.write(0, Some(machine()), look(vec![finding("base", Meaning::Serviceable)]));
    assert_eq!(rules(&world.verdict()), []);

    let defect = world.write(0, Some(machine()), look(vec![finding("base", Meaning::Unserviceable)]));
    world.write(0, Some(machine()), look(vec![finding("base", Meaning::Serviceable)]));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::OpenDefect)]);
    world.write(0, Some(machine()), rectified("spring", defect));
    assert_eq!(world.verdict().state, State::Grounded, "put right at another point");
    world.write(0, Some(machine()), rectified("base", watch));
    assert_eq!(world.verdict().state, State::Grounded, "put right what was something else");
    world.write(0, Some(machine()), rectified("base", defect));
    assert_eq!(rules(&world.verdict()), []);
}

#[test]
fn what_passes_is_cleared_by_a_later_look() {
    let mut world = World::fit();
    world.write(0, Some(machine()), look(vec![passing("wind", Meaning::Unserviceable)]));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::OpenDefect)]);
    world.write(0, Some(machine()), look(vec![finding("wind", Meaning::Serviceable)]));
    assert_eq!(rules(&world.verdict()), []);
}

#[test]
fn what_another_phone_found_meanwhile_stands() {
    let mut world = World::new(2);
    world.write(0, Some(machine()), Body::Machine(described()));
    let mine = world.write(0, Some(machine()), look(vec![finding("base", Meaning::Unserviceable)]));
    let theirs = world.write(1, Some(machine()), look(vec![finding("base", Meaning::Unserviceable)]));
    // The first phone puts right what it knows of; the other's sighting it had not seen.
    world.write(0, Some(machine()), rectified("base", mine));
    assert_eq!(world.verdict().state, State::Grounded);
    assert_eq!(world.history().open_at("base").unwrap().sightings[0].record, theirs);
    world.meet(0, 1);
    world.write(0, Some(machine()), rectified("base", theirs));
    assert_eq!(world.verdict().state, State::Fit);
}

#[test]
fn a_correction_can_only_be_more_careful() {
    let mut world = World::fit();
    let clean = world.write(0, Some(machine()), look(vec![finding("base", Meaning::Serviceable)]));
    world.write(0, Some(machine()), correction(clean, "base", Meaning::Unserviceable));
    assert_eq!(rules(&world.verdict()), [(State::Grounded, Rule::OpenDefect)]);
    world.write(0, Some(machine()), correction(clean, "base", Meaning::Serviceable));
    assert_eq!(world.verdict().state, State::Grounded);
}

fn repacked(days_ago: Option<u64>, every_days: u32) -> Verdict {
    let mut world = World::new(1);
    let repacked_on = days_ago.map(|days| at(DAY).date_naive() - Days::new(days));
    let reserve = Some(Reserve { repacked_on, every_days });
    world.write(0, Some(machine()), Body::Machine(Machine { reserve, ..described() }));
    world.write(0, Some(machine()), look(vec![]));
    world.verdict()
}

#[test]
fn a_repack_falls_due_on_its_day_and_grounds_the_day_after() {
    assert_eq!(rules(&repacked(Some(365 - 31), 365)), []);
    assert_eq!(rules(&repacked(Some(365 - 30), 365)), [(State::Limited, Rule::ReserveSoon)]);
    assert_eq!(rules(&repacked(Some(365), 365)), [(State::Limited, Rule::ReserveSoon)]);
    assert_eq!(rules(&repacked(Some(366), 365)), [(State::Grounded, Rule::ReserveExpired)]);
}

#[test]
fn a_reserve_of_which_nobody_knows_the_repack_grounds() {
    let unknown = [(State::Grounded, Rule::ReserveUnknown)];
    assert_eq!(rules(&repacked(None, 365)), unknown);
    // A date past all calendars is no date.
    assert_eq!(rules(&repacked(Some(0), u32::MAX)), unknown);
    let mut world = World::fit();
    world.write(0, Some(machine()), Body::Machine(Machine { reserve: None, ..described() }));
    assert_eq!(rules(&world.verdict()), unknown, "fitted, and not a word of its repack");
    let without = Machine { fitted: BTreeMap::new(), reserve: None, ..described() };
    world.write(0, Some(machine()), Body::Machine(without));
    assert_eq!(rules(&world.verdict()), [], "none fitted");
}

#[test]
fn a_critical_limit_without_a_source_limits_and_without_a_number_grounds() {
    let world = World::fit();
    let with = |low, high| rules(&verdict_of(&world.history(), &sheet(low, high), world.now));
    assert_eq!(with(SOURCED, SOURCED), []);
    assert_eq!(with(UNCONFIRMED, UNCONFIRMED), [(State::Limited, Rule::LimitUnconfirmed)]);
    assert_eq!(with(SOURCED, UNCONFIRMED), [(State::Limited, Rule::LimitUnconfirmed)]);
    assert_eq!(with(SOURCED, NO_NUMBER), [(State::Limited, Rule::LimitUnconfirmed)]);
    assert_eq!(with(NO_NUMBER, NO_NUMBER), [(State::Grounded, Rule::LimitMissing)]);
}

#[test]
fn the_owner_confirms_a_limit() {
    let mut world = World::fit();
    let judged =
        |world: &World| rules(&verdict_of(&world.history(), &sheet(NO_NUMBER, NO_NUMBER), world.now));
    world.write(0, Some(machine()), limit(None, None));
    assert_eq!(judged(&world), [(State::Grounded, Rule::LimitMissing)]);
    world.write(0, Some(machine()), limit(Some(14.0), Some(15.0)));
    assert_eq!(judged(&world), []);
}

#[test]
fn a_record_from_the_future_casts_doubt_on_the_clock() {
    let world = World::fit();
    let latest = world.history().latest.unwrap() - world.now;
    let slack = TimeDelta::minutes(10);
    assert_eq!(rules(&later(&world, latest - slack)), []);
    let doubted = later(&world, latest - slack - TimeDelta::milliseconds(1));
    assert_eq!(rules(&doubted), [(State::Limited, Rule::ClockDoubt)]);
    let a_day = later(&world, latest - TimeDelta::days(1));
    assert_eq!(rules(&a_day).first(), Some(&(State::Limited, Rule::ClockDoubt)));
    // More than a day: no date can be trusted, and the look isn't one of today.
    let day = later(&world, latest - TimeDelta::days(1) - TimeDelta::milliseconds(1));
    assert_eq!(rules(&day).first(), Some(&(State::Grounded, Rule::ClockDoubt)));
}

#[test]
fn a_clock_set_back_does_not_make_an_expired_repack_good() {
    let mut world = World::fit();
    let reserve = Some(Reserve { repacked_on: Some(at(DAY).date_naive() - Days::new(366)), every_days: 365 });
    world.write(0, Some(machine()), Body::Machine(Machine { reserve, ..described() }));
    let verdict = later(&world, TimeDelta::days(-30));
    assert!(rules(&verdict).contains(&(State::Grounded, Rule::ReserveExpired)));
}

#[test]
fn a_split_word_and_a_refused_record_ground() {
    let world = World::fit();
    let history = world.history();
    let (sheet, limits) = (confirmed_sheet(), Limits::default());
    let question = Question {
        history: &history,
        sheet: Some(&sheet),
        now: world.now,
        people: &BTreeMap::new(),
        persons: &BTreeMap::new(),
        split: &[],
        refused: 0,
        limits: &limits,
    };
    let split = [world.id(0)];
    assert_eq!(rules(&judge(Question { split: &split, ..question })), [(State::Grounded, Rule::SplitWord)]);
    assert_eq!(rules(&judge(Question { refused: 1, ..question })), [(State::Grounded, Rule::RefusedRecord)]);
}
