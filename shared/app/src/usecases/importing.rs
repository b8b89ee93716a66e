//! Records that come as a file, and lines that were not taken.

use witnessmark_core::record::{Record, read_bundle, write_bundle};
use witnessmark_core::said::Said;

use super::school::take_in;
use crate::views::{FileOut, ImportView, RefusedView};
use crate::{App, Fault};

impl App {
    /// Everything on this device as a bundle, for another device or a memory stick.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn export_all(&mut self) -> Result<FileOut, Fault> {
        self.store.read(|tx| {
            let mut records = tx.records_of(None)?;
            for machine in tx.machines()? {
                records.extend(tx.records_of(Some(machine))?);
            }
            Ok(FileOut { name: "everything.records.jsonl".into(), text: write_bundle(&records) })
        })
    }

    /// Takes a bundle's records. Lines that aren't good are not taken, and told; nothing else waits for them.
    ///
    /// # Errors
    /// [`Fault`]: an empty file.
    pub fn import(&mut self, text: String) -> Result<ImportView, Fault> {
        let bundle = read_bundle(&text)?;
        let taken = self.store.write(|tx| {
            let records = bundle.records.iter().map(|(_, record)| record);
            let (taken, odd) = take_in(tx, records)?;
            let why = |record: &Record| odd.get(&record.digest).copied();
            let mut refused: Vec<(usize, String)> = bundle
                .records
                .iter()
                .filter_map(|(line, record)| {
                    Some((*line, self.house.word(&format!("refusal-{}", why(record)?))))
                })
                .collect();
            refused.extend(
                bundle.unreadable.iter().map(|(line, _)| (*line, self.house.word("refusal-unreadable"))),
            );
            refused.sort();
            let known = bundle.records.len().saturating_sub(odd.len()).saturating_sub(taken as usize);
            let said = Said::new("imported").number("taken", taken).number("refused", refused.len() as f64);
            Ok::<_, Fault>(ImportView {
                words: self.house.say(&said),
                taken,
                known: u32::try_from(known).unwrap_or(u32::MAX),
                refused: refused
                    .into_iter()
                    .map(|(line, why)| {
                        self.house
                            .say(&Said::new("imported-line").number("line", line as f64).text("why", why))
                    })
                    .collect(),
            })
        })?;
        self.reload_catalogue()?;
        Ok(taken)
    }

    /// Lines from a server that were not taken as records.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn refused(&mut self) -> Result<Vec<RefusedView>, Fault> {
        self.store.read(|tx| {
            let lines = tx.refused_lines()?;
            Ok(lines
                .into_iter()
                .map(|refused| RefusedView {
                    number: refused.number as f64,
                    machine: refused.machine,
                    words: self.house.word(&format!("refusal-{}", refusal(&refused.reason))),
                    line: refused.line,
                })
                .collect())
        })
    }

    /// Puts away a line that was not taken, after a person has looked into it.
    ///
    /// # Errors
    /// [`Fault`]: no such line.
    pub fn refused_away(&mut self, number: f64) -> Result<Vec<RefusedView>, Fault> {
        let away = self.store.write(|tx| Ok::<_, Fault>(tx.refused_away(number as i64)?))?;
        if !away {
            return Err(Fault::new("no-such").text("what", number));
        }
        self.refused()
    }
}

fn refusal(reason: &str) -> &str {
    if ["bad-signature", "unknown-key", "malformed"].contains(&reason) { reason } else { "unreadable" }
}
