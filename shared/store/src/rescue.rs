//! Saving what can be saved from a damaged database: the phone may hold the only copy.

use rusqlite::{Connection, OpenFlags, Row};
use witnessmark_core::record::{Envelope, Record, Signature, Trust};

use crate::sound::reads;
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

/// How many numbers of the log are tried in vain before it is taken to end there.
const WIDEST_GAP: u32 = 500;

impl Store {
    /// Brings over what can be read and verified from the damaged database at `old`, which is only read.
    ///
    /// # Errors
    /// Only of the new database; what the old one can't give is counted as lost.
    pub fn rescue(&mut self, old: &str) -> Result<Rescued, StoreFault> {
        let mut rescued = Rescued::default();
        // Read-only: closing it would else write the log beside it into it.
        let Ok(old) = Connection::open_with_flags(old, OpenFlags::SQLITE_OPEN_READ_ONLY) else {
            return Ok(rescued);
        };
        let records = log(&old, &mut rescued);
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
                    if !reads(table, &values) {
                        rescued.lost += 1;
                        continue;
                    }
                    match insert.execute(rusqlite::params_from_iter(values)).map_err(StoreFault::from) {
                        Ok(_) => {}
                        // A step whose draft is lost can't come over alone.
                        Err(StoreFault::Other(_)) => rescued.lost += 1,
                        Err(fault) => return Err(fault),
                    }
                }
            }
            rescued.key = tx.setting("sealed-key")?.is_some();
            Ok(rescued)
        })
    }
}

/// Every row of the log that can be read, around the pages that can't: its rows are counted, so what
/// lies behind a torn page is looked for by number.
fn log(old: &Connection, rescued: &mut Rescued) -> Vec<Envelope> {
    let mut found = Vec::new();
    let (mut last, mut next, mut in_vain) = (0, 1, 0);
    while in_vain < WIDEST_GAP {
        let before = found.len();
        let whole = read_from(old, next, &mut last, &mut found).is_ok();
        if whole {
            break;
        }
        in_vain = if found.len() > before { 0 } else { in_vain + 1 };
        next = next.max(last) + 1;
    }
    let gaps = last - i64::try_from(found.len()).unwrap_or(last);
    rescued.lost += u32::try_from(gaps).unwrap_or(u32::MAX) + u32::from(in_vain > 0);
    found
}

fn read_from(old: &Connection, from: i64, last: &mut i64, found: &mut Vec<Envelope>) -> rusqlite::Result<()> {
    let mut statement = old.prepare_cached(
        "SELECT arrival, protected, payload, signature FROM record WHERE arrival >= ?1 ORDER BY arrival",
    )?;
    let mut cursor = statement.query([from])?;
    while let Some(row) = cursor.next()? {
        let envelope = Envelope { protected: row.get(1)?, payload: row.get(2)?, signature: row.get(3)? };
        *last = row.get(0)?;
        found.push(envelope);
    }
    Ok(())
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
