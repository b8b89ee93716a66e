//! Backups, and moving from one database to the other.

use std::path::{Path, PathBuf};

use rusqlite::Connection;
use witnessmark_core::record::{DeviceId, Digest};
use witnessmark_server::shelf::{Draft, Kept, Session, Shelf, Waiting, check_backup};
use witnessmark_server::{Refusal, ShelfFault};

use crate::common::{Place, records, refs, school};

crate::on_both!(
    a_school_moves_with_all_it_has,
    a_backup_is_of_one_moment,
    a_damaged_backup_is_refused_whole,
    nothing_is_overwritten,
);

/// A shelf with something in every table.
fn filled(place: &Place) -> Shelf {
    let shelf = place.open();
    let (one, two) = (school("school"), school("two"));
    shelf.append(one, &refs(&records(1, 500))).unwrap();
    shelf.append(two, &refs(&records(2, 3))).unwrap();
    let picture = vec![7; 5000];
    shelf.photo_put(one, Digest::of(&picture), 0, 5000, &picture[..3000]).unwrap();
    shelf.photo_put(one, Digest::of(&picture), 3000, 5000, &picture[3000..]).unwrap();
    shelf.photo_put(one, Digest::of(b"half"), 0, 4, b"ha").unwrap();
    shelf.set(one, "key", "sealed").unwrap();
    shelf
        .waiting_put(one, &Waiting { device: DeviceId("d".into()), lines: "{}\n".into(), at: 5 }, 9)
        .unwrap();
    shelf
        .draft_put(one, &Draft { id: "x".into(), kind: "k".into(), body: "{\"ä\":1}".into(), made: 6 })
        .unwrap();
    shelf.session_put(one, "cookie", &Session { device: None, made: 1, until: 100 }).unwrap();
    shelf.nonce_take(one, "key", "nonce", 1).unwrap();
    shelf.attempt_add(one, "desk", 1, 100).unwrap();
    shelf
}

fn kept() -> Vec<Kept> {
    let mut kept = [
        Kept { school: school("school"), records: 500, photos: 1 },
        Kept { school: school("two"), records: 3, photos: 0 },
    ];
    kept.sort_by_key(|kept| kept.school);
    kept.into()
}

fn a_school_moves_with_all_it_has(place: &Place) {
    let shelf = filled(place);
    let file = place.file("backup.db");
    assert_eq!(shelf.backup(&file).unwrap(), kept());
    assert_eq!(check_backup(&file).unwrap(), kept());
    // One file, and nothing beside it.
    let beside = std::fs::read_dir(place.folder.path()).unwrap().map(|entry| entry.unwrap().file_name());
    assert_eq!(beside.filter(|name| name.to_str().unwrap().starts_with("backup")).count(), 1);
    for target in [Place::sqlite(), Place::postgres()] {
        let moved = target.open();
        assert_eq!(moved.restore(&file).unwrap(), kept());
        assert_eq!(moved.schools().unwrap(), shelf.schools().unwrap());
        for school in shelf.schools().unwrap() {
            assert_eq!(
                moved.log(school, 0, usize::MAX, usize::MAX).unwrap(),
                shelf.log(school, 0, usize::MAX, usize::MAX).unwrap()
            );
            assert_eq!(moved.waiting(school).unwrap(), shelf.waiting(school).unwrap());
            assert_eq!(moved.drafts(school).unwrap(), shelf.drafts(school).unwrap());
        }
        let one = school("school");
        assert_eq!(moved.setting(one, "key").unwrap().unwrap(), "sealed");
        let picture = moved.photo_read(one, Digest::of(&[7; 5000]), 0, 9999).unwrap();
        assert_eq!(picture.unwrap(), [7; 5000]);
        // Half a photo goes on where it was.
        assert!(moved.photo_put(one, Digest::of(b"half"), 2, 4, b"lf").unwrap().whole);
        // Who was signed in is not there.
        assert_eq!(moved.session(one, "cookie", 50).unwrap(), None);
        assert_eq!(moved.attempts(one, "desk", 50).unwrap(), (0, 50));
        // Life goes on, on both sides of the move; and from there back again.
        let more = records(3, 2);
        assert_eq!(moved.append(one, &refs(&more)).unwrap(), [500, 501]);
        assert_eq!(
            moved.backup(&target.file("again.db")).unwrap().iter().map(|k| k.records).sum::<u64>(),
            505
        );
    }
    // It can be opened as it is, by a server in need.
    let opened = Shelf::open(file.to_str().unwrap()).unwrap();
    assert_eq!(opened.size(school("school")).unwrap(), 500);
}

fn a_backup_is_of_one_moment(place: &Place) {
    let (shelf, one) = (place.open(), school("school"));
    let all = records(1, 3000);
    shelf.append(one, &refs(&all[..600])).unwrap();
    std::thread::scope(|scope| {
        let writer = scope
            .spawn(|| all[600..].chunks(30).for_each(|batch| drop(shelf.append(one, &refs(batch)).unwrap())));
        let mut sizes = vec![600];
        for n in 0..5 {
            let kept = shelf.backup(&place.file(&format!("{n}.db"))).unwrap();
            assert_eq!(kept[0].records % 30, 0);
            sizes.push(kept[0].records);
        }
        assert!(sizes.is_sorted(), "{sizes:?}");
        writer.join().unwrap();
    });
    assert_eq!(shelf.size(one).unwrap(), 3000);
}

