//! A bundle: a file of records, one envelope a line (JSON Lines), that anyone can verify.

use serde::Serialize;

use super::{ChainFault, DeviceId, Digest, EnvelopeFault, Record, Signature, Trust, check_chain};

/// Records read from a file, with the lines that aren't any.
#[derive(Debug, Default)]
pub struct Bundle {
    /// Line number (from 1) and record.
    pub records: Vec<(usize, Record)>,
    /// Line number and why it is no record.
    pub unreadable: Vec<(usize, EnvelopeFault)>,
}

/// Why a file is no bundle at all.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum BundleFault {
    /// Nothing in it.
    #[error("there is no record in this file")]
    Empty,
}

/// One fault of one line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LineFault {
    /// Line in the file, from 1; none where the fault is of a record that isn't there.
    pub line: Option<usize>,
    /// The record, where it could be read.
    pub record: Option<Digest>,
    /// The device that signed it.
    pub device: Option<DeviceId>,
    /// Its number in the device's chain.
    pub seq: Option<u64>,
    /// What is wrong.
    pub fault: Checked,
}

/// What can be wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "what", rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum Checked {
    /// The line is no record.
    Unreadable { why: String },
    /// The payload was altered after signing, or the signature is somebody else's.
    BadSignature,
    /// No member record in the file states this key.
    UnknownKey,
    /// Signed after the key was revoked.
    RevokedKey,
    /// A record of a known kind says something that kind can't say.
    Malformed { kind: String, why: String },
    /// Records are missing between others.
    MissingRecord { from: u64, to: u64 },
    /// It doesn't follow from the record before.
    BrokenChain,
    /// Two records in one place.
    ForkedChain { other: Digest },
}

/// What came of checking a bundle.
#[derive(Debug)]
pub struct Report {
    /// Every fault, in the order of the file; none means that all is as signed.
    pub faults: Vec<LineFault>,
    /// How many records were read.
    pub records: usize,
    /// The keys it names.
    pub trust: Trust,
}

/// Reads a file's lines. Lines that aren't records are told, not dropped.
///
/// # Errors
/// [`BundleFault`] when there is nothing in it.
pub fn read_bundle(text: &str) -> Result<Bundle, BundleFault> {
    let mut bundle = Bundle::default();
    for (index, line) in text.lines().enumerate() {
        if line.trim().is_empty() {
            continue;
        }
        match Record::read(line) {
            Ok(record) => bundle.records.push((index + 1, record)),
            Err(fault) => bundle.unreadable.push((index + 1, fault)),
        }
    }
    if bundle.records.is_empty() && bundle.unreadable.is_empty() {
        return Err(BundleFault::Empty);
    }
    Ok(bundle)
}

/// The file of these records.
pub fn write_bundle<'a>(records: impl IntoIterator<Item = &'a Record>) -> String {
    records.into_iter().map(|record| record.line() + "\n").collect()
}

/// Checks every record of a bundle with nothing but the bundle.
pub fn check(bundle: &Bundle) -> Report {
    let records = || bundle.records.iter().map(|(_, record)| record);
    let trust = Trust::from_records(records());
    let mut faults: Vec<LineFault> = bundle
        .unreadable
        .iter()
        .map(|(line, why)| LineFault {
            line: Some(*line),
            record: None,
            device: None,
            seq: None,
            fault: Checked::Unreadable { why: why.to_string() },
        })
        .collect();
    for (line, record) in &bundle.records {
        let signature = match trust.check(record) {
            Signature::Good => None,
            Signature::Bad | Signature::NotChecked => Some(Checked::BadSignature),
            Signature::UnknownKey => Some(Checked::UnknownKey),
            Signature::Revoked => Some(Checked::RevokedKey),
        };
        let body = record
            .payload
            .typed()
            .err()
            .map(|why| Checked::Malformed { kind: record.payload.kind.clone(), why: why.to_string() });
        faults.extend(signature.into_iter().chain(body).map(|fault| at(*line, record, fault)));
    }
    let line_of = |digest: &Digest| bundle.records.iter().find(|(_, r)| r.digest == *digest);
    for fault in check_chain(records()) {
        match fault {
            ChainFault::Missing { device, from, to, .. } => faults.push(LineFault {
                line: None,
                record: None,
                device: Some(device),
                seq: None,
                fault: Checked::MissingRecord { from, to },
            }),
            ChainFault::Broken { record, .. } => {
                faults.extend(line_of(&record).map(|(line, r)| at(*line, r, Checked::BrokenChain)));
            }
            ChainFault::Forked { record, other, .. } => {
                faults.extend(line_of(&record).map(|(line, r)| at(*line, r, Checked::ForkedChain { other })))
            }
        }
    }
    faults.sort_by_key(|fault| fault.line.unwrap_or(usize::MAX));
    Report { faults, records: bundle.records.len(), trust }
}

fn at(line: usize, record: &Record, fault: Checked) -> LineFault {
    LineFault {
        line: Some(line),
        record: Some(record.digest),
        device: Some(record.payload.device.clone()),
        seq: Some(record.payload.seq),
        fault,
    }
}
