//! Devices at the door: they show who they are and wait until the root admits them.

use witnessmark_core::record::{Body, DeviceId, Envelope, Member, Record, write_bundle};
use witnessmark_sync::wire::WaitingDevice;

use super::School;
use super::judge::{self, No};
use crate::shelf::Waiting;
use crate::{ShelfFault, clock};

/// More devices than these don't wait at once.
const MOST: u64 = 500;

/// What came of an introduction.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Introduced {
    /// The root has admitted the device, and its records are in the log now.
    In,
    /// It waits.
    Waits,
    /// It can't: why.
    No(String),
}

impl School {
    /// A device shows its member record and its word that it joins, one envelope a line.
    ///
    /// # Errors
    /// [`ShelfFault`]; [`crate::Refusal::TooManyWaiting`].
    pub fn introduce(&self, lines: &[u8], now: i64) -> Result<Introduced, ShelfFault> {
        self.follow()?;
        let members = self.members();
        let lines: Vec<&[u8]> = lines.split(|byte| *byte == b'\n').filter(|line| !line.is_empty()).collect();
        let judged: Result<Vec<_>, No> = judge::judge(judge::read(&lines), &members).into_iter().collect();
        let records = match judged {
            Ok(records) => records,
            Err(no) => return Ok(Introduced::No(no.message)),
        };
        let Some(device) = self.introduces(&records) else {
            let why = "it takes two records of one device: its member record, and that it joins this school";
            return Ok(Introduced::No(why.into()));
        };
        let records: Vec<Record> = records.into_iter().map(|(record, _)| record).collect();
        if members.has_place(&device, now) && members.with(records.clone()).role(&device, now).is_some() {
            self.append(&records.iter().collect::<Vec<_>>())?;
            self.shelf.waiting_drop(self.id, &device)?;
            return Ok(Introduced::In);
        }
        let lines = write_bundle(&records);
        self.shelf.waiting_put(self.id, &Waiting { device, lines, at: now }, MOST)?;
        Ok(Introduced::Waits)
    }

    /// Whose introduction this is, if it is one.
    fn introduces(&self, records: &[(Record, Body)]) -> Option<DeviceId> {
        let [(first, one), (second, other)] = records else { return None };
        let joins = |body: &Body| matches!(body, Body::SchoolJoined(body) if body.school == self.id.0);
        let states = |body: &Body| matches!(body, Body::Member(_));
        let both = (states(one) && joins(other)) || (joins(one) && states(other));
        (both && first.payload.device == second.payload.device).then(|| first.payload.device.clone())
    }

    /// Who waits, longest first. Whoever was admitted meanwhile waits no more.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn waiting(&self, now: i64) -> Result<Vec<WaitingDevice>, ShelfFault> {
        self.follow()?;
        let members = self.members();
        let mut waiting = Vec::new();
        for one in self.shelf.waiting(self.id)? {
            let joined = members.trust().standing(&one.device).and_then(|standing| standing.joined.as_ref());
            if members.has_place(&one.device, now) && joined.is_some_and(|(school, _)| *school == self.id.0) {
                self.shelf.waiting_drop(self.id, &one.device)?;
            } else if !members.has_place(&one.device, now) {
                waiting.push(shown(one)?);
            }
        }
        Ok(waiting)
    }
}

fn shown(waiting: Waiting) -> Result<WaitingDevice, ShelfFault> {
    let damaged = |why: String| ShelfFault::Damaged(format!("a device that waits: {why}"));
    let records: Vec<Record> = waiting
        .lines
        .lines()
        .map(|line| Record::read(line).map_err(|why| damaged(why.to_string())))
        .collect::<Result<_, _>>()?;
    let member = records.iter().find_map(|record| match record.payload.typed() {
        Ok(Body::Member(member)) => Some(member),
        _ => None,
    });
    let Member { person, name, .. } = member.ok_or_else(|| damaged("it has no member record".into()))?;
    let records: Vec<Envelope> = records.into_iter().map(|record| record.envelope).collect();
    Ok(WaitingDevice { device: waiting.device, person, name, since: clock::told(waiting.at), records })
}
