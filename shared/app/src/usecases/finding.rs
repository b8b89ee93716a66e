//! What a person calls a machine or a record by, made into its id: for faces where one types.

use witnessmark_core::record::Digest;
use witnessmark_store::Tx;

use crate::house::id;
use crate::{App, Fault};

/// Fewest characters of a digest or an id that are looked up.
const LEAST: usize = 4;

impl App {
    /// A machine's id from its id, its name, or the beginning of either that fits one machine only.
    ///
    /// # Errors
    /// [`Fault`]: none fits, or more than one does.
    pub fn find_machine(&mut self, text: &str) -> Result<String, Fault> {
        let wanted = text.trim().to_lowercase();
        self.store.read(|tx| {
            if let Ok(machine) = id(&wanted) {
                self.house.known(tx, machine)?;
                return Ok(machine.to_string());
            }
            let mut machines = Vec::new();
            for machine in tx.machines()? {
                let described = self.house.known(tx, machine)?.machine;
                machines.push((machine.to_string(), described.map(|(m, _)| m.name).unwrap_or_default()));
            }
            // The whole name goes before a beginning: one machine may be called as another begins.
            let whole = machines.iter().filter(|(_, name)| name.to_lowercase() == wanted).collect::<Vec<_>>();
            if !whole.is_empty() {
                return one(text, &whole);
            }
            let begins = |(id, name): &&(String, String)| {
                let long = wanted.chars().count() >= LEAST;
                !wanted.is_empty()
                    && (name.to_lowercase().starts_with(&wanted) || (long && id.starts_with(&wanted)))
            };
            one(text, &machines.iter().filter(begins).collect::<Vec<_>>())
        })
    }

    /// A record's digest from the digest, or from a beginning of it that fits one record only.
    ///
    /// # Errors
    /// [`Fault`]: none fits, or more than one does.
    pub fn find_record(&mut self, text: &str) -> Result<String, Fault> {
        let wanted = text.trim().to_lowercase();
        if wanted.parse::<Digest>().is_ok() {
            return Ok(wanted);
        }
        let none = || Fault::new("no-such-record").text("what", text);
        if wanted.chars().count() < LEAST {
            return Err(none());
        }
        let found = self.store.read(|tx| begun_with(tx, &wanted))?;
        match found.as_slice() {
            [] => Err(none()),
            [one] => Ok(one.clone()),
            more => Err(Fault::new("ambiguous-record").text("what", text).text("which", more.join(", "))),
        }
    }
}

fn one(text: &str, found: &[&(String, String)]) -> Result<String, Fault> {
    match found {
        [] => Err(Fault::new("no-such").text("what", text)),
        [(id, _)] => Ok(id.clone()),
        more => {
            let which: Vec<_> = more.iter().map(|(id, name)| format!("{name} ({id})")).collect();
            Err(Fault::new("ambiguous").text("what", text).text("which", which.join(", ")))
        }
    }
}

fn begun_with(tx: &Tx<'_>, wanted: &str) -> Result<Vec<String>, Fault> {
    let mut found: Vec<String> = Vec::new();
    for machine in tx.machines()? {
        let marks = tx.timeline(machine, u32::MAX)?;
        found.extend(marks.iter().map(|mark| mark.digest.to_string()).filter(|d| d.starts_with(wanted)));
    }
    let people = tx.records_of(None)?;
    found.extend(people.iter().map(|record| record.digest.to_string()).filter(|d| d.starts_with(wanted)));
    found.sort();
    found.dedup();
    Ok(found)
}
