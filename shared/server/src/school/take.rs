//! Taking records into the log.

use witnessmark_core::record::{DeviceId, Record, Role, Trust};
use witnessmark_sync::wire::{Pushed, Refusal, Refused, Taken};

use super::School;
use super::judge::{self, No};
use crate::ShelfFault;

/// Who sends records. Their authors may be others: a record says itself who stated it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sender {
    /// The member's device.
    pub device: DeviceId,
    /// What the member is.
    pub role: Role,
}

impl School {
    /// Takes records, one envelope a line: those that pass are in the log when this returns, those that
    /// don't are told one by one.
    ///
    /// # Errors
    /// [`ShelfFault`]: then none is taken, and all may be sent again.
    pub fn take(&self, lines: &[u8], sender: &Sender) -> Result<Pushed, ShelfFault> {
        self.follow()?;
        let (numbers, lines) = numbered(lines);
        let judged = judge::judge(judge::read(&lines), &self.members());
        let mut good: Vec<Record> = Vec::new();
        let mut refused = Vec::new();
        // In the order sent; where no place is known yet, that of the next one appended.
        let mut places: Vec<Option<Taken>> = Vec::new();
        for (line, judged) in numbers.into_iter().zip(judged) {
            match judged.and_then(|(record, _)| may_send(sender, record)) {
                Ok(record) => {
                    good.push(record);
                    places.push(None);
                }
                Err(no) => match self.in_log(&no)? {
                    Some(taken) => places.push(Some(taken)),
                    None => refused.push(told(line, no)),
                },
            }
        }
        let good: Vec<&Record> = good.iter().collect();
        let appended = self.append(&good)?;
        let mut appended =
            good.iter().zip(appended).map(|(record, index)| Taken { digest: record.digest, index });
        let taken = places.into_iter().filter_map(|place| place.or_else(|| appended.next())).collect();
        Ok(Pushed { taken, refused })
    }

    /// A record that would be refused now, since its key has ended meanwhile, may lie in the log already.
    fn in_log(&self, no: &No) -> Result<Option<Taken>, ShelfFault> {
        let Some(digest) = no.digest.filter(|_| no.kind == Refusal::Revoked) else { return Ok(None) };
        Ok(self.shelf.index_of(self.id, digest)?.map(|index| Taken { digest, index }))
    }
}

/// Lines that aren't empty, each with its number from 1.
fn numbered(lines: &[u8]) -> (Vec<u32>, Vec<&[u8]>) {
    let lines = lines.split(|byte| *byte == b'\n').zip(1..);
    lines.filter(|(line, _)| !line.trim_ascii().is_empty()).map(|(line, n)| (n, line)).unzip()
}

/// A viewer looks on: of viewers come only their own records about keys and places. A root that is a
/// viewer manages its school with these.
fn may_send(sender: &Sender, record: Record) -> Result<Record, No> {
    let own = record.payload.device == sender.device;
    if sender.role > Role::Viewer || (own && Trust::is_made_of(&record.payload.kind)) {
        return Ok(record);
    }
    let message = "a viewer's records are not taken".into();
    Err(No { digest: Some(record.digest), kind: Refusal::Viewer, message })
}

fn told(line: u32, no: No) -> Refused {
    let No { digest, kind, message } = no;
    let hint = match kind {
        Refusal::Unreadable => {
            "Send it as it was signed. If a newer version wrote it, bring the server to that version."
        }
        Refusal::BadSignature => {
            "It was altered on its way or where it was kept: look for another copy of it."
        }
        Refusal::UnknownKey => "Send the device's first record, which states its key, before it.",
        Refusal::Revoked => {
            "It is kept where it is and counts nowhere; state the fact anew with another key."
        }
        Refusal::Malformed => "Bring the device or the server to the newer version of the two.",
        Refusal::TooLarge => "Say it in several shorter records.",
        Refusal::Viewer => "Ask the school for another role, if you are to do more than look on.",
    };
    Refused { line, digest, kind, message, hint: hint.into() }
}
