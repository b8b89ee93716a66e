//! Signed notes (C2SP signed-note): a text, an empty line, and a line for each signature.
//!
//! Only the plain Ed25519 signature type is known here; lines by other keys and of other types are
//! passed over, so that a server may one day change its key or have a witness sign beside it.

use std::fmt;
use std::str::FromStr;

use base64ct::{Base64, Encoding};
use ed25519_dalek::{Signature, VerifyingKey};
use sha2::{Digest as _, Sha256};
use witnessmark_core::record::{Jwk, KeyFault, SigningSeed};

/// The signature type identifier of Ed25519 (§ Signature types).
const ED25519: u8 = 0x01;
/// What stands before a signature: an em dash and a space (§ Format).
const DASH: &str = "\u{2014} ";
/// How many signature lines are read; the standard asks for 16 at least.
const MOST: usize = 64;

/// Whose signature on a note is believed: a name and an Ed25519 key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Verifier {
    name: String,
    id: [u8; 4],
    key: VerifyingKey,
}

/// Why a note, or the text of a verifier, can't be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NoteFault {
    /// Not in the form of a signed note.
    #[error("this is not a signed note: {0}")]
    Malformed(&'static str),
    /// A key's name may not be empty nor hold spaces or a plus sign.
    #[error("“{0}” can't be the name of a key: it is empty or has a space or a plus sign")]
    Name(String),
    /// The text of a verifier isn't `name+id+key`, or its id belongs to another key.
    #[error("this is not a verifier key: {0}")]
    Verifier(&'static str),
    /// The key can't be used.
    #[error(transparent)]
    Key(#[from] KeyFault),
    /// No line is by the wanted key.
    #[error("{0} hasn't signed this note")]
    Unsigned(String),
    /// A line claims to be by the wanted key, and isn't.
    #[error("the signature of {0} on this note is false")]
    Forged(String),
}

impl Verifier {
    /// The verifier of this name and key.
    ///
    /// # Errors
    /// [`NoteFault::Name`] or [`NoteFault::Key`].
    pub fn new(name: &str, key: &Jwk) -> Result<Self, NoteFault> {
        if name.is_empty() || name.contains(|c: char| c == '+' || c.is_whitespace() || c.is_control()) {
            return Err(NoteFault::Name(name.to_owned()));
        }
        let key = key.verifying_key()?;
        let hash: [u8; 32] = Sha256::new()
            .chain_update(name)
            .chain_update([b'\n', ED25519])
            .chain_update(key.as_bytes())
            .finalize()
            .into();
        let [a, b, c, d, ..] = hash;
        Ok(Self { name: name.to_owned(), id: [a, b, c, d], key })
    }

    /// The key's name.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The key's id: the first four bytes of a hash over name, type and key (§ Ed25519 signatures). It
    /// finds a line; it proves nothing.
    pub fn id(&self) -> [u8; 4] {
        self.id
    }

    /// The note's text, when this key has signed it.
    ///
    /// # Errors
    /// [`NoteFault`].
    pub fn open<'a>(&self, note: &'a str) -> Result<&'a str, NoteFault> {
        let (text, signatures) = parse(note)?;
        let mut signed = false;
        for Line { signature, .. } in signatures.iter().filter(|line| line.name == self.name) {
            let Some(signature) = signature.strip_prefix(&self.id) else { continue };
            let forged = || NoteFault::Forged(self.name.clone());
            let signature = Signature::from_slice(signature).map_err(|_| forged())?;
            self.key.verify_strict(text.as_bytes(), &signature).map_err(|_| forged())?;
            signed = true;
        }
        if signed { Ok(text) } else { Err(NoteFault::Unsigned(self.name.clone())) }
    }
}

/// The verifier's text, as it's handed to others: `name+id+base64(type, key)`.
impl fmt::Display for Verifier {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let key: Vec<u8> = [ED25519].iter().chain(self.key.as_bytes()).copied().collect();
        write!(f, "{}+{:08x}+{}", self.name, u32::from_be_bytes(self.id), Base64::encode_string(&key))
    }
}

impl FromStr for Verifier {
    type Err = NoteFault;

    fn from_str(text: &str) -> Result<Self, NoteFault> {
        let mut parts = text.splitn(3, '+');
        let (Some(name), Some(_), Some(key)) = (parts.next(), parts.next(), parts.next()) else {
            return Err(NoteFault::Verifier("it has three parts with a plus sign between them"));
        };
        let key = Base64::decode_vec(key).map_err(|_| NoteFault::Verifier("its key is not base64"))?;
        let [ED25519, key @ ..] = key.as_slice() else {
            return Err(NoteFault::Verifier("only Ed25519 keys are known here"));
        };
        let key = key.try_into().map_err(|_| NoteFault::Verifier("its key is not 32 bytes long"))?;
        let read = Self::new(name, &Jwk::from_bytes(key))?;
        // One key has one text: an id of another key, or written otherwise, is a mistake in copying.
        if read.to_string() == text { Ok(read) } else { Err(NoteFault::Verifier("its id is another key's")) }
    }
}

/// The note of this text, signed under this name (§ Signatures).
///
/// # Errors
/// [`NoteFault::Malformed`] if it can't be a note's text, [`NoteFault::Name`] if it can't be a name.
pub fn sign(text: &str, name: &str, seed: &SigningSeed) -> Result<String, NoteFault> {
    let verifier = Verifier::new(name, &seed.jwk())?;
    if !text.ends_with('\n') || text.contains(forbidden) {
        return Err(NoteFault::Malformed("its text doesn't end in a line end, or has control characters"));
    }
    let signature: Vec<u8> = verifier.id.into_iter().chain(seed.sign(text.as_bytes())).collect();
    Ok(format!("{text}\n{DASH}{name} {}\n", Base64::encode_string(&signature)))
}

/// A signature line: the key's id and the signature are still together.
struct Line<'a> {
    name: &'a str,
    signature: Vec<u8>,
}

/// A note's text and signature lines, unverified (§ Format).
fn parse(note: &str) -> Result<(&str, Vec<Line<'_>>), NoteFault> {
    if note.contains(forbidden) {
        return Err(NoteFault::Malformed("it has control characters"));
    }
    // The last empty line parts text and signatures; the text keeps its own line end.
    let at = note.rfind("\n\n").ok_or(NoteFault::Malformed("it has no empty line before the signatures"))?;
    let (text, rest) = note.split_at(at + 1);
    let lines = rest.strip_prefix('\n').and_then(|lines| lines.strip_suffix('\n'));
    let lines = lines.ok_or(NoteFault::Malformed("its last line has no end"))?;
    if lines.split('\n').count() > MOST {
        return Err(NoteFault::Malformed("it has too many signatures"));
    }
    Ok((text, lines.split('\n').map(line).collect::<Result<_, _>>()?))
}

fn line(line: &str) -> Result<Line<'_>, NoteFault> {
    let fault = NoteFault::Malformed("a signature line is not “— name base64”");
    let (name, signature) =
        line.strip_prefix(DASH).and_then(|rest| rest.split_once(' ')).ok_or(fault.clone())?;
    let signature = Base64::decode_vec(signature).map_err(|_| fault.clone())?;
    if name.is_empty() || name.contains(|c: char| c == '+' || c.is_whitespace()) || signature.len() < 5 {
        return Err(fault);
    }
    Ok(Line { name, signature })
}

/// ASCII control characters other than the line end (§ Format).
fn forbidden(c: char) -> bool {
    c < ' ' && c != '\n'
}
