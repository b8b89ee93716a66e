//! The middle of some values.

/// The median: the middle value, or the mean of the two in the middle. None of nothing.
pub(crate) fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let upper = values.get(values.len() / 2).copied()?;
    if values.len() % 2 == 1 {
        return Some(upper);
    }
    let lower = values.get(values.len() / 2 - 1).copied()?;
    // Halved first: the sum of two great ones is no number.
    Some(lower / 2.0 + upper / 2.0)
}
