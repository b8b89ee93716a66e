//! A request as both sides see it.

use super::CONTENT_DIGEST;

/// A request, without its signature.
#[derive(Clone, Copy, Debug)]
pub struct Unsigned<'a> {
    /// The method, as sent (RFC 9421 § 2.2.1).
    pub method: &'a str,
    /// Host and port, as in the `Host` header; without the port where it's the scheme's usual one (§ 2.2.3).
    pub authority: &'a str,
    /// The path, as sent (§ 2.2.6).
    pub path: &'a str,
    /// The query without its question mark (§ 2.2.7), if there is one.
    pub query: Option<&'a str>,
    /// The body as sent: compressed, if it is.
    pub body: &'a [u8],
}

impl Unsigned<'_> {
    /// A component's value (§§ 2.1, 2.2); none for one that we don't cover.
    pub(super) fn component(&self, name: &str, content_digest: Option<&str>) -> Option<String> {
        Some(match name {
            "@method" => self.method.to_owned(),
            "@authority" => self.authority.to_ascii_lowercase(),
            "@path" if self.path.is_empty() => "/".to_owned(),
            "@path" => self.path.to_owned(),
            "@query" => format!("?{}", self.query.unwrap_or_default()),
            CONTENT_DIGEST => content_digest?.to_owned(),
            _ => return None,
        })
    }
}
