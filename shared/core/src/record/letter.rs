//! Records that go as a text from one screen to another: a QR code, a message, a file. What the
//! envelopes can be made from again is left out; packed like a second look (see [`super::pack`]).

use serde::{Serialize, de::DeserializeOwned};

use super::pack::{Known, PackFault, pack, unpack};
use super::{Envelope, Record};

/// Writes a letter: what it is (`WM1…:`), a head of its own form, records.
///
/// # Errors
/// Where the head can't be written as JSON.
pub fn write_letter(
    begins: &str,
    head: &impl Serialize,
    records: &[Record],
) -> Result<String, serde_json::Error> {
    // Payloads stand in it as JSON, not as texts within JSON: their strings are then packed too.
    let plain: String =
        records.iter().map(|r| format!("{}\"{}\"", r.envelope.payload, r.envelope.signature)).collect();
    let plain = format!("{}{plain}", serde_json_canonicalizer::to_string(head)?);
    Ok(format!("{begins}{}", base45::encode(pack(&plain, &Known::default()))))
}

/// Reads a letter that begins so. The records' signatures are *not* checked by this.
///
/// # Errors
/// [`PackFault`].
pub fn read_letter<H: DeserializeOwned>(begins: &str, text: &str) -> Result<(H, Vec<Record>), PackFault> {
    let packed = text.trim().strip_prefix(begins).ok_or(PackFault::Unreadable)?;
    let packed = base45::decode(packed).map_err(|_| PackFault::Unreadable)?;
    let plain = unpack(&packed, &Known::default())?;
    let mut values =
        serde_json::Deserializer::from_str(&plain).into_iter::<Box<serde_json::value::RawValue>>();
    let mut parts = Vec::new();
    for value in &mut values {
        parts.push(value.map_err(|_| PackFault::Unreadable)?.get().to_owned());
    }
    let (head, rest) = parts.split_first().ok_or(PackFault::Unreadable)?;
    let head = serde_json::from_str(head).map_err(|_| PackFault::Unreadable)?;
    let mut records = Vec::new();
    for pair in rest.chunks(2) {
        let [payload, signature] = pair else { return Err(PackFault::Unreadable) };
        let device: Author = serde_json::from_str(payload).map_err(|_| PackFault::Unreadable)?;
        records.push(Record::parse(Envelope {
            payload: payload.clone(),
            protected: Record::header(&device.device)?,
            signature: signature.trim_matches('"').to_owned(),
        })?);
    }
    Ok((head, records))
}

/// Who wrote a payload.
#[derive(serde::Deserialize)]
struct Author {
    device: super::DeviceId,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{Author as Pen, Body, Member, SigningSeed};
    use proptest::prelude::*;

    fn record(n: u8, name: &str) -> Record {
        let seed = SigningSeed::from_bytes(&[n; 32]);
        let person = uuid::Uuid::from_u128(u128::from(n));
        let body = Body::Member(Member { person, name: name.into(), key: seed.jwk(), invented: true });
        let at = chrono::DateTime::parse_from_rfc3339("2026-05-02T06:41:07+02:00").unwrap();
        Pen::default().write(&body, None, at, &[n; 10], &seed).unwrap()
    }

    proptest! {
        #[test]
        fn a_letter_is_read_as_it_was_written(names in proptest::collection::vec(".{1,40}", 0..4), head in ".{0,60}") {
            let records: Vec<Record> = (1..).zip(&names).map(|(n, name)| record(n, name)).collect();
            let text = write_letter("WM1TRY:", &head, &records).unwrap();
            let (read, back): (String, Vec<Record>) = read_letter("WM1TRY:", &text).unwrap();
            prop_assert_eq!(read, head);
            prop_assert_eq!(back, records);
        }

        #[test]
        fn any_text_is_told(text in ".{0,200}", bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            prop_assert!(read_letter::<String>("WM1TRY:", &text).is_err());
            let _ = read_letter::<String>("WM1TRY:", &format!("WM1TRY:{}", base45::encode(bytes)));
        }
    }

    #[test]
    fn three_records_fit_a_code_that_a_phone_reads() {
        let records: Vec<Record> = (1..=3).map(|n| record(n, "Mara Invented")).collect();
        let text = write_letter("WM1TRY:", &"https://school.example:7443", &records).unwrap();
        // A QR code of version 25 at level M holds 1 451 alphanumeric characters (ISO/IEC 18004; from memory).
        assert!(text.len() <= 1451, "{}", text.len());
    }
}
