//! Why a signed request is refused.

use witnessmark_core::record::KeyFault;

/// Why a request can't be signed, or its signature isn't believed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum MessageFault {
    /// A header is missing.
    #[error("the request has no {0} header: sign it (RFC 9421)")]
    Missing(&'static str),
    /// A header stands there twice.
    #[error("the request has more than one {0} header")]
    Repeated(&'static str),
    /// A header isn't a structured field in its one form: a member twice, or spaces too many.
    #[error("the {0} header is not in the form of RFC 9651")]
    Malformed(&'static str),
    /// Not exactly one signature, of one label in both headers.
    #[error("the request needs exactly one signature, under the same label in both headers")]
    Labels,
    /// The signature leaves something open.
    #[error("the signature doesn't cover {0}")]
    Uncovered(&'static str),
    /// The signature covers what we don't know how to compute, or the same twice.
    #[error("the signature covers {0}, which isn't covered here")]
    Component(String),
    /// A parameter is missing or isn't what it must be.
    #[error("the signature's parameter {0} is missing or unusable")]
    Parameter(&'static str),
    /// A parameter that we don't know, and so can't heed.
    #[error("the signature has the unknown parameter {0}")]
    UnknownParameter(String),
    /// Method, authority, path or query has characters that can't stand in a request.
    #[error("{0} has characters that can't stand in a request")]
    Value(String),
    /// The body isn't the one whose digest was signed.
    #[error("the body isn't the one that was signed: it was changed on the way")]
    Body,
    /// The key at hand isn't the one that the request names.
    #[error("the request is signed with another key")]
    OtherKey,
    /// The key can't be used.
    #[error(transparent)]
    Key(#[from] KeyFault),
    /// The signature is false.
    #[error("the signature on the request is false")]
    Forged,
}
