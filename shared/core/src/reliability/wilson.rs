//! How sure a share is that was seen among so many.

/// z of 95 %, both sides.
pub const Z_95: f64 = 1.959_963_984_540_054;
/// z of 99 %, both sides.
pub const Z_99: f64 = 2.575_829_303_548_901;

/// Wilson's interval of a share seen in `n`: it stays within 0 and 1 and holds what it promises for rare
/// things, too, which the share ± z standard errors doesn't.
///
/// Source: Wilson, JASA 22 (1927) 209–212 (from memory); figures checked against Newcombe's table and
/// SciPy.
pub fn wilson(share: f64, n: f64, z: f64) -> (f64, f64) {
    if n <= 0.0 {
        return (0.0, 1.0);
    }
    let z2 = z * z;
    let middle = share + z2 / (2.0 * n);
    let half = z * (share * (1.0 - share) / n + z2 / (4.0 * n * n)).sqrt();
    let scale = 1.0 + z2 / n;
    // Of nothing and of all, rounding would leave a hair.
    let low = if share <= 0.0 { 0.0 } else { (middle - half) / scale };
    let high = if share >= 1.0 { 1.0 } else { (middle + half) / scale };
    (low.max(0.0), high.min(1.0))
}
