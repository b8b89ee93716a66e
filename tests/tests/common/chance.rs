//! Chance that can be had again: a seed, printed, and SplitMix64 (Steele, Lea, Flood 2014; from memory).

/// A stream of chance.
pub struct Chance(u64);

impl Chance {
    /// From `WITNESSMARK_SEED`, else from the clock; says which, so that a failure can be had again.
    pub fn seeded(what: &str) -> Self {
        let given = std::env::var("WITNESSMARK_SEED").ok().and_then(|seed| seed.parse().ok());
        let seed = given.unwrap_or_else(|| {
            let since = std::time::UNIX_EPOCH.elapsed().unwrap();
            u64::from(since.subsec_nanos()) ^ since.as_secs()
        });
        println!("{what}: WITNESSMARK_SEED={seed}");
        Self(seed)
    }

    /// Of this seed.
    pub fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// Once in so many times.
    pub fn one_in(&mut self, times: u64) -> bool {
        self.below(times) == 0
    }

    pub fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Less than `end`.
    pub fn below(&mut self, end: u64) -> u64 {
        self.next() % end.max(1)
    }

    pub fn pick<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len() as u64) as usize]
    }

    pub fn bytes(&mut self, count: usize) -> Vec<u8> {
        (0..count).map(|_| self.next() as u8).collect()
    }
}
