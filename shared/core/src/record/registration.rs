//! A machine's name tells who registered it: it is made of the registering record's author and number,
//! so that nobody registers somebody else's machine by a clock set back.

use sha2::{Digest as _, Sha256};
use uuid::{Builder, Uuid};

use super::{DeviceId, Record};

/// The name of a machine that a device registers at this time (Unix milliseconds) with its record of
/// this number: a UUID of version 7 (RFC 9562) whose random part is the hash of both.
pub fn machine_id(device: &DeviceId, seq: u64, ms: u64) -> Uuid {
    let hash = Sha256::digest(format!("witnessmark machine {device} {seq}"));
    let mut random = [0; 10];
    random.iter_mut().zip(hash).for_each(|(to, from)| *to = from);
    Builder::from_unix_timestamp_millis(ms, &random).into_uuid()
}

/// Whether the machine that a record is about has its name from this very record.
pub fn registers(record: &Record) -> bool {
    let payload = &record.payload;
    payload.kind == "machine"
        && payload.machine.is_some_and(|machine| {
            // The first 48 bits are the time.
            let ms = u64::try_from(machine.as_u128() >> 80).unwrap_or(0);
            machine_id(&payload.device, payload.seq, ms) == machine
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_a_uuid_of_version_7_with_its_time() {
        let id = machine_id(&DeviceId("a".into()), 7, 1_777_700_000_000);
        assert_eq!(id.get_version_num(), 7);
        assert_eq!(id.as_u128() >> 80, 1_777_700_000_000);
        assert_ne!(id, machine_id(&DeviceId("a".into()), 8, 1_777_700_000_000));
        assert_ne!(id, machine_id(&DeviceId("b".into()), 7, 1_777_700_000_000));
    }
}
