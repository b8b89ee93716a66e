//! The server's own key, which signs checkpoints. It lies in the database: whoever can write there can
//! rewrite the log anyway, and what was signed before is in the devices' hands.

use witnessmark_core::record::{Digest, SigningSeed};
use witnessmark_sync::checkpoint::Checkpoint;
use witnessmark_sync::note::Verifier;

use crate::shelf::{School, Shelf};
use crate::{ServerFault, ShelfFault};

const NAME: &str = "server-key";

/// The key, made at the first start.
pub(super) fn of(shelf: &Shelf, school: School) -> Result<(SigningSeed, Verifier), ServerFault> {
    let mut fresh = [0; 32];
    getrandom::fill(&mut fresh).map_err(|why| ServerFault::Randomness(why.to_string()))?;
    // Thirty-two bytes written as a digest is: the form has nothing to do with what they are.
    let kept = shelf.set_once(school, NAME, &Digest(fresh).to_string())?;
    let damaged = |_| ShelfFault::Damaged("the server's key can't be read".into());
    let seed = SigningSeed::from_bytes(&kept.parse::<Digest>().map_err(damaged)?.0);
    let verifier = Verifier::new(&Checkpoint::origin(&school.0), &seed.jwk())
        .map_err(|why| ShelfFault::Damaged(why.to_string()))?;
    Ok((seed, verifier))
}
