//! Tightening orders.

use witnessmark_core::torque::Layout;

/// The star pattern of ASME PCC-1 by number of bolts: memory; for 4 and the rule (12, 6, 3 and 9
/// o'clock, then halve the angle) also public pages about it.
#[test]
fn the_star_pattern() {
    for (nuts, order) in [
        (4, vec![1, 3, 2, 4]),
        (8, vec![1, 5, 3, 7, 2, 6, 4, 8]),
        (12, vec![1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12]),
        (16, vec![1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16]),
        (20, vec![1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19]),
    ] {
        assert_eq!(Layout::Circle { nuts }.order().unwrap(), order);
    }
}

/// Five bolts in a star, every second one: a bicycle mechanic's column.
#[test]
fn five_in_a_star() {
    assert_eq!(Layout::Circle { nuts: 5 }.order().unwrap(), [1, 3, 5, 2, 4]);
}

/// Four bolts, as an X: upper left, lower right, then the other two: the same column.
#[test]
fn four_in_a_square() {
    let order = Layout::Grid { rows: 2, columns: 2 }.order().unwrap();
    assert_eq!(order[..2], [1, 4]);
}

/// The straight pattern, nine in a row, numbered by turn from left to right 9 7 5 3 1 2 4 6 8: US Army
/// TM 5-3805-298-23-2. Ours begins to the other side of the middle: the same in a mirror.
#[test]
fn nine_in_a_row() {
    let order = Layout::Grid { rows: 1, columns: 9 }.order().unwrap();
    let turn = |nut: usize| order.iter().position(|n| *n == nut).unwrap() + 1;
    let from_right: Vec<usize> = (1..=9).rev().map(turn).collect();
    assert_eq!(from_right, [9, 7, 5, 3, 1, 2, 4, 6, 8]);
}
