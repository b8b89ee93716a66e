//! Checking what a server proves.
//!
//! A path binds a leaf to a root, not to a size: some paths fit trees of several sizes. Size and root
//! belong together only by the signature on the checkpoint that names both.

use ct_merkle::{ConsistencyProof, InclusionProof, RootHash, digest::Output};
use sha2::Sha256;

use super::Hash;

/// The largest tree that a proof is checked for. Far beyond what anybody can keep; the arithmetic on
/// node numbers stays far from its bounds, whatever size a server claims.
pub const LARGEST: u64 = 1 << 53;

/// Why a proof shows nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Unproven {
    /// The leaf isn't below the size, the older tree is larger, or a size is beyond [`LARGEST`].
    #[error("the proof is for a place or size that can't be")]
    Range,
    /// The path has more or fewer hashes than such a proof has.
    #[error("the proof has the wrong length")]
    Length,
    /// The path doesn't lead to the root.
    #[error("the proof doesn't lead to the root: the log isn't what it was said to be")]
    Root,
}

/// Whether `leaf` stands at `index` in the tree of this size and root (RFC 9162 § 2.1.3.2).
///
/// # Errors
/// [`Unproven`].
pub fn included(leaf: &[u8], index: u64, size: u64, root: &Hash, path: &[Hash]) -> Result<(), Unproven> {
    if index >= size || size > LARGEST {
        return Err(Unproven::Range);
    }
    let proof = InclusionProof::<Sha256>::from_digests(&outputs(path));
    tree(root, size).verify_inclusion(&leaf, index, &proof).map_err(|why| match why {
        ct_merkle::InclusionVerifError::MalformedProof => Unproven::Length,
        _ => Unproven::Root,
    })
}

/// Whether the tree of `size` leaves grew from that of `older` leaves by appending alone (RFC 9162 §
/// 2.1.4.2). The RFC leaves an older size of 0 open: any tree grew from the empty one.
///
/// # Errors
/// [`Unproven`].
pub fn consistent(
    older: u64,
    older_root: &Hash,
    size: u64,
    root: &Hash,
    path: &[Hash],
) -> Result<(), Unproven> {
    if older > size || size > LARGEST {
        return Err(Unproven::Range);
    }
    if older == 0 {
        let nothing = *older_root == Hash::empty() && (size > 0 || root == older_root);
        return match (path, nothing) {
            ([], true) => Ok(()),
            ([], false) => Err(Unproven::Root),
            _ => Err(Unproven::Length),
        };
    }
    let proof = ConsistencyProof::<Sha256>::from_digests(&outputs(path));
    tree(root, size).verify_consistency(&tree(older_root, older), &proof).map_err(|why| match why {
        ct_merkle::ConsistencyVerifError::MalformedProof => Unproven::Length,
        _ => Unproven::Root,
    })
}

fn outputs(path: &[Hash]) -> Vec<Output<Sha256>> {
    path.iter().map(|hash| Output::<Sha256>::from(*hash.as_bytes())).collect()
}

fn tree(root: &Hash, size: u64) -> RootHash<Sha256> {
    RootHash::new(Output::<Sha256>::from(*root.as_bytes()), size)
}
