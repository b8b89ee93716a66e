//! The person who signs here: this device's key, sealed by a PIN and, where there is one,
//! by the platform's keychain.
//!
//! At rest the key's 32 secret bytes lie in an XChaCha20-Poly1305 box. The box's key is
//! Argon2id (RFC 9106) of the PIN, with the keychain's secret as Argon2's own secret
//! input where the platform has a keychain. Wrong PINs are slowed down; nothing is ever erased.

use argon2::{Algorithm, Argon2, Params, Version};
use base64ct::{Base64, Encoding};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use uuid::Uuid;
use witnessmark_core::record::{Body, DeviceId, Member, Record, SigningSeed, machine_id};
use witnessmark_store::{Store, Tx};
use zeroize::Zeroizing;

use crate::Fault;
use crate::house::House;
use crate::platform::Platform;

/// RFC 9106 § 4, second recommended option's memory and passes; one lane, since phones share theirs.
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;
const LANES: u32 = 1;

/// Fewest digits of a PIN.
const PIN_LEAST: usize = 6;
/// Wrong PINs before one has to wait, and the longest wait, seconds.
const FREE_TRIES: u32 = 3;
const LONGEST_WAIT: i64 = 300;

/// The key as it lies in the database.
#[derive(Serialize, Deserialize)]
struct Sealed {
    memory_kib: u32,
    passes: u32,
    lanes: u32,
    salt: String,
    nonce: String,
    sealed: String,
    keychain: bool,
}

/// Who signs on this device.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Signatory {
    /// The device.
    pub device: DeviceId,
    /// The person, the same on each of their devices.
    pub person: Uuid,
    /// What the person is called.
    pub name: String,
    /// Whether the keychain helps to seal.
    pub keychain: bool,
}

/// Who signs here, if the first start is done.
pub fn signatory(tx: &Tx<'_>) -> Result<Option<Signatory>, Fault> {
    let own = tx.setting("signatory")?;
    Ok(own.map(|own| serde_json::from_str(&own)).transpose()?)
}

/// A person's key just made, with all that is kept of it.
struct Made {
    seed: SigningSeed,
    sealed: Sealed,
    own: Signatory,
    member: Member,
}

/// Draws a key for a person, and seals it.
fn make(house: &House, name: &str, person: Option<Uuid>, pin: &str) -> Result<Made, Fault> {
    let name = name.trim();
    if name.is_empty() || name.chars().count() > 80 {
        return Err(Fault::new("name-missing"));
    }
    check_new_pin(pin)?;
    let platform = house.platform.as_ref();
    let mut secret = Zeroizing::new([0u8; 32]);
    platform.random(secret.as_mut_slice())?;
    let seed = SigningSeed::from_bytes(&secret);
    let device = seed.device();
    let sealed = seal(platform, &device, pin, &secret)?;
    let person = person.map_or_else(|| house.uuid(), Ok)?;
    let member = Member { person, name: name.to_owned(), key: seed.jwk(), invented: false };
    let own = Signatory { device, person, name: name.to_owned(), keychain: sealed.keychain };
    Ok(Made { seed, sealed, own, member })
}

/// First start: makes this device's key, and signs its first record.
pub fn begin(store: &mut Store, house: &House, name: &str, pin: &str) -> Result<(), Fault> {
    begin_made(store, house, make(house, name, None, pin)?, None)
}

/// First start of another device of a person: the same name and identifier, a key of its own.
pub fn begin_as(
    store: &mut Store,
    house: &House,
    name: &str,
    person: Uuid,
    first: &DeviceId,
    pin: &str,
) -> Result<(), Fault> {
    begin_made(store, house, make(house, name, Some(person), pin)?, Some(first))
}

/// The device by whose code this one was begun, where it is another one of a person: no other is taken
/// for that person's, whatever it says.
pub fn begun_as(tx: &Tx<'_>) -> Result<Option<DeviceId>, Fault> {
    Ok(tx.setting("begun-as")?.map(DeviceId))
}

