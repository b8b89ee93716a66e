//! Reading and verifying a request's signature.

use ed25519_dalek::Signature;
use sfv::{BareItem, Dictionary, FieldType as _, InnerList, ListEntry, Parameters, Parser};
use witnessmark_core::record::{DeviceId, Digest, Jwk};

use super::{ALG, CONTENT_DIGEST, COVERED, Headers, MessageFault, NONCE, TAG};
use super::{Unsigned, content, signature_base};

/// What a request's signature claims; nothing of it is true until [`Claim::verify`] says so.
#[derive(Clone, Debug)]
pub struct Claim {
    /// The key that it says signed: a device's, or its courier's.
    pub keyid: DeviceId,
    /// When, in seconds since 1970.
    pub created: i64,
    /// What makes it one of a kind.
    pub nonce: String,
    covered: InnerList,
    signature: Signature,
    content_digest: Option<(String, Digest)>,
}

/// Reads the headers of a signed request (RFC 9421 § 3.2, steps 1 to 5).
///
/// # Errors
/// [`MessageFault`].
pub fn read(headers: &Headers) -> Result<Claim, MessageFault> {
    let inputs = dictionary("signature-input", &headers.signature_input)?;
    let signatures = dictionary("signature", &headers.signature)?;
    let (Some((label, input)), Some((same, signature))) = (inputs.first(), signatures.first()) else {
        return Err(MessageFault::Labels);
    };
    if label != same || inputs.len() != 1 || signatures.len() != 1 {
        return Err(MessageFault::Labels);
    }
    let ListEntry::InnerList(covered) = input else { return Err(MessageFault::Malformed("signature-input")) };
    let signature = match signature {
        ListEntry::Item(item) if item.params.is_empty() => item.bare_item.as_byte_sequence(),
        _ => None,
    };
    let signature = signature.and_then(|bytes| Signature::from_slice(bytes).ok());
    let signature = signature.ok_or(MessageFault::Malformed("signature"))?;
    let content_digest = match &headers.content_digest {
        Some(header) => Some((header.clone(), content::read(header)?)),
        None => None,
    };
    check_covered(covered, content_digest.is_some())?;
    let params = &covered.params;
    Ok(Claim {
        keyid: DeviceId(text(params, "keyid")?),
        created: created(params)?,
        nonce: text(params, "nonce")?,
        covered: check_params(covered.clone())?,
        signature,
        content_digest,
    })
}

impl Claim {
    /// Whether this key signed this request (RFC 9421 § 3.2, steps 6 to 9).
    ///
    /// # Errors
    /// [`MessageFault`].
    pub fn verify(&self, request: &Unsigned<'_>, key: &Jwk) -> Result<(), MessageFault> {
        if key.thumbprint() != self.keyid {
            return Err(MessageFault::OtherKey);
        }
        let header = match &self.content_digest {
            Some((_, digest)) if *digest != Digest::of(request.body) => return Err(MessageFault::Body),
            Some((header, _)) => Some(header.as_str()),
            None if request.body.is_empty() => None,
            None => return Err(MessageFault::Uncovered(CONTENT_DIGEST)),
        };
        let base = signature_base(&self.covered, |name| request.component(name, header))?;
        let key = key.verifying_key()?;
        key.verify_strict(base.as_bytes(), &self.signature).map_err(|_| MessageFault::Forged)
    }
}

/// A header as a dictionary. Its one right form only: two members of a name, where the last would win in
/// silence, then never get by.
pub(super) fn dictionary(name: &'static str, header: &str) -> Result<Dictionary, MessageFault> {
    let read: Dictionary = Parser::new(header).parse().map_err(|_| MessageFault::Malformed(name))?;
    if read.serialize().as_deref() == Some(header) { Ok(read) } else { Err(MessageFault::Malformed(name)) }
}

/// Each component known, none twice, none left out.
fn check_covered(covered: &InnerList, digest: bool) -> Result<(), MessageFault> {
    let mut open: Vec<&'static str> = COVERED.into_iter().chain(digest.then_some(CONTENT_DIGEST)).collect();
    for item in &covered.items {
        let name = item.bare_item.as_string().filter(|_| item.params.is_empty());
        let at = name.and_then(|name| open.iter().position(|open| *open == name.as_str()));
        match at {
            Some(at) => open.remove(at),
            None => return Err(MessageFault::Component(item.serialize())),
        };
    }
    open.first().map_or(Ok(()), |name| Err(MessageFault::Uncovered(name)))
}

/// The parameters that are the same for every request, and no unknown ones: one such might limit what the
/// signature is good for.
fn check_params(covered: InnerList) -> Result<InnerList, MessageFault> {
    for (name, value) in [("alg", ALG), ("tag", TAG)] {
        if text(&covered.params, name)? != value {
            return Err(MessageFault::Parameter(name));
        }
    }
    if !NONCE.contains(&text(&covered.params, "nonce")?.len()) {
        return Err(MessageFault::Parameter("nonce"));
    }
    let known = ["created", "nonce", "keyid", "alg", "tag"];
    match covered.params.keys().find(|key| !known.contains(&key.as_str())) {
        Some(unknown) => Err(MessageFault::UnknownParameter(unknown.as_str().to_owned())),
        None => Ok(covered),
    }
}

fn text(params: &Parameters, name: &'static str) -> Result<String, MessageFault> {
    let text = params.get(name).and_then(BareItem::as_string);
    text.map(|text| text.as_str().to_owned()).ok_or(MessageFault::Parameter(name))
}

fn created(params: &Parameters) -> Result<i64, MessageFault> {
    let created = params.get("created").and_then(BareItem::as_integer);
    created.map(i64::from).ok_or(MessageFault::Parameter("created"))
}
