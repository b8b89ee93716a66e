//! Laws of torque and clamp load, whatever the thread and the friction.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use proptest::sample::select;
use witnessmark_core::torque::{
    Adapter, Bearing, Between, Class, DragRule, Joint, JointLimit, Law, Layout, Place, Plan, Series, Stage,
    Tapped, Thread, Tool, Wanted, assembly, internal_area, minimum, slips, strip_load, torque_at_fastener,
    with_drag, wrench_setting,
};
use witnessmark_core::units::{Quantity, Unit};

fn newton_metres(value: f64) -> Quantity {
    Quantity::new(value, Unit::NewtonMetre)
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

fn torque_unit() -> impl Strategy<Value = Unit> {
    let torques = Unit::ALL.iter().copied().filter(|unit| unit.dimension() == Unit::NewtonMetre.dimension());
    select(torques.collect::<Vec<_>>())
}

fn any_thread() -> impl Strategy<Value = Thread> {
    select(Thread::all().collect::<Vec<_>>())
}

/// Threads whose nut's face is in the tables.
fn metric() -> impl Strategy<Value = Thread> {
    select(Thread::all().filter(|thread| Bearing::usual(*thread).is_ok()).collect::<Vec<_>>())
}

fn class() -> impl Strategy<Value = Class> {
    select(vec![Class::C8_8, Class::C10_9, Class::C12_9])
}

fn band(least: f64, most: f64) -> impl Strategy<Value = Between<f64>> {
    (least..most, least..most).prop_map(|(a, b)| Between::new(a.min(b), a.max(b)))
}

fn rubbing(thread: Thread, friction: Between<f64>) -> Law {
    Law::Friction { thread, bearing: Bearing::usual(thread).unwrap(), friction }
}

proptest! {
    /// Every diameter of a thread lies where it must, and its name reads back.
    #[test]
    fn threads_are_threads(thread in any_thread()) {
        prop_assert_eq!(thread.name().parse::<Thread>().unwrap(), thread);
        let mm = |q: Quantity| q.to(Unit::Millimetre).unwrap().value;
        let (d, d2, d1, d3) = (
            mm(thread.diameter()), mm(thread.pitch_diameter()), mm(thread.minor_diameter()), mm(thread.root_diameter()),
        );
        prop_assert!(d > d2 && d2 > d1 && d1 > d3 && d3 > 0.0);
        let circle = |d: f64| std::f64::consts::FRAC_PI_4 * d * d;
        let area = thread.stress_area().to(Unit::SquareMillimetre).unwrap().value;
        prop_assert!(circle(d3) < area && area < circle(d2));
        let json = serde_json::to_string(&thread).unwrap();
        prop_assert_eq!(serde_json::from_str::<Thread>(&json).unwrap(), thread);
    }

    /// Clamp load and torque are each other's inverse, end by end, in any unit.
    #[test]
    fn torque_and_clamp_load_go_both_ways(
        thread in metric(), friction in band(0.02, 0.4), torque in 0.1..200.0f64, unit in torque_unit(),
    ) {
        let law = rubbing(thread, friction);
        let written = newton_metres(torque).to(unit).unwrap();
        let preload = law.preload(Between::just(written)).unwrap();
        prop_assert!(preload.low.value <= preload.high.value);
        prop_assert!(close(law.torque(preload.high).unwrap().low.value, torque));
        prop_assert!(close(law.torque(preload.low).unwrap().high.value, torque));
    }

    /// More torque never clamps less; more friction never clamps more; a wider band of friction
    /// never gives a narrower band of clamp load.
    #[test]
    fn clamp_load_is_monotone(
        thread in metric(), friction in band(0.05, 0.3), wider in 0.0..0.05f64, torque in band(0.1, 100.0),
    ) {
        let law = rubbing(thread, friction);
        let one = |law: &Law, t: f64| law.preload(Between::just(newton_metres(t))).unwrap();
        prop_assert!(one(&law, torque.low).low.value <= one(&law, torque.high).low.value);
        let loose = rubbing(thread, Between::new(friction.low - wider, friction.high + wider));
        prop_assert!(one(&loose, torque.low).low.value <= one(&law, torque.low).low.value);
        prop_assert!(one(&loose, torque.low).high.value >= one(&law, torque.low).high.value);
    }

    /// The stronger class bears more; and at the used share of yield, the joint says that share.
    #[test]
    fn the_assembly_load_uses_what_it_says(
        thread in metric(), class in class(), mu in 0.05..0.3f64, used in 0.1..1.0f64,
    ) {
        let bearing = Bearing::usual(thread).unwrap();
        let limit = assembly(thread, class, bearing, mu, used).unwrap();
        let law = rubbing(thread, Between::just(mu));
        let joint = Joint { thread, class: Some(class), law, tapped: None };
        let clamp = joint.clamp(Between::just(limit.torque)).unwrap();
        prop_assert!(close(clamp.preload.low.value, limit.preload.value));
        prop_assert!(close(clamp.yield_share.unwrap().high, used));
        let weaker = assembly(thread, Class::C8_8, bearing, mu, used).unwrap();
        prop_assert!(weaker.preload.value <= limit.preload.value);
    }

    /// Limits are met in the order of torque: what harms at a torque harms at a greater one.
    #[test]
    fn harm_only_grows(
        thread in metric(), class in class(), friction in band(0.08, 0.3), torque in 1.0..200.0f64, more in 1.0..3.0f64,
    ) {
        let tapped = Tapped {
            engaged: thread.diameter(),
            shear_strength: Quantity::new(120.0, Unit::Megapascal),
        };
        let joint = Joint { thread, class: Some(class), law: rubbing(thread, friction), tapped: Some(tapped) };
        let harm = |t: f64| joint.clamp(Between::just(newton_metres(t))).unwrap().harm();
        let limits = |t: f64| harm(t).into_iter().map(|h| h.limit).collect::<Vec<JointLimit>>();
        let (now, then) = (limits(torque), limits(torque * more));
        prop_assert!(now.iter().all(|limit| then.contains(limit)));
        // What is certain is certain only together with being possible, and grows too.
        let certain = |t: f64| harm(t).into_iter().filter(|h| h.certain).count();
        prop_assert!(certain(torque) <= certain(torque * more));
    }

    /// Twice the engagement bears twice the pull; the area is that of no more than a plain cylinder.
    #[test]
    fn strip_load_grows_with_engagement(thread in any_thread(), engaged in 1.0..40.0f64, strength in 20.0..400.0f64) {
        let mm = |v| Quantity::new(v, Unit::Millimetre);
        let mpa = Quantity::new(strength, Unit::Megapascal);
        let area = internal_area(thread, mm(engaged)).unwrap().value;
        prop_assert!(close(internal_area(thread, mm(2.0 * engaged)).unwrap().value, 2.0 * area));
        prop_assert!(close(strip_load(thread, mm(engaged), mpa).unwrap().value, area * strength));
        let cylinder = std::f64::consts::PI * thread.diameter().to(Unit::Millimetre).unwrap().value * engaged;
        prop_assert!(0.5 * cylinder < area && area < cylinder);
    }

    /// Set and torque at the fastener are each other's inverse, with any adapter that can be.
    #[test]
    fn adapters_go_both_ways(torque in 0.1..100.0f64, lever in 50.0..800.0f64, share in 0.0..0.9f64, angle in -180.0..180.0f64) {
        let mm = |v| Quantity::new(v, Unit::Millimetre);
        let (lever, adapter) = (mm(lever), mm(lever * share));
        let set = wrench_setting(newton_metres(torque), lever, adapter, angle).unwrap();
        prop_assert!(close(torque_at_fastener(set, lever, adapter, angle).unwrap().value, torque));
    }

    /// Drag is left out or added whole; the circular's rule never sets less than the bulletin's.
    #[test]
    fn drag_is_all_or_nothing(low in 1.0..100.0f64, wide in 0.0..50.0f64, drag in 0.0..100.0f64) {
        let q = |v| Quantity::new(v, Unit::PoundForceInch);
        let wanted = Between::new(q(low), q(low + wide));
        let third = with_drag(wanted, q(drag), DragRule::Third).unwrap();
        let always = with_drag(wanted, q(drag), DragRule::Always).unwrap();
        let added = if third.counted { drag } else { 0.0 };
        prop_assert!(close(third.set.low.value, low + added));
        prop_assert_eq!(third.counted, drag >= low / 3.0 * (1.0 - 1e-9));
        prop_assert!(third.set.high.value <= always.set.high.value);
    }

    /// The order visits each nut once; on an even circle opposites follow each other; with five or
    /// more nuts no two neighbours do.
    #[test]
    fn a_circle_is_crossed(nuts in 1..=64usize) {
        let order = Layout::Circle { nuts }.order().unwrap();
        let mut sorted = order.clone();
        sorted.sort_unstable();
        prop_assert_eq!(sorted, (1..=nuts).collect::<Vec<_>>());
        if nuts % 2 == 0 {
            for pair in order.chunks(2) {
                prop_assert_eq!(pair[0].abs_diff(pair[1]), nuts / 2);
            }
        }
        if nuts >= 5 {
            for step in order.windows(2) {
                let apart = step[0].abs_diff(step[1]);
                prop_assert!(apart.min(nuts - apart) > 1, "{:?}", order);
            }
        }
    }

    /// A grid is tightened from the middle outward, each nut before its opposite.
    #[test]
    fn a_grid_goes_outward(rows in 1..=8usize, columns in 1..=8usize) {
        let layout = Layout::Grid { rows, columns };
        let order = layout.order().unwrap();
        let places = layout.positions(0.0).unwrap();
        let mut sorted = order.clone();
        sorted.sort_unstable();
        prop_assert_eq!(&sorted, &(1..=rows * columns).collect::<Vec<_>>());
        let far = |nut: usize| places[nut - 1].x.hypot(places[nut - 1].y);
        for step in order.windows(2) {
            prop_assert!(far(step[0]) <= far(step[1]) + 1e-12);
        }
        // The one in the middle of an odd grid is alone.
        for pair in order[rows * columns % 2..].chunks(2) {
            prop_assert_eq!(pair[0] + pair[1], rows * columns + 1);
        }
        prop_assert!(places.iter().all(|p| p.x.hypot(p.y) <= 1.0 + 1e-12));
    }

    /// Every nut at every stage; the last setting gives every nut the band's middle, through the
    /// adapter and over the drag; and the tool's spread holds that middle.
    #[test]
    fn a_plan_ends_at_the_wanted_torque(
        nuts in 1..=12usize, low in 20.0..100.0f64, wide in 0.0..20.0f64, drag in 0.0..60.0f64, reach in 0.0..100.0f64,
    ) {
        let q = |v| Quantity::new(v, Unit::PoundForceInch);
        let mm = |v| Quantity::new(v, Unit::Millimetre);
        let adapter = Adapter { lever: mm(250.0), adapter: mm(reach), angle_deg: 0.0 };
        let wanted = Wanted {
            band: Between::new(q(low), q(low + wide)),
            drag: Some(q(drag)),
            rule: DragRule::Third,
            adapter: Some(adapter),
        };
        let stages = [Stage::Share(0.3), Stage::Share(0.7), Stage::Share(1.0), Stage::Check];
        let tool = Tool::marked(q(1.0), q(500.0));
        let plan = Plan::new(Layout::Circle { nuts }, &stages, &wanted, Some(&tool)).unwrap();
        prop_assert_eq!(plan.steps.len(), nuts * stages.len());
        let last = plan.steps.last().unwrap();
        let counted = with_drag(wanted.band, q(drag), DragRule::Third).unwrap().counted;
        let at_nut = last.setting.value * adapter.gain().unwrap() - if counted { drag } else { 0.0 };
        prop_assert!((at_nut - (low + wide / 2.0)).abs() < 1e-9 * last.setting.value);
        prop_assert_eq!(plan.spread.unwrap().place(q(at_nut)).unwrap(), Place::Inside);
        let settings: Vec<f64> = plan.steps.iter().map(|step| step.setting.value).collect();
        prop_assert!(settings.windows(2).all(|pair| pair[0] <= pair[1]));
    }

    /// A right number with a wrong unit is always explained, by that unit among others.
    #[test]
    fn a_wrong_unit_is_found(value in 1.0..500.0f64, meant in torque_unit(), written in torque_unit()) {
        let band = Between::new(Quantity::new(value * 0.98, meant), Quantity::new(value * 1.02, meant));
        let found = slips(Quantity::new(value, written), band, 0.0).unwrap();
        if meant == written {
            prop_assert!(found.is_empty());
        } else {
            let times = Quantity::new(1.0, written).to(meant).unwrap().value;
            prop_assert!(found.iter().any(|slip| slip.taken == written && slip.meant == meant && close(slip.times, times)));
        }
    }

    /// A published least drag is of the right kind and the nut at it is reusable, under it isn't.
    #[test]
    fn least_drags_judge(thread in any_thread(), less in 0.1..0.99f64) {
        if let Some(minimum) = minimum(thread) {
            prop_assert!(minimum.reusable(minimum.torque.to(Unit::NewtonMetre).unwrap()).unwrap());
            let under = Quantity::new(minimum.torque.value * less, minimum.torque.unit);
            prop_assert!(!minimum.reusable(under).unwrap());
        }
    }

    /// Whatever numbers come in, finite numbers or a fault come out.
    #[test]
    fn no_number_breaks_it(thread in any_thread(), a in any::<f64>(), b in any::<f64>(), unit in select(Unit::ALL)) {
        let (q, r) = (Quantity::new(a, unit), Quantity::new(b, unit));
        let factor = Law::NutFactor { factor: Between::new(a, b), diameter: thread.diameter() };
        let preload = factor.preload(Between::new(q, r));
        prop_assert!(preload.is_err() || preload.is_ok_and(|p| p.low.value.is_finite() && p.high.value.is_finite()));
        if let Ok(bearing) = Bearing::usual(thread) {
            let limit = assembly(thread, Class::C10_9, bearing, a, b);
            prop_assert!(limit.is_err() || limit.is_ok_and(|l| l.preload.value > 0.0 && l.torque.value.is_finite()));
        }
        let area = internal_area(thread, q);
        prop_assert!(area.is_err() || area.is_ok_and(|area| area.value.is_finite()));
        let _ = slips(q, Between::new(r, q), 0.04);
        let _ = Tool::marked(q, r).spread(r, None);
        let _ = Tool::marked(q, r).most_effective();
        let _ = Between::new(q, r).place(r);
    }
}

#[test]
fn inch_threads_have_no_metric_class() {
    for thread in Thread::all() {
        assert_eq!(Class::C8_8.proof_load(thread).is_ok(), thread.series() == Series::Metric, "{thread}");
    }
}
