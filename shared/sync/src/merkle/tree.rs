//! The whole tree in memory, for the server, which must prove.
//!
//! The library that checks our proofs (`ct-merkle`) has a tree of its own; but that one proves only
//! for its present size, while a device asks about the checkpoint it was shown, perhaps long ago.

use std::ops::Range;

use super::Hash;

/// All leaves' hashes and those of every complete subtree over them: 64 bytes a leaf.
#[derive(Clone, Debug, Default)]
pub struct Tree {
    /// `levels[k][i]` stands over the leaves from `i·2^k` on, `2^k` of them. A complete subtree never
    /// changes, so what was proved once can be proved for ever.
    levels: Vec<Vec<Hash>>,
}

impl Tree {
    /// How many leaves there are.
    pub fn size(&self) -> u64 {
        self.levels.first().map_or(0, |leaves| leaves.len() as u64)
    }

    /// Appends a leaf.
    pub fn push(&mut self, leaf: &[u8]) {
        let mut hash = Hash::leaf(leaf);
        for level in &mut self.levels {
            level.push(hash);
            match level.as_slice() {
                [.., left, right] if level.len().is_multiple_of(2) => hash = Hash::node(left, right),
                _ => return,
            }
        }
        self.levels.push(vec![hash]);
    }

    /// The root when it had `size` leaves; none if it never had so many.
    pub fn root(&self, size: u64) -> Option<Hash> {
        if size == 0 { Some(Hash::empty()) } else { self.over(0..size) }
    }

    /// The path that proves leaf `index` in the tree of `size` leaves (RFC 9162 § 2.1.3.1, PATH); none
    /// if there is no such leaf or size.
    pub fn inclusion(&self, index: u64, size: u64) -> Option<Vec<Hash>> {
        if index >= size || size > self.size() {
            return None;
        }
        let mut within = 0..size;
        let mut path = Vec::new();
        while let Some((left, right)) = split(&within) {
            let (inside, beside) = if index < left.end { (left, right) } else { (right, left) };
            path.push(self.over(beside)?);
            within = inside;
        }
        path.reverse();
        Some(path)
    }

    /// The path that proves the tree of `size` leaves to have grown from that of `older` leaves (RFC
    /// 9162 § 2.1.4.1, PROOF); none unless `older ≤ size` and the tree has been that large. From an
    /// empty tree, and from one of the same size, nothing needs proof.
    pub fn consistency(&self, older: u64, size: u64) -> Option<Vec<Hash>> {
        if older > size || size > self.size() {
            return None;
        }
        if older == 0 {
            return Some(Vec::new());
        }
        let mut within = 0..size;
        let mut path = Vec::new();
        while within.end != older {
            let (left, right) = split(&within)?;
            let (inside, beside) = if older <= left.end { (left, right) } else { (right, left) };
            path.push(self.over(beside)?);
            within = inside;
        }
        // Where the older tree is itself a subtree at the left edge, the asker has its hash: the root.
        if within.start != 0 {
            path.push(self.over(within)?);
        }
        path.reverse();
        Some(path)
    }

    /// The hash over a range that [`split`] made (MTH).
    fn over(&self, range: Range<u64>) -> Option<Hash> {
        match split(&range) {
            Some((left, right)) if !(range.end - range.start).is_power_of_two() => {
                Some(Hash::node(&self.over(left)?, &self.over(right)?))
            }
            _ => {
                let level = (range.end - range.start).trailing_zeros();
                let at = usize::try_from(range.start >> level).ok()?;
                self.levels.get(level as usize)?.get(at).copied()
            }
        }
    }
}

/// The two subtrees of a node over more than one leaf: the left takes the largest power of two below
/// the number of leaves (RFC 9162 § 2.1.1).
fn split(range: &Range<u64>) -> Option<(Range<u64>, Range<u64>)> {
    let leaves = range.end - range.start;
    let middle = range.start + (1 << leaves.checked_sub(1)?.checked_ilog2()?);
    Some((range.start..middle, middle..range.end))
}
