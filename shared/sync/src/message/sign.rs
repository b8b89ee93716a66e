//! Signing a request.

use sfv::{BareItem, Dictionary, FieldType as _, InnerList, Integer, Item, ListEntry, StringRef};
use sfv::{key_ref, string_ref};
use witnessmark_core::record::SigningSeed;

use super::{ALG, CONTENT_DIGEST, COVERED, Headers, MessageFault, NONCE, TAG};
use super::{Unsigned, content_digest, signature_base};

/// Signs a request (RFC 9421 § 3.1). `created` is in seconds since 1970; the nonce comes from a good
/// source of randomness.
///
/// # Errors
/// [`MessageFault::Parameter`] for a time or nonce that can't be written, [`MessageFault::Value`] for a
/// request that can't be sent.
pub fn sign(
    request: &Unsigned<'_>,
    created: i64,
    nonce: &str,
    seed: &SigningSeed,
) -> Result<Headers, MessageFault> {
    let content_digest = (!request.body.is_empty()).then(|| content_digest(request.body));
    let covered = covered(content_digest.is_some(), created, nonce, seed)?;
    let base = signature_base(&covered, |name| request.component(name, content_digest.as_deref()))?;
    let signature = BareItem::ByteSequence(seed.sign(base.as_bytes()).to_vec());
    Ok(Headers { content_digest, signature_input: labelled(covered), signature: labelled(signature) })
}

fn covered(body: bool, created: i64, nonce: &str, seed: &SigningSeed) -> Result<InnerList, MessageFault> {
    let names = COVERED.into_iter().chain(body.then_some(CONTENT_DIGEST));
    let mut covered = InnerList::new(names.map(|name| Item::new(string_ref(name))).collect());
    let keyid = seed.device().0;
    let keyid = StringRef::from_str(&keyid).map_err(|_| MessageFault::Parameter("keyid"))?;
    let created = Integer::try_from(created).map_err(|_| MessageFault::Parameter("created"))?;
    let nonce = StringRef::from_str(nonce)
        .ok()
        .filter(|nonce| NONCE.contains(&nonce.as_str().len()))
        .ok_or(MessageFault::Parameter("nonce"))?;
    covered.params.extend([
        (key_ref("created").to_owned(), BareItem::from(created)),
        (key_ref("nonce").to_owned(), nonce.into()),
        (key_ref("keyid").to_owned(), keyid.into()),
        (key_ref("alg").to_owned(), string_ref(ALG).into()),
        (key_ref("tag").to_owned(), string_ref(TAG).into()),
    ]);
    Ok(covered)
}

/// A header with one member. Its label says nothing; it only joins the two headers (§ 4).
fn labelled(member: impl Into<ListEntry>) -> String {
    let header = Dictionary::from_iter([(key_ref("sig").to_owned(), member.into())]);
    header.serialize().unwrap_or_default()
}
