//! The time, as an argument: tests turn it both ways.

use std::fmt;
use std::sync::Arc;
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use chrono::{DateTime, NaiveDate, TimeDelta};

/// Tells the time.
#[derive(Clone)]
pub struct Clock {
    wall: Arc<dyn Fn() -> u64 + Send + Sync>,
    /// What never goes back.
    ticks: Arc<dyn Fn() -> u64 + Send + Sync>,
}

impl Clock {
    /// The machine's own.
    pub fn system() -> Self {
        let millis = |time: Duration| u64::try_from(time.as_millis()).unwrap_or(u64::MAX);
        let begun = Instant::now();
        Self {
            // Before 1970 there is no time to tell: every request is then from the future, and refused.
            wall: Arc::new(move || millis(SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default())),
            ticks: Arc::new(move || millis(begun.elapsed())),
        }
    }

    /// One that tells what this gives: milliseconds since 1970.
    pub fn of(tell: impl Fn() -> u64 + Send + Sync + 'static) -> Self {
        let wall: Arc<dyn Fn() -> u64 + Send + Sync> = Arc::new(tell);
        Self { ticks: wall.clone(), wall }
    }

    /// Seconds since 1970.
    pub fn seconds(&self) -> i64 {
        i64::try_from((self.wall)() / 1000).unwrap_or(i64::MAX)
    }

    /// Milliseconds since some moment, for measuring how long: nobody may turn this one.
    pub(crate) fn ticks(&self) -> u64 {
        (self.ticks)()
    }
}

impl fmt::Debug for Clock {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Clock")
    }
}

/// The days that it is somewhere on Earth, this side of the date line first. A member's first and last
/// day are written where the school is, and the server may stand anywhere.
pub(crate) fn days(seconds: i64) -> impl Iterator<Item = NaiveDate> {
    let now = DateTime::from_timestamp(seconds, 0);
    [0, 14, -12]
        .into_iter()
        .filter_map(move |hours| Some(now?.checked_add_signed(TimeDelta::try_hours(hours)?)?.date_naive()))
}

/// A moment as it is told: RFC 3339.
pub(crate) fn told(seconds: i64) -> String {
    DateTime::from_timestamp(seconds, 0).unwrap_or_default().to_rfc3339()
}
