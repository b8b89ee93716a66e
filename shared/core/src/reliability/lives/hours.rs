//! Hours that ran backwards: a slip of the pen, put right later.

/// Hours in which nothing goes back, in the order in which they were stated.
///
/// The longest row of statements in which none is less than the one before is believed; of equally long
/// ones that with the fewer hours at its end, which makes parts younger. The same hours stated several
/// times in a row are one statement. What lies off the row stands where the statement believed before it
/// stands, or with the first one.
pub(super) fn believed(stated: &[f64]) -> Vec<f64> {
    let runs: Vec<&[f64]> = stated.chunk_by(|a, b| a == b).collect();
    let said: Vec<f64> = runs.iter().filter_map(|run| run.first()).copied().collect();
    let on = row(&said);
    let mut so_far = on.first().and_then(|first| said.get(*first)).copied().unwrap_or(0.0);
    let mut on = on.into_iter().peekable();
    let mut hours = Vec::with_capacity(stated.len());
    for (at, (run, said)) in runs.iter().zip(&said).enumerate() {
        if on.next_if_eq(&at).is_some() {
            so_far = *said;
        }
        hours.extend(std::iter::repeat_n(so_far.max(0.0), run.len()));
    }
    hours
}

/// The longest row that never falls, as places in `stated` (patience sorting).
fn row(stated: &[f64]) -> Vec<usize> {
    // By length, the place at which the row of that length ends that ends lowest.
    let mut ends: Vec<usize> = Vec::new();
    let mut before: Vec<Option<usize>> = Vec::with_capacity(stated.len());
    let at = |place: usize| stated.get(place).copied().unwrap_or(0.0);
    for (place, hours) in stated.iter().enumerate() {
        let length = ends.partition_point(|end| at(*end) <= *hours);
        before.push(length.checked_sub(1).and_then(|shorter| ends.get(shorter)).copied());
        match ends.get_mut(length) {
            Some(end) => *end = place,
            None => ends.push(place),
        }
    }
    let mut row: Vec<usize> =
        std::iter::successors(ends.last().copied(), |place| before.get(*place).copied().flatten()).collect();
    row.reverse();
    row
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_and_its_correction_are_not_time_in_service() {
        // 1250 typed for 125, put right two looks later.
        assert_eq!(believed(&[100.0, 1250.0, 1251.0, 126.0, 127.0]), [100.0, 100.0, 100.0, 126.0, 127.0]);
        // 11 typed for 110: the others stay.
        assert_eq!(believed(&[100.0, 105.0, 11.0, 120.0]), [100.0, 105.0, 105.0, 120.0]);
        // The first one was the slip.
        assert_eq!(believed(&[900.0, 90.0, 91.0]), [90.0, 90.0, 91.0]);
        assert_eq!(believed(&[-3.0, 2.0]), [0.0, 2.0]);
        assert_eq!(believed(&[]), Vec::<f64>::new());
    }

    #[test]
    fn hours_that_never_fall_stay_as_they_are() {
        assert_eq!(believed(&[1.0, 1.0, 2.5, 2.5, 40.0]), [1.0, 1.0, 2.5, 2.5, 40.0]);
    }
}
