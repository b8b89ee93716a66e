//! A new phone that follows a school's log: the app itself, as any face drives it.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing)]

use std::path::Path;
use std::sync::Mutex;
use std::time::Instant;

use witnessmark_app::{App, Fault};
use witnessmark_core::record::write_bundle;
use witnessmark_host::net::{Net, follow, sync};
use witnessmark_sync::wire::WaitingDevice;

use crate::school::{Root, Serving, ask, client};

const PIN: &str = "271828";

/// Lets a new phone in, then follows the log of at least `size` records to its end; how long that took.
pub fn caught_up(serving: &Serving, root: &mut Root, folder: &Path, size: usize) -> f64 {
    let mut app = witnessmark_host::open(folder).unwrap();
    app.begin("New phone".into(), PIN.into()).unwrap();
    let phone: Mutex<Result<App, Fault>> = Mutex::new(Ok(app));
    let net = Net::default();
    follow(&phone, &net, &serving.url(""), PIN).unwrap();
    let client = client();
    let seed = &root.pen.seed;
    let waiting = ask(serving, &client, "GET", "/v1/waiting", Vec::new(), seed);
    let waiting: Vec<WaitingDevice> = serde_json::from_slice(&waiting).unwrap();
    let one = waiting.into_iter().next().unwrap();
    let admitted = root.admits(one.device, one.person, &one.name);
    let body = write_bundle([&admitted]).into_bytes();
    ask(serving, &client, "POST", "/v1/records", body, &root.pen.seed);
    let from = Instant::now();
    // The first round asks to be let in, the second follows.
    for _ in 0..2 {
        sync(&phone, &net).unwrap();
    }
    let taken = from.elapsed().as_secs_f64();
    let receipts = phone.lock().unwrap().as_mut().unwrap().school().unwrap().sync.receipts;
    assert!(receipts >= size as f64, "{receipts}");
    taken
}
