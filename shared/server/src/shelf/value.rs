//! What stands in a column: both databases keep whole numbers, texts and bytes, and nothing else.

use std::borrow::Cow;

use witnessmark_core::record::{DeviceId, Digest};

use super::School;
use crate::{Refusal, ShelfFault};

/// A column's value.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Value<'a> {
    Null,
    Int(i64),
    Text(Cow<'a, str>),
    Blob(Cow<'a, [u8]>),
}

/// A text for a column: PostgreSQL keeps no NUL, so SQLite doesn't either.
pub(super) fn text(text: &str) -> Result<Value<'_>, ShelfFault> {
    if text.contains('\0') { Err(Refusal::NotText.into()) } else { Ok(Value::Text(text.into())) }
}

/// A count for a column.
pub(super) fn int(count: u64) -> Value<'static> {
    // What is larger than any column's number is past every end.
    Value::Int(i64::try_from(count).unwrap_or(i64::MAX))
}

/// Bytes for a column.
pub(super) fn blob(bytes: &[u8]) -> Value<'_> {
    Value::Blob(bytes.into())
}

impl From<School> for Value<'static> {
    fn from(school: School) -> Self {
        school.0.into()
    }
}

impl From<Digest> for Value<'static> {
    fn from(digest: Digest) -> Self {
        Self::Blob(digest.0.to_vec().into())
    }
}

impl From<i64> for Value<'static> {
    fn from(number: i64) -> Self {
        Self::Int(number)
    }
}

/// A row, read column by column, in order.
pub(super) struct Row(std::vec::IntoIter<Value<'static>>);

impl Row {
    pub(super) fn new(values: Vec<Value<'static>>) -> Self {
        Self(values.into_iter())
    }

    pub(super) fn values(self) -> Vec<Value<'static>> {
        self.0.collect()
    }

    pub(super) fn int(&mut self) -> Result<i64, ShelfFault> {
        match self.0.next() {
            Some(Value::Int(number)) => Ok(number),
            other => Err(unfit("a number", &other)),
        }
    }

    pub(super) fn count(&mut self) -> Result<u64, ShelfFault> {
        u64::try_from(self.int()?).map_err(|_| ShelfFault::Damaged("a count below nought".into()))
    }

    pub(super) fn text(&mut self) -> Result<String, ShelfFault> {
        match self.0.next() {
            Some(Value::Text(text)) => Ok(text.into_owned()),
            other => Err(unfit("a text", &other)),
        }
    }

    pub(super) fn blob(&mut self) -> Result<Vec<u8>, ShelfFault> {
        match self.0.next() {
            Some(Value::Blob(bytes)) => Ok(bytes.into_owned()),
            other => Err(unfit("bytes", &other)),
        }
    }

    pub(super) fn digest(&mut self) -> Result<Digest, ShelfFault> {
        let bytes = self.blob()?.try_into();
        bytes.map(Digest).map_err(|_| ShelfFault::Damaged("a digest is not 32 bytes".into()))
    }

    pub(super) fn device(&mut self) -> Result<Option<DeviceId>, ShelfFault> {
        match self.0.next() {
            Some(Value::Text(text)) => Ok(Some(DeviceId(text.into_owned()))),
            Some(Value::Null) => Ok(None),
            other => Err(unfit("a device", &other)),
        }
    }
}

fn unfit(wanted: &str, found: &Option<Value<'_>>) -> ShelfFault {
    let found = match found {
        Some(Value::Null) => "nothing",
        Some(Value::Int(_)) => "a number",
        Some(Value::Text(_)) => "a text",
        Some(Value::Blob(_)) => "bytes",
        None => "no column",
    };
    ShelfFault::Damaged(format!("{found} where {wanted} should be"))
}
