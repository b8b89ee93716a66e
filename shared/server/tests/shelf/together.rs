//! Several threads and processes over one database.

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};

use witnessmark_core::record::{Digest, Record};
use witnessmark_server::ShelfFault;

use crate::common::postgres::Cluster;
use crate::common::{Place, Records, digests, records, refs, school};

crate::on_both!(threads_of_two_shelves_append, processes_append, a_process_killed_leaves_whole_batches);

/// The program that appends (examples/append.rs).
pub fn appender() -> PathBuf {
    let own = std::env::current_exe().unwrap();
    let built = own.parent().unwrap().parent().unwrap().join("examples/append");
    assert!(built.exists(), "cargo test builds it, unless told to build one test alone");
    built
}

fn threads_of_two_shelves_append(place: &Place) {
    let school = school("school");
    let shelves = [place.open(), place.open()];
    let shared = records(9, 60);
    // What each was told.
    let told: Vec<(Digest, u64)> = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..6_usize)
            .map(|n| {
                let (shelf, shared) = (&shelves[n % 2], &shared);
                scope.spawn(move || {
                    let own = records(n as u8 + 1, 120);
                    let mut told = Vec::new();
                    for (mine, ours) in own.chunks(10).zip(shared.chunks(5)) {
                        let batch: Vec<&Record> = mine.iter().chain(ours).collect();
                        let places = shelf.append(school, &batch).unwrap();
                        told.extend(batch.iter().map(|record| record.digest).zip(places));
                    }
                    told
                })
            })
            .collect();
        threads.into_iter().flat_map(|thread| thread.join().unwrap()).collect()
    });
    let log = shelves[0].digests(school, 0, usize::MAX).unwrap();
    assert_eq!(log.len(), 6 * 120 + 60);
    assert_eq!(shelves[1].size(school).unwrap(), log.len() as u64);
    // No record twice, every index as told, to everybody.
    let places: BTreeMap<Digest, u64> = log.iter().copied().zip(0..).collect();
    assert_eq!(places.len(), log.len());
    assert!(told.iter().all(|(digest, index)| places[digest] == *index));
    let indices = shelves[1].log(school, 0, usize::MAX, usize::MAX).unwrap();
    assert!(indices.iter().zip(0..).all(|(line, n)| line.index == n));
}

fn append(place: &Place, device: u8, batches: usize, size: usize) -> Child {
    let words = [device.to_string(), batches.to_string(), size.to_string()];
    let mut command = Command::new(appender());
    command.arg(&place.address).args(words).stdout(Stdio::piped()).spawn().unwrap()
}

fn processes_append(place: &Place) {
    // The format too is made by whoever comes first.
    let processes: Vec<Child> = (1..4).map(|device| append(place, device, 30, 7)).collect();
    let mut last = Vec::new();
    for process in processes {
        let out = process.wait_with_output().unwrap();
        assert!(out.status.success());
        last.extend(String::from_utf8(out.stdout).unwrap().lines().map(|n| n.parse::<u64>().unwrap()));
    }
    let shelf = place.open();
    let lines = shelf.log(school("school"), 0, usize::MAX, usize::MAX).unwrap();
    assert_eq!(lines.len(), 3 * 30 * 7);
    assert!(lines.iter().zip(0..).all(|(line, n)| line.index == n));
    // Each process was told ends of batches that no other was told.
    last.sort_unstable();
    assert_eq!(last, (6..630).step_by(7).collect::<Vec<u64>>());
    for device in 1..4 {
        let own = records(device, 210);
        let there = lines.iter().filter(|line| line.device == own[0].payload.device).map(|line| line.digest);
        assert_eq!(there.collect::<Vec<_>>(), digests(&own));
    }
}

