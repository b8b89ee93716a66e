//! A second look without a network: what one phone shows the other as a code, both ways.
//!
//! The asking phone shows the job, the machine and the joints. The other signs, and shows its own
//! member record and its second looks at this machine. What can be computed again (header, key name)
//! or is known from the request is left out, keys, digests and signatures go as bytes, the rest is
//! deflated (RFC 1951) against a skeleton of such records. Written in base 45 (RFC 9285), it fits one
//! QR code of version 15 at level M (600 characters), with names of usual length.

use std::collections::BTreeMap;

use base64ct::{Base64UrlUnpadded, Encoding};
use miniz_oxide::deflate::core::{CompressorOxide, TDEFLFlush, TDEFLStatus, compress_to_output};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{Body, DeviceId, Digest, Envelope, EnvelopeFault, Record};

/// How a request begins; upper case, so that a QR code's alphanumeric mode takes it.
const ASKS: &str = "WM1ASK:";
/// How a reply begins.
const LOOKED: &str = "WM1LOOK:";
/// Longest text that is unpacked, bytes: a reply of some ten looks.
const LONGEST: usize = 64 * 1024;

/// What both sides' texts are made of once squeezed (see [`squeeze`]), most frequent last.
const SKELETON: &str = concat!(
    "{\"by\":\u{3},\"job\":\u{1},\"joints\":{\"head-nuts\":\"Head nuts\",\"propeller-bolts\":\"Propeller bolts\"},",
    "\"machine\":\u{2},\"name\":\"\",\"seq\":1,\"title\":\"\"}",
    "[[\"{\\\"at\\\":\\\"2026-05-01T09:00:00+01:00\\\",",
    "{\"at\":\"2026-10-01T07:00:00.+02:00\",\"body\":{\"invented\":true,\"key\":{\"crv\":\"Ed25519\",\"kty\":\"OKP\",\"x\":\u{3}},",
    "\"name\":\"\",\"person\":\u{2}},\"clock\":{\"ms\":179,\"n\":0},\"device\":\u{7},\"id\":\u{2},\"kind\":\"member\",",
    "\"of_seq\":1,\"seen\":{},\"seq\":1,\"v\":1}\u{4}",
    "{\"at\":\"2026-0T1:.+00:00\",\"body\":{\"job\":\u{5},\"joints\":[{\"joint\":\"\",\"means\":\"unserviceable\",\"note\":\"\"},",
    "{\"joint\":\"\",\"means\":\"serviceable\"}]},\"clock\":{\"ms\":178,\"n\":0},\"device\":\u{7},\"id\":\u{2},",
    "\"kind\":\"second-look\",\"machine\":\u{6},\"of_prev\":\u{1},\"of_seq\":1,\"prev\":\u{1},\"seen\":{\u{3}:1,\u{8}:2},\"seq\":2,\"v\":1}\u{4}",
);

/// What a phone asks another person to look at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SecondLookAsk {
    /// The record that began the job.
    pub job: Digest,
    /// The machine.
    pub machine: Uuid,
    /// What people call it.
    pub name: String,
    /// The job in words.
    pub title: String,
    /// Joints to look at, each in words.
    pub joints: BTreeMap<String, String>,
    /// The device that asks.
    pub by: DeviceId,
    /// Its latest number: what the second person then knows of it.
    pub seq: u64,
}

/// What the other phone answers: records, in order, the member record first.
#[derive(Clone, Debug, PartialEq)]
pub struct SecondLookReply {
    /// The second person's member record and second looks at this machine.
    pub records: Vec<Record>,
}

/// Why a text can't be taken.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PackFault {
    /// It isn't one of these texts, or parts of it are missing.
    #[error("this is not such a code, or not all of it")]
    Unreadable,
    /// It answers another request.
    #[error("this code answers another request")]
    Other,
    /// A record in it is none.
    #[error(transparent)]
    Record(#[from] EnvelopeFault),
}

impl SecondLookAsk {
    /// As a text.
    pub fn text(&self) -> String {
        // Strings and integers always serialise.
        let plain = serde_json_canonicalizer::to_string(self).unwrap_or_default();
        format!("{ASKS}{}", base45::encode(pack(&plain, &Known::default())))
    }

    /// Reads a text.
    ///
    /// # Errors
    /// [`PackFault::Unreadable`].
    pub fn read(text: &str) -> Result<Self, PackFault> {
        let packed = text.trim().strip_prefix(ASKS).ok_or(PackFault::Unreadable)?;
        let packed = base45::decode(packed).map_err(|_| PackFault::Unreadable)?;
        let plain = unpack(&packed, &Known::default())?;
        serde_json::from_str(&plain).map_err(|_| PackFault::Unreadable)
    }