/// One change a line, each in a copy of a sound backup.
const DAMAGE: &[&str] = &[
    "UPDATE record SET payload = replace(payload, 'look', 'hook') WHERE n = 4",
    "UPDATE record SET signature = 'short' WHERE n = 4",
    "UPDATE record SET digest = zeroblob(32) WHERE n = 4",
    "UPDATE record SET digest = zeroblob(31) WHERE n = 4",
    "UPDATE record SET device = 'somebody else' WHERE n = 4",
    "DELETE FROM record WHERE n = 4",
    "DELETE FROM record WHERE n = 499",
    "DELETE FROM head",
    "UPDATE head SET size = size + 1",
    "UPDATE head SET size = -1",
    "UPDATE photo_part SET bytes = zeroblob(length(bytes)) WHERE at = 3000",
    "DELETE FROM photo_part WHERE at = 0",
    "UPDATE photo SET total = 6000, have = 6000 WHERE whole = 1",
    "UPDATE photo SET have = 5",
    "DROP TABLE setting",
];

fn a_damaged_backup_is_refused_whole(place: &Place) {
    let sound = place.file("sound.db");
    // Taken from the one, restored into the other.
    filled(&Place::sqlite()).backup(&sound).unwrap();
    let target = place.open();
    let copy = |name: &str| -> PathBuf {
        let to = place.file(name);
        std::fs::copy(&sound, &to).unwrap();
        to
    };
    for (n, damage) in DAMAGE.iter().enumerate() {
        let file = copy(&format!("{n}.db"));
        Connection::open(&file).unwrap().execute_batch(damage).unwrap();
        let fault = target.restore(&file).unwrap_err();
        assert!(matches!(fault, ShelfFault::Damaged(_)), "{damage}: {fault}");
        assert_eq!(target.schools().unwrap(), [], "{damage}");
        assert_eq!(target.setting(school("school"), "key").unwrap(), None, "{damage}");
    }
    let newer = copy("newer.db");
    Connection::open(&newer).unwrap().execute_batch("PRAGMA user_version = 99").unwrap();
    assert_eq!(target.restore(&newer).unwrap_err(), ShelfFault::Newer { found: 99, known: 1 });
    // Cut short, as by a stick pulled out too early.
    let short = place.file("short.db");
    let bytes = std::fs::read(&sound).unwrap();
    std::fs::write(&short, &bytes[..bytes.len() / 2]).unwrap();
    assert!(matches!(target.restore(&short).unwrap_err(), ShelfFault::Damaged(_)));
    not_a_backup(&target, &place.file("missing.db"));
    std::fs::write(place.file("empty.db"), "").unwrap();
    not_a_backup(&target, &place.file("empty.db"));
    // After all that the sound one still fits.
    assert_eq!(target.restore(&sound).unwrap(), kept());
}

fn not_a_backup(target: &Shelf, file: &Path) {
    let fault = target.restore(file).unwrap_err();
    assert!(
        matches!(&fault, ShelfFault::Refused(Refusal::NotABackup { path, .. }) if path == file),
        "{fault}"
    );
}

fn nothing_is_overwritten(place: &Place) {
    let shelf = filled(place);
    let file = place.file("backup.db");
    shelf.backup(&file).unwrap();
    let bytes = std::fs::read(&file).unwrap();
    assert_eq!(shelf.backup(&file).unwrap_err(), ShelfFault::Refused(Refusal::Exists(file.clone())));
    assert_eq!(shelf.restore(&file).unwrap_err(), ShelfFault::Refused(Refusal::NotEmpty));
    assert_eq!(std::fs::read(&file).unwrap(), bytes);
    // Restoring only reads.
    std::fs::set_permissions(&file, std::os::unix::fs::PermissionsExt::from_mode(0o400)).unwrap();
    let target = Place::sqlite();
    target.open().restore(&file).unwrap();
    assert_eq!(std::fs::read(&file).unwrap(), bytes);
    // One broken off before is begun anew.
    std::fs::write(place.file("next.db.part"), "half of one").unwrap();
    assert_eq!(shelf.backup(&place.file("next.db")).unwrap(), kept());
    // Into a folder that isn't there: told, and nothing lost.
    let nowhere = shelf.backup(&place.file("no/folder/backup.db")).unwrap_err();
    assert!(matches!(nowhere, ShelfFault::Unreachable(_)), "{nowhere}");
}

/// A backup of an older format is brought up to date in a copy; here the oldest: one with no tables.
#[test]
fn an_older_backup_is_not_changed() {
    let place = Place::sqlite();
    let file = place.file("older.db");
    Connection::open(&file).unwrap().execute_batch("PRAGMA application_id = 0x574d5348").unwrap();
    let bytes = std::fs::read(&file).unwrap();
    assert_eq!(place.open().restore(&file).unwrap(), []);
    assert_eq!(std::fs::read(&file).unwrap(), bytes);
}
