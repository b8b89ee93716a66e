//! A damaged database: set aside, never deleted; what verifies is brought over, and the person is
//! told how much.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::chance::Chance;
use common::device::{begun, database};
use common::pictures::{noise, written};
use witnessmark_core::record::{Signature, Trust};
use witnessmark_store::{Store, StoreFault};

const WOUNDS: usize = 80;

/// A folder as a year of use leaves it: machines, an inspection under way, a picture.
fn lived_in() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let (mut app, machines) = begun(&database(folder.path()));
    let walk = app.walk(machines[0].id.clone(), "before-flight".into()).unwrap();
    let mut chance = Chance::seeded("a picture");
    let picture = written(&noise(&mut chance, 200, 150), image::ImageFormat::Png);
    use base64ct::{Base64, Encoding};
    let point = walk.stations[0].points[0].id.clone();
    app.photo_add(walk.id, point, Base64::encode_string(&picture)).unwrap();
    folder
}

/// The same bytes in another folder.
fn copied(bytes: &[u8]) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    fs::write(database(folder.path()), bytes).unwrap();
    folder
}

fn set_aside(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries
        .filter(|path| {
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            name.contains("damaged") && name.ends_with(".db")
        })
        .collect()
}

/// All records of a database, and how many of them verify.
fn records(database: &str) -> (usize, usize) {
    let mut store = Store::open(database).unwrap();
    store
        .read(|tx| {
            let members = tx.records_of(None)?;
            let trust = Trust::from_records(&members);
            let mut records = members;
            for machine in tx.machines()? {
                records.extend(tx.records_of(Some(machine))?);
            }
            let good = records.iter().filter(|record| trust.check(record) == Signature::Good).count();
            Ok::<_, StoreFault>((records.len(), good))
        })
        .unwrap()
}

/// One wound as storage makes them: some bytes, a page of nothing or of noise, or an end too early.
fn wound(bytes: &mut Vec<u8>, chance: &mut Chance) {
    let place = chance.below(bytes.len() as u64) as usize;
    match chance.below(4) {
        0 => {
            for _ in 0..=chance.below(60) {
                let place = chance.below(bytes.len() as u64) as usize;
                bytes[place] = chance.next() as u8;
            }
        }
        1 => {
            let end = (place + 4096).min(bytes.len());
            bytes[place..end].fill(0);
        }
        2 => {
            let end = (place + 4096).min(bytes.len());
            let noise = chance.bytes(end - place);
            bytes[place..end].copy_from_slice(&noise);
        }
        _ => bytes.truncate(place),
    }
}

#[test]
fn a_wounded_database_is_set_aside_and_rescued() {
    let whole = fs::read(database(lived_in().path())).unwrap();
    let before = records(&database(copied(&whole).path()));
    assert!(before.0 > 10 && before.0 == before.1, "{before:?}");
    let mut chance = Chance::seeded("wounds");
    let (mut opened, mut rescued, mut brought_over) = (0, 0, 0);
    for _ in 0..WOUNDS {
        let mut bytes = whole.clone();
        wound(&mut bytes, &mut chance);
        let folder = copied(&bytes);
        let mut app = match witnessmark_host::open(folder.path()) {
            Ok(app) => app,
            Err(fault) => {
                // A file that says it is of a newer version is left as it is; nothing else stops us.
                assert_eq!(fault.kind, "database-newer", "{fault:?}");
                assert_eq!(fs::read(database(folder.path())).unwrap(), bytes);
                continue;
            }
        };
        let warning = app.start().unwrap().warning;
        let aside = set_aside(folder.path());
        match aside.as_slice() {
            [] => {
                assert_eq!(warning, None);
                opened += 1;
            }
            [aside] => {
                assert!(fs::read(aside).unwrap() == bytes, "what was set aside is what was there");
                let warning = warning.unwrap();
                let aside = aside.file_name().unwrap().to_string_lossy();
                assert!(warning.contains(&*aside), "{warning}");
                rescued += 1;
            }
            more => panic!("{more:?}"),
        }
        // Whatever was done, the app works on it.
        app.machines().unwrap();
        drop(app);
        let (records, good) = records(&database(folder.path()));
        assert!(records <= before.0);
        assert_eq!(records, good, "only what verifies is brought over");
        brought_over += records;
    }
    println!("{opened} opened as they were, {rescued} rescued, with {brought_over} records in all");
    assert!(rescued > WOUNDS / 4, "the wounds were too small to mean anything");
}