    /// Three bytes that tell a reply to this request from a reply to another.
    fn tag(&self) -> [u8; 3] {
        let plain = serde_json_canonicalizer::to_string(self).unwrap_or_default();
        let [a, b, c, ..] = Digest::of(plain.as_bytes()).0;
        [a, b, c]
    }

    /// What both phones know once the request was read; and the replying device, once known.
    fn known(&self, device: Option<&DeviceId>) -> Known {
        Known([
            Some(self.job.to_string()),
            Some(self.machine.to_string()),
            device.map(|device| device.0.clone()),
            Some(self.by.0.clone()),
        ])
    }
}

impl SecondLookReply {
    /// As a text that answers this request.
    pub fn text(&self, ask: &SecondLookAsk) -> String {
        let device = self.records.first().map(|record| &record.payload.device);
        let known = ask.known(device);
        // Payload and signature after one another: a payload ends where its braces close.
        let plain: String = self
            .records
            .iter()
            .map(|record| format!("{}\"{}\"", record.envelope.payload, record.envelope.signature))
            .collect();
        let packed = [ask.tag().as_slice(), &pack(&plain, &known)].concat();
        format!("{LOOKED}{}", base45::encode(packed))
    }

    /// Reads a text that answers this request. The signatures are *not* checked by this.
    ///
    /// # Errors
    /// [`PackFault`].
    pub fn read(text: &str, ask: &SecondLookAsk) -> Result<Self, PackFault> {
        let packed = text.trim().strip_prefix(LOOKED).ok_or(PackFault::Unreadable)?;
        let packed = base45::decode(packed).map_err(|_| PackFault::Unreadable)?;
        // Who replies is known from the key in their own record; a stand-in holds the name's place till then.
        let stand_in = DeviceId("~".into());
        let packed = packed.strip_prefix(ask.tag().as_slice()).ok_or(PackFault::Other)?;
        let plain = unpack(packed, &ask.known(Some(&stand_in)))?;
        let mut values =
            serde_json::Deserializer::from_str(&plain).into_iter::<Box<serde_json::value::RawValue>>();
        let mut parts = Vec::new();
        for value in &mut values {
            parts.push(value.map_err(|_| PackFault::Other)?.get().to_owned());
        }
        let device = parts.first().and_then(|payload| device_of(payload)).ok_or(PackFault::Other)?;
        let protected = Record::header(&device)?;
        let mut records = Vec::new();
        for pair in parts.chunks_exact(2) {
            let [payload, signature] = pair else { return Err(PackFault::Other) };
            let payload = payload.replace("\"~\"", &format!("\"{device}\""));
            let signature = signature.trim_matches('"').to_owned();
            records.push(Record::parse(Envelope { payload, protected: protected.clone(), signature })?);
        }
        let about = |record: &Record| match record.payload.typed() {
            Ok(Body::Member(_)) => record.payload.machine.is_none(),
            Ok(Body::SecondLook(look)) => record.payload.machine == Some(ask.machine) && look.job == ask.job,
            _ => false,
        };
        if records.len() < 2 || !records.iter().all(about) {
            return Err(PackFault::Other);
        }
        Ok(Self { records })
    }
}

/// The device whose member record this is, by the key that it states.
fn device_of(payload: &str) -> Option<DeviceId> {
    let payload: serde_json::Value = serde_json::from_str(payload).ok()?;
    let body = Body::read(payload.get("kind")?.as_str()?, payload.get("body")?).ok()?;
    match body {
        Body::Member(member) => Some(member.key.thumbprint()),
        _ => None,
    }
}

/// Strings that both sides know: each becomes one character.
#[derive(Default)]
pub(super) struct Known([Option<String>; 4]);

/// The first of the characters that stand for known strings.
const KNOWN: u8 = 5;

/// The forms of strings that go as bytes, each with the character that stands for it.
#[derive(Clone, Copy)]
enum Form {
    /// 64 hexadecimal digits: a digest.
    Digest = 1,
    /// A UUID.
    Uuid = 2,
    /// 43 characters of base64url: a key or its name.
    Key = 3,
    /// 86 characters of base64url: a signature.
    Signature = 4,
}

impl Form {
    const ALL: [Form; 4] = [Form::Digest, Form::Uuid, Form::Key, Form::Signature];

