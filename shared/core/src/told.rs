//! What data tell, or that they tell too little: an outcome of its own, so that nobody takes
//! a gap for a number.

use serde::{Deserialize, Serialize};

/// A result, or why there is none.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Told<T> {
    /// What the data tell.
    Told(T),
    /// They tell too little.
    TooLittle(TooLittle),
}

/// Why nothing is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, thiserror::Error)]
#[serde(rename_all = "kebab-case", tag = "why")]
pub enum TooLittle {
    /// Not enough of them.
    #[error("too little to say: {has} there, at least {needs} needed")]
    Few {
        /// How many there are.
        has: usize,
        /// How many it takes.
        needs: usize,
    },
    /// All readings were taken at one and the same time in service.
    #[error("too little to say: all were taken at the same time in service")]
    OneMoment,
    /// All readings are the same: a sensor at its stop looks like this, too.
    #[error("too little to say: all readings are the same")]
    AllSame,
    /// So many readings share a time in service or a value that no interval holds what it promises.
    #[error("too little to say: too many share a time or a value for an interval to be told")]
    NoInterval,
    /// No trend that chance alone wouldn't make as well.
    #[error("too little to say: chance alone makes such a trend as well")]
    NoTrend,
    /// Nothing was found to have failed; it only hasn't failed yet.
    #[error("too little to say: nothing was found failed yet ({has} still in service)")]
    NothingFailed {
        /// How many haven't failed.
        has: usize,
    },
    /// The findings don't narrow down how life is spread: every spread, however narrow or wide, fits.
    #[error("too little to say: the findings don't narrow down how lives are spread")]
    AnySpread,
}

impl<T> Told<T> {
    /// The result, if there is one.
    pub fn told(self) -> Option<T> {
        match self {
            Told::Told(result) => Some(result),
            Told::TooLittle(_) => None,
        }
    }

    /// The result, or why there is none.
    pub fn as_result(&self) -> Result<&T, TooLittle> {
        match self {
            Told::Told(result) => Ok(result),
            Told::TooLittle(why) => Err(*why),
        }
    }
}

impl<T> From<Result<T, TooLittle>> for Told<T> {
    fn from(result: Result<T, TooLittle>) -> Self {
        match result {
            Ok(result) => Told::Told(result),
            Err(why) => Told::TooLittle(why),
        }
    }
}
