//! Which machines are reckoned together, and whose clean looks count there.

use std::collections::{BTreeMap, BTreeSet};

use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{DeviceId, Digest, Right, Trust};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;

/// The machines of one fleet: all that are here and real, or the demonstration's where none is.
pub(super) struct Fleet {
    /// Under which school each is.
    machines: BTreeMap<Uuid, Option<Digest>>,
    /// Whether they are the demonstration's.
    pub invented: bool,
    /// Devices of which clean looks count at a school's machines.
    may_look: BTreeSet<(Digest, DeviceId)>,
}

impl House {
    /// The fleet on this device.
    pub(super) fn fleet(&self, tx: &Tx<'_>) -> Result<Fleet, Fault> {
        let (mut real, mut invented) = (BTreeMap::new(), BTreeMap::new());
        for id in tx.machines()? {
            let Some(history) = tx.history(id)? else { continue };
            let Some((machine, _)) = &history.machine else { continue };
            let fleet = if machine.invented { &mut invented } else { &mut real };
            fleet.insert(id, history.school);
        }
        let is_demo = real.is_empty() && !invented.is_empty();
        let machines = if is_demo { invented } else { real };
        Ok(Fleet { machines, invented: is_demo, may_look: may_look(&*tx.trust()?) })
    }
}

/// Who was ever more than a viewer where. What each was on the day of a look would have to be asked of
/// every record; who was never entitled to look is kept out by this.
fn may_look(trust: &Trust) -> BTreeSet<(Digest, DeviceId)> {
    let terms = trust.schools().flat_map(|school| school.terms.iter().map(|term| (school.id, term)));
    terms
        .filter(|(_, term)| term.role.gives(Right::Look, false))
        .map(|(id, term)| (id, term.device.clone()))
        .collect()
}

impl Fleet {
    /// Whether a look counts: at a machine of the fleet, by one who may look there. What was found wrong
    /// anybody may say, as in a verdict.
    pub(super) fn counts(&self, machine: &Uuid, device: &DeviceId, means: Meaning) -> bool {
        match self.machines.get(machine) {
            None => false,
            Some(None) => true,
            Some(Some(school)) => {
                means == Meaning::Unserviceable || self.may_look.contains(&(*school, device.clone()))
            }
        }
    }

    /// Whether a machine is of the fleet.
    pub(super) fn has(&self, machine: &Uuid) -> bool {
        self.machines.contains_key(machine)
    }

    /// The school that a machine is under.
    pub(super) fn school(&self, machine: &Uuid) -> Option<Digest> {
        self.machines.get(machine).copied().flatten()
    }
}
