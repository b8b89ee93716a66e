//! `person`: other people who sign in this data folder, each with a key and PIN of their own.

mod add;
mod begin;
mod list;

use witnessmark_app::views::SecondPerson;
use witnessmark_app::{App, Fault};

use crate::naming;

super::group! {
    Add add;
    List list;
    Begin begin;
}

/// The person that is meant.
pub fn find(app: &mut App, named: &str) -> Result<SecondPerson, Fault> {
    // The data folder's own person does the work: they can't be their own second pair of eyes.
    if app.start()?.person.is_some_and(|own| own.name.to_lowercase() == named.trim().to_lowercase()) {
        return Err(Fault::new("second-same-person"));
    }
    let mut people = app.second_people()?;
    let known = people.iter().map(|person| (person.device.clone(), person.name.clone()));
    let device = naming::one(named, known.collect())?;
    people.retain(|person| person.device == device);
    people.pop().ok_or_else(|| Fault::new("second-same-person"))
}
