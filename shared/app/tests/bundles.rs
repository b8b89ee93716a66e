//! A bundle holds every word that it takes to trust it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::*;
use uuid::Uuid;
use witnessmark_app::App;
use witnessmark_core::record::{Body, DeviceId, Member, Revoked, SigningSeed, Vouched};
use witnessmark_store::{Store, StoreFault};

#[test]
fn whoever_ended_a_signers_key_is_in_the_bundle_too() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    let path = path.to_str().unwrap();
    let mut app = App::new(Store::open(path).unwrap(), platform(&clock, 1, None)).unwrap();
    let lost = DeviceId(app.begin("Test Pilot".into(), PIN.into()).unwrap().person.unwrap().device);
    let machine = register(&mut app, bramble());
    drop(app);
    // The test knows the lost device's key: it is the first randomness of its platform.
    let mut secret = [0; 32];
    witnessmark_app::Platform::random(platform(&clock, 1, None).as_ref(), &mut secret).unwrap();
    let own = SigningSeed::from_bytes(&secret);
    assert_eq!(own.device(), lost);
    let other = SigningSeed::from_bytes(&[9; 32]);
    let member =
        Member { person: Uuid::from_u128(1), name: "Test Pilot".into(), key: other.jwk(), invented: false };
    let words = [
        (&own, Body::Vouched(Vouched { device: other.device() })),
        (&other, Body::Member(member)),
        (&other, Body::Revoked(Revoked { device: lost, reason: "lost at the field".into() })),
    ];
    let mut store = Store::open(path).unwrap();
    for (seed, body) in &words {
        store
            .write(|tx| {
                let author = tx.author(&seed.device(), None)?;
                let record = author.write(body, None, clock.now(), &[7; 10], seed);
                tx.append(&record.map_err(|fault| StoreFault::Other(fault.to_string()))?)
            })
            .unwrap();
    }
    drop(store);
    let mut app = App::new(Store::open(path).unwrap(), platform(&clock, 2, None)).unwrap();
    let bundle = app.export(machine).unwrap().text;
    let verified = app.verify(bundle).unwrap();
    assert!(verified.good, "what was signed before stands: {:?}", verified.faults);
    assert_eq!(verified.people.len(), 2);
}
