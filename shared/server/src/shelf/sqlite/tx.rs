//! Work on one connection.

use std::collections::HashMap;

use rusqlite::types::{ToSqlOutput, ValueRef};
use rusqlite::{Connection, ToSql, Transaction, TransactionBehavior, params_from_iter};
use witnessmark_core::record::Digest;

use crate::ShelfFault;
use crate::shelf::School;
use crate::shelf::engine::{Put, Take, Tx};
use crate::shelf::value::{Row, Value};

pub(super) fn transact(
    connection: &mut Connection,
    behavior: TransactionBehavior,
    job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
) -> Result<(), ShelfFault> {
    let mut tx = SqliteTx { inner: connection.transaction_with_behavior(behavior)? };
    job(&mut tx)?;
    Ok(tx.inner.commit()?)
}

struct SqliteTx<'a> {
    inner: Transaction<'a>,
}

impl Tx for SqliteTx<'_> {
    fn batch(&mut self, sql: &str) -> Result<(), ShelfFault> {
        Ok(self.inner.execute_batch(sql)?)
    }

    fn run(&mut self, sql: &str, values: &[Value<'_>]) -> Result<u64, ShelfFault> {
        Ok(self.inner.prepare_cached(sql)?.execute(params_from_iter(values))? as u64)
    }

    fn each(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let columns = statement.column_count();
        let mut rows = statement.query(params_from_iter(values))?;
        while let Some(row) = rows.next()? {
            let values = (0..columns).map(|column| owned(row.get_ref(column)?));
            take(Row::new(values.collect::<Result<_, ShelfFault>>()?))?;
        }
        Ok(())
    }

    fn each_held(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        // A writing transaction holds the whole file.
        self.each(sql, values, take)
    }

    fn places(&mut self, school: School, digests: &[Digest]) -> Result<HashMap<Digest, u64>, ShelfFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT n FROM record WHERE school = ?1 AND digest = ?2")?;
        let mut places = HashMap::new();
        for digest in digests {
            let mut rows = statement.query((school.0.0, digest.0))?;
            if let Some(row) = rows.next()? {
                places.insert(*digest, Row::new(vec![owned(row.get_ref(0)?)?]).count()?);
            }
        }
        Ok(places)
    }

    fn fill(
        &mut self,
        table: &str,
        columns: &str,
        with: &mut dyn FnMut(&mut Put<'_>) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        let places: Vec<String> = (1..).zip(columns.split(',')).map(|(n, _)| format!("?{n}")).collect();
        let sql = format!("INSERT INTO {table} ({columns}) VALUES ({})", places.join(", "));
        let mut statement = self.inner.prepare_cached(&sql)?;
        with(&mut |values| {
            statement.execute(params_from_iter(values))?;
            Ok(())
        })
    }
}

fn owned(value: ValueRef<'_>) -> Result<Value<'static>, ShelfFault> {
    Ok(match value {
        ValueRef::Null => Value::Null,
        ValueRef::Integer(number) => Value::Int(number),
        ValueRef::Text(bytes) => {
            let text = std::str::from_utf8(bytes);
            Value::Text(
                text.map_err(|_| ShelfFault::Damaged("a text is not UTF-8".into()))?.to_owned().into(),
            )
        }
        ValueRef::Blob(bytes) => Value::Blob(bytes.to_vec().into()),
        ValueRef::Real(_) => return Err(ShelfFault::Damaged("a broken number".into())),
    })
}

impl ToSql for Value<'_> {
    fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
        Ok(ToSqlOutput::Borrowed(match self {
            Value::Null => ValueRef::Null,
            Value::Int(number) => ValueRef::Integer(*number),
            Value::Text(text) => ValueRef::Text(text.as_bytes()),
            Value::Blob(bytes) => ValueRef::Blob(bytes),
        }))
    }
}
