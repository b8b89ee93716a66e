//! What is told to anybody: which school this is, and what is needed to trust it.

use std::collections::BTreeSet;

use witnessmark_core::record::{Body, DeviceId, Record};
use witnessmark_sync::wire::SchoolCard;

use super::{Members, School};
use crate::ShelfFault;

impl School {
    /// The school's card.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn card(&self) -> Result<SchoolCard, ShelfFault> {
        self.follow()?;
        let members = self.members();
        let school = members.trust().school(&self.id.0);
        let name = school.map(|school| school.name.clone()).unwrap_or_default();
        let roots = self.roots(&members);
        let shown = members.made_of().filter(|record| self.shows(record, &roots));
        let records = shown.map(|record| record.envelope.clone()).collect();
        Ok(SchoolCard { school: self.id.0, name, records, server: self.verifier.to_string() })
    }

    /// The devices that were or are the root.
    fn roots(&self, members: &Members) -> BTreeSet<DeviceId> {
        let school = members.trust().school(&self.id.0);
        let former = members.made_of().filter(|record| {
            let handed =
                matches!(record.payload.typed(), Ok(Body::RootHanded(body)) if body.school == self.id.0);
            handed && school.is_some_and(|school| school.by_root(record))
        });
        let former = former.map(|record| record.payload.device.clone());
        former.chain(school.map(|school| school.root.clone())).collect()
    }

    /// Whether a record is needed to follow who the root is: no other member is named to strangers.
    fn shows(&self, record: &Record, roots: &BTreeSet<DeviceId>) -> bool {
        let by_root = roots.contains(&record.payload.device);
        by_root
            && match record.payload.typed() {
                Ok(Body::Member(_)) => true,
                Ok(Body::SchoolFounded(_)) => record.digest == self.id.0,
                Ok(Body::RootHanded(body)) => body.school == self.id.0,
                Ok(Body::MemberAdmitted(body)) => body.school == self.id.0 && roots.contains(&body.device),
                Ok(Body::Vouched(body)) => roots.contains(&body.device),
                Ok(Body::Revoked(body)) => roots.contains(&body.device),
                _ => false,
            }
    }
}
