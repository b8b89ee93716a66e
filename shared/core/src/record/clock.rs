//! A hybrid logical clock: wall time that never runs backwards along what its
//! author had seen (Kulkarni et al., Logical Physical Clocks, 2014).

use serde::{Deserialize, Serialize};

/// A point in causal time: Unix milliseconds, then a counter within the millisecond.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Clock {
    /// Milliseconds since 1970-01-01T00:00:00Z; at least those of everything seen.
    pub ms: u64,
    /// Counts events that fall into one millisecond, or behind a clock seen ahead of ours.
    pub n: u32,
}

impl Clock {
    /// The next point after `self` (the latest seen) when the wall shows `now_ms`.
    #[must_use]
    pub fn tick(self, now_ms: u64) -> Self {
        if now_ms > self.ms {
            Self { ms: now_ms, n: 0 }
        } else {
            Self { ms: self.ms, n: self.n.saturating_add(1) }
        }
    }
}
