//! A log read by a mapping, and how it was read the last time.

use chrono::{FixedOffset, NaiveDate};
use witnessmark_core::record::Digest;
use witnessmark_core::runlog::{Began, Log, LogTold, Mapping, MappingFault, Reader, day_in};
use witnessmark_store::Tx;

use super::layout::{Laid, lay_out_by};
use crate::Fault;

/// Settings that hold remembered mappings begin so; the rest is the digest of the headings.
const REMEMBERED: &str = "log-mapping:";

/// A file read.
pub(super) struct Read {
    pub log: Log,
    pub told: LogTold,
    /// The day it was logged on, where the file says it.
    pub on: Option<NaiveDate>,
}

/// Reads a text by a mapping.
///
/// # Errors
/// [`Fault`]: a layout or a mapping that doesn't fit, nothing that could be read.
pub(super) fn read(text: &str, mapping: &Mapping, here: FixedOffset) -> Result<Read, Fault> {
    let laid = lay_out_by(text, mapping.separator)?;
    let headings: Vec<&str> = laid.headings.iter().map(String::as_str).collect();
    let mut reader = Reader::new(mapping, &headings).map_err(unfit)?;
    let mut day_beside = None;
    let mut first = true;
    laid.rows(|line, cells| {
        if std::mem::take(&mut first) {
            day_beside = cells.iter().find_map(|cell| day_in(cell));
        }
        reader.row(line, cells);
    })?;
    let log = reader.finish();
    let told = log.told();
    let on = match log.began {
        Some(Began::On(day)) => Some(day),
        // Where this is read is where it was logged, as far as anybody can tell.
        Some(Began::At(moment)) => Some(moment.with_timezone(&here).date_naive()),
        None => day_beside.or(laid.day),
    };
    Ok(Read { log, told, on })
}

/// A mapping that doesn't fit, as a fault.
fn unfit(fault: MappingFault) -> Fault {
    match fault {
        MappingFault::Marks => Fault::new("log-marks"),
        MappingFault::NoColumn(heading) => Fault::new("log-no-column").text("heading", heading),
        MappingFault::Twice(heading) => Fault::new("log-column-twice").text("heading", heading),
        MappingFault::Nothing => Fault::new("log-nothing-chosen"),
        MappingFault::OtherUnit { heading, unit } => {
            Fault::new("log-other-unit").text("heading", heading).text("unit", unit)
        }
    }
}

fn setting(laid: &Laid<'_>) -> Result<String, Fault> {
    Ok(format!("{REMEMBERED}{}", Digest::of(serde_json::to_string(&laid.headings)?.as_bytes())))
}

/// How a file with these headings was read the last time. Separator and decimal mark are this file's own,
/// where it shows them: a program that saved it anew may have changed both.
pub(super) fn remembered(tx: &Tx<'_>, laid: &Laid<'_>) -> Result<Option<Mapping>, Fault> {
    let Some(kept) = tx.setting(&setting(laid)?)? else { return Ok(None) };
    // One that this version can't read is guessed anew.
    let Ok(mapping) = serde_json::from_str::<Mapping>(&kept) else { return Ok(None) };
    let same = mapping.separator == laid.separator;
    let decimal = laid.decimal.filter(|_| !same).unwrap_or(mapping.decimal);
    Ok(Some(Mapping { separator: laid.separator, decimal, ..mapping }))
}

/// Remembers how a file with these headings is read.
pub(super) fn remember(tx: &Tx<'_>, text: &str, mapping: &Mapping) -> Result<(), Fault> {
    let laid = lay_out_by(text, mapping.separator)?;
    Ok(tx.set(&setting(&laid)?, &serde_json::to_string(mapping)?)?)
}