fn begin_made(store: &mut Store, house: &House, made: Made, first: Option<&DeviceId>) -> Result<(), Fault> {
    store.write(|tx| {
        if signatory(tx)?.is_some() {
            return Err(Fault::new("already-begun"));
        }
        tx.set("sealed-key", &serde_json::to_string(&made.sealed)?)?;
        tx.set("signatory", &serde_json::to_string(&made.own)?)?;
        if let Some(first) = first {
            tx.set("begun-as", &first.0)?;
        }
        house.write_record(tx, &made.seed, None, &Body::Member(made.member))?;
        Ok(())
    })
}

/// Opens the key of the device's own signatory with a PIN. A wrong one is counted and the next try made to wait.
pub fn unlock(store: &mut Store, house: &House, pin: &str) -> Result<SigningSeed, Fault> {
    unlock_named(store, house, "signatory", "sealed-key", pin)
}

/// Opens the key of a second signatory of this device; see [`add_second`].
pub fn unlock_second(
    store: &mut Store,
    house: &House,
    device: &DeviceId,
    pin: &str,
) -> Result<SigningSeed, Fault> {
    unlock_named(store, house, &format!("{SECOND}{device}"), &format!("{SECOND_KEY}{device}"), pin)
}

/// Settings of second signatories begin so.
const SECOND: &str = "second-signatory:";
const SECOND_KEY: &str = "second-sealed-key:";

/// Another person who signs on this device, with a key and PIN of their own.
pub fn add_second(store: &mut Store, house: &House, name: &str, pin: &str) -> Result<(), Fault> {
    let made = make(house, name, None, pin)?;
    store.write(|tx| {
        if signatory(tx)?.is_none() {
            return Err(Fault::new("not-begun"));
        }
        let device = &made.own.device;
        tx.set(&format!("{SECOND_KEY}{device}"), &serde_json::to_string(&made.sealed)?)?;
        tx.set(&format!("{SECOND}{device}"), &serde_json::to_string(&made.own)?)?;
        house.write_record(tx, &made.seed, None, &Body::Member(made.member))?;
        Ok(())
    })
}

/// The other people who sign on this device.
pub fn seconds(tx: &Tx<'_>) -> Result<Vec<Signatory>, Fault> {
    let found = tx.settings_under(SECOND)?;
    found.iter().map(|own| Ok(serde_json::from_str(own)?)).collect()
}

fn unlock_named(
    store: &mut Store,
    house: &House,
    own_name: &str,
    key_name: &str,
    pin: &str,
) -> Result<SigningSeed, Fault> {
    let platform = house.platform.as_ref();
    let now = platform.now().timestamp();
    let (own, sealed, fails, until) = store.read(|tx| {
        let own = tx.setting(own_name)?.ok_or_else(|| Fault::new("not-begun"))?;
        let own: Signatory = serde_json::from_str(&own)?;
        let sealed = tx.setting(key_name)?.ok_or_else(|| Fault::new("key-missing"))?;
        let number =
            |name| -> Result<i64, Fault> { Ok(tx.setting(name)?.and_then(|n| n.parse().ok()).unwrap_or(0)) };
        Ok::<_, Fault>((own, sealed, number("pin-fails")?, number("pin-until")?))
    })?;
    // A clock set back can't lock the person out for longer than the longest wait.
    let wait = (until - now).min(LONGEST_WAIT);
    if wait > 0 {
        return Err(Fault::new("pin-wait").number("seconds", wait as f64));
    }
    let sealed: Sealed = serde_json::from_str(&sealed)?;
    match open(platform, &own.device, pin, &sealed)? {
        Some(secret) => {
            if fails > 0 {
                store.write(|tx| {
                    tx.set("pin-fails", "0")?;
                    tx.set("pin-until", "0")?;
                    Ok::<_, Fault>(())
                })?;
            }
            Ok(SigningSeed::from_bytes(&secret))
        }
        None => {
            let fails = u32::try_from(fails).unwrap_or(0).saturating_add(1);
            let wait = wait_after(fails);
            store.write(|tx| {
                tx.set("pin-fails", &fails.to_string())?;
                tx.set("pin-until", &(now + wait).to_string())?;
                Ok::<_, Fault>(())
            })?;
            Err(Fault::new("pin-wrong").number("seconds", wait as f64))
        }
    }
}

