//! This device's place in a school, and the key that carries its records there.

use base64ct::{Base64, Encoding};
use serde::{Deserialize, Serialize};
use witnessmark_core::record::{Body, DeviceId, Digest, Record, SchoolJoined, SigningSeed};
use witnessmark_store::Tx;
use witnessmark_sync::client::Following;
use zeroize::Zeroizing;

use crate::house::House;
use crate::identity::Signatory;
use crate::{Fault, identity};

/// What this device keeps of its school.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Place {
    /// The school.
    pub school: Digest,
    /// The server's address (`https://school.example`), where there is one.
    pub address: Option<String>,
    /// What is known of the server's log, once its key is known.
    pub following: Option<Following>,
    /// How the last round ended.
    pub last: Option<LastRound>,
    /// The server's own words that contradict each other.
    pub distrust: Option<Distrust>,
}

/// How a round ended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LastRound {
    /// When, RFC 3339.
    pub at: String,
    /// `done`, `waits`, or the kind of the fault.
    pub end: String,
    /// In words, where the end is a fault that brings its own.
    pub words: String,
}

/// Evidence that a server lies.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Distrust {
    /// When it was found, RFC 3339.
    pub at: String,
    /// How it lies: the message's name.
    pub lie: String,
    /// What it says now, a signed note.
    pub says: String,
    /// What it had said, a signed note.
    pub said: Option<String>,
}

const PLACE: &str = "school";
const COURIER: &str = "courier-key";

/// This device's place, if it has one.
pub(crate) fn place(tx: &Tx<'_>) -> Result<Option<Place>, Fault> {
    Ok(tx
        .setting(PLACE)?
        .filter(|kept| !kept.is_empty())
        .map(|kept| serde_json::from_str(&kept))
        .transpose()?)
}

/// The same, where there must be one.
pub(super) fn placed(tx: &Tx<'_>) -> Result<Place, Fault> {
    place(tx)?.ok_or_else(|| Fault::new("no-school"))
}

pub(super) fn keep_place(tx: &Tx<'_>, place: Option<&Place>) -> Result<(), Fault> {
    let kept = place.map(serde_json::to_string).transpose()?.unwrap_or_default();
    Ok(tx.set(PLACE, &kept)?)
}

/// Who signs here, where the first start is done.
pub(super) fn own(tx: &Tx<'_>) -> Result<Signatory, Fault> {
    identity::signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))
}

/// The courier key of this device. It opens no seal and signs no fact, so it lies in the keychain where
/// there is one and unsealed in the database otherwise.
pub(super) fn courier(house: &House, tx: &Tx<'_>, device: &DeviceId) -> Result<SigningSeed, Fault> {
    let name = format!("courier:{device}");
    let kept = match house.platform.keychain() {
        Some(keychain) => {
            keychain.secret(&name).map_err(|why| Fault::new("keychain-missing").text("why", why))?
        }
        None => None,
    };
    let kept = match kept {
        Some(secret) => Some(Zeroizing::new(secret)),
        None => tx.setting(COURIER)?.and_then(|kept| {
            let bytes = Zeroizing::new(Base64::decode_vec(&kept).ok()?);
            Some(Zeroizing::new(bytes.as_slice().try_into().ok()?))
        }),
    };
    let kept = kept.ok_or_else(|| Fault::new("no-school"))?;
    Ok(SigningSeed::from_bytes(&kept))
}

impl House {
    /// Draws a courier key, keeps it, and signs that this device joins the school with it.
    pub(super) fn take_place(
        &self,
        tx: &Tx<'_>,
        seed: &SigningSeed,
        school: Digest,
    ) -> Result<Record, Fault> {
        let mut secret = Zeroizing::new([0u8; 32]);
        self.platform.random(secret.as_mut_slice())?;
        let courier = SigningSeed::from_bytes(&secret);
        let name = format!("courier:{}", seed.device());
        let kept = self.platform.keychain().map(|keychain| keychain.keep(&name, &secret));
        if !matches!(kept, Some(Ok(()))) {
            tx.set(COURIER, &Base64::encode_string(secret.as_slice()))?;
        }
        let joined = SchoolJoined { school, courier: courier.jwk() };
        self.write_record(tx, seed, None, &Body::SchoolJoined(joined))
    }
}
