//! Numbers drawn by counting from a seed: the same seed gives the same everywhere.

/// SplitMix64 (Steele, Lea & Flood 2014; from memory).
#[derive(Clone, Copy, Debug)]
pub struct Chance(u64);

impl Chance {
    /// From a seed.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number.
    pub fn draw(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// One from 0 up to but not `most`; 0 where that is none.
    pub fn below(&mut self, most: usize) -> usize {
        // Multiply and shift (Lemire): no division, and for so few values no bias that shows.
        usize::try_from((u128::from(self.draw()) * most as u128) >> 64).unwrap_or(0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The first three of seed 1234567, as in the algorithm's common test vector (from memory).
    #[test]
    fn it_is_the_published_sequence() {
        let mut chance = Chance::new(1_234_567);
        let drawn = [(); 3].map(|()| chance.draw());
        assert_eq!(drawn, [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]);
    }

    #[test]
    fn it_stays_below_and_reaches_all() {
        let mut chance = Chance::new(1);
        let drawn: std::collections::BTreeSet<usize> = (0..1000).map(|_| chance.below(7)).collect();
        assert_eq!(drawn, (0..7).collect());
        assert_eq!(chance.below(0), 0);
    }
}
