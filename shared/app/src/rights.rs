//! What a person may sign here: a record that would count for nothing is refused before it is signed.

use uuid::Uuid;
use witnessmark_core::record::{Body, DeviceId, Inspection, Right, Role};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;

/// The message that names a role.
pub(crate) fn role_id(role: Role) -> &'static str {
    match role {
        Role::Viewer => "role-viewer",
        Role::Pilot => "role-pilot",
        Role::Mechanic => "role-mechanic",
        Role::Instructor => "role-instructor",
    }
}

fn right_id(right: Right) -> &'static str {
    match right {
        Right::Look => "look",
        Right::Work => "work",
        Right::SecondLook => "second-look",
        Right::Defer => "defer",
        Right::Publish => "publish",
    }
}

impl House {
    /// Whether a device has the right over a machine today: by the school's roles where it is under
    /// one; else only deferring is its owner's alone.
    ///
    /// # Errors
    /// [`Fault`] `not-entitled`, or `not-entitled-owner` outside a school.
    pub(crate) fn entitled(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        device: &DeviceId,
        right: Right,
    ) -> Result<(), Fault> {
        // Nobody owns what isn't described yet: whoever describes it first does.
        let Some(history) = tx.history(machine)? else { return Ok(()) };
        let trust = tx.trust()?;
        let today = self.now().date_naive();
        if history.may_on(today, device, &trust, right) {
            return Ok(());
        }
        let Some(school) = history.school else { return Err(Fault::new("not-entitled-owner")) };
        let role = trust.role_on(&school, device, today);
        Err(Fault::new("not-entitled")
            .text("right", right_id(right))
            .text("role", role.map_or("none", role_id))
            .text("school", trust.school(&school).map(|school| school.name.as_str()).unwrap_or("empty")))
    }

    /// The same for a record about to be signed. What was found wrong anybody may say.
    pub(crate) fn may_sign(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        device: &DeviceId,
        body: &Body,
    ) -> Result<(), Fault> {
        match (Right::needed(body), body) {
            (None, _) | (_, Body::Inspection(Inspection { job: None, .. })) => Ok(()),
            (Some(right), _) => self.entitled(tx, machine, device, right),
        }
    }
}
