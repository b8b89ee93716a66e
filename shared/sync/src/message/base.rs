//! The signature base: the lines that are signed (RFC 9421 § 2.5).

use sfv::{FieldType as _, InnerList, List, ListEntry};

use super::MessageFault;

/// The signature base of these components, whose values `value` gives.
///
/// # Errors
/// [`MessageFault::Component`] if there is no value; [`MessageFault::Value`] if it can't stand on a line.
pub fn signature_base(
    covered: &InnerList,
    value: impl Fn(&str) -> Option<String>,
) -> Result<String, MessageFault> {
    let mut base = String::new();
    for component in &covered.items {
        let written = component.serialize();
        let name = component.bare_item.as_string().filter(|_| component.params.is_empty());
        let value = name.and_then(|name| value(name.as_str()));
        let value = value.ok_or_else(|| MessageFault::Component(written.clone()))?;
        // A line end within a value would be a line of its own that nobody sent.
        if !value.bytes().all(|byte| (b' '..=b'~').contains(&byte)) {
            return Err(MessageFault::Value(written));
        }
        base.push_str(&format!("{written}: {value}\n"));
    }
    let params: List = vec![ListEntry::InnerList(covered.clone())];
    base.push_str("\"@signature-params\": ");
    base.push_str(&params.serialize().unwrap_or_default());
    Ok(base)
}
