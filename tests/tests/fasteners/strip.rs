//! Threads in softer parts.

use witnessmark_core::torque::{
    Between, aluminium_depth, aluminium_torque, internal_area, strip_load, tapped_depth,
};
use witnessmark_core::units::{Quantity, Unit};

use crate::{in_unit, lbf_in, mm, near, thread};

/// mm² a millimetre engaged, 6H/6g: the formula of ASME B1.1, computed by hand with limits from
/// memory.
#[test]
fn metric_areas() {
    for (name, area) in [("M6", 12.19), ("M8", 16.83)] {
        let one = internal_area(thread(name), mm(1.0)).unwrap();
        near(in_unit(one, Unit::SquareMillimetre), area, 5e-4, name);
    }
}

/// in² an inch engaged, class 2: a fastener house's table of stripping areas, to three figures. Its
/// 7/16-20 (0.908) is left out: between 3/8-24 and 1/2-20 it can't lie so low.
#[test]
fn unified_areas() {
    for (name, area) in [
        ("8-32", 0.334),
        ("8-36", 0.331),
        ("10-24", 0.401),
        ("10-32", 0.389),
        ("1/4-20", 0.539),
        ("1/4-28", 0.521),
        ("5/16-18", 0.682),
        ("5/16-24", 0.663),
        ("3/8-16", 0.828),
        ("3/8-24", 0.800),
        ("7/16-14", 0.981),
        ("1/2-13", 1.12),
        ("1/2-20", 1.08),
        ("9/16-12", 1.27),
        ("9/16-18", 1.23),
        ("5/8-11", 1.42),
        ("5/8-18", 1.37),
        ("3/4-10", 1.72),
        ("3/4-16", 1.66),
        ("7/8-9", 2.03),
        ("7/8-14", 1.96),
        ("1-8", 2.33),
        ("1-12", 2.27),
    ] {
        let one = internal_area(thread(name), Quantity::new(1.0, Unit::Inch)).unwrap();
        near(in_unit(one, Unit::SquareInch), area, 0.01, name);
    }
}

/// The load is the area times the strength: M8, 16 mm in a casting of 190 MPa (356-T6, a materials
/// database): far above what a stud of 8.8 pulls.
#[test]
fn a_stud_in_a_casting() {
    let load = strip_load(thread("M8"), mm(16.0), Quantity::new(190.0, Unit::Megapascal)).unwrap();
    near(in_unit(load, Unit::Kilonewton), 16.83 * 16.0 * 0.19, 1e-3, "kN");
}

/// Tapped softer material: 1 1/2 diameters (US Army TB 43-0218 § 7a). Steel into aluminium: two
/// diameters, torque down by 30 % or more (US Army TM 9-6115-604-34 table 1-2 note 6).
#[test]
fn soft_material() {
    assert_eq!(in_unit(tapped_depth(thread("M8")), Unit::Millimetre), 12.0);
    assert_eq!(in_unit(aluminium_depth(thread("M8")), Unit::Millimetre), 16.0);
    let down = aluminium_torque(Between::new(lbf_in(50.0), lbf_in(70.0))).unwrap();
    near(in_unit(down.low, Unit::PoundForceInch), 35.0, 1e-12, "low");
    near(in_unit(down.high, Unit::PoundForceInch), 49.0, 1e-12, "high");
}
