//! The board's own copy can be thrown away.

use std::fs;

use serde_json::Value;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Role;
use witnessmark_server::board::Board;
use witnessmark_server::router;
use witnessmark_server::school::School;

use crate::device::{bramble, register, walk_and_sign};
use crate::world::{World, config, server_of};

/// A school with something to show, its pilot's device, and what the board shows.
fn shown() -> (World, witnessmark_app::App, Value) {
    let mut world = World::new();
    let mut pilot = world.member("Invented pilot", Role::Pilot);
    let machine = register(&mut pilot, bramble());
    walk_and_sign(&mut pilot, &world.clock, &machine, "before-flight", &[("cylinder-base", Meaning::Watch)]);
    world.sync(&mut pilot);
    let board = world.sign_in(&mut pilot).get("/desk/board").json();
    assert_eq!(board["rows"].as_array().unwrap().len(), 1);
    (world, pilot, board)
}

/// The server's process ends and another begins, over what lies in the folder then.
fn again(world: &mut World, between: impl FnOnce(&std::path::Path)) {
    let folder = world.place.folder.path().to_owned();
    let nothing = server_of(School::open(world.place.open()).unwrap(), &world.clock);
    world.board = Board::new(nothing.clone(), config(&world.place, &world.clock));
    world.router = axum::Router::new();
    world.server = nothing;
    between(&folder);
    let server = server_of(School::open(world.place.open()).unwrap(), &world.clock);
    world.board = Board::new(server.clone(), config(&world.place, &world.clock));
    world.router = router(&server, world.board.router());
    world.server = server;
}

fn told(world: &World, pilot: &mut witnessmark_app::App) -> Value {
    world.board.catch_up().unwrap();
    world.sign_in(pilot).get("/desk/board").json()
}

#[test]
fn it_goes_on_where_it_was() {
    let (mut world, mut pilot, before) = shown();
    again(&mut world, |_| {});
    assert_eq!(told(&world, &mut pilot), before);
}

#[test]
fn missing_or_damaged_it_is_made_anew_and_equal() {
    let (mut world, mut pilot, before) = shown();
    again(&mut world, |folder| {
        for file in ["board.db", "board.db-wal", "board.db-shm"] {
            let _ = fs::remove_file(folder.join(file));
        }
    });
    assert_eq!(told(&world, &mut pilot), before);
    again(&mut world, |folder| {
        let _ = fs::remove_file(folder.join("board.db-wal"));
        let _ = fs::remove_file(folder.join("board.db-shm"));
        fs::write(folder.join("board.db"), b"not a database at all, whatever its name says").unwrap();
    });
    assert_eq!(told(&world, &mut pilot), before);
}

#[test]
fn another_school_s_copy_is_not_taken_for_this_one_s() {
    let (mut world, mut pilot, before) = shown();
    let other = World::new();
    let strange = other.place.folder.path().to_owned();
    again(&mut world, |folder| {
        for file in ["board.db", "board.db-wal", "board.db-shm"] {
            let _ = fs::remove_file(folder.join(file));
            if strange.join(file).exists() {
                fs::copy(strange.join(file), folder.join(file)).unwrap();
            }
        }
    });
    assert_eq!(told(&world, &mut pilot), before);
}

#[test]
fn each_process_has_its_own_and_shows_what_another_took() {
    let (world, mut pilot, _) = shown();
    let place = crate::common::Place::sqlite();
    let server = server_of(School::open(world.place.open()).unwrap(), &world.clock);
    let board = Board::start(server.clone(), config(&place, &world.clock));
    register(&mut pilot, bramble());
    world.sync(&mut pilot);
    let here = world.board.catch_up().unwrap();
    // Followed on a thread of its own; waited for as long as a slow machine may need.
    let deadline = std::time::Instant::now() + std::time::Duration::from_secs(60);
    let mut elsewhere = World { board, router: axum::Router::new(), server: server.clone(), ..world };
    elsewhere.router = router(&server, elsewhere.board.router());
    loop {
        // Until it was opened it says that it is busy.
        let mut page = crate::world::Page::of(&elsewhere);
        if page.get("/desk/session").status.is_success() {
            break;
        }
        assert!(std::time::Instant::now() < deadline);
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    let mut page = elsewhere.sign_in(&mut pilot);
    while page.get("/desk/board").json()["size"].as_f64() != Some(here as f64) {
        assert!(std::time::Instant::now() < deadline);
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    assert_eq!(page.rows().len(), 2);
    elsewhere.server.stop();
}
