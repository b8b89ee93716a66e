//! Clamp load and torque.

use witnessmark_core::torque::Class::{C8_8, C10_9, C12_9};
use witnessmark_core::torque::{Bearing, Between, Law, Thread, assembly, standard};
use witnessmark_core::units::{Quantity, Unit};

use crate::{in_unit, near, thread};

fn usual(name: &str) -> (Thread, Bearing) {
    let thread = thread(name);
    (thread, Bearing::usual(thread).unwrap())
}

/// Assembly preload, kN, and torque, N·m, at 90 % of Rp0.2, coarse threads: computed by hand from
/// the formula of VDI 2230; M12 at 0.14 from a fastener house's table (2015 edition).
#[test]
fn coarse_threads() {
    for (name, class, friction, preload, torque) in [
        ("M6", C8_8, 0.12, 10.2, Some(10.1)),
        ("M6", C8_8, 0.14, 9.9, Some(11.3)),
        ("M8", C8_8, 0.12, 18.6, Some(24.6)),
        ("M8", C8_8, 0.14, 18.1, Some(27.3)),
        ("M8", C10_9, 0.12, 27.4, Some(36.1)),
        ("M8", C10_9, 0.14, 26.6, Some(40.1)),
        ("M12", C8_8, 0.14, 41.9, None),
    ] {
        let (thread, bearing) = usual(name);
        let limit = assembly(thread, class, bearing, friction, 0.9).unwrap();
        near(in_unit(limit.preload, Unit::Kilonewton), preload, 0.01, format!("{name} {friction} kN"));
        if let Some(torque) = torque {
            near(in_unit(limit.torque, Unit::NewtonMetre), torque, 0.01, format!("{name} {friction} N·m"));
        }
    }
}

/// The same for fine threads, classes 8.8, 10.9, 12.9: a fastener house's table after VDI 2230 (2001),
/// kN and N·m. Its heads differ by tenths of a millimetre from ours, so torque to 2.5 %.
#[test]
fn fine_threads() {
    for (name, friction, preload, torque) in [
        ("M8x1", 0.10, [20.7, 30.4, 35.6], [22.8, 33.5, 39.2]),
        ("M8x1", 0.12, [20.2, 29.7, 34.7], [26.1, 38.3, 44.9]),
        ("M8x1", 0.14, [19.7, 28.9, 33.9], [29.2, 42.8, 50.1]),
        ("M10x1.25", 0.12, [31.6, 46.4, 54.3], [51.0, 75.0, 87.0]),
        ("M10x1.25", 0.14, [30.8, 45.2, 52.9], [57.0, 83.0, 98.0]),
        ("M12x1.25", 0.12, [48.0, 70.5, 82.5], [90.0, 133.0, 155.0]),
        ("M14x1.5", 0.12, [64.8, 95.2, 111.4], [142.0, 209.0, 244.0]),
        ("M16x1.5", 0.12, [87.6, 128.7, 150.6], [218.0, 320.0, 374.0]),
        ("M24x2", 0.14, [204.0, 290.0, 339.0], [865.0, 1232.0, 1442.0]),
    ] {
        let (thread, bearing) = usual(name);
        for ((class, preload), torque) in [C8_8, C10_9, C12_9].into_iter().zip(preload).zip(torque) {
            let limit = assembly(thread, class, bearing, friction, 0.9).unwrap();
            let what = format!("{name} {} at {friction}", class.name());
            near(in_unit(limit.preload, Unit::Kilonewton), preload, 0.02, format!("{what} kN"));
            near(in_unit(limit.torque, Unit::NewtonMetre), torque, 0.025, format!("{what} N·m"));
        }
    }
}

/// M12 8.8 at 70 % of proof, K = 0.2: about 34 kN, 82 N·m; with K = 0.15 the same torque gives
/// about 45 kN, with 0.3 about 23 kN: a calculator page.
#[test]
fn the_nut_factor() {
    let m12 = thread("M12");
    let law = |low, high| Law::NutFactor { factor: Between::new(low, high), diameter: m12.diameter() };
    let wanted = Quantity::new(0.7 * C8_8.proof_load(m12).unwrap().value, Unit::Newton);
    near(in_unit(wanted, Unit::Kilonewton), 34.0, 0.02, "kN");
    let torque = law(0.2, 0.2).torque(wanted).unwrap();
    near(in_unit(torque.low, Unit::NewtonMetre), 82.0, 0.01, "N·m");
    let band = law(0.15, 0.3).preload(torque).unwrap();
    near(in_unit(band.high, Unit::Kilonewton), 45.0, 0.02, "oiled");
    near(in_unit(band.low, Unit::Kilonewton), 23.0, 0.02, "dry");
}

/// FAA AC 43.13-1B table 7-1: the torques are for 40 000 psi in the bolt, the most allowed for
/// 90 000 psi; so torque over stress, area and diameter must be a nut factor that can be.
#[test]
fn the_circulars_torques_are_of_one_friction() {
    for (name, low, high, most) in [
        ("10-32", 20.0, 25.0, 40.0),
        ("1/4-28", 50.0, 70.0, 100.0),
        ("5/16-24", 100.0, 140.0, 225.0),
        ("3/8-24", 160.0, 190.0, 390.0),
    ] {
        let thread = thread(name);
        let row = standard(thread).unwrap();
        let printed = [row.recommended.low, row.recommended.high, row.allowed].map(|t| t.value);
        assert_eq!(printed, [low, high, most], "{name}");
        let law = |k| Law::NutFactor { factor: Between::just(k), diameter: thread.diameter() };
        let area = in_unit(thread.stress_area(), Unit::SquareInch);
        let psi =
            |torque, k| in_unit(law(k).preload(Between::just(torque)).unwrap().low, Unit::PoundForce) / area;
        assert!(psi(row.allowed, 0.15) < 90_000.0 && psi(row.allowed, 0.11) > 90_000.0, "{name}");
        assert!(
            psi(row.recommended.low, 0.12) < 50_000.0 && psi(row.recommended.high, 0.12) > 40_000.0,
            "{name}"
        );
    }
}
