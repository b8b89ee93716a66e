//! One school in one process and one thread: phones with the real app, store and sync, and a server, in a
//! world where everything that can go wrong does. A seed decides it all. When it has healed, all devices
//! hold the same and say the same, nothing acknowledged is lost, and no honest server was called a liar.
//!
//! `WITNESSMARK_SEED=n` plays one seed again and tells what happened, `WITNESSMARK_SEEDS=n` says how many.

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
mod world;

use std::panic::{AssertUnwindSafe, catch_unwind};

use world::World;

/// Seeds played where nobody says how many.
const SEEDS: u64 = 200;

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

#[test]
fn whatever_happens_all_come_to_the_same() {
    let seeds = match variable("WITNESSMARK_SEED") {
        Some(seed) => seed..seed + 1,
        None => 0..variable("WITNESSMARK_SEEDS").unwrap_or(SEEDS),
    };
    for seed in seeds {
        let mut world = World::new(seed);
        if catch_unwind(AssertUnwindSafe(|| play(&mut world))).is_err() {
            let from = world.trace.len().saturating_sub(40);
            println!("…{}", world.trace[from..].join("\n  "));
            panic!("WITNESSMARK_SEED={seed} fails, as told above; its last steps too");
        }
    }
}
