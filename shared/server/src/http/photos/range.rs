//! Parts of a photo, as HTTP writes them (RFC 9110 § 14).

use std::fmt;
use std::ops::Range;
use std::str::FromStr;

/// A part as `Content-Range` names it (§ 14.4).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Part {
    pub(super) first: u64,
    pub(super) length: u64,
    pub(super) total: u64,
}

impl fmt::Display for Part {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let last = self.first.saturating_add(self.length).saturating_sub(1);
        write!(f, "bytes {}-{last}/{}", self.first, self.total)
    }
}

impl FromStr for Part {
    type Err = ();

    fn from_str(text: &str) -> Result<Self, ()> {
        let (range, total) = text.strip_prefix("bytes ").and_then(|rest| rest.split_once('/')).ok_or(())?;
        let (first, last) = range.split_once('-').ok_or(())?;
        let (first, last, total) = (number(first)?, number(last)?, number(total)?);
        let length = last.checked_sub(first).and_then(|length| length.checked_add(1)).ok_or(())?;
        if last >= total { Err(()) } else { Ok(Self { first, length, total }) }
    }
}

/// The bytes that a `Range` asks for (§ 14.2), of so many; none where there are none of them. Without
/// one, or with one of another form or of several parts, all of it.
pub(super) fn wanted(range: Option<&str>, total: u64) -> Option<Range<u64>> {
    let all = 0..total;
    let Some((first, last)) = range.and_then(|range| range.strip_prefix("bytes=")?.split_once('-')) else {
        return Some(all);
    };
    let range = match (number(first), number(last)) {
        (Ok(first), Ok(last)) if first <= last => first..last.saturating_add(1).min(total),
        (Ok(first), Err(())) if last.is_empty() => first..total,
        (Err(()), Ok(count)) if first.is_empty() => total.saturating_sub(count)..total,
        _ => return Some(all),
    };
    (!range.is_empty()).then_some(range)
}

/// Digits, and nothing else.
fn number(text: &str) -> Result<u64, ()> {
    if text.bytes().all(|byte| byte.is_ascii_digit()) { text.parse().map_err(drop) } else { Err(()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The forms are those of RFC 9110 §§ 14.1.2, 14.2, from memory.
    #[test]
    fn a_range_is_what_the_standard_says() {
        assert_eq!(wanted(None, 100), Some(0..100));
        assert_eq!(wanted(Some("bytes=0-9"), 100), Some(0..10));
        assert_eq!(wanted(Some("bytes=90-200"), 100), Some(90..100));
        assert_eq!(wanted(Some("bytes=40-"), 100), Some(40..100));
        assert_eq!(wanted(Some("bytes=-5"), 100), Some(95..100));
        assert_eq!(wanted(Some("bytes=-500"), 100), Some(0..100));
        assert_eq!(wanted(Some("bytes=100-"), 100), None);
        assert_eq!(wanted(Some("bytes=-0"), 100), None);
        // Other units and several parts may be passed over; a last before the first isn't valid.
        for odd in ["lines=1-2", "bytes=1-2,5-6", "bytes=9-3", "bytes=+1-2", "bytes=-"] {
            assert_eq!(wanted(Some(odd), 100), Some(0..100), "{odd}");
        }
    }

    #[test]
    fn a_part_reads_as_it_is_written() {
        let part = Part { first: 5, length: 10, total: 20 };
        assert_eq!(part.to_string(), "bytes 5-14/20");
        assert_eq!("bytes 5-14/20".parse(), Ok(part));
        for odd in [
            "bytes 5-14/*",
            "bytes */20",
            "bytes 14-5/20",
            "bytes 5-20/20",
            "bytes=5-14/20",
            "bytes +5-14/20",
        ] {
            assert_eq!(odd.parse::<Part>(), Err(()), "{odd}");
        }
        assert_eq!(format!("bytes 0-{}/{}", u64::MAX, u64::MAX).parse::<Part>(), Err(()));
    }
}
