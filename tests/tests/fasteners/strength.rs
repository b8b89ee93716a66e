//! Property classes.

use witnessmark_core::torque::Class::{self, C8_8, C10_9, C12_9};
use witnessmark_core::units::Unit;

use crate::{in_unit, near, thread};

const CLASSES: [Class; 3] = [C8_8, C10_9, C12_9];

/// Proof loads, N: ISO 898-1 as tabulated by two fastener houses. The standard multiplies areas that
/// are rounded to three figures and rounds again.
#[test]
fn proof_loads() {
    for (name, printed) in [
        ("M5", [8230.0, 11_800.0, 13_800.0]),
        ("M6", [11_600.0, 16_700.0, 19_500.0]),
        ("M7", [16_800.0, 24_000.0, 28_000.0]),
        ("M8", [21_200.0, 30_400.0, 35_500.0]),
        ("M10", [33_700.0, 48_100.0, 56_300.0]),
        ("M12", [48_900.0, 70_000.0, 81_800.0]),
        ("M14", [66_700.0, 95_500.0, 112_000.0]),
        ("M16", [91_000.0, 130_000.0, 152_000.0]),
        ("M18", [115_000.0, 159_000.0, 186_000.0]),
        ("M20", [147_000.0, 203_000.0, 238_000.0]),
        ("M24", [212_000.0, 293_000.0, 342_000.0]),
    ] {
        for (class, printed) in CLASSES.into_iter().zip(printed) {
            let load = in_unit(class.proof_load(thread(name)).unwrap(), Unit::Newton);
            near(load, printed, 8e-3, format!("{name} {}", class.name()));
        }
    }
}

/// Minimum breaking loads, N: EN ISO 898-1 as tabulated by a fastener reference.
#[test]
fn breaking_loads() {
    for (name, printed) in [
        ("M5", [11_350.0, 14_800.0, 17_300.0]),
        ("M6", [16_100.0, 20_900.0, 24_500.0]),
        ("M8", [29_200.0, 38_100.0, 44_600.0]),
        ("M10", [46_400.0, 60_300.0, 70_800.0]),
        ("M12", [67_400.0, 87_700.0, 103_000.0]),
        ("M14", [92_000.0, 120_000.0, 140_000.0]),
        ("M16", [125_000.0, 163_000.0, 192_000.0]),
        ("M18", [159_000.0, 200_000.0, 234_000.0]),
        ("M20", [203_000.0, 255_000.0, 299_000.0]),
    ] {
        for (class, printed) in CLASSES.into_iter().zip(printed) {
            let load = in_unit(class.breaking_load(thread(name)).unwrap(), Unit::Newton);
            near(load, printed, 8e-3, format!("{name} {}", class.name()));
        }
    }
}

/// Stresses, MPa, where 8.8 changes at 16 mm: EN ISO 898-1:2013 table 3 as tabulated.
#[test]
fn eight_point_eight_changes_at_sixteen() {
    for (name, proof, yielding, tensile) in [("M16", 580.0, 640.0, 800.0), ("M18", 600.0, 660.0, 830.0)] {
        let of = thread(name);
        let mpa = |stress: Result<_, _>| in_unit(stress.unwrap(), Unit::Megapascal);
        assert_eq!(mpa(C8_8.proof_stress(of)), proof, "{name}");
        assert_eq!(mpa(C8_8.yield_stress(of)), yielding, "{name}");
        assert_eq!(mpa(C8_8.tensile_strength(of)), tensile, "{name}");
    }
}
