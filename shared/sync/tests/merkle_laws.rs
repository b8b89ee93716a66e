//! The tree's laws, for every size up to 200, and against two others' arithmetic: the verification
//! steps of RFC 9162 §§ 2.1.3.2 and 2.1.4.2, written out below as the RFC counts them (from memory),
//! and the tree of the library `ct-merkle`.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use ct_merkle::mem_backed_tree::MemoryBackedTree;
use proptest::prelude::*;
use sha2::Sha256;
use witnessmark_sync::merkle::{Frontier, Hash, Tree, consistent, included};

const MOST: u64 = 200;

fn leaf(at: u64) -> [u8; 32] {
    *Hash::leaf(&at.to_be_bytes()).as_bytes()
}

fn tree(size: u64) -> Tree {
    let mut tree = Tree::default();
    (0..size).for_each(|at| tree.push(&leaf(at)));
    tree
}

/// RFC 9162 § 2.1.3.2, step by step.
fn included_by_rfc(leaf: &[u8], index: u64, size: u64, root: &Hash, path: &[Hash]) -> bool {
    if index >= size {
        return false;
    }
    let (mut at, mut last, mut found) = (index, size - 1, Hash::leaf(leaf));
    for beside in path {
        if last == 0 {
            return false;
        }
        if at & 1 == 1 || at == last {
            found = Hash::node(beside, &found);
            while at & 1 == 0 && at != 0 {
                at >>= 1;
                last >>= 1;
            }
        } else {
            found = Hash::node(&found, beside);
        }
        at >>= 1;
        last >>= 1;
    }
    last == 0 && found == *root
}

/// RFC 9162 § 2.1.4.2, step by step, for 0 < older < size.
fn consistent_by_rfc(older: u64, older_root: &Hash, size: u64, root: &Hash, path: &[Hash]) -> bool {
    let mut path = path.to_vec();
    if older.is_power_of_two() {
        path.insert(0, *older_root);
    }
    let Some((first, rest)) = path.split_first() else { return false };
    let (mut at, mut last) = (older - 1, size - 1);
    while at & 1 == 1 {
        at >>= 1;
        last >>= 1;
    }
    let (mut found_older, mut found) = (*first, *first);
    for beside in rest {
        if last == 0 {
            return false;
        }
        if at & 1 == 1 || at == last {
            found_older = Hash::node(beside, &found_older);
            found = Hash::node(beside, &found);
            while at & 1 == 0 && at != 0 {
                at >>= 1;
                last >>= 1;
            }
        } else {
            found = Hash::node(&found, beside);
        }
        at >>= 1;
        last >>= 1;
    }
    last == 0 && found_older == *older_root && found == *root
}

#[test]
fn a_frontier_knows_the_root_of_every_size() {
    let tree = tree(MOST);
    let mut frontier = Frontier::default();
    for size in 0..=MOST {
        assert_eq!(frontier.size(), size);
        assert_eq!(Some(frontier.root()), tree.root(size), "{size}");
        frontier.push(&leaf(size));
    }
}

#[test]
fn every_inclusion_proof_holds() {
    let tree = tree(MOST);
    for size in 1..=MOST {
        let root = tree.root(size).unwrap();
        for index in 0..size {
            let path = tree.inclusion(index, size).unwrap();
            assert_eq!(included(&leaf(index), index, size, &root, &path), Ok(()), "{index} in {size}");
            assert!(included_by_rfc(&leaf(index), index, size, &root, &path), "{index} in {size}");
        }
    }
}

#[test]
fn every_consistency_proof_holds() {
    let tree = tree(MOST);
    for size in 1..=MOST {
        let root = tree.root(size).unwrap();
        for older in 0..=size {
            let (path, was) = (tree.consistency(older, size).unwrap(), tree.root(older).unwrap());
            assert_eq!(consistent(older, &was, size, &root, &path), Ok(()), "{older} to {size}");
            if older > 0 && older < size {
                assert!(consistent_by_rfc(older, &was, size, &root, &path), "{older} to {size}");
            }
        }
    }
}

#[test]
fn another_tree_gives_the_same_roots_and_proofs() {
    let ours = tree(MOST);
    let mut theirs = MemoryBackedTree::<Sha256, [u8; 32]>::new();
    let bytes = |path: Vec<Hash>| path.iter().flat_map(|hash| *hash.as_bytes()).collect::<Vec<u8>>();
    for size in 1..=MOST {
        theirs.push(leaf(size - 1));
        assert_eq!(theirs.root().as_bytes().as_slice(), ours.root(size).unwrap().as_bytes());
        for at in 0..size {
            let proof = theirs.prove_inclusion(at as usize);
            assert_eq!(proof.as_bytes(), bytes(ours.inclusion(at, size).unwrap()), "{at} in {size}");
            let proof = theirs.prove_consistency(at as usize);
            let older = size - at;
            assert_eq!(proof.as_bytes(), bytes(ours.consistency(older, size).unwrap()), "{older} to {size}");
        }
    }
}

/// One bit of one hash turned.
fn flipped(path: &[Hash], at: usize) -> Vec<Hash> {
    let mut path = path.to_vec();
    let mut bytes = *path[at / 256].as_bytes();
    bytes[at % 256 / 8] ^= 1 << (at % 8);
    path[at / 256] = Hash::from_bytes(bytes);
    path
}

