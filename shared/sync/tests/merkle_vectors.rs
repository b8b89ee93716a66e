//! The tree against published values.
//!
//! Leaves, node hashes and roots: the reference tree of Certificate Transparency, as kept in
//! transparency-dev/merkle, testonly/constants.go (text seen). Its proofs: those of the reference
//! implementation's tests (text seen). Shape of the proofs: RFC 6962 § 2.1.3 (from memory).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use witnessmark_sync::merkle::{Frontier, Hash, Tree, Unproven, consistent, included};

const LEAVES: [&[u8]; 8] = [
    b"",
    b"\x00",
    b"\x10",
    b"\x20\x21",
    b"\x30\x31",
    b"\x40\x41\x42\x43",
    b"\x50\x51\x52\x53\x54\x55\x56\x57",
    b"\x60\x61\x62\x63\x64\x65\x66\x67\x68\x69\x6a\x6b\x6c\x6d\x6e\x6f",
];

const LEAF_HASHES: [&str; 8] = [
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
    "0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7",
    "07506a85fd9dd2f120eb694f86011e5bb4662e5c415a62917033d4a9624487e7",
    "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
    "4271a26be0d8a84f0bd54c8c302e7cb3a3b5d1fa6780a40bcce2873477dab658",
    "b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f",
    "46f6ffadd3d06a09ff3c5860d2755c8b9819db7df44251788c7d8e3180de8eb1",
];

const ROOTS: [&str; 9] = [
    "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
    "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
    "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
    "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
];

/// Hash over leaves 2 and 3, 4 and 5, 6 and 7, 4 to 7, of the same constants.
const OVER_2_3: &str = "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e";
const OVER_4_5: &str = "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a";
const OVER_6_7: &str = "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0";
const OVER_4_7: &str = "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4";

fn hash(text: &str) -> Hash {
    text.parse().unwrap()
}

fn tree() -> Tree {
    let mut tree = Tree::default();
    LEAVES.iter().for_each(|leaf| tree.push(leaf));
    tree
}

#[test]
fn leaves_and_roots_are_the_references() {
    for (leaf, wanted) in LEAVES.iter().zip(LEAF_HASHES) {
        assert_eq!(Hash::leaf(leaf), hash(wanted));
    }
    for (size, wanted) in ROOTS.iter().enumerate() {
        let frontier: Frontier = LEAVES.iter().take(size).collect();
        assert_eq!(frontier.root(), hash(wanted), "frontier of {size}");
        assert_eq!(tree().root(size as u64), Some(hash(wanted)), "tree of {size}");
    }
}

#[test]
fn inclusion_paths_are_the_references() {
    // (leaf counted from 0, size, path); the reference's tests count leaves from 1.
    let cases: [(u64, u64, &[&str]); 5] = [
        (0, 1, &[]),
        (0, 8, &[LEAF_HASHES[1], OVER_2_3, OVER_4_7]),
        (5, 8, &[LEAF_HASHES[4], OVER_6_7, ROOTS[4]]),
        (2, 3, &[ROOTS[2]]),
        (1, 5, &[LEAF_HASHES[0], OVER_2_3, LEAF_HASHES[4]]),
    ];
    for (index, size, path) in cases {
        let path: Vec<_> = path.iter().map(|text| hash(text)).collect();
        assert_eq!(tree().inclusion(index, size).as_ref(), Some(&path), "{index} in {size}");
        let root = hash(ROOTS[size as usize]);
        assert_eq!(included(LEAVES[index as usize], index, size, &root, &path), Ok(()));
    }
}

#[test]
fn consistency_paths_are_the_references() {
    let cases: [(u64, u64, &[&str]); 6] = [
        (1, 1, &[]),
        (1, 8, &[LEAF_HASHES[1], OVER_2_3, OVER_4_7]),
        (6, 8, &[OVER_4_5, OVER_6_7, ROOTS[4]]),
        (2, 5, &[OVER_2_3, LEAF_HASHES[4]]),
        (2, 8, &[OVER_2_3, OVER_4_7]),
        (6, 7, &[OVER_4_5, LEAF_HASHES[6], ROOTS[4]]),
    ];
    for (older, size, path) in cases {
        let path: Vec<_> = path.iter().map(|text| hash(text)).collect();
        assert_eq!(tree().consistency(older, size).as_ref(), Some(&path), "{older} to {size}");
        let roots = (hash(ROOTS[older as usize]), hash(ROOTS[size as usize]));
        assert_eq!(consistent(older, &roots.0, size, &roots.1, &path), Ok(()));
    }
}

