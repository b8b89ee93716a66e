//! No room left: the program says so and what to do, keeps everything it acknowledged, and goes on
//! with the same inspection once there is room.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use std::path::Path;
use std::process::Command;

use common::PIN;
use common::chance::Chance;
use common::device::{Device, app, begun, database};
use common::filling::{Acknowledged, Phone};
use common::server::{Server, Unanswered, program};
use serde_json::json;
use witnessmark_app::App;
use witnessmark_store::Store;

/// First start, and a machine.
fn first_start(phone: &mut impl Phone) -> String {
    phone.call("begin", json!({ "name": "Test Pilot", "pin": PIN })).unwrap();
    let described = json!({ "name": "Thistle", "engine": "bramble-125", "fitted": {}, "hours": 12.5, "flights": 3, "note": "" });
    let page = phone.call("machine-save", json!({ "id": "", "description": described, "pin": PIN })).unwrap();
    page["card"]["id"].as_str().unwrap().to_owned()
}

fn is_sound(database: &str) {
    let connection = rusqlite::Connection::open(database).unwrap();
    let said: String = connection.query_row("PRAGMA integrity_check", [], |row| row.get(0)).unwrap();
    assert_eq!(said, "ok");
}

/// SQLite itself finds no more pages, at every allowance from none on.
#[test]
fn a_database_that_may_not_grow() {
    let mut chance = Chance::seeded("pages");
    let folder = tempfile::tempdir().unwrap();
    let database = database(folder.path());
    let (mut app, machines) = begun(&database);
    let mut kept = Acknowledged::begin(&mut app, &machines[0].id);
    drop(app);

    for more in [0, 1, 7, 40] {
        let pages: u32 = rusqlite::Connection::open(&database)
            .unwrap()
            .query_row("PRAGMA page_count", [], |row| row.get(0))
            .unwrap();
        let store = Store::open(&database).unwrap();
        assert_eq!(store.limit_pages(pages + more).unwrap(), pages + more);
        let mut app = App::new(store, Device::new()).unwrap();
        kept.faults.clear();
        kept.fill(&mut app, &mut chance, &["disk-full"]);
        println!("{more} pages more: {}", kept.counts());
        kept.is_kept(&mut app);
        // What is larger than any answer is refused as clearly, and leaves nothing half done.
        let signed = Phone::call(&mut app, "sign", json!({ "walk": kept.walk, "pin": PIN }));
        let Err(Unanswered::Fault { kind, .. }) = signed else { panic!("{signed:?}") };
        assert_eq!(kind, "disk-full");
        kept.is_kept(&mut app);
        drop(app);
        is_sound(&database);
    }
    let mut app = self::app(&database);
    kept.is_kept(&mut app);
    kept.go_on(&mut app, &mut chance);
}

/// A file that the system lets grow so far and no further.
#[test]
fn a_file_that_may_not_grow() {
    let mut chance = Chance::seeded("file size");
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let mut command = Command::new("bash");
    // Without the trap the system would end the program instead of telling it.
    command.args(["-c", "trap '' XFSZ; ulimit -f 1500; exec \"$0\" --data \"$1\" serve-ui --json"]);
    command.arg(program()).arg(&data);
    let mut server = Server::run(command);
    let machine = first_start(&mut server);
    let mut kept = Acknowledged::begin(&mut server, &machine);
    kept.fill(&mut server, &mut chance, &["disk-full", "disk"]);
    println!("{}; told: {:?}", kept.counts(), kept.faults.first());
    kept.is_kept(&mut server);
    server.end();
    is_sound(&database(&data));
    let mut server = Server::start(&data);
    kept.is_kept(&mut server);
    kept.go_on(&mut server, &mut chance);
}