    fn bytes(self) -> usize {
        match self {
            Form::Digest | Form::Key => 32,
            Form::Uuid => 16,
            Form::Signature => 64,
        }
    }

    fn write(self, bytes: &[u8]) -> Option<String> {
        match self {
            Form::Digest => Some(Digest(bytes.try_into().ok()?).to_string()),
            Form::Uuid => Some(Uuid::from_slice(bytes).ok()?.to_string()),
            Form::Key | Form::Signature => Some(Base64UrlUnpadded::encode_string(bytes)),
        }
    }

    fn read(self, text: &str) -> Option<Vec<u8>> {
        let bytes = match self {
            Form::Digest => text.parse::<Digest>().ok()?.0.to_vec(),
            Form::Uuid => text.parse::<Uuid>().ok()?.as_bytes().to_vec(),
            Form::Key | Form::Signature => Base64UrlUnpadded::decode_vec(text).ok()?,
        };
        // Only what is written again letter for letter may go as bytes.
        (bytes.len() == self.bytes() && self.write(&bytes)? == text).then_some(bytes)
    }
}

/// JSON with its known strings as single characters and its long ones taken out as bytes. JSON has
/// no control characters of its own, so that these stand out.
fn squeeze(plain: &str, known: &Known) -> (String, Vec<u8>) {
    let (mut text, mut bytes) = (String::new(), Vec::new());
    // Odd pieces lie between quotation marks; an escaped mark only makes a piece that is no such string,
    // and an odd number of them a last piece that isn't closed.
    let marks = plain.matches('"').count();
    for (index, piece) in plain.split('"').enumerate() {
        let inside = index % 2 == 1;
        let place = known.0.iter().position(|known| known.as_deref() == Some(piece));
        let form = Form::ALL.into_iter().find_map(|form| Some((form, form.read(piece)?)));
        match (inside, place.and_then(|place| u8::try_from(place).ok()), form) {
            (true, Some(place), _) => text.push(char::from(KNOWN + place)),
            (true, None, Some((form, raw))) => {
                text.push(char::from(form as u8));
                bytes.extend(raw);
            }
            (true, None, None) => {
                text.push('"');
                text.push_str(piece);
                text.push_str(if index < marks { "\"" } else { "" });
            }
            (false, ..) => text.push_str(piece),
        }
    }
    (text, bytes)
}

fn unsqueeze(text: &str, mut bytes: &[u8], known: &Known) -> Option<String> {
    let mut plain = String::new();
    for letter in text.chars() {
        let code = u8::try_from(letter).ok().filter(|code| *code < 32);
        let string = match code {
            None => {
                plain.push(letter);
                continue;
            }
            Some(code) if code >= KNOWN => known.0.get(usize::from(code - KNOWN))?.clone()?,
            Some(code) => {
                let form = Form::ALL.into_iter().find(|form| *form as u8 == code)?;
                let (own, rest) = bytes.split_at_checked(form.bytes())?;
                bytes = rest;
                form.write(own)?
            }
        };
        plain.push('"');
        plain.push_str(&string);
        plain.push('"');
    }
    bytes.is_empty().then_some(plain)
}

pub(super) fn pack(plain: &str, known: &Known) -> Vec<u8> {
    let (text, bytes) = squeeze(plain, known);
    let mut deflate = CompressorOxide::default();
    // Raw deflate, best compression: no zlib header.
    deflate.set_format_and_level(miniz_oxide::DataFormat::Raw, 10);
    // The skeleton is compressed and flushed to a byte's edge, and its output forgotten: what
    // follows may then refer to it, as if it had been sent.
    let (status, _) = compress_to_output(&mut deflate, SKELETON.as_bytes(), TDEFLFlush::Sync, |_| true);
    debug_assert!(status == TDEFLStatus::Okay);
    let mut packed = Vec::new();
    compress_to_output(&mut deflate, text.as_bytes(), TDEFLFlush::Finish, |bytes| {
        packed.extend_from_slice(bytes);
        true
    });
    packed.extend(bytes);
    packed
}

