//! Limits that a school publishes, on a member's device.

use witnessmark_app::views::PublishFile;
use witnessmark_core::record::Role;
use witnessmark_core::units::{Quantity, Unit};

use crate::common::*;
use crate::{admit, carry, clock, device, meet, walked};

const LIMITS: &str =
    "[wind]\nmean = { value = 18, unit = \"km/h\" }\n\n[inspect.exhaust]\nevery_hours = 25\nchance = 0.05\n";

fn file(text: &str) -> Vec<PublishFile> {
    vec![PublishFile { path: "limits.toml".into(), text: text.into() }]
}

#[test]
fn published_limits_hold_on_a_members_device() {
    let clock = clock();
    let (mut root, mut pilot) = (device(&clock, 1, "Invented root"), device(&clock, 2, "Invented pilot"));
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    let machine = register(&mut pilot, bramble());
    admit(&mut root, &mut pilot, Role::Pilot);
    meet(&mut root, &mut pilot);
    walked(&mut pilot, &clock, &machine, 8.0, &[]);
    let before = pilot.life("exhaust".into(), None, None).unwrap();
    assert_eq!((before.in_force, before.chance), (None, 0.02));
    assert_eq!(
        pilot.publish("Limits".into(), file(LIMITS), String::new(), PIN.into()).unwrap_err().kind,
        "publish-role"
    );

    root.publish("Limits".into(), file(LIMITS), "ours".into(), PIN.into()).unwrap();
    carry(&mut root, &mut pilot);
    let view = pilot.life("exhaust".into(), None, None).unwrap();
    assert_eq!((view.in_force, view.chance), (Some(25.0), 0.05));
    assert!(view.sentences.iter().any(|sentence| sentence == "The 25 h in force stay as they are."));
    assert_eq!(pilot.life("wing".into(), None, None).unwrap().in_force, None);
    let wind = pilot.flight_form(machine.clone()).unwrap().school_wind.unwrap();
    assert_eq!(wind.mean, Some(Quantity::new(18.0, Unit::KilometrePerHour)));

    // A shorter one takes its place.
    root.publish("Limits".into(), file(&LIMITS.replace("25", "10")), String::new(), PIN.into()).unwrap();
    carry(&mut root, &mut pilot);
    assert_eq!(pilot.life("exhaust".into(), None, None).unwrap().in_force, Some(10.0));
}

#[test]
fn limits_that_are_none_are_refused_with_their_line() {
    let clock = clock();
    let mut root = device(&clock, 1, "Invented root");
    root.school_found("Invented school".into(), PIN.into()).unwrap();
    for (wrong, why) in
        [(LIMITS.replace("= 25", "= 0"), "no interval"), (LIMITS.replace("0.05", "5"), "no chance")]
    {
        let preview = root.publish_preview("Limits".into(), file(&wrong)).unwrap();
        assert!(preview.faults.iter().any(|fault| fault.words.contains(why)), "{:?}", preview.faults);
        let refused = root.publish("Limits".into(), file(&wrong), String::new(), PIN.into());
        assert_eq!(refused.unwrap_err().kind, "publish-faults");
    }
}
