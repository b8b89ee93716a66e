//! Medians and ties.

/// The median: the middle value, or the mean of the two in the middle. None of nothing.
pub(super) fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let upper = values.get(values.len() / 2).copied()?;
    if values.len() % 2 == 1 {
        return Some(upper);
    }
    let lower = values.get(values.len() / 2 - 1).copied()?;
    Some(lower / 2.0 + upper / 2.0)
}

/// How many share each value that is there more than once.
pub(super) fn ties(mut values: Vec<f64>) -> Vec<u64> {
    values.sort_by(f64::total_cmp);
    values.chunk_by(|a, b| a == b).map(|run| run.len() as u64).filter(|count| *count > 1).collect()
}

/// Half away from nobody: halves go to the even number, as NumPy rounds.
pub(super) fn rank(value: f64) -> i64 {
    value.round_ties_even() as i64
}
