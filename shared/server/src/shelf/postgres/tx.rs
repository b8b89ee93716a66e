//! Work on one connection.

use std::collections::HashMap;
use std::pin::pin;

use bytes::BytesMut;
use deadpool_postgres::Object;
use futures_util::TryStreamExt;
use tokio::runtime::Handle;
use tokio_postgres::binary_copy::BinaryCopyInWriter;
use tokio_postgres::types::{FromSql, IsNull, ToSql, Type};
use witnessmark_core::record::Digest;

use super::Borrowed;
use crate::ShelfFault;
use crate::shelf::School;
use crate::shelf::engine::{Put, Take, Tx, Work};
use crate::shelf::value::{Row, Value};

type SqlFault = Box<dyn std::error::Error + Sync + Send>;

pub(super) struct PostgresTx<'a> {
    handle: &'a Handle,
    connection: Borrowed,
    /// Inside BEGIN and COMMIT.
    open: bool,
    /// A statement failed: PostgreSQL answers COMMIT with a silent rollback then.
    failed: bool,
}

impl<'a> PostgresTx<'a> {
    pub(super) fn begin(handle: &'a Handle, connection: Borrowed, work: Work) -> Result<Self, ShelfFault> {
        let mut tx = Self { handle, connection, open: false, failed: false };
        let begin = match work {
            Work::Read | Work::Step => return Ok(tx),
            Work::Snapshot => "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY",
            Work::Write => "BEGIN ISOLATION LEVEL READ COMMITTED",
        };
        tx.open = true;
        tx.batch(begin)?;
        Ok(tx)
    }

    pub(super) fn commit(mut self) -> Result<(), ShelfFault> {
        if self.failed {
            return Err(ShelfFault::Other("a statement failed and was passed over".into()));
        }
        if self.open {
            self.batch("COMMIT")?;
            self.open = false;
        }
        Ok(())
    }

    fn object(&self) -> Result<&Object, ShelfFault> {
        self.connection.0.as_ref().ok_or_else(|| ShelfFault::Other("the connection was given up".into()))
    }

    /// Does something on the connection, and remembers when it fails.
    fn on<T>(&mut self, job: impl AsyncFnOnce(&Object) -> Result<T, ShelfFault>) -> Result<T, ShelfFault> {
        let done = self.handle.block_on(job(self.object()?));
        self.failed |= done.is_err();
        done
    }

    fn each_of(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        let sql = numbered(sql);
        self.on(async |object| {
            let statement = object.prepare_cached(&sql).await?;
            let mut rows = pin!(object.query_raw(&statement, values.iter()).await?);
            while let Some(row) = rows.try_next().await? {
                let values = (0..row.len()).map(|column| row.try_get::<_, Value<'static>>(column));
                take(Row::new(values.collect::<Result<_, _>>()?))?;
            }
            Ok(())
        })
    }
}

impl Drop for PostgresTx<'_> {
    fn drop(&mut self) {
        if self.open {
            let back = self.batch("ROLLBACK");
            if back.is_err() || std::thread::panicking() {
                self.connection.discard();
            }
        }
    }
}

impl Tx for PostgresTx<'_> {
    fn batch(&mut self, sql: &str) -> Result<(), ShelfFault> {
        self.on(async |object| Ok(object.batch_execute(sql).await?))
    }

    fn run(&mut self, sql: &str, values: &[Value<'_>]) -> Result<u64, ShelfFault> {
        let sql = numbered(sql);
        self.on(async |object| {
            let statement = object.prepare_cached(&sql).await?;
            Ok(object.execute_raw(&statement, values.iter()).await?)
        })
    }

    fn each(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        self.each_of(sql, values, take)
    }

    fn each_held(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        self.each_of(&format!("{sql} FOR UPDATE"), values, take)
    }

    fn places(&mut self, school: School, digests: &[Digest]) -> Result<HashMap<Digest, u64>, ShelfFault> {
        let wanted: Vec<&[u8]> = digests.iter().map(|digest| digest.0.as_slice()).collect();
        let rows = self.on(async |object| {
            // One by one, by the key: given a list at once, PostgreSQL may read the whole log for it.
            let sql = "SELECT wanted.digest, found.n FROM unnest($2::bytea[]) AS wanted (digest),
                       LATERAL (SELECT n FROM record WHERE school = $1 AND digest = wanted.digest) AS found";
            let statement = object.prepare_cached(sql).await?;
            Ok(object.query(&statement, &[&Value::from(school), &wanted]).await?)
        })?;
        let mut places = HashMap::new();
        for row in rows {
            let mut row = Row::new(vec![row.try_get(0)?, row.try_get(1)?]);
            places.insert(row.digest()?, row.count()?);
        }
        Ok(places)
    }

    fn fill(
        &mut self,
        table: &str,
        columns: &str,
        with: &mut dyn FnMut(&mut Put<'_>) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        let handle = self.handle;
        let (sink, types) = self.on(async |object| {
            let shape = object.prepare_cached(&format!("SELECT {columns} FROM {table} LIMIT 0")).await?;
            let types: Vec<Type> = shape.columns().iter().map(|column| column.type_().clone()).collect();
            let copy = format!("COPY {table} ({columns}) FROM STDIN (FORMAT binary)");
            let statement = object.prepare_cached(&copy).await?;
            Ok((object.copy_in(&statement).await?, types))
        })?;
        let mut writer = pin!(BinaryCopyInWriter::new(sink, &types));
        let filled = with(&mut |values| Ok(handle.block_on(writer.as_mut().write_raw(values.iter()))?));
        let done = filled.and_then(|()| Ok(handle.block_on(writer.finish())?));
        self.failed |= done.is_err();
        done.map(drop)
    }
}

/// PostgreSQL numbers its placeholders with another sign; ours stands nowhere else in a statement.
fn numbered(sql: &str) -> String {
    sql.replace('?', "$")
}

impl ToSql for Value<'_> {
    fn to_sql(&self, ty: &Type, out: &mut BytesMut) -> Result<IsNull, SqlFault> {
        match self {
            Value::Null => Ok(IsNull::Yes),
            Value::Int(number) => number.to_sql_checked(ty, out),
            Value::Text(text) => text.as_ref().to_sql_checked(ty, out),
            Value::Blob(bytes) => bytes.as_ref().to_sql_checked(ty, out),
        }
    }

    fn accepts(ty: &Type) -> bool {
        [Type::INT8, Type::TEXT, Type::BYTEA].contains(ty)
    }

    tokio_postgres::types::to_sql_checked!();
}

impl<'a> FromSql<'a> for Value<'static> {
    fn from_sql(ty: &Type, raw: &'a [u8]) -> Result<Self, SqlFault> {
        Ok(match *ty {
            Type::INT8 => Value::Int(i64::from_sql(ty, raw)?),
            Type::TEXT => Value::Text(String::from_sql(ty, raw)?.into()),
            _ => Value::Blob(raw.to_vec().into()),
        })
    }

    fn from_sql_null(_: &Type) -> Result<Self, SqlFault> {
        Ok(Value::Null)
    }

    fn accepts(ty: &Type) -> bool {
        <Self as ToSql>::accepts(ty)
    }
}
