//! How people look, for those who teach; and what points are worth, for the authors of lists.

mod names;
mod people;
mod points;
mod tallied;

use witnessmark_core::record::{DeviceId, Right};
use witnessmark_store::Tx;

use crate::house::House;
use crate::views::{ListWorth, LookingReport};
use crate::{App, Fault, identity};

impl App {
    /// How people look. Of those who look at a school's machines its instructors see all, everybody sees
    /// themselves.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn looking(&mut self) -> Result<LookingReport, Fault> {
        self.store.read(|tx| {
            let own = identity::signatory(tx)?.map(|own| own.device);
            self.house.looking(tx, own.as_ref())
        })
    }

    /// The same as another device's holder may see it: for a server, on which nobody signs.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn looking_for(&mut self, device: &DeviceId) -> Result<LookingReport, Fault> {
        self.store.read(|tx| self.house.looking(tx, Some(device)))
    }

    /// What points are worth.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn list_worth(&mut self) -> Result<ListWorth, Fault> {
        self.store.read(|tx| self.house.list_worth(tx))
    }
}

impl House {
    /// Whether a device's holder teaches at a school today.
    fn teaches(
        &self,
        tx: &Tx<'_>,
        school: &witnessmark_core::record::Digest,
        device: &DeviceId,
    ) -> Result<bool, Fault> {
        let role = tx.trust()?.role_on(school, device, self.now().date_naive());
        Ok(role.is_some_and(|role| role.gives(Right::Defer, false)))
    }
}
