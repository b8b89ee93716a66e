//! Papers: what leaves the app for people and programs that don't have it. One file a paper;
//! what they say comes from records and from `texts/*/papers.ftl`, never from here.

mod calendar;
mod entry;
mod facts;
mod flow;
mod inspection;
mod label;
pub(crate) mod lettering;
mod marks;
mod pdf;
mod printer;
mod seen;
mod sheet;
mod table;
mod telling;
mod work;

pub(crate) use sheet::has_sheet;

use base64ct::{Base64, Encoding};

use crate::usecases::plain_name;
use crate::views::FileBytes;

/// A file of a machine, named after it.
fn file(machine: &str, ending: &str, media: &str, bytes: &[u8]) -> FileBytes {
    FileBytes {
        name: format!("{}{ending}", plain_name(machine)),
        media: media.to_owned(),
        data: Base64::encode_string(bytes),
    }
}
