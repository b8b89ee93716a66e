//! What a device keeps of a log: enough to know its root and to go on from there.

use serde::{Deserialize, Serialize};

use super::Hash;

/// A tree's size and the hashes of its complete subtrees, largest first: one for each bit set in the
/// size (RFC 9162 § 2.1.2 calls such a thing a stack). At most 64 hashes, whatever the log's length.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Written")]
pub struct Frontier {
    size: u64,
    hashes: Vec<Hash>,
}

/// A frontier as it was kept, before it's checked.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    size: u64,
    hashes: Vec<Hash>,
}

/// A frontier that can't be one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Broken {
    /// Not one hash for each bit of the size.
    #[error("a tree of {size} leaves has {} complete subtrees, not {found}", size.count_ones())]
    Count {
        /// The size it gives.
        size: u64,
        /// How many hashes there were.
        found: usize,
    },
}

impl TryFrom<Written> for Frontier {
    type Error = Broken;

    fn try_from(Written { size, hashes }: Written) -> Result<Self, Broken> {
        if u32::try_from(hashes.len()) != Ok(size.count_ones()) {
            return Err(Broken::Count { size, found: hashes.len() });
        }
        Ok(Self { size, hashes })
    }
}

impl Frontier {
    /// How many leaves it has taken.
    pub fn size(&self) -> u64 {
        self.size
    }

    /// Takes the next leaf.
    pub fn push(&mut self, leaf: &[u8]) {
        let mut hash = Hash::leaf(leaf);
        // Counting up by one carries over each trailing bit set: those subtrees join into one.
        for _ in 0..self.size.trailing_ones() {
            if let Some(left) = self.hashes.pop() {
                hash = Hash::node(&left, &hash);
            }
        }
        self.hashes.push(hash);
        self.size += 1;
    }

    /// The tree's root (RFC 9162 § 2.1.1).
    pub fn root(&self) -> Hash {
        let smallest_first = self.hashes.iter().rev().copied();
        smallest_first.reduce(|right, left| Hash::node(&left, &right)).unwrap_or_else(Hash::empty)
    }
}

/// The tree of all these leaves: `leaves.take(n).collect::<Frontier>().root()` is the root at size n.
impl<L: AsRef<[u8]>> FromIterator<L> for Frontier {
    fn from_iter<I: IntoIterator<Item = L>>(leaves: I) -> Self {
        let mut frontier = Self::default();
        leaves.into_iter().for_each(|leaf| frontier.push(leaf.as_ref()));
        frontier
    }
}
