//! Bundles: one machine's records as a file, and a file checked.

use std::collections::BTreeSet;

use witnessmark_core::record::{Body, Checked, LineFault, check, read_bundle, write_bundle};
use witnessmark_core::said::Said;

use crate::house::{House, id};
use crate::views::{FileOut, Named, VerifyFault, VerifyView};
use crate::{App, Fault};

impl App {
    /// One machine's records as a bundle, with the records of the people who signed them.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn export(&mut self, machine: String) -> Result<FileOut, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| {
            let history = self.house.known(tx, machine)?;
            let records = tx.records_of(Some(machine))?;
            let people = tx.records_of(None)?;
            let mut devices: BTreeSet<_> = records.iter().map(|r| r.payload.device.clone()).collect();
            // Who ended a signer's key speaks too: their own record tells whose word that is.
            let enders: Vec<_> = people
                .iter()
                .filter(|r| match r.payload.typed() {
                    Ok(Body::Revoked(revoked)) => devices.contains(&revoked.device),
                    _ => false,
                })
                .map(|r| r.payload.device.clone())
                .collect();
            devices.extend(enders);
            let people = people.iter().filter(|r| devices.contains(&r.payload.device));
            let name = history.machine.map(|(machine, _)| machine.name).unwrap_or_default();
            Ok(FileOut {
                name: format!("{}.records.jsonl", plain_name(&name)),
                text: write_bundle(people.chain(&records)),
            })
        })
    }

    /// Checks a bundle with nothing but itself.
    ///
    /// # Errors
    /// [`Fault`]: an empty file.
    pub fn verify(&mut self, text: String) -> Result<VerifyView, Fault> {
        let bundle = read_bundle(&text)?;
        let report = check(&bundle);
        let house = &self.house;
        let people = report
            .trust
            .devices()
            .map(|(device, standing)| Named { id: device.0.clone(), words: standing.person.clone() });
        let mut machines: Vec<Named> = Vec::new();
        for (_, record) in &bundle.records {
            if let (Some(machine), Ok(Body::Machine(body))) = (record.payload.machine, record.payload.typed())
            {
                let machine = machine.to_string();
                machines.retain(|named| named.id != machine);
                machines.push(Named { id: machine, words: body.name });
            }
        }
        let records = u32::try_from(report.records).unwrap_or(u32::MAX);
        let faults: Vec<VerifyFault> = report.faults.iter().map(|fault| house.verify_fault(fault)).collect();
        let headline = if faults.is_empty() {
            Said::new("verify-good").number("records", records)
        } else {
            Said::new("verify-bad").number("faults", faults.len() as f64).number("records", records)
        };
        Ok(VerifyView {
            good: faults.is_empty(),
            headline: house.say(&headline),
            records,
            people: people.collect(),
            machines,
            faults,
        })
    }
}

impl House {
    fn verify_fault(&self, fault: &LineFault) -> VerifyFault {
        let what = match &fault.fault {
            Checked::Unreadable { .. } => "unreadable",
            Checked::BadSignature => "bad-signature",
            Checked::UnknownKey => "unknown-key",
            Checked::RevokedKey => "revoked-key",
            Checked::Malformed { .. } => "malformed",
            Checked::MissingRecord { .. } => "missing-record",
            Checked::BrokenChain => "broken-chain",
            Checked::ForkedChain { .. } => "forked-chain",
        };
        let mut said = Said::new(format!("verify-{what}"))
            .text("device", fault.device.as_ref().map(|device| device.short()).unwrap_or_default())
            .text("record", fault.record.map(|record| record.short()).unwrap_or_default())
            .number("line", fault.line.unwrap_or(0) as f64);
        said = match &fault.fault {
            Checked::Unreadable { why } => said.text("why", why),
            Checked::Malformed { kind, why } => said.text("kind", kind).text("why", why),
            Checked::MissingRecord { from, to } => said.number("from", *from as f64).number("to", *to as f64),
            Checked::ForkedChain { other } => said.text("other", other.short()),
            _ => said,
        };
        VerifyFault {
            what: what.to_owned(),
            line: fault.line.and_then(|line| u32::try_from(line).ok()),
            record: fault.record.map(|record| record.to_string()),
            words: self.say(&said),
            hint: self.catalogue.texts.word(&self.language, &said.id, Some("hint"), &said.args),
        }
    }
}

/// A machine's name as the beginning of a file's name that every system takes.
pub(crate) fn plain_name(name: &str) -> String {
    let plain: String =
        name.chars().map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
    let plain = plain.split('-').filter(|part| !part.is_empty()).collect::<Vec<_>>().join("-");
    if plain.is_empty() { "machine".to_owned() } else { plain }
}
