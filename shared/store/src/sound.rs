//! Does the file still say what was written? SQLite looks after its pages, not after what is in
//! them: a bit that fell over inside a text leaves the database sound and the text another.

use rusqlite::{Connection, types::Value};
use serde::Deserialize;
use witnessmark_core::list::{List, Step};
use witnessmark_core::record::Digest;

use crate::StoreFault;

/// What every inspection begun keeps, whatever else the app adds.
#[derive(Deserialize)]
struct Begun {
    #[serde(rename = "list")]
    _list: List,
}

/// Rows of the log whose columns don't say what their payload says: they would be looked for in vain.
const MISPLACED: &str = "SELECT count(*) FROM record WHERE
    device IS NOT payload ->> '$.device' OR seq IS NOT payload ->> '$.seq' OR
    machine IS NOT payload ->> '$.machine' OR of_seq IS NOT payload ->> '$.of_seq' OR
    kind IS NOT payload ->> '$.kind'";

/// Looks through the log and through what is read back as JSON.
///
/// # Errors
/// [`StoreFault::Damaged`], with what was found.
pub(crate) fn check(connection: &Connection) -> Result<(), StoreFault> {
    look(connection).map_err(|fault| match fault {
        // A column, a table or a text that isn't one: in a file of ours that is damage.
        StoreFault::Other(why) => StoreFault::Damaged(why),
        other => other,
    })
}

fn look(connection: &Connection) -> Result<(), StoreFault> {
    let damaged = |what: &str| Err(StoreFault::Damaged(what.into()));
    let mut log = connection.prepare("SELECT digest, payload FROM record")?;
    let mut rows = log.query([])?;
    while let Some(row) = rows.next()? {
        let payload: String = row.get(1)?;
        if Digest::of(payload.as_bytes()).0 != row.get::<_, [u8; 32]>(0)? {
            return damaged("a record is not as it was written");
        }
    }
    let misplaced: u32 = connection.query_row(MISPLACED, [], |row| row.get(0))?;
    if misplaced > 0 {
        return damaged("a record is not where it belongs");
    }
    for (table, columns) in [("setting", "name, value"), ("draft", "id, body"), ("step", "draft, body")] {
        let mut statement = connection.prepare(&format!("SELECT {columns} FROM {table}"))?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            if !reads(table, &[row.get(0)?, row.get(1)?]) {
                return damaged(&format!("a {table} is not as it was written"));
            }
        }
    }
    Ok(())
}

/// Whether a row's last column can be read back as what that table keeps.
pub(crate) fn reads(table: &str, row: &[Value]) -> bool {
    let Some(Value::Text(last)) = row.last() else { return table == "photo" };
    match table {
        "step" => serde_json::from_str::<Step>(last).is_ok(),
        "draft" => serde_json::from_str::<Begun>(last).is_ok(),
        // Some settings are plain words.
        "setting" => !last.starts_with('{') || serde_json::from_str::<serde_json::Value>(last).is_ok(),
        _ => true,
    }
}