/// Seals the same key with another PIN.
pub fn change_pin(store: &mut Store, house: &House, old: &str, new: &str) -> Result<(), Fault> {
    check_new_pin(new)?;
    // Opened once for the delay and the check, once more for the bytes: the seed never gives them away.
    unlock(store, house, old)?;
    let platform = house.platform.as_ref();
    store.write(|tx| {
        let own = signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))?;
        let sealed = tx.setting("sealed-key")?.ok_or_else(|| Fault::new("key-missing"))?;
        let secret = open(platform, &own.device, old, &serde_json::from_str(&sealed)?)?
            .ok_or_else(|| Fault::new("pin-wrong").number("seconds", 0))?;
        let sealed = seal(platform, &own.device, new, &secret)?;
        tx.set("sealed-key", &serde_json::to_string(&sealed)?)?;
        tx.set("signatory", &serde_json::to_string(&Signatory { keychain: sealed.keychain, ..own })?)?;
        Ok(())
    })
}

/// Seconds to wait after so many wrong PINs: none for the first few, then doubling.
fn wait_after(fails: u32) -> i64 {
    match fails.checked_sub(FREE_TRIES) {
        None | Some(0) => 0,
        Some(over) => 2i64.saturating_pow(over.min(20)).min(LONGEST_WAIT),
    }
}

fn check_new_pin(pin: &str) -> Result<(), Fault> {
    let digits = pin.len() >= PIN_LEAST && pin.bytes().all(|byte| byte.is_ascii_digit());
    let first = pin.bytes().next();
    if !digits || pin.bytes().all(|byte| Some(byte) == first) {
        return Err(Fault::new("pin-weak").number("least", PIN_LEAST as f64));
    }
    Ok(())
}

fn box_key(pin: &str, sealed: &Sealed, pepper: &[u8]) -> Result<Zeroizing<[u8; 32]>, Fault> {
    let params =
        Params::new(sealed.memory_kib, sealed.passes, sealed.lanes, Some(32)).map_err(Fault::internal)?;
    let argon = if pepper.is_empty() {
        Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
    } else {
        Argon2::new_with_secret(pepper, Algorithm::Argon2id, Version::V0x13, params)
            .map_err(Fault::internal)?
    };
    let salt = Base64::decode_vec(&sealed.salt).map_err(Fault::internal)?;
    let mut key = Zeroizing::new([0; 32]);
    argon.hash_password_into(pin.as_bytes(), &salt, key.as_mut_slice()).map_err(Fault::internal)?;
    Ok(key)
}

fn seal(platform: &dyn Platform, device: &DeviceId, pin: &str, secret: &[u8; 32]) -> Result<Sealed, Fault> {
    let mut salt = [0u8; 16];
    platform.random(&mut salt)?;
    let mut nonce = [0u8; 24];
    platform.random(&mut nonce)?;
    let pepper = pepper_for_sealing(platform, device)?;
    let mut sealed = Sealed {
        memory_kib: MEMORY_KIB,
        passes: PASSES,
        lanes: LANES,
        salt: Base64::encode_string(&salt),
        nonce: Base64::encode_string(&nonce),
        sealed: String::new(),
        keychain: !pepper.is_empty(),
    };
    let key = box_key(pin, &sealed, &pepper)?;
    let payload = Payload { msg: secret, aad: device.0.as_bytes() };
    let cipher = XChaCha20Poly1305::new_from_slice(key.as_slice()).map_err(Fault::internal)?;
    let bytes = cipher.encrypt(&XNonce::from(nonce), payload).map_err(Fault::internal)?;
    sealed.sealed = Base64::encode_string(&bytes);
    Ok(sealed)
}

