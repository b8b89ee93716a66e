//! Wrench settings with adapters, and re-torque checks.

use witnessmark_core::torque::{Marks, torque_at_fastener, wrench_setting};
use witnessmark_core::units::{Quantity, Unit};

use crate::{lbf_in, near};

fn inches(value: f64) -> Quantity {
    Quantity::new(value, Unit::Inch)
}

/// US Navy NAVEDTRA 14315 figures 3-44 and 3-45 (formula and inputs): 100 lbf·in, lever 12 in, adapter
/// 6 in in line: 66.7 lbf·in. The same form in FAA AC 43.13-1B figure 7-2 (memory).
#[test]
fn the_navys_extension() {
    let set = wrench_setting(lbf_in(100.0), inches(12.0), inches(6.0), 0.0).unwrap();
    near(set.value, 66.7, 1e-3, "set");
    let back = torque_at_fastener(set, inches(12.0), inches(6.0), 0.0).unwrap();
    near(back.value, 100.0, 1e-12, "back");
}

/// A tool maker's instruction: 20 lbf·ft with 12 in and 3 in in line: 16; at 90° nothing changes.
#[test]
fn a_tool_makers_adapter() {
    let twenty = Quantity::new(20.0, Unit::PoundForceFoot);
    near(wrench_setting(twenty, inches(12.0), inches(3.0), 0.0).unwrap().value, 16.0, 1e-12, "in line");
    assert_eq!(wrench_setting(twenty, inches(12.0), inches(3.0), 90.0).unwrap(), twenty);
    assert_eq!(wrench_setting(twenty, inches(12.0), inches(3.0), -90.0).unwrap(), twenty);
}

/// US Army TB 43-0218 § 7d: marked in line, backed off, tightened again: marks in line, or it had been
/// under- or over-torqued.
#[test]
fn the_check_by_marks() {
    assert_eq!(Marks::read(0.0, 3.0), Marks::InLine);
    assert_eq!(Marks::read(45.0, 3.0), Marks::UnderTorqued);
    assert_eq!(Marks::read(-45.0, 3.0), Marks::OverTorqued);
}
