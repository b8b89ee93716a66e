//! Whatever comes in, nothing panics: it is read, or a fault says what is wrong with it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use base64ct::{Base64UrlUnpadded, Encoding};
use common::*;
use ed25519_dalek::{Signer, SigningKey};
use proptest::prelude::*;
use proptest::sample::{Index, select};
use serde_json::{Value, json};
use witnessmark_core::list::{read_fragment, read_occasions, read_sheet, read_stations};
use witnessmark_core::record::{Envelope, EnvelopeFault, check, read_bundle, signing_input};

/// The key of [`World`]'s first phone, which signs here what the program itself would not.
fn key() -> SigningKey {
    SigningKey::from_bytes(&[1; 32])
}

fn envelope(header: &str, payload: &str) -> Envelope {
    let protected = Base64UrlUnpadded::encode_string(header.as_bytes());
    let signature = key().sign(&signing_input(&protected, payload)).to_bytes();
    Envelope { payload: payload.into(), protected, signature: Base64UrlUnpadded::encode_string(&signature) }
}

fn header() -> String {
    format!(r#"{{"alg":"Ed25519","b64":false,"crit":["b64"],"kid":"{}"}}"#, World::new(1).id(0))
}

/// Values that somebody who wants to break a reader would try.
fn odd_value() -> impl Strategy<Value = Value> {
    let odd = vec![
        json!(null),
        json!(true),
        json!(-1),
        json!(0),
        json!(1.5),
        json!(u64::MAX),
        json!(i64::MIN),
        json!(1e308),
        json!(""),
        json!("\u{0}\u{1f}\u{202e}"),
        json!("+262142-12-31T23:59:59+00:00"),
        json!("-262143-01-01T00:00:00+00:00"),
        json!("9999-12-31T23:59:59.999999999-23:59"),
        json!("0000-01-01T00:00:00+23:59"),
        json!("2026-05-02T23:59:60Z"),
        json!("9999-12-31"),
        json!("+262142-12-31"),
        json!("-262143-01-01"),
        json!("unserviceable"),
        json!("00000000-0000-0000-0000-000000000000"),
        json!([]),
        json!({}),
        json!([[[[[[[[{}]]]]]]]]),
        json!({ "value": 1e308, "unit": "N.m" }),
    ];
    select(odd)
}

/// All places of a JSON value, as pointers.
fn places(value: &Value, here: String, found: &mut Vec<String>) {
    match value {
        Value::Object(members) => {
            members.iter().for_each(|(name, inner)| places(inner, format!("{here}/{name}"), found));
        }
        Value::Array(items) => {
            items.iter().enumerate().for_each(|(n, inner)| places(inner, format!("{here}/{n}"), found));
        }
        _ => {}
    }
    found.push(here);
}

fn whole() -> World {
    let mut world = World::fit();
    let seen = world.write(
        0,
        Some(machine()),
        look(vec![finding("base", witnessmark_core::list::Meaning::Unserviceable)]),
    );
    world.write(0, Some(machine()), rectified("base", seen));
    world.write(0, Some(machine()), correction(seen, "base", witnessmark_core::list::Meaning::Watch));
    world.write(0, Some(machine()), limit(Some(14.0), Some(15.0)));
    world.write(0, Some(machine()), inspection("second-flight", vec![], vec![left("fuel", true)]));
    let own = world.id(0);
    world.write(0, None, revoked(own));
    world
}

/// A bundle taken apart at one place: rightly signed, so only its content is odd.
fn oddly_signed() -> impl Strategy<Value = Vec<Envelope>> {
    (any::<Index>(), proptest::collection::vec((any::<Index>(), odd_value()), 1..4)).prop_map(
        |(which, changes)| {
            let world = whole();
            let which = which.index(world.records.len());
            let mut payload: Value = serde_json::from_str(&world.records[which].envelope.payload).unwrap();
            for (place, odd) in changes {
                let mut found = Vec::new();
                places(&payload, String::new(), &mut found);
                let place: &String = place.get(&found);
                *payload.pointer_mut(place).unwrap() = odd;
            }
            let payload = serde_json_canonicalizer::to_string(&payload).unwrap();
            let mut envelopes: Vec<Envelope> = world.records.iter().map(|r| r.envelope.clone()).collect();
            envelopes[which] = envelope(&header(), &payload);
            envelopes
        },
    )
}

fn catalogue_text() -> impl Strategy<Value = String> {
    let files = [
        "engines/bramble-125.toml",
        "engines/linnet-e.toml",
        "fragments/fuel.toml",
        "fragments/propeller.toml",
        "stations.toml",
        "occasions.toml",
    ];
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../catalogue");
    let texts: Vec<String> =
        files.iter().map(|file| std::fs::read_to_string(root.join(file)).unwrap()).collect();
    select(texts)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn any_text_is_read_or_refused(text in "\\PC*", bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
        let other = String::from_utf8_lossy(&bytes).into_owned();
        for text in [text, other] {
            let _ = Record::read(&text);
            if let Ok(bundle) = read_bundle(&text) {
                let report = check(&bundle);
                prop_assert_eq!(report.faults.len() + report.records, bundle.unreadable.len() + bundle.records.len());
            }
            for read in [read_sheet("odd", &text).err(), read_fragment("odd", &text).err()] {
                prop_assert!(read.is_none_or(|faults| !faults.is_empty()));
            }
            let _ = (read_stations("odd", &text), read_occasions("odd", &text));
        }
    }

    /// Odd content under a good signature is told as a fault, or judged with care; it never stops the program.
    #[test]
    fn odd_content_is_told_or_judged(envelopes in oddly_signed(), low in -14i32..=14) {
        let lines: Vec<String> = envelopes.iter().map(|e| serde_json::to_string(e).unwrap()).collect();
        let bundle = read_bundle(&lines.join("\n")).unwrap();
        let _ = check(&bundle);
        let records: Vec<&Record> = bundle.records.iter().map(|(_, record)| record).collect();
        let history = witnessmark_core::history::History::of(machine(), records.iter().copied(), &Trust::from_records(records.iter().copied()));
        let zone = FixedOffset::east_opt(low * 3600).unwrap();
        let verdict = verdict_of(&history, &confirmed_sheet(), at(DAY).with_timezone(&zone));
        prop_assert!(verdict.reasons.iter().all(|reason| !reason.clears.id.is_empty()));
        let kept = serde_json::to_string(&history).unwrap();
        prop_assert!(serde_json::from_str::<witnessmark_core::history::History>(&kept).is_ok());
    }

    /// A catalogue file with a wound: read, or every fault has a line within the file, and says what to do.
    #[test]
    fn a_wounded_catalogue_file_is_told_with_its_line(
        text in catalogue_text(),
        place in any::<Index>(),
        length in 0..12usize,
        with in prop_oneof!["\\PC{0,3}", Just("\n".to_owned()), Just("\"".to_owned()), Just("= nan".to_owned())],
    ) {
        let mut chars: Vec<char> = text.chars().collect();
        let start = place.index(chars.len());
        let end = (start + length).min(chars.len());
        chars.splice(start..end, with.chars());
        let text: String = chars.into_iter().collect();
        let lines = text.lines().count() + 1;
        let mut faults = read_sheet("file.toml", &text).err().unwrap_or_default();
        faults.extend(read_fragment("file.toml", &text).err().unwrap_or_default());
        faults.extend(read_stations("file.toml", &text).err());
        faults.extend(read_occasions("file.toml", &text).err());
        for fault in faults {
            prop_assert!((1..=lines).contains(&fault.line), "{fault}");
            prop_assert!(!fault.what.is_empty() && !fault.hint.is_empty());
        }
    }
}

/// Only the header that we write is taken, though other headers too would be good JWS.
#[test]
fn other_headers_are_refused() {
    let world = World::new(1);
    let payload = &world.records[0].envelope.payload;
    let ours = header();
    assert!(Record::parse(envelope(&ours, payload)).is_ok());
    let others = [
        ours.replace("Ed25519", "EdDSA"),
        ours.replace("Ed25519", "none"),
        ours.replace("\"b64\":false", "\"b64\":true"),
        ours.replace("\"b64\":false,\"crit\":[\"b64\"],", ""),
        ours.replace("[\"b64\"]", "[\"b64\",\"exp\"]"),
        ours.replace("[\"b64\"]", "[]"),
        ours.replace("\"alg\"", "\"jwk\":{},\"alg\""),
        ours.replace("\"alg\":\"Ed25519\"", "\"alg\":\"none\",\"alg\":\"Ed25519\""),
        "[]".into(),
        String::new(),
    ];
    for other in others {
        let read = Record::parse(envelope(&other, payload));
        assert!(matches!(read, Err(EnvelopeFault::Header(_))), "{other}: {read:?}");
    }
    let stranger = ours.replace(world.id(0).0.as_str(), "somebody");
    assert_eq!(Record::parse(envelope(&stranger, payload)).err(), Some(EnvelopeFault::OtherDevice));
}

/// One content, one text: what canonical JSON would write otherwise is refused, so that nobody
/// can read two things in one record (a member twice, most of all).
#[test]
fn what_is_not_canonical_is_refused() {
    let world = World::fit();
    let payload = &world.records[1].envelope.payload;
    assert!(Record::parse(envelope(&header(), payload)).is_ok());
    let others = [
        format!(" {payload}"),
        format!("{payload}\n"),
        payload.replace(",\"kind\"", ", \"kind\""),
        payload.replace("\"seq\":2", "\"seq\":2.0"),
        payload.replace("\"seq\":2", "\"seq\":1,\"seq\":2"),
        payload.replace("\"v\":1", "\"v\":1e0"),
        payload.replace("Invented machine", "Invented m\\u0061chine"),
    ];
    for other in others {
        let read = Record::parse(envelope(&header(), &other));
        assert_eq!(read.err(), Some(EnvelopeFault::NotCanonical), "{other}");
    }
}

#[test]
fn each_other_malformed_envelope_is_told_apart() {
    let world = World::fit();
    let good = world.records[0].envelope.clone();
    let line = |envelope: &Envelope| serde_json::to_string(envelope).unwrap();
    let parse = |envelope: Envelope| Record::parse(envelope).unwrap_err();
    let more = good.payload.replacen('{', "{\"also\":1,", 1);
    assert!(matches!(parse(envelope(&header(), &more)), EnvelopeFault::Payload(_)));
    let newer = good.payload.replace("\"v\":1", "\"v\":2");
    assert_eq!(parse(envelope(&header(), &newer)), EnvelopeFault::Newer(2));
    let short = Envelope { signature: good.signature[..80].into(), ..good.clone() };
    assert_eq!(parse(short), EnvelopeFault::SignatureForm);
    let padded = Envelope { signature: format!("{}==", good.signature), ..good.clone() };
    assert_eq!(parse(padded), EnvelopeFault::SignatureForm);
    let extra = line(&good).replacen('{', "{\"header\":{},", 1);
    assert!(matches!(Record::read(&extra), Err(EnvelopeFault::NotAnEnvelope(_))));
    let twice = line(&good).replacen('{', "{\"payload\":\"{}\",", 1);
    assert!(matches!(Record::read(&twice), Err(EnvelopeFault::NotAnEnvelope(_))));
    let half = &line(&good)[..100];
    assert!(matches!(Record::read(half), Err(EnvelopeFault::NotAnEnvelope(_))));
}

/// JSON nested deeper than any reader's stack is refused, not followed.
#[test]
fn bottomless_nesting_is_refused() {
    let deep = "[".repeat(200_000);
    assert!(Record::read(&deep).is_err());
    let world = World::new(1);
    let payload = world.records[0].envelope.payload.replace("\"v\":1", &format!("\"v\":{deep}"));
    assert!(matches!(Record::parse(envelope(&header(), &payload)), Err(EnvelopeFault::Payload(_))));
    let toml = format!("id = {deep}");
    assert!(read_sheet("deep.toml", &toml).is_err());
}

/// Moments at the ends of the calendar, in zones that push them over it: those that RFC 3339 can't
/// write are refused, the others judged.
#[test]
fn the_ends_of_the_calendar_are_judged_too() {
    let moments = [
        "+262142-12-31T23:59:59Z",
        "-262143-01-01T00:00:00Z",
        "+262142-12-31T23:59:59.999999999+00:00",
        "9999-12-31T23:59:59-23:59",
        "0001-01-01T00:00:00+23:59",
    ];
    for moment in moments {
        let world = World::fit();
        let taken = !moment.contains("262");
        let mut records: Vec<Record> = Vec::new();
        for record in &world.records {
            let mut payload: Value = serde_json::from_str(&record.envelope.payload).unwrap();
            payload["at"] = json!(moment);
            let payload = serde_json_canonicalizer::to_string(&payload).unwrap();
            let record = Record::parse(envelope(&header(), &payload));
            assert_eq!(record.is_ok(), taken, "{moment}");
            records.extend(record);
        }
        let history =
            witnessmark_core::history::History::of(machine(), &records, &Trust::from_records(&records));
        for hours in [-23, 0, 23] {
            let now = at(DAY).with_timezone(&FixedOffset::east_opt(hours * 3600).unwrap());
            let verdict = verdict_of(&history, &confirmed_sheet(), now);
            assert!(!verdict.reasons.is_empty(), "{moment} seen from {hours}");
        }
    }
}
