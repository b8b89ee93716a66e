//! What a device keeps folded equals what anybody folds anew from the same records, however they came:
//! in any order, a few at a time, the records that decide who may what long after those they decide on.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

#[path = "../../shared/core/tests/common/mod.rs"]
mod common;
#[path = "../../shared/core/tests/common/schooling.rs"]
mod schooling;

use common::*;
use proptest::prelude::*;
use schooling::story;
use witnessmark_core::record::Signature;
use witnessmark_store::{Store, StoreFault};

/// What is derived from a store's log.
#[derive(Debug, PartialEq)]
struct Derived {
    history: Option<History>,
    timeline: Vec<Digest>,
    split: Vec<DeviceId>,
}

fn derived(store: &mut Store) -> Derived {
    store
        .read(|tx| {
            let timeline = tx.timeline(machine(), 1000)?.into_iter().map(|mark| mark.digest).collect();
            let split = tx.split_words(machine())?;
            Ok::<_, StoreFault>(Derived { history: tx.history(machine())?, timeline, split })
        })
        .unwrap()
}

/// Folded by nobody but core, from all that is here.
fn anew(store: &mut Store) -> History {
    store
        .read(|tx| {
            let mut records = tx.records_of(None)?;
            records.extend(tx.records_of(Some(machine()))?);
            Ok::<_, StoreFault>(History::of(machine(), &records, &Trust::from_records(&records)))
        })
        .unwrap()
}

/// In an order that the salt decides, but each device's statement of its own key before its other
/// records: without it nobody takes these.
fn shuffled(world: &World, salt: u64) -> Vec<Record> {
    let mut records = world.records.clone();
    records.sort_by_key(|record| Digest::of(&[&record.digest.0[..], &salt.to_be_bytes()].concat()));
    let mut known = std::collections::BTreeSet::new();
    let mut waiting: BTreeMap<DeviceId, Vec<Record>> = BTreeMap::new();
    let mut come = Vec::new();
    for record in records {
        let device = record.payload.device.clone();
        if record.payload.kind == "member" && known.insert(device.clone()) {
            come.push(record);
            come.extend(waiting.remove(&device).unwrap_or_default());
        } else if known.contains(&device) {
            come.push(record);
        } else {
            waiting.entry(device).or_default().push(record);
        }
    }
    come
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, ..ProptestConfig::default() })]

    #[test]
    fn kept_equals_folded_anew(world in story(40), salt in any::<u64>(), most in 1..12usize) {
        let mut store = Store::open(":memory:").unwrap();
        let mut come = shuffled(&world, salt);
        let mut sizes = (1..=most).cycle();
        while !come.is_empty() {
            let some: Vec<Record> = come.drain(..sizes.next().unwrap().min(come.len())).collect();
            store
                .write(|tx| {
                    some.iter().try_for_each(|record| tx.append(record).map(drop))?;
                    // Asked in between, what is kept is right already.
                    tx.trust().map(drop)
                })
                .unwrap();
            if let Some(history) = derived(&mut store).history {
                prop_assert_eq!(history, anew(&mut store));
            }
        }
        let kept = derived(&mut store);
        let trust = store.read(|tx| tx.trust()).unwrap();
        let told = [format!("{trust:?}"), format!("{:?}", Trust::from_records(&world.records))];
        prop_assert!(told[0] == told[1]);
        store.write(|tx| tx.rebuild()).unwrap();
        prop_assert_eq!(derived(&mut store), kept);
    }

    /// Whoever has the same records tells the same, whatever their order was.
    #[test]
    fn every_device_that_has_all_records_tells_the_same(world in story(30), salts in any::<[u64; 2]>()) {
        let told = salts.map(|salt| {
            let mut store = Store::open(":memory:").unwrap();
            for record in shuffled(&world, salt) {
                store.write(|tx| tx.append(&record)).unwrap();
            }
            derived(&mut store)
        });
        prop_assert_eq!(&told[0], &told[1]);
        let trust = Trust::from_records(&world.records);
        prop_assert!(world.records.iter().all(|record| trust.check(record) != Signature::Bad));
    }
}
