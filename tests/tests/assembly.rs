//! The invented engines' graphs against what anyone who has had such an engine apart knows. The
//! orders are common practice, no source; each test says what hangs on it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used)]

use witnessmark_app::Catalogue;
use witnessmark_core::assembly::{Item, Plan, plan};
use witnessmark_core::list::Meaning;

fn planned(engine: &str, jobs: &[&str]) -> Plan {
    plan(&Catalogue::embedded().unwrap().graphs[engine], jobs).unwrap()
}

fn ids(items: &[Item]) -> Vec<&str> {
    items.iter().map(Item::id).collect()
}

/// Where each stands in the order; all must be there.
fn in_order(plan: &Plan, wanted: &[&str]) {
    let order = ids(&plan.take_off);
    let places: Vec<usize> =
        wanted.iter().map(|id| order.iter().position(|other| other == id).expect(id)).collect();
    assert!(places.is_sorted(), "{wanted:?} in {order:?}");
}

/// The head is re-torqued with the shroud off and the plug cap off, and nothing else is touched.
#[test]
fn a_head_re_torqued_disturbs_the_shroud_and_the_cap() {
    for engine in ["bramble-125", "teasel-185"] {
        let plan = planned(engine, &["head-retorqued"]);
        assert_eq!(ids(&plan.take_off), ["plug-cap-push", "plug-cap", "shroud-nuts", "shroud", "head-nuts"]);
        assert_eq!(ids(&plan.refit), ["head-nuts", "shroud", "shroud-nuts", "plug-cap", "plug-cap-push"]);
        // Another pair of eyes on what holds the head, and the wrench again after the first tank.
        assert_eq!(plan.independent, ["head-nuts"]);
        assert_eq!(plan.follow_ups[0].id, "head-retorque");
        assert_eq!(plan.follow_ups[0].after.tanks, Some(1));
        assert_eq!(plan.torque[0].band, "head-nut-torque");
        // Nothing was opened, so nothing is renewed.
        assert!(plan.renew.is_empty());
        // Re-torqued after that tank, it is not asked for again.
        let again = planned(engine, &[plan.follow_ups[0].by[0].as_str()]);
        assert!(again.follow_ups.is_empty());
        assert!(again.disturbed.joints.contains(&"head-nuts".to_owned()));
    }
}

/// Seepage at the base: look inside and renew; tightening alone is not trusted.
#[test]
fn a_cylinder_off_renews_every_seal_it_opened() {
    let plan = planned("bramble-125", &["cylinder-off"]);
    in_order(&plan, &["plug-cap", "shroud", "head-nuts", "head", "base-nuts", "cylinder"]);
    in_order(&plan, &["exhaust-springs", "exhaust", "exhaust-stub", "cylinder"]);
    in_order(&plan, &["plug", "head"]);
    for seal in ["head-seal", "base-seal", "exhaust-gasket"] {
        assert!(plan.renew.contains(&seal.to_owned()), "{seal}");
    }
    // Base before head, and both before the shroud hides them.
    let refit = ids(&plan.refit);
    let place = |id: &str| refit.iter().position(|other| *other == id).unwrap();
    assert!(place("base-seal") < place("base-nuts") && place("base-nuts") < place("head-nuts"));
    assert!(place("head-nuts") < place("shroud"));
    assert_eq!(plan.independent, ["base-nuts", "head-nuts"]);
    // Rags in the open ports are counted back with the tools.
    assert!(plan.count_tools.contains(&"port-rags".to_owned()));
    let later: Vec<&str> = plan.follow_ups.iter().map(|later| later.id.as_str()).collect();
    assert_eq!(later, ["head-retorque", "base-look"]);
}

/// A belt is tensioned from outside; a gearbox must be opened, propeller and hub off first.
#[test]
fn one_job_means_what_the_drive_needs() {
    let belt = planned("bramble-125", &["reduction-adjusted"]);
    assert_eq!(ids(&belt.take_off), ["plug-cap-push", "plug-cap", "belt-adjuster"]);
    assert_eq!(belt.follow_ups.iter().map(|l| l.id.as_str()).collect::<Vec<_>>(), ["belt-again"]);
    let gear = planned("teasel-185", &["reduction-adjusted"]);
    in_order(&gear, &["propeller-bolts", "propeller", "hub-bolts", "hub", "gear-cover-bolts", "gear-cover"]);
    in_order(&gear, &["gear-oil-plug", "gear-cover"]);
    assert_eq!(gear.renew, ["gear-cover-gasket", "gear-oil"]);
    assert_eq!(gear.follow_ups.iter().map(|l| l.id.as_str()).collect::<Vec<_>>(), ["propeller-bolts-again"]);
}

#[test]
fn each_engine_has_its_own_starter_apart() {
    assert!(planned("bramble-125", &["starter-repaired"]).disturbed.parts.contains(&"starter-pull".into()));
    let electric = planned("teasel-185", &["starter-repaired"]);
    in_order(&electric, &["starter-lead", "starter-motor-bolts", "starter-motor"]);
    assert!(!electric.disturbed.parts.contains(&"starter-pull".into()));
}

/// After a strike the shaft is looked at on every kind of machine, and cracked is never a watch item.
#[test]
fn a_propeller_strike_asks_for_all_that_the_blow_reached() {
    let catalogue = Catalogue::embedded().unwrap();
    for engine in catalogue.sheets.keys() {
        let plan = planned(engine, &["after-propeller-strike"]);
        for point in ["after-propeller-shaft", "propeller-faces", "frame-joints", "cage-hoop", "cage-net"] {
            assert!(plan.points.contains(&point.to_owned()), "{engine} {point}");
        }
        assert!(plan.independent.contains(&"propeller-bolts".to_owned()));
    }
    let shaft = catalogue.points.iter().find(|point| point.id == "after-propeller-shaft").unwrap();
    assert!(shaft.must && shaft.answer.iter().all(|answer| answer.means != Meaning::Watch));
}

/// Fuel lines open: a second look, new clamps, air drawn out.
#[test]
fn fuel_opened_is_looked_at_twice() {
    let plan = planned("bramble-125", &["fuel-opened"]);
    assert_eq!(plan.independent, ["fuel-line-tank", "fuel-line-carburettor"]);
    assert_eq!(plan.renew, ["fuel-clamp"]);
    assert!(plan.points.contains(&"after-fuel-air".to_owned()));
    assert_eq!(planned("bramble-125", &["carburettor-cleaned"]).independent, ["fuel-line-carburettor"]);
}

/// Two jobs in one evening are one taking apart: what both need comes off once.
#[test]
fn two_jobs_are_one_taking_apart() {
    let both = planned("bramble-125", &["shroud-off", "plug-changed"]);
    let order = ids(&both.take_off);
    assert_eq!(order.iter().filter(|id| **id == "plug-cap").count(), 1);
    assert_eq!(order, ["plug-cap-push", "plug-cap", "plug-thread", "plug", "shroud-nuts", "shroud"]);
}
