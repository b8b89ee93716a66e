//! The body's digest (RFC 9530 § 2).

use sfv::{BareItem, Dictionary, FieldType as _, ListEntry, key_ref};
use witnessmark_core::record::Digest;

use super::claim::dictionary;
use super::{CONTENT_DIGEST, MessageFault};

/// The `Content-Digest` of a body.
pub fn content_digest(body: &[u8]) -> String {
    let digest = BareItem::ByteSequence(Digest::of(body).0.to_vec());
    let header = Dictionary::from_iter([(key_ref("sha-256").to_owned(), ListEntry::from(digest))]);
    header.serialize().unwrap_or_default()
}

/// The SHA-256 digest in such a header. Others may stand beside it (§ 2): they are passed over.
pub(super) fn read(header: &str) -> Result<Digest, MessageFault> {
    let digests = dictionary(CONTENT_DIGEST, header)?;
    let digest = match digests.get(key_ref("sha-256")) {
        Some(ListEntry::Item(item)) => {
            item.bare_item.as_byte_sequence().and_then(|bytes| bytes.try_into().ok())
        }
        _ => None,
    };
    digest.map(Digest).ok_or(MessageFault::Malformed(CONTENT_DIGEST))
}
