//! The key, its seal and the PIN.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use chrono::TimeDelta;
use common::*;
use witnessmark_app::App;
use witnessmark_store::Store;

#[test]
fn a_weak_pin_or_no_name_is_refused_and_the_first_start_happens_once() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = App::new(Store::open(":memory:").unwrap(), platform(&clock, 1, None)).unwrap();
    for pin in ["", "12345", "111111", "12345a"] {
        assert_eq!(app.begin("P".into(), pin.into()).unwrap_err().kind, "pin-weak", "{pin}");
    }
    assert_eq!(app.begin("  ".into(), PIN.into()).unwrap_err().kind, "name-missing");
    assert_eq!(app.begin("P".into(), PIN.into()).unwrap().person.unwrap().name, "P");
    assert_eq!(app.begin("Q".into(), PIN.into()).unwrap_err().kind, "already-begun");
}

#[test]
fn wrong_pins_are_slowed_down_and_nothing_is_erased() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let try_with = |app: &mut App, pin: &str| app.machine_save(String::new(), Some(bramble()), pin.into());
    for _ in 0..3 {
        assert_eq!(try_with(&mut app, "000001").unwrap_err().kind, "pin-wrong");
    }
    assert_eq!(try_with(&mut app, "000001").unwrap_err().kind, "pin-wrong");
    assert_eq!(try_with(&mut app, PIN).unwrap_err().kind, "pin-wait", "even the right one waits");
    clock.forward(TimeDelta::seconds(3));
    try_with(&mut app, PIN).unwrap();
    assert_eq!(try_with(&mut app, "000001").unwrap_err().kind, "pin-wrong", "counted from nothing again");
    try_with(&mut app, PIN).unwrap();
}

#[test]
fn the_pin_can_be_changed_and_the_old_one_is_worth_nothing_then() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let before = app.start().unwrap().person.unwrap().device;
    assert_eq!(app.change_pin("000001".into(), "314159".into()).unwrap_err().kind, "pin-wrong");
    app.change_pin(PIN.into(), "314159".into()).unwrap();
    assert_eq!(app.start().unwrap().person.unwrap().device, before, "the same key");
    let save = |app: &mut App, pin: &str| app.machine_save(String::new(), Some(bramble()), pin.into());
    assert_eq!(save(&mut app, PIN).unwrap_err().kind, "pin-wrong");
    save(&mut app, "314159").unwrap();
}

#[test]
fn with_a_keychain_the_database_and_the_pin_alone_do_not_open_the_key() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    let path = path.to_str().unwrap();
    let chain = Chain::default();
    let mut app = App::new(Store::open(path).unwrap(), platform(&clock, 1, Some(chain.clone()))).unwrap();
    assert!(app.begin("P".into(), PIN.into()).unwrap().person.unwrap().keychain);
    app.machine_save(String::new(), Some(bramble()), PIN.into()).unwrap();
    drop(app);

    let mut copied = App::new(Store::open(path).unwrap(), platform(&clock, 2, None)).unwrap();
    let fault = copied.machine_save(String::new(), Some(bramble()), PIN.into()).unwrap_err();
    assert_eq!(fault.kind, "keychain-missing");
    let mut other =
        App::new(Store::open(path).unwrap(), platform(&clock, 2, Some(Chain::default()))).unwrap();
    let fault = other.machine_save(String::new(), Some(bramble()), PIN.into()).unwrap_err();
    assert_eq!(fault.kind, "keychain-missing");
    drop((copied, other));
    let mut own = App::new(Store::open(path).unwrap(), platform(&clock, 2, Some(chain))).unwrap();
    own.machine_save(String::new(), Some(bramble()), PIN.into()).unwrap();
}

#[test]
fn the_key_lies_nowhere_in_the_database() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    // The test's randomness is known, so the secret is: the first 32 bytes drawn.
    let device = platform(&clock, 7, None);
    let mut secret = [0u8; 32];
    witnessmark_app::Platform::random(device.as_ref(), &mut secret).unwrap();
    let store = Store::open(path.to_str().unwrap()).unwrap();
    let mut app = App::new(store, platform(&clock, 7, None)).unwrap();
    app.begin("P".into(), PIN.into()).unwrap();
    let own = witnessmark_core::record::SigningSeed::from_bytes(&secret).device().0;
    assert_eq!(app.start().unwrap().person.unwrap().device, own, "the test knows the secret");
    drop(app);
    for file in std::fs::read_dir(folder.path()).unwrap() {
        let bytes = std::fs::read(file.unwrap().path()).unwrap();
        assert!(!bytes.windows(32).any(|window| window == secret));
        assert!(!bytes.windows(PIN.len()).any(|window| window == PIN.as_bytes()));
    }
}
