//! Why findings can't be used, and what would help.

/// Why nothing can be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LifeFault {
    /// Not a finite number.
    #[error("finding {0}: times must be finite numbers; leave `by` out (null) where nothing has failed yet")]
    NotFinite(usize),
    /// A time in service below nothing.
    #[error("finding {0}: time in service must be 0 or more")]
    Negative(usize),
    /// Found failed before it was last seen whole.
    #[error("finding {0}: it can't have failed `by` a time before `after`, when it was still whole")]
    Backwards(usize),
    /// Failed before it was ever in service.
    #[error("finding {0}: nothing fails at exactly 0 h: give the time by which it was found")]
    AtNothing(usize),
    /// A figure outside its range.
    #[error("{what} must be {must}")]
    Impossible {
        /// Which input.
        what: &'static str,
        /// What would be possible.
        must: &'static str,
    },
    /// Times so far apart that a double doesn't hold their likelihood.
    #[error("these times are too far apart to compute with: look for a slip in the units")]
    OutOfReach,
}
