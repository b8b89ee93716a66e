//! Trends, lives, air and load against published figures and reference libraries.
//! Beside each figure stands where it was read; "memory" where no text was at hand. The same
//! libraries are asked anew, on random data, by `tests/outside/figures.py`.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod air;
mod life;
mod load;
mod trend;

/// Within `share` of the printed figure.
#[track_caller]
fn near(value: f64, printed: f64, share: f64, what: impl std::fmt::Display) {
    assert!((value - printed).abs() <= share * printed.abs(), "{what}: {value}, printed {printed}");
}
