//! `merkle-root`: the root over a list of leaves, and the path that proves each.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_sync::merkle::Tree;

use super::{Computation, Wrong, read};

pub const IT: Computation =
    Computation { name: "merkle-root", example: r#"{"leaves": ["", "00", "10", "2021"]}"#, run };

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    /// Each leaf's bytes in hexadecimal: of any length, though a log's are the 32 of a digest.
    leaves: Vec<String>,
    /// What the tree was before, if its growth is to be proved too.
    older: Option<u64>,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { leaves, older } = read(input)?;
    let mut tree = Tree::default();
    for (at, leaf) in leaves.iter().enumerate() {
        let wrong = |why: hex::FromHexError| Wrong(format!("leaves[{at}]: {why}"));
        tree.push(&hex::decode(leaf).map_err(wrong)?);
    }
    let size = tree.size();
    let proofs: Option<Vec<_>> = (0..size).map(|index| tree.inclusion(index, size)).collect();
    let consistency = match older {
        Some(older) => Some(tree.consistency(older, size).ok_or_else(|| {
            Wrong(format!("older: a tree of {size} leaves hasn't grown from one of {older}"))
        })?),
        None => None,
    };
    Ok(json!({
        "size": size, "root": tree.root(size), "proofs": proofs, "consistency": consistency,
    }))
}
