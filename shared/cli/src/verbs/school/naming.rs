//! Members and their devices, as a person names them.

use witnessmark_app::Fault;
use witnessmark_app::views::SchoolView;

use crate::naming::one;

/// The member that is meant, by name or id.
pub fn person(view: &SchoolView, named: &str) -> Result<String, Fault> {
    let known = view.members.iter().map(|member| (member.person.clone(), member.name.clone()));
    one(named, known.collect())
}

/// The device that is meant: by the code that its holder reads out, by its thumbprint, or by its
/// holder's name where they have only that one.
pub fn device(view: &SchoolView, named: &str) -> Result<String, Fault> {
    let devices = || {
        let devices = |member: &'_ witnessmark_app::views::MemberView| {
            let name = member.name.clone();
            let devices = member.devices.iter().map(move |device| (device.clone(), name.clone()));
            devices.collect::<Vec<_>>()
        };
        view.members.iter().flat_map(devices)
    };
    // A device of one's own needs no school to be known by its thumbprint.
    if named.len() == THUMBPRINT || devices().any(|(device, _)| device.device == named) {
        return Ok(named.to_owned());
    }
    let known = devices().map(|(device, name)| (device.code.to_lowercase(), name));
    let code = one(named, known.collect())?;
    let found = devices().find(|(device, _)| device.code.to_lowercase() == code);
    found.map(|(device, _)| device.device).ok_or_else(|| Fault::new("no-such-member"))
}

/// Letters of a thumbprint (RFC 7638: SHA-256 in base64url).
const THUMBPRINT: usize = 43;
