//! Ties, and ranks of them.

/// How many share each value that is there more than once.
pub(super) fn ties(mut values: Vec<f64>) -> Vec<u64> {
    values.sort_by(f64::total_cmp);
    values.chunk_by(|a, b| a == b).map(|run| run.len() as u64).filter(|count| *count > 1).collect()
}

/// The nearest whole number; halves go to the even one, as NumPy rounds.
pub(super) fn rank(value: f64) -> i64 {
    value.round_ties_even() as i64
}
