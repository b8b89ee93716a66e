//! Is anything missing, or was anything put in another's place?

use std::collections::BTreeMap;

use serde::Serialize;
use uuid::Uuid;

use super::{DeviceId, Digest, Record};

/// What is wrong with the chains through a set of records.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(tag = "fault", rename_all = "kebab-case")]
pub enum ChainFault {
    /// A number of the chain isn't there.
    Missing {
        /// Whose chain.
        device: DeviceId,
        /// Which numbers of the machine's chain, from and to, both missing.
        from: u64,
        /// See `from`.
        to: u64,
        /// About which machine (or about none).
        machine: Option<Uuid>,
    },
    /// A record doesn't follow from the one before it.
    Broken {
        /// Whose chain.
        device: DeviceId,
        /// The record that doesn't follow.
        record: Digest,
    },
    /// Two different records claim the same place: the device's word is split.
    Forked {
        /// Whose chain.
        device: DeviceId,
        /// One of the two.
        record: Digest,
        /// The other.
        other: Digest,
    },
}

/// Checks both chains (see [`super::Payload`]) of every device in the set.
///
/// The machine's chain must be whole from 1; the device's chain may have gaps (records
/// about other machines), but where two neighbours are both here they must follow.
pub fn check_chain<'a>(records: impl IntoIterator<Item = &'a Record>) -> Vec<ChainFault> {
    let mut whole: BTreeMap<&DeviceId, BTreeMap<u64, &Record>> = BTreeMap::new();
    let mut of: BTreeMap<(&DeviceId, Option<Uuid>), BTreeMap<u64, &Record>> = BTreeMap::new();
    let mut faults = Vec::new();
    // In an order of their own, so that a fork is told alike whatever the order of the file.
    let mut records: Vec<&Record> = records.into_iter().collect();
    records.sort_by_key(|record| record.digest);
    for record in records {
        let payload = &record.payload;
        let by_seq = whole.entry(&payload.device).or_default();
        match by_seq.get(&payload.seq) {
            Some(other) if other.digest != record.digest => {
                faults.push(ChainFault::Forked {
                    device: payload.device.clone(),
                    record: record.digest,
                    other: other.digest,
                });
                continue;
            }
            _ => by_seq.insert(payload.seq, record),
        };
        let by_of_seq = of.entry((&payload.device, payload.machine)).or_default();
        match by_of_seq.get(&payload.of_seq) {
            Some(other) if other.digest != record.digest => faults.push(ChainFault::Forked {
                device: payload.device.clone(),
                record: record.digest,
                other: other.digest,
            }),
            _ => drop(by_of_seq.insert(payload.of_seq, record)),
        }
    }
    for ((device, machine), chain) in &of {
        let mut expected: u64 = 1;
        let mut before: Option<Digest> = None;
        for (seq, record) in chain {
            if *seq != expected {
                faults.push(ChainFault::Missing {
                    device: (*device).clone(),
                    from: expected,
                    to: seq.saturating_sub(1),
                    machine: *machine,
                });
            } else if record.payload.of_prev != before {
                faults.push(broken(record));
            }
            expected = seq.saturating_add(1);
            before = Some(record.digest);
        }
    }
    for chain in whole.values() {
        let follow = chain.values().zip(chain.values().skip(1));
        for (before, record) in follow {
            let neighbours = before.payload.seq.checked_add(1) == Some(record.payload.seq);
            if neighbours && record.payload.prev != Some(before.digest) {
                faults.push(broken(record));
            }
        }
        let first = chain.values().next().filter(|r| r.payload.seq <= 1 && r.payload.prev.is_some());
        faults.extend(first.map(|record| broken(record)));
    }
    faults.sort();
    faults.dedup();
    faults
}

fn broken(record: &Record) -> ChainFault {
    ChainFault::Broken { device: record.payload.device.clone(), record: record.digest }
}