fn a_process_killed_leaves_whole_batches(place: &Place) {
    let mut process = append(place, 1, 1_000_000, 50);
    let mut told = BufReader::new(process.stdout.take().unwrap()).lines();
    for _ in 0..5 {
        told.next().unwrap().unwrap();
    }
    process.kill().unwrap();
    process.wait().unwrap();
    let acknowledged = 5 + told.map_while(Result::ok).count();
    let shelf = place.open();
    let log = shelf.digests(school("school"), 0, usize::MAX).unwrap();
    assert!(log.len() >= acknowledged * 50, "{} of {acknowledged} batches", log.len());
    assert_eq!(log.len() % 50, 0);
    assert_eq!(shelf.size(school("school")).unwrap(), log.len() as u64);
    let own: Vec<Digest> = Records::of(1).take(log.len()).map(|record| record.digest).collect();
    assert_eq!(log, own);
    // Whoever sends it again after that gets the same places.
    let again = records(1, log.len() + 3);
    let places = shelf.append(school("school"), &refs(&again)).unwrap();
    assert_eq!(places, (0..again.len() as u64).collect::<Vec<_>>());
}

/// The connection breaks while records are being put in.
#[test]
fn a_connection_cut_leaves_nothing() {
    let cluster = Cluster::get();
    let database = cluster.database();
    let shelf = witnessmark_server::shelf::Shelf::open(&cluster.address(&database)).unwrap();
    let all = records(1, 20);
    shelf.append(school("school"), &refs(&all[..3])).unwrap();
    cluster.sql(
        &database,
        "CREATE FUNCTION slow() RETURNS trigger LANGUAGE plpgsql AS
         $$ BEGIN IF NEW.n = 9 THEN PERFORM pg_sleep(600); END IF; RETURN NEW; END $$;
         CREATE TRIGGER slow BEFORE INSERT ON record FOR EACH ROW EXECUTE FUNCTION slow()",
    );
    std::thread::scope(|scope| {
        let cut = scope.spawn(|| shelf.append(school("school"), &refs(&all)));
        let sleeping = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity
                        WHERE datname = current_database() AND wait_event = 'PgSleep'";
        while cluster.sql(&database, sleeping) != "t" {
            assert!(!cut.is_finished());
            std::thread::yield_now();
        }
        let fault = cut.join().unwrap().unwrap_err();
        assert!(matches!(fault, ShelfFault::Unreachable(_)), "{fault}");
    });
    cluster.sql(&database, "DROP TRIGGER slow ON record");
    assert_eq!(shelf.size(school("school")).unwrap(), 3);
    assert_eq!(shelf.digests(school("school"), 0, 99).unwrap(), digests(&all[..3]));
    assert_eq!(shelf.append(school("school"), &refs(&all)).unwrap(), (0..20).collect::<Vec<_>>());
}

/// All connections are cut, as when PostgreSQL is started anew: the next work gets new ones.
#[test]
fn connections_lost_are_made_anew() {
    let cluster = Cluster::get();
    let database = cluster.database();
    let shelf = witnessmark_server::shelf::Shelf::open(&cluster.address(&database)).unwrap();
    let all = records(1, 4);
    shelf.append(school("school"), &refs(&all[..2])).unwrap();
    cluster.sql(
        "postgres",
        &format!("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{database}'"),
    );
    // The loss may be noticed only by who uses it next; a second try never fails for it.
    let first = shelf.append(school("school"), &refs(&all));
    if let Err(fault) = first {
        assert!(matches!(fault, ShelfFault::Unreachable(_)), "{fault}");
        assert_eq!(shelf.append(school("school"), &refs(&all)).unwrap(), [0, 1, 2, 3]);
    }
    assert_eq!(shelf.size(school("school")).unwrap(), 4);
}

/// A transaction that fails gives its connection back clean: all of them serve afterwards.
#[test]
fn failed_work_leaves_no_connection_inside_a_transaction() {
    let place = Place::postgres();
    let shelf = place.open();
    let all = records(1, 3);
    place.beside("", "ALTER TABLE record RENAME TO elsewhere");
    for _ in 0..20 {
        shelf.append(school("school"), &refs(&all)).unwrap_err();
    }
    place.beside("", "ALTER TABLE elsewhere RENAME TO record");
    assert_eq!(shelf.append(school("school"), &refs(&all)).unwrap(), [0, 1, 2]);
    assert_eq!(place.open().size(school("school")).unwrap(), 3);
}
