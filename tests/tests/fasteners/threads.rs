//! Diameters, stress areas and limits of threads.

use witnessmark_core::torque::limits;
use witnessmark_core::units::Unit;

use crate::{in_unit, near, thread};

/// ISO 724 basic diameters d2 and D1, mm: a tap maker's table and a chart of internal limits.
#[test]
fn basic_diameters() {
    for (name, pitch, minor) in [
        ("M5", 4.480, 4.134),
        ("M6", 5.350, 4.917),
        ("M6x0.75", 5.513, 5.188),
        ("M7", 6.350, 5.917),
        ("M8", 7.188, 6.647),
        ("M8x1", 7.350, 6.917),
        ("M8x0.75", 7.513, 7.188),
        ("M10", 9.026, 8.376),
        ("M10x1.25", 9.188, 8.647),
        ("M10x1", 9.350, 8.917),
        ("M12", 10.863, 10.106),
        ("M12x1.5", 11.026, 10.376),
        ("M12x1.25", 11.188, 10.647),
        ("M14", 12.701, 11.835),
        ("M14x1.5", 13.026, 12.376),
        ("M14x1.25", 13.188, 12.647),
    ] {
        let thread = thread(name);
        assert!((in_unit(thread.pitch_diameter(), Unit::Millimetre) - pitch).abs() < 6e-4, "{name} d2");
        assert!((in_unit(thread.minor_diameter(), Unit::Millimetre) - minor).abs() < 6e-4, "{name} D1");
    }
    // Root diameter d3 of the bolt: memory.
    for (name, root) in [("M6", 4.773), ("M8", 6.466), ("M10", 8.160)] {
        assert!((in_unit(thread(name).root_diameter(), Unit::Millimetre) - root).abs() < 6e-4, "{name} d3");
    }
}

/// Tensile stress areas, mm²: to three figures ISO 898-1 as tabulated by a fastener house, to four
/// a table of ASME B1.13M sizes. M12x1.5: memory.
#[test]
fn metric_stress_areas() {
    for (name, area, share) in [
        ("M3", 5.03, 2e-3),
        ("M4", 8.78, 2e-3),
        ("M5", 14.2, 4e-3),
        ("M6", 20.1, 4e-3),
        ("M7", 28.9, 4e-3),
        ("M8", 36.6, 4e-3),
        ("M10", 58.0, 4e-3),
        ("M12", 84.3, 4e-3),
        ("M14", 115.0, 4e-3),
        ("M16", 157.0, 4e-3),
        ("M18", 192.0, 4e-3),
        ("M20", 245.0, 4e-3),
        ("M24", 353.0, 4e-3),
        ("M5", 14.18, 5e-4),
        ("M6", 20.12, 5e-4),
        ("M8", 36.61, 5e-4),
        ("M8x1", 39.17, 5e-4),
        ("M10", 57.99, 5e-4),
        ("M10x1.25", 61.20, 5e-4),
        ("M12", 84.27, 5e-4),
        ("M12x1.25", 92.07, 5e-4),
        ("M12x1.5", 88.1, 1e-3),
        ("M14", 115.4, 5e-4),
        ("M14x1.5", 124.5, 5e-4),
        ("M16x1.5", 167.2, 5e-4),
        ("M20x1.5", 271.5, 5e-4),
        ("M24x2", 384.4, 5e-4),
    ] {
        near(in_unit(thread(name).stress_area(), Unit::SquareMillimetre), area, share, name);
    }
}

/// Tensile stress areas, in²: tables of UNF and UNC threads of two fastener references.
#[test]
fn unified_stress_areas() {
    for (name, area) in [
        ("8-32", 0.0140),
        ("8-36", 0.01474),
        ("10-24", 0.0175),
        ("10-32", 0.0200),
        ("1/4-20", 0.0318),
        ("1/4-28", 0.0364),
        ("5/16-18", 0.0524),
        ("5/16-24", 0.0580),
        ("3/8-16", 0.0775),
        ("3/8-24", 0.0878),
        ("7/16-14", 0.1063),
        ("7/16-20", 0.1187),
        ("1/2-13", 0.1419),
        ("1/2-20", 0.1599),
        ("9/16-18", 0.203),
        ("5/8-11", 0.226),
        ("5/8-18", 0.256),
        ("3/4-10", 0.334),
        ("3/4-16", 0.373),
        ("7/8-9", 0.462),
        ("7/8-14", 0.509),
        ("1-8", 0.606),
        ("1-12", 0.663),
        ("1-14", 0.680),
        ("1-1/8-12", 0.856),
        ("1-1/4-12", 1.073),
    ] {
        near(in_unit(thread(name).stress_area(), Unit::SquareInch), area, 3e-3, name);
    }
}

/// Least major diameter of a 6g bolt, mm: a chart of external limits (ISO 965, ASME B1.13M).
/// M12 in another chart to two decimals; M14, M16, M20: memory.
#[test]
fn thinnest_bolts() {
    for (name, least) in [
        ("M3", 2.874),
        ("M4", 3.838),
        ("M5", 4.826),
        ("M5x0.5", 4.874),
        ("M6", 5.794),
        ("M6x0.75", 5.838),
        ("M7", 6.794),
        ("M8", 7.760),
        ("M8x1", 7.794),
        ("M8x0.75", 7.838),
        ("M10", 9.732),
        ("M10x1.25", 9.760),
        ("M10x1", 9.794),
        ("M10x0.75", 9.838),
        ("M12", 11.701),
        ("M14", 13.682),
        ("M16", 15.682),
        ("M20", 19.623),
    ] {
        let value = in_unit(limits(thread(name)).unwrap().bolt_major_least, Unit::Millimetre);
        assert!((value - least).abs() < 6e-4, "{name}: {value}, printed {least}");
    }
}

/// Most pitch diameter of a 6H hole, mm: a chart of internal limits (ASME B1.13M-1995, the same as
/// ISO 965 for these); M6 and M8: memory.
#[test]
fn widest_holes() {
    for (name, most) in [
        ("M6", 5.500),
        ("M8", 7.348),
        ("M10", 9.206),
        ("M10x1.25", 9.348),
        ("M10x1", 9.500),
        ("M10x0.75", 9.645),
        ("M12", 11.063),
        ("M12x1.5", 11.216),
        ("M12x1.25", 11.368),
        ("M12x1", 11.510),
        ("M14", 12.913),
        ("M14x1.5", 13.216),
    ] {
        let value = in_unit(limits(thread(name)).unwrap().hole_pitch_most, Unit::Millimetre);
        assert!((value - most).abs() < 6e-4, "{name}: {value}, printed {most}");
    }
}

/// 1/4-20 in 2A and 2B, in: a calculator of ASME B1.1 limits.
#[test]
fn a_quarter_twenty() {
    let limits = limits(thread("1/4-20")).unwrap();
    assert!((in_unit(limits.bolt_major_least, Unit::Inch) - 0.2408).abs() < 6e-5);
    assert!((in_unit(limits.hole_pitch_most, Unit::Inch) - 0.2224).abs() < 6e-5);
}