/// RFC 6962 § 2.1.3 (from memory): the tree of seven leaves d0 to d6, with a = MTH(d0), b = MTH(d1),
/// c, d, e, f likewise, g = over d0 d1, h = over d2 d3, i = over d4 d5, j = MTH(d6), k = over g h,
/// l = over i j. The names of the paths' parts are the RFC's.
#[test]
fn the_example_of_rfc_6962() {
    let [a, b, c, d, e, f, j] = [0, 1, 2, 3, 4, 5, 6].map(|at: usize| Hash::leaf(LEAVES[at]));
    let (g, h, i) = (Hash::node(&a, &b), Hash::node(&c, &d), Hash::node(&e, &f));
    let (k, l) = (Hash::node(&g, &h), Hash::node(&i, &j));
    let tree = tree();
    assert_eq!(tree.root(7), Some(Hash::node(&k, &l)));
    assert_eq!(tree.inclusion(0, 7), Some(vec![b, h, l]));
    assert_eq!(tree.inclusion(3, 7), Some(vec![c, g, l]));
    assert_eq!(tree.inclusion(4, 7), Some(vec![f, j, k]));
    assert_eq!(tree.inclusion(6, 7), Some(vec![i, k]));
    assert_eq!(tree.consistency(3, 7), Some(vec![c, d, g, l]));
    assert_eq!(tree.consistency(4, 7), Some(vec![l]));
    assert_eq!(tree.consistency(6, 7), Some(vec![i, j, k]));
}

#[test]
fn what_never_was_is_not_proved() {
    let tree = tree();
    assert_eq!(tree.root(9), None);
    assert_eq!(tree.inclusion(8, 8), None);
    assert_eq!(tree.inclusion(0, 9), None);
    assert_eq!(tree.consistency(3, 2), None);
    assert_eq!(tree.consistency(3, 9), None);
    assert_eq!(Tree::default().inclusion(0, 0), None);
    assert_eq!(tree.consistency(0, 8), Some(vec![]));
}

#[test]
fn impossible_claims_are_refused() {
    let root = hash(ROOTS[8]);
    let path = tree().inclusion(0, 8).unwrap();
    assert_eq!(included(LEAVES[0], 8, 8, &root, &path), Err(Unproven::Range));
    assert_eq!(included(LEAVES[0], 0, u64::MAX, &root, &path), Err(Unproven::Range));
    assert_eq!(consistent(9, &root, 8, &root, &[]), Err(Unproven::Range));
    assert_eq!(consistent(1, &root, u64::MAX, &root, &path), Err(Unproven::Range));
    // From nothing: only with the empty tree's root, and no path.
    assert_eq!(consistent(0, &Hash::empty(), 8, &root, &[]), Ok(()));
    assert_eq!(consistent(0, &Hash::empty(), 0, &Hash::empty(), &[]), Ok(()));
    assert_eq!(consistent(0, &Hash::empty(), 0, &root, &[]), Err(Unproven::Root));
    assert_eq!(consistent(0, &root, 8, &root, &[]), Err(Unproven::Root));
    assert_eq!(consistent(0, &Hash::empty(), 8, &root, &path), Err(Unproven::Length));
    // The same size: the same root, and no path.
    assert_eq!(consistent(8, &root, 8, &root, &[]), Ok(()));
    assert_eq!(consistent(8, &hash(ROOTS[7]), 8, &root, &[]), Err(Unproven::Root));
    assert_eq!(consistent(8, &root, 8, &root, &path), Err(Unproven::Length));
}

#[test]
fn a_frontier_is_kept_as_json() {
    let frontier: Frontier = LEAVES.iter().take(6).collect();
    let text = serde_json::to_string(&frontier).unwrap();
    assert_eq!(text, format!(r#"{{"size":6,"hashes":["{}","{OVER_4_5}"]}}"#, ROOTS[4]));
    let mut again: Frontier = serde_json::from_str(&text).unwrap();
    assert_eq!(again, frontier);
    LEAVES.iter().skip(6).for_each(|leaf| again.push(leaf));
    assert_eq!((again.size(), again.root()), (8, hash(ROOTS[8])));
}

#[test]
fn a_broken_frontier_is_refused() {
    let one = ROOTS[1];
    for text in [
        format!(r#"{{"size":2,"hashes":["{one}","{one}"]}}"#),
        format!(r#"{{"size":3,"hashes":["{one}"]}}"#),
        r#"{"size":1,"hashes":[]}"#.to_owned(),
        format!(r#"{{"size":1,"hashes":["{}"]}}"#, one.to_uppercase()),
        format!(r#"{{"size":-1,"hashes":["{one}"]}}"#),
        format!(r#"{{"size":1,"hashes":["{one}"],"root":"{one}"}}"#),
    ] {
        assert!(serde_json::from_str::<Frontier>(&text).is_err(), "{text}");
    }
}
