//! A role, as it is typed.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use witnessmark_core::record::Role;

/// `viewer`, `pilot`, `mechanic` or `instructor`.
pub fn parser() -> impl TypedValueParser<Value = Role> {
    PossibleValuesParser::new(["viewer", "pilot", "mechanic", "instructor"]).map(|role| match role.as_str() {
        "pilot" => Role::Pilot,
        "mechanic" => Role::Mechanic,
        "instructor" => Role::Instructor,
        _ => Role::Viewer,
    })
}
