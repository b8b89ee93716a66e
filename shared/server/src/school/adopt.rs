//! A server's first start: it takes on a school from a bundle file.

use witnessmark_core::record::{Record, Signature, check, read_bundle};

use super::School;
use crate::ServerFault;
use crate::shelf::{self, Shelf};

/// Takes on the school that a bundle founds (its root's member record and the founding record), if this
/// shelf has none yet; the same again changes nothing.
///
/// # Errors
/// [`ServerFault::NotASchool`] for a bundle that founds none or several, or isn't sound;
/// [`ServerFault::OtherSchool`] where another is served here.
pub fn adopt(shelf: Shelf, bundle: &str) -> Result<School, ServerFault> {
    let no = |why: String| ServerFault::NotASchool(why);
    let bundle = read_bundle(bundle).map_err(|why| no(why.to_string()))?;
    if let Some((line, why)) = bundle.unreadable.first() {
        return Err(no(format!("line {line}: {why}")));
    }
    let trust = check(&bundle).trust;
    let bad = bundle.records.iter().find(|(_, record)| trust.check(record) != Signature::Good);
    if let Some((line, _)) = bad {
        return Err(no(format!("line {line}: its signature is not good")));
    }
    let mut founded = trust.schools().map(|school| school.id);
    let (Some(id), None) = (founded.next(), founded.next()) else {
        return Err(no("it must found one school, and not several".into()));
    };
    if let Some(here) = shelf.schools()?.iter().find(|here| here.0 != id) {
        return Err(ServerFault::OtherSchool { here: here.0, given: id });
    }
    let records: Vec<&Record> = bundle.records.iter().map(|(_, record)| record).collect();
    shelf.append(shelf::School(id), &records)?;
    School::open(shelf)
}
