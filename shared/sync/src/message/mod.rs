//! Signed requests (RFC 9421, Ed25519 § 3.3.6; body by RFC 9530).
//!
//! One form, strictly: one signature that covers method, authority, path, query and, where there is a
//! body, its digest. What the signature leaves open nobody may rely on, so what isn't covered is
//! refused. Whether `created` is near enough and the nonce new, the server judges: it has the clock.
//!
//! The library `httpsig` knows every algorithm and brings them all along; the hard part of the standard,
//! structured fields, is `sfv`'s here.

mod base;
mod claim;
mod content;
mod fault;
mod headers;
mod request;
mod sign;

pub use base::signature_base;
pub use claim::{Claim, read};
pub use content::content_digest;
pub use fault::MessageFault;
pub use headers::Headers;
pub use request::Unsigned;
pub use sign::sign;

/// What every request covers (RFC 9421 § 2.2); [`CONTENT_DIGEST`] comes on top where there is a body.
const COVERED: [&str; 4] = ["@method", "@authority", "@path", "@query"];
/// The header of the body's digest (RFC 9530 § 2).
const CONTENT_DIGEST: &str = "content-digest";
/// The `alg` parameter (RFC 9421 § 6.2.2).
const ALG: &str = "ed25519";
/// The `tag` parameter: signed for us, not for another protocol that has the same key (§ 2.3).
const TAG: &str = "witnessmark";
/// How long a nonce may be: long enough not to meet by chance, short enough to keep.
const NONCE: std::ops::RangeInclusive<usize> = 8..=64;