/// One page lost costs what was on it, and little of the rest.
#[test]
fn most_records_survive_a_lost_page() {
    let whole = fs::read(database(lived_in().path())).unwrap();
    let (before, _) = records(&database(copied(&whole).path()));
    let (mut kept, mut tried) = (0, 0);
    for page in (1..whole.len() / 4096).step_by(3) {
        let mut bytes = whole.clone();
        bytes[page * 4096..(page + 1) * 4096].fill(0);
        let folder = copied(&bytes);
        drop(witnessmark_host::open(folder.path()).unwrap());
        kept += records(&database(folder.path())).0;
        tried += 1;
    }
    println!("of {before} records {} are kept on average when one of {tried} pages is lost", kept / tried);
    assert!(kept * 10 > before * tried * 8);
}

/// A text changed within the file, so that the file is sound and only what it says isn't.
#[test]
fn a_record_or_a_step_altered_within_is_found_when_the_app_opens() {
    let whole = fs::read(database(lived_in().path())).unwrap();
    let (before, _) = records(&database(copied(&whole).path()));
    // What is changed, and how many records that costs.
    for (change, records_lost) in [
        ("record SET payload = replace(payload, '\"of_seq\":', '\"of_sEq\":') WHERE arrival = 7", 1),
        ("record SET seq = seq + 1 WHERE arrival = 7", 0),
        ("step SET body = replace(body, '\"pictured\"', '\"pictureb\"')", 0),
        ("setting SET value = replace(value, ':', '!') WHERE name = 'sealed-key'", 0),
        ("draft SET body = replace(body, '\"id\":', '\"iD\":')", 0),
    ] {
        let folder = copied(&whole);
        let connection = rusqlite::Connection::open(database(folder.path())).unwrap();
        assert_eq!(connection.execute(&format!("UPDATE {change}"), []).unwrap(), 1, "{change}");
        drop(connection);
        let bytes = fs::read(database(folder.path())).unwrap();
        let mut app = witnessmark_host::open(folder.path()).unwrap();
        let warning = app.start().unwrap().warning.expect("a warning");
        let kept = before - records_lost;
        assert!(warning.contains(&kept.to_string()), "{change}: {warning}");
        assert!(fs::read(&set_aside(folder.path())[0]).unwrap() == bytes);
        drop(app);
        assert_eq!(records(&database(folder.path())), (kept, kept));
        // What couldn't be read was left behind: the next start finds all in order.
        let mut app = witnessmark_host::open(folder.path()).unwrap();
        assert_eq!(app.start().unwrap().warning, None, "{change}");
        app.machines().unwrap();
        assert_eq!(set_aside(folder.path()).len(), 1);
    }
}

/// A record filed under another machine would be looked for in vain, and its defect with it.
#[test]
fn a_record_in_the_wrong_place_is_found_when_the_app_opens() {
    let folder = lived_in();
    let path = database(folder.path());
    let sql = "UPDATE record SET machine = replace(machine, '0', '1') WHERE kind = 'inspection'";
    assert!(rusqlite::Connection::open(&path).unwrap().execute(sql, []).unwrap() > 0);
    let mut app = witnessmark_host::open(folder.path()).unwrap();
    assert!(app.start().unwrap().warning.is_some());
    drop(app);
    let (kept, good) = records(&path);
    assert_eq!(kept, good);
    assert_eq!(app_sees(folder.path()), app_sees(lived_in().path()));
}

fn app_sees(folder: &Path) -> Vec<(String, witnessmark_core::verdict::State)> {
    let mut app = witnessmark_host::open(folder).unwrap();
    let cards = app.machines().unwrap();
    cards.into_iter().map(|card| (card.name, card.verdict.state)).collect()
}

/// What is only derived from the log is derived anew, and nobody need hear of it.
#[test]
fn a_wound_in_what_is_derived_heals() {
    let folder = lived_in();
    let before = app_sees(folder.path());
    let path = database(folder.path());
    let sql = "UPDATE history SET folded = replace(folded, '\"open\"', '\"oqen\"')";
    assert!(rusqlite::Connection::open(&path).unwrap().execute(sql, []).unwrap() > 0);
    assert_eq!(app_sees(folder.path()), before);
    assert!(set_aside(folder.path()).is_empty());
}

