//! What the points of the lists are worth.

use witnessmark_app::App;
use witnessmark_app::views::PointWorth;
use witnessmark_core::list::Meaning::{Serviceable, Unserviceable};

use crate::pen::{POINT, Pen};
use crate::{clock, device};

fn worth_of(app: &mut App, point: &str) -> PointWorth {
    app.list_worth().unwrap().points.into_iter().find(|one| one.point == point).unwrap()
}

fn looked_at(looks: usize, wrong: impl Fn(usize) -> bool, point: &str) -> App {
    let mut pen = Pen::new(9, "Invented mechanic");
    let machines: Vec<_> = (1..=10).map(|n| pen.machine(n)).collect();
    for n in 0..looks {
        let means = if wrong(n) { Unserviceable } else { Serviceable };
        pen.look(machines[n % machines.len()], n as f64, &[(point, means)]);
    }
    let mut app = device(&clock(), 1, "Invented instructor");
    app.import(pen.bundle()).unwrap();
    app
}

#[test]
fn a_point_never_found_wrong_is_never_told_to_be_dropped() {
    let told = worth_of(&mut looked_at(150, |_| false, POINT), POINT);
    assert_eq!((told.looks, told.sort.as_str(), told.must), (150, "never", true));
    assert_eq!((told.percent, told.low), (0.0, 0.0));
    // Wilson's upper end of none in 150: 1.96²/(150 + 1.96²) = 2.5 %.
    assert_eq!(told.high, 2.5);
    assert!(
        told.words.contains("at most 2 in 100 looks") && told.words.contains("It stays"),
        "{}",
        told.words
    );
    assert_eq!(told.seconds, Some(8.0));
    // One of which today's lists know nothing may have been demanded.
    let told = worth_of(&mut looked_at(40, |_| false, "a-point-of-then"), "a-point-of-then");
    assert_eq!((told.title.as_str(), told.must), ("Look at a-point-of-then", true));
    let told = worth_of(&mut looked_at(12, |_| false, POINT), POINT);
    assert_eq!(told.sort, "few");
    assert!(told.words.contains("it takes 30"), "{}", told.words);
}

#[test]
fn a_point_often_found_wrong_is_told_to_look_for_the_cause() {
    let told = worth_of(&mut looked_at(300, |n| n % 13 == 0, POINT), POINT);
    assert_eq!((told.unserviceable, told.watch, told.machines, told.sort.as_str()), (24, 0, 10, "often"));
    assert!(told.words.contains("Look for the cause"), "{}", told.words);
    assert_eq!(told.percent, 8.0);
    // All on one machine: that machine's matter.
    let told = worth_of(&mut looked_at(300, |n| n % 20 == 0, POINT), POINT);
    assert_eq!((told.machines, told.sort.as_str()), (1, "plain"));
    assert!(told.words.contains("times in 300 looks"), "{}", told.words);
}

#[test]
fn nothing_looked_at_is_worth_nothing_told() {
    let mut app = device(&clock(), 1, "Invented instructor");
    let told = app.list_worth().unwrap();
    assert_eq!(told.points, []);
    assert!(told.caution.contains("says what was found, not what was there"));
}
