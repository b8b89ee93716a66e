//! How often somebody may ask: a leaky bucket for each key, and for each address that signs nothing.

use std::hash::Hash;
use std::net::IpAddr;
use std::num::NonZeroU32;

use governor::clock::Clock as _;
use governor::middleware::NoOpMiddleware;
use governor::nanos::Nanos;
use governor::state::keyed::HashMapStateStore;
use governor::{Quota, RateLimiter};
use witnessmark_core::record::DeviceId;

use super::HttpFault;
use crate::Clock;

/// How often somebody may ask, and how many at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// Requests a second of one key, in the long run.
    pub key_rate: NonZeroU32,
    /// Requests of one key in a row.
    pub key_burst: NonZeroU32,
    /// Requests a second of one address that signs nothing, in the long run.
    pub open_rate: NonZeroU32,
    /// Requests in a row of one address that signs nothing.
    pub open_burst: NonZeroU32,
    /// Requests at work at once.
    pub at_once: usize,
}

impl Default for Limits {
    /// A device's round is some ten requests; a first one, of a hundred thousand records, some hundreds;
    /// and a whole school may sit behind one address.
    fn default() -> Self {
        let some = |n| NonZeroU32::new(n).unwrap_or(NonZeroU32::MIN);
        Self {
            key_rate: some(50),
            key_burst: some(1000),
            open_rate: some(50),
            open_burst: some(500),
            at_once: 512,
        }
    }
}

type Keyed<K> = RateLimiter<K, HashMapStateStore<K>, Ticks, NoOpMiddleware<Nanos>>;

/// The buckets.
pub(super) struct Buckets {
    keys: Keyed<DeviceId>,
    peers: Keyed<Option<IpAddr>>,
    ticks: Ticks,
}

impl Buckets {
    pub(super) fn new(limits: &Limits, clock: Clock) -> Self {
        let ticks = Ticks(clock);
        let keyed = |rate, burst| Quota::per_second(rate).allow_burst(burst);
        Self {
            keys: RateLimiter::new(
                keyed(limits.key_rate, limits.key_burst),
                HashMapStateStore::default(),
                ticks.clone(),
            ),
            peers: RateLimiter::new(
                keyed(limits.open_rate, limits.open_burst),
                HashMapStateStore::default(),
                ticks.clone(),
            ),
            ticks,
        }
    }

    /// Counts a request of a key whose signature was good: nobody spends another's.
    pub(super) fn key(&self, key: &DeviceId) -> Result<(), HttpFault> {
        self.count(&self.keys, key, 1)
    }

    /// Counts a request that nobody signed, as so many.
    pub(super) fn peer(&self, peer: Option<IpAddr>, cost: u32) -> Result<(), HttpFault> {
        self.count(&self.peers, &peer.map(network), cost)
    }

    /// Forgets those who haven't asked for long.
    pub(super) fn forget(&self) {
        self.keys.retain_recent();
        self.peers.retain_recent();
    }

    fn count<K: Hash + Eq + Clone>(&self, bucket: &Keyed<K>, key: &K, cost: u32) -> Result<(), HttpFault> {
        let cost = NonZeroU32::new(cost).unwrap_or(NonZeroU32::MIN);
        match bucket.check_key_n(key, cost) {
            Ok(Ok(())) => Ok(()),
            Ok(Err(not)) => {
                let wait = not.wait_time_from(self.ticks.now());
                Err(HttpFault::too_often(wait.as_secs().saturating_add(1)))
            }
            // The bucket is smaller than what one such request costs.
            Err(_) => Err(HttpFault::too_often(60)),
        }
    }
}

/// Who holds one address of an IPv6 network has all of its 64-bit part.
fn network(peer: IpAddr) -> IpAddr {
    match peer.to_canonical() {
        IpAddr::V6(address) => IpAddr::V6((address.to_bits() & (u128::MAX << 64)).into()),
        v4 => v4,
    }
}

/// The server's clock as the buckets read it.
#[derive(Clone, Debug)]
struct Ticks(Clock);

impl governor::clock::Clock for Ticks {
    type Instant = Nanos;

    fn now(&self) -> Nanos {
        Nanos::new(self.0.ticks().saturating_mul(1_000_000))
    }
}