/// A file system of three megabytes in a name space of its own, which grows when told so.
fn small_file_system(room: &Path) -> Command {
    let mut command = Command::new("unshare");
    command.args(["--map-root-user", "--mount", "--pid", "--fork", "--kill-child", "bash", "-c"]);
    // The program is the first process of its name space: when it ends, so does all the rest.
    command.arg(
        "mount -t tmpfs -o size=3m tmpfs \"$1\" || exit 1
         { read -r word && mount -o remount,size=64m \"$1\" && echo grown; } <&0 &
         exec \"$0\" --data \"$1/data\" serve-ui --json",
    );
    command.arg(program()).arg(room);
    command
}

/// Whether this system lets one make such a name space.
fn name_spaces() -> bool {
    let tried = Command::new("unshare")
        .args(["--map-root-user", "--mount", "--pid", "--fork", "mount", "-t", "tmpfs", "tmpfs", "/mnt"])
        .output();
    tried.is_ok_and(|tried| tried.status.success())
}

/// A file system with no more room. Where the system allows no name spaces, the limit on the
/// file's size above has to do, in another size.
#[test]
fn a_file_system_without_room() {
    let mut chance = Chance::seeded("file system");
    let folder = tempfile::tempdir().unwrap();
    if !name_spaces() {
        println!("no name spaces here: the limit on a file's size stands in");
        return a_file_that_may_not_grow();
    }
    let mut server = Server::run(small_file_system(folder.path()));
    let machine = first_start(&mut server);
    let mut kept = Acknowledged::begin(&mut server, &machine);
    kept.fill(&mut server, &mut chance, &["disk-full", "disk"]);
    println!("{}; told: {:?}", kept.counts(), kept.faults.first());
    assert_eq!(kept.faults.first().map(String::as_str), Some("disk-full"));
    kept.is_kept(&mut server);
    assert_eq!(server.say("grow"), "grown");
    kept.go_on(&mut server, &mut chance);
}

/// A damaged database where there is no room for the rescue: told, and all as it was, so that the
/// next start can try again.
#[test]
fn a_rescue_without_room_puts_everything_back() {
    let folder = tempfile::tempdir().unwrap();
    let (mut app, machines) = begun(&database(folder.path()));
    let mut kept = Acknowledged::begin(&mut app, &machines[0].id);
    let mut chance = Chance::seeded("rescue");
    kept.keep_pictures(&mut app, &mut chance, 16);
    drop(app);
    // Torn in an index: everything can be rescued, and takes as much room again.
    let path = database(folder.path());
    let connection = rusqlite::Connection::open(&path).unwrap();
    let root: u32 = connection
        .query_row("SELECT rootpage FROM sqlite_schema WHERE name = 'record_chain'", [], |row| row.get(0))
        .unwrap();
    let root = root as usize;
    drop(connection);
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[(root - 1) * 4096..root * 4096].fill(0xa5);
    assert!(bytes.len() > 1_000_000, "{}", bytes.len());
    std::fs::write(&path, &bytes).unwrap();

    let mut command = Command::new("bash");
    // In 1 KiB blocks: the damaged file fits, a second of its size does not fit into the limit on files.
    let blocks = (bytes.len() / 1024 / 2).to_string();
    command.args(["-c", "trap '' XFSZ; ulimit -f \"$2\"; exec \"$0\" --data \"$1\" --json machine list"]);
    command.arg(program()).arg(folder.path()).arg(blocks);
    let told = command.env("WITNESSMARK_KEYCHAIN", "off").output().unwrap();
    assert_eq!(told.status.code(), Some(2));
    let fault: serde_json::Value = serde_json::from_slice(&told.stderr).unwrap();
    assert!(["disk", "disk-full"].contains(&fault["kind"].as_str().unwrap()), "{fault}");
    let names: Vec<String> = std::fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".db"))
        .collect();
    assert_eq!(names, ["witnessmark.db"]);
    assert!(std::fs::read(&path).unwrap() == bytes);

    // With room, the same start rescues all of it.
    let mut app = witnessmark_host::open(folder.path()).unwrap();
    assert!(app.start().unwrap().warning.is_some());
    kept.is_kept(&mut app);
}
