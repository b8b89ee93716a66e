//! One school in one process, one thread a seed: phones with the real app, store and sync, and a server, in a
//! world where everything that can go wrong does. A seed decides it all. When it has healed, all devices
//! hold the same and say the same, nothing acknowledged is lost, and no honest server was called a liar.
//!
//! `WITNESSMARK_SEED=n` plays one seed again, `WITNESSMARK_SEEDS=n` says how many, from that one or from 0.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../common/chance.rs"]
#[allow(dead_code)]
mod chance;
#[path = "../../../shared/core/tests/common/mod.rs"]
mod common;
mod healed;
mod network;
mod phone;
mod reference;
#[path = "../../../shared/core/tests/common/schooling.rs"]
mod schooling;
mod shipped;
mod world;

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};

use world::World;

/// Seeds played where nobody says how many.
const SEEDS: u64 = 150;

fn variable(name: &str) -> Option<u64> {
    std::env::var(name).ok().and_then(|value| value.parse().ok())
}

/// One seed's world, from its beginning until it has healed.
fn play(world: &mut World) {
    for _ in 0..20 + world.chance.below(40) {
        world.goes_on();
    }
    world.heals();
    world.holds();
}

/// Plays seeds, as long as there are any and none has failed; gives back the first that fails.
fn some(next: &AtomicU64, end: u64, failed: &AtomicBool) -> Option<String> {
    loop {
        let seed = next.fetch_add(1, Ordering::Relaxed);
        if seed >= end || failed.load(Ordering::Relaxed) {
            return None;
        }
        let mut world = World::new(seed);
        if catch_unwind(AssertUnwindSafe(|| play(&mut world))).is_err() {
            failed.store(true, Ordering::Relaxed);
            let from = world.trace.len().saturating_sub(40);
            let last = world.trace[from..].join("\n  ");
            return Some(format!("WITNESSMARK_SEED={seed} fails as told above, after\n  {last}"));
        }
    }
}

#[test]
fn whatever_happens_all_come_to_the_same() {
    let (seed, seeds) = (variable("WITNESSMARK_SEED"), variable("WITNESSMARK_SEEDS"));
    let first = seed.unwrap_or(0);
    let end = first + seeds.unwrap_or(if seed.is_some() { 1 } else { SEEDS });
    let (next, failed) = (AtomicU64::new(first), AtomicBool::new(false));
    // Each seed is played by one thread from beginning to end.
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let told: Vec<String> = std::thread::scope(|scope| {
        let players: Vec<_> = (0..cores).map(|_| scope.spawn(|| some(&next, end, &failed))).collect();
        players.into_iter().filter_map(|player| player.join().unwrap()).collect()
    });
    assert!(told.is_empty(), "{}", told.join("\n"));
}