pub(super) fn unpack(packed: &[u8], known: &Known) -> Result<String, PackFault> {
    let skeleton = SKELETON.as_bytes();
    let mut out = skeleton.to_vec();
    out.resize(skeleton.len() + LONGEST, 0);
    let mut inflate = Box::new(DecompressorOxide::new());
    let flags = TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
    let (status, read, written) = decompress(&mut inflate, packed, &mut out, skeleton.len(), flags);
    let end = skeleton.len().saturating_add(written);
    let (true, Some(text), Some(bytes)) =
        (status == TINFLStatus::Done, out.get(skeleton.len()..end), packed.get(read..))
    else {
        return Err(PackFault::Unreadable);
    };
    let text = std::str::from_utf8(text).map_err(|_| PackFault::Unreadable)?;
    unsqueeze(text, bytes, known).ok_or(PackFault::Unreadable)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::list::Meaning;
    use crate::record::{
        Author, JointSeen, Jwk, Member, Position, SecondLook, Signature, SigningSeed, Trust,
    };

    fn ask() -> SecondLookAsk {
        SecondLookAsk {
            job: Digest::of(b"job"),
            machine: Uuid::from_u128(0x01a2_122d_8f5c_7c0c_85e2_4b69_6f9b_2497),
            name: "Bramble at home".into(),
            title: "Head re-torqued, propeller changed".into(),
            joints: BTreeMap::from([
                ("head-nuts".into(), "Head nuts".into()),
                ("propeller-bolts".into(), "Propeller bolts".into()),
                ("mount-bolts".into(), "Engine mount bolts".into()),
            ]),
            by: SigningSeed::from_bytes(&[1; 32]).device(),
            seq: 42,
        }
    }

    /// As unfriendly to compression as a key, ids and digests are.
    fn reply(ask: &SecondLookAsk, note: &str) -> SecondLookReply {
        let seed = SigningSeed::from_bytes(&Digest::of(b"second").0);
        let at = chrono::DateTime::parse_from_rfc3339("2026-05-02T18:41:07.482913+02:00").unwrap();
        let person = Uuid::from_bytes(Digest::of(b"person").0[..16].try_into().unwrap());
        let key: Jwk = seed.jwk();
        let member = Member { person, name: "Marguerite van der Meulen".into(), key, invented: false };
        let salt = |n: u8| Digest::of(&[n]).0[..10].try_into().unwrap();
        let own = Author::default().write(&Body::Member(member), None, at, &salt(1), &seed).unwrap();
        let joints = ask
            .joints
            .keys()
            .map(|joint| JointSeen { joint: joint.clone(), means: Meaning::Serviceable, note: note.into() })
            .collect();
        let author = Author {
            last: Some(Position { seq: 871, digest: Digest::of(b"before") }),
            seen: BTreeMap::from([(ask.by.clone(), ask.seq)]),
            clock: own.payload.clock,
            ..Author::default()
        };
        let look = Body::SecondLook(SecondLook { job: ask.job, joints });
        let later = at + chrono::TimeDelta::days(40);
        let look = author.write(&look, Some(ask.machine), later, &salt(2), &seed).unwrap();
        SecondLookReply { records: vec![own, look] }
    }

    #[test]
    fn base_45_is_that_of_rfc_9285() {
        // RFC 9285 § 4.3, examples 1 to 3.
        for (plain, text) in [("AB", "BB8"), ("Hello!!", "%69 VD92EX0"), ("base-45", "UJCLQE7W581")] {
            assert_eq!(base45::encode(plain.as_bytes()), text);
        }
    }

    #[test]
    fn both_ways_read_back_and_fit_a_code_of_version_15_at_level_m() {
        // QR model 2 (ISO/IEC 18004), version 15, level M: 600 alphanumeric characters (from memory;
        // the app's test makes the code itself).
        let ask = ask();
        let text = ask.text();
        assert!(text.len() <= 600, "{}", text.len());
        assert_eq!(SecondLookAsk::read(&text).unwrap(), ask);
        let reply = reply(&ask, "");
        let text = reply.text(&ask);
        assert!(text.len() <= 600, "{}", text.len());
        let back = SecondLookReply::read(&text, &ask).unwrap();
        assert_eq!(back, reply, "byte for byte");
        let trust = Trust::from_records(&back.records);
        assert!(back.records.iter().all(|record| trust.check(record) == Signature::Good));
    }

    #[test]
    fn what_is_cut_short_or_answers_another_request_is_refused() {
        let ask = ask();
        let text = reply(&ask, "wet under nut 3").text(&ask);
        let other = SecondLookAsk { machine: Uuid::from_u128(5), ..ask.clone() };
        assert!(SecondLookReply::read(&text, &other).is_err());
        for cut in [8, 20, text.len() - 3] {
            assert!(SecondLookReply::read(&text[..cut], &ask).is_err());
        }
        assert!(SecondLookAsk::read(&text).is_err());
        assert!(SecondLookReply::read("WM1LOOK:\u{1F600}", &ask).is_err());
    }
}
