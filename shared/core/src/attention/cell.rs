//! One person's looks at one point.

/// What they came to.
#[derive(Clone, Debug, Default)]
pub(super) struct Cell {
    pub looks: u32,
    pub hurried: u32,
    /// Found to be watched where the look before had found nothing.
    pub watch: u32,
    /// Found unserviceable where the look before hadn't.
    pub unserviceable: u32,
    /// Seconds of each look.
    pub seconds: Vec<f64>,
}

impl Cell {
    pub fn found(&self) -> u32 {
        self.watch + self.unserviceable
    }
}

/// The middle of values that each count so often.
pub(super) fn weighed_median(mut values: Vec<(f64, u32)>) -> Option<f64> {
    values.sort_by(|a, b| a.0.total_cmp(&b.0));
    let all: u32 = values.iter().map(|one| one.1).sum();
    let mut so_far = 0;
    values
        .iter()
        .find(|one| {
            so_far += one.1;
            2 * so_far >= all
        })
        .map(|one| one.0)
}
