//! The record sheet: an inspection, or a job with its list, second look and release, for print.

use witnessmark_core::record::{Body, Digest, Record};
use witnessmark_store::Tx;

use super::flow::Format;
use super::lettering::Lettering;
use super::printer::Printer;
use super::telling::Telling;
use crate::house::{House, digest};
use crate::views::FileBytes;
use crate::{App, Fault};

/// Millimetre, points.
const MM: f32 = 72.0 / 25.4;

impl App {
    /// The record sheet of an inspection, or of a job by any of its records, as PDF.
    ///
    /// # Errors
    /// [`Fault`]: not on this device, a record of another kind, a paper that isn't kept.
    pub fn sheet(&mut self, record: String, paper: String) -> Result<FileBytes, Fault> {
        let name = digest(&record)?;
        let format = format(&paper)?;
        self.store.read(|tx| self.house.record_sheet(tx, name, format))
    }
}

/// Whether a sheet can be printed of a record: of an inspection, and of work from any of its records.
pub(crate) fn has_sheet(record: &Record) -> bool {
    record.payload.machine.is_some()
        && matches!(
            record.payload.typed(),
            Ok(Body::Inspection(_) | Body::JobBegun(_) | Body::SecondLook(_) | Body::Released(_))
        )
}

/// ISO 216 A4, or US Letter (ANSI Y14.1 A).
fn format(paper: &str) -> Result<Format, Fault> {
    let (width, height) = match paper {
        "a4" => (210.0 * MM, 297.0 * MM),
        "letter" => (8.5 * 72.0, 11.0 * 72.0),
        _ => return Err(Fault::new("no-such-paper").text("paper", paper)),
    };
    Ok(Format { width, height, margin: 17.0 * MM, foot: 17.0 * MM })
}

impl House {
    fn record_sheet(&self, tx: &Tx<'_>, name: Digest, format: Format) -> Result<FileBytes, Fault> {
        let record = tx.record(&name)?.ok_or_else(|| Fault::new("no-such").text("what", name.short()))?;
        let none = || Fault::new("no-sheet");
        let telling = Telling::new(self, tx, record.payload.machine.ok_or_else(none)?)?;
        let job = |job: Digest| telling.job(job).ok_or_else(none);
        let entry = match record.payload.typed() {
            Ok(Body::Inspection(body)) => telling.inspection(&record, &body),
            Ok(Body::JobBegun(_)) => job(record.digest)?,
            Ok(Body::SecondLook(body)) => job(body.job)?,
            Ok(Body::Released(body)) => job(body.job)?,
            _ => return Err(none()),
        };
        let bytes = Printer::new(self, &record, &entry, format, &Lettering::read()?).print()?;
        let ending = format!("-{}-{}.pdf", record.payload.at.date_naive(), name.short());
        Ok(super::file(&entry.machine, &ending, "application/pdf", &bytes))
    }
}