#[test]
fn every_bit_of_a_proof_counts() {
    let tree = tree(MOST);
    for (index, size) in [(0, 2), (0, 7), (6, 7), (63, 64), (100, 137), (199, 200)] {
        let (root, path) = (tree.root(size).unwrap(), tree.inclusion(index, size).unwrap());
        for bit in 0..path.len() * 256 {
            assert!(included(&leaf(index), index, size, &root, &flipped(&path, bit)).is_err(), "{bit}");
        }
    }
    for (older, size) in [(1, 2), (3, 7), (6, 7), (64, 137), (100, 137), (199, 200)] {
        let (was, root) = (tree.root(older).unwrap(), tree.root(size).unwrap());
        let path = tree.consistency(older, size).unwrap();
        for bit in 0..path.len() * 256 {
            assert!(consistent(older, &was, size, &root, &flipped(&path, bit)).is_err(), "{bit}");
        }
    }
}

/// A size, and a place below it.
fn place() -> impl Strategy<Value = (u64, u64)> {
    (1..=MOST).prop_flat_map(|size| (Just(size), 0..size))
}

proptest! {
    /// A leaf is proved only at its own place: any other index, leaf, root or length fails. Of other
    /// sizes some fit the same path; those, the RFC's own steps let through too, and with that size's
    /// real root none does.
    #[test]
    fn a_false_inclusion_is_refused((size, index) in place(), other in 0..MOST, more in 1..=MOST) {
        let tree = tree(MOST);
        let (root, path) = (tree.root(size).unwrap(), tree.inclusion(index, size).unwrap());
        let mine = leaf(index);
        if other != index {
            prop_assert!(included(&mine, other, size, &root, &path).is_err());
            prop_assert!(included(&leaf(other), index, size, &root, &path).is_err());
        }
        if more != size {
            let theirs = tree.root(more).unwrap();
            prop_assert!(included(&mine, index, size, &theirs, &path).is_err());
            prop_assert!(included(&mine, index, more, &theirs, &path).is_err());
            let ours = included(&mine, index, more, &root, &path).is_ok();
            prop_assert_eq!(ours, included_by_rfc(&mine, index, more, &root, &path));
        }
        let longer: Vec<_> = path.iter().copied().chain([root]).collect();
        prop_assert!(included(&mine, index, size, &root, &longer).is_err());
        if let [_, shorter @ ..] = path.as_slice() {
            prop_assert!(included(&mine, index, size, &root, shorter).is_err());
        }
    }

    /// The same for growth.
    #[test]
    fn a_false_growth_is_refused((size, older) in place(), more in 1..=MOST) {
        prop_assume!(older > 0);
        let tree = tree(MOST);
        let (was, root) = (tree.root(older).unwrap(), tree.root(size).unwrap());
        let path = tree.consistency(older, size).unwrap();
        if more != older {
            let theirs = tree.root(more).unwrap();
            prop_assert!(consistent(older, &theirs, size, &root, &path).is_err());
            prop_assert!(consistent(more, &theirs, size, &root, &path).is_err() || more == size);
        }
        if more != size {
            let theirs = tree.root(more).unwrap();
            prop_assert!(consistent(older, &was, size, &theirs, &path).is_err());
            prop_assert!(consistent(older, &was, more, &theirs, &path).is_err());
            if more > older {
                let ours = consistent(older, &was, more, &root, &path).is_ok();
                prop_assert_eq!(ours, consistent_by_rfc(older, &was, more, &root, &path));
            }
        }
        let longer: Vec<_> = path.iter().copied().chain([root]).collect();
        prop_assert!(consistent(older, &was, size, &root, &longer).is_err());
    }

    /// A log that left out, changed or swapped a record is no growth of what it was.
    #[test]
    fn a_rewritten_log_is_found_out((size, older) in place(), at in 0..MOST, how in 0..3) {
        prop_assume!(older > 1 && at < older - 1);
        let mut leaves: Vec<_> = (0..size).map(leaf).collect();
        let at = at as usize;
        match how {
            0 => { leaves.remove(at); leaves.push(leaf(MOST)); }
            1 => leaves[at][0] ^= 1,
            _ => leaves.swap(at, at + 1),
        }
        let mut false_tree = Tree::default();
        leaves.iter().for_each(|leaf| false_tree.push(leaf));
        let was = tree(older).root(older).unwrap();
        let (root, path) = (false_tree.root(size).unwrap(), false_tree.consistency(older, size).unwrap());
        prop_assert!(consistent(older, &was, size, &root, &path).is_err());
    }

    /// Whatever a server sends, checking it ends in an answer.
    #[test]
    fn any_claim_is_answered(
        index in any::<u64>(), size in any::<u64>(), older in any::<u64>(),
        path in prop::collection::vec(any::<[u8; 32]>(), 0..70),
    ) {
        let path: Vec<_> = path.into_iter().map(Hash::from_bytes).collect();
        let root = Hash::leaf(b"");
        prop_assert!(included(b"x", index, size, &root, &path).is_err());
        prop_assert!(consistent(older, &root, size, &root, &path).is_err() || older == size);
        let (index, older) = (index >> 11, older >> 11);
        let size = index.max(older);
        prop_assert!(included(b"x", index, size, &root, &path).is_err());
        prop_assert!(consistent(older, &root, size, &root, &path).is_err() || older == size);
    }
}
