//! Laws of trust: keys are known and ended by records alone, alike for every reader.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::*;
use proptest::prelude::*;
use witnessmark_core::record::{Jwk, Signature, Trust};

fn about_nothing() -> Body {
    Body::Unknown { kind: "something-said".into(), body: serde_json::json!({}) }
}

fn outcomes<'a>(records: impl IntoIterator<Item = &'a Record> + Clone) -> BTreeMap<Digest, Signature> {
    let trust = Trust::from_records(records.clone());
    records.into_iter().map(|record| (record.digest, trust.check(record))).collect()
}

#[test]
fn what_the_revoker_had_seen_stands_and_the_rest_is_refused() {
    let mut world = World::of_people(&[1, 1]);
    let own_other = world.id(1);
    world.write(0, None, vouched(own_other));
    let before = world.write(0, None, about_nothing());
    world.meet(0, 1);
    let unseen = world.write(0, None, about_nothing());
    let lost = world.id(0);
    world.write(1, None, revoked(lost));
    let after = world.write(0, None, about_nothing());
    let outcomes = outcomes(&world.records);
    assert_eq!(outcomes[&before], Signature::Good);
    assert_eq!(outcomes[&unseen], Signature::Revoked);
    assert_eq!(outcomes[&after], Signature::Revoked);
}

#[test]
fn a_device_ends_itself_with_its_own_last_word() {
    let mut world = World::new(1);
    let own = world.id(0);
    let last = world.write(0, None, revoked(own));
    let after = world.write(0, None, about_nothing());
    let outcomes = outcomes(&world.records);
    assert_eq!(outcomes[&last], Signature::Good);
    assert_eq!(outcomes[&after], Signature::Revoked);
}

#[test]
fn a_stranger_ends_nobody_whoever_they_claim_to_be() {
    let mut world = World::of_people(&[1, 1]);
    let mine = world.id(0);
    world.write(1, None, vouched(mine.clone()));
    world.write(1, None, revoked(mine));
    let after = world.write(0, None, about_nothing());
    assert_eq!(outcomes(&world.records)[&after], Signature::Good);
}

#[test]
fn a_member_record_counts_only_from_the_key_it_states() {
    let world = World::new(2);
    let mut stolen = world.records[0].payload.clone();
    // The second device states the first one's key as its own.
    stolen.device = world.id(1);
    let stolen = Record::sign(&stolen, &world.devices[1].seed).unwrap();
    let trust = Trust::from_records([&stolen]);
    assert_eq!(trust.devices().count(), 0);
    assert_eq!(trust.check(&stolen), Signature::UnknownKey);
}

#[test]
fn a_weak_key_is_not_admitted() {
    // The neutral point, under which anybody's signature of zero verifies without the strict rule.
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let key = Jwk::from_bytes(&neutral);
    let member = Member { person: Uuid::nil(), name: "Nobody".into(), key: key.clone(), invented: true };
    let (kind, body) = Body::Member(member).write().unwrap();
    let world = World::new(1);
    let mut payload = world.records[0].payload.clone();
    payload.kind = kind;
    payload.body = body;
    payload.device = key.thumbprint();
    let envelope = witnessmark_core::record::Envelope {
        payload: serde_json_canonicalizer::to_string(&payload).unwrap(),
        protected: base64url(format!(
            r#"{{"alg":"Ed25519","b64":false,"crit":["b64"],"kid":"{}"}}"#,
            key.thumbprint()
        )),
        // R = the neutral point, S = 0: valid for every message under the cofactored equation.
        signature: base64url([neutral, [0; 32]].concat()),
    };
    let forged = Record::parse(envelope).unwrap();
    assert_eq!(Trust::from_records([&forged]).check(&forged), Signature::UnknownKey);
}

fn base64url(bytes: impl AsRef<[u8]>) -> String {
    use base64ct::{Base64UrlUnpadded, Encoding};
    Base64UrlUnpadded::encode_string(bytes.as_ref())
}

proptest! {
    /// Two phones of one person end each other, neither knowing; a third states itself twice:
    /// every order of the file gives every record the same outcome.
    #[test]
    fn the_order_of_the_file_decides_nothing(order in Just((0..10usize).collect::<Vec<_>>()).prop_shuffle()) {
        let mut world = World::of_people(&[1, 1, 2]);
        let (one, two) = (world.id(0), world.id(1));
        world.write(0, None, vouched(two.clone()));
        world.write(1, None, vouched(one.clone()));
        world.write(0, None, revoked(two));
        world.write(1, None, revoked(one));
        world.write(0, None, about_nothing());
        world.write(1, None, about_nothing());
        let Ok(Body::Member(member)) = world.records[2].payload.typed() else { unreachable!() };
        world.write(2, None, Body::Member(Member { name: "Somebody else".into(), ..member }));
        let shuffled: Vec<&Record> = order.iter().map(|n| &world.records[*n]).collect();
        prop_assert_eq!(outcomes(shuffled.clone()), outcomes(&world.records));
        let named = Trust::from_records(shuffled);
        prop_assert_eq!(&named.standing(&world.id(2)).unwrap().person, "Invented pilot 2");
    }
}
