//! Opening: formats, other programs' files, databases that aren't there, TLS.

use std::process::Command;

use witnessmark_server::shelf::Shelf;
use witnessmark_server::{Refusal, ShelfFault};

use crate::common::postgres::Cluster;
use crate::common::{Place, records, refs, school};
use crate::together::appender;

crate::on_both!(a_newer_database_is_left_alone, many_open_a_new_one_at_once);

fn a_newer_database_is_left_alone(place: &Place) {
    let shelf = place.open();
    shelf.append(school("school"), &refs(&records(1, 2))).unwrap();
    drop(shelf);
    place.beside("PRAGMA user_version = 99", "UPDATE format SET number = 99");
    assert_eq!(Shelf::open(&place.address).unwrap_err(), ShelfFault::Newer { found: 99, known: 1 });
    place.beside("PRAGMA user_version = 1", "UPDATE format SET number = 1");
    assert_eq!(place.open().size(school("school")).unwrap(), 2);
}

fn many_open_a_new_one_at_once(place: &Place) {
    std::thread::scope(|scope| {
        for n in 1..5 {
            scope.spawn(move || place.open().append(school("school"), &refs(&records(n, 1))).unwrap());
        }
    });
    assert_eq!(place.open().size(school("school")).unwrap(), 4);
}

#[test]
fn another_programs_file_is_left_alone() {
    let place = Place::sqlite();
    // A phone's database has the same suffix, and a format number of its own.
    let made = "CREATE TABLE record (arrival INTEGER PRIMARY KEY) STRICT; PRAGMA user_version = 1;";
    place.beside(made, "");
    let before = std::fs::read(&place.address).unwrap();
    assert!(matches!(Shelf::open(&place.address), Err(ShelfFault::Damaged(_))));
    assert_eq!(std::fs::read(&place.address).unwrap(), before);
    std::fs::write(place.file("text"), "no database at all, but a text that is long enough").unwrap();
    assert!(matches!(Shelf::open(place.file("text").to_str().unwrap()), Err(ShelfFault::Damaged(_))));
    let nowhere = place.file("no/such/folder/shelf.db");
    assert!(matches!(Shelf::open(nowhere.to_str().unwrap()), Err(ShelfFault::Unreachable(_))));
}

#[cfg(unix)]
#[test]
fn only_the_owner_reads_the_file() {
    use std::os::unix::fs::PermissionsExt as _;
    let place = Place::sqlite();
    let shelf = place.open();
    shelf.append(school("school"), &refs(&records(1, 2))).unwrap();
    for entry in std::fs::read_dir(place.folder.path()).unwrap() {
        let entry = entry.unwrap();
        let mode = entry.metadata().unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o600, "{entry:?}");
    }
}

#[test]
fn what_is_wrong_with_an_address_is_told() {
    let open = |address: &str| Shelf::open(address).unwrap_err();
    assert!(matches!(open("postgres://x@localhost:nonsense/y"), ShelfFault::Refused(Refusal::Address(_))));
    // Nobody listens on port 1.
    assert!(matches!(open("postgres://x@127.0.0.1:1/y"), ShelfFault::Unreachable(_)));
    let missing = open(&Cluster::get().address("no_such_database"));
    assert!(
        matches!(&missing, ShelfFault::Unreachable(why) if why.contains("no_such_database")),
        "{missing}"
    );
}

/// No disk is filled for it: the database says what it says then. SQLite's: `src/shelf/sqlite.rs`.
#[test]
fn a_full_database_says_so() {
    let database = Cluster::get().database();
    let shelf = Shelf::open(&Cluster::get().address(&database)).unwrap();
    let all = records(1, 30);
    shelf.append(school("school"), &refs(&all[..10])).unwrap();
    Cluster::get().sql(
        &database,
        "CREATE FUNCTION full_disk() RETURNS trigger LANGUAGE plpgsql AS
         $$ BEGIN RAISE 'could not extend file' USING ERRCODE = 'disk_full'; END $$;
         CREATE TRIGGER full_disk BEFORE INSERT ON record FOR EACH ROW EXECUTE FUNCTION full_disk()",
    );
    assert_eq!(shelf.append(school("school"), &refs(&all)).unwrap_err(), ShelfFault::Full);
    assert_eq!(shelf.size(school("school")).unwrap(), 10);
}

#[test]
fn tls_is_checked_against_the_certificates_known() {
    let cluster = Cluster::get();
    let database = cluster.database();
    let append = |parameters: &str, certificates: Option<&std::path::Path>| {
        let mut command = Command::new(appender());
        command.args([&cluster.address_by_port(&database, parameters), "1", "1", "3"]);
        if let Some(file) = certificates {
            command.env("SSL_CERT_FILE", file);
        }
        let out = command.output().unwrap();
        (out.status.success(), String::from_utf8(out.stderr).unwrap())
    };
    // The server's certificate is its own: nobody's word stands behind it, unless one says so.
    let (done, told) = append("sslmode=require", None);
    assert!(!done && told.to_lowercase().contains("certificate"), "{told}");
    let certificate = cluster.certificate();
    assert_eq!(append("sslmode=require", Some(&certificate)), (true, String::new()));
    assert_eq!(append("sslmode=disable", None), (true, String::new()));
    let shelf = Shelf::open(&cluster.address(&database)).unwrap();
    assert_eq!(shelf.size(school("school")).unwrap(), 3);
}

/// The runtime of the connections may end where nothing may block.
#[test]
fn a_shelf_is_let_go_anywhere() {
    let place = Place::postgres();
    let runtime = tokio::runtime::Builder::new_current_thread().build().unwrap();
    let shelf = std::sync::Arc::new(place.open());
    runtime.block_on(async {
        let inside = shelf.clone();
        let size = tokio::task::spawn_blocking(move || inside.size(school("school"))).await.unwrap();
        assert_eq!(size.unwrap(), 0);
        drop(shelf);
    });
}
