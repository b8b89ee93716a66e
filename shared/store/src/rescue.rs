//! Saving what can be saved from a damaged database: the phone may hold the only copy.

use rusqlite::{Connection, OpenFlags, Row};
use witnessmark_core::record::{Envelope, Record, Signature, Trust};

use crate::{Store, StoreFault};

/// What a rescue brought over.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rescued {
    /// Records whose signature is good.
    pub records: u32,
    /// Rows that were there but couldn't be read, or whose signature isn't good.
    pub lost: u32,
    /// Whether the device's sealed key came over.
    pub key: bool,
}

/// The tables besides the log whose rows are brought over as they are.
const PLAIN: &[(&str, &str, usize)] = &[
    ("setting", "name, value", 2),
    ("draft", "id, machine, occasion, state, started, body", 6),
    ("step", "draft, n, body", 3),
    ("photo", "digest, media, bytes", 3),
    ("pending", "n, machine, at, body", 4),
    ("refused", "arrival, machine, line, reason", 4),
];

impl Store {
    /// Brings over what can be read and verified from the damaged database at `old`, which is only read.
    ///
    /// # Errors
    /// Only of the new database; what the old one can't give is counted as lost.
    pub fn rescue(&mut self, old: &str) -> Result<Rescued, StoreFault> {
        let mut rescued = Rescued::default();
        let Ok(old) = Connection::open_with_flags(old, OpenFlags::SQLITE_OPEN_READ_WRITE) else {
            return Ok(rescued);
        };
        let records = rows(&old, "SELECT protected, payload, signature FROM record", &mut rescued, |row| {
            Ok(Envelope { protected: row.get(0)?, payload: row.get(1)?, signature: row.get(2)? })
        });
        let records: Vec<Record> = records
            .into_iter()
            .filter_map(|envelope| Record::parse(envelope).map_err(|_| rescued.lost += 1).ok())
            .collect();
        let trust = Trust::from_records(&records);
        self.write(|tx| {
            for record in &records {
                if trust.check(record) == Signature::Good {
                    tx.append(record)?;
                    rescued.records += 1;
                } else {
                    rescued.lost += 1;
                }
            }
            for (table, columns, count) in PLAIN {
                let read = |row: &Row<'_>| {
                    (0..*count).map(|i| row.get(i)).collect::<Result<Vec<rusqlite::types::Value>, _>>()
                };
                let found = rows(&old, &format!("SELECT {columns} FROM {table}"), &mut rescued, read);
                let places = vec!["?"; *count].join(", ");
                let sql = format!("INSERT INTO {table} ({columns}) VALUES ({places}) ON CONFLICT DO NOTHING");
                let mut insert = tx.inner.prepare(&sql)?;
                for values in found {
                    // A step whose draft is lost can't come over alone.
                    if insert.execute(rusqlite::params_from_iter(values)).is_err() {
                        rescued.lost += 1;
                    }
                }
            }
            rescued.key = tx.setting("sealed-key")?.is_some();
            Ok(rescued)
        })
    }
}

/// Every row that can be read; damage ends the reading and counts as one loss.
fn rows<T>(
    old: &Connection,
    sql: &str,
    rescued: &mut Rescued,
    read: impl Fn(&Row<'_>) -> rusqlite::Result<T>,
) -> Vec<T> {
    let mut found = Vec::new();
    let Ok(mut statement) = old.prepare(sql) else {
        rescued.lost += 1;
        return found;
    };
    let Ok(mut cursor) = statement.query([]) else {
        rescued.lost += 1;
        return found;
    };
    loop {
        match cursor.next() {
            Ok(Some(row)) => match read(row) {
                Ok(value) => found.push(value),
                Err(_) => rescued.lost += 1,
            },
            Ok(None) => return found,
            Err(_) => {
                rescued.lost += 1;
                return found;
            }
        }
    }
}
