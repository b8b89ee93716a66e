//! The three headers of a signed request.

use super::{CONTENT_DIGEST, MessageFault};

/// The headers that make a request a signed one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Headers {
    /// `Content-Digest` (RFC 9530 § 2), where there is a body.
    pub content_digest: Option<String>,
    /// `Signature-Input` (RFC 9421 § 4.1).
    pub signature_input: String,
    /// `Signature` (RFC 9421 § 4.2).
    pub signature: String,
}

impl Headers {
    /// Picks them from all headers of a request. The standard joins repeated headers into one; nobody
    /// who means well repeats these.
    ///
    /// # Errors
    /// [`MessageFault::Missing`], [`MessageFault::Repeated`] or [`MessageFault::Malformed`].
    pub fn pick<'a>(all: impl IntoIterator<Item = (&'a str, &'a [u8])>) -> Result<Self, MessageFault> {
        let mut picked = [("signature-input", None), ("signature", None), (CONTENT_DIGEST, None)];
        for (name, value) in all {
            let wanted = picked.iter_mut().find(|(wanted, _)| name.eq_ignore_ascii_case(wanted));
            let Some((name, place)) = wanted else { continue };
            let text = str::from_utf8(value).map_err(|_| MessageFault::Malformed(name))?;
            if place.replace(text.trim_ascii().to_owned()).is_some() {
                return Err(MessageFault::Repeated(name));
            }
        }
        let [(input, signature_input), (name, signature), (_, content_digest)] = picked;
        Ok(Self {
            content_digest,
            signature_input: signature_input.ok_or(MessageFault::Missing(input))?,
            signature: signature.ok_or(MessageFault::Missing(name))?,
        })
    }

    /// Each header with its name, to be set on a request.
    pub fn each(&self) -> impl Iterator<Item = (&'static str, &str)> {
        [("signature-input", self.signature_input.as_str()), ("signature", &self.signature)]
            .into_iter()
            .chain(self.content_digest.iter().map(|digest| (CONTENT_DIGEST, digest.as_str())))
    }
}