/// Killed, and then damaged: what lay in the write-ahead log is set aside with the rest, unread by the rescue's end.
#[test]
fn the_log_beside_the_file_is_set_aside_with_it() {
    let folder = lived_in();
    let path = database(folder.path());
    let copy = tempfile::tempdir().unwrap();
    // Copied while it is open, as the battery leaves it: something is in the log beside it.
    let connection = rusqlite::Connection::open(&path).unwrap();
    connection
        .execute_batch("PRAGMA journal_mode = WAL; INSERT INTO setting VALUES ('of-the-test', 'words');")
        .unwrap();
    for suffix in ["", "-wal", "-shm"] {
        fs::copy(format!("{path}{suffix}"), format!("{}{suffix}", database(copy.path()))).unwrap();
    }
    drop(connection);
    let copied = database(copy.path());
    let mut bytes = fs::read(&copied).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle..].fill(0x5a);
    fs::write(&copied, &bytes).unwrap();
    let log = fs::read(format!("{copied}-wal")).unwrap();
    assert!(!log.is_empty());
    drop(witnessmark_host::open(copy.path()).unwrap());
    let aside = &set_aside(copy.path())[0];
    assert!(fs::read(aside).unwrap() == bytes);
    assert!(fs::read(format!("{}-wal", aside.display())).unwrap() == log);
}

#[test]
fn a_file_that_is_no_database_is_set_aside() {
    let header = fs::read(database(lived_in().path())).unwrap()[..100].to_vec();
    for bytes in
        [b"not a database at all, but long enough to look like a file".repeat(100), header, vec![0; 8192]]
    {
        let folder = copied(&bytes);
        let mut app = witnessmark_host::open(folder.path()).unwrap();
        assert!(app.start().unwrap().warning.is_some());
        assert!(app.machines().unwrap().is_empty());
        assert_eq!(fs::read(&set_aside(folder.path())[0]).unwrap(), bytes);
    }
}

/// The key comes over with the records: the person signs on as before.
#[test]
fn the_key_is_rescued_with_the_records() {
    let mut bytes = fs::read(database(lived_in().path())).unwrap();
    let whole = records(&database(copied(&bytes).path())).0;
    // An index of the log is torn: the tables themselves are whole.
    let root: u32 = rusqlite::Connection::open(database(copied(&bytes).path()))
        .unwrap()
        .query_row("SELECT rootpage FROM sqlite_schema WHERE name = 'record_chain'", [], |row| row.get(0))
        .unwrap();
    let start = (root as usize - 1) * 4096;
    bytes[start..start + 4096].fill(0xa5);
    let folder = copied(&bytes);
    let mut app = witnessmark_host::open(folder.path()).unwrap();
    let start = app.start().unwrap();
    assert!(start.warning.unwrap().contains(&whole.to_string()));
    assert_eq!(start.person.unwrap().name, "Test Pilot");
    let machine = app.machines().unwrap().into_iter().find(|card| card.walk.is_some()).unwrap();
    let walk = app.walk(machine.id, "before-flight".into()).unwrap();
    assert_eq!(walk.progress.points.values().map(|point| point.photos.len()).sum::<usize>(), 1);
    app.change_pin(common::PIN.into(), "314159".into()).unwrap();
}

/// Damaged once more within the same second: what was set aside before stays.
#[test]
fn what_was_set_aside_is_never_overwritten() {
    let folder = tempfile::tempdir().unwrap();
    let texts: Vec<Vec<u8>> = (0..5u8).map(|n| vec![b'a' + n; 3000]).collect();
    for text in &texts {
        fs::write(database(folder.path()), text).unwrap();
        witnessmark_host::open(folder.path()).unwrap();
    }
    let mut kept: Vec<Vec<u8>> =
        set_aside(folder.path()).iter().map(|path| fs::read(path).unwrap()).collect();
    kept.sort();
    assert!(kept == texts, "{} of {} kept", kept.len(), texts.len());
}

#[test]
fn a_newer_database_is_refused_untouched() {
    let folder = lived_in();
    let path = database(folder.path());
    rusqlite::Connection::open(&path).unwrap().pragma_update(None, "user_version", 4000).unwrap();
    let before = fs::read(&path).unwrap();
    let Err(fault) = witnessmark_host::open(folder.path()) else { panic!("it was opened") };
    assert_eq!(fault.kind, "database-newer");
    let shown = witnessmark_app::show(&fault);
    assert!(shown.message.contains("4,000") || shown.message.contains("4000"), "{shown:?}");
    assert!(fs::read(&path).unwrap() == before);
    assert!(set_aside(folder.path()).is_empty());
    // What SQLite lays beside a file that it only looks into is empty.
    assert_eq!(fs::read(format!("{path}-wal")).unwrap_or_default(), b"");
}