/// The secret bytes, or none when the PIN is wrong.
fn open(
    platform: &dyn Platform,
    device: &DeviceId,
    pin: &str,
    sealed: &Sealed,
) -> Result<Option<Zeroizing<[u8; 32]>>, Fault> {
    let pepper = if sealed.keychain { pepper_for_opening(platform, device)? } else { Zeroizing::default() };
    let key = box_key(pin, sealed, &pepper)?;
    let nonce: [u8; 24] = Base64::decode_vec(&sealed.nonce)
        .ok()
        .and_then(|bytes| bytes.try_into().ok())
        .ok_or_else(|| Fault::new("key-missing"))?;
    let bytes = Base64::decode_vec(&sealed.sealed).map_err(|_| Fault::new("key-missing"))?;
    let payload = Payload { msg: &bytes, aad: device.0.as_bytes() };
    let cipher = XChaCha20Poly1305::new_from_slice(key.as_slice()).map_err(Fault::internal)?;
    let Ok(secret) = cipher.decrypt(&XNonce::from(nonce), payload) else { return Ok(None) };
    let secret = Zeroizing::new(secret);
    Ok(Some(Zeroizing::new(secret.as_slice().try_into().map_err(|_| Fault::new("key-missing"))?)))
}

/// The keychain's secret for this device, made if need be; empty where there is no keychain.
fn pepper_for_sealing(platform: &dyn Platform, device: &DeviceId) -> Result<Zeroizing<Vec<u8>>, Fault> {
    let Some(keychain) = platform.keychain() else { return Ok(Zeroizing::default()) };
    if let Ok(Some(secret)) = keychain.secret(&device.0) {
        return Ok(Zeroizing::new(secret.to_vec()));
    }
    let mut secret = Zeroizing::new([0u8; 32]);
    platform.random(secret.as_mut_slice())?;
    // A keychain that doesn't keep (locked, no service) is as none: the PIN seals alone, and the screen says so.
    match keychain.keep(&device.0, &secret) {
        Ok(()) => Ok(Zeroizing::new(secret.to_vec())),
        Err(_) => Ok(Zeroizing::default()),
    }
}

fn pepper_for_opening(platform: &dyn Platform, device: &DeviceId) -> Result<Zeroizing<Vec<u8>>, Fault> {
    let keychain = platform.keychain().ok_or_else(|| Fault::new("keychain-missing").text("why", "–"))?;
    match keychain.secret(&device.0) {
        Ok(Some(secret)) => Ok(Zeroizing::new(secret.to_vec())),
        Ok(None) => Err(Fault::new("keychain-missing").text("why", "–")),
        Err(why) => Err(Fault::new("keychain-missing").text("why", why)),
    }
}

impl House {
    /// Signs and appends the device's next record about `machine`, in this transaction; first whatever
    /// was logged on this device and waited for a signature.
    pub fn write_record(
        &self,
        tx: &Tx<'_>,
        seed: &SigningSeed,
        machine: Option<Uuid>,
        body: &Body,
    ) -> Result<Record, Fault> {
        if let Some(machine) = machine {
            self.may_sign(tx, machine, &seed.device(), body)?;
        }
        let waiting = tx.pending()?;
        for pending in &waiting {
            self.write_at(tx, seed, Some(pending.machine), pending.at, &pending.body)?;
        }
        if !waiting.is_empty() {
            tx.pending_signed()?;
        }
        self.write_at(tx, seed, machine, self.platform.now(), body)
    }

    /// The name of a machine that this key registers with its next record.
    pub fn new_machine(&self, tx: &Tx<'_>, seed: &SigningSeed) -> Result<Uuid, Fault> {
        let last = tx.author(&seed.device(), None)?.last.map_or(0, |last| last.seq);
        // What waits unsigned is signed before it.
        let waiting = u64::try_from(tx.pending()?.len()).unwrap_or(u64::MAX);
        let ms = u64::try_from(self.platform.now().timestamp_millis()).unwrap_or(0);
        Ok(machine_id(&seed.device(), last.saturating_add(waiting).saturating_add(1), ms))
    }

    fn write_at(
        &self,
        tx: &Tx<'_>,
        seed: &SigningSeed,
        machine: Option<Uuid>,
        at: DateTime<FixedOffset>,
        body: &Body,
    ) -> Result<Record, Fault> {
        let mut salt = [0; 10];
        self.platform.random(&mut salt)?;
        let author = tx.author(&seed.device(), machine)?;
        let record = author.write(body, machine, at, &salt, seed)?;
        tx.append(&record)?;
        Ok(record)
    }
}
